import { csvCell } from '../escape.js';

/** A cell: text that somebody wrote, or a figure of ours that a spreadsheet may reckon with. */
export type CsvCell = string | { readonly figure: string };

const FIGURE = /^-?\d+(?:\.\d+)?$/;

/**
 * Rows as comma-separated values (RFC 4180): commas, CRLF, quotes where needed. No cell of text is taken for a formula
 * by a spreadsheet.
 * @throws RangeError when a figure is not a plain decimal number.
 */
export function csvTable(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => row.map(cellText).join(',') + '\r\n').join('');
}

function cellText(cell: CsvCell): string {
  if (typeof cell === 'string') return csvCell(cell);
  if (cell.figure !== '' && !FIGURE.test(cell.figure)) throw new RangeError(`not a figure: ${cell.figure}`);
  return cell.figure;
}
