import { multiply, rational, type Rational } from '@quern/quantity';
import type { TimeUnit } from './ast.js';

/** Minutes in a unit of time; a month of 30 days is a convention of the notation. */
const MINUTES: Readonly<Record<TimeUnit, Rational>> = {
  s: rational(1, 60),
  min: rational(1),
  h: rational(60),
  d: rational(1440),
  week: rational(10080),
  month: rational(43200),
};

/** So many of a unit of time, in exact minutes. */
export function minutesIn(value: Rational, unit: TimeUnit): Rational {
  return multiply(value, MINUTES[unit]);
}
