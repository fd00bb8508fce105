import { degrees, floor, rational, temperaturePoint, toApproximateNumber, type Rational } from '@quern/quantity';
import type { Temperature } from '@quern/syntax';
import type { Heat } from './problem.js';

/** A written temperature as marks of a dial: whole degrees Celsius. */
export function heatOf(written: Temperature): Heat {
  const celsius = (value: Rational): number =>
    toApproximateNumber(rational(floor(degrees(temperaturePoint(value, written.scale), 'C'))));
  return { low: celsius(written.low), high: celsius(written.high) };
}
