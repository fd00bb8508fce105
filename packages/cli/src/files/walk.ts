import { readdirSync, realpathSync, statSync, type Dirent } from 'node:fs';
import { join, resolve } from 'node:path';
import { UsageError } from '../command.js';
import { fileProblem } from './problems.js';

/** Folders that hold no recipes of one's own. Those that begin with a dot are left out too. */
const LEFT_OUT = new Set(['node_modules']);

export const ENDING = '.quern';

/**
 * The recipe files that paths mean, each once, as absolute paths in the order of their names: a file is itself, a folder
 * every `.quern` file in it and below. Links inside a folder are followed to files, not to folders, so that no walk is
 * endless.
 * @throws UsageError when a path is not there.
 */
export function findFiles(paths: readonly string[], folder: string): readonly string[] {
  /** By where a file really lies. */
  const found = new Map<string, string>();
  for (const path of paths) {
    const absolute = resolve(folder, path);
    const real = realPath(absolute, path);
    const stat = statSync(real);
    if (stat.isFile()) found.set(real, found.get(real) ?? absolute);
    else if (stat.isDirectory()) walk(absolute, real, found);
    else throw new UsageError(`${path} is neither a file nor a folder`);
  }
  return [...found.values()].sort();
}

function realPath(path: string, shown: string): string {
  try {
    return realpathSync.native(path);
  } catch (error) {
    throw fileProblem('read', shown, error);
  }
}

function walk(folder: string, real: string, found: Map<string, string>): void {
  for (const entry of entriesOf(folder)) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      if (!entry.name.startsWith('.') && !LEFT_OUT.has(entry.name)) walk(path, join(real, entry.name), found);
    } else if (entry.name.endsWith(ENDING)) {
      const key = entry.isFile() ? join(real, entry.name) : fileBehind(path);
      if (key !== undefined && !found.has(key)) found.set(key, path);
    }
  }
}

function entriesOf(folder: string): readonly Dirent[] {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    throw fileProblem('read', folder, error);
  }
}

/** Where a link leads, when it leads to a file. */
function fileBehind(link: string): string | undefined {
  return statSync(link, { throwIfNoEntry: false })?.isFile() ? realpathSync.native(link) : undefined;
}
