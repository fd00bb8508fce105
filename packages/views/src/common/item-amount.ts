import {
  compare,
  divide,
  equal,
  isZero,
  multiply,
  ONE,
  PLAIN,
  printMeasure,
  rational,
  subtract,
  units,
  type CupSystem,
  type Interval,
  type Rational,
  type UnitId,
} from '@quern/quantity';
import {
  baseValue,
  isSpelledCount,
  pickOf,
  volumeOf,
  volumeSpread,
  type Flour,
  type Formula,
  type InItem,
  type LedgerFood,
  type Pick,
} from '@quern/compiler';
import type { Amount, Equal, Measure } from '@quern/syntax';
import { exactRange, exactText } from './exact-range.js';
import { bakersFlour } from './goes-by-flour.js';
import { bothNumbers } from './plural.js';
import type { ScalableAmount, ScalableCount } from './scalable-amount.js';

/*
 * From a line of the ledger to an amount that can be told at any size: its grams with their range, the room it takes,
 * and what is counted. Nothing is guessed: what the ledger does not know is not there.
 */

/** Foods weighed to a tenth of a gram: salt, raising agents and spices (common practice, no source). */
export function isDose(food: LedgerFood): boolean {
  return food.food?.roles.some((role) => role === 'salt' || role === 'leaven' || role === 'spice') ?? false;
}

/** The food of an in line, when it is one. */
export function foodOf(item: InItem): LedgerFood | undefined {
  return item.source.kind === 'food' ? item.source.food : undefined;
}

/** Grams of an in line at the low and the high end of what is written; undefined when they are not known. */
export function gramsOf(item: InItem, cups: CupSystem): Interval | undefined {
  const grams = item.weighed.grams;
  if (!grams) return undefined;
  const { amount } = item.content;
  const stated = massOf(amount)
    ? amount
    : item.content.equals.find((side) => massOf(side.amount) && !side.each)?.amount;
  if (stated?.kind === 'measure') return valueRange(stated, cups);
  const range = rangeOf(amount);
  if (!range || equal(range.low, range.high)) return { low: grams, high: grams };
  const middle = pickOf(range, 'middle');
  if (isZero(middle)) return { low: grams, high: grams };
  const end = (value: Rational): Rational => multiply(grams, divide(value, middle));
  return { low: end(range.low), high: end(range.high) };
}

const massOf = (amount: Amount | Equal['amount']): boolean =>
  amount.kind === 'measure' && units[amount.unit.id].dimension === 'mass';

function rangeOf(amount: Amount): Interval | undefined {
  switch (amount.kind) {
    case 'measure':
    case 'count':
    case 'pack':
    case 'portion':
    case 'percent':
      return amount.range;
    case 'share':
      return amount.low && amount.high ? { low: amount.low, high: amount.high } : undefined;
    case 'open':
      return undefined;
  }
}

function valueRange(measure: Measure, cups: CupSystem): Interval {
  return { low: baseValue(measure, cups, 'low'), high: baseValue(measure, cups, 'high') };
}

/** Millilitres that the line itself states, as its amount or after `=`. */
export function statedVolume(item: InItem, cups: CupSystem): Interval | undefined {
  const at = (pick: Pick): Rational | undefined => {
    const sides: readonly (Amount | Equal['amount'])[] = [
      item.content.amount,
      ...item.content.equals.map((side) => side.amount),
    ];
    return sides.map((side) => volumeOf(side, { cups, pick })).find((value) => value !== undefined);
  };
  const low = at('low');
  const high = at('high');
  return low && high ? { low, high } : undefined;
}

/** Published weights that lie further apart than this part of the usual one do not say how much room a food takes. */
const TOO_WIDE = rational(1, 2);

/**
 * Millilitres that the line's grams take up by the food table, in the form that the line names. When the forms that may
 * be meant differ too much (sliced, mashed), nothing is said.
 */
function tableVolume(item: InItem, grams: Interval): Interval | undefined {
  const food = foodOf(item);
  const { name, note } = item.content;
  const spread = food && volumeSpread(food, { name: name.text, note: note?.text ?? '' });
  if (!spread || isZero(spread.usual)) return undefined;
  const width = divide(subtract(spread.high, spread.low), spread.usual);
  if (compare(width, TOO_WIDE) > 0) return undefined;
  return { low: divide(grams.low, spread.usual), high: divide(grams.high, spread.usual) };
}

