import {
  add,
  canConvert,
  compare,
  divide,
  exact,
  multiply,
  ONE,
  PLAIN,
  printMeasure,
  rational,
  roundTo,
  single,
  sizeOf,
  subtract,
  absolute,
  units,
  ZERO,
  type CupSystem,
  type Rational,
  type UnitId,
} from '@quern/quantity';
import { volumeOf, volumeSpread, type Formula, type InItem, type LedgerFood, type Spread } from '@quern/compiler';
import type { Amount, InLine, Measure } from '@quern/syntax';

/* The same amount in the other system: grams beside cups, cups beside grams. */

/** The food that an in line is weighed by; undefined for products, cultures and classes. */
export const foodOf = (item: InItem): LedgerFood | undefined =>
  item.source.kind === 'food' ? item.source.food : undefined;

/** The published weight of a millilitre of what a line puts in, in the form that its words name. */
export function densityOfLine(food: LedgerFood | undefined, content: InLine): Spread | undefined {
  return food && volumeSpread(food, { name: content.name.text, note: content.note?.text ?? '' });
}

const isMeasureOf = (amount: Amount | Measure, dimension: 'mass' | 'volume'): boolean =>
  (amount.kind === 'measure' && units[amount.unit.id].dimension === dimension) ||
  (amount.kind === 'pack' && units[amount.each.unit.id].dimension === dimension);

/** Whether a line already states a weight or a volume, on either side of `=`. */
export function states(content: InLine, dimension: 'mass' | 'volume'): boolean {
  return (
    isMeasureOf(content.amount, dimension) ||
    content.equals.some(({ amount }) => amount.kind === 'measure' && isMeasureOf(amount, dimension))
  );
}

/** The measure that a line does not state, as the notation writes it; undefined when it states both or cannot be turned. */
export function otherMeasure(item: InItem, formula: Formula): string | undefined {
  const { content, weighed } = item;
  const { cups } = formula.facts;
  if (content.amount.kind === 'percent' || content.amount.kind === 'share' || content.amount.kind === 'portion')
    return undefined;
  if (!states(content, 'mass')) {
    return weighed.grams && weighed.basis === 'table' ? writableGrams(weighed.grams) : undefined;
  }
  if (states(content, 'volume') || weighed.grams === undefined) return undefined;
  const density = densityOfLine(foodOf(item), content);
  return density && writableVolume(divide(weighed.grams, density.usual), cups);
}

/** The millilitres that a line stands for, by its volume or by its weight and the food's density. */
export function millilitresOf(item: InItem, cups: CupSystem): Rational | undefined {
  const { content, weighed } = item;
  for (const amount of [content.amount, ...content.equals.map((side) => side.amount)]) {
    const found = volumeOf(amount, { cups, pick: 'middle' });
    if (found) return found;
  }
  const density = densityOfLine(foodOf(item), content);
  return density && weighed.grams && divide(weighed.grams, density.usual);
}

/** Grams as a line would state them: to the tenth below ten, else to the gram. */
export function writableGrams(grams: Rational): string {
  const step = compare(grams, rational(10)) < 0 ? exact('0.1') : ONE;
  return printMeasure(single(roundTo(grams, step)), 'g');
}

/** The measures a cook would name, first choice first: how fine, and from how little to how much of it. */
const STEPS: readonly {
  readonly unit: UnitId;
  readonly parts: readonly number[];
  readonly least: Rational;
  readonly most?: Rational;
}[] = [
  { unit: 'cup', parts: [1, 2, 3, 4], least: rational(1, 4) },
  { unit: 'tbsp', parts: [1, 2], least: ONE, most: rational(6) },
  { unit: 'tsp', parts: [1, 2, 4, 8], least: rational(1, 8), most: rational(3) },
  { unit: 'cup', parts: [8], least: rational(3, 8) },
];
/** Three in a hundred: what a level measure may be off for the sake of a simple figure, as on the sheets. */
const TOLERANCE = exact('0.03');

/**
 * Millilitres as one measure of the notation: cups in halves, thirds and quarters, a few tablespoons in halves,
 * teaspoons to the eighth, cups in eighths; the first that comes within three per cent. Else millilitres.
 */
export function writableVolume(millilitres: Rational, cups: CupSystem): string {
  for (const { unit, parts, least, most } of STEPS) {
    const exactly = divide(millilitres, sizeOf(unit, cups));
    if (most && compare(exactly, most) > 0) continue;
    for (const part of parts) {
      const near = roundTo(exactly, rational(1, part));
      if (compare(near, least) >= 0 && compare(away(near, exactly), TOLERANCE) <= 0) {
        return printMeasure(single(near), unit, PLAIN);
      }
    }
  }
  const step = compare(millilitres, rational(10)) < 0 ? exact('0.1') : ONE;
  return printMeasure(single(roundTo(millilitres, step)), 'ml');
}

const away = (near: Rational, from: Rational): Rational =>
  from.n === 0n ? ZERO : absolute(divide(subtract(near, from), from));

/** Both ends of a measure in another unit, as an interval; undefined when they do not measure the same thing. */
export function measureIn(
  measure: Measure,
  unit: UnitId,
  cups: CupSystem,
): { low: Rational; high: Rational } | undefined {
  if (!canConvert(measure.unit.id, unit)) return undefined;
  const more = measure.and ? multiply(measure.and.value, sizeOf(measure.and.unit.id, cups)) : ZERO;
  const turn = (value: Rational): Rational =>
    divide(add(multiply(value, sizeOf(measure.unit.id, cups)), more), sizeOf(unit, cups));
  return { low: turn(measure.range.low), high: turn(measure.range.high) };
}
