import type { Line } from './ast.js';
import { Source } from './source.js';

/*
 * A file from recipe heading to recipe heading. Whoever types moves all that stands below by a character; were each line
 * below made anew with every key, a long file would cost what it is long. So a passage knows nothing of where it stands:
 * one that has only moved is the same object at another place, and its lines are made when somebody asks for them.
 */

/** The lines from a recipe's heading to the next one, or those above the first recipe. */
export class Passage extends Source {
  /** Its characters, line ends included. */
  readonly length: number;

  /**
   * @param file the path of the file that it is a passage of.
   * @param lines as they stood where they were first read; at least one.
   */
  constructor(
    readonly file: string,
    readonly lines: readonly Line[],
  ) {
    super();
    this.length = endOf(lines.at(-1)) - startOf(lines[0]);
  }

  /** Its lines that have something to say. */
  get linesWithMessages(): readonly Line[] {
    return this.once(speaking);
  }

  /** Whether a line of it names another file. */
  get namesFiles(): boolean {
    return this.once(naming);
  }
}

const speaking = ({ lines }: Passage): readonly Line[] => lines.filter(({ parsed }) => parsed.messages.length > 0);
const naming = ({ lines }: Passage): boolean => lines.some(({ parsed }) => parsed.content.kind === 'use');

/** A passage where it stands in a file. */
export class PlacedPassage extends Source {
  #lines: readonly Line[] | undefined;

  constructor(
    readonly passage: Passage,
    /** Offset of its first character in the file. */
    readonly start: number,
    /** Number of its first line in the file, from nought. */
    readonly number: number,
  ) {
    super();
  }

  /** Offset behind its last character. */
  get end(): number {
    return this.start + this.passage.length;
  }

  /** Number of the line behind its last. */
  get endNumber(): number {
    return this.number + this.passage.lines.length;
  }

  /** How many characters it has moved since it was first read. */
  get moved(): number {
    return this.start - startOf(this.passage.lines[0]);
  }

  /** Whether it stands where it was first read. */
  get inPlace(): boolean {
    return this.moved === 0 && this.passage.lines[0]?.number === this.number;
  }

  get lines(): readonly Line[] {
    return (this.#lines ??= this.inPlace ? this.passage.lines : this.passage.lines.map((line) => this.#place(line)));
  }

  /** Its first line, made without the others. */
  get first(): Line {
    const [line] = this.#lines ?? this.passage.lines;
    if (line === undefined) throw new Error('a passage without a line');
    return this.#lines === undefined ? this.#place(line) : line;
  }

  /** The same passage, moved by so many characters and lines. */
  movedBy(characters: number, lines: number): PlacedPassage {
    if (characters === 0 && lines === 0) return this;
    return new PlacedPassage(this.passage, this.start + characters, this.number + lines);
  }

  /** Which of its lines holds an offset of the file, from nought; its first when the offset lies above. */
  indexAt(offset: number): number {
    const { lines } = this.passage;
    const home = offset - this.moved;
    return lastWhere(lines, ({ start }) => start <= home);
  }

  /** Where a line of it begins in the file. */
  startOfLine(index: number): number {
    return startOf(this.passage.lines[index]) + this.moved;
  }

  /** Offset behind its first line. */
  get firstEnd(): number {
    return endOf(this.passage.lines[0]) + this.moved;
  }

  #place(line: Line): Line {
    const by = this.number - (this.passage.lines[0]?.number ?? 0);
    if (this.inPlace) return line;
    const { number, start, text, ending, parsed } = line;
    return { number: number + by, start: start + this.moved, text, ending, parsed };
  }
}

/** The passages of lines of a file that follow each other. */
export function passagesOf(file: string, lines: readonly Line[]): PlacedPassage[] {
  const passages: PlacedPassage[] = [];
  let from = 0;
  for (let to = 1; to <= lines.length; to++) {
    if (to < lines.length && !opensRecipe(lines[to])) continue;
    const own = lines.slice(from, to);
    passages.push(new PlacedPassage(new Passage(file, own), startOf(own[0]), own[0]?.number ?? 0));
    from = to;
  }
  return passages;
}

/** Passages, with those that say the same as one of before in its place: an edit at both ends of a file changes none between. */
export function recognised(passages: readonly PlacedPassage[], before: readonly PlacedPassage[]): PlacedPassage[] {
  const known = new Map<number, PlacedPassage[]>();
  for (const one of before) {
    const alike = known.get(one.passage.length);
    if (alike === undefined) known.set(one.passage.length, [one]);
    else alike.push(one);
  }
  return passages.map((one) => {
    const alike = known.get(one.passage.length) ?? [];
    // One that stands where it stood is the same object again, with all that was made of it.
    const same = alike.filter(({ passage }) => saysTheSame(passage, one.passage));
    const found = same.find(({ start, number }) => start === one.start && number === one.number) ?? same[0];
    return found === undefined ? one : found.movedBy(one.start - found.start, one.number - found.number);
  });
}

function saysTheSame(a: Passage, b: Passage): boolean {
  return (
    a.lines.length === b.lines.length &&
    a.lines.every((line, index) => line.text === b.lines[index]?.text && line.ending === b.lines[index]?.ending)
  );
}

/** The passage that holds an offset; the first when it lies above, the last when below. */
export function passageAt(passages: readonly PlacedPassage[], offset: number): PlacedPassage {
  return given(passages[lastWhere(passages, ({ start }) => start <= offset)]);
}

/** The passage that holds a line; the first when it lies above, the last when below. */
export function passageOfLine(passages: readonly PlacedPassage[], number: number): PlacedPassage {
  return given(passages[lastWhere(passages, (one) => one.number <= number)]);
}

function given(passage: PlacedPassage | undefined): PlacedPassage {
  if (passage === undefined) throw new Error('a document without a line');
  return passage;
}

/** Where the last item stands that something holds of, which holds of every item before one that it holds of; at least the first. */
function lastWhere<T>(items: readonly T[], holds: (item: T) => boolean): number {
  let low = 0;
  let high = items.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    const item = items[middle];
    if (item !== undefined && holds(item)) low = middle;
    else high = middle - 1;
  }
  return low;
}

function opensRecipe(line: Line | undefined): boolean {
  const content = line?.parsed.content;
  return content?.kind === 'block' && content.block === 'recipe';
}

const startOf = (line: Line | undefined): number => line?.start ?? 0;
const endOf = (line: Line | undefined): number => (line ? line.start + line.text.length + line.ending.length : 0);
