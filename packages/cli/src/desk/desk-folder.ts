import { createHash } from 'node:crypto';
import { realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { decode, MOST_BYTES, readBytes } from '../files/read-text.js';
import { ENDING, findFiles } from '../files/walk.js';
import { isInside, withSlashes, Workspace } from '../files/workspace.js';
import { writeAtomically } from '../files/write-atomically.js';

/*
 * The folder behind a desk: its .quern files and nothing else. A path comes from a page, so it is taken apart and put
 * together again here; where it leads is asked of the system, so that no link leads out.
 */

export interface DeskText {
  readonly bytes: Uint8Array;
  /** Fingerprint of the content, so that nobody's change is written over unseen. */
  readonly version: string;
}

export type Saving =
  | { readonly kind: 'saved'; readonly version: string }
  /** What is there is not what was read. */
  | { readonly kind: 'changed' }
  | { readonly kind: 'refused'; readonly why: string };

/** What has to be there for a save: a version, whatever there is, or nothing. */
export type Expected = { readonly version: string } | 'anything' | 'nothing';

export class DeskFolder {
  readonly root: string;
  readonly #workspace: Workspace;

  constructor(root: string) {
    this.root = realpathSync.native(root);
    this.#workspace = new Workspace(this.root);
  }

  /** Its name, for people. */
  get name(): string {
    return basename(this.root);
  }

  /** Paths of its recipe files from the root, with `/`. Links that lead out of it are not among them. */
  list(): readonly string[] {
    return findFiles([this.root], this.root)
      .filter((file) => this.#workspace.holds(file))
      .map((file) => this.pathOf(file));
  }

  pathOf(file: string): string {
    return withSlashes(relative(this.root, file));
  }

  /** A file by its path; undefined when there is none, it is no recipe file, or it may not be read. */
  read(path: string): DeskText | undefined {
    const file = this.#fileOf(path);
    if (file === undefined || !this.#workspace.holds(file)) return undefined;
    try {
      const bytes = readBytes(file);
      if ('tooLarge' in bytes || decode(bytes) === undefined) return undefined;
      return { bytes, version: versionOf(bytes) };
    } catch {
      // It went away, or its permissions changed, between one look and the next.
      return undefined;
    }
  }

  /** Writes a file whole or not at all, if what is there is what was expected. */
  save(path: string, bytes: Uint8Array, expected: Expected): Saving {
    const file = this.#fileOf(path);
    if (file === undefined) return refused(`${path} is no path of a ${ENDING} file in this folder`);
    if (bytes.length > MOST_BYTES) return refused('the text is too large to be a file of recipes');
    if (decode(bytes) === undefined) return refused('the text is not UTF-8');
    const there = statSync(file, { throwIfNoEntry: false });
    if (there ? !this.#workspace.holds(file) : !this.#isFolderInside(dirname(file)))
      return refused(`${path} leads out of this folder`);
    if (expected === 'nothing' && there) return { kind: 'changed' };
    if (typeof expected === 'object' && this.read(path)?.version !== expected.version) return { kind: 'changed' };
    writeAtomically(file, bytes, path);
    return { kind: 'saved', version: versionOf(bytes) };
  }

  /** The file that a path means, when it is written as this folder's own paths are. */
  #fileOf(path: string): string | undefined {
    const parts = path.split('/');
    const plain = parts.every((part) => /^[^\\:\u0000-\u001F\u007F]+$/.test(part) && !part.startsWith('.'));
    if (!plain || !path.endsWith(ENDING) || path.length > 500) return undefined;
    const file = resolve(this.root, join(...parts));
    return isInside(this.root, file) ? file : undefined;
  }

  #isFolderInside(folder: string): boolean {
    try {
      return isInside(this.root, realpathSync.native(folder));
    } catch {
      // There is no such folder, and a save makes none.
      return false;
    }
  }
}

const refused = (why: string): Saving => ({ kind: 'refused', why });

const versionOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
