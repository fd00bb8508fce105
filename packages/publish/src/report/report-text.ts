import type { Severity } from '@quern/text';
import { plainText } from '../escape.js';
import { displayWidth, wrapWords } from '../terminal/columns.js';
import { NO_PAINT, type Paint } from '../terminal/paint.js';
import type { Found } from './found.js';

export interface ReportTextOptions {
  readonly paint?: Paint;
  readonly width?: number;
}

/** One diagnostic for a reader: where, what, the line with the place underlined, and the way out. Ends in a line end. */
export function reportText(found: Found, options: ReportTextOptions = {}): string {
  const paint = options.paint ?? NO_PAINT;
  const width = options.width ?? 100;
  const place = `${plainText(found.file)}:${found.start.line}:${found.start.column}`;
  const colour = colourOf(found.severity, paint);
  const gutter = ' '.repeat(String(found.start.line).length);
  const bar = paint.quiet('|');
  const { text, mark } = excerpt(found, width - gutter.length - 5);
  return [
    `${place}: ${colour(`${found.severity} ${found.code}`)}: ${plainText(found.message)}`,
    `  ${paint.quiet(String(found.start.line))} ${bar} ${text}`,
    `  ${gutter} ${bar} ${colour(mark)}`,
    ...linesOfHelp(found.help, width - gutter.length - 3).map((line) => `  ${gutter} ${line}`),
    ...found.related.map(
      ({ file, start, note }) => `  ${gutter} ${plainText(note)}: ${plainText(file)}:${start.line}:${start.column}`,
    ),
    '',
  ].join('\n');
}

/** Ways out in lines, by their width and words: of thousands of messages most have one of a few. */
const wrapped = new Map<string, readonly string[]>();

function linesOfHelp(help: string, width: number): readonly string[] {
  const key = `${width} ${help}`;
  const known = wrapped.get(key);
  if (known !== undefined) return known;
  const lines = wrapWords(`way out: ${plainText(help)}`, width);
  if (wrapped.size > 1000) wrapped.clear();
  wrapped.set(key, lines);
  return lines;
}

function colourOf(severity: Severity, paint: Paint): (text: string) => string {
  return { error: paint.error, warning: paint.warning, hint: paint.hint }[severity];
}

/** Characters that a terminal must not be sent, or that would turn the line round; each is shown as one U+FFFD. */
const UNSHOWN =
  /[\u0000-\u0008\u000a-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u2028\u2029]|\p{Surrogate}/gu;

const ASCII = /^[ -~]*$/;

const shown = (text: string): string =>
  ASCII.test(text) ? text : text.replace(UNSHOWN, '\uFFFD').replaceAll('\t', ' ');

/** Room kept before the place when a long line has to be cut. */
const BEFORE = 20;

/** The source line, cut to the room there is around the place, and marks under the place. */
function excerpt(found: Found, room: number): { readonly text: string; readonly mark: string } {
  const { source, start, end } = found;
  const from = start.column - 1;
  const to = end.line === start.line ? Math.max(from + 1, end.column - 1) : Math.max(from + 1, source.length);
  const cut = displayWidth(shown(source)) > room && from > BEFORE ? from - BEFORE : 0;
  const ahead = cut > 0 ? '…' : '';
  let text = ahead + shown(source.slice(cut));
  if (displayWidth(text) > room) text = fit(text, room - 1) + '…';
  const left = displayWidth(ahead + shown(source.slice(cut, from)));
  const marked = Math.max(1, displayWidth(shown(source.slice(from, to))));
  return { text, mark: ' '.repeat(left) + '~'.repeat(Math.max(1, Math.min(marked, room - left))) };
}

/** As much of the text as fits. */
function fit(text: string, room: number): string {
  let fitted = '';
  let width = 0;
  for (const character of text) {
    width += displayWidth(character);
    if (width > room) break;
    fitted += character;
  }
  return fitted;
}
