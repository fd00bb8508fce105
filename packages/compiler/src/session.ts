import { parseDocument, reparseDocument, type Document, type LineCache } from '@quern/syntax';
import { compileFile, type Reach } from './file.js';
import { MOST_FILES } from './limits.js';
import type { Host } from './food-book.js';
import type { Compiled } from './model.js';
import { outlineOf } from './outline-of.js';
import { resolvePath } from './paths.js';
import { RecipeCache } from './recipe-cache.js';

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
  /** Recipes by file, so that one that has not changed is not compiled again with its file. */
  readonly #recipes = new Map<string, RecipeCache>();

  constructor(
    readonly host: Host,
    readonly options: SessionOptions = {},
  ) {}

  /** Puts an editor's text before the host's; undefined gives the file back to the host. */
  set(path: string, text: string | undefined): void {
    if (text === undefined) this.#open.delete(path);
    else this.#open.set(path, text);
  }

  /** What `act` gives while a file has another text; the file then is as it was, whoever put its text there. */
  trying<T>(path: string, text: string, act: () => T): T {
    const before = this.#open.get(path);
    this.#open.set(path, text);
    try {
      return act();
    } finally {
      this.set(path, before);
    }
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
    const { lines } = this.options;
    const document = known ? reparseDocument(known, text, lines) : parseDocument(path, text, lines);
    this.#documents.set(path, document);
    return document;
  }

  /** The file compiled with all it uses; undefined when it cannot be read. */
  compile(path: string): Compiled | undefined {
    return this.#compile(path);
  }

  /** Forgets a file, as when it is closed for good. */
  forget(path: string): void {
    this.#open.delete(path);
    this.#documents.delete(path);
    this.#entries.delete(path);
    this.#recipes.delete(path);
  }

  #recipesOf(path: string): RecipeCache {
    const known = this.#recipes.get(path) ?? new RecipeCache();
    this.#recipes.set(path, known);
    return known;
  }

  #compile(path: string): Compiled | undefined {
    const known = this.#entries.get(path);
    if (known && this.#isFresh(known)) return known.compiled;
    const document = this.document(path);
    if (!document) return undefined;
    const texts = new Map<string, string | undefined>([[path, document.text]]);
    const reach: Reach = (other) => {
      const circle = this.#wayBack(path, other);
      if (circle === 'too many') return { kind: 'too-many' };
      if (circle) {
        for (const file of circle) texts.set(file, this.text(file));
        return { kind: 'circle', through: circle.map((file) => file.split('/').at(-1) ?? file) };
      }
      texts.set(other, this.text(other));
      const compiled = this.#compile(other);
      if (!compiled) return { kind: 'missing' };
      for (const [file, text] of this.#entries.get(other)?.texts ?? []) texts.set(file, text);
      return { kind: 'file', compiled };
    };
    const compiled = compileFile(document, outlineOf(document), this.host.foods, reach, this.#recipesOf(path));
    this.#entries.set(path, { compiled, texts });
    return compiled;
  }

  /**
   * The files through which `start` is used again when it uses `next`, beginning and ending with `start`; undefined when
   * there is no such circle, 'too many' when it cannot be told within the limit. Every file of a circle refuses that use, so compiling never runs in circles.
   */
  #wayBack(start: string, next: string): readonly string[] | 'too many' | undefined {
    const seen = new Set<string>();
    const walk = (file: string, way: readonly string[]): readonly string[] | 'too many' | undefined => {
      if (file === start) return [...way, file];
      if (seen.has(file)) return undefined;
      if (seen.size === MOST_FILES) return 'too many';
      seen.add(file);
      for (const used of this.#usedPaths(file)) {
        const found = walk(used, [...way, file]);
        if (found) return found;
      }
      return undefined;
    };
    return walk(next, [start]);
  }

  /** Paths that a file's `use` lines name, without compiling it. */
  #usedPaths(path: string): string[] {
    const document = this.document(path);
    const naming = (document?.passages ?? []).filter(({ passage }) => passage.namesFiles);
    return naming.flatMap(({ passage }) =>
      passage.lines.flatMap(({ parsed: { content } }) => {
        const used = content.kind === 'use' ? resolvePath(path, content.path.text) : undefined;
        return used === undefined ? [] : [used];
      }),
    );
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
