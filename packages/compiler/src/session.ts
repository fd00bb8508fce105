import { outline, parseDocument, type Document, type LineCache } from '@quern/syntax';
import { compileFile, type Reach } from './file.js';
import type { Host } from './food-book.js';
import type { Compiled } from './model.js';

/*
 * Keeps what has been compiled, under three rules: what is kept is never changed; a file's entry depends on its own
 * text, the texts of what it uses and the food table; its messages are part of it. So an entry is fresh exactly when
 * every text it was made from is still the same.
 */

interface Entry {
  readonly compiled: Compiled;
  /** Every file that was read for it, itself included, with the text seen then. */
  readonly texts: ReadonlyMap<string, string | undefined>;
}

export interface SessionOptions {
  /** Shared between sessions to reuse parsed lines by their text. */
  readonly lines?: LineCache;
}

export class Session {
  readonly #open = new Map<string, string>();
  readonly #documents = new Map<string, Document>();
  readonly #entries = new Map<string, Entry>();

  constructor(
    readonly host: Host,
    readonly options: SessionOptions = {},
  ) {}

  /** Puts an editor's text before the host's; undefined gives the file back to the host. */
  set(path: string, text: string | undefined): void {
    if (text === undefined) this.#open.delete(path);
    else this.#open.set(path, text);
  }

  /** Text of a file as the session sees it. */
  text(path: string): string | undefined {
    return this.#open.get(path) ?? this.host.read(path);
  }

  /** The file parsed; the same object as long as the text is the same. */
  document(path: string): Document | undefined {
    const text = this.text(path);
    if (text === undefined) return undefined;
    const known = this.#documents.get(path);
    if (known && known.text === text) return known;
    const document = parseDocument(path, text, this.options.lines);
    this.#documents.set(path, document);
    return document;
  }

  /** The file compiled with all it uses; undefined when it cannot be read. */
  compile(path: string): Compiled | undefined {
    return this.#compile(path, []);
  }

  /** Forgets a file, as when it is closed for good. */
  forget(path: string): void {
    this.#open.delete(path);
    this.#documents.delete(path);
    this.#entries.delete(path);
  }

  #compile(path: string, through: readonly string[]): Compiled | undefined {
    const known = this.#entries.get(path);
    if (known && this.#isFresh(known)) return known.compiled;
    const document = this.document(path);
    if (!document) return undefined;
    const texts = new Map<string, string | undefined>([[path, document.text]]);
    let inCircle = false;
    const reach: Reach = (other) => {
      const chain = [...through, path];
      if (chain.includes(other)) {
        inCircle = true;
        return { kind: 'circle', through: [...chain.slice(chain.indexOf(other)), other].map((file) => file.split('/').at(-1) ?? file) };
      }
      texts.set(other, this.text(other));
      const compiled = this.#compile(other, chain);
      if (!compiled) return { kind: 'missing' };
      for (const [file, text] of this.#entries.get(other)?.texts ?? []) texts.set(file, text);
      return { kind: 'file', compiled };
    };
    const compiled = compileFile(document, outline(document), this.host.foods, reach);
    // A file met inside a circle was compiled without what it uses: right for this chain only, so it is not kept.
    if (!inCircle || through.length === 0) this.#entries.set(path, { compiled, texts });
    return compiled;
  }

  #isFresh(entry: Entry): boolean {
    for (const [path, text] of entry.texts) if (this.text(path) !== text) return false;
    return true;
  }
}

/** Compiles one text by itself. */
export function compile(path: string, text: string, host: Host): Compiled {
  const session = new Session(host);
  session.set(path, text);
  const compiled = session.compile(path);
  // The text was given, so the file can be read.
  if (!compiled) throw new Error(`no text for ${path}`);
  return compiled;
}
