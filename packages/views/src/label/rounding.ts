import { compare, divide, isZero, multiply, rational, roundTo, toDecimal, type Rational } from '@quern/quantity';

/** How a value inside one band is written. */
export type Manner =
  /** These words, whatever the value. */
  | { readonly kind: 'words'; readonly text: string }
  /** The nearest multiple of `step`. `places` decimals; with `trim`, without zeros at the end. */
  | { readonly kind: 'nearest'; readonly step: Rational; readonly places: number; readonly trim: boolean }
  /** So many significant figures. */
  | { readonly kind: 'figures'; readonly figures: number };

/** A stretch of values up to `to` (below it, or with `including` up to and with it); the last band has no end. */
export interface Band {
  readonly to?: Rational;
  readonly including: boolean;
  readonly manner: Manner;
}

/** A rule by which a market prints one nutrient. Data: the code below knows no market. */
export interface RoundingRule {
  readonly unit: 'kJ' | 'kcal' | 'g' | 'mg' | 'µg' | '%';
  readonly bands: readonly Band[];
  /** The text that a true zero prints as; without it the first band speaks. */
  readonly zero?: string;
  /** Where the rule stands; 'from memory' where the text was not at hand. */
  readonly source: string;
}

/** The text a rule gives for a value of its unit, without the unit. A tie goes away from zero, where rules are silent. */
export function printBy(rule: RoundingRule, value: Rational): string {
  if (rule.zero !== undefined && isZero(value)) return rule.zero;
  const index = bandOf(rule, value);
  const band = rule.bands[index];
  if (!band) throw new RangeError('a rounding rule ends in a band without an end');
  if (band.manner.kind !== 'nearest') return write(band.manner, value);
  // A value that rounds up into the next band is written as that band writes: 9.96 g becomes 10, not 10.0.
  const rounded = roundTo(value, band.manner.step);
  const landed = rule.bands[Math.max(index, bandOf(rule, rounded))] ?? band;
  return write(landed.manner.kind === 'nearest' ? landed.manner : band.manner, rounded);
}

function bandOf(rule: RoundingRule, value: Rational): number {
  return rule.bands.findIndex((band) => {
    if (!band.to) return true;
    const side = compare(value, band.to);
    return side < 0 || (side === 0 && band.including);
  });
}

function write(manner: Manner, value: Rational): string {
  switch (manner.kind) {
    case 'words':
      return manner.text;
    case 'nearest':
      return decimal(roundTo(value, manner.step), manner.places, manner.trim);
    case 'figures':
      return significant(value, manner.figures);
  }
}

function decimal(value: Rational, places: number, trim: boolean): string {
  const text = toDecimal(value, places);
  return trim && text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

const TEN = rational(10);

/** At most so many significant figures, in plain decimals. */
export function significant(value: Rational, figures: number): string {
  if (isZero(value)) return '0';
  let step = rational(1);
  let places = 0;
  const top = rational(10n ** BigInt(figures));
  const bottom = rational(10n ** BigInt(figures - 1));
  const size = (): Rational => divide(value.n < 0n ? { n: -value.n, d: value.d } : value, step);
  while (compare(size(), top) >= 0) step = multiply(step, TEN);
  while (compare(size(), bottom) < 0) {
    step = divide(step, TEN);
    places++;
  }
  return decimal(roundTo(value, step), places, true);
}

/* Short ways to write the data. */

export const nearest = (step: Rational, places = 0, trim = true): Manner => ({ kind: 'nearest', step, places, trim });
export const words = (text: string): Manner => ({ kind: 'words', text });
export const figures = (count: number): Manner => ({ kind: 'figures', figures: count });
export const below = (to: Rational, manner: Manner): Band => ({ to, including: false, manner });
export const upTo = (to: Rational, manner: Manner): Band => ({ to, including: true, manner });
export const above = (manner: Manner): Band => ({ including: false, manner });
