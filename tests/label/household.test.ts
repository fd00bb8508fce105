/** Servings in a household measure, as the United States and Canada print them. */
import { describe, expect, test } from 'vitest';
import { rational } from '@quern/quantity';
import { labelText } from '@quern/publish';
import { householdServing } from '../../packages/views/src/label/household.js';
import { labelled } from './world.js';

describe('the size of a serving (21 CFR 101.9(b)(5), (7) and (8), from memory)', () => {
  test.each([
    ['biscuit', 24, 747, 'Serving size: 1 biscuit (31 g). Servings: 24.'],
    ['serving', 8, 440, 'Serving size: 1/8 of the dish (55 g). Servings: 8.'],
    ['serving', 1, 300, 'Serving size: the whole dish (300 g). Servings: 1.'],
    ['truffle', 60, 200, 'Serving size: 1 truffle (3.5 g). Servings: 60.'],
    ['drop', 100, 155, 'Serving size: 1 drop (1.6 g). Servings: 100.'],
  ])('%s of %i', (name, count, grams, expected) => {
    expect(householdServing({ name, count: rational(count) }, rational(grams))).toBe(expected);
  });

  test('a number of servings that is not whole is about so many', () => {
    expect(householdServing({ name: 'serving', count: rational(9, 2) }, rational(900))).toBe(
      'Serving size: about 1/5 of the dish (200 g). Servings: 4.5.',
    );
    expect(householdServing({ name: 'cup', count: rational(25, 4) }, undefined)).toBe(
      'Serving size: 1 cup. Servings: about 6.',
    );
  });
});

const SOUP = `recipe Soup
serves 4-6

make soup
  1 kg water
  200 g rolled oats
  hob 20 min: Simmer.
`;

test('servings that the recipe leaves open are told with both ends', () => {
  expect(labelText(labelled(SOUP).value)).toMatch(/Portion: one serving, of 5 \(4 to 6\)\./);
});

test('the United States get a household measure, the European Union does not', () => {
  expect(labelText(labelled(SOUP, { market: 'us' }).value)).toMatch(/Serving size: 1\/5 of the dish \(240 g\)\./);
  expect(labelText(labelled(SOUP).value)).not.toMatch(/Serving size/);
});

test('pieces that the recipe does not give are said to be missing, not servings', () => {
  expect(labelled(SOUP, { per: 'piece' }).value.notes.join(' ')).toMatch(/does not say how many pieces it gives/);
});
