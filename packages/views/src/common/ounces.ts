import {
  absolute,
  compare,
  divide,
  floor,
  multiply,
  PLAIN,
  printMixed,
  rational,
  roundTo,
  sizeOf,
  subtract,
  withUnit,
  type NumberStyle,
  type Rational,
} from '@quern/quantity';

const QUARTER = rational(1, 4);
const EIGHTH = rational(1, 8);

/** A weight in pounds and ounces: the text, and exactly what it says in ounces. */
export interface RoundedOunces {
  readonly text: string;
  readonly ounces: Rational;
}

/**
 * Pounds and ounces, to a quarter of an ounce, under 4 oz to an eighth (common practice, no source).
 * @returns undefined when that would be off by more than a sixteenth: then grams are the better measure.
 */
export function roundedOunces(grams: Rational, style: NumberStyle = PLAIN): RoundedOunces | undefined {
  const ounce = divide(grams, sizeOf('oz'));
  const rounded = roundTo(ounce, compare(ounce, rational(4)) < 0 ? EIGHTH : QUARTER);
  const off = absolute(subtract(rounded, ounce));
  if (compare(multiply(rational(16), off), ounce) > 0) return undefined;
  const pounds = floor(divide(rounded, rational(16)));
  const rest = subtract(rounded, rational(pounds * 16n));
  const parts = [
    ...(pounds > 0n ? [withUnit(pounds.toString(), 'lb', style)] : []),
    ...(rest.n > 0n ? [withUnit(printMixed(rest, style), 'oz', style)] : []),
  ];
  return { text: parts.join(style.noBreak ? '\u00a0' : ' '), ounces: rounded };
}
