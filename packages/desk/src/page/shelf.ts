/** Where a file came from and goes back to when it is saved. */
export type Home =
  | { readonly kind: 'example' }
  | { readonly kind: 'new' }
  | { readonly kind: 'link' }
  /** Opened from the disk; with a handle it can be saved in its place. */
  | { readonly kind: 'disk'; readonly handle: FileHandle | undefined }
  /** In the folder that `quern desk` serves; the version is that of the text that was read. */
  | { readonly kind: 'folder'; readonly version: string };

/** What is used of the File System Access API (WICG), which not every browser has. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(data: string): Promise<void>; close(): Promise<void> }>;
}

/** A file that is open. Its text is in the editor; this is what belongs to it besides. */
export interface ShelfFile {
  readonly path: string;
  readonly home: Home;
  /** The text as opened or last saved, with `\n`. */
  readonly saved: string;
  /** Line ends that the file is written with. */
  readonly ending: '\n' | '\r\n';
  /** It began with a byte-order mark, and will again. */
  readonly marked: boolean;
}

const MARK = '\uFEFF';

export interface Laid {
  readonly text: string;
  readonly ending: '\n' | '\r\n';
  readonly marked: boolean;
  /** The line ends were not all the same. */
  readonly mixed: boolean;
}

/** A file's text as the editor holds it, with what is needed to write it as it was. */
export function layOpen(raw: string): Laid {
  const marked = raw.startsWith(MARK);
  const body = marked ? raw.slice(1) : raw;
  const all = body.match(/\r\n|\r|\n/g) ?? [];
  const windows = all.filter((one) => one === '\r\n').length;
  return {
    text: body.replace(/\r\n|\r/g, '\n'),
    ending: windows * 2 > all.length ? '\r\n' : '\n',
    marked,
    mixed: new Set(all).size > 1,
  };
}

/** The text as it is written to the disk. */
export function layBack(text: string, { ending, marked }: Pick<ShelfFile, 'ending' | 'marked'>): string {
  return (marked ? MARK : '') + (ending === '\n' ? text : text.replace(/\n/g, ending));
}

/** The files that are open, in the order in which they were opened. */
export class Shelf {
  readonly #files = new Map<string, ShelfFile>();

  get files(): readonly ShelfFile[] {
    return [...this.#files.values()];
  }

  get(path: string): ShelfFile | undefined {
    return this.#files.get(path);
  }

  put(file: ShelfFile): void {
    this.#files.set(file.path, file);
  }

  remove(path: string): void {
    this.#files.delete(path);
  }

  /** A path that no open file has: `loaf.quern`, then `loaf-2.quern`. */
  freePath(wanted: string): string {
    if (!this.#files.has(wanted)) return wanted;
    const stem = wanted.replace(/\.quern$/i, '');
    for (let number = 2; ; number++) {
      const path = `${stem}-${number}.quern`;
      if (!this.#files.has(path)) return path;
    }
  }
}
