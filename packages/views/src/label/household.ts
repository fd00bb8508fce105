import {
  add,
  compare,
  divide,
  equal,
  ONE,
  rational,
  roundTo,
  subtract,
  toExactText,
  type Rational,
} from '@quern/quantity';
import type { PortionSize } from './declaration.js';
import { printBy, type RoundingRule } from './rounding.js';

/*
 * A serving as the United States and Canada print it: a household measure with its metric amount, and how many there are.
 * The household measure is cups or spoons where the recipe says what volume it gives, a piece where it counts pieces, else
 * a fraction of the dish (21 CFR 101.9(b)(5)). A volume is never guessed from a weight: that of a pie says nothing of cups.
 */

export type HouseholdMarket = 'us' | 'ca';

/**
 * Millilitres on a label: 21 CFR 101.9(b)(5)(viii) has a cup of 240, a tablespoon of 15 and a teaspoon of 5; the Canadian
 * cup of 250 is from memory.
 */
const CUP: Readonly<Record<HouseholdMarket, Rational>> = { us: rational(240), ca: rational(250) };
const TABLESPOON = rational(15);
const TEASPOON = rational(5);

/** Grams beside a household measure: whole; from 2 to 5 g halves, below 2 g tenths. 21 CFR 101.9(b)(7), from memory. */
const servingGrams: RoundingRule = {
  unit: 'g',
  bands: [
    { to: rational(2), including: false, manner: { kind: 'nearest', step: rational(1, 10), places: 1, trim: true } },
    { to: rational(5), including: true, manner: { kind: 'nearest', step: rational(1, 2), places: 1, trim: true } },
    { including: false, manner: { kind: 'nearest', step: rational(1), places: 0, trim: true } },
  ],
  source: '21 CFR 101.9(b)(7), from memory',
};

/** Canada: below 10 g to a tenth, else whole. Food and Drug Regulations, table to B.01.401, item 1, as a trade table reprints it. */
const caServing: RoundingRule = {
  unit: 'g',
  bands: [
    { to: rational(10), including: false, manner: { kind: 'nearest', step: rational(1, 10), places: 1, trim: true } },
    { including: false, manner: { kind: 'nearest', step: rational(1), places: 0, trim: true } },
  ],
  source: 'Food and Drug Regulations (Canada), table to B.01.401, item 1',
};

/** How many servings: whole, from 2 to 5 halves. 21 CFR 101.9(b)(8), from memory. */
const servingsRule: RoundingRule = {
  unit: '%',
  bands: [
    { to: rational(2), including: false, manner: { kind: 'nearest', step: rational(1), places: 0, trim: true } },
    { to: rational(5), including: true, manner: { kind: 'nearest', step: rational(1, 2), places: 1, trim: true } },
    { including: false, manner: { kind: 'nearest', step: rational(1), places: 0, trim: true } },
  ],
  source: '21 CFR 101.9(b)(8), from memory',
};

interface Yield {
  /** Finished weight in grams; undefined when not known. */
  readonly weight: Rational | undefined;
  /** Millilitres of the whole, where the recipe says so. */
  readonly millilitres?: Rational | undefined;
}

/** 'Serving size: 1 biscuit (31 g). Servings: 24.' Grams are left out where the weight is not known. */
export function householdServing(
  { name, count }: PortionSize,
  { weight, millilitres }: Yield,
  market: HouseholdMarket = 'us',
): string {
  const rule = market === 'ca' ? caServing : servingGrams;
  const poured = (GENERIC.test(name) || POURED_INTO.test(name)) && millilitres ? divide(millilitres, count) : undefined;
  const metric = poured
    ? ` (${printBy(rule, poured)} mL)`
    : weight
      ? ` (${printBy(rule, divide(weight, count))} g)`
      : '';
  const servings = printBy(servingsRule, count);
  const about = servings === toExactText(count) ? '' : 'about ';
  const size = poured ? spoonsAndCups(poured, market) : measure(name, count);
  return `Serving size: ${size}${metric}. Servings: ${about}${servings}.`;
}

/** A word for a part of the dish that is no thing by itself. */
const GENERIC = /^(?:serving|portion|person|people)$/;

/** What is poured into at the table: no household measure, where cups can be told. */
const POURED_INTO = /^(?:glass|bowl|mug|cup|plate|ladle|helping)$/;

function measure(name: string, count: Rational): string {
  if (!GENERIC.test(name)) return `1 ${name}`;
  const whole = roundTo(count, ONE);
  if (equal(whole, ONE)) return 'the whole dish';
  return `${equal(whole, count) ? '' : 'about '}1/${toExactText(whole)} of the dish`;
}

const fractions = (...list: readonly (readonly [number, number])[]): Rational[] => list.map(([n, d]) => rational(n, d));

/** The nearest of some steps above a whole number. */
function nearestStep(value: Rational, steps: readonly Rational[]): Rational {
  const whole = rational(value.n / value.d);
  const off = (one: Rational): Rational => {
    const apart = subtract(one, value);
    return apart.n < 0n ? subtract(value, one) : apart;
  };
  return steps.map((step) => add(whole, step)).reduce((a, b) => (compare(off(a), off(b)) <= 0 ? a : b));
}

const CUP_STEPS = fractions([0, 1], [1, 4], [1, 3], [1, 2], [2, 3], [3, 4], [1, 1]);
const SPOON_STEPS = fractions([0, 1], [1, 3], [1, 2], [2, 3], [1, 1]);
const SMALL_STEPS = fractions([0, 1], [1, 8], [1, 4], [1, 2], [3, 4], [1, 1]);
const WHOLE_STEPS = fractions([0, 1], [1, 1]);

/**
 * A volume in household measures: cups by quarters and thirds from a quarter up; whole tablespoons from two; between one
 * and two by thirds and halves; whole teaspoons; below one by eighths and quarters. 21 CFR 101.9(b)(5)(i), the steps from
 * memory.
 */
function spoonsAndCups(millilitres: Rational, market: HouseholdMarket): string {
  const cups = divide(millilitres, CUP[market]);
  if (compare(cups, rational(1, 4)) >= 0) {
    const value = nearestStep(cups, CUP_STEPS);
    return `${mixed(value)} cup${compare(value, ONE) > 0 ? 's' : ''}`;
  }
  const tablespoons = divide(millilitres, TABLESPOON);
  if (compare(tablespoons, ONE) >= 0) {
    return `${mixed(nearestStep(tablespoons, compare(tablespoons, rational(2)) >= 0 ? WHOLE_STEPS : SPOON_STEPS))} tbsp`;
  }
  const teaspoons = divide(millilitres, TEASPOON);
  const value = nearestStep(teaspoons, compare(teaspoons, ONE) >= 0 ? WHOLE_STEPS : SMALL_STEPS);
  return `${mixed(value.n === 0n ? rational(1, 8) : value)} tsp`;
}

/** '1 1/2'. */
function mixed(value: Rational): string {
  const whole = value.n / value.d;
  const rest = value.n % value.d;
  const part = rest === 0n ? '' : `${rest}/${value.d}`;
  return [whole === 0n && part !== '' ? '' : String(whole), part].filter((one) => one !== '').join(' ');
}
