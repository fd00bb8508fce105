import { exact, gasMark, PLAIN, printAcidity, printRange, type Rational } from '@quern/quantity';
import type { Make, StepItem } from '@quern/compiler';
import type { AtClause, Clause, Lane, Prose, Temperature, UsingClause } from '@quern/syntax';
import { bothScales, type BothScales } from '../common/heat-text.js';
import { proseRuns, tellRun, type ProseRun } from '../common/prose-runs.js';
import type { BothMeasures, ScalableAmount } from '../common/scalable-amount.js';
import { heatAround, temperatureUse, thingText } from '../common/step-heat.js';
import { timeText } from '../common/time-text.js';
import type { SheetStep } from './sheet-data.js';
import { factorOfCount, type Setting } from './setting.js';

/** The row of a step: who is busy, how long and how hot, and its sentences with the figures of this size. */
export function stepRow(item: StepItem, make: Make, setting: Setting): SheetStep {
  const { content, ref } = item;
  const sentence = (prose: Prose): string => sentenceText(prose, content.lane, make, setting);
  return {
    kind: 'step',
    line: ref.line.number + 1,
    lane: content.lane,
    ...(content.time ? { time: timeText(content.time, setting.style) } : {}),
    clauses: content.clauses.map((clause) => clauseText(clause, content.lane, setting)),
    sentences: [content.prose, ...item.more.map((more) => more.content.prose)].map(sentence),
    care: item.every.map(({ content: every }) => ({
      every: timeText(every.period, setting.style),
      ...(every.duration ? { takes: timeText(every.duration, setting.style) } : {}),
      sentence: sentence(every.prose),
    })),
  };
}

function sentenceText(prose: Prose, lane: Lane, make: Make, setting: Setting): string {
  return proseRuns(prose, setting.formula, make)
    .map((run) => runText(run, lane, setting))
    .join('');
}

function runText(run: ProseRun, lane: Lane, setting: Setting): string {
  switch (run.kind) {
    case 'text':
      return run.text;
    case 'temperature': {
      if (setting.measures === 'metric' && run.scale === 'C') return run.text;
      return scalesText(bothScales(run, temperatureUse(lane, run.low, run.scale), setting.style), setting);
    }
    case 'measure':
      return measuresText(tellRun(run, setting.factor, setting), setting, run.text);
    case 'scaled':
      return measuresText(tellRun(run, factorOfRun(run.amount, setting), setting), setting, run.text);
  }
}

function factorOfRun(amount: ScalableAmount | undefined, setting: Setting): Rational {
  if (amount?.kind !== 'count') return setting.factor;
  return factorOfCount({ low: exact(amount.count.low), high: exact(amount.count.high) }, setting);
}

/** One measure, or the one of the file with the other in brackets. */
function measuresText(told: BothMeasures, { measures }: Setting, written: string): string {
  if (told.metric === told.us) return told.metric;
  if (measures === 'metric') return told.metric;
  if (measures === 'us') return told.us;
  const [first, second] = told.us === written ? [told.us, told.metric] : [told.metric, told.us];
  return withBrackets(first, second);
}

/** 'a third of the butter (14 g)' and '(1/2 oz)' become one pair of brackets. */
function withBrackets(first: string, second: string): string {
  const [, words, inside] = /^(.*) \(([^()]*)\)$/.exec(first) ?? [];
  const other = / \(([^()]*)\)$/.exec(second)?.[1];
  return words !== undefined && other !== undefined ? `${words} (${inside}; ${other})` : `${first} (${second})`;
}

function scalesText({ celsius, fahrenheit }: BothScales, { measures }: Setting, gas = ''): string {
  return measures === 'us' ? `${fahrenheit} (${celsius}${gas})` : `${celsius} (${fahrenheit}${gas})`;
}

function clauseText(clause: Clause, lane: Lane, setting: Setting): string {
  switch (clause.kind) {
    case 'at':
      return atText(clause, lane, setting);
    case 'until': {
      const { temperature, acidity } = clause;
      if (temperature) return `until ${scalesText(bothScales(temperature, 'food', setting.style), setting)}`;
      if (!acidity) return 'until';
      const text = printAcidity({ kind: 'ph', value: acidity.value }, setting.style);
      return `until ${acidity.below ? text.replace(/^pH/, 'pH below') : text}`;
    }
    case 'using':
      return usingText(clause);
  }
}

function atText(clause: AtClause, lane: Lane, setting: Setting): string {
  const { temperature, change, fan } = heatAround(clause, lane, setting.style);
  const told = (both: BothScales, written: Temperature): string =>
    scalesText(both, setting, gasText(written, lane, setting));
  const turned = change && clause.change ? ` ${change.direction} to ${told(change.to, clause.change.to)}` : '';
  return `at ${told(temperature, clause.temperature)}${turned}${fan ? ', fan' : ''}`;
}

/** ', gas 5' for an oven's heat, when gas marks are asked for and there is one as hot. */
function gasText({ low, high, scale }: Temperature, lane: Lane, { gasMarks, style }: Setting): string {
  if (!gasMarks || temperatureUse(lane, low, scale) !== 'oven') return '';
  const [first, last] = [gasMark(low, scale), gasMark(high, scale)];
  return first && last ? `, gas ${printRange(first, last, style)}` : '';
}

/** 'using hob', 'using 1 shelf, mixer'. */
function usingText(clause: UsingClause): string {
  return `using ${clause.things.map((thing) => thingText(thing, PLAIN)).join(', ')}`;
}
