import type { Place } from '@quern/text';
import type { ClockCalendar } from './calendar.js';
import type { AwakeHours } from './clock-kitchen.js';
import type { ActivityLane, Allowance, Minute } from './problem.js';
import type { Quality } from './solve.js';

/*
 * A plan as plain data: whatever a timetable, a chart, a calendar or a card says of time is taken from it. Minutes are
 * from the anchor; `ClockPlan.calendar` says what a wall clock shows.
 */

/** Why an activity is where it is. */
export interface Reasons {
  /** 'may last 10-14 h: the range of a wait is freedom' */
  readonly mayMove: readonly string[];
  /** 'starts the minute “…” ends: nothing stands after a wait' */
  readonly mayNot: readonly string[];
}

export interface PlannedActivity {
  readonly id: string;
  readonly dish: string;
  readonly make: string;
  readonly lane: ActivityLane;
  readonly label: string;
  /** A name short enough for a bar of a chart. */
  readonly short: string;
  readonly start: Minute;
  readonly end: Minute;
  /** When it may be over already, for a doubtful time (3-3 1/2 h in the oven). */
  readonly soonestEnd: Minute;
  readonly time: Allowance;
  /** It needs a cook. */
  readonly hands: boolean;
  readonly rings: number;
  /** Oven, and its heat as set, for an oven step. */
  readonly oven: { readonly name: string; readonly heat: string | undefined } | undefined;
  /** How warm it is around a thing that is left: '4 C', '19-21 C, the room'. */
  readonly warmth: string | undefined;
  readonly reasons: Reasons;
  readonly place: Place | undefined;
}

/** One visit of care. */
export interface PlannedVisit {
  readonly id: string;
  /** The same for all visits of one `every` line. */
  readonly series: string;
  readonly number: number;
  readonly of: number;
  readonly dish: string;
  readonly make: string;
  readonly label: string;
  readonly start: Minute;
  readonly end: Minute;
  /** Minutes it was moved from its multiple, to fit. */
  readonly moved: Minute;
  /** The activity that is cared for. */
  readonly during: string;
  readonly place: Place | undefined;
}

/** Turning an oven on, or up, before a dish goes in. */
export interface PlannedHeating {
  readonly oven: string;
  readonly start: Minute;
  readonly end: Minute;
  readonly heat: string;
  /** The oven step that it is for. */
  readonly before: string;
}

/** A product that stands until it is used. */
export interface PlannedStanding {
  readonly product: string;
  readonly dish: string;
  readonly from: Minute;
  readonly to: Minute;
  /** Until when it could stand; undefined when nothing limits it. */
  readonly until: Minute | undefined;
}

export interface Keeping {
  /** Until when, as written: '7 d at 20 C, wrapped'. */
  readonly written: string;
  readonly until: Minute;
  readonly note: string | undefined;
}

export interface PlannedDish {
  readonly id: string;
  readonly title: string;
  readonly course: string | undefined;
  /** When its last step is over. */
  readonly done: Minute;
  /** When it is wanted. */
  readonly ready: Minute;
  /** From when it is at its best (after `best after`), else when it is done. */
  readonly bestFrom: Minute;
  readonly keeps: readonly Keeping[];
  readonly place: Place | undefined;
}

/** Care of a culture that goes on for ever. */
export interface PlannedUpkeep {
  readonly id: string;
  readonly culture: string;
  readonly label: string;
  readonly period: Minute;
  readonly lasts: Minute;
  /** The first time it is due: a period after the make that used it was done, for by then some was put back. */
  readonly first: Minute;
}

export interface ClockTotals {
  /** Minutes that somebody works: hands-on steps and care. */
  readonly handsOn: Minute;
  /** From the first thing done to the moment all is ready. */
  readonly total: Minute;
  /** The least that it can take from the first thing done, with nights left out and every wait at its shortest. */
  readonly shortest: Minute | undefined;
  readonly begin: Minute;
  readonly ready: Minute;
  /** The latest moment that everything is still good, by what each dish keeps; undefined when a dish does not say. */
  readonly goodUntil: Minute | undefined;
}

export interface ClockPlan {
  readonly title: string;
  readonly mode: 'ready' | 'start' | 'free';
  readonly dishes: readonly PlannedDish[];
  /** By start. */
  readonly activities: readonly PlannedActivity[];
  readonly visits: readonly PlannedVisit[];
  readonly heating: readonly PlannedHeating[];
  readonly standing: readonly PlannedStanding[];
  readonly upkeep: readonly PlannedUpkeep[];
  readonly totals: ClockTotals;
  readonly quality: Quality;
  readonly kitchen: { readonly name: string | undefined; readonly cooks: number; readonly awake: AwakeHours };
  readonly calendar: ClockCalendar;
}
