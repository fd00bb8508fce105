import type { Temporal } from 'temporal-polyfill';
import type { ClockPlan, PlannedVisit } from '@quern/views';
import type { ZonedCalendar } from './zoned-calendar.js';

/** Visits of care that belong to one `every` line, as a rule and what departs from it. */
export interface CareSeries {
  readonly series: string;
  readonly label: string;
  readonly make: string;
  readonly first: PlannedVisit;
  /** The value of an RRULE; undefined for a single visit. */
  readonly rule: string | undefined;
  /** Told in UTC: a rule by hours or minutes counts real time, which a wall clock does not when the clocks change. */
  readonly utc: boolean;
  /** Visits that were moved, with the moment at which the rule has them. */
  readonly moved: readonly { readonly start: number; readonly due: Temporal.ZonedDateTime }[];
}

export function careSeries(plan: ClockPlan, calendar: ZonedCalendar): CareSeries[] {
  const bySeries = new Map<string, PlannedVisit[]>();
  for (const visit of plan.visits) bySeries.set(visit.series, [...(bySeries.get(visit.series) ?? []), visit]);
  return [...bySeries].flatMap(([series, visits]): CareSeries[] => {
    const [first, second] = visits;
    if (!first) return [];
    const base = { series, label: first.label, make: first.make, first };
    if (!second) return [{ ...base, rule: undefined, moved: [], utc: false }];
    return [{ ...base, ...ruleOf(visits, first, calendar) }];
  });
}

/** The step between visits as they were meant: whole days by the wall clock, or hours, or minutes. */
function ruleOf(
  visits: readonly PlannedVisit[],
  first: PlannedVisit,
  calendar: ZonedCalendar,
): Pick<CareSeries, 'rule' | 'moved' | 'utc'> {
  const meant = visits.map((visit) => visit.start - visit.moved);
  const begin = calendar.at(first.start);
  const period = Math.round(((meant.at(-1) ?? 0) - (meant[0] ?? 0)) / (visits.length - 1));
  const days = Math.round(period / 1440);
  const byDay = days > 0 && Math.abs(period - days * 1440) <= 60 && isNearDays(meant, days);
  const step = byDay
    ? { rule: `FREQ=DAILY;INTERVAL=${days}`, at: (n: number) => begin.add({ days: days * n }) }
    : byMinutes(begin, period);
  const moved = visits.flatMap((visit, n) => {
    const due = step.at(n);
    return calendar.minuteOf(due) === visit.start ? [] : [{ start: visit.start, due }];
  });
  return { rule: `${step.rule};COUNT=${visits.length}`, moved, utc: !byDay };
}

/** Whether each stretch is so many days, give or take the hour of a change of the clocks. */
function isNearDays(meant: readonly number[], days: number): boolean {
  return meant.every((minute, n) => Math.abs(minute - (meant[0] ?? 0) - n * days * 1440) <= 60);
}

function byMinutes(
  begin: Temporal.ZonedDateTime,
  period: number,
): { rule: string; at(n: number): Temporal.ZonedDateTime } {
  const rule = period % 60 === 0 ? `FREQ=HOURLY;INTERVAL=${period / 60}` : `FREQ=MINUTELY;INTERVAL=${period}`;
  return { rule, at: (n) => begin.add({ minutes: period * n }) };
}
