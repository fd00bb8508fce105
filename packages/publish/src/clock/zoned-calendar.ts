import { Temporal } from 'temporal-polyfill';
import type { AwakeHours, ClockCalendar, LocalTime, Minute, Sleep } from '@quern/views';

/*
 * The only place where a plan's minutes become dates. A rest of 12 h is 12 h whatever the clocks do; waking hours are
 * what the wall clock says.
 */

/** A calendar with dates: the anchor is a moment, the wall clock that of a time zone. */
export interface ZonedCalendar extends ClockCalendar {
  readonly zone: string;
  at(minute: Minute): Temporal.ZonedDateTime;
  /** Whole minutes from the anchor to a moment. */
  minuteOf(moment: Temporal.ZonedDateTime): Minute;
  /** The moment at which the wall clock shows so many minutes after midnight, so many days after the anchor's day. */
  wall(day: number, clock: Minute): Minute;
}

export function zonedCalendar(anchor: Temporal.ZonedDateTime, awake: AwakeHours): ZonedCalendar {
  const zero = anchor.round({ smallestUnit: 'minute', roundingMode: 'floor' });
  const midnight = zero.toPlainDate();
  const at = (minute: Minute): Temporal.ZonedDateTime => zero.add({ minutes: minute });
  const minuteOf = (moment: Temporal.ZonedDateTime): Minute =>
    Math.floor((moment.epochMilliseconds - zero.epochMilliseconds) / 60_000);
  const local = (minute: Minute): LocalTime => {
    const moment = at(minute);
    return {
      day: midnight.until(moment.toPlainDate(), { largestUnit: 'day' }).days,
      clock: moment.hour * 60 + moment.minute,
    };
  };
  // A wall-clock time that a change of the clocks leaves out is taken as that much later; one that comes twice, as the first.
  const wall = (day: number, clock: Minute): Minute => {
    const date = midnight.add({ days: day + Math.floor(clock / 1440) });
    const time = new Temporal.PlainTime(Math.floor((clock % 1440) / 60), clock % 60);
    return minuteOf(date.toZonedDateTime({ timeZone: zero.timeZoneId, plainTime: time }));
  };
  const sleep = (from: Minute, to: Minute): Sleep[] => {
    const stretches: Sleep[] = [];
    const runsOver = awake.to <= awake.from ? 1440 : 0;
    const last = local(to).day + 1;
    for (let day = local(from).day - 1; day <= last; day++) {
      const stretch = { from: wall(day, awake.to + runsOver), to: wall(day + 1, awake.from) };
      if (stretch.from < stretch.to && stretch.to > from && stretch.from < to) stretches.push(stretch);
    }
    return stretches;
  };
  return { zone: zero.timeZoneId, at, minuteOf, wall, local, sleep };
}

/** What a person wrote for a moment, or why it cannot be read. */
export type ReadMoment =
  | { readonly kind: 'moment'; readonly at: Temporal.ZonedDateTime }
  | { readonly kind: 'unreadable'; readonly why: string };

/** `2027-05-08 16:00` in a zone. The date and time are those of ISO 8601; a space may stand for its T. */
export function readMoment(text: string, zone: string): ReadMoment {
  const found = /^(\d{4}-\d{2}-\d{2})[ T](\d{1,2}):(\d{2})$/.exec(text.trim());
  if (!found) return { kind: 'unreadable', why: `“${text}” is not a date and a time such as 2027-05-08 16:00` };
  if (!isZone(zone)) return { kind: 'unreadable', why: `“${zone}” is not a time zone such as Europe/London` };
  const [, date = '', hour = '', minute = ''] = found;
  try {
    const plain = Temporal.PlainDateTime.from(`${date}T${hour.padStart(2, '0')}:${minute}`, { overflow: 'reject' });
    const at = plain.toZonedDateTime(zone);
    if (!at.toPlainDateTime().equals(plain)) {
      return {
        kind: 'unreadable',
        why: `the clocks go forward then: there is no ${hour}:${minute} on ${date} in ${zone}`,
      };
    }
    return { kind: 'moment', at };
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'unreadable', why: `“${text}” is not in the calendar` };
    throw error;
  }
}

export function isZone(zone: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** The beginning of a date in a zone, as the anchor of a menu. */
export function midnightOf(date: string, zone: string): Temporal.ZonedDateTime {
  return Temporal.PlainDate.from(date).toZonedDateTime(zone);
}

/** The present minute, told by the caller in milliseconds since 1970. */
export function momentOfEpoch(milliseconds: number, zone: string): Temporal.ZonedDateTime {
  return Temporal.Instant.fromEpochMilliseconds(Math.floor(milliseconds)).toZonedDateTimeISO(zone);
}
