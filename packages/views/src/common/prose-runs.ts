import {
  add,
  mapInterval,
  multiply,
  PLAIN,
  printCount,
  printMeasure,
  printPercent,
  showGrams,
  sizeOf,
  units,
  HUNDRED,
  KITCHEN_SCALE,
  type CupSystem,
  type Interval,
  type NumberStyle,
  type Rational,
  type TemperatureScale,
  type UnitId,
} from '@quern/quantity';
import { normaliseName, type Formula, type Make } from '@quern/compiler';
import type { Bracket, Count, Prose, Share } from '@quern/syntax';
import { exactRange } from './exact-range.js';
import { measuredAmount } from './item-amount.js';
import { ouncesRange, scoopedRange } from './us-measure.js';
import { proseFigures, type ProseFigure } from './prose-figures.js';
import { showScaled, type BothMeasures, type ScalableAmount } from './scalable-amount.js';

/*
 * A sentence cut into plain words, figures that scale (in square brackets), other weights and volumes, and
 * temperatures. Put together as written the pieces are the sentence without its brackets.
 */

export type ProseRun =
  | { readonly kind: 'text'; readonly text: string }
  /** A figure in brackets. `words` is a share told in words ('a third of the butter'); `amount` its weight, if known. */
  | { readonly kind: 'scaled'; readonly text: string; readonly words?: string; readonly amount?: ScalableAmount }
  /** A weight or volume without brackets: told in both measures, never scaled. */
  | { readonly kind: 'measure'; readonly text: string; readonly range: Interval; readonly unit: UnitId }
  | {
      readonly kind: 'temperature';
      readonly text: string;
      readonly low: Rational;
      readonly high: Rational;
      readonly scale: TemperatureScale;
    };

/** Cuts a sentence of a make. */
export function proseRuns(prose: Prose, formula: Formula, make: Make): readonly ProseRun[] {
  const runs: ProseRun[] = [];
  let position = 0;
  for (const bracket of prose.brackets) {
    const start = bracket.span.start - prose.span.start;
    runs.push(...plainRuns(prose.text.slice(position, start)), bracketRun(bracket, formula, make));
    position = bracket.span.end - prose.span.start;
  }
  runs.push(...plainRuns(prose.text.slice(position)));
  return runs;
}

function plainRuns(text: string): ProseRun[] {
  const runs: ProseRun[] = [];
  let position = 0;
  const plain = (end: number): void => {
    if (end > position) runs.push({ kind: 'text', text: text.slice(position, end) });
  };
  for (const figure of proseFigures(text)) {
    plain(figure.start);
    runs.push(figureRun(figure, text.slice(figure.start, figure.end)));
    position = figure.end;
  }
  plain(text.length);
  return runs;
}

function figureRun(figure: ProseFigure, text: string): ProseRun {
  if (figure.kind === 'measure') return { kind: 'measure', text, range: figure.range, unit: figure.unit };
  return { kind: 'temperature', text, low: figure.range.low, high: figure.range.high, scale: figure.scale };
}

function bracketRun(bracket: Bracket, formula: Formula, make: Make): ProseRun {
  const { amount, text } = bracket;
  if (!amount) return { kind: 'text', text };
  switch (amount.kind) {
    case 'count':
      return { kind: 'scaled', text, amount: countAmount(amount) };
    case 'measure':
      return { kind: 'scaled', text, amount: measuredAmount(amount, formula.facts.cups) };
    case 'share': {
      const name = bracket.of?.text ?? '';
      const whole = weightInMake(name, formula, make);
      const grams = whole && shareGrams(amount, whole);
      const weight: ScalableAmount | undefined = grams && {
        kind: 'weight',
        about: false,
        grams: exactRange(grams),
        dose: false,
      };
      return { kind: 'scaled', text, words: shareWords(amount, name), ...(weight ? { amount: weight } : {}) };
    }
  }
}

function countAmount(amount: Count): ScalableAmount {
  return { kind: 'count', about: amount.about, count: exactRange(amount.range), one: '', many: '' };
}