/** What is counted on the line: bare things, cloves and leaves, packs. */
export function countedOf(amount: Amount): ScalableCount | undefined {
  if (amount.kind === 'count') return { count: exactRange(amount.range), one: '', many: '' };
  if (amount.kind === 'pack') {
    const { one, many } = bothNumbers(amount.container);
    const each = printMeasure(amount.each.range, amount.each.unit.id, PLAIN);
    return { count: exactRange(amount.range), one: `${one} of ${each}`, many: `${many} of ${each}` };
  }
  if (amount.kind === 'portion') return { count: exactRange(amount.range), ...bothNumbers(amount.of) };
  if (amount.kind === 'measure' && isSpelledCount(amount.unit.id)) {
    const { one, many } = units[amount.unit.id];
    return { count: exactRange(amount.range), one, many };
  }
  return undefined;
}

/** The amount of an in line; undefined when it is neither weighed, measured nor counted (`a little`, a bad line above). */
export function amountOf(item: InItem, formula: Formula): ScalableAmount | undefined {
  const { amount, equals } = item.content;
  const { cups } = formula.facts;
  const about = amount.about || (amount.kind !== 'measure' && equals.some((side) => side.amount.about));
  const pieces = countedOf(amount);
  const grams = gramsOf(item, cups);
  const stated = statedVolume(item, cups);
  if (!grams) {
    if (pieces) return { kind: 'count', about, ...pieces };
    return stated ? { kind: 'volume', about, millilitres: exactRange(stated) } : undefined;
  }
  const volume = stated ?? (pieces ? undefined : tableVolume(item, grams));
  const food = foodOf(item);
  const baker = bakersFlour(formula);
  const flour = baker && food && isIn(baker, food) ? baker.grams : undefined;
  return {
    kind: 'weight',
    about,
    grams: exactRange(grams),
    ...(volume ? { millilitres: exactRange(volume) } : {}),
    dose: food !== undefined && isDose(food),
    ...(flour ? { flour: exactText(flour) } : {}),
    ...(pieces ? { pieces } : {}),
  };
}

/** A measure by itself, without a food to weigh it: so much weight, so much room, or so many. */
export function measuredAmount(amount: Measure, cups: CupSystem): ScalableAmount {
  const range = { low: baseValue(amount, cups, 'low'), high: baseValue(amount, cups, 'high') };
  const { dimension, one, many } = units[amount.unit.id];
  if (dimension === 'mass') return { kind: 'weight', about: amount.about, grams: exactRange(range), dose: false };
  if (dimension === 'volume') return { kind: 'volume', about: amount.about, millilitres: exactRange(range) };
  return { kind: 'count', about: amount.about, count: exactRange(amount.range), one, many };
}

const isIn = (flour: Flour, food: LedgerFood): boolean => flour.formula.some((entry) => entry.food.key === food.key);

const US_UNITS: ReadonlySet<UnitId> = new Set<UnitId>([
  'tsp',
  'tbsp',
  'cup',
  'oz',
  'lb',
  'us-fl-oz',
  'us-pint',
  'us-quart',
  'us-gallon',
  'pinch',
  'drop',
]);

/** Whether measures stand on paper as the writer wrote them: nothing is scaled, not by a variant either, and the cups are the file's. */
export function standsAsWritten(formula: Formula, factor: Rational, cups: CupSystem): boolean {
  const isScaled = !equal(factor, ONE) || formula.edits.some(({ kind }) => kind === 'times');
  return !isScaled && cups === formula.facts.cups;
}

/** The cups, spoons, ounces or pounds that the line states, as they are written. */
export function writtenInUs(item: InItem): string | undefined {
  const sides = [item.content.amount, ...item.content.equals.map((side) => side.amount)];
  const found = sides.find((side): side is Measure => side.kind === 'measure' && US_UNITS.has(side.unit.id));
  return found && measureText(found);
}

/** A measure as it is written: `1 lb 4 oz`, `about 1 1/2 cups`. */
export function measureText(measure: Measure): string {
  const main = printMeasure(measure.range, measure.unit.id, PLAIN);
  const and = measure.and;
  const rest = and
    ? ` ${printMeasure({ low: rational(and.value.n, and.value.d), high: rational(and.value.n, and.value.d) }, and.unit.id, PLAIN)}`
    : '';
  return (measure.about ? 'about ' : '') + main + rest;
}

/** An amount in words as it is written, without the name: '2 % on flour', 'half of', '1 bottle of 750 ml'. */
export function writtenAmount(amount: Amount, text: string): string {
  return text.slice(amount.span.start, amount.span.end).trim().replace(/\s+/g, ' ');
}
