import { isSingle, type Interval } from './interval.js';
import { PLAIN, printMixed, printRange, withUnit, type NumberStyle } from './print.js';
import {
  add,
  compare,
  divide,
  floor,
  isWhole,
  multiply,
  rational,
  roundTo,
  subtract,
  toDecimal,
  ZERO,
  type Rational,
} from './rational.js';

/** Units of time. A week is 7 d, a month 30 d (NOTATION 4.1). */
export type DurationUnit = 's' | 'min' | 'h' | 'd' | 'week' | 'month';

const MINUTES: Readonly<Record<DurationUnit, Rational>> = {
  s: rational(1, 60),
  min: rational(1),
  h: rational(60),
  d: rational(1440),
  week: rational(10_080),
  month: rational(43_200),
};

/** Exact minutes in so many of a unit. */
export const toMinutes = (value: Rational, unit: DurationUnit): Rational => multiply(value, MINUTES[unit]);

/** So many minutes told in a unit, exactly. */
export const fromMinutes = (minutes: Rational, unit: DurationUnit): Rational => divide(minutes, MINUTES[unit]);

const SECOND = MINUTES.s;
// Hours are counted on past one day, as bakers do (36 h), and days begin at two.
const DAYS_FROM = rational(2880);

/** `2 d 4 h`, `1 h 30 min`, `45 s`: the nearest second, parts that are nothing left out. `0 min` for nothing. */
export function printMinutes(minutes: Rational, style: NumberStyle = PLAIN): string {
  if (minutes.n < 0n) throw new RangeError('a length of time cannot be below zero');
  let rest = roundTo(minutes, SECOND);
  const parts: string[] = [];
  const units: readonly DurationUnit[] = compare(rest, DAYS_FROM) < 0 ? ['h', 'min', 's'] : ['d', 'h', 'min', 's'];
  for (const unit of units) {
    const whole = floor(fromMinutes(rest, unit));
    if (whole > 0n) parts.push(withUnit(whole.toString(), unit, style));
    rest = subtract(rest, toMinutes(rational(whole), unit));
  }
  return parts.length > 0 ? parts.join(style.noBreak ? '\u00a0' : ' ') : withUnit('0', 'min', style);
}

/**
 * `10-14 h`, `45-60 min`, `2-3 d`, `45 min to 1 h 30 min`: one unit behind both ends where both are whole or half
 * numbers of it and small enough to read, else both told in full.
 */
export function printMinutesRange(range: Interval, style: NumberStyle = PLAIN): string {
  if (isSingle(range)) return printMinutes(range.low, style);
  const shared = sharedUnit(range);
  if (!shared) return `${printMinutes(range.low, style)} to ${printMinutes(range.high, style)}`;
  const [low, high] = [range.low, range.high].map((end) => printMixed(fromMinutes(end, shared), style));
  return withUnit(printRange(low ?? '', high ?? '', style), shared, style);
}

// What a shared unit may be, first choice first: as whole or half numbers of it, from the least to the most that is read
// without being turned into another unit (1-2 h, 90-120 min, 2-2 1/2 h, 24-48 h).
const SHARED: readonly { unit: DurationUnit; least: Rational; most: Rational; grain: Rational }[] = [
  { unit: 'd', least: rational(2), most: rational(400), grain: rational(1) },
  { unit: 'h', least: rational(1), most: rational(96), grain: rational(1) },
  { unit: 'min', least: rational(1), most: rational(120), grain: rational(1) },
  { unit: 'h', least: rational(1), most: rational(96), grain: rational(1, 2) },
  { unit: 's', least: rational(0), most: rational(120), grain: rational(1) },
];

function sharedUnit(range: Interval): DurationUnit | undefined {
  return SHARED.find(({ unit, least, most, grain }) => {
    const [low, high] = [fromMinutes(range.low, unit), fromMinutes(range.high, unit)];
    const whole = isWhole(divide(low, grain)) && isWhole(divide(high, grain));
    return whole && compare(low, least) >= 0 && compare(high, most) <= 0;
  })?.unit;
}

/**
 * ISO 8601-1:2019 (5.5.2) duration: `PT1H30M`, `P2D`, `PT0.5S`. Days are days of 24 hours; rounded to the millisecond,
 * the only rounding (give the exact minutes beside it where it matters).
 */
export function toIsoDuration(minutes: Rational): string {
  if (minutes.n < 0n) throw new RangeError('a length of time cannot be below zero');
  let rest = roundTo(minutes, rational(1, 60_000));
  const take = (unit: DurationUnit): bigint => {
    const whole = floor(fromMinutes(rest, unit));
    rest = subtract(rest, toMinutes(rational(whole), unit));
    return whole;
  };
  const days = take('d');
  const hours = take('h');
  const whole = take('min');
  const seconds = toDecimal(fromMinutes(rest, 's'), 3).replace(/\.?0+$/, '') || '0';
  const clock = (hours ? `${hours}H` : '') + (whole ? `${whole}M` : '') + (seconds === '0' ? '' : `${seconds}S`);
  const text = (days ? `${days}D` : '') + (clock ? `T${clock}` : '');
  return text ? `P${text}` : 'PT0S';
}

const ISO = /^P(?=.)(?:(\d+)W|(?:(\d+)D)?(?:T(?=.)(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)(?:[.,](\d+))?S)?)?)$/;

/**
 * Exact minutes of an ISO 8601 duration in weeks, or days and a time.
 * @returns undefined when the text is not one, or counts calendar months or years, which have no fixed length.
 */
export function parseIsoDuration(text: string): Rational | undefined {
  const found = ISO.exec(text);
  if (!found) return undefined;
  const [, weeks, days, hours, minutes, seconds, decimals = ''] = found;
  const part = (digits: string | undefined, unit: DurationUnit): Rational =>
    digits === undefined ? ZERO : toMinutes(rational(BigInt(digits)), unit);
  const second = rational(BigInt((seconds ?? '0') + decimals), 10n ** BigInt(decimals.length));
  return [part(weeks, 'week'), part(days, 'd'), part(hours, 'h'), part(minutes, 'min'), toMinutes(second, 's')].reduce(
    add,
    ZERO,
  );
}
