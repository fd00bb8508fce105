import { linePlace, type Food, type InItem, type Make, type Part } from '@quern/compiler';
import { add, compare, divide, isZero, middle, multiply, ONE, rational, ZERO, type Rational } from '@quern/quantity';
import type { Way } from './allergens.js';

/*
 * Peel, stone and shell. The ledger weighs what is written; figures of a food table are for what is eaten. Whether a
 * weight is that of the thing as bought can be seen where things are counted: '8 eggs = 510 g' are eggs in their shells.
 * Such a food gives nutrients by its edible portion. A line that bins some of the food says the same better, and then
 * nothing is reckoned. Where only a weight is written nobody can tell: it counts as edible, and the label says so.
 */

/** What is known of how a line's food was weighed. `perhaps`: edible or as bought, it does not say. */
export interface WeighedAs {
  readonly as: 'edible' | 'bought' | 'perhaps';
  /** Share of the grams that is eaten, 0 to 1. */
  readonly eaten: Rational;
}

const EDIBLE: WeighedAs = { as: 'edible', eaten: ONE };
const PERHAPS: WeighedAs = { as: 'perhaps', eaten: ONE };

/** Common practice, no source: a food of which a twentieth or more is peel, stone or shell may be weighed with it. */
const NEARLY_ALL = rational(95, 100);

/** How the food of a part was weighed, by the line that put it in. */
export function weighedAsOf(ways: readonly Way[]): (part: Part) => WeighedAs {
  const byLine = new Map<string, WeighedAs>();
  for (const { formula, makes } of ways) {
    const used = formula.makes.filter((make) => makes.has(make.index));
    const binned = new Set(used.flatMap(binnedFoods));
    for (const item of used.flatMap((make) => make.items)) {
      if (item.kind !== 'in' || item.source.kind !== 'food' || binned.has(item.source.food.key)) continue;
      byLine.set(lineKey(item), weighedAs(item, item.source.food.food));
    }
  }
  return (part) => byLine.get(lineKey({ ref: part.origin })) ?? EDIBLE;
}

const lineKey = ({ ref }: Pick<InItem, 'ref'>): string => {
  const { file, start } = linePlace(ref);
  return `${file}:${start}`;
};

/** Foods of which a make bins some by themselves: their peel and stones are accounted for. */
function binnedFoods({ pot }: Make): string[] {
  return pot.entries.flatMap(({ kind, parts }) => {
    const keys = new Set(parts.map(({ food }) => food.key));
    return kind === 'bin' && keys.size === 1 ? [...keys] : [];
  });
}

function weighedAs(item: InItem, food: Food | undefined): WeighedAs {
  const edible = food?.ediblePortion;
  if (!food || !edible || isZero(edible) || compare(edible, NEARLY_ALL) >= 0) return EDIBLE;
  const each = gramsEach(item);
  const things = food.pieces.filter(({ piece }) => piece === '');
  if (!each || things.length === 0) return PERHAPS;
  const inside = (low: Rational, high: Rational): boolean => compare(low, each) <= 0 && compare(each, high) <= 0;
  const asEaten = things.filter(({ basis }) => basis === 'edible');
  if (asEaten.some(({ grams }) => inside(grams.low, grams.high))) {
    return item.weighed.basis === 'table' ? EDIBLE : PERHAPS;
  }
  // Outside all weights of the edible part, and inside those of the whole thing.
  const asBought =
    things.some(({ basis, grams }) => basis === 'as-bought' && inside(grams.low, grams.high)) ||
    asEaten.some(({ grams }) => inside(grams.low, divide(grams.high, edible)));
  // The peel of citrus fruit is eaten as often as not, and the table has its flesh alone.
  if (!asBought || food.classes.includes('citrus fruit')) return PERHAPS;
  return { as: 'bought', eaten: edible };
}

/** Grams of one thing, where things are counted. */
function gramsEach({ content: { amount }, weighed }: InItem): Rational | undefined {
  if (amount.kind !== 'count' || !weighed.grams) return undefined;
  const count = middle(amount.range.low, amount.range.high);
  return isZero(count) ? undefined : divide(weighed.grams, count);
}

/** How some parts of one food were weighed, taken together: the share that is eaten is their mean by weight. */
export function together(parts: readonly Part[], of: (part: Part) => WeighedAs): WeighedAs {
  let whole = ZERO;
  let eaten = ZERO;
  for (const part of parts) {
    whole = add(whole, part.grams);
    eaten = add(eaten, multiply(part.grams, of(part).eaten));
  }
  const all = parts.map((part) => of(part).as);
  const as = all.includes('bought') ? 'bought' : all.includes('perhaps') ? 'perhaps' : 'edible';
  return { as, eaten: isZero(whole) ? ONE : divide(eaten, whole) };
}
