import { compare, multiply, rational, sum } from '@quern/quantity';
import type { Flour, Formula } from '@quern/compiler';

// Where flour is less than this part of what stands with it (a crumble in a pudding), nobody bakes by percentages on it
// unless they are asked for, and a tenth of a gram of fruit would be a digit nobody needs.
const LEAST_FLOUR = rational(1, 5);

/** The baker's reckoning of a recipe that is told in percentages on its flour; undefined for any other. */
export function bakersFlour({ flour }: Pick<Formula, 'flour'>): Flour | undefined {
  if (!flour || flour.grams.n <= 0n) return undefined;
  const least = multiply(sum(flour.formula.map(({ grams }) => grams)), LEAST_FLOUR);
  return compare(least, flour.grams) <= 0 ? flour : undefined;
}
