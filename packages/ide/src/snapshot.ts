import { applyEdits, contains, type TextEdit } from '@quern/text';
import { Session, type Compiled, type Formula, type FoodBook, type Host, type Make, outlineOf } from '@quern/compiler';
import {
  LineCache,
  passageAt,
  passageOfLine,
  type BlockLine,
  type Document,
  type Line,
  type Outline,
} from '@quern/syntax';
import { itemsByLine, type ItemPlace } from './ledger-index.js';
import { NameReader, type Occurrence } from './names.js';

/*
 * What every editor answer starts from: one file as it stands now, with the session it belongs to. Positions are UTF-16
 * offsets into the file; lines and columns are made by whoever talks to the editor.
 */

export class Snapshot {
  #compiled: Compiled | undefined;
  #reader: NameReader | undefined;
  /** Names of recipes by the line of their heading; those outside recipes under -1. */
  readonly #names = new Map<number, readonly Occurrence[]>();
  readonly #namesByLine = new Map<number, ReadonlyMap<number, readonly Occurrence[]>>();

  /** @param listFiles every file of the workspace, for answers that reach beyond this one; asked for only by those. */
  constructor(
    readonly session: Session,
    readonly document: Document,
    readonly listFiles: () => readonly string[],
  ) {}

  get files(): readonly string[] {
    return this.listFiles();
  }

  get path(): string {
    return this.document.path;
  }

  get text(): string {
    return this.document.text;
  }

  get foods(): FoodBook {
    return this.session.host.foods;
  }

  get outline(): Outline {
    return outlineOf(this.document);
  }

