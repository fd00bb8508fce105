import type { Document, Line, ParsedLine } from './ast.js';
import { cutLines, hasByteOrderMark } from './lines.js';
import { parseLine } from './parse-line.js';

/**
 * Parsed lines by their text. A parsed line depends on its text alone and is never changed, so the same text gives the
 * same object again, in whatever file and at whatever place: a keystroke costs the line it falls in.
 *
 * Two generations bound it: when the young one is full it becomes the old one, and what is asked for again moves back.
 */
export class LineCache {
  #young = new Map<string, ParsedLine>();
  #old = new Map<string, ParsedLine>();

  /** @param limit how many lines a generation holds; at most twice as many are kept. */
  constructor(readonly limit = 50_000) {}

  /** Number of lines kept. */
  get size(): number {
    return this.#young.size + this.#old.size;
  }

  /** The parsed line of a text, parsed now if it is not kept. */
  get(text: string): ParsedLine {
    const young = this.#young.get(text);
    if (young !== undefined) return young;
    const parsed = this.#old.get(text) ?? parseLine(text);
    if (this.#young.size >= this.limit) {
      this.#old = this.#young;
      this.#young = new Map();
    }
    this.#young.set(text, parsed);
    return parsed;
  }
}

/** Reads a file. Never throws: a line that cannot be read is a line all the same, with its messages. */
export function parseDocument(path: string, text: string, cache?: LineCache): Document {
  const lines: Line[] = [];
  let number = 0;
  for (const { start, text: line, ending } of cutLines(text)) {
    const parsed = cache === undefined ? parseLine(line) : cache.get(line);
    lines.push({ number: number++, start, text: line, ending, parsed });
  }
  return { path, text, byteOrderMark: hasByteOrderMark(text), lines };
}
