import type { Food, Spread } from '@quern/compiler';
import {
  add,
  compare,
  divide,
  equal,
  exact,
  multiply,
  parseRational,
  rational,
  toDecimal,
  type Rational,
} from '@quern/quantity';
import { describe, expect, test } from 'vitest';
import { fixtureLines } from '../tests/fixture-lines.js';
import { createFoodBook } from './index.js';

const book = createFoodBook();

// US customary measures (NIST Handbook 44, appendix C), exact; the metric cup is 250 ml; the avoirdupois ounce is exact.
const CUP = exact('236.5882365');
const MILLILITRES: Readonly<Record<string, Rational>> = {
  cup: CUP,
  'fl oz': divide(CUP, rational(8)),
  tbsp: divide(CUP, rational(16)),
  tsp: divide(CUP, rational(48)),
  'metric cup': exact('250'),
};
const OUNCE = exact('28.349523125');

function foodOf(id: string): Food {
  const food = book.get(id);
  if (!food) throw new Error(`no food ${id}`);
  return food;
}

const spreadOf = (food: Food, form: string): Spread | undefined =>
  (food.volumes.find((weight) => weight.form === form) ?? food.volumes.find((weight) => weight.form === ''))
    ?.perMillilitre;

const number = (text: string): Rational => {
  const parts = text
    .replace(/^\./, '0.')
    .split(' ')
    .map((part) => parseRational(part));
  return parts.reduce<Rational>((sum, part) => {
    if (!part) throw new Error(`not a number: ${text}`);
    return add(sum, part);
  }, exact('0'));
};

/** `113` grams or `4 oz`. */
const grams = (text: string): Rational =>
  text.endsWith(' oz') ? multiply(number(text.slice(0, -3)), OUNCE) : number(text);

interface Published {
  readonly id: string;
  readonly form: string;
  readonly perMillilitre: Rational;
  readonly said: string;
}

/* The source of each figure stands in the fixture, row by row. */
const published: readonly Published[] = fixtureLines('published-cup-weights.tsv').map((line) => {
  const [id = '', form = '', amount = '', measure = '', weight = '', source = ''] = line.split('\t');
  const unit = MILLILITRES[measure];
  if (!unit) throw new Error(`no measure ${measure}`);
  const perMillilitre = divide(grams(weight), multiply(number(amount), unit));
  return { id, form, perMillilitre, said: `${amount} ${measure} ${form} ${id} = ${weight} (${source})` };
});

const within = (value: Rational, spread: Spread): boolean =>
  compare(value, spread.low) >= 0 && compare(value, spread.high) <= 0;

describe('published weights of household measures', () => {
  test('are many, of many foods', () => {
    expect(published.length).toBeGreaterThan(300);
    expect(new Set(published.map((row) => row.id)).size).toBeGreaterThan(120);
  });

  test('never contradict the table: each lies in the spread of its food and form', () => {
    const outside = published.filter(({ id, form, perMillilitre }) => {
      const spread = spreadOf(foodOf(id), form);
      return !spread || !within(perMillilitre, spread);
    });
    expect(outside.map((row) => row.said)).toEqual([]);
  });

  test('bound the spreads of what has several: no spread is wider than its sources', () => {
    for (const id of ['plain-flour', 'strong-wheat-flour', 'cocoa-powder', 'rolled-oats', 'walnuts']) {
      const rows = published.filter((row) => row.id === id && row.form !== 'sifted' && row.form !== 'ground');
      const spread = spreadOf(foodOf(id), '');
      if (!spread) throw new Error(`no weight of ${id}`);
      const values = rows.map((row) => row.perMillilitre).sort(compare);
      const [lowest] = values;
      const highest = values.at(-1);
      if (!lowest || !highest) throw new Error(`no rows of ${id}`);
      // 3 % either way for portions of the same source that the fixture does not repeat (walnut pieces, 120 g).
      expect(compare(spread.low, multiply(lowest, exact('0.97'))), id).toBeGreaterThan(0);
      expect(compare(spread.high, multiply(highest, exact('1.03'))), id).toBeLessThan(0);
    }
  });
});

