import { existsSync, realpathSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { UsageError } from '../command.js';
import { decode, readBytes } from './read-text.js';

/*
 * A recipe may use other files, and only those under its workspace root: the folder named by --root, else the nearest
 * folder above it that holds a repository, else the folder the command runs in, else the file's own. The compiler works
 * on paths relative to that root, with `/`, so that it cannot name anything outside; links are followed here and
 * refused when they lead out.
 */

/** Paths as the compiler and reports write them. */
export const withSlashes = (path: string): string => (sep === '/' ? path : path.replaceAll(sep, '/'));

/** Whether a path lies in a folder or is it; both as they really are. */
export const isInside = (folder: string, path: string): boolean => {
  const way = relative(folder, path);
  return way === '' || (!way.startsWith('..' + sep) && way !== '..' && !isAbsolute(way));
};

/** Root of the files of a folder, when none is given; the folder a command runs in does not change while it runs. */
const ownRoots = new Map<string, string>();

const rootsByFolder = new Map<string, string | undefined>();

/** The nearest folder, from this one up, in which a repository lies. */
function repositoryAbove(folder: string): string | undefined {
  if (rootsByFolder.has(folder)) return rootsByFolder.get(folder);
  const above = dirname(folder);
  const root = existsSync(join(folder, '.git')) ? folder : above === folder ? undefined : repositoryAbove(above);
  rootsByFolder.set(folder, root);
  return root;
}

/** The path as seen from a folder, with `/`. */
export function seenFrom(folder: string, path: string): string {
  // The usual case, and much faster than the general one.
  if (path.startsWith(folder + sep)) return withSlashes(path.slice(folder.length + 1));
  return withSlashes(relative(folder, path)) || path;
}

/** The workspace root of a file. `given` is what --root says. */
export function rootOf(file: string, folder: string, given?: string): string {
  if (given !== undefined) {
    const root = resolve(folder, given);
    if (!isInside(realpathSync.native(root), realpathSync.native(file))) {
      throw new UsageError(`${relative(folder, file)} is not inside the root ${given}`, 'name a --root that holds it');
    }
    return root;
  }
  const own = dirname(file);
  const known = ownRoots.get(own);
  if (known !== undefined) return known;
  const root = repositoryAbove(own) ?? (isInside(folder, own) ? folder : own);
  ownRoots.set(own, root);
  return root;
}

/** A folder as the compiler's world: reads files under it by relative paths. */
export class Workspace {
  readonly #realRoot: string;
  /** Paths that a recipe asked for and that were refused, with the reason. */
  readonly refused = new Map<string, string>();

  constructor(readonly root: string) {
    this.#realRoot = realpathSync.native(root);
  }

  /** Text of a file by its path from the root; undefined when there is none or it may not be read. */
  readonly read = (path: string): string | undefined => {
    const full = resolve(this.root, path);
    let real: string;
    try {
      real = realpathSync.native(full);
    } catch {
      return undefined;
    }
    if (!isInside(this.#realRoot, real)) return this.#refuse(path, 'it leads outside the workspace root');
    if (!statSync(real, { throwIfNoEntry: false })?.isFile()) return undefined;
    try {
      const bytes = readBytes(real);
      if ('tooLarge' in bytes) return this.#refuse(path, 'it is too large to be a file of recipes');
      return decode(bytes) ?? this.#refuse(path, 'it is not text in UTF-8');
    } catch {
      return this.#refuse(path, 'it may not be read');
    }
  };

  /** Whether a file is there and really lies inside the root, wherever links lead. */
  holds(file: string): boolean {
    try {
      return isInside(this.#realRoot, realpathSync.native(file)) && statSync(file).isFile();
    } catch {
      return false;
    }
  }

  #refuse(path: string, why: string): undefined {
    this.refused.set(path, why);
    return undefined;
  }

  /** The path from the root, with `/`. A link that stands inside the root is named by where it stands. */
  pathOf(file: string): string {
    return seenFrom(this.root, file);
  }
}
