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
});