describe('facts of the trade', () => {
  // All of these are common practice, no source. `about` allows an eighth either way.
  const about = (spread: Spread, value: Rational) =>
    compare(multiply(spread.low, exact('0.875')), value) <= 0 &&
    compare(multiply(spread.high, exact('1.125')), value) >= 0;

  test.each([
    ['brown-sugar', '', '2/3', 'cup', '140'],
    ['plain-flour', '', '1 3/8', 'cup', '175'],
    ['almonds', 'chopped', '1', 'cup', '100'],
    ['almonds', 'whole', '1', 'cup', '145'],
    ['brandy', '', '1/4', 'cup', '60'],
    ['rum', '', '1/4', 'cup', '60'],
    ['water', '', '1', 'cup', '237'],
  ])('%s %s: %s %s is about %s g', (id, form, amount, measure, weight) => {
    const unit = MILLILITRES[measure];
    const spread = spreadOf(foodOf(id), form);
    if (!unit || !spread) throw new Error('no such measure');
    expect(about(spread, divide(exact(weight), multiply(number(amount), unit)))).toBe(true);
  });

  test('a quarter cup and three tablespoons of butter are about 100 g', () => {
    const volume = add(divide(CUP, rational(4)), multiply(rational(3), divide(CUP, rational(16))));
    for (const id of ['butter', 'unsalted-butter', 'salted-butter']) {
      const spread = spreadOf(foodOf(id), '');
      if (!spread) throw new Error('butter has no weight');
      expect(about(spread, divide(exact('100'), volume)), id).toBe(true);
    }
  });

  test('a cup of almonds of which nobody says the form is anything from chopped to whole', () => {
    const spread = spreadOf(foodOf('almonds'), '');
    if (!spread) throw new Error('almonds have no weight');
    expect(about(spread, divide(exact('100'), CUP))).toBe(true);
    expect(about(spread, divide(exact('145'), CUP))).toBe(true);
  });

  test('four eggs without shell are about 200 g, the usual one 50 g', () => {
    const each = foodOf('egg').pieces.find(
      (piece) => piece.piece === '' && piece.size === '' && piece.basis === 'edible',
    );
    expect(each && toDecimal(multiply(each.grams.usual, rational(4)), 0)).toBe('200');
  });

  test('the juice of two oranges is about 100 g', () => {
    const each = foodOf('orange-juice').pieces.find((piece) => piece.piece === 'fruit');
    if (!each) throw new Error('an orange gives no juice');
    expect(about(each.grams, exact('50'))).toBe(true);
  });
});

describe('pieces', () => {
  const piece = (id: string, name: string, size: string) =>
    foodOf(id).pieces.find((entry) => entry.piece === name && entry.size === size && entry.basis === 'edible');

  test.each([
    // USDA SR28 WEIGHT file, by number of the food.
    ['onion', '', 'medium', '110'], // 11282
    ['onion', '', 'large', '150'], // 11282
    ['carrot', '', 'medium', '61'], // 11124
    ['apple', '', 'medium', '182'], // 09003
    ['banana', '', 'medium', '118'], // 09040
    ['egg', '', 'large', '50'], // 01123
    ['egg-yolk', '', 'large', '17'], // 01125
    ['egg-white', '', 'large', '33'], // 01124
    ['butter', 'stick', '', '113'], // 01145
    ['parsley', 'sprig', '', '1'], // 11297: 10 sprigs, 10 g
    ['apricot', '', '', '35'], // 09021
  ])('%s %s %s is %s g', (id, name, size, weight) => {
    const found = piece(id, name, size);
    expect(found && equal(found.grams.usual, exact(weight))).toBe(true);
  });

  test('a clove of garlic is 2 to 7 g, usually 3 g as the USDA has it (11215)', () => {
    const clove = piece('garlic', 'clove', '');
    expect(clove && [clove.grams.low, clove.grams.usual, clove.grams.high].map((value) => toDecimal(value, 0))).toEqual(
      ['2', '3', '7'],
    );
  });

  test('an egg in its shell is weighed by the grades of Regulation (EC) 589/2008', () => {
    const medium = foodOf('egg').pieces.find((entry) => entry.size === 'medium' && entry.basis === 'as-bought');
    expect(medium?.grams.sources).toEqual(['egg-grades']);
    expect(medium && [medium.grams.low, medium.grams.high].map((value) => toDecimal(value, 0))).toEqual(['53', '63']);
  });
});
