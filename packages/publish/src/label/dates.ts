import type { Lasting } from '@quern/views';
import { Temporal } from 'temporal-polyfill';

const MONTHS = 'January February March April May June July August September October November December'.split(' ');
const MINUTES_IN_A_DAY = 1440n;

/**
 * The last whole day of something that lasts from a day on: by the calendar if months are written, but never later than
 * by months of thirty days, so that the shorter of the two is promised.
 * @param day an ISO date.
 * @throws RangeError when it is not one.
 */
export function lastDay(day: string, { minutes, parts }: Pick<Lasting, 'minutes' | 'parts'>): string {
  const from = Temporal.PlainDate.from(day);
  const byDays = from.add({ days: Number(minutes.n / (minutes.d * MINUTES_IN_A_DAY)) });
  const calendar = calendarLength(parts);
  const byCalendar = calendar === undefined ? byDays : from.add(calendar);
  return (Temporal.PlainDate.compare(byCalendar, byDays) < 0 ? byCalendar : byDays).toString();
}

/** The first day on which something that has to stand so long is ready. */
export function firstDay(day: string, { minutes }: Pick<Lasting, 'minutes'>): string {
  const whole = minutes.d * MINUTES_IN_A_DAY;
  return Temporal.PlainDate.from(day)
    .add({ days: Number((minutes.n + whole - 1n) / whole) })
    .toString();
}

/** Whole months as written; undefined when the time has other parts or a fraction. */
function calendarLength(parts: Lasting['parts']): { readonly months: number } | undefined {
  const only = parts[0];
  if (parts.length !== 1 || only?.unit !== 'month' || only.value.d !== 1n) return undefined;
  return { months: Number(only.value.n) };
}

/** An ISO date as people read it: '23 February 2041'. */
export function dateWords(day: string): string {
  const date = Temporal.PlainDate.from(day);
  return `${date.day} ${MONTHS[date.month - 1] ?? ''} ${date.year}`;
}

/** Whether a text is an ISO date that exists. */
export function isDate(text: string): boolean {
  try {
    return (
      /^\d{4}-\d{2}-\d{2}$/.test(text) && Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() === text
    );
  } catch {
    return false;
  }
}
