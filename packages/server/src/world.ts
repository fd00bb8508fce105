import type { FoodBook, Session } from '@quern/compiler';
import { editorSession, snapshotOf, type Snapshot } from '@quern/ide';
import type { Files } from './files.js';

/*
 * The files of the workspace: those that are open as the editor has them, the others as they lie. Each folder is a world of
 * its own, so that a recipe can use no file outside its folder; a file in no folder has its own folder for a world.
 */

/** How long what was read from the disk is believed without looking again, in milliseconds. */
const FRESH_FOR = 1000;

interface Read {
  readonly text: string | undefined;
  readonly at: number;
}

class Root {
  readonly session: Session;
  readonly #read = new Map<string, Read>();
  #listed: { readonly paths: readonly string[]; readonly at: number } | undefined;

  /** @param deep whether files below count too: a workspace folder, or the folder of a file in none. */
  constructor(
    readonly uri: string,
    private readonly world: World,
    private readonly deep: boolean,
  ) {
    this.session = editorSession({ foods: world.foods, read: (path) => this.#fromDisk(path) });
  }

  #fromDisk(path: string): string | undefined {
    const known = this.#read.get(path);
    const now = this.world.now();
    if (known !== undefined && now - known.at < FRESH_FOR) return known.text;
    const read = this.world.files.read(this.uriOf(path), this.uri);
    // The same text stays the same object, so that comparing it costs nothing.
    const text = known?.text === read ? known?.text : read;
    this.#read.set(path, { text, at: now });
    return text;
  }

  /** Forgets what was read, because somebody says that it has changed. */
  changed(path: string): void {
    this.#read.delete(path);
    this.#listed = undefined;
  }

  uriOf(path: string): string {
    return this.world.uriOfOpen(this, path) ?? `${this.uri}/${path.split('/').map(encodeURIComponent).join('/')}`;
  }

  /** Every recipe file of the folder, those that are open only here included. */
  paths(): readonly string[] {
    const now = this.world.now();
    if (this.#listed === undefined || now - this.#listed.at > 5 * FRESH_FOR) {
      const paths = this.world.files.list(this.uri, this.deep).flatMap((uri) => pathIn(this.uri, uri) ?? []);
      this.#listed = { paths, at: now };
    }
    return [...new Set([...this.#listed.paths, ...this.world.openIn(this)])].sort();
  }
}

/** The path of a file in a folder; undefined when it lies elsewhere. */
function pathIn(folder: string, uri: string): string | undefined {
  return uri.startsWith(`${folder}/`) ? decoded(uri.slice(folder.length + 1)) : undefined;
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    // A URI that is not well encoded is taken as it stands.
    return text;
  }
}

/** A file of the world. */
export interface Located {
  readonly root: Root;
  readonly path: string;
}

export class World {
  readonly #folders: string[] = [];
  readonly #roots = new Map<string, Root>();
  readonly #open = new Map<string, Located>();

  constructor(
    readonly files: Files,
    readonly foods: FoodBook,
    readonly now: () => number,
  ) {}

  addFolder(uri: string): void {
    this.#folders.push(uri.replace(/\/+$/, ''));
    // The folder deepest down has a file that several hold.
    this.#folders.sort((a, b) => b.length - a.length);
  }

  removeFolder(uri: string): void {
    const folder = uri.replace(/\/+$/, '');
    this.#folders.splice(0, this.#folders.length, ...this.#folders.filter((one) => one !== folder));
    this.#roots.delete(folder);
  }

  locate(uri: string): Located {
    const known = this.#open.get(uri);
    if (known !== undefined) return known;
    const workspace = this.#folders.find((one) => uri.startsWith(`${one}/`));
    const folder = workspace ?? uri.slice(0, Math.max(0, uri.lastIndexOf('/')));
    const root = this.#roots.get(folder) ?? new Root(folder, this, workspace !== undefined);
    this.#roots.set(folder, root);
    return { root, path: pathIn(folder, uri) ?? decoded(uri) };
  }

  /** The text of an open file, as its editor has it. */
  setOpen(uri: string, text: string): void {
    const located = this.locate(uri);
    this.#open.set(uri, located);
    located.root.session.set(located.path, text);
  }

  /** The file is as it lies on the disk again. */
  close(uri: string): void {
    const located = this.#open.get(uri);
    if (located === undefined) return;
    this.#open.delete(uri);
    located.root.changed(located.path);
    located.root.session.forget(located.path);
  }

  isOpen(uri: string): boolean {
    return this.#open.has(uri);
  }

  changedOnDisk(uri: string): void {
    const { root, path } = this.locate(uri);
    root.changed(path);
  }

  snapshot(uri: string): Snapshot | undefined {
    const { root, path } = this.locate(uri);
    return snapshotOf(root.session, path, () => root.paths());
  }

  /** The URI under which a file of the same folder as another is known. */
  uriBeside(uri: string, path: string): string {
    return this.locate(uri).root.uriOf(path);
  }

  openUris(): readonly string[] {
    return [...this.#open.keys()];
  }

  folders(): readonly Root[] {
    for (const folder of this.#folders)
      if (!this.#roots.has(folder)) this.#roots.set(folder, new Root(folder, this, true));
    return [...this.#roots.values()];
  }

  uriOfOpen(root: Root, path: string): string | undefined {
    for (const [uri, located] of this.#open) if (located.root === root && located.path === path) return uri;
    return undefined;
  }

  openIn(root: Root): readonly string[] {
    return [...this.#open.values()].filter((located) => located.root === root).map(({ path }) => path);
  }
}
