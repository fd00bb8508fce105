/** Servings in a household measure, as the United States and Canada print them. */
import { describe, expect, test } from 'vitest';
import { exact, multiply, rational } from '@quern/quantity';
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
    expect(householdServing({ name, count: rational(count) }, { weight: rational(grams) })).toBe(expected);
  });

  test('a number of servings that is not whole is about so many', () => {
    expect(householdServing({ name: 'serving', count: rational(9, 2) }, { weight: rational(900) })).toBe(
      'Serving size: about 1/5 of the dish (200 g). Servings: 4.5.',
    );
    expect(householdServing({ name: 'cup', count: rational(25, 4) }, { weight: undefined })).toBe(
      'Serving size: 1 cup. Servings: about 6.',
    );
  });
});

// 21 CFR 101.9(b)(5)(viii): a cup is 240 mL, a tablespoon 15, a teaspoon 5; (b)(5)(i), from memory: cups from a quarter up
// by quarters and thirds, whole tablespoons from two, teaspoons below one.
describe('a volume that the recipe gives', () => {
  test.each([
    [240, '1 cup (240 mL)'],
    [360, '1 1/2 cups (360 mL)'],
    [80, '1/3 cup (80 mL)'],
    [62, '1/4 cup (62 mL)'],
    [165, '2/3 cup (165 mL)'],
    [480, '2 cups (480 mL)'],
    [45, '3 tbsp (45 mL)'],
    [30, '2 tbsp (30 mL)'],
    [20, '1 1/3 tbsp (20 mL)'],
    [15, '1 tbsp (15 mL)'],
    [10, '2 tsp (10 mL)'],
    [5, '1 tsp (5 mL)'],
    [1.25, '1/4 tsp (1.3 mL)'],
  ])('of %d ml a serving is in cups or spoons', (millilitres, expected) => {
    const ten = { weight: rational(999), millilitres: multiply(exact(String(millilitres)), rational(10)) };
    expect(householdServing({ name: 'serving', count: rational(10) }, ten)).toBe(
      `Serving size: ${expected}. Servings: 10.`,
    );
  });

  test('is read from the recipe; what is cut or counted stays a fraction or a piece', () => {
    const us = (facts: string): string =>
      labelText(labelled(SOUP.replace('serves 4-6', facts), { market: 'us' }).value, { width: 300 });
    expect(us('gives 1200 ml\nserves 5')).toMatch(/Serving size: 1 cup \(240 mL\)\. Servings: 5\./);
    expect(us('gives 2 bottles of 600 ml\nserves 5')).toMatch(/Serving size: 1 cup \(240 mL\)/);
    expect(us('gives 1.2 kg\nserves 5')).toMatch(/Serving size: 1\/5 of the dish \(240 g\)/);
    expect(us('gives 1200 ml\nserves 5 bowls')).toMatch(/Serving size: 1 cup \(240 mL\)/);
    expect(us('gives 1200 ml\nserves 5 slices')).toMatch(/Serving size: 1 slice \(240 g\)/);
  });

  test('in Canada the grams have a tenth below ten', () => {
    // Food and Drug Regulations, table to B.01.401, item 1.
    expect(householdServing({ name: 'truffle', count: rational(60) }, { weight: rational(200) }, 'ca')).toBe(
      'Serving size: 1 truffle (3.3 g). Servings: 60.',
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
