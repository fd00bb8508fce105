import { divide, equal, ONE, rational, roundTo, toExactText, type Rational } from '@quern/quantity';
import type { PortionSize } from './declaration.js';
import { printBy, type RoundingRule } from './rounding.js';

/*
 * A serving as the United States and Canada print it: a household measure with its grams, and how many there are. The
 * household measure is a piece where the recipe counts pieces, else a fraction of the dish (21 CFR 101.9(b)(5)).
 */

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

/** 'Serving size: 1 biscuit (31 g). Servings: 24.' Grams are left out where the weight is not known. */
export function householdServing({ name, count }: PortionSize, weight: Rational | undefined): string {
  const grams = weight && ` (${printBy(servingGrams, divide(weight, count))} g)`;
  const servings = printBy(servingsRule, count);
  const about = servings === toExactText(count) ? '' : 'about ';
  return `Serving size: ${measure(name, count)}${grams ?? ''}. Servings: ${about}${servings}.`;
}

function measure(name: string, count: Rational): string {
  if (!/^(?:serving|portion|person|people)$/.test(name)) return `1 ${name}`;
  const whole = roundTo(count, ONE);
  if (equal(whole, ONE)) return 'the whole dish';
  return `${equal(whole, count) ? '' : 'about '}1/${toExactText(whole)} of the dish`;
}
