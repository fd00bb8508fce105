import { divide, type Rational } from '@quern/quantity';
import type { Formula } from './model.js';

/** How many of a thing a dish is: its servings for 'servings', else the pieces it gives. Undefined when it does not say. */
export function portionsOf(formula: Formula, word: string): Rational | undefined {
  const whole = /^servings?$/i.test(word) ? (formula.servings ?? formula.pieces) : (formula.pieces ?? formula.servings);
  return whole && whole.n > 0n ? whole : undefined;
}

/** The share of a dish that a number of servings or pieces is. */
export function factorOf(formula: Formula, count: Rational, word: string): Rational | undefined {
  const whole = portionsOf(formula, word);
  return whole ? divide(count, whole) : undefined;
}
