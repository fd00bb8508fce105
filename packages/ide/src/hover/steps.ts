import { contains } from '@quern/text';
import {
  gasMark,
  interval,
  printDegrees,
  printMinutes,
  shownDegrees,
  temperaturePoint,
  type Interval,
  type Rational,
} from '@quern/quantity';
import type { Line, StepLine, Temperature, Time } from '@quern/syntax';
import { minutesText } from '../figures.js';
import { readinessOf, slackOf } from '../readiness.js';
import type { Snapshot } from '../snapshot.js';
import type { Hover } from './hover.js';

/** A time: its length, whether its range is freedom or doubt, and what it does to the clock of the dish. */
export function hoverTime(snapshot: Snapshot, line: Line, at: number): Hover | undefined {
  const { content } = line.parsed;
  const times =
    content.kind === 'step' ? [content.time] : content.kind === 'every' ? [content.period, content.duration] : [];
  const time = times.find((one): one is Time => one !== undefined && contains(one.span, at));
  if (time === undefined) return undefined;
  const lines = [lengthOf(time)];
  if (content.kind === 'every') {
    lines.push(
      time === content.period
        ? 'Falls at each multiple before the wait ends, movable by a tenth.'
        : 'The cook is busy for so long each time.',
    );
  }
  if (content.kind === 'step') lines.push(freedomOf(content, time), ...consequences(snapshot, line.number));
  return { span: time.span, contents: lines.filter((text) => text !== '').join('\n\n') };
}

function lengthOf(time: Time): string {
  if (time.kind === 'overnight') return '8 to 16 hours that cover the hours asleep.';
  if (time.kind === 'at-least') return `${printMinutes(time.low.minutes)} or more.`;
  return `**${minutesText(interval(time.low.minutes, time.high.minutes))}**.`;
}

function freedomOf({ lane }: StepLine, time: Time): string {
  if (time.kind === 'at-least') return 'The clock may choose any length from there on.';
  if (time.kind === 'overnight') return '';
  if (time.kind === 'fixed') return lane === 'wait' ? 'The clock may stretch or cut it by a tenth.' : '';
  return lane === 'wait'
    ? 'The range is freedom: the clock chooses within it.'
    : 'The range is doubt: the clock books the longer time.';
}

/** When the step begins and ends, and whether the dish waits for it. */
function consequences(snapshot: Snapshot, line: number): string[] {
  const place = snapshot.itemAt(line);
  if (place?.item.kind !== 'step') return [];
  const { formula, item } = place;
  const readiness = readinessOf(formula);
  const times = readiness.steps.get(item.ref.line.number);
  if (times === undefined) return [];
  const slack = slackOf(formula, item);
  const span = (range: Interval): string => (range.high.n === 0n ? 'at once' : minutesText(range));
  const dish = `ready ${span(readiness.dish)} after the first line begins`;
  return [
    `Begins ${span(times.begins)} and ends ${span(times.ends)} after the first line begins.`,
    slack.n === 0n
      ? `On the longest chain: the dish is ${dish}, and later if this takes longer.`
      : `Not on the longest chain: it may take ${printMinutes(slack)} longer before the dish (${dish}) is later.`,
  ];
}

/** A temperature: in the other scale, and the mark of a gas oven. */
export function hoverHeat(content: StepLine, at: number): Hover | undefined {
  for (const clause of content.clauses) {
    if (clause.kind === 'using' || !contains(clause.span, at)) continue;
    if (clause.kind === 'until' && clause.acidity) {
      return {
        span: clause.span,
        contents: 'The acidity of the food. Follow a tested recipe and local food-safety guidance.',
      };
    }
    const temperatures =
      clause.kind === 'until' ? [clause.temperature] : [clause.temperature, clause.equal, clause.change?.to];
    const found = temperatures.find((one): one is Temperature => one !== undefined && contains(one.span, at));
    if (found === undefined) continue;
    const use = clause.kind === 'at' && content.lane === 'oven' ? 'oven' : 'food';
    return { span: found.span, contents: inBothScales(found, use, clause.kind === 'until') };
  }
  return undefined;
}

function inBothScales(found: Temperature, use: 'oven' | 'food', inside: boolean): string {
  const other = found.scale === 'C' ? 'F' : 'C';
  const shown = (value: Rational): Rational =>
    shownDegrees(temperaturePoint(value, found.scale), other, use, found.scale);
  const written = printDegrees(interval(found.low, found.high), found.scale);
  const lines = [`${written} = **${printDegrees(interval(shown(found.low), shown(found.high)), other)}**`];
  const mark = use === 'oven' ? gasMark(found.low, found.scale) : undefined;
  if (mark !== undefined) lines.push(`Gas mark ${mark}.`);
  lines.push(
    inside
      ? 'The temperature inside the food.'
      : use === 'oven'
        ? 'The temperature of the oven.'
        : 'The temperature around the food.',
  );
  return lines.join('\n\n');
}
