import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addIntervals,
  contains,
  divideIntervals,
  equalIntervals,
  hull,
  interval,
  isSingle,
  middleOf,
  multiplyIntervals,
  overlap,
  scaleInterval,
  single,
  subtractIntervals,
  sumIntervals,
  widthOf,
  type Interval,
} from './interval.js';
import { add, divide, multiply, ONE, rational, subtract, ZERO, type Rational } from './rational.js';

const anyValue = fc
  .tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: 1, max: 60 }))
  .map(([n, d]) => rational(n, d));
const anyInterval = fc.tuple(anyValue, anyValue).map((ends) => hull(ends));
const share = fc.integer({ min: 0, max: 12 }).map((n) => rational(n, 12));
const inside = (range: Interval, at: Rational): Rational => add(range.low, multiply(widthOf(range), at));

describe('intervals', () => {
  test('a range that runs down is refused', () => {
    expect(() => interval(rational(2), rational(1))).toThrow(RangeError);
    expect(() => hull([])).toThrow(RangeError);
  });

  test('a single number is one', () => {
    expect(isSingle(single(ONE))).toBe(true);
    expect(isSingle(interval(ZERO, ONE))).toBe(false);
    expect(middleOf(interval(rational(340), rational(360)))).toEqual(rational(350));
  });

  test('a negative factor turns a range round', () => {
    expect(scaleInterval(interval(rational(1), rational(2)), rational(-3))).toEqual(
      interval(rational(-6), rational(-3)),
    );
  });

  test('whatever is true inside the operands is inside the result', () => {
    fc.assert(
      fc.property(anyInterval, anyInterval, share, share, (a, b, s, t) => {
        const [x, y] = [inside(a, s), inside(b, t)];
        expect(contains(addIntervals(a, b), add(x, y))).toBe(true);
        expect(contains(subtractIntervals(a, b), subtract(x, y))).toBe(true);
        expect(contains(multiplyIntervals(a, b), multiply(x, y))).toBe(true);
        if (contains(b, ZERO)) expect(() => divideIntervals(a, b)).toThrow(RangeError);
        else expect(contains(divideIntervals(a, b), divide(x, y))).toBe(true);
      }),
    );
  });

  test('scaling by a and then by 1/a is the identity', () => {
    fc.assert(
      fc.property(anyInterval, anyValue, (range, factor) => {
        fc.pre(factor.n !== 0n);
        expect(equalIntervals(scaleInterval(scaleInterval(range, factor), divide(ONE, factor)), range)).toBe(true);
      }),
    );
  });

  test('the middle of a sum is the sum of the middles', () => {
    fc.assert(
      fc.property(fc.array(anyInterval, { maxLength: 6 }), (ranges) => {
        expect(middleOf(sumIntervals(ranges))).toEqual(ranges.map(middleOf).reduce(add, ZERO));
      }),
    );
  });

  test('two ranges overlap when one end of one lies in the other', () => {
    fc.assert(
      fc.property(anyInterval, anyInterval, (a, b) => {
        const touching = [contains(a, b.low), contains(a, b.high), contains(b, a.low)].some(Boolean);
        expect(overlap(a, b)).toBe(touching);
        expect(overlap(b, a)).toBe(overlap(a, b));
      }),
    );
  });
});
