import { add, compare, floor, multiply, rational, toApproximateNumber, type Rational } from '@quern/quantity';
import type { ActivityLane, Allowance, Minute } from './problem.js';
import type { Time, TimeUnit } from '@quern/syntax';

/*
 * What a written time allows (NOTATION 4.8): a range of a wait is freedom, a range elsewhere is doubt and its top is
 * booked; a single figure of a wait may stretch by a tenth; `overnight` is 8 to 16 h that cover the hours asleep.
 */

export interface StepTime {
  readonly time: Allowance;
  readonly nature: 'freedom' | 'doubt' | 'figure';
  readonly soonest: Minute;
  readonly coversSleep: boolean;
  readonly byCalendar: boolean;
}

const NIGHT: Allowance = { least: 480, preferred: 720, most: 960 };
const exactly = (minutes: Minute): Allowance => ({ least: minutes, preferred: minutes, most: minutes });

/** `stretch` is how far a wait of a single figure may be drawn out: 1/10 for a tenth. */
export function stepTime(lane: ActivityLane, time: Time | undefined, stretch: Rational): StepTime {
  const plain = { soonest: 1, coversSleep: false, byCalendar: false };
  if (!time) return { ...plain, time: lane === 'wait' ? exactly(0) : exactly(1), nature: 'figure' };
  const low = wholeMinutes(time.low.minutes);
  const high = Math.max(low, wholeMinutes(time.high.minutes));
  const byCalendar = [...time.low.parts, ...time.high.parts].every((part) => isCalendarUnit(part.unit));
  if (time.kind === 'overnight') {
    // Hands cannot be busy all night; the plan will say so. Whatever else is left overnight may last as long as it suits.
    if (lane === 'hands') return { ...plain, time: exactly(NIGHT.least), nature: 'figure', soonest: NIGHT.least };
    return { time: NIGHT, nature: 'freedom', soonest: NIGHT.least, coversSleep: true, byCalendar: false };
  }
  if (lane !== 'wait') {
    const nature = time.kind === 'fixed' ? 'figure' : 'doubt';
    return { time: exactly(Math.max(1, high)), nature, soonest: Math.max(1, low), coversSleep: false, byCalendar };
  }
  return {
    time: waitAllowance(time, low, high, stretch),
    nature: natureOf(time),
    soonest: low,
    coversSleep: false,
    byCalendar,
  };
}

function natureOf(time: Time): 'freedom' | 'figure' {
  return time.kind === 'fixed' ? 'figure' : 'freedom';
}

function waitAllowance(time: Time, low: Minute, high: Minute, stretch: Rational): Allowance {
  if (time.kind === 'at-least') return { least: low, preferred: low, most: Infinity };
  if (time.kind === 'range') return { least: low, preferred: half(low + high), most: high };
  const give = toApproximateNumber(rational(floor(multiply(rational(low), stretch))));
  // 'About' gives as much either way; a bare figure is never cut short.
  return { least: time.about ? Math.max(0, low - give) : low, preferred: low, most: low + give };
}

/** Whole minutes, a part of one counted as one. */
export function wholeMinutes(minutes: Rational): Minute {
  const down = floor(minutes);
  const whole = compare(rational(down), minutes) < 0 ? down + 1n : down;
  return toApproximateNumber(rational(whole));
}

/** A time that stands for itself, such as that between two visits: its middle. */
export function plainMinutes(time: Time): Minute {
  return half(wholeMinutes(add(time.low.minutes, time.high.minutes)));
}

export const tenth = (minutes: Minute): Minute => (minutes - (minutes % 10)) / 10;
const half = (minutes: Minute): Minute => (minutes - (((minutes % 2) + 2) % 2)) / 2;

export const isCalendarUnit = (unit: TimeUnit): boolean => unit === 'd' || unit === 'week' || unit === 'month';
