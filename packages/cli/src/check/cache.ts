import { hash } from 'node:crypto';
import { mkdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isFound, type Found } from '@quern/publish/report';
import { fileProblem } from '../files/problems.js';
import { writeAtomically } from '../files/write-atomically.js';

/*
 * What a check found, kept by content: the key of an entry is a hash of the tool, the file's path and its text; the
 * entry names every file it was compiled with and the hash of its text. So an entry is right or is not found; nothing
 * has to be thrown away by hand, and a cache may be carried from one machine to another.
 */

/** A kept result: nothing but `0` for a file with nothing to say and nothing used. */
type Entry =
  0 | { readonly uses: readonly (readonly [path: string, hash: string])[]; readonly found: readonly Found[] };

interface CacheFile {
  readonly format: 'quern-check-cache';
  readonly version: 1;
  readonly entries: Readonly<Record<string, Entry>>;
}

/** Entries of files that are no longer there are let go when there are more than this in a part. */
const MOST_ENTRIES = 200_000;

/** From so many files on the cache is kept in parts, so that one change does not write all of it anew. */
const MANY_FILES = 1000;
const PARTS = 16;

export const hashOf = (text: string | Uint8Array): string => hash('sha256', text, 'base64url').slice(0, 27);

export class CheckCache {
  readonly #parts: readonly CachePart[];

  /**
   * @param tool a hash of the tool itself: another build may say other things.
   * @param files how many files are checked.
   */
  constructor(folder: string, tool: string, files: number) {
    const name = (part: number): string => (files < MANY_FILES ? '' : `-${part + 1}-of-${PARTS}`);
    this.#parts = Array.from(
      { length: files < MANY_FILES ? 1 : PARTS },
      (_, part) => new CachePart(folder, `check-${tool}${name(part)}.json`),
    );
  }

  key(path: string, text: string | Uint8Array): string {
    return hashOf(`${path}\0${hashOf(text)}`);
  }

  /** What was found before for this text and the same texts of the files it uses. */
  find(key: string, hashOfFile: (path: string) => string): readonly Found[] | undefined {
    return this.#partOf(key).find(key, hashOfFile);
  }

  keep(key: string, found: readonly Found[], uses: readonly (readonly [string, string])[]): void {
    this.#partOf(key).keep(key, found.length === 0 && uses.length === 0 ? 0 : { uses, found });
  }

  /** Writes what is new, beside what another run has written in the meantime. */
  save(): void {
    for (const part of this.#parts) part.save();
  }

  #partOf(key: string): CachePart {
    const part = this.#parts[key.charCodeAt(0) % this.#parts.length];
    if (part === undefined) throw new Error('a cache has at least one part');
    return part;
  }
}

/** One file of the cache. */
class CachePart {
  readonly #path: string;
  readonly #stamp: string;
  readonly #old: Readonly<Record<string, Entry>>;
  readonly #new: Record<string, Entry> = {};
  #changed = false;

  constructor(
    readonly folder: string,
    name: string,
  ) {
    this.#path = join(folder, name);
    this.#stamp = stampOf(this.#path);
    this.#old = readEntries(this.#path);
  }

  find(key: string, hashOfFile: (path: string) => string): readonly Found[] | undefined {
    const entry = Object.hasOwn(this.#old, key) ? this.#old[key] : undefined;
    if (entry === undefined || !isEntry(entry)) return undefined;
    if (entry !== 0 && entry.uses.some(([path, known]) => hashOfFile(path) !== known)) return undefined;
    this.#new[key] = entry;
    return entry === 0 ? [] : entry.found;
  }

  keep(key: string, entry: Entry): void {
    this.#new[key] = entry;
    this.#changed = true;
  }

  save(): void {
    if (!this.#changed) return;
    try {
      mkdirSync(this.folder, { recursive: true });
    } catch (error) {
      throw fileProblem('write', this.folder, error);
    }
    const before = stampOf(this.#path) === this.#stamp ? this.#old : readEntries(this.#path);
    const fits = Object.keys(before).length + Object.keys(this.#new).length <= MOST_ENTRIES;
    const file: CacheFile = {
      format: 'quern-check-cache',
      version: 1,
      entries: { ...(fits ? before : {}), ...this.#new },
    };
    writeAtomically(this.#path, JSON.stringify(file));
  }
}

/** What tells one state of the file from another: each writing of it is a new file, put in the old one's place. */
function stampOf(path: string): string {
  const stat = statSync(path, { bigint: true, throwIfNoEntry: false });
  return stat === undefined ? '' : `${stat.dev}:${stat.ino}:${stat.size}:${stat.mtimeNs}`;
}

/** A cache comes from a disk, perhaps from another machine: what is not as we write it is checked anew. */
function isEntry(entry: unknown): entry is Entry {
  if (entry === 0) return true;
  if (typeof entry !== 'object' || entry === null) return false;
  const { uses, found } = entry as Readonly<Record<string, unknown>>;
  const isUse = (use: unknown): boolean =>
    Array.isArray(use) && use.length === 2 && use.every((part) => typeof part === 'string');
  return Array.isArray(uses) && uses.every(isUse) && Array.isArray(found) && found.every(isFound);
}

/** Nothing when there is no cache yet, or what is there is not one of ours: then everything is checked anew. */
function readEntries(path: string): Readonly<Record<string, Entry>> {
  try {
    const file = JSON.parse(readFileSync(path, 'utf8')) as Partial<CacheFile>;
    const isOurs = file.format === 'quern-check-cache' && file.version === 1;
    return isOurs && typeof file.entries === 'object' ? (file.entries ?? {}) : {};
  } catch {
    return {};
  }
}
