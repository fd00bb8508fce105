import { hourText, type DayPart, type Minute, type TimetableDay } from '@quern/views';
import type { ZonedCalendar } from './zoned-calendar.js';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** How moments are named: by date when there is one, else by the day they are before all is ready. */
export interface Moments {
  /** 'Friday 7 May 2027' or 'Day 1, two days before'. */
  day(day: TimetableDay): string;
  /** 'Friday 7 May 2027, evening' or 'Day 1, evening: the evening before'. */
  part(day: TimetableDay, part: DayPart): string;
  /** 'Fri 7 May 18:57' or 'day 1, 18:57': short, for one line. */
  at(minute: Minute): string;
  /** 'Friday 7 May 2027', or 'two months after' for a plan without dates. */
  date(minute: Minute): string;
}

export function datedMoments(calendar: ZonedCalendar): Moments {
  const date = (minute: Minute): string => {
    const at = calendar.at(minute);
    return `${WEEKDAYS[at.dayOfWeek - 1] ?? ''} ${at.day} ${MONTHS[at.month - 1] ?? ''} ${at.year}`;
  };
  return {
    day: ({ at }) => date(at),
    part: ({ at }, part) => `${date(at)}, ${part}`,
    date,
    at: (minute) => {
      const at = calendar.at(minute);
      const clock = hourText(at.hour * 60 + at.minute);
      return `${(WEEKDAYS[at.dayOfWeek - 1] ?? '').slice(0, 3)} ${at.day} ${(MONTHS[at.month - 1] ?? '').slice(0, 3)} ${clock}`;
    },
  };
}

/** Names without dates: `first` is the day on which the first thing is done, `ready` that on which all is ready. */
export function undatedMoments(
  local: (minute: Minute) => { day: number; clock: Minute },
  first: number,
  ready: number,
): Moments {
  return {
    day: ({ ordinal, daysBefore }) => {
      const before = daysBeforeText(daysBefore);
      return before === '' ? `Day ${ordinal}` : `Day ${ordinal}, ${before}`;
    },
    part: ({ ordinal, daysBefore }, part) => {
      const before = daysBefore === 1 ? `the ${part} before` : daysBeforeText(daysBefore);
      return `Day ${ordinal}, ${part}${before === '' ? '' : `: ${before}`}`;
    },
    date: (minute) => {
      const days = local(minute).day - ready;
      return days > 0 ? `${days} ${days === 1 ? 'day' : 'days'} after` : daysBeforeText(-days) || 'the day itself';
    },
    at: (minute) => {
      const { day, clock } = local(minute);
      return `day ${day - first + 1}, ${hourText(clock)}`;
    },
  };
}

const COUNTED = ['', '', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

function daysBeforeText(days: number): string {
  if (days === 0) return '';
  if (days < 0) return `${COUNTED[-days] || (days === -1 ? 'the' : -days)} ${days === -1 ? 'day' : 'days'} after`;
  return days === 1 ? 'the day before' : `${COUNTED[days] ?? days} days before`;
}
