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
    const known = cache?.get(line);
    const parsed = known === undefined ? parseLine(line) : known.parsed;
    lines.push({ number: number++, start, text: known === undefined ? line : known.text, ending, parsed });
  }
  return { path, text, byteOrderMark: hasByteOrderMark(text), lines };
}

/**
 * Reads a file that has been read before, as after a keystroke: lines that are the same above what has changed are the
 * same objects again, those below it are only moved. The result is that of `parseDocument`.
 */
export function reparseDocument(before: Document, text: string, cache: LineCache): Document {
  const old = before.text;
  const head = commonStart(old, text);
  const tail = commonEnd(old, text, Math.min(old.length, text.length) - head);
  // A line above stands as it is only if its line end does too: what is typed behind a `\r` can make it a longer one.
  const changed = before.lines.findIndex((line) => line.ending === '' || lineEnd(line) >= head);
  const above = changed < 0 ? before.lines.length : changed;
  // A line below begins where it began only if the character before it is still there.
  const below = before.lines.findLastIndex(({ start }) => start <= old.length - tail || start === 0) + 1;
  const from = before.lines[above]?.start ?? 0;
  const rest = before.lines.slice(Math.max(above, below));
  const to = rest[0] === undefined ? text.length : rest[0].start + text.length - old.length;
  const middle = text.slice(from, to);
  // Only at the beginning of a file is such a character no part of its line.
  if (from > to || above > below || (above > 0 && hasByteOrderMark(middle)))
    return parseDocument(before.path, text, cache);
  const lines = before.lines.slice(0, above);
  const cut = above === 0 ? cutLines(text.slice(0, to)) : cutLines(middle);
  // What is cut off before the lines below ends with a line end; the empty line behind it is theirs.
  if (rest.length > 0) cut.pop();
  for (const { start, text: line, ending } of cut) {
    const known = cache.get(line);
    lines.push({
      number: lines.length,
      start: (above === 0 ? 0 : from) + start,
      text: known.text,
      ending,
      parsed: known.parsed,
    });
  }
  const by = text.length - old.length;
  for (const line of rest)
    lines.push({
      number: lines.length,
      start: line.start + by,
      text: line.text,
      ending: line.ending,
      parsed: line.parsed,
    });
  return { path: before.path, text, byteOrderMark: hasByteOrderMark(text), lines };
}

const lineEnd = ({ start, text, ending }: Line): number => start + text.length + ending.length;

/** How many characters two texts begin with alike. */
function commonStart(a: string, b: string): number {
  return longest(Math.min(a.length, b.length), (length) => a.slice(0, length) === b.slice(0, length));
}

/** How many characters two texts end with alike, at most so many. */
function commonEnd(a: string, b: string, most: number): number {
  return longest(most, (length) => a.slice(a.length - length) === b.slice(b.length - length));
}

/** The longest length that holds; shorter ones hold when a longer one does. */
function longest(most: number, holds: (length: number) => boolean): number {
  let low = 0;
  let high = most;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (holds(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
