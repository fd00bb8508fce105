import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvTable } from './csv-table.js';
import { figure } from './figure.js';

/** Text with what spreadsheets, readers and writers trip over in it, often at its beginning. */
const trouble = fc
  .array(
    fc.oneof(
      {
        weight: 3,
        arbitrary: fc.constantFrom(
          '=',
          '+',
          '-',
          '@',
          '\t',
          '\r',
          '\n',
          '"',
          "'",
          ',',
          ';',
          '|',
          '%',
          ' ',
          '\uFF1D',
          '\uFEFF',
        ),
      },
      { weight: 2, arbitrary: fc.constantFrom('1+1', 'cmd', 'HYPERLINK("x")', 'rye', '½ cup', 'שלום') },
      { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 4 }) },
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));

// What a spreadsheet takes for the beginning of a formula: OWASP, 'CSV injection'.
const FORMULA = /^[=+\-@\t\r]/;

describe('comma-separated values', () => {
  test('no cell of text is taken for a formula, whatever was written', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(trouble, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 4 }),
        (rows) => {
          // csv-parse reads it as spreadsheets do.
          const read = parse(csvTable(rows), { relax_column_count: false }) as string[][];
          expect(read.length).toBe(rows.length);
          for (const cell of read.flat()) {
            expect(cell).not.toMatch(FORMULA);
            expect(cell.trimStart()).not.toMatch(/^[=+\-@]/);
          }
        },
      ),
      { numRuns: 500 },
    );
  });

  test('text without such beginnings comes back as it was', () => {
    const plain = fc.string({ unit: fc.constantFrom('a', 'é', ',', '"', '\n', ' ', '½', "'", ';'), maxLength: 12 });
    fc.assert(
      fc.property(fc.array(plain, { minLength: 2, maxLength: 4 }), (row) => {
        const marked = ['x', ...row];
        const [read] = parse(csvTable([marked])) as string[][];
        expect(read).toEqual(marked);
      }),
      { numRuns: 300 },
    );
  });

  test('figures are numbers with a point, also below zero, and lines end as RFC 4180 says', () => {
    expect(csvTable([['a', figure('1/3', 3), figure('-5/2', 2), figure('1500', 3)]])).toBe('a,0.333,-2.5,1500\r\n');
    expect(() => csvTable([[{ figure: '=1+1' }]])).toThrow(RangeError);
  });
});
