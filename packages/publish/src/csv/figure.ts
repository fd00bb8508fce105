import { exact, toDecimal } from '@quern/quantity';
import type { CsvCell } from './csv-table.js';

/** An exact number as a decimal for a spreadsheet, rounded to so many places. */
export function figure(text: string, places: number): CsvCell {
  const decimal = toDecimal(exact(text), places);
  return { figure: decimal.includes('.') ? decimal.replace(/\.?0+$/, '') : decimal };
}
