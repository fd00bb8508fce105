import {
  dayPart,
  hourText,
  timetable,
  type ClockPlan,
  type DayPart,
  type TimetableDay,
  type TimetableEntry,
} from '@quern/views';
import { markdownText } from '../escape.js';
import { entryNote, entryReasons } from './entry-words.js';
import { qualityText, totalsText } from './clock-words.js';
import type { Moments } from './moments.js';

export interface ClockMarkdownOptions {
  readonly moments: Moments;
  readonly why?: boolean;
  /** Level of the title's heading; 2 when not given. */
  readonly level?: number;
}

/** The plan for a blog: a heading for each part of a day ('Day 1, evening'), a list under it. */
export function clockMarkdown(plan: ClockPlan, options: ClockMarkdownOptions): string {
  const level = options.level ?? 2;
  const several = plan.dishes.length > 1;
  const parts = timetable(plan).days.flatMap((day) => dayParts(day, options, several, level + 1));
  const totals = totalsText(plan, options.moments).map(([name, value]) => `- ${name}: ${markdownText(value)}`);
  return (
    [
      `${'#'.repeat(level)} ${markdownText(plan.title)}: when to do what`,
      totals.join('\n'),
      ...parts,
      markdownText(qualityText(plan)),
      '',
    ]
      .join('\n\n')
      .trimEnd() + '\n'
  );
}

function dayParts(day: TimetableDay, options: ClockMarkdownOptions, several: boolean, level: number): string[] {
  const groups: { part: DayPart; entries: TimetableEntry[] }[] = [];
  for (const entry of day.entries) {
    const part = dayPart(entry.clock);
    const last = groups.at(-1);
    if (last?.part === part) last.entries.push(entry);
    else groups.push({ part, entries: [entry] });
  }
  const best = day.atBest.length > 0 ? [`At its best: ${day.atBest.map(markdownText).join(', ')}.`] : [];
  return groups.flatMap(({ part, entries }, index) => [
    `${'#'.repeat(level)} ${markdownText(options.moments.part(day, part))}`,
    ...(index === 0 ? best : []),
    entries.map((entry) => item(entry, options, several)).join('\n'),
  ]);
}

function item(entry: TimetableEntry, options: ClockMarkdownOptions, several: boolean): string {
  const note = entryNote(entry, options.moments, several);
  const kind = entry.kind === 'wait' ? '*wait*, ' : '';
  return [
    `- **${hourText(entry.clock)}** ${kind}${markdownText(entry.text)}${note === '' ? '' : ` (${markdownText(note)})`}`,
    ...entryReasons(entry, options.why).map((why) => `  - ${markdownText(why)}`),
  ].join('\n');
}
