import type { Document, Line, ParsedLine } from './ast.js';
import { cutLines, hasByteOrderMark, type CutLine } from './lines.js';
import { parseLine } from './parse-line.js';
import { passagesOf, recognised, type PlacedPassage } from './passages.js';
import { Source } from './source.js';

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

/** A file read; its lines and its passages are each made from the other when they are first asked for. */
class ReadDocument extends Source implements Document {
  readonly byteOrderMark: boolean;
  #lines: readonly Line[] | undefined;
  #passages: readonly PlacedPassage[] | undefined;

  constructor(
    readonly path: string,
    readonly text: string,
    parts: { readonly lines: readonly Line[] } | { readonly passages: readonly PlacedPassage[] },
  ) {
    super();
    this.byteOrderMark = hasByteOrderMark(text);
    if ('lines' in parts) this.#lines = parts.lines;
    else this.#passages = parts.passages;
  }

  get lines(): readonly Line[] {
    return (this.#lines ??= this.passages.flatMap(({ lines }) => lines));
  }

  get passages(): readonly PlacedPassage[] {
    return (this.#passages ??= passagesOf(this.path, this.lines));
  }

  get lineCount(): number {
    return this.#lines?.length ?? this.passages.at(-1)?.endNumber ?? 0;
  }
}

/** Reads a file. Never throws: a line that cannot be read is a line all the same, with its messages. */
export function parseDocument(path: string, text: string, cache?: LineCache): Document {
  return new ReadDocument(path, text, { lines: linesOf(cutLines(text), { start: 0, number: 0 }, cache) });
}

/** The lines that were cut from a text, where that text begins at a place of a file. */
function linesOf(
  cut: readonly CutLine[],
  from: { readonly start: number; readonly number: number },
  cache: LineCache | undefined,
): Line[] {
  const lines: Line[] = [];
  let number = from.number;
  for (const { start, text, ending } of cut) {
    const known = cache?.get(text) ?? { text, parsed: parseLine(text) };
    lines.push({ number: number++, start: from.start + start, text: known.text, ending, parsed: known.parsed });
  }
  return lines;
}

/**
 * Reads a file that has been read before, as after a keystroke: passages above what has changed are the same objects
 * again, those below and those between that say the same are only moved, and of the others, lines that are the same are
 * kept. The result is that of `parseDocument`.
 */
export function reparseDocument(before: Document, text: string, cache?: LineCache): Document {
  const old = before.text;
  const head = commonStart(old, text);
  const tail = commonEnd(old, text, Math.min(old.length, text.length) - head);
  const change: Change = { head, tail: old.length - tail, by: text.length - old.length };
  // A mark at the beginning is no part of a line; what stands before it makes it one.
  if (before.byteOrderMark && head === 0) return parseDocument(before.path, text, cache);
  const { passages } = before;
  const [above, below] = untouched(passages, change);
  const touched = passages.slice(above, below).flatMap(({ lines }) => lines);
  const rest = passages.slice(below);
  const between = linesBetween(touched, rest.length > 0, text, change, cache);
  if (between === undefined) return parseDocument(before.path, text, cache);
  const lines = between.length - touched.length;
  return new ReadDocument(before.path, text, {
    passages: [
      ...passages.slice(0, above),
      ...recognised(passagesOf(before.path, between), passages.slice(above, below)),
      ...rest.map((passage) => passage.movedBy(change.by, lines)),
    ],
  });
}

/** What has changed in a text, by offsets of the text as it was. */
interface Change {
  /** Up to here it is the same. */
  readonly head: number;
  /** From here on it is the same. */
  readonly tail: number;
  /** How many characters more it has. */
  readonly by: number;
}

/** How many passages stand as they did above a change, and from which on they have only moved. */
function untouched(passages: readonly PlacedPassage[], { head, tail }: Change): [above: number, below: number] {
  // A line stands as it is only if its line end does too: what is typed behind a `\r` can make it a longer one.
  const changed = passages.findIndex((passage) => passage.end >= head);
  let above = changed < 0 ? passages.length - 1 : changed;
  const first = passages[above];
  // A heading that has changed may be one no longer: its lines then stand under the recipe above.
  if (first && above > 0 && first.firstEnd >= head) above--;
  // What is below begins where it began only if the character before it is still there.
  const below = passages.findLastIndex(({ start }) => start <= tail) + 1;
  return [above, Math.max(above + 1, below)];
}

/**
 * The lines that stand in place of lines which a change has touched.
 * @param more whether other lines follow them.
 * @returns undefined when the file has to be read from the beginning.
 */
function linesBetween(
  touched: readonly Line[],
  more: boolean,
  text: string,
  { head, tail, by }: Change,
  cache: LineCache | undefined,
): Line[] | undefined {
  const above = touched.findIndex((line) => line.ending === '' || lineEnd(line) >= head);
  const below = touched.findLastIndex(({ start }) => start <= tail) + 1;
  const rest = touched.slice(Math.max(above, below));
  const first = touched[above];
  const last = touched.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const from = first.start;
  const to = (rest[0]?.start ?? lineEnd(last)) + by;
  if (from > to || above > below) return undefined;
  const middle = text.slice(from, to);
  const begins = first.number === 0;
  // Only at the beginning of a file is such a character no part of its line.
  if (!begins && hasByteOrderMark(middle)) return undefined;
  const cut = begins ? cutLines(text.slice(0, to)) : cutLines(middle);
  // What is cut off before lines below ends with a line end; the empty line behind it is theirs.
  if (rest.length > 0 || more) cut.pop();
  const lines = touched.slice(0, above);
  const place = { start: begins ? 0 : from, number: first.number };
  for (const line of linesOf(cut, place, cache)) lines.push(line);
  const down = lines.length + rest.length - touched.length;
  for (const { number, start, text: own, ending, parsed } of rest)
    lines.push({ number: number + down, start: start + by, text: own, ending, parsed });
  return lines;
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
