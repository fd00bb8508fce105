import { resolvePath, Session, type Compiled, type FoodBook } from '@quern/compiler';
import { LineCache, parseDocument } from '@quern/syntax';
import type { ObjectReader } from './objects.js';

/*
 * Files as they stood at a commit, compiled with the files they used then. Texts that are the same at several commits are
 * one object, and what was compiled of them is kept.
 */
export class PastCompiler {
  readonly #lines = new LineCache();
  readonly #texts = new Map<string, string | undefined>();
  readonly #session: Session;

  constructor(
    readonly reader: ObjectReader,
    foods: FoodBook,
  ) {
    this.#session = new Session({ read: (path) => this.#texts.get(path), foods }, { lines: this.#lines });
  }

  /** The file of a commit; undefined when there was none, or it was no text. */
  async compile(commit: string, path: string, blob: string): Promise<Compiled | undefined> {
    this.#texts.clear();
    const text = await this.reader.text(blob);
    if (text === undefined) return undefined;
    this.#texts.set(path, text);
    await this.#reach(commit, path, text);
    return this.#session.compile(path);
  }

  /** A text that stands in no commit, with the files that a commit holds. */
  async compileText(commit: string, path: string, text: string): Promise<Compiled | undefined> {
    this.#texts.clear();
    this.#texts.set(path, text);
    await this.#reach(commit, path, text);
    return this.#session.compile(path);
  }

  /** Reads what a file uses, and what that uses, into the texts at hand. */
  async #reach(commit: string, path: string, text: string): Promise<void> {
    const document = parseDocument(path, text, this.#lines);
    for (const { parsed } of document.lines) {
      const { content } = parsed;
      if (content.kind !== 'use') continue;
      const other = resolvePath(path, content.path.text);
      if (other === undefined || this.#texts.has(other)) continue;
      const found = await this.reader.text(`${commit}:${other}`);
      this.#texts.set(other, found);
      if (found !== undefined) await this.#reach(commit, other, found);
    }
  }
}
