import { printMinutes, printMinutesRange, rational } from '@quern/quantity';
import { hourText, type ClockCalendar } from './calendar.js';
import type { Allowance, Minute } from './problem.js';

/** '1 h 55 min'. */
export const lasting = (minutes: Minute): string => printMinutes(rational(minutes));

/** '8-12 h', '30 min or more', 'up to 2 h', '45 min'. */
export function allowed({ least, most }: Allowance): string {
  if (most === Infinity) return `${lasting(least)} or more`;
  if (least === 0) return `up to ${lasting(most)}`;
  return printMinutesRange({ low: rational(least), high: rational(most) });
}

/** '02:40', '21:10 the day before', '07:00 two days after': reckoned from another moment's day. */
export function moment(calendar: ClockCalendar, at: Minute, from: Minute): string {
  const { day, clock } = calendar.local(at);
  return hourText(clock) + daysApart(day - calendar.local(from).day);
}

const SMALL = ['', 'the day', 'two days', 'three days', 'four days', 'five days', 'six days', 'seven days'];

function daysApart(days: number): string {
  if (days === 0) return '';
  const count = days < 0 ? -days : days;
  return ` ${SMALL[count] ?? `${count} days`} ${days < 0 ? 'before' : 'after'}`;
}

/** The beginning of a step's sentence, to name the step by. */
export function stepName(label: string): string {
  const sentence = label.split(/(?<=[.;])\s/)[0] ?? label;
  const words = sentence.replace(/[.;]$/, '');
  if (words.length <= 48) return words;
  const cut = words.slice(0, 48);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 20))} …`;
}
