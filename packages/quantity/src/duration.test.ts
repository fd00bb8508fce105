import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import {
  fromMinutes,
  parseIsoDuration,
  printMinutes,
  printMinutesRange,
  toIsoDuration,
  toMinutes,
  type DurationUnit,
} from './duration.js';
import { interval, single } from './interval.js';
import { TYPOGRAPHIC } from './print.js';
import { rational, toApproximateNumber } from './rational.js';

describe('units of time', () => {
  test('a week is 7 d, a month 30 d (NOTATION 4.1)', () => {
    expect(toMinutes(rational(1), 'week')).toEqual(toMinutes(rational(7), 'd'));
    expect(toMinutes(rational(1), 'month')).toEqual(toMinutes(rational(30), 'd'));
    expect(toMinutes(rational(90), 's')).toEqual(rational(3, 2));
  });

  test('there and back is the identity', () => {
    const anyUnit = fc.constantFrom<DurationUnit>('s', 'min', 'h', 'd', 'week', 'month');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 1, max: 99 }), anyUnit, (n, d, unit) => {
        expect(fromMinutes(toMinutes(rational(n, d), unit), unit)).toEqual(rational(n, d));
      }),
    );
  });
});

describe('printing', () => {
  test.each([
    [rational(0), '0 min'],
    [rational(3, 4), '45 s'],
    [rational(45), '45 min'],
    [rational(90), '1 h 30 min'],
    [rational(1440), '24 h'],
    [rational(2160), '36 h'],
    [rational(2880), '2 d'],
    [rational(3120), '2 d 4 h'],
    [rational(60, 7), '8 min 34 s'],
  ])('%#', (minutes, text) => {
    expect(printMinutes(minutes)).toBe(text);
  });

  test.each([
    [10 * 60, 14 * 60, '10-14 h'],
    [45, 60, '45-60 min'],
    [90, 120, '90-120 min'],
    [60, 120, '1-2 h'],
    [120, 150, '2-2 1/2 h'],
    [1440, 2880, '24-48 h'],
    [2880, 4320, '2-3 d'],
    [45, 600, '45 min to 10 h'],
    [30, 30, '30 min'],
  ])('%i to %i min', (low, high, text) => {
    expect(printMinutesRange(interval(rational(low), rational(high)))).toBe(text);
  });

  test('typographic', () => {
    expect(printMinutesRange(interval(rational(600), rational(840)), TYPOGRAPHIC)).toBe('10–14\u00a0h');
    expect(printMinutesRange(single(rational(90)), TYPOGRAPHIC)).toBe('1\u00a0h\u00a030\u00a0min');
  });

  test('a time below zero is refused', () => {
    expect(() => printMinutes(rational(-1))).toThrow(RangeError);
    expect(() => toIsoDuration(rational(-1))).toThrow(RangeError);
  });
});

describe('ISO 8601 durations', () => {
  test('are read by Temporal as the same length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500_000_000 }), (milliseconds) => {
        const minutes = rational(milliseconds, 60_000);
        const there = Temporal.Duration.from(toIsoDuration(minutes)).total('milliseconds');
        expect(there).toBe(milliseconds);
        expect(parseIsoDuration(toIsoDuration(minutes))).toEqual(minutes);
      }),
    );
  });

  test.each([
    ['PT0S', rational(0)],
    ['PT1H30M', rational(90)],
    ['P2D', rational(2880)],
    ['P1W', rational(10_080)],
    ['P1DT0.5S', rational(172_801, 120)],
    ['PT1,5S', rational(1, 40)],
  ])('%s', (text, minutes) => {
    expect(parseIsoDuration(text)).toEqual(minutes);
    const there = Temporal.Duration.from(text).total({ unit: 'minutes', relativeTo: '2041-01-01' });
    expect(toApproximateNumber(minutes)).toBeCloseTo(there, 9);
  });

  test.each(['', 'P', 'PT', 'P1DT', '1H', 'P1M', 'P1Y', 'PT1.5H', 'PT-1M', 'P1W2D'])('%j is not one', (text) => {
    expect(parseIsoDuration(text)).toBeUndefined();
  });

  test('zero and round lengths', () => {
    expect(toIsoDuration(rational(0))).toBe('PT0S');
    expect(toIsoDuration(rational(90))).toBe('PT1H30M');
    expect(toIsoDuration(rational(2880))).toBe('P2D');
    expect(toIsoDuration(rational(1, 120))).toBe('PT0.5S');
    expect(toIsoDuration(rational(1, 6))).toBe('PT10S');
  });
});
