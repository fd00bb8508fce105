import { parseDocument, usualEnding, type Document, type Line } from '@quern/syntax';
import { matchTrees, type Matching } from './match.js';
import { categoryOf, keyOf, subjectOf } from './parts.js';
import { treeOfDocument, type TreeNode } from './tree.js';

/*
 * Two changed states of a file brought together, line by line: a line that only one side changed is taken from that side,
 * wherever it stands; only a line that both changed is a conflict. Letters, remarks and empty lines are kept as they are.
 */

export interface MergeLabels {
  /** What the sides are called behind the conflict marks. */
  readonly ours: string;
  readonly theirs: string;
  /** Given when the common state is to be shown in a conflict. */
  readonly base?: string;
}

export interface Merged {
  readonly text: string;
  readonly conflicts: number;
}

/** A line with the remarks and empty lines above it. */
interface Unit {
  readonly above: readonly Line[];
  /** Missing for what stands below the last line of a file. */
  readonly line?: Line;
  /** The block in which it stands; a heading stands in its own. */
  readonly heading: Unit | undefined;
  readonly category: string;
}

/** What stands at a place of the merged file. */
type Piece =
  | { readonly kind: 'line'; readonly above: readonly Line[]; readonly line: Line | undefined }
  | {
      readonly kind: 'conflict';
      readonly above: readonly Line[];
      readonly ours?: Line;
      readonly base?: Line;
      readonly theirs?: Line;
    };

/** A place of the merged file, with the units that led to it. */
interface Slot {
  readonly piece: Piece;
  readonly ours?: Unit;
  readonly theirs?: Unit;
}

/**
 * Merges two states that come from a common one.
 * @param markerSize characters of a conflict mark; 7 as git writes them
 * @returns undefined where lines alone cannot tell what is meant: both sides put the work in another order, or one took a
 * block away into which the other wrote. Then a merge by text has to show it.
 */
export function mergeTexts(
  base: string,
  ours: string,
  theirs: string,
  labels: MergeLabels,
  markerSize = 7,
): Merged | undefined {
  if (base === ours || ours === theirs) return { text: theirs, conflicts: 0 };
  if (base === theirs) return { text: ours, conflicts: 0 };
  return new Merger(base, ours, theirs).merge(labels, markerSize);
}

class State {
  readonly document: Document;
  readonly tree: TreeNode;
  readonly units: readonly Unit[];
  readonly byLine: ReadonlyMap<Line, Unit>;

  constructor(text: string) {
    this.document = parseDocument('', text);
    this.tree = treeOfDocument(this.document);
    this.units = unitsOf(this.document);
    this.byLine = new Map(this.units.flatMap((unit) => (unit.line ? [[unit.line, unit] as const] : [])));
  }
}

function unitsOf({ lines }: Document): readonly Unit[] {
  const units: Unit[] = [];
  let above: Line[] = [];
  let heading: Unit | undefined;
  for (const line of lines) {
    const { content } = line.parsed;
    if (content.kind === 'blank' || content.kind === 'comment') {
      above.push(line);
      continue;
    }
    const unit: Unit = { above, line, heading, category: categoryOf(content) };
    above = [];
    if (content.kind === 'block') heading = unit;
    units.push(unit);
  }
  return [...units, { above, heading, category: 'end' }];
}

type Partners = ReadonlyMap<Unit, Unit>;

class Merger {
  readonly #base: State;
  readonly #ours: State;
  readonly #theirs: State;
  /** From a unit of the common state to that of a side, and back. */
  readonly #toOurs: Partners;
  readonly #toTheirs: Partners;
  readonly #fromOurs: Partners;
  readonly #fromTheirs: Partners;
  /** From new lines of ours to the same new lines of theirs. */
  readonly #both: Partners;
  #impossible = false;

