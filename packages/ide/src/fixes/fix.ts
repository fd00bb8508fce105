import type { Diagnostic, Span, TextEdit } from '@quern/text';
import type { InItem } from '@quern/compiler';
import { parseLine, usualEnding, type Line, type LineContent } from '@quern/syntax';
import type { FileEdits } from '../edits.js';
import type { ItemPlace } from '../ledger-index.js';
import type { Snapshot } from '../snapshot.js';

/** A way to mend a message, ready to be made. */
export interface Fix {
  /** An imperative sentence without a full stop. */
  readonly title: string;
  readonly edits: readonly FileEdits[];
  /**
   * Whether it may be made without asking: it writes what was understood already, or what can only have been meant, and
   * changes no amount, food, allergen or time. `quern mend` and 'fix all' make these alone.
   */
  readonly safe: boolean;
}

/** What a fixer sees: the message and the file as it stands. */
export class Mending {
  constructor(
    readonly snapshot: Snapshot,
    readonly diagnostic: Diagnostic,
  ) {}

  /** The place of the message. */
  get span(): Span {
    return this.diagnostic.place;
  }

  get args(): Diagnostic['args'] {
    return this.diagnostic.args;
  }

  /** An argument of the message; empty when it has none of that name. */
  arg(name: string): string {
    return this.diagnostic.args[name] ?? '';
  }

  get line(): Line {
    return this.snapshot.lineAt(this.span.start);
  }

  get content(): LineContent {
    return this.line.parsed.content;
  }

  /** What the message points at. */
  get written(): string {
    return this.snapshot.text.slice(this.span.start, this.span.end);
  }

  /** White space before the line's first word. */
  get indent(): string {
    return this.line.text.slice(0, this.line.text.length - this.line.text.trimStart().length);
  }

  get ending(): string {
    return usualEnding(this.snapshot.document.lines);
  }

  get place(): ItemPlace | undefined {
    return this.snapshot.itemAt(this.line.number);
  }

  /** The in line or alternative that the message stands on. */
  get inItem(): InItem | undefined {
    const { place } = this;
    return place?.alternative ?? (place?.item.kind === 'in' ? place.item : undefined);
  }

  fix(title: string, edits: readonly TextEdit[], safe = false): Fix {
    return { title, edits: [{ file: this.snapshot.path, edits }], safe };
  }

  /** Puts a text in the place of what the message points at. */
  replace(text: string, title = `Write “${text}”`, safe = false): Fix {
    return this.fix(title, [{ span: this.span, text }], safe);
  }

  /** Puts a text in the place of a part of the line; the span counts from the line's start. */
  inLine(span: Span, text: string, title: string, safe = false): Fix {
    return this.fix(title, [this.edit(this.line, span, text)], safe);
  }

  /** An edit of a part of a line. */
  edit(line: Line, span: Span, text: string): TextEdit {
    return { span: { start: line.start + span.start, end: line.start + span.end }, text };
  }

  /** New lines before a line. */
  before(line: Line, ...texts: readonly string[]): TextEdit {
    return { span: { start: line.start, end: line.start }, text: texts.map((text) => text + this.ending).join('') };
  }

  /** New lines after a line. */
  after(line: Line, ...texts: readonly string[]): TextEdit {
    const end = line.start + line.text.length;
    return { span: { start: end, end }, text: texts.map((text) => this.ending + text).join('') };
  }

  /** Takes a line away with its line end. */
  without(line: Line): TextEdit {
    const end = line.start + line.text.length + line.ending.length;
    return { span: { start: line.start, end }, text: '' };
  }

  /** Keeps the line as a remark, so that nothing of it is lost. */
  asRemark(): Fix {
    const { indent } = this.content;
    return this.inLine({ start: indent, end: indent }, '// ', 'Keep the line as a remark');
  }
}

/** Says how a message can be mended, the likeliest way first. */
export type Fixer = (mending: Mending) => readonly Fix[];

/** The first name between quotation marks in a suggestion such as `did you mean “puff”? `. */
export const suggested = (text: string): string | undefined => /“([^”]+)”/.exec(text)?.[1];

/** Every name between quotation marks. */
export const allSuggested = (text: string): readonly string[] =>
  [...text.matchAll(/“([^”]+)”/g)].map((found) => found[1] ?? '');

/** Whether a text reads as a line without any error. */
export function readsWell(text: string): boolean {
  return parseLine(text).messages.every(({ severity }) => severity !== 'error');
}

/** Writes the name that the message suggests. */
export const writeSuggested: Fixer = (mending) => {
  const near = suggested(mending.arg('near'));
  return near === undefined ? [] : [mending.replace(near)];
};
