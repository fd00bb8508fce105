import { applyEdits, type TextEdit } from '@quern/text';
import type { Document, Line } from './ast.js';
import { parseDocument } from './document.js';
import { usualEnding } from './lines.js';
import { printLine } from './print.js';
import { indents } from './structure.js';

/** A file laid out anew, and the least edits that make it so. */
export interface Tidied {
  readonly text: string;
  readonly edits: readonly TextEdit[];
  readonly changed: boolean;
}

/**
 * Lays a file out: one space between words, plain marks, the usual spelling of units, two spaces before the lines of a
 * block, one empty line before a block, runs of empty lines made one. Sentences, notes and names keep their
 * characters, every line its line end, and a line that cannot be read stays as it is. Nothing is reordered or rewrapped.
 * Done twice it does no more than once.
 */
export function tidy(text: string, document: Document = parseDocument('', text)): Tidied {
  const edits = [...blankEdits(document), ...lineEdits(document), ...lastEnding(document)];
  edits.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  return { text: applyEdits(text, edits), edits, changed: edits.length > 0 };
}

function isBlank(line: Line | undefined): boolean {
  return line?.parsed.content.kind === 'blank';
}

/** The line as it should stand; undefined when it is to be left alone. */
function tidied(line: Line, indent: number | undefined): string | undefined {
  const { content, messages } = line.parsed;
  if (messages.some(({ severity }) => severity === 'error')) return undefined;
  const printed = printLine(content);
  if (printed === undefined || printed === '') return printed;
  return (indent === undefined ? line.text.slice(0, content.indent) : ' '.repeat(indent)) + printed;
}

function* lineEdits(document: Document): Iterable<TextEdit> {
  const indent = withRemarks(document, indents(document));
  for (const line of document.lines) {
    if (isBlank(line)) continue;
    const wanted = tidied(line, indent[line.number]);
    if (wanted !== undefined && wanted !== line.text) yield narrowed(line, wanted);
  }
}

/** Remarks stand as the line below them stands; at the end of a file, as the line above. */
function withRemarks({ lines }: Document, known: readonly (number | undefined)[]): (number | undefined)[] {
  const result = [...known];
  const counts = ({ parsed }: Line): boolean => !['blank', 'comment', 'conflict'].includes(parsed.content.kind);
  const last = lines.findLast(counts);
  let indent = last === undefined ? 0 : result[last.number];
  for (const line of lines.toReversed()) {
    if (counts(line)) indent = result[line.number];
    else if (line.parsed.content.kind === 'comment') result[line.number] = indent;
  }
  return result;
}

/** The edit without what both texts begin and end with. */
function narrowed(line: Line, wanted: string): TextEdit {
  const { text, start } = line;
  const most = Math.min(text.length, wanted.length);
  let head = 0;
  while (head < most && text[head] === wanted[head]) head++;
  let tail = 0;
  while (tail < most - head && text[text.length - 1 - tail] === wanted[wanted.length - 1 - tail]) tail++;
  return {
    span: { start: start + head, end: start + text.length - tail },
    text: wanted.slice(head, wanted.length - tail),
  };
}

/** Runs of empty lines become one; a block has one before it, above the remarks that stand right over it. */
function* blankEdits({ lines }: Document): Iterable<TextEdit> {
  let ending = '';
  for (const [index, line] of lines.entries()) {
    if (isBlank(line)) {
      yield* emptied(line, lines[index + 1], ending);
      continue;
    }
    ending = line.ending;
    if (!opensBlock(line)) continue;
    let first = index;
    while (lines[first - 1]?.parsed.content.kind === 'comment') first--;
    const above = lines[first - 1];
    if (above !== undefined && !isBlank(above)) {
      const { start } = lines[first] as Line;
      yield { span: { start, end: start }, text: above.ending };
    }
  }
}

/** Whether a line begins a block that stands for itself; the courses of a menu stand together. */
function opensBlock({ parsed: { content } }: Line): boolean {
  return content.kind === 'block' && content.block !== 'course';
}

/** An empty line, `above` being the line end over its run: gone if another follows, else without its spaces. */
function* emptied(line: Line, next: Line | undefined, above: string): Iterable<TextEdit> {
  const { start, text, ending } = line;
  if (next !== undefined && isBlank(next)) yield { span: { start, end: next.start }, text: '' };
  // A lone carriage return and a lone line feed with nothing between them would be one line end.
  else if (above === '\r' && ending === '\n') yield { span: { start, end: start + text.length + 1 }, text: '\r' };
  else if (text !== '') yield { span: { start, end: start + text.length }, text: '' };
}

/** A file ends with a line end. */
function lastEnding({ lines }: Document): TextEdit[] {
  const last = lines.at(-1);
  if (last === undefined || last.parsed.content.kind === 'blank') return [];
  const end = last.start + last.text.length;
  return [{ span: { start: end, end }, text: usualEnding(lines) }];
}
