import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  add,
  compare,
  divide,
  equal,
  exact,
  floor,
  middle,
  multiply,
  negate,
  ONE,
  parseRational,
  rational,
  round,
  roundTo,
  subtract,
  sum,
  toApproximateNumber,
  toDecimal,
  toExactText,
  ZERO,
  type Rational,
} from './rational.js';

// Past 2^53 on both sides, where the greatest common divisor changes its method.
const big = fc.bigInt({ min: -(2n ** 70n), max: 2n ** 70n });
const small = fc.bigInt({ min: -10_000n, max: 10_000n });
const anyPair = fc.tuple(fc.oneof(small, big), fc.oneof(small, big)).filter(([, d]) => d !== 0n);
const anyRational = anyPair.map(([n, d]) => rational(n, d));
const aboveZero = anyRational.map(absolute).filter((a) => a.n !== 0n);

/** The same value in fraction.js, an independent library of exact fractions. */
const outside = (a: Rational): Fraction => new Fraction(a.n, a.d);
const same = (a: Rational, b: Fraction): boolean => a.n === b.s * b.n && a.d === b.d;

describe('exact fractions, against fraction.js', () => {
  test('are in lowest terms', () => {
    fc.assert(fc.property(anyPair, ([n, d]) => same(rational(n, d), new Fraction(n, d))));
  });

  test('add, subtract, multiply and divide', () => {
    fc.assert(
      fc.property(anyRational, anyRational, (a, b) => {
        expect(same(add(a, b), outside(a).add(outside(b)))).toBe(true);
        expect(same(subtract(a, b), outside(a).sub(outside(b)))).toBe(true);
        expect(same(multiply(a, b), outside(a).mul(outside(b)))).toBe(true);
        if (b.n !== 0n) expect(same(divide(a, b), outside(a).div(outside(b)))).toBe(true);
      }),
    );
  });

  test('compare, floor and round a half away from zero', () => {
    fc.assert(
      fc.property(anyRational, anyRational, (a, b) => {
        expect(compare(a, b)).toBe(outside(a).compare(outside(b)));
        expect(same(rational(floor(a)), outside(a).floor())).toBe(true);
        // fraction.js rounds a half upwards: the same for the size of a number.
        expect(same(rational(round(absolute(a))), outside(absolute(a)).round())).toBe(true);
        expect(round(negate(a))).toBe(-round(a));
      }),
    );
  });

  test('read what fraction.js reads', () => {
    for (const text of ['12', '1.5', '-0.25', '3/4', '007', '0.125', '10/4']) {
      expect(same(exact(text), new Fraction(text))).toBe(true);
    }
  });
});

describe('laws', () => {
  test('scaling by a and then by 1/a is the identity', () => {
    fc.assert(
      fc.property(anyRational, aboveZero, (value, factor) => {
        expect(multiply(multiply(value, factor), divide(ONE, factor))).toEqual(value);
      }),
    );
  });

  test('parts in any proportion sum to the whole', () => {
    fc.assert(
      fc.property(anyRational, fc.array(aboveZero, { minLength: 1, maxLength: 8 }), (whole, weights) => {
        const total = sum(weights);
        expect(sum(weights.map((weight) => divide(multiply(whole, weight), total)))).toEqual(whole);
      }),
    );
  });

  test('exact text is read back as the same value', () => {
    fc.assert(fc.property(anyRational, (value) => equal(parseRational(toExactText(value)) ?? ZERO, value)));
  });

  test('rounding moves a value by no more than half a step', () => {
    fc.assert(
      fc.property(anyRational, aboveZero, (value, step) => {
        const moved = absolute(subtract(roundTo(value, step), value));
        expect(compare(moved, divide(step, rational(2)))).toBeLessThanOrEqual(0);
      }),
    );
  });

  test('the middle is as far from both ends', () => {
    fc.assert(
      fc.property(anyRational, anyRational, (a, b) => {
        expect(subtract(middle(a, b), a)).toEqual(subtract(b, middle(a, b)));
      }),
    );
  });
});

describe('reading and writing', () => {
  test.each(['', '.', '1.', '.5', '1/0', '1/00', '1e3', '+1', '1 1/2', '1,5', '٣', 'x'])(
    '%j is not a number',
    (text) => {
      expect(parseRational(text)).toBeUndefined();
      expect(() => exact(text)).toThrow(RangeError);
    },
  );

  test('zero is never a denominator', () => {
    expect(() => rational(1, 0)).toThrow(RangeError);
    expect(() => divide(ONE, ZERO)).toThrow(RangeError);
  });

  test.each([
    ['1/8', 2, '0.13'],
    ['-1/8', 2, '-0.13'],
    ['2/3', 0, '1'],
    ['1/1000', 2, '0.00'],
    ['999/1000', 1, '1.0'],
    ['12345/100', 1, '123.5'],
  ])('%s to %i places is %s', (value, places, text) => {
    expect(toDecimal(exact(value), places)).toBe(text);
  });

  test('what has no finite decimal is written as a fraction', () => {
    expect(toExactText(rational(1, 3))).toBe('1/3');
    expect(toExactText(rational(1, 40))).toBe('0.025');
    expect(toExactText(rational(-7))).toBe('-7');
  });

  test('the nearest machine number, also of very large terms', () => {
    expect(toApproximateNumber(rational(1, 3))).toBe(1 / 3);
    expect(toApproximateNumber(rational(3n * 10n ** 400n, 2n * 10n ** 400n))).toBe(1.5);
    expect(toApproximateNumber(rational(10n ** 400n, 2n * 10n ** 399n + 1n))).toBeCloseTo(5);
    expect(toApproximateNumber(rational(-(10n ** 400n), 3n * 10n ** 402n + 1n))).toBeCloseTo(-1 / 300, 12);
  });
});
