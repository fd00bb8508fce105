import type { Place } from '@quern/text';

/*
 * What the clock plans: activities in lanes, links between them, and one kitchen. Nothing here knows a recipe, a date or
 * a time zone. Times are whole minutes from an anchor (see `Minute`); the calendar enters as stretches of sleep.
 */

/**
 * Whole minutes before (negative) or after the anchor. The clock plans to the minute: a step of seconds is booked for
 * the whole minute it begins, so a written time is never booked shorter than it is.
 */
export type Minute = number;

/** How long something may last or stand: never below `least` nor above `most`, best at `preferred`. */
export interface Allowance {
  readonly least: Minute;
  readonly preferred: Minute;
  /** `Infinity` when the writer set no top ('30 min or more'). */
  readonly most: Minute;
}

export type ActivityLane = 'hands' | 'wait' | 'oven' | 'hob';

/** Which part of an activity must fall in waking hours. `ends`: somebody puts the food in and takes it out. */
export type Watch = 'whole' | 'ends' | 'none';

/** A stretch of a dial, whole degrees Celsius. */
export interface Heat {
  readonly low: number;
  readonly high: number;
}

/** What an oven step asks of an oven. */
export interface OvenNeed {
  /** Shelves taken; `all` is the whole oven, whatever it has. */
  readonly shelves: number | 'all';
  /** The temperatures the dish does not mind when it goes in; undefined when the line names none (it shares with nothing). */
  readonly enters: Heat | undefined;
  /** The same when it comes out; another stretch when the dial is turned during the step, and then nothing may share. */
  readonly leaves: Heat | undefined;
  readonly moving: boolean;
  /** Minutes to heat a cold oven for it; 0 when the dish is in the oven already (the line above is an oven line). */
  readonly heating: Minute;
}

/** Care during an activity, at each multiple of `period` before the activity ends. */
export interface Care {
  readonly id: string;
  readonly label: string;
  readonly period: Minute;
  /** Where the visits fall, from the start of the activity, were it to last as long as it may: multiples of the period. */
  readonly falls: readonly Minute[];
  /** How far a visit may move to suit the people: a tenth of the period. */
  readonly give: Minute;
  readonly lasts: Minute;
  /** Its period is written in days, weeks or months: a change of the clocks does not move it. */
  readonly byCalendar: boolean;
  readonly place: Place | undefined;
}

export interface Activity {
  /** Stable between compilations: recipe, make and ordinal of the step, never an offset. */
  readonly id: string;
  readonly dish: string;
  /** The make it belongs to, as written. */
  readonly make: string;
  readonly lane: ActivityLane;
  /** The step's sentence, as written. */
  readonly label: string;
  readonly time: Allowance;
  /** What the line says about its time: freedom (a wait's range), doubt (a range elsewhere; the top is booked), one figure. */
  readonly nature: 'freedom' | 'doubt' | 'figure';
  /** For doubt: the least it may take; the time booked is the top. */
  readonly soonest: Minute;
  readonly cooks: number;
  readonly rings: number;
  /** Other things it needs for itself, one each ('mixer'). */
  readonly tools: readonly string[];
  readonly oven: OvenNeed | undefined;
  readonly watch: Watch;
  /** How warm it is around a wait, in words; nothing depends on it. */
  readonly warmth: string | undefined;
  /** `overnight`: it must hold one whole stretch of sleep. */
  readonly coversSleep: boolean;
  readonly care: readonly Care[];
  /** Written in days, weeks or months: counted by the calendar, so a change of the clocks does not move its end. */
  readonly byCalendar: boolean;
  readonly place: Place | undefined;
}

/** Why one activity waits for another, for the reasons beside the plan. */
export type LinkReason =
  | 'next-step' // the next line of the same make, after hands, oven or hob
  | 'in-the-oven' // oven line under oven line: the dish stays inside
  | 'after-wait' // a wait is already waiting: its end is the next step's start
  | 'left-alone' // a wait begins when the step above it ends
  | 'drawn' // draws a product that may stand as long as nothing says otherwise
  | 'kept' // draws a product whose make says how long it keeps
  | 'batch'; // the next batch of the same step

/** `to` starts so long after `from` ends. */
export interface Link {
  readonly from: string;
  readonly to: string;
  readonly gap: Allowance;
  readonly reason: LinkReason;
  /** The product that stands between them, if it has a name. */
  readonly product: string | undefined;
  /** Whether the limit was written (`keeps`, a wait's range) or is one of the clock's own (1 h, 2 h). */
  readonly written: boolean;
  /** What it must stand (`best after`) is written in days, weeks or months. */
  readonly byCalendar: boolean;
  readonly place: Place | undefined;
}

export interface Dish {
  readonly id: string;
  readonly title: string;
  /** Id of the activity whose end makes it done. */
  readonly last: string;
  /** From done to served: at least `best after`, at most its `keeps` (or two hours). */
  readonly stand: Allowance;
  readonly standWritten: boolean;
  /** What it must stand (`best after`) is written in days, weeks or months. */
  readonly byCalendar: boolean;
  /** When it has to be ready: a moment, or undefined when the plan runs forward from a start or is free of dates. */
  readonly ready: Minute | undefined;
  readonly place: Place | undefined;
}

export interface Oven {
  readonly name: string;
  readonly shelves: number;
  /** Celsius, whole degrees. */
  readonly coolest: number;
  readonly hottest: number;
}

/** A stretch in which nobody may be needed, end exclusive. */
export interface Sleep {
  readonly from: Minute;
  readonly to: Minute;
}

export interface PlanKitchen {
  readonly name: string | undefined;
  readonly cooks: number;
  readonly rings: number;
  readonly ovens: readonly Oven[];
  /** How many there are of other things; one of each that is not listed. */
  readonly tools: ReadonlyMap<string, number>;
}

/** Everything that is to be planned together. */
export interface PlanProblem {
  readonly activities: readonly Activity[];
  readonly links: readonly Link[];
  readonly dishes: readonly Dish[];
  readonly kitchen: PlanKitchen;
  /** In order, not overlapping, covering the whole search. */
  readonly sleep: readonly Sleep[];
  /** Nothing may begin before it: now, or the `--start`. */
  readonly earliest: Minute | undefined;
  /**
   * `ready`: each dish has its moment. `start`: all dishes are ready together, as early as can be after `earliest`.
   * `free`: all dishes are ready together at whatever moment of the day 0 suits best, within `readyBetween`.
   */
  readonly mode: 'ready' | 'start' | 'free';
  readonly readyBetween: { readonly from: Minute; readonly to: Minute } | undefined;
}

/** With no top, this far beyond the least is searched, or as long again as the least. */
const OPEN_REACH: Minute = 3 * 1440;

/** The longest that is tried of an allowance. */
export function topOf(allowance: Allowance): Minute {
  return allowance.most === Infinity ? allowance.least + Math.max(allowance.least, OPEN_REACH) : allowance.most;
}

/** However long a thing keeps, the clock does not look for plans that finish it more than this before it is wanted. */
export const MOST_STANDING: Minute = 14 * 1440;

/** The longest that a thing is left standing. */
export function standingTop(allowance: Allowance): Minute {
  return Math.min(topOf(allowance), allowance.least + MOST_STANDING);
}