  constructor(base: string, ours: string, theirs: string) {
    [this.#base, this.#ours, this.#theirs] = [new State(base), new State(ours), new State(theirs)];
    this.#toOurs = partners(this.#base, this.#ours);
    this.#toTheirs = partners(this.#base, this.#theirs);
    this.#fromOurs = turned(this.#toOurs);
    this.#fromTheirs = turned(this.#toTheirs);
    this.#both = new Map(
      [...partners(this.#ours, this.#theirs)].filter(([a, b]) => !this.#fromOurs.has(a) && !this.#fromTheirs.has(b)),
    );
  }

  merge(labels: MergeLabels, markerSize: number): Merged | undefined {
    if (
      [this.#base, this.#ours, this.#theirs].some(({ document }) =>
        document.lines.some(({ parsed }) => parsed.content.kind === 'conflict'),
      )
    )
      return undefined;
    // The side that moved lines gives the order; if both did, ours.
    const moved = this.#inOrder(this.#ours, this.#toOurs);
    const slots = moved || !this.#inOrder(this.#theirs, this.#toTheirs) ? this.#alongOurs() : this.#alongTheirs();
    if (this.#impossible || this.#stepsCross(slots) || !atHome(slots)) return undefined;
    const writer = new Writer(labels, markerSize, usualEnding(this.#ours.document.lines));
    const mark = this.#ours.document.byteOrderMark ? '\uFEFF' : '';
    return { text: mark + writer.write(slots.map(({ piece }) => piece)), conflicts: writer.conflicts };
  }

  /** Whether a side has moved lines of the common state. */
  #inOrder({ units }: State, to: Partners): boolean {
    const places = this.#base.units.flatMap((unit) => {
      const other = to.get(unit);
      return other ? [units.indexOf(other)] : [];
    });
    return places.some((place, index) => index > 0 && (places[index - 1] ?? 0) > place);
  }

  #alongOurs(): Slot[] {
    const slots = this.#ours.units.flatMap((unit) => this.#slotOf(unit));
    this.#put(this.#theirs, slots, 'theirs');
    return slots;
  }

  #alongTheirs(): Slot[] {
    const slots = this.#theirs.units.flatMap((unit) => this.#slotOfTheirs(unit));
    this.#put(this.#ours, slots, 'ours');
    return slots;
  }

  // ---- what stands at a place ----------------------------------------------------------------------------------------

  #slotOf(unit: Unit): Slot[] {
    const base = this.#fromOurs.get(unit);
    if (base) return this.#decided(base, unit, this.#toTheirs.get(base));
    const twin = this.#both.get(unit);
    return [twin ? { piece: this.#twice(unit, twin), ours: unit, theirs: twin } : { piece: lineOf(unit), ours: unit }];
  }

  #slotOfTheirs(unit: Unit): Slot[] {
    const base = this.#fromTheirs.get(unit);
    if (base) return this.#decided(base, this.#toOurs.get(base), unit);
    const twin = [...this.#both].find(([, theirs]) => theirs === unit)?.[0];
    return [
      twin ? { piece: this.#twice(twin, unit), ours: twin, theirs: unit } : { piece: lineOf(unit), theirs: unit },
    ];
  }

  /** A line of the common state, as both sides have it; nothing when it is gone. */
  #decided(base: Unit, ours: Unit | undefined, theirs: Unit | undefined): Slot[] {
    const units = { ...(ours ? { ours } : {}), ...(theirs ? { theirs } : {}) };
    if (ours && theirs) {
      const above = aboveOf(base, ours, theirs);
      const chosen = sameLine(ours, base) ? theirs : ours;
      const settled = sameLine(ours, base) || sameLine(theirs, base) || sameLine(ours, theirs);
      const piece: Piece = settled
        ? { kind: 'line', above, line: spelled(chosen, base, ours, theirs) }
        : conflict(above, ours, base, theirs);
      return [{ piece, ...units }];
    }
    const left = ours ?? theirs;
    if (!left || sameLine(left, base)) return [];
    return [{ piece: conflict(left.above, ours, base, theirs), ...units }];
  }

  /** A line that is new on both sides. */
  #twice(ours: Unit, theirs: Unit): Piece {
    const above = aboveOf(undefined, ours, theirs);
    return sameLine(ours, theirs) ? { kind: 'line', above, line: ours.line } : conflict(above, ours, undefined, theirs);
  }

