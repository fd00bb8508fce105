import {
  divide,
  exact,
  multiply,
  printCount,
  PLAIN,
  rational,
  sizeOf,
  units,
  type CupSystem,
  type NumberStyle,
  type Rational,
} from '@quern/quantity';
import type { VesselFact } from '@quern/syntax';
import { bothNumbers } from '../common/plural.js';
import { sizeText } from '../common/vessel-size.js';

/*
 * What a tin holds: a box is long x wide x deep, a round tin across x deep. Both are reckoned with straight sides, as
 * they are sold; a tin that narrows holds less of both, so that a ratio of two such tins is little changed.
 */

/** The ratio of a circle to the square around it, a quarter of pi, to more digits than any tin is measured with. */
const QUARTER_PI = exact('0.785398163397448');

export interface Tin {
  readonly count: Rational;
  /** Millilitres of one. */
  readonly volume: Rational;
  /** Centimetres; missing when only a volume is written. */
  readonly depth?: Rational;
  /** Square centimetres of its floor; missing when only a volume is written. */
  readonly floor?: Rational;
}

/** What a vessel holds; undefined when neither a volume nor a depth is written. */
export function tinOf(fact: VesselFact, cups: CupSystem): Tin | undefined {
  if (fact.volume) {
    const { range, unit } = fact.volume;
    if (units[unit.id].dimension !== 'volume') return undefined;
    return { count: fact.count, volume: multiply(range.low, sizeOf(unit.id, cups)) };
  }
  const lengths = (fact.lengths ?? []).map((length) => multiply(length, sizeOf(fact.lengthUnit ?? 'cm')));
  const [first, second, third] = lengths;
  if (!first || !second) return undefined;
  const depth = third ?? second;
  const floor = third ? multiply(first, second) : multiply(multiply(first, first), QUARTER_PI);
  return { count: fact.count, volume: multiply(floor, depth), depth, floor };
}

/** '3 loaf tins of 25 x 10 x 8 cm', for any number of them. */
export function tinText(fact: VesselFact, count: Rational, style: NumberStyle = PLAIN): string {
  const { one, many } = bothNumbers(fact.thing.text);
  const thing = isOne(count) ? one : many;
  return `${printCount(count, style)} ${thing} of ${sizeText(fact, style)}`;
}

const isOne = (value: Rational): boolean => value.n === 1n && value.d === 1n;

/** How deep the filling of one tin stands against that of another, when both are filled with these shares of one batch. */
export function depthRatio(written: Tin, wanted: Tin, factor: Rational): Rational | undefined {
  if (!written.floor || !wanted.floor) return undefined;
  const before = divide(rational(1), multiply(written.count, written.floor));
  const after = divide(factor, multiply(wanted.count, wanted.floor));
  return divide(after, before);
}
