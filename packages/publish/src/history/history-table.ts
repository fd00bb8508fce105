import type { BakedRecord, History } from '@quern/views';
import { csvTable, type CsvCell } from '../csv/csv-table.js';
import { figure } from '../csv/figure.js';
import { plainText } from '../escape.js';
import { jsonText } from '../json/pretty.js';
import { markdownTable, type MarkdownColumn } from '../table/markdown-table.js';
import { displayWidth, pad } from '../terminal/columns.js';
import { NO_PAINT, type Paint } from '../terminal/paint.js';

/** '2041-02-16, 2 loaves, lost 11.4 %: crumb tighter than last week'. */
export function bakedText({ day, yield: gave, lost, remark }: BakedRecord): string {
  const head = [day, gave, lost === undefined ? undefined : `lost ${lost}`].filter((part) => part !== undefined);
  return head.join(', ') + (remark === undefined ? '' : `: ${remark}`);
}

/** Indexes of the revisions worth a line: the first, the last, those that moved a figure, and those that were baked by. */
export function tellingRevisions({ revisions, series }: History): readonly number[] {
  const moved = new Set(series.flatMap((one) => one.moved));
  return revisions.flatMap(({ baked }, index) =>
    index === 0 || index === revisions.length - 1 || moved.has(index) || baked.length > 0 ? [index] : [],
  );
}

function rowOf({ revisions, series }: History, index: number): readonly string[] {
  const revision = revisions[index];
  return [
    revision?.name ?? '',
    revision?.day ?? '',
    ...series.map(({ points }) => points[index]?.text ?? 'not known'),
    revision?.subject ?? '',
  ];
}

const headings = ({ series }: History): readonly string[] => [
  'revision',
  'day',
  ...series.map(({ name }) => name),
  'change',
];

export interface HistoryTextOptions {
  readonly paint?: Paint;
}

/** The history as an aligned table for a terminal: only revisions that moved something or were baked by. */
export function historyText(history: History, { paint = NO_PAINT }: HistoryTextOptions = {}): string {
  const telling = tellingRevisions(history);
  const rows = [headings(history), ...telling.map((index) => rowOf(history, index))].map((row) => row.map(plainText));
  const widths = headings(history).map((_, column) => Math.max(...rows.map((row) => displayWidth(row[column] ?? ''))));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, column) =>
        column === row.length - 1 ? cell : pad(cell, widths[column] ?? 0, isFigure(history, column) ? 'right' : 'left'),
      )
      .join('  ')
      .trimEnd();
  const [head = [], ...body] = rows;
  const quiet = history.revisions.length - telling.length;
  return (
    [
      paint.strong(plainText(history.title)),
      paint.quiet(line(head)),
      ...body.flatMap((row, at) => [line(row), ...bakedLines(history, telling[at] ?? -1, paint)]),
      ...(quiet > 0
        ? [paint.quiet(`${quiet} more ${quiet === 1 ? 'revision' : 'revisions'} moved none of these figures.`)]
        : []),
    ].join('\n') + '\n'
  );
}

const isFigure = ({ series }: History, column: number): boolean => column >= 2 && column < 2 + series.length;

function bakedLines({ revisions }: History, index: number, paint: Paint): readonly string[] {
  return (revisions[index]?.baked ?? []).map((record) => `  ${paint.hint('baked')} ${plainText(bakedText(record))}`);
}

/** The history as Markdown with a table. */
export function historyMarkdown(history: History): string {
  const columns = headings(history).map((title, index): MarkdownColumn => ({
    title,
    align: isFigure(history, index) ? 'right' : 'left',
  }));
  const table = markdownTable(
    columns,
    tellingRevisions(history).map((index) => rowOf(history, index)),
  );
  const baked = history.revisions.flatMap(({ name, baked: records }) =>
    records.map((record) => [name, bakedText(record)]),
  );
  const batches =
    baked.length === 0
      ? []
      : [
          markdownTable(
            [
              { title: 'revision', align: 'left' },
              { title: 'baked', align: 'left' },
            ],
            baked,
          ),
        ];
  return [table, ...batches].join('\n\n') + '\n';
}

const PLACES = 4;

/** Every revision as comma-separated values; figures are numbers a spreadsheet reckons with. */
export function historyCsv(history: History): string {
  const { revisions, series } = history;
  const head = [
    'revision',
    'day',
    ...series.map(({ name, unit }) => (unit === '' ? name : `${name} (${unit})`)),
    'baked',
    'change',
  ];
  const rows = revisions.map(({ name, day, subject, baked }, index): CsvCell[] => [
    name,
    day,
    ...series.map(({ points }): CsvCell => {
      const point = points[index];
      return point ? figure(point.exact, PLACES) : { figure: '' };
    }),
    baked.map(bakedText).join('; '),
    subject,
  ]);
  return csvTable([head, ...rows]);
}

/** Version of the form below; a field is never given another meaning under the same version. */
export const HISTORY_JSON_VERSION = 1;

/** The history for other programs; docs/compare.md describes the form. */
export function historyJson({ title, revisions, series }: History): string {
  return jsonText({ format: 'quern-history', version: HISTORY_JSON_VERSION, title, revisions, series } as {
    readonly format: string;
    readonly version: number;
  });
}
