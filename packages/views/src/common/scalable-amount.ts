import {
  compare,
  exact,
  isSingle,
  KITCHEN_SCALE,
  mapInterval,
  multiply,
  PLAIN,
  printCount,
  printInterval,
  printRange,
  printScoops,
  rational,
  scoop,
  showGrams,
  withUnit,
  type CupSystem,
  type Interval,
  type NumberStyle,
  type Rational,
  type Shown,
} from '@quern/quantity';
import { roundedOunces } from './ounces.js';

/*
 * An amount that can be printed at any size, in both measures. A view makes it and prints it at its own size; a page
 * carries it as JSON and prints it again, by this same code, when a reader asks for another size.
 */

/** An exact number as text: `12`, `1.5`, `3/4`. */
export type ExactText = string;

/** Low and high end; the same text twice for a single figure. */
export interface ExactRange {
  readonly low: ExactText;
  readonly high: ExactText;
}

/** Things counted, with the word after one and after any other number: 'clove', 'cloves'; '' for a bare count. */
export interface ScalableCount {
  readonly count: ExactRange;
  readonly one: string;
  readonly many: string;
}

export type ScalableAmount =
  | {
      readonly kind: 'weight';
      readonly about: boolean;
      readonly grams: ExactRange;
      /** The room it takes, in ml, by the food table or as the writer states it; without, it is told in ounces. */
      readonly millilitres?: ExactRange;
      /** A small dose (salt, yeast, spice), weighed to a tenth of a gram. */
      readonly dose: boolean;
      /** Flour of the formula in g: rounding must not move the percentage on it. */
      readonly flour?: ExactText;
      /** What is counted, where the writer counts and the weight stands beside it. */
      readonly pieces?: ScalableCount;
    }
  | {
      readonly kind: 'volume';
      readonly about: boolean;
      readonly millilitres: ExactRange;
    }
  | ({ readonly kind: 'count'; readonly about: boolean } & ScalableCount);

/** An amount in metric and in US measures; the same text twice where there is but one way to say it. */
export interface BothMeasures {
  readonly metric: string;
  readonly us: string;
}

export interface ShowScaledOptions {
  readonly style?: NumberStyle;
  /** The cups and spoons of the second measure; US customary unless given. */
  readonly cups?: CupSystem;
}

const interval = (range: ExactRange): Interval => ({ low: exact(range.low), high: exact(range.high) });
const scaled = (range: ExactRange, factor: Rational): Interval =>
  mapInterval(interval(range), (value) => multiply(value, factor));

/** The amount times `factor` in both measures. */
export function showScaled(amount: ScalableAmount, factor: Rational, options: ShowScaledOptions = {}): BothMeasures {
  const style = options.style ?? PLAIN;
  const cups = options.cups ?? 'us';
  const both = measures(amount, factor, style, cups);
  const about = (text: string): string => (amount.about ? `about ${text}` : text);
  const told = { metric: about(both.metric), us: about(both.us) };
  if (amount.kind !== 'weight' || !amount.pieces) return told;
  // A weight stands in brackets behind what the writer counts; a cook with cups counts, and needs no weight.
  const pieces = counted(amount.pieces, factor, style);
  return { metric: `${pieces} (${told.metric})`, us: pieces };
}

function measures(amount: ScalableAmount, factor: Rational, style: NumberStyle, cups: CupSystem): BothMeasures {
  switch (amount.kind) {
    case 'count': {
      const text = counted(amount, factor, style);
      return { metric: text, us: text };
    }
    case 'volume': {
      const millilitres = scaled(amount.millilitres, factor);
      return {
        metric: metricRange(millilitres, { measure: 'volume' }, style),
        us: spoonfuls(millilitres, amount.about, cups, style),
      };
    }
    case 'weight':
      return weight(amount, factor, style, cups);
  }
}

function weight(
  amount: Extract<ScalableAmount, { kind: 'weight' }>,
  factor: Rational,
  style: NumberStyle,
  cups: CupSystem,
): BothMeasures {
  const grams = scaled(amount.grams, factor);
  const flour = amount.flour === undefined ? undefined : multiply(exact(amount.flour), factor);
  const dose = amount.dose ? 'small' : 'ordinary';
  const metric = metricRange(grams, { dose, ...(flour ? { percent: { flour } } : {}) }, style);
  const us = amount.millilitres
    ? spoonfuls(scaled(amount.millilitres, factor), amount.about, cups, style)
    : ounces(grams, style);
  return { metric, us: us ?? metric };
}

function counted(amount: ScalableCount, factor: Rational, style: NumberStyle): string {
  const range = scaled(amount.count, factor);
  const number = printInterval(range, printCount, style);
  // `1/2 tin`, `1 tin`, `1 1/2 tins`: English takes the plural above one.
  const word = compare(range.high, rational(1)) <= 0 ? amount.one : amount.many;
  return word === '' ? number : withUnit(number, word, style);
}

type GramOptions = Parameters<typeof showGrams>[2];

function metricRange(range: Interval, options: GramOptions, style: NumberStyle): string {
  const show = (value: Rational): Shown => showGrams(value, KITCHEN_SCALE, { ...options, style });
  const high = show(range.high);
  const low = show(range.low);
  if (isSingle(range)) return high.text;
  if (low.unit !== high.unit) return printRange(low.text, high.text, style);
  return withUnit(printRange(low.number, high.number, style), high.unit, style);
}

/** How near a measure has to come to an amount that is itself a guess: then fewer scoops are worth more than exactness. */
export const ABOUT_TOLERANCE = rational(1, 10);

/** Cups and spoons; both ends of a range told in full. */
function spoonfuls(range: Interval, about: boolean, cups: CupSystem, style: NumberStyle): string {
  const options = about ? { cups, tolerance: ABOUT_TOLERANCE } : { cups };
  const print = (value: Rational): string => printScoops(scoop(value, options), style);
  const low = print(range.low);
  const high = print(range.high);
  return low === high ? low : `${low} to ${high}`;
}

/** Pounds and ounces; both ends of a range told in full. */
function ounces(range: Interval, style: NumberStyle): string | undefined {
  const low = roundedOunces(range.low, style)?.text;
  const high = roundedOunces(range.high, style)?.text;
  if (low === undefined || high === undefined) return undefined;
  return low === high ? low : `${low} to ${high}`;
}
