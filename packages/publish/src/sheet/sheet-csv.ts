import type { SheetData, SheetIn, SheetMake, SheetRow } from '@quern/views';
import { csvTable, type CsvCell } from '../csv/csv-table.js';
import { figure } from '../csv/figure.js';
import { stepHead, remarkText } from './cells.js';

const HEAD = [
  'make',
  'line',
  'kind',
  'name',
  'said',
  'grams',
  'grams to',
  'measure',
  'measure off %',
  'on flour %',
  'note',
  'text',
];
const NOTHING: CsvCell = '';

/**
 * The sheet as comma-separated values for a spreadsheet: a row a line, figures as numbers with a decimal point. Grams
 * are rounded to a thousandth; an empty cell is a figure that is not known or does not apply.
 */
export function sheetCsv(data: SheetData): string {
  return csvTable([
    HEAD,
    ...data.makes.flatMap((make) => [...make.rows.flatMap((row) => rowsOf(row, make)), totalRow(make)]),
  ]);
}

function rowsOf(row: SheetRow, make: SheetMake): CsvCell[][] {
  switch (row.kind) {
    case 'in':
      return [
        inRow(row, make, row.optional ? 'optional' : 'in'),
        ...row.alternatives.map((other) => inRow(other, make, 'or')),
      ];
    case 'out':
      return [
        [
          make.name,
          line(row.line),
          row.verb,
          row.what,
          row.said ?? '',
          ...weight(row.weight),
          ...measure(row.us),
          NOTHING,
          row.note ?? '',
          NOTHING,
        ],
      ];
    case 'step':
      return [wordsRow(make, row.line, 'step', `${stepHead(row)}: ${row.sentences.join(' ')}`)];
    default:
      return [wordsRow(make, row.line, row.kind, remarkText(row.kind, row.text))];
  }
}

function inRow(row: SheetIn, make: SheetMake, kind: string): CsvCell[] {
  const percent = row.percent ? figure(row.percent.exact, 2) : NOTHING;
  return [
    make.name,
    line(row.line),
    kind,
    row.name,
    row.said ?? '',
    ...weight(row.weight),
    ...measure(row.us),
    percent,
    row.note ?? '',
    NOTHING,
  ];
}

const wordsRow = (make: SheetMake, at: number, kind: string, text: string): CsvCell[] => [
  make.name, line(at), kind, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, text,
]; // prettier-ignore

const totalRow = (make: SheetMake): CsvCell[] => [
  make.name, line(make.line), 'total', NOTHING, NOTHING, ...weight(make.total), NOTHING, NOTHING, NOTHING, NOTHING, NOTHING,
]; // prettier-ignore

const line = (number: number): CsvCell => ({ figure: String(number) });

function weight(of: SheetIn['weight']): CsvCell[] {
  return of ? [figure(of.grams.low, 3), figure(of.grams.high, 3)] : [NOTHING, NOTHING];
}

function measure(us: SheetIn['us']): CsvCell[] {
  if (!us) return [NOTHING, NOTHING];
  return [us.text, us.off ? figure(us.off.percent, 2) : NOTHING];
}
