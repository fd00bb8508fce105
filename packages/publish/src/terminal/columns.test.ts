import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displayWidth, pad, wrapWords } from './columns.js';

describe('columns', () => {
  test('are what a reader sees', () => {
    // Unicode Standard Annex 11: wide characters take two columns; combining marks none.
    expect(['rye', 'créme', 'cre\u0300me', '米粉', '🍞', '\u200Frye'].map(displayWidth)).toEqual([3, 5, 5, 4, 2, 3]);
  });

  test('are filled on the left or the right, and a longer text stays whole', () => {
    expect([pad('米', 4, 'left'), pad('12 g', 6, 'right'), pad('long', 2, 'left')]).toEqual(['米  ', '  12 g', 'long']);
  });

  test('words are wrapped, and a longer word has a line of its own', () => {
    expect(wrapWords('one two threefourfive six', 8)).toEqual(['one two', 'threefourfive', 'six']);
  });

  test('no line is wider than it may be, none could take the next word, and no word is lost', () => {
    const words = fc.array(fc.constantFrom('rye', '米粉', 'cre\u0300me', '🍞', 'a', 'sourdough', '“salt”'), {
      minLength: 1,
    });
    fc.assert(
      fc.property(words, fc.integer({ min: 1, max: 20 }), (some, width) => {
        const lines = wrapWords(some.join(' '), width);
        expect(lines.join(' ')).toBe(some.join(' '));
        for (const [index, line] of lines.entries()) {
          if (line.includes(' ')) expect(displayWidth(line)).toBeLessThanOrEqual(width);
          const next = lines[index + 1]?.split(' ')[0];
          if (next !== undefined) expect(displayWidth(`${line} ${next}`)).toBeGreaterThan(width);
        }
      }),
    );
  });
});
