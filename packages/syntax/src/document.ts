import type { Document, Line, ParsedLine } from './ast.js';
import { cutLines, hasByteOrderMark } from './lines.js';
import { parseLine } from './parse-line.js';

/** A line's text by itself, holding on to nothing of the file it was cut from, and what it parses to. */
interface KnownLine {
  readonly text: string;
  readonly parsed: ParsedLine;
}

/**
 * Parsed lines by their text. A parsed line depends on its text alone and is never changed, so the same text gives the
 * same object again, in whatever file and at whatever place: a keystroke costs the line it falls in.
 *
 * Two generations bound it: when the young one is full it becomes the old one, and what is asked for again moves back.
 */
export class LineCache {
  #young = new Map<string, KnownLine>();
  #old = new Map<string, KnownLine>();

  /** @param limit how many lines a generation holds; at most twice as many are kept. */
  constructor(readonly limit = 50_000) {}

  /** Number of lines kept. */
  get size(): number {
    return this.#young.size + this.#old.size;
  }

  /** The line of a text, parsed now if it is not kept. */
  get(text: string): KnownLine {
    const young = this.#young.get(text);
    if (young !== undefined) return young;
    const known = this.#old.get(text) ?? knownLine(detached(text));
    if (this.#young.size >= this.limit) {
      this.#old = this.#young;
      this.#young = new Map();
    }
    this.#young.set(known.text, known);
    return known;
  }
}

function knownLine(text: string): KnownLine {
  return { text, parsed: parseLine(text) };
}

/** A copy of a text. Engines keep a slice as a view of the whole, so that one kept line would keep its whole file. */
function detached(slice: string): string {
  return slice.length < 13 ? slice : (JSON.parse(JSON.stringify(slice)) as string);
}

/** Reads a file. Never throws: a line that cannot be read is a line all the same, with its messages. */
export function parseDocument(path: string, text: string, cache?: LineCache): Document {
  const lines: Line[] = [];
  let number = 0;
  for (const { start, text: line, ending } of cutLines(text)) {
    const known = cache === undefined ? knownLine(line) : cache.get(line);
    lines.push({ number: number++, start, text: known.text, ending, parsed: known.parsed });
  }
  return { path, text, byteOrderMark: hasByteOrderMark(text), lines };
}
