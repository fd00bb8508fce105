import { absolute, compare, multiply, rational, toDecimal, HUNDRED, type Rational } from '@quern/quantity';

/*
 * Figures inside messages: three significant digits of grams, one decimal of a percent. Views print by their own rules.
 */

export function showGrams(value: Rational): string {
  const size = absolute(value);
  if (compare(size, rational(10_000)) >= 0) return `${trim(toDecimal({ n: value.n, d: value.d * 1000n }, 2))} kg`;
  const places = compare(size, rational(100)) >= 0 ? 0 : 1;
  return `${trim(toDecimal(value, places))} g`;
}

/** A share, 0 to 1, as a percent. */
export function showPercent(share: Rational): string {
  return `${trim(toDecimal(multiply(share, HUNDRED), 1))} %`;
}

function trim(text: string): string {
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
}