/** Grams of a thing that the lines of a make put in; of a product made elsewhere and not put in here, the whole of it. */
function weightInMake(name: string, formula: Formula, make: Make): Rational | undefined {
  const wanted = normaliseName(name);
  const product = formula.products.get(wanted);
  if (product) return product.grams;
  const lines = make.items.filter((item) => item.kind === 'in' && normaliseName(item.content.name.text) === wanted);
  let total: Rational | undefined;
  for (const item of lines) {
    if (item.kind !== 'in' || !item.weighed.grams) return undefined;
    total = total ? add(total, item.weighed.grams) : item.weighed.grams;
  }
  return total;
}

function shareGrams(share: Share, whole: Rational): Interval | undefined {
  if (share.word === 'rest' || !share.low || !share.high) return undefined;
  return mapInterval({ low: share.low, high: share.high }, (value) => multiply(value, whole));
}

const NAMED_SHARES: ReadonlyMap<string, string> = new Map([
  ['1/2', 'half of the'],
  ['1/3', 'a third of the'],
  ['2/3', 'two thirds of the'],
  ['1/4', 'a quarter of the'],
  ['3/4', 'three quarters of the'],
  ['1/5', 'a fifth of the'],
  ['1/6', 'a sixth of the'],
  ['1/8', 'an eighth of the'],
  ['1/10', 'a tenth of the'],
]);

/** 'a third of the butter', 'all the cream', 'the rest of the water', '40 % of the milk'. */
function shareWords(share: Share, name: string): string {
  const thing = name.replace(/^the\s+/i, '');
  if (share.word === 'all') return `all the ${thing}`;
  if (share.word === 'rest') return `the rest of the ${thing}`;
  const { low, high } = share;
  if (!low || !high) return thing;
  const single = low.n === high.n && low.d === high.d;
  const named = single && share.word !== 'percent' ? NAMED_SHARES.get(`${low.n}/${low.d}`) : undefined;
  if (named) return `${named} ${thing}`;
  if (share.word !== 'percent') return `${printCount(low, PLAIN)} of the ${thing}`;
  const percent = (value: Rational): string => printPercent(multiply(value, HUNDRED), 0);
  return `${single ? percent(low) : `${percent(low)} to ${percent(high)}`} of the ${thing}`;
}

export interface TellOptions {
  readonly cups: CupSystem;
  readonly style: NumberStyle;
}

/** A run that is a figure, in both measures, at a factor. */
export function tellRun(
  run: Extract<ProseRun, { kind: 'scaled' | 'measure' }>,
  factor: Rational,
  { cups, style }: TellOptions,
): BothMeasures {
  if (run.kind === 'measure') return tellMeasure(run.range, run.unit, run.text, cups, style);
  const amount = run.amount && showScaled(run.amount, factor, { cups, style });
  if (!run.words) return amount ?? { metric: run.text, us: run.text };
  const told = (text: string | undefined): string => (text ? `${run.words} (${text})` : (run.words ?? ''));
  return { metric: told(amount?.metric), us: told(amount?.us) };
}

const METRIC: ReadonlySet<UnitId> = new Set<UnitId>(['mg', 'g', 'kg', 'ml', 'cl', 'dl', 'l']);

/** A weight or volume in a sentence in both measures; the measure it is written in is printed as written. */
function tellMeasure(
  range: Interval,
  unit: UnitId,
  written: string,
  cups: CupSystem,
  style: NumberStyle,
): BothMeasures {
  const base = mapInterval(range, (value) => multiply(value, sizeOf(unit, cups)));
  const isMass = units[unit].dimension === 'mass';
  if (METRIC.has(unit)) {
    const us = isMass ? ouncesRange(base, style)?.text : scoopedRange(base, { cups, style }).text;
    return { metric: written, us: us ?? written };
  }
  const shown = mapInterval(
    base,
    (value) => showGrams(value, KITCHEN_SCALE, { measure: isMass ? 'mass' : 'volume' }).value,
  );
  return { metric: printMeasure(shown, isMass ? 'g' : 'ml', style), us: written };
}
