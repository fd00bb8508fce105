import { multiply, rational, sum, type Rational } from '@quern/quantity';
import type { Duration, TimeUnit } from './ast.js';

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

/** A time as written, with its exact minutes. */
export function duration(parts: Duration['parts']): Duration {
  return { minutes: sum(parts.map(({ value, unit }) => minutesIn(value, unit))), parts };
}

/** Eight to sixteen hours: what `overnight` means. */
export const OVERNIGHT = { low: hours(8), high: hours(16) };

function hours(count: number): Duration {
  return duration([{ value: rational(count), unit: 'h' }]);
}
