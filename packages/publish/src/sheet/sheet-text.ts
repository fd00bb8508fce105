import type { SheetData, SheetMake, SheetRow, SheetStep } from '@quern/views';
import { plainText } from '../escape.js';
import { displayWidth, pad, wrapWords, type Align } from '../terminal/columns.js';
import { NO_PAINT, type Paint } from '../terminal/paint.js';
import {
  formulaFacts,
  inCells,
  outCells,
  remarkText,
  titleOf,
  yieldLines,
  stepHead,
  totalCells,
  type WeighRow,
} from './cells.js';

export interface SheetTextOptions {
  readonly paint?: Paint;
  /** Columns of a line; sentences are wrapped to it. 80 unless given. */
  readonly width?: number;
}

/** A line of the sheet: a row of the table, or words under it. */
type Block =
  { readonly kind: 'row'; readonly row: WeighRow } | { readonly kind: 'words'; readonly lines: readonly string[] };

interface Frame {
  readonly paint: Paint;
  readonly width: number;
  /** Width of each column of weights; 0 when the column is empty in the whole sheet. */
  readonly columns: Readonly<Record<'weight' | 'us' | 'percent', number>>;
}

const INDENT = '  ';

/** The sheet as aligned text, for a terminal or a printer that knows nothing else. */
export function sheetText(data: SheetData, options: SheetTextOptions = {}): string {
  const paint = options.paint ?? NO_PAINT;
  const width = options.width ?? 80;
  const rows = data.makes.flatMap((make) => [
    ...make.rows.flatMap((row) => weighRows(row, data)),
    totalCells(make, data),
  ]);
  const widest = (column: keyof Frame['columns']): number =>
    rows.reduce((most, row) => Math.max(most, displayWidth(row[column])), 0);
  const frame: Frame = {
    paint,
    width,
    columns: { weight: widest('weight'), us: widest('us'), percent: widest('percent') },
  };
  const blocks = [
    head(data, frame),
    ...data.makes.map((make) => makeLines(make, data, frame)),
    ...(data.formula ? [formulaLines(data.formula, frame)] : []),
    ...(data.warnings.length > 0 ? [warningLines(data, frame)] : []),
  ];
  return blocks.map((lines) => lines.map((line) => line.trimEnd()).join('\n')).join('\n\n') + '\n';
}

function head(data: SheetData, { paint, width }: Frame): readonly string[] {
  const title = plainText(titleOf(data));
  return [paint.strong(title), '='.repeat(displayWidth(title)), ...wrapWords(yieldLines(data).join('; '), width)];
}

function weighRows(row: SheetRow, data: SheetData): readonly WeighRow[] {
  if (row.kind === 'in') return inCells(row, data);
  return row.kind === 'out' ? [outCells(row, data)] : [];
}

function makeLines(make: SheetMake, data: SheetData, frame: Frame): readonly string[] {
  const heading = make.implicit ? [] : [frame.paint.strong(plainText(make.name))];
  const blocks: Block[] = make.rows.flatMap((row): Block[] => {
    if (row.kind === 'in' || row.kind === 'out')
      return weighRows(row, data).map((cells) => ({ kind: 'row', row: cells }));
    if (row.kind === 'step') return [{ kind: 'words', lines: stepLines(row, frame) }];
    return [{ kind: 'words', lines: hanging(remarkText(row.kind, row.text), frame, '    ') }];
  });
  const body = blocks.flatMap((block) => (block.kind === 'row' ? rowLines(block.row, frame) : block.lines));
  const rule = frame.paint.quiet(INDENT + '-'.repeat(Math.max(frame.columns.weight, frame.columns.us, 8)));
  return [...heading, ...body, rule, ...rowLines(totalCells(make, data), frame)];
}

function rowLines(row: WeighRow, { columns, paint, width }: Frame): readonly string[] {
  const cell = (text: string, size: number, align: Align): string =>
    size === 0 ? '' : pad(plainText(text), size, align) + '  ';
  const left =
    INDENT +
    cell(row.weight, columns.weight, 'right') +
    cell(row.us, columns.us, 'left') +
    cell(row.percent, columns.percent, 'right');
  const words = row.note === '' ? row.what : `${row.what}, ${row.note}`;
  const lines = wrapWords(words, Math.max(24, width - displayWidth(left)));
  const blank = ' '.repeat(displayWidth(left));
  return lines.map((line, index) => (index === 0 ? left + paint.strong(line) : blank + paint.strong(line)));
}

function stepLines(step: SheetStep, frame: Frame): readonly string[] {
  const { paint } = frame;
  return [
    ...hanging(stepHead(step), frame, '  ').map((line) => paint.quiet(line)),
    ...step.sentences.flatMap((sentence) => hanging(sentence, frame, '    ')),
    ...step.care.flatMap(({ every, takes, sentence }) =>
      hanging(`every ${every}${takes === undefined ? '' : `, ${takes}`}: ${sentence}`, frame, '    '),
    ),
  ];
}

const hanging = (text: string, { width }: Frame, indent: string): readonly string[] =>
  wrapWords(text, Math.max(24, width - indent.length)).map((line) => indent + line);

function formulaLines(formula: NonNullable<SheetData['formula']>, { paint }: Frame): readonly string[] {
  const percent = formula.rows.reduce((most, row) => Math.max(most, displayWidth(row.percent.text)), 0);
  const weight = formula.rows.reduce((most, row) => Math.max(most, displayWidth(row.weight.text)), 0);
  const rows = formula.rows.map(
    (row) =>
      `${INDENT}${pad(row.percent.text, percent, 'right')}  ${pad(row.weight.text, weight, 'right')}  ${plainText(row.name)}`,
  );
  const facts = formulaFacts(formula).map(({ name, value }) => `${INDENT}${name}: ${value}`);
  return [paint.strong("baker's percentages"), ...rows, ...facts];
}

function warningLines(data: SheetData, frame: Frame): readonly string[] {
  const { paint } = frame;
  return [
    paint.warning('what to watch'),
    ...data.warnings.flatMap(({ text }) =>
      hanging(text, frame, '    ').map((line, index) => (index === 0 ? `  - ${line.slice(4)}` : line)),
    ),
  ];
}
