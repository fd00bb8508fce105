import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import { UsageError } from '../command.js';
import { fileProblem } from '../files/problems.js';
import { writeAtomically } from '../files/write-atomically.js';

/*
 * The folder that a site is written to. A list of our own says which files are ours, what each was made from and when
 * its recipe last changed; so a file is written only when it has to be, files of recipes that are gone are taken away,
 * and nothing else is ever touched.
 */

const LIST = 'quern-site.json';

interface SiteList {
  readonly format: 'quern-site';
  readonly version: 1;
  /** What made the files: with another version of the program each is made again. */
  readonly made: string;
  /** Each file with the SHA-256 of all that it is made from. */
  readonly files: Readonly<Record<string, string>>;
  /** Each recipe with the SHA-256 of its card, and the ISO 8601 moment at which that last changed. */
  readonly cards: Readonly<Record<string, { readonly card: string; readonly changed: string }>>;
}

export interface FolderFile {
  readonly path: string;
  readonly inputs: string;
  readonly render: () => string | Uint8Array;
}

export interface WrittenSite {
  readonly written: number;
  readonly kept: number;
  readonly removed: number;
}

/** An object in which each value passes. */
const isMap = (value: unknown, passes: (value: unknown) => boolean): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && Object.values(value).every(passes);

const isText = (value: unknown): boolean => typeof value === 'string';
const isCard = (value: unknown): boolean =>
  isMap(value, isText) && 'card' in Object(value) && 'changed' in Object(value);

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex');

export class SiteFolder {
  readonly #before: SiteList;
  readonly #cards: Record<string, { card: string; changed: string }> = {};

  /** @throws UsageError when the list in the folder is not one of ours. */
  constructor(
    readonly folder: string,
    /** The path as the reader gave it. */
    readonly shown: string,
    readonly made: string,
  ) {
    this.#before = this.#readList() ?? { format: 'quern-site', version: 1, made, files: {}, cards: {} };
  }

  /** When a card last changed: now, or earlier if it was the same then. */
  changedAt(key: string, card: string, now: string): string {
    const hash = hashOf(card);
    const before = Object.hasOwn(this.#before.cards, key) ? this.#before.cards[key] : undefined;
    const changed = before?.card === hash ? before.changed : now;
    this.#cards[key] = { card: hash, changed };
    return changed;
  }

  /**
   * Writes what has changed, tells how far it is, and takes away what is no longer made.
   * @throws UsageError when a file that is not ours stands in the way, or one cannot be written.
   */
  write(files: readonly FolderFile[], told: (done: number) => void): WrittenSite {
    this.#refuseStrangers(files);
    this.#begin(files);
    const after: Record<string, string> = {};
    const isSameProgram = this.#before.made === this.made;
    let written = 0;
    for (const [index, { path, inputs, render }] of files.entries()) {
      const hash = hashOf(inputs);
      after[path] = hash;
      const place = join(this.folder, path);
      if (!isSameProgram || !this.#isOurs(path) || this.#before.files[path] !== hash || !existsSync(place)) {
        makeFolder(dirname(place), this.shown);
        writeAtomically(place, render(), join(this.shown, path));
        written++;
      }
      told(index + 1);
    }
    const gone = Object.keys(this.#before.files).filter((path) => !Object.hasOwn(after, path));
    for (const path of gone) this.#remove(path);
    this.#writeList({ format: 'quern-site', version: 1, made: this.made, files: after, cards: this.#cards });
    return { written, kept: files.length - written, removed: gone.length };
  }

  /**
   * Writes down what is about to be made, as made from nothing: should the work be broken off, the next run knows its
   * own files by it and makes them again.
   */
  #begin(files: readonly FolderFile[]): void {
    const added = files.filter(({ path }) => !this.#isOurs(path));
    if (added.length === 0) return;
    const planned = Object.fromEntries(added.map(({ path }) => [path, '']));
    this.#writeList({ ...this.#before, files: { ...this.#before.files, ...planned } });
  }

  #writeList(list: SiteList): void {
    makeFolder(this.folder, this.shown);
    writeAtomically(join(this.folder, LIST), `${JSON.stringify(list, null, 1)}\n`, join(this.shown, LIST));
  }

  #isOurs(path: string): boolean {
    return Object.hasOwn(this.#before.files, path);
  }

  #refuseStrangers(files: readonly FolderFile[]): void {
    const stranger = files.find(({ path }) => !this.#isOurs(path) && existsSync(join(this.folder, path)));
    if (!stranger) return;
    throw new UsageError(
      `${join(this.shown, stranger.path)} stands in the way: quern did not make it`,
      'choose an empty folder, or take the file away',
    );
  }

  #remove(path: string): void {
    try {
      rmSync(this.#own(path), { force: true });
    } catch (error) {
      throw error instanceof UsageError ? error : fileProblem('take away', join(this.shown, path), error);
    }
  }

  /** A path of the list, which may have been tampered with: never one outside the folder. */
  #own(path: string): string {
    const place = join(this.folder, path);
    const real = existsSync(dirname(place)) ? realpathSync(dirname(place)) : dirname(place);
    const way = relative(realpathSync(this.folder), real);
    if (way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way))
      throw new UsageError(
        `${join(this.shown, LIST)} names a file outside the folder: ${path}`,
        'delete the list and choose an empty folder',
      );
    return place;
  }

  #readList(): SiteList | undefined {
    let text: string;
    try {
      text = readFileSync(join(this.folder, LIST), 'utf8');
    } catch {
      return undefined;
    }
    const shown = join(this.shown, LIST);
    let list: Partial<SiteList>;
    try {
      list = JSON.parse(text) as Partial<SiteList>;
    } catch {
      list = {};
    }
    if (
      list.format !== 'quern-site' ||
      list.version !== 1 ||
      !isMap(list.files, isText) ||
      !isMap(list.cards, isCard)
    ) {
      throw new UsageError(`${shown} is not a list that this version of quern made`, 'choose an empty folder');
    }
    return list as SiteList;
  }
}

function makeFolder(folder: string, shown: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw fileProblem('write', shown, error);
  }
}
