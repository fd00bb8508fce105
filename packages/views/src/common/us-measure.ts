import {
  absolute,
  compare,
  divide,
  isZero,
  mapInterval,
  multiply,
  ONE,
  PLAIN,
  exact,
  printPercent,
  printScoops,
  rational,
  scoop,
  sizeOf,
  subtract,
  HUNDRED,
  type CupSystem,
  type Interval,
  type NumberStyle,
  type Rational,
} from '@quern/quantity';
import { roundedOunces } from './ounces.js';
import { ABOUT_TOLERANCE, type ExactRange, type ScalableAmount } from './scalable-amount.js';

/** How an amount is told in cups, spoons, ounces or pieces, and how far from the exact amount that is. */
export interface UsMeasure {
  readonly text: string;
  /** `scooped`: level cups and spoons. `ounces`: pounds and ounces. `counted`: pieces, exactly. */
  readonly manner: 'scooped' | 'ounces' | 'counted';
  /** What the measure holds less the amount, over the amount; of a range the worse end. Missing where nothing is promised. */
  readonly off?: Rational;
  /** False when no combination of cups and spoons comes within the tolerance. */
  readonly near: boolean;
}

export interface UsOptions {
  readonly cups: CupSystem;
  readonly tolerance?: Rational;
  readonly style?: NumberStyle;
}

/** The amount times `factor` as a cook with cups measures it; undefined when grams are the better measure. */
export function usMeasure(amount: ScalableAmount, factor: Rational, options: UsOptions): UsMeasure | undefined {
  const scaled = (range: ExactRange): Interval =>
    mapInterval({ low: exact(range.low), high: exact(range.high) }, (value) => multiply(value, factor));
  const near = amount.about ? { tolerance: ABOUT_TOLERANCE, ...options } : options;
  switch (amount.kind) {
    case 'count':
      return undefined;
    case 'volume':
      return scoopedRange(scaled(amount.millilitres), near);
    case 'weight':
      if (amount.millilitres) return scoopedRange(scaled(amount.millilitres), near);
      return amount.pieces ? undefined : ouncesRange(scaled(amount.grams), options.style ?? PLAIN);
  }
}

/** Millilitres in level cups and spoons; both ends of a range told in full. */
export function scoopedRange(range: Interval, options: UsOptions): UsMeasure {
  const ends = [range.low, range.high].map((value) => scoop(value, options));
  const [low = '', high = ''] = ends.map((end) => printScoops(end, options.style ?? PLAIN));
  const offs = ends.flatMap((end) => ('relativeError' in end ? [end.relativeError] : []));
  const off = offs.length === ends.length ? worst(offs) : undefined;
  return {
    text: low === high ? low : `${low} to ${high}`,
    manner: 'scooped',
    ...(off ? { off } : {}),
    near: ends.every((end) => end.kind !== 'scoops' || end.withinTolerance),
  };
}

/** Grams in pounds and ounces; undefined when an eighth of an ounce is too coarse. */
export function ouncesRange(range: Interval, style: NumberStyle): UsMeasure | undefined {
  const low = roundedOunces(range.low, style);
  const high = roundedOunces(range.high, style);
  if (!low || !high) return undefined;
  const text = low.text === high.text ? low.text : `${low.text} to ${high.text}`;
  const offs = [low, high].map(({ ounces }, index) => {
    const grams = index === 0 ? range.low : range.high;
    return isZero(grams) ? grams : subtract(divide(multiply(ounces, sizeOf('oz')), grams), ONE);
  });
  const off = worst(offs);
  return { text, manner: 'ounces', ...(off ? { off } : {}), near: true };
}

function worst(offs: readonly Rational[]): Rational | undefined {
  return offs.reduce<Rational | undefined>(
    (most, off) => (most && compare(absolute(most), absolute(off)) >= 0 ? most : off),
    undefined,
  );
}

const TOO_LITTLE_TO_PRINT = rational(1, 2000);

/** `exact`, `under 0.1 %`, `+1.2 %`, `-0.4 %`. */
export function offText(off: Rational, style: NumberStyle = PLAIN): string {
  if (isZero(off)) return 'exact';
  if (compare(absolute(off), TOO_LITTLE_TO_PRINT) < 0) return `under ${printPercent(rational(1, 10), 1, style)}`;
  return (off.n > 0n ? '+' : '') + printPercent(multiply(off, HUNDRED), 1, style);
}
