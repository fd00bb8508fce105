import type { AwakeHours } from './clock-kitchen.js';
import type { Minute, Sleep } from './problem.js';

/** A moment as a wall clock tells it. */
export interface LocalTime {
  /** Days after the anchor's own day; negative before it. */
  readonly day: number;
  /** Minutes after midnight. */
  readonly clock: Minute;
}

/**
 * The one door to the calendar: what a wall clock says at a moment, and when people sleep. With time zones it is made on
 * Temporal, outside the core.
 */
export interface ClockCalendar {
  local(at: Minute): LocalTime;
  /** The stretches outside waking hours that touch the given stretch, in order. */
  sleep(from: Minute, to: Minute): readonly Sleep[];
}

/** Days of 24 hours without dates. The anchor stands at so many minutes after midnight. */
export function plainCalendar(awake: AwakeHours, anchorClock: Minute = 0): ClockCalendar {
  const local = (at: Minute): LocalTime => {
    const minutes = at + anchorClock;
    const clock = ((minutes % 1440) + 1440) % 1440;
    return { day: (minutes - clock) / 1440, clock };
  };
  return {
    local,
    sleep(from, to) {
      const last = local(to).day + 1;
      const stretches: Sleep[] = [];
      for (let day = local(from).day - 1; day <= last; day++) {
        const stretch = sleepAfter(day, awake);
        stretches.push({ from: stretch.from - anchorClock, to: stretch.to - anchorClock });
      }
      return stretches.filter((stretch) => stretch.from < stretch.to && stretch.to > from && stretch.from < to);
    },
  };
}

/** From the end of a day's waking hours to the beginning of the next day's, in wall-clock minutes after day 0 began. */
export function sleepAfter(day: number, awake: AwakeHours): Sleep {
  const runsOver = awake.to <= awake.from ? 1440 : 0;
  return { from: day * 1440 + awake.to + runsOver, to: (day + 1) * 1440 + awake.from };
}

/** How much longer a stretch is than so many days of 24 hours would be, for its wall clock to say the same at its end. */
export function calendarSlip(calendar: ClockCalendar, start: Minute, length: Minute): Minute {
  const wall = (at: Minute): Minute => {
    const { day, clock } = calendar.local(at);
    return day * 1440 + clock;
  };
  return wall(start) + length - wall(start + length);
}

/** '07:05'. */
export function hourText(clock: Minute): string {
  const minutes = clock % 60;
  const hours = (clock - minutes) / 60;
  return `${hours < 10 ? '0' : ''}${hours}:${minutes < 10 ? '0' : ''}${minutes}`;
}
