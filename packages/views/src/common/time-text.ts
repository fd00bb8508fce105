import { compare, ONE, PLAIN, printCount, printRange, withUnit, type NumberStyle } from '@quern/quantity';
import type { Duration, Time, TimeUnit } from '@quern/syntax';

/*
 * Times as they are written: `10-14 h`, `2 h 30 min`, `overnight`, `30 min or more`. Nothing is turned into another
 * unit, so that a reader finds the figure of the file.
 */

const PLURAL: Readonly<Record<TimeUnit, string>> = {
  s: 's',
  min: 'min',
  h: 'h',
  d: 'd',
  week: 'weeks',
  month: 'months',
};

function unitAfter(unit: TimeUnit, value: Duration['parts'][number]['value']): string {
  return compare(value, ONE) <= 0 ? unit : PLURAL[unit];
}

function durationText({ parts }: Duration, style: NumberStyle): string {
  return parts
    .map(({ value, unit }) => withUnit(printCount(value, style), unitAfter(unit, value), style))
    .join(style.noBreak ? '\u00a0' : ' ');
}

/** The time of a step, of care or of keeping, as a reader is told it. */
export function timeText(time: Time, style: NumberStyle = PLAIN): string {
  const ahead = time.about ? 'about ' : '';
  switch (time.kind) {
    case 'overnight':
      return 'overnight';
    case 'at-least':
      return `${ahead}${durationText(time.low, style)} or more`;
    case 'fixed':
      return ahead + durationText(time.low, style);
    case 'range':
      return ahead + rangeText(time, style);
  }
}

function rangeText({ low, high }: Time, style: NumberStyle): string {
  const [from, to] = [low.parts[0], high.parts[0]];
  const shared = low.parts.length === 1 && high.parts.length === 1 && from && to && from.unit === to.unit;
  if (!shared) return `${durationText(low, style)} to ${durationText(high, style)}`;
  const figures = printRange(printCount(from.value, style), printCount(to.value, style), style);
  return withUnit(figures, unitAfter(to.unit, to.value), style);
}
