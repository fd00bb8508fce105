import {
  hourText,
  timetable,
  type ClockPlan,
  type Minute,
  type Timetable,
  type TimetableDay,
  type TimetableEntry,
} from '@quern/views';
import { plainText } from '../escape.js';
import { entryNote, entryReasons } from './entry-words.js';
import { qualityText, totalsText } from './clock-words.js';
import type { Moments } from './moments.js';

export interface ClockTextOptions {
  readonly moments: Moments;
  /** The present moment, for the next action; the beginning when not given. */
  readonly now?: Minute;
  /** Prints beside each activity why it may or may not move. */
  readonly why?: boolean;
}

const WORD: Readonly<Record<TimetableEntry['kind'], string>> = {
  heat: 'oven',
  hands: 'hands',
  oven: 'oven',
  hob: 'hob',
  wait: 'wait',
  care: 'care',
  ready: 'ready',
  best: 'best',
};

/** The plan for a terminal: what is next, then every day, then the totals. */
export function clockText(plan: ClockPlan, options: ClockTextOptions): string {
  const days = timetable(plan);
  const several = plan.dishes.length > 1;
  const lines = [
    plainText(plan.title),
    ...nextLine(days, plan, options),
    '',
    ...days.days.flatMap((day) => dayLines(day, options, several)),
    ...totalsText(plan, options.moments).map(([name, value]) => `${name}: ${value}`),
    qualityText(plan),
  ];
  return lines.join('\n') + '\n';
}

function nextLine(days: Timetable, plan: ClockPlan, options: ClockTextOptions): string[] {
  const next = days.next(options.now ?? plan.totals.begin);
  if (!next) return ['Nothing is left to do.'];
  return [`Next: ${options.moments.at(next.at)}  ${plainText(next.text)}${next.lasts ? ` (${next.lasts})` : ''}`];
}

function dayLines(day: TimetableDay, options: ClockTextOptions, several: boolean): string[] {
  const best = day.atBest.length > 0 ? [`       at its best: ${day.atBest.map(plainText).join(', ')}`] : [];
  return [
    options.moments.day(day),
    ...best,
    ...day.entries.flatMap((entry) => entryLines(entry, options, several)),
    '',
  ];
}

function entryLines(entry: TimetableEntry, options: ClockTextOptions, several: boolean): string[] {
  const note = plainText(entryNote(entry, options.moments, several));
  return [
    `  ${hourText(entry.clock)}  ${WORD[entry.kind].padEnd(7)}${plainText(entry.text)}${note ? `  [${note}]` : ''}`,
    ...entryReasons(entry, options.why).map((why) => `                 ${plainText(why)}`),
  ];
}
