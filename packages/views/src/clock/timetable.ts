import { lasting } from './words.js';
import type { ClockPlan, PlannedActivity, Reasons } from './clock-plan.js';
import type { Minute } from './problem.js';

/** Parts of a day as people name them: night to 5, morning to noon, afternoon to 17, evening to 22 (common practice, no source). */
export type DayPart = 'night' | 'morning' | 'afternoon' | 'evening';

export function dayPart(clock: Minute): DayPart {
  if (clock < 300 || clock >= 1320) return 'night';
  if (clock < 720) return 'morning';
  return clock < 1020 ? 'afternoon' : 'evening';
}

export type EntryKind = 'heat' | 'hands' | 'oven' | 'hob' | 'wait' | 'care' | 'ready' | 'best';

/** One line of a timetable. */
export interface TimetableEntry {
  readonly kind: EntryKind;
  readonly at: Minute;
  readonly until: Minute;
  readonly clock: Minute;
  /** The sentence as written, or what the clock adds ('Turn the oven on: 250 C'). */
  readonly text: string;
  /** 'leaven', or the dish when the recipe has no makes. */
  readonly make: string;
  readonly dish: string;
  /** '3 min', '12 h, may last 10-14 h'; empty for a moment. */
  readonly lasts: string;
  /** '250 C falling to 200 C' of an oven, 'at 4 C' around a wait. */
  readonly heat: string | undefined;
  /** Somebody has to be there. */
  readonly attended: boolean;
  /** Number of the activity in the plan, counted from 1, as on the chart; undefined for what is none. */
  readonly number: number | undefined;
  readonly reasons: Reasons | undefined;
}

export interface TimetableDay {
  /** 1 for the day on which the first thing is done; days on which nothing happens are counted. */
  readonly ordinal: number;
  /** Days before (positive) or after the day on which all is ready. */
  readonly daysBefore: number;
  /** Some moment of it, to name it by its date. */
  readonly at: Minute;
  readonly entries: readonly TimetableEntry[];
  /** What is at its best on that day. */
  readonly atBest: readonly string[];
}

export interface Timetable {
  readonly days: readonly TimetableDay[];
  /** The first thing that somebody has to do at or after a moment. */
  next(from: Minute): TimetableEntry | undefined;
}

/** The plan by days, every line once. */
export function timetable(plan: ClockPlan): Timetable {
  const entries = entriesOf(plan);
  const local = (at: Minute): { day: number; clock: Minute } => plan.calendar.local(at);
  const first = entries.reduce((least, { at }) => Math.min(least, local(at).day), Infinity);
  const ready = local(plan.totals.ready).day;
  const byDay = new Map<number, TimetableEntry[]>();
  for (const entry of entries) {
    const { day } = local(entry.at);
    byDay.set(day, [...(byDay.get(day) ?? []), entry]);
  }
  const days = [...byDay].map(([day, list]): TimetableDay => {
    const at = list[0]?.at ?? 0;
    const midnight = at - local(at).clock;
    return {
      ordinal: day - first + 1,
      daysBefore: ready - day,
      at,
      entries: list,
      atBest: atBestBetween(plan, midnight, midnight + 1440),
    };
  });
  return {
    days,
    next: (from) => entries.find((entry) => entry.attended && entry.at >= from),
  };
}

/** The dishes that are at their best at some moment of a stretch: after `best after` or when done, until what they keep. */
export function atBestBetween(plan: ClockPlan, from: Minute, to: Minute): string[] {
  return plan.dishes
    .filter(({ bestFrom, keeps }) => bestFrom < to && (keeps[0]?.until ?? bestFrom + 1440) > from)
    .map(({ title }) => title);
}

function entriesOf(plan: ClockPlan): TimetableEntry[] {
  const entry = (parts: Omit<TimetableEntry, 'clock'>): TimetableEntry => ({
    ...parts,
    clock: plan.calendar.local(parts.at).clock,
  });
  const none = { heat: undefined, number: undefined, reasons: undefined };
  const titleOf = new Map(plan.dishes.map(({ id, title }) => [id, title]));
  const activityOf = new Map(plan.activities.map((activity) => [activity.id, activity]));
  const entries = [
    ...plan.heating.map((heating) => {
      const before = activityOf.get(heating.before);
      return entry({
        ...none,
        kind: 'heat',
        at: heating.start,
        until: heating.end,
        text: `Heat ${ovenName(heating.oven)} to ${heating.heat}.`,
        make: before?.make ?? '',
        dish: titleOf.get(before?.dish ?? '') ?? '',
        lasts: lasting(heating.end - heating.start),
        attended: true,
      });
    }),
    ...plan.activities.map((activity, index) =>
      entry({
        kind: activity.lane,
        at: activity.start,
        until: activity.end,
        text: activity.label,
        make: activity.make,
        dish: titleOf.get(activity.dish) ?? '',
        lasts: lastingText(activity),
        heat: activity.warmth === undefined ? ovenSetting(activity) : `at ${activity.warmth}`,
        attended: activity.lane !== 'wait',
        number: index + 1,
        reasons: activity.reasons,
      }),
    ),
    ...plan.visits.map((visit) =>
      entry({
        ...none,
        kind: 'care',
        at: visit.start,
        until: visit.end,
        text: visit.label,
        make: visit.make,
        dish: titleOf.get(visit.dish) ?? '',
        lasts: lasting(visit.end - visit.start),
        attended: true,
      }),
    ),
    ...plan.dishes.flatMap((dish) => {
      const moment = { ...none, make: '', dish: dish.title, lasts: '', attended: false };
      const ready = entry({
        ...moment,
        kind: 'ready',
        at: dish.ready,
        until: dish.ready,
        text: `${dish.title} is ready.`,
      });
      if (dish.bestFrom <= dish.ready) return [ready];
      return [
        ready,
        entry({
          ...moment,
          kind: 'best',
          at: dish.bestFrom,
          until: dish.bestFrom,
          text: `${dish.title} is at its best from now.`,
        }),
      ];
    }),
  ];
  return entries.sort((a, b) => a.at - b.at || ORDER[a.kind] - ORDER[b.kind] || a.until - b.until);
}

const ORDER: Readonly<Record<EntryKind, number>> = {
  heat: 0,
  care: 1,
  hands: 2,
  oven: 3,
  hob: 4,
  wait: 5,
  ready: 6,
  best: 7,
};

function lastingText({ start, end, soonestEnd }: PlannedActivity): string {
  const length = lasting(end - start);
  return soonestEnd < end ? `${length}, perhaps from ${lasting(soonestEnd - start)}` : length;
}

/** 'the oven' where there is one, 'oven 2' where there are several. */
export const ovenName = (name: string): string => (name === 'oven' ? 'the oven' : name);

function ovenSetting({ oven }: PlannedActivity): string | undefined {
  if (!oven) return undefined;
  const parts = [oven.name === 'oven' ? undefined : oven.name, oven.heat].filter((part) => part !== undefined);
  return parts.length > 0 ? parts.join(' at ') : undefined;
}
