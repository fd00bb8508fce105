import type { ComparisonGroup, ComparisonReport, ComparisonRow, FileReport, WordRun } from '@quern/views';
import { plainText } from '../escape.js';
import { namesOf } from './names.js';
import { displayWidth, pad, wrapWords } from '../terminal/columns.js';
import { NO_PAINT, type Paint } from '../terminal/paint.js';

export interface ComparisonTextOptions {
  readonly paint?: Paint;
  /** Columns of a line; 80 unless given. */
  readonly width?: number;
}

interface Frame {
  readonly paint: Paint;
  readonly width: number;
  /** Whether changed words are set off by marks, because paint cannot. */
  readonly marked: boolean;
}

/** Comparisons of files as text for a terminal. Every line of it can be read without colour. */
export function comparisonText(reports: readonly FileReport[], options: ComparisonTextOptions = {}): string {
  const paint = options.paint ?? NO_PAINT;
  const frame = { paint, width: options.width ?? 80, marked: paint.strong('x') === 'x' };
  const blocks = reports.flatMap((report) => [
    ...(reports.length > 1 ? [paint.strong(plainText(namesOf(report)))] : []),
    ...fileBlocks(report, frame),
  ]);
  return blocks.map((block) => (typeof block === 'string' ? block : block.join('\n'))).join('\n\n') + '\n';
}

function fileBlocks(report: FileReport, frame: Frame): readonly (string | readonly string[])[] {
  return [
    ...report.recipes.flatMap((recipe) => recipeBlocks(recipe, frame)),
    ...(report.others.length > 0 ? [groupLines(report.others, frame)] : []),
    ...(report.same ? ['Nothing has changed.'] : unchangedLines(report)),
  ];
}

const unchangedLines = ({ unchanged }: FileReport): readonly string[] =>
  unchanged.length === 0 ? [] : [`The same as before: ${unchanged.map(plainText).join(', ')}.`];

function recipeBlocks(report: ComparisonReport, frame: Frame): readonly (readonly string[])[] {
  const { paint, width } = frame;
  const title = plainText(report.title);
  const named = report.sides.before !== 'before' || report.sides.after !== 'after';
  const sides = named ? [`from ${plainText(report.sides.before)} to ${plainText(report.sides.after)}`] : [];
  return [
    [paint.strong(title), paint.quiet('-'.repeat(displayWidth(title))), ...sides, ...wrapWords(report.summary, width)],
    ...report.sections.map((section) => [paint.strong(section.title), ...groupLines(section.groups, frame)]),
  ];
}

function groupLines(groups: readonly ComparisonGroup[], frame: Frame): readonly string[] {
  return groups.flatMap(({ title, rows }) => {
    const indent = title === '' ? '  ' : '    ';
    return [...(title === '' ? [] : [`  ${frame.paint.quiet(plainText(title))}`]), ...rowLines(rows, indent, frame)];
  });
}

const WIDEST_LABEL = 30;

function rowLines(rows: readonly ComparisonRow[], indent: string, frame: Frame): readonly string[] {
  const widths = rows.map(({ label }) => displayWidth(plainText(label))).filter((width) => width <= WIDEST_LABEL);
  const labels = Math.max(0, ...widths);
  return rows.flatMap((row) => oneRow(row, indent, labels, frame));
}

function oneRow(row: ComparisonRow, indent: string, labels: number, frame: Frame): readonly string[] {
  const { paint } = frame;
  const label = plainText(row.label);
  const set = row.tone === 'alarm' ? paint.error : row.tone === 'relief' ? paint.good : (text: string): string => text;
  if (row.runs) return [indent + set(label), ...wordLines(row.runs, indent, frame)];
  const note = row.note === '' ? '' : `  ${plainText(row.note)}`;
  const change = changeText(row);
  if (!change.includes('\n')) {
    const line = `${indent}${pad(label, labels, 'left')}  ${change}${note}`;
    if (displayWidth(line) <= frame.width)
      return [`${indent}${set(pad(label, labels, 'left'))}  ${change}${paint.quiet(note)}`.trimEnd()];
  }
  return [indent + set(label) + paint.quiet(note), ...sideLines(row, indent, frame)];
}

/** Both sides in one line: `16 g -> 17.5 g`, `+ 80 g`, `- 80 g`. */
function changeText({ before, after }: ComparisonRow): string {
  const [was, is] = [oneLineOrMore(before), oneLineOrMore(after)];
  if (was === '') return is === '' ? '' : `+ ${is}`;
  return is === '' ? `- ${was}` : `${was} -> ${is}`;
}

const oneLineOrMore = (text: string): string => text.split('\n').map(plainText).join('\n');

/** The sides below each other, each wrapped. */
function sideLines({ before, after }: ComparisonRow, indent: string, frame: Frame): readonly string[] {
  const side = (sign: string, text: string): string[] =>
    text === '' ? [] : text.split('\n').flatMap((line) => hanging(sign, plainText(line), `${indent}  `, frame.width));
  return [...side('- ', before), ...side('+ ', after)];
}

function hanging(sign: string, text: string, indent: string, width: number): readonly string[] {
  const lines = wrapWords(text, Math.max(24, width - indent.length - sign.length));
  return lines.map((line, index) => indent + (index === 0 ? sign : ' '.repeat(sign.length)) + line);
}

/** A sentence as it was and as it is, with the words that differ set off. */
function wordLines(runs: readonly WordRun[], indent: string, frame: Frame): readonly string[] {
  const side = (sign: string, gone: WordRun['kind']): string[] => {
    const own = runs.filter(({ kind }) => kind !== gone);
    if (own.length === 0) return [];
    const text = own
      .map(({ kind, text: words }) => (kind === 'same' || !frame.marked ? words : setOff(words)))
      .join('');
    const lines = hanging(sign, plainText(text), `${indent}  `, frame.width);
    return frame.marked ? [...lines] : strengthen(lines, own, frame.paint, indent.length + 2 + sign.length);
  };
  return [...side('- ', 'added'), ...side('+ ', 'removed')];
}

/** ` boiling` as ` {boiling}`: the space before stays outside. */
const setOff = (words: string): string =>
  words.replace(/^(\s*)([\s\S]*)$/, (_, space: string, rest: string) => (rest === '' ? space : `${space}{${rest}}`));

/** Paints the changed words in lines that have been wrapped. */
function strengthen(lines: readonly string[], runs: readonly WordRun[], paint: Paint, margin: number): string[] {
  const marks = runs.flatMap(({ kind, text }) => [...text.replace(/\s+/g, '')].map(() => kind !== 'same'));
  let at = 0;
  return lines.map((line) => {
    let result = line.slice(0, margin);
    let run = '';
    let strong = false;
    const flush = (): void => {
      result += strong && run !== '' ? paint.strong(run) : run;
      run = '';
    };
    for (const character of line.slice(margin)) {
      const next: boolean = character === ' ' ? strong : (marks[at++] ?? false);
      if (next !== strong) flush();
      strong = next;
      run += character;
    }
    flush();
    return result;
  });
}
