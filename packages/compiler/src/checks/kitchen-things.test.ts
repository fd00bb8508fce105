import { expect, test } from 'vitest';
import { codes } from '../test/recipes.js';

const told = (using: string, has = '1 oven of 2 shelves, 2 rings, 1 cook'): readonly string[] =>
  codes(
    `recipe Thins\n  250 g rolled oats\n  oven 12 min at 170 C using ${using}: Bake.\n\nkitchen Galley\n  has ${has}\n`,
  ).filter((code) => code === 'N19');

test.each(['4 sheluves', '4 jhelves', '4 shleves', '4fshelves', '4s helves', '4 shelvebs', '1 shlf'])(
  'a slip in the shelves of a step is told: %s',
  (using) => {
    expect(told(using)).toEqual(['N19']);
  },
);

test('a comma too early in what a kitchen has is told', () => {
  expect(told('1 shelf', '2 ring,s 1 cook')).toEqual(['N19']);
});

test('what is written right, or is a thing of one’s own, is let be', () => {
  for (const using of ['1 shelf', '4 shelves', 'steam cabinet']) expect(told(using)).toEqual([]);
});
