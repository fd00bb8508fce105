import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LineTable } from '@quern/text';
import { cutLines, hasByteOrderMark, usualEnding } from './lines.js';

const anyText = fc
  .array(
    fc.oneof(
      fc.constantFrom('\n', '\r\n', '\r', '\ufeff', ' ', '\u2028', 'oats', '½', '🌰'),
      fc.string({ unit: 'binary' }),
    ),
    { maxLength: 30 },
  )
  .map((parts) => parts.join(''));

describe('cutting lines', () => {
  test.each([
    ['', [['', '']]],
    ['a', [['a', '']]],
    [
      'a\n',
      [
        ['a', '\n'],
        ['', ''],
      ],
    ],
    [
      'a\r\nb\rc\nd',
      [
        ['a', '\r\n'],
        ['b', '\r'],
        ['c', '\n'],
        ['d', ''],
      ],
    ],
    [
      '\r\r\n\n',
      [
        ['', '\r'],
        ['', '\r\n'],
        ['', '\n'],
        ['', ''],
      ],
    ],
    [
      '\ufeffa\nb',
      [
        ['a', '\n'],
        ['b', ''],
      ],
    ],
    // Unicode's own separators end no line: they may stand in a sentence.
    ['a\u2028b\u0085c', [['a\u2028b\u0085c', '']]],
  ])('%j', (text, expected) => {
    expect(cutLines(text).map(({ text: line, ending }) => [line, ending])).toEqual(expected);
  });

  test('put together again they are the file', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const mark = hasByteOrderMark(text) ? '\ufeff' : '';
        expect(
          mark +
            cutLines(text)
              .map(({ text: line, ending }) => line + ending)
              .join(''),
        ).toBe(text);
      }),
    );
  });

  test('begin where the line table of the text package says', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const table = new LineTable(text);
        const starts = cutLines(text).map(({ start }) => start);
        const shift = hasByteOrderMark(text) ? 1 : 0;
        expect(starts).toEqual(
          Array.from({ length: table.lineCount }, (_, line) => table.startOf(line) + (line === 0 ? shift : 0)),
        );
      }),
    );
  });

  test('the usual line end is that of most lines', () => {
    expect(usualEnding(cutLines('a\r\nb\r\nc\nd'))).toBe('\r\n');
    expect(usualEnding(cutLines('a'))).toBe('\n');
    expect(usualEnding(cutLines('a\rb\rc'))).toBe('\r');
  });
});