  get compiled(): Compiled {
    return (this.#compiled ??= this.#compile());
  }

  /** Every name written in the file outside sentences, in the order of the text. */
  get names(): readonly Occurrence[] {
    const groups = [-1, ...this.outline.recipes.map(({ heading }) => heading.line.number)];
    return groups.flatMap((group) => this.#namesOf(group)).sort((a, b) => a.span.start - b.span.start);
  }

  /** The names of the recipe that a line belongs to, and those outside recipes. */
  namesAround(line: number): readonly Occurrence[] {
    return [...this.#namesOf(this.#recipeAbove(line)), ...this.#namesOf(-1)];
  }

  /** The names of a line. */
  namesOn(line: number): readonly Occurrence[] {
    for (const group of [this.#recipeAbove(line), -1]) {
      const byLine = this.#namesByLine.get(group) ?? groupByLine(this.#namesOf(group));
      this.#namesByLine.set(group, byLine);
      const found = byLine.get(line);
      if (found !== undefined) return found;
    }
    return [];
  }

  /** The line of the last recipe heading at or above a line; -1 above the first. */
  #recipeAbove(line: number): number {
    const { recipes } = this.outline;
    let low = -1;
    let high = recipes.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((recipes[middle]?.heading.line.number ?? 0) <= line) low = middle;
      else high = middle - 1;
    }
    return recipes[low]?.heading.line.number ?? -1;
  }

  #namesOf(group: number): readonly Occurrence[] {
    const known = this.#names.get(group);
    if (known !== undefined) return known;
    const reader = (this.#reader ??= new NameReader(this));
    const block = this.outline.recipes.find(({ heading }) => heading.line.number === group);
    const names = block === undefined ? reader.others() : reader.recipe(block);
    this.#names.set(group, names);
    return names;
  }

  /**
   * The file as it would be after edits, compiled with what the session keeps of the other recipes. The session is left as
   * it was; other files of the workspace are as they are.
   */
  edited(edits: readonly TextEdit[]): Snapshot {
    const { session, path } = this;
    return session.trying(path, applyEdits(this.text, edits), () => {
      const edited = new Snapshot(session, this.#read(), this.listFiles);
      edited.#compiled = edited.#compile();
      return edited;
    });
  }

  #read(): Document {
    const document = this.session.document(this.path);
    if (document === undefined) throw new Error(`the session cannot read ${this.path}`);
    return document;
  }

  #compile(): Compiled {
    const compiled = this.session.compile(this.path);
    if (compiled === undefined) throw new Error(`the session cannot read ${this.path}`);
    return compiled;
  }

  /** The line that holds an offset; its end counts, because a cursor stands between characters. */
  lineAt(offset: number): Line {
    const passage = passageAt(this.document.passages, offset);
    const line = passage.lines[passage.indexAt(offset)];
    if (line === undefined) throw new Error('a document without a line');
    return line;
  }

  /** The line of an offset, from nought, and how far into it that is; no line is made for it. */
  positionAt(offset: number): { readonly line: number; readonly character: number } {
    const passage = passageAt(this.document.passages, offset);
    const index = passage.indexAt(offset);
    return { line: passage.number + index, character: Math.max(0, offset - passage.startOfLine(index)) };
  }

  line(number: number): Line | undefined {
    const passage = passageOfLine(this.document.passages, number);
    return passage.lines[number - passage.number];
  }

  /** The name written at an offset, outside sentences. */
  nameAt(offset: number): Occurrence | undefined {
    return this.namesOn(this.lineAt(offset).number).find(({ span }) => contains(span, offset));
  }

  /** The block line that a line stands under, itself included; `make` lines stand under their recipe or variant. */
  blockAt(line: number): BlockLine | undefined {
    for (let number = line; number >= 0; number--) {
      const content = this.line(number)?.parsed.content;
      if (content?.kind === 'block') return content;
    }
    return undefined;
  }

  /** The formulas of the recipe that a line stands in: the recipe itself, then its variants; empty in other blocks. */
  formulasAt(line: number): readonly Formula[] {
    const block = this.blockAt(line)?.block;
    return block === 'recipe' || block === 'make' || block === 'variant' ? this.compiled.formulasAt(line) : [];
  }

  /** The formula that a line speaks of: the variant it stands in, else the recipe. */
  formulaAt(line: number): Formula | undefined {
    const formulas = this.formulasAt(line);
    for (let number = line; number >= 0; number--) {
      const content = this.line(number)?.parsed.content;
      if (content?.kind !== 'block' || content.block === 'make') continue;
      const variant = formulas.find(({ variantRef }) => variantRef?.line.number === number);
      return variant ?? formulas[0];
    }
    return undefined;
  }

  /** The item of the ledger that a line is. Alternatives, more words and care belong to the line above them. */
  itemAt(line: number): ItemPlace | undefined {
    const here = this.formulaAt(line);
    return here && itemsByLine(here).get(line);
  }

  /** The make whose block holds a line. */
  makeAt(line: number): { readonly formula: Formula; readonly make: Make } | undefined {
    const formula = this.formulaAt(line);
    if (formula === undefined) return undefined;
    let found: Make | undefined;
    for (const make of formula.makes) {
      const { number } = make.ref.line;
      if (number <= line && (found === undefined || number >= found.ref.line.number)) found = make;
    }
    return found && { formula, make: found };
  }
}

function groupByLine(names: readonly Occurrence[]): ReadonlyMap<number, readonly Occurrence[]> {
  const groups = new Map<number, Occurrence[]>();
  for (const name of names) {
    const group = groups.get(name.line);
    if (group === undefined) groups.set(name.line, [name]);
    else group.push(name);
  }
  return groups;
}

/**
 * How many lines a session of an editor keeps beside those that stand in its files, in each of two generations. A line that
 * has not changed is taken from the file itself, so that this only serves lines that come back.
 */
const KEPT_LINES = 4_000;

/** A session for an editor: lines are kept parsed by their text, so that a keystroke costs its line and its recipe. */
export const editorSession = (host: Host): Session => new Session(host, { lines: new LineCache(KEPT_LINES) });

/** A file of a session as it stands now; undefined when it cannot be read. */
export function snapshotOf(
  session: Session,
  path: string,
  files: readonly string[] | (() => readonly string[]) = [path],
): Snapshot | undefined {
  const document = session.document(path);
  return document && new Snapshot(session, document, typeof files === 'function' ? files : () => files);
}

/** What a file would be with another text, such as the one it had. */
export function compiledAs(snapshot: Snapshot, text: string): Compiled {
  return snapshot.edited([{ span: { start: 0, end: snapshot.text.length }, text }]).compiled;
}
