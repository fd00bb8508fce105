import { jsonDocument } from '../escape.js';
import { hourText, type ClockPlan, type Minute } from '@quern/views';
import type { ZonedCalendar } from './zoned-calendar.js';

/** The version of the form below; it changes when a field changes its meaning or goes. */
export const CLOCK_JSON_VERSION = 1;

/** A moment in JSON: ISO 8601 with the offset of its zone, or, without dates, the day (1 is the first) and the time. */
type JsonMoment = string | { readonly day: number; readonly time: string };

/**
 * The plan as versioned JSON. Moments are ISO 8601 with offset (`2027-05-08T16:00:00+01:00`), lengths ISO 8601
 * durations in minutes (`PT90M`). Without dates a moment is `{ "day": 1, "time": "18:57" }`.
 */
export function clockJson(plan: ClockPlan, dates: ZonedCalendar | undefined): string {
  return jsonDocument(clockJsonValue(plan, dates));
}

export function clockJsonValue(plan: ClockPlan, dates: ZonedCalendar | undefined): object {
  const firstDay = plan.calendar.local(plan.totals.begin).day;
  const moment = (minute: Minute): JsonMoment => {
    if (dates) return dates.at(minute).toString({ timeZoneName: 'never', smallestUnit: 'second' });
    const { day, clock } = plan.calendar.local(minute);
    return { day: day - firstDay + 1, time: hourText(clock) };
  };
  const length = (minutes: Minute): string => `PT${minutes}M`;
  return {
    format: 'quern-clock',
    version: CLOCK_JSON_VERSION,
    title: plan.title,
    mode: plan.mode,
    ...(dates && { timeZone: dates.zone }),
    awake: { from: hourText(plan.kitchen.awake.from), to: hourText(plan.kitchen.awake.to) },
    totals: {
      handsOn: length(plan.totals.handsOn),
      total: length(plan.totals.total),
      shortest: plan.totals.shortest === undefined ? null : length(plan.totals.shortest),
      begin: moment(plan.totals.begin),
      ready: moment(plan.totals.ready),
      goodUntil: plan.totals.goodUntil === undefined ? null : moment(plan.totals.goodUntil),
    },
    quality: {
      optimal: plan.quality.optimal,
      points: plan.quality.points,
      perhapsBetterBy: plan.quality.perhapsBetterBy,
      perhapsBetterPercent: plan.quality.perhapsBetterPercent,
      visits: plan.quality.visits,
      steps: plan.quality.steps,
    },
    dishes: plan.dishes.map((dish) => ({
      id: dish.id,
      title: dish.title,
      course: dish.course ?? null,
      done: moment(dish.done),
      ready: moment(dish.ready),
      bestFrom: moment(dish.bestFrom),
      keeps: dish.keeps.map((keeping) => ({ written: keeping.written, until: moment(keeping.until) })),
    })),
    activities: plan.activities.map((activity) => ({
      id: activity.id,
      dish: activity.dish,
      make: activity.make,
      lane: activity.lane,
      text: activity.label,
      start: moment(activity.start),
      end: moment(activity.end),
      lasts: length(activity.end - activity.start),
      mayLast: {
        least: length(activity.time.least),
        most: activity.time.most === Infinity ? null : length(activity.time.most),
      },
      hands: activity.hands,
      oven: activity.oven ? { name: activity.oven.name, heat: activity.oven.heat ?? null } : null,
      mayMove: activity.reasons.mayMove,
      mayNot: activity.reasons.mayNot,
    })),
    care: plan.visits.map((visit) => ({
      id: visit.id,
      dish: visit.dish,
      make: visit.make,
      text: visit.label,
      number: visit.number,
      of: visit.of,
      start: moment(visit.start),
      end: moment(visit.end),
    })),
    heating: plan.heating.map((heating) => ({
      oven: heating.oven,
      heat: heating.heat,
      start: moment(heating.start),
      end: moment(heating.end),
    })),
    standing: plan.standing.map((standing) => ({
      product: standing.product,
      from: moment(standing.from),
      to: moment(standing.to),
      until: standing.until === undefined ? null : moment(standing.until),
    })),
    upkeep: plan.upkeep.map((upkeep) => ({
      culture: upkeep.culture,
      text: upkeep.label,
      every: length(upkeep.period),
      first: moment(upkeep.first),
    })),
  };
}
