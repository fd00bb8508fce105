import { closeSync, constants, existsSync, fstatSync, openSync, realpathSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { UsageError } from '../command.js';
import { decode, MOST_BYTES, readOpen } from './read-text.js';

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

/** What is not there is nobody's fault but the line's, which says so; what is there and cannot be had is told here. */
function whyNot(error: unknown): { readonly refused: string } | undefined {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ELOOP') return { refused: 'its links lead in a circle' };
  if (code === 'EACCES' || code === 'EPERM') return { refused: 'it may not be read' };
  if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG' || code === 'ERR_INVALID_ARG_VALUE')
    return undefined;
  return { refused: 'it cannot be read' };
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
    const bytes = this.bytes(resolve(this.root, path), MOST_BYTES, 'a file of recipes');
    if (bytes === undefined) return undefined;
    if ('refused' in bytes) return this.#refuse(path, bytes.refused);
    return decode(bytes) ?? this.#refuse(path, 'it is not text in UTF-8');
  };

  /**
   * The bytes of a file that lies under the root, wherever links lead; undefined when there is none.
   * @param most how large it may be, and `is` what it would be then: 'a picture'.
   */
  bytes(full: string, most: number, is: string): Buffer | { readonly refused: string } | undefined {
    try {
      const real = realpathSync.native(full);
      if (!isInside(this.#realRoot, real)) return { refused: 'it leads outside the workspace root' };
      // Not followed and not waited for: what stands there may have been changed for a link or a pipe just now.
      const file = openSync(real, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0));
      try {
        const stat = fstatSync(file);
        if (stat.isDirectory()) return { refused: 'it is a folder' };
        if (!stat.isFile()) return { refused: 'it is neither a file nor a folder' };
        const there = statSync(realpathSync.native(full));
        if (there.ino !== stat.ino || there.dev !== stat.dev || realpathSync.native(real) !== real)
          return { refused: 'it was changed for another while it was opened' };
        const bytes = readOpen(file, most);
        return 'tooLarge' in bytes ? { refused: `it is too large to be ${is}` } : bytes;
      } finally {
        closeSync(file);
      }
    } catch (error) {
      return whyNot(error);
    }
  }

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
