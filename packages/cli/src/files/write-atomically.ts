import { randomBytes } from 'node:crypto';
import {
  chmodSync,
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { UsageError } from '../command.js';
import { fileProblem } from './problems.js';

/*
 * A file is never seen half written: the whole text goes into a new file beside it, is forced onto the disk, and takes
 * the old one's place in one step. Whatever interrupts that leaves the old file as it was.
 */

/** Files that are being written now, to be taken away when the process is told to stop. */
const unfinished = new Set<string>();
let isWatching = false;

const SIGNALS: Readonly<Record<string, number>> = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 };

function watch(): void {
  if (isWatching) return;
  isWatching = true;
  process.once('exit', discard);
  for (const [signal, code] of Object.entries(SIGNALS)) {
    process.once(signal, () => {
      discard();
      process.exit(code);
    });
  }
}

function discard(): void {
  for (const path of unfinished) {
    try {
      unlinkSync(path);
    } catch {
      // It took the old file's place in the meantime, or the disk is gone: nothing is left to take away.
    }
  }
  unfinished.clear();
}

/**
 * Puts a text, or bytes, in place of a file, or makes the file. Its permissions stay; a link stays a link, and what it points to is
 * replaced.
 * @param over the text that is replaced: when another stands there by now, nothing is written.
 * @throws UsageError when that cannot be done; then the file is as it was.
 */
export function writeAtomically(
  path: string,
  content: string | Uint8Array,
  shown = path,
  { over }: { readonly over?: string } = {},
): void {
  watch();
  const target = targetOf(path);
  const draft = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString('hex')}.draft`);
  try {
    const mode = statSync(target, { throwIfNoEntry: false })?.mode;
    unfinished.add(draft);
    const file = openSync(draft, 'wx', 0o666);
    try {
      writeWhole(file, typeof content === 'string' ? Buffer.from(content, 'utf8') : content);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    if (mode !== undefined) chmodSync(draft, mode & 0o7777);
    if (over !== undefined && !holds(target, over)) {
      // Another run of the same command was there first, and wrote the same.
      if (!holds(target, content)) throw changed(shown);
      discard();
      return;
    }
    renameSync(draft, target);
    unfinished.delete(draft);
    syncFolder(dirname(target));
  } catch (error) {
    discard();
    throw error instanceof UsageError ? error : fileProblem('write', shown, error);
  }
}

/** Whether a file is still the text that was read; what cannot be read any more is not. */
function holds(path: string, text: string | Uint8Array): boolean {
  try {
    return readFileSync(path).equals(typeof text === 'string' ? Buffer.from(text, 'utf8') : text);
  } catch {
    return false;
  }
}

const changed = (shown: string): UsageError =>
  new UsageError(
    `${shown} was changed by another program while the command ran; nothing was written over it`,
    'run the command again',
  );

function targetOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}

function writeWhole(file: number, bytes: Uint8Array): void {
  let rest = bytes;
  while (rest.length > 0) rest = rest.subarray(writeSync(file, rest));
}

/** So that the new name is on the disk too; some systems cannot, and lose no more than the newest change. */
function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r');
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    return;
  }
}
