import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { LSPErrorCodes, Message, ResponseError, type ResponseMessage } from 'vscode-languageserver';
import { createConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { createFoodBook } from '@quern/foods';
import type { Files } from './files.js';
import { startServer } from './server.js';
import { VERSION } from './version.js';

/* The server as a program: it speaks over its standard input and output and reads files from the disk. */

/*
 * The engine puts new things straight among those that last when their like have lasted before. Here the first reading of a
 * file lasts, and what each key makes after it does not; put there, it can only be found by a full collection, and in a
 * long file one came every few seconds and stopped the process for up to 12 ms.
 */
setFlagsFromString('--no-allocation-site-pretenuring');

/** Files larger than this are not recipes. */
const MOST_BYTES = 16 * 1024 * 1024;
const MOST_FILES = 20_000;
const LEFT_OUT: ReadonlySet<string> = new Set(['node_modules']);

const decoder = new TextDecoder('utf-8', { fatal: true });

class DiskFiles implements Files {
  read(uri: string, folder: string): string | undefined {
    try {
      const path = realpathSync.native(fileURLToPath(uri));
      if (!isInside(realpathSync.native(fileURLToPath(folder)), path)) return undefined;
      const stat = statSync(path);
      if (!stat.isFile() || stat.size > MOST_BYTES) return undefined;
      return decoder.decode(readFileSync(path));
    } catch {
      // Gone, not allowed, not text, or no file URI: for a recipe that is the same, it cannot be used.
      return undefined;
    }
  }

  list(folder: string, deep: boolean): readonly string[] {
    const found: string[] = [];
    try {
      walk(fileURLToPath(folder), deep, found);
    } catch {
      return [];
    }
    return found.map((path) => pathToFileURL(path).href);
  }
}

function walk(folder: string, deep: boolean, found: string[]): void {
  let entries;
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch {
    return;
  }
  for (const entry of entries) {
    if (found.length >= MOST_FILES) return;
    const path = join(folder, entry.name);
    if (entry.isFile() && entry.name.endsWith('.quern')) found.push(path);
    else if (deep && entry.isDirectory() && !entry.name.startsWith('.') && !LEFT_OUT.has(entry.name))
      walk(path, deep, found);
  }
}

function isInside(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way));
}

/** The pages of the messages, where the server stands in a copy of the project. */
function docsBeside(): string | undefined {
  const folder = join(dirname(process.argv[1] ?? ''), '..', '..', '..', 'docs', 'diagnostics');
  return existsSync(folder) ? pathToFileURL(folder).href : undefined;
}

function main(): void {
  if (process.argv.includes('--version')) {
    process.stdout.write(`${VERSION}\n`);
    return;
  }
  const connection = createConnection(new StreamMessageReader(process.stdin), new StreamMessageWriter(process.stdout), {
    // A request that is taken back before its turn is not worked out at all.
    cancelUndispatched: (message) => {
      if (!Message.isRequest(message)) return undefined;
      const error = new ResponseError(LSPErrorCodes.RequestCancelled, 'taken back').toJson();
      return { jsonrpc: '2.0', id: message.id ?? null, error } as ResponseMessage;
    },
  });
  startServer(connection, {
    files: new DiskFiles(),
    foods: createFoodBook,
    now: () => performance.now(),
    version: VERSION,
    docs: docsBeside(),
  });
  // What goes wrong inside is told to the log; the server goes on.
  process.on('uncaughtException', (error) => connection.console.error(`Quern: ${error.stack ?? error.message}`));
  process.on('unhandledRejection', (error) => connection.console.error(`Quern: ${String(error)}`));
  connection.listen();
}

main();
