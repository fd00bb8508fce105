import { mapInterval, type Interval } from './interval.js';
import { divide, multiply, sign, type Rational } from './rational.js';
import { sizeOf, units, type CupSystem, type Dimension, type UnitId } from './units.js';

export const dimensionOf = (id: UnitId): Dimension => units[id].dimension;

/**
 * Whether an amount in one unit can be told in the other without knowing the food. Counting units turn only into
 * themselves: a clove is not a leaf.
 */
export function canConvert(from: UnitId, to: UnitId): boolean {
  return from === to || (dimensionOf(from) === dimensionOf(to) && dimensionOf(from) !== 'count');
}

/** An amount in the base of its dimension: g, ml, cm, kJ, or pieces. */
export function toBase(value: Rational, unit: UnitId, cups: CupSystem = 'us'): Rational {
  return multiply(value, sizeOf(unit, cups));
}

/** An amount in the base of its dimension told in `unit`. */
export function fromBase(value: Rational, unit: UnitId, cups: CupSystem = 'us'): Rational {
  return divide(value, sizeOf(unit, cups));
}

/**
 * The same amount in another unit of the same dimension, exactly.
 * @throws RangeError when the units do not measure the same thing (see `canConvert`).
 */
export function convert(value: Rational, from: UnitId, to: UnitId, cups: CupSystem = 'us'): Rational {
  if (from === to) return value;
  if (!canConvert(from, to)) throw new RangeError(`${units[from].many} cannot be told in ${units[to].many}`);
  return fromBase(toBase(value, from, cups), to, cups);
}

/** `convert` for both ends of a range. */
export function convertInterval(range: Interval, from: UnitId, to: UnitId, cups: CupSystem = 'us'): Interval {
  return mapInterval(range, (value) => convert(value, from, to, cups));
}

/**
 * Grams per millilitre, from a weight and the space it fills.
 * @throws RangeError unless both are above zero.
 */
export function densityOf(grams: Rational, millilitres: Rational): Rational {
  return positive(divide(grams, positive(millilitres)));
}

/** @throws RangeError unless the density (g per ml) is above zero. */
export function gramsToMillilitres(grams: Rational, density: Rational): Rational {
  return divide(grams, positive(density));
}

/** @throws RangeError unless the density (g per ml) is above zero. */
export function millilitresToGrams(millilitres: Rational, density: Rational): Rational {
  return multiply(millilitres, positive(density));
}

function positive(value: Rational): Rational {
  if (sign(value) <= 0) throw new RangeError('a density, and what it is made of, must be above zero');
  return value;
}
