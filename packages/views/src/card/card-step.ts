import { equal, ONE, printAcidity, toExactText } from '@quern/quantity';
import type { Make, StepItem } from '@quern/compiler';
import type { Lane, Prose, Time, UntilClause } from '@quern/syntax';
import { bothScales } from '../common/heat-text.js';
import { proseRuns, tellRun, type ProseRun } from '../common/prose-runs.js';
import { heatAround, temperatureUse, thingText } from '../common/step-heat.js';
import { timeText } from '../common/time-text.js';
import { scaledAmount, type CardSetting } from './amounts.js';
import type { CardClock, CardRun, CardStep, CardTime } from './card-data.js';

/** A step as the card prints it: the sentence as written, and beside it who is busy, how long, how hot, until when. */
export function cardStep(item: StepItem, make: Make, setting: CardSetting): CardStep {
  const { content } = item;
  const sentence = (prose: Prose): readonly CardRun[] => sentenceRuns(prose, content.lane, make, setting);
  return {
    sentence: sentence(content.prose),
    more: item.more.map((more) => sentence(more.content.prose)),
    clock: clockOf(item, setting),
    care: item.every.map(({ content: every }) => ({
      every: cardTime(every.period, setting),
      ...(every.duration ? { takes: cardTime(every.duration, setting) } : {}),
      sentence: sentence(every.prose),
    })),
    saved: [],
    remarks: [],
  };
}

export function cardTime(time: Time, { style }: CardSetting): CardTime {
  return {
    text: timeText(time, style),
    minutes: { low: toExactText(time.low.minutes), high: toExactText(time.high.minutes) },
    open: time.kind === 'at-least',
  };
}

function sentenceRuns(prose: Prose, lane: Lane, make: Make, setting: CardSetting): readonly CardRun[] {
  return proseRuns(prose, setting.formula, make).map((run) => cardRun(run, lane, setting));
}

function cardRun(run: ProseRun, lane: Lane, setting: CardSetting): CardRun {
  const { factor, cups, style } = setting;
  switch (run.kind) {
    case 'text':
      return run;
    case 'temperature':
      return {
        kind: 'temperature',
        text: run.text,
        temperature: bothScales(run, temperatureUse(lane, run.low, run.scale), style),
      };
    case 'measure':
      return { kind: 'amount', text: run.text, amount: tellRun(run, factor, { cups, style }) };
    case 'scaled': {
      const written = run.words ?? run.text;
      if (!run.amount) return { kind: 'text', text: written };
      const words = run.words === undefined ? {} : { words: run.words };
      const amount = { ...words, ...scaledAmount(run.amount, setting) };
      return { kind: 'amount', text: equal(factor, ONE) || run.words !== undefined ? written : amount.metric, amount };
    }
  }
}

function clockOf({ content }: StepItem, setting: CardSetting): CardClock {
  const at = content.clauses.find((clause) => clause.kind === 'at');
  const untils = content.clauses.filter((clause) => clause.kind === 'until');
  const using = content.clauses.flatMap((clause) => (clause.kind === 'using' ? clause.things : []));
  return {
    lane: content.lane,
    ...(content.time ? { time: cardTime(content.time, setting) } : {}),
    ...(at ? { at: heatAround(at, content.lane, setting.style) } : {}),
    ...Object.assign({}, ...untils.map((until) => untilOf(until, setting))),
    using: using.map((thing) => thingText(thing, setting.style)),
  };
}

function untilOf(
  { temperature, acidity }: UntilClause,
  { style }: CardSetting,
): Pick<CardClock, 'until' | 'untilAcidity'> {
  if (temperature) return { until: bothScales(temperature, 'food', style) };
  if (!acidity) return {};
  const figure = printAcidity({ kind: 'ph', value: acidity.value }, style).replace(/^pH /, '');
  return { untilAcidity: acidity.below ? `below ${figure}` : figure };
}