  // ---- lines that only the other side has ------------------------------------------------------------------------------

  /** Puts in what only one side has, each behind the line that it stands behind there. */
  #put(state: State, slots: Slot[], side: 'ours' | 'theirs'): void {
    const from = side === 'ours' ? this.#fromOurs : this.#fromTheirs;
    const there = new Set(slots.flatMap((slot) => (slot[side] ? [slot[side]] : [])));
    for (const [index, unit] of state.units.entries()) {
      if (there.has(unit)) continue;
      const base = from.get(unit);
      const [ours, theirs] = side === 'ours' ? [unit, undefined] : [undefined, unit];
      // The other side took it away: settled where nobody wrote into it.
      const piece = base ? this.#decided(base, ours, theirs)[0]?.piece : lineOf(unit);
      if (!piece || unit.category === 'end') continue;
      const at = this.#placeOf(state.units.slice(0, index), unit, slots, side, there);
      slots.splice(at, 0, { piece, [side]: unit });
      there.add(unit);
    }
  }

  #placeOf(
    before: readonly Unit[],
    unit: Unit,
    slots: readonly Slot[],
    side: 'ours' | 'theirs',
    there: ReadonlySet<Unit>,
  ): number {
    const near = before.findLast((one) => there.has(one));
    let at = near ? slots.findIndex((slot) => slot[side] === near) + 1 : 0;
    const isBlock = unit.category.startsWith('block');
    // Behind what the other side has put in at the same place, but never into a block of its own.
    for (let slot = slots[at]; slot && isNew(slot, side); slot = slots[++at]) {
      const own = slot[side === 'ours' ? 'theirs' : 'ours'];
      if (own?.category.startsWith('block') && !isBlock) break;
      // Two steps at one place: nobody but the writers can tell which is first.
      if (own?.category === 'step' && unit.category === 'step') this.#impossible = true;
    }
    return at;
  }

  /** Whether the steps of a block follow each other otherwise than a side that changed their order had them. */
  #stepsCross(slots: readonly Slot[]): boolean {
    const sides = [
      { state: this.#ours, side: 'ours' as const, to: this.#toOurs },
      { state: this.#theirs, side: 'theirs' as const, to: this.#toTheirs },
    ];
    return (
      sides.every(({ state, to }) => this.#inOrder(state, to)) &&
      sides.some(({ state, side }) => {
        const places = slots.flatMap((slot) =>
          slot[side]?.category === 'step' ? [state.units.indexOf(slot[side])] : [],
        );
        return places.some((place, index) => index > 0 && (places[index - 1] ?? 0) > place);
      })
    );
  }
}

/** Whether every line stands in a block in which one of the sides has it. */
function atHome(slots: readonly Slot[]): boolean {
  let block: Slot | undefined;
  return slots.every((slot) => {
    const { ours, theirs } = slot;
    const home = (ours && ours.heading === block?.ours) ?? false;
    const other = (theirs && theirs.heading === block?.theirs) ?? false;
    const unit = ours ?? theirs;
    if (unit?.category.startsWith('block')) {
      block = slot;
      return true;
    }
    return home || other || unit?.category === 'end';
  });
}

const isNew = (slot: Slot, side: 'ours' | 'theirs'): boolean => slot[side] === undefined;
const lineOf = ({ above, line }: Unit): Piece => ({ kind: 'line', above, line });

function conflict(
  above: readonly Line[],
  ours: Unit | undefined,
  base: Unit | undefined,
  theirs: Unit | undefined,
): Piece {
  return {
    kind: 'conflict',
    above,
    ...(ours?.line ? { ours: ours.line } : {}),
    ...(base?.line ? { base: base.line } : {}),
    ...(theirs?.line ? { theirs: theirs.line } : {}),
  };
}

/** Whether two lines say the same. */
function sameLine(a: Unit, b: Unit): boolean {
  if (!a.line || !b.line) return a.line === b.line;
  if (a.line.text === b.line.text) return true;
  const [one, other] = [a.line.parsed.content, b.line.parsed.content];
  // A line that cannot be read says what its letters say.
  if (one.kind === 'bad' || other.kind === 'bad') return false;
  return keyOf(one, 'us') === keyOf(other, 'us');
}

/** Of lines that say the same, the one whose spelling somebody chose anew. */
function spelled(chosen: Unit, base: Unit, ours: Unit, theirs: Unit): Line | undefined {
  if (!sameLine(chosen, base)) return chosen.line;
  return (ours.line?.text === base.line?.text ? theirs : ours).line;
}

/** Remarks and empty lines above a line: whichever side changed them; if both did, all of them. */
function aboveOf(base: Unit | undefined, ours: Unit, theirs: Unit): readonly Line[] {
  const text = ({ above }: Unit): string => above.map((line) => line.text.trim()).join('\n');
  if (text(ours) === text(theirs) || (base && text(theirs) === text(base))) return ours.above;
  if (base && text(ours) === text(base)) return theirs.above;
  const told = new Set([...ours.above, ...(base?.above ?? [])].map((line) => line.text.trim()));
  return [...ours.above, ...theirs.above.filter((line) => !told.has(line.text.trim()))];
}

// ---- which line is which -------------------------------------------------------------------------------------------------

function partners(a: State, b: State): Partners {
  const sense = { cups: 'us', foodOf: () => undefined } as const;
  const matching: Matching = matchTrees(a.tree, b.tree, { before: sense, after: sense, factors: new Map() });
  const found = new Map<Unit, Unit>();
  const taken = new Set<Unit>();
  for (const [node, other] of matching.after) {
    const [one, two] = [node.line && a.byLine.get(node.line), other.line && b.byLine.get(other.line)];
    if (!one || !two || !isKept(one, two)) continue;
    found.set(one, two);
    taken.add(two);
  }
  // Lines that belong nowhere, and what stands below the last line.
  const free = b.units.filter((unit) => !taken.has(unit));
  for (const unit of a.units) {
    if (found.has(unit)) continue;
    const at = free.findIndex((other) => other.line?.text === unit.line?.text);
    const other = free[at];
    if (!other) continue;
    free.splice(at, 1);
    found.set(unit, other);
  }
  return found;
}

/**
 * Whether two paired lines are one line to a merge: all are, but batch records, which are only ever added.
 */
function isKept(one: Unit, other: Unit): boolean {
  const [a, b] = [one.line?.parsed.content, other.line?.parsed.content];
  if (!a || !b) return false;
  return a.kind !== 'baked' || (subjectOf(a) === subjectOf(b) && one.line?.text === other.line?.text);
}

const turned = (partner: Partners): Partners => new Map([...partner].map(([a, b]) => [b, a]));

// ---- writing -------------------------------------------------------------------------------------------------------------

class Writer {
  conflicts = 0;
  #text = '';

  constructor(
    readonly labels: MergeLabels,
    readonly markerSize: number,
    readonly ending: string,
  ) {}

  write(pieces: readonly Piece[]): string {
    for (const piece of pieces) {
      for (const line of piece.above) this.#line(line);
      if (piece.kind === 'conflict') this.#conflict(piece);
      else if (piece.line) this.#line(piece.line);
    }
    return this.#text;
  }

  #line({ text, ending }: Line): void {
    this.#apart();
    this.#text += text + ending;
  }

  /** A line that was the last of its file may have no end. */
  #apart(): void {
    if (this.#text !== '' && !/[\r\n]$/.test(this.#text)) this.#text += this.ending;
  }

  #mark(sign: string, label: string): void {
    this.#apart();
    this.#text += sign.repeat(this.markerSize) + (label === '' ? '' : ` ${label}`) + this.ending;
  }

  #conflict({ ours, base, theirs }: Extract<Piece, { kind: 'conflict' }>): void {
    this.conflicts++;
    this.#mark('<', this.labels.ours);
    if (ours) this.#line(ours);
    if (this.labels.base !== undefined) {
      this.#mark('|', this.labels.base);
      if (base) this.#line(base);
    }
    this.#mark('=', '');
    if (theirs) this.#line(theirs);
    this.#mark('>', this.labels.theirs);
  }
}
