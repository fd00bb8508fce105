import { add, compare, divide, equal, greatest, least, middle, multiply, subtract, type Rational } from './rational.js';

/** All values from `low` to `high`, both included; a single number has both the same. Never runs downwards. */
export interface Interval {
  readonly low: Rational;
  readonly high: Rational;
}

/** @throws RangeError when the range runs down. */
export function interval(low: Rational, high: Rational): Interval {
  if (compare(low, high) > 0) throw new RangeError('a range cannot run down');
  return { low, high };
}

export const single = (value: Rational): Interval => ({ low: value, high: value });
export const isSingle = (a: Interval): boolean => equal(a.low, a.high);
export const middleOf = (a: Interval): Rational => (isSingle(a) ? a.low : middle(a.low, a.high));
export const widthOf = (a: Interval): Rational => subtract(a.high, a.low);
export const equalIntervals = (a: Interval, b: Interval): boolean => equal(a.low, b.low) && equal(a.high, b.high);
export const contains = (a: Interval, value: Rational): boolean =>
  compare(a.low, value) <= 0 && compare(value, a.high) <= 0;
export const overlap = (a: Interval, b: Interval): boolean =>
  compare(a.low, b.high) <= 0 && compare(b.low, a.high) <= 0;

export function addIntervals(a: Interval, b: Interval): Interval {
  return { low: add(a.low, b.low), high: add(a.high, b.high) };
}

/** What may remain when any of `b` leaves any of `a`: the two are taken as independent, so `a - a` is not zero unless single. */
export function subtractIntervals(a: Interval, b: Interval): Interval {
  return { low: subtract(a.low, b.high), high: subtract(a.high, b.low) };
}

/** The range times one number; a negative factor turns it round. */
export function scaleInterval(a: Interval, factor: Rational): Interval {
  return mapInterval(a, (value) => multiply(value, factor));
}

/** The products of every pair of values, the two taken as independent. */
export function multiplyIntervals(a: Interval, b: Interval): Interval {
  return hull([multiply(a.low, b.low), multiply(a.low, b.high), multiply(a.high, b.low), multiply(a.high, b.high)]);
}

/** @throws RangeError when `b` holds zero. */
export function divideIntervals(a: Interval, b: Interval): Interval {
  if (b.low.n <= 0n && b.high.n >= 0n) throw new RangeError('a range cannot be divided by a range that holds zero');
  return multiplyIntervals(a, hull([divide({ n: 1n, d: 1n }, b.low), divide({ n: 1n, d: 1n }, b.high)]));
}

/** Both ends through a function that only rises or only falls; the ends change places if it falls. */
export function mapInterval(a: Interval, through: (value: Rational) => Rational): Interval {
  if (isSingle(a)) return single(through(a.low));
  return hull([through(a.low), through(a.high)]);
}

export function sumIntervals(parts: Iterable<Interval>): Interval {
  let total: Interval = single({ n: 0n, d: 1n });
  for (const part of parts) total = addIntervals(total, part);
  return total;
}

/** The least interval that holds all the values. @throws RangeError when there are none. */
export function hull(values: Iterable<Rational>): Interval {
  let found: Interval | undefined;
  for (const value of values) {
    found = found ? { low: least(found.low, value), high: greatest(found.high, value) } : single(value);
  }
  if (!found) throw new RangeError('no values to hold');
  return found;
}
