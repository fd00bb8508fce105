import { add, greatest, least, multiply, subtract, ZERO, type Rational } from '@quern/quantity';

/** A quantity that is known between two ends; `usual` is what is printed. All three are exact. */
export interface Range {
  readonly low: Rational;
  readonly usual: Rational;
  readonly high: Rational;
}

export const point = (value: Rational): Range => ({ low: value, usual: value, high: value });

export const NOTHING: Range = point(ZERO);

/** The narrowest range that holds the three, whichever of the ends is greater. */
export function rangeOf(a: Rational, usual: Rational, b: Rational): Range {
  return { low: least(least(a, b), usual), usual, high: greatest(greatest(a, b), usual) };
}

export function addRanges(a: Range, b: Range): Range {
  return { low: add(a.low, b.low), usual: add(a.usual, b.usual), high: add(a.high, b.high) };
}

/** a − b when nothing is known of how the two hang together. */
export function subtractRanges(a: Range, b: Range): Range {
  return { low: subtract(a.low, b.high), usual: subtract(a.usual, b.usual), high: subtract(a.high, b.low) };
}

export function timesRange(a: Range, factor: Rational): Range {
  const x = multiply(a.low, factor);
  const y = multiply(a.high, factor);
  return { low: least(x, y), usual: multiply(a.usual, factor), high: greatest(x, y) };
}
