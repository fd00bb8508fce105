import type { Temporal } from 'temporal-polyfill';
import type { Minute } from '@quern/views';
import { localValue } from './icalendar-text.js';
import type { ZonedCalendar } from './zoned-calendar.js';

/**
 * The VTIMEZONE of a plan (RFC 5545, 3.6.5): each change of the clocks that the plan's time touches is written out, with
 * the one before it, so that nothing has to be known of the zone's rules.
 */
export function timeZoneLines(calendar: ZonedCalendar, from: Minute, to: Minute): string[] {
  const begin = calendar.at(from);
  const end = calendar.at(to);
  const changes: Temporal.ZonedDateTime[] = [];
  for (
    let next = begin.getTimeZoneTransition('next');
    next !== null && next.epochMilliseconds <= end.epochMilliseconds;
    next = next.getTimeZoneTransition('next')
  ) {
    changes.push(next);
  }
  const before = begin.getTimeZoneTransition('previous');
  const first = before ?? begin.with({ month: 1, day: 1 }).startOfDay();
  return ['BEGIN:VTIMEZONE', `TZID:${calendar.zone}`, ...[first, ...changes].flatMap(observance), 'END:VTIMEZONE'];
}

/** What holds from a change on. Its start is told in the clock that held before it. */
function observance(at: Temporal.ZonedDateTime): string[] {
  const before = at.subtract({ nanoseconds: 1 });
  const winter = at.with({ month: 1, day: 1 }).offsetNanoseconds;
  const summer = at.with({ month: 7, day: 1 }).offsetNanoseconds;
  const daylight = winter !== summer && at.offsetNanoseconds === Math.max(winter, summer);
  const kind = daylight ? 'DAYLIGHT' : 'STANDARD';
  const start = at.toPlainDateTime().add({ nanoseconds: before.offsetNanoseconds - at.offsetNanoseconds });
  return [
    `BEGIN:${kind}`,
    `DTSTART:${localValue(start)}`,
    `TZOFFSETFROM:${offset(before.offsetNanoseconds)}`,
    `TZOFFSETTO:${offset(at.offsetNanoseconds)}`,
    `END:${kind}`,
  ];
}

function offset(nanoseconds: number): string {
  const seconds = Math.abs(Math.round(nanoseconds / 1e9));
  const two = (value: number): string => String(value).padStart(2, '0');
  const rest = seconds % 60;
  return `${nanoseconds < 0 ? '-' : '+'}${two(Math.floor(seconds / 3600))}${two(Math.floor((seconds % 3600) / 60))}${rest ? two(rest) : ''}`;
}
