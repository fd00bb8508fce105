import type { Temporal } from 'temporal-polyfill';
import type { Diagnostic } from '@quern/text';
import {
  planClock,
  plainCalendar,
  type AwakeHours,
  type Budget,
  type ClockPlan,
  type ClockRequest,
  type Minute,
} from '@quern/views';
import { datedMoments, undatedMoments, type Moments } from './moments.js';
import { zonedCalendar, type ZonedCalendar } from './zoned-calendar.js';

/** When the dishes of a request are wanted. */
export type WhenWanted =
  /** All at a moment; nothing begins before now. */
  | { readonly kind: 'ready'; readonly at: Temporal.ZonedDateTime; readonly now: Temporal.ZonedDateTime }
  /** As soon as can be after a moment. */
  | { readonly kind: 'start'; readonly at: Temporal.ZonedDateTime }
  /** A menu: each course at its own time of the wall clock on the day that begins here. */
  | { readonly kind: 'day'; readonly midnight: Temporal.ZonedDateTime; readonly now: Temporal.ZonedDateTime }
  /** Without a date; a menu's courses keep their times of day. */
  | { readonly kind: 'undated'; readonly courses: boolean };

export interface DatedPlan {
  readonly plan: ClockPlan | undefined;
  readonly diagnostics: readonly Diagnostic[];
  /** The dates, when there are any. */
  readonly dates: ZonedCalendar | undefined;
  readonly moments: Moments;
  /** The present, from the anchor, when it is known. */
  readonly now: Minute | undefined;
}

/** Plans a request by a calendar with dates, or by days alone. */
export function planDated(request: ClockRequest, when: WhenWanted, awake: AwakeHours, budget?: Budget): DatedPlan {
  const limits = budget && { budget };
  if (when.kind === 'undated') {
    const calendar = plainCalendar(awake);
    const mode = when.courses ? 'ready' : 'free';
    const { value: plan, diagnostics } = planClock(request, { mode, calendar, awake, ...limits });
    const day = (minute: Minute): number => calendar.local(minute).day;
    const moments = undatedMoments(
      calendar.local,
      plan ? day(plan.totals.begin) : 0,
      plan ? day(plan.totals.ready) : 0,
    );
    return { plan, diagnostics, dates: undefined, moments, now: undefined };
  }
  const dates = zonedCalendar(when.kind === 'day' ? when.midnight : when.at, awake);
  const asked = when.kind === 'day' ? onWallClock(request, dates) : request;
  const earliest = when.kind === 'start' ? 0 : dates.minuteOf(when.now);
  const { value: plan, diagnostics } = planClock(asked, {
    mode: when.kind === 'start' ? 'start' : 'ready',
    calendar: dates,
    earliest,
    awake,
    ...limits,
  });
  return { plan, diagnostics, dates, moments: datedMoments(dates), now: when.kind === 'start' ? undefined : earliest };
}

/** Courses are told by the wall clock, so on a day on which the clocks change they are not so many minutes after midnight. */
function onWallClock(request: ClockRequest, dates: ZonedCalendar): ClockRequest {
  return {
    ...request,
    dishes: request.dishes.map((dish) =>
      dish.ready === undefined ? dish : { ...dish, ready: dates.wall(0, dish.ready) },
    ),
  };
}
