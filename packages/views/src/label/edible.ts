import { linePlace, type Food, type InItem, type Make, type Part } from '@quern/compiler';
import { add, compare, divide, isZero, middle, multiply, ONE, rational, ZERO, type Rational } from '@quern/quantity';
import type { Way } from './allergens.js';

/*
 * Peel, stone and shell. The ledger weighs what is written; figures of a food table are for what is eaten. Whether a
 * weight is that of the thing as bought can be seen where things are counted: '8 eggs = 510 g' are eggs in their shells.
 * Such a food gives nutrients by its edible portion; so does one that is prepared after it was weighed, which is what a
 * form after the comma says ('500 g plums, stoned'). A form before the name says that it was weighed afterwards ('500 g
 * stoned plums'): all of it is eaten. A line that bins some of the food says the same better, and then nothing is
 * reckoned. Where only a weight is written nobody can tell: it counts as edible, and the label says so.
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

/** Words for taking off what is not eaten. Common practice, no source. */
const PREPARED =
  /(?<![\p{L}-])(?:peeled|pared|skinned|skinless|shelled|stoned|pitted|cored|seeded|deseeded|hulled|podded|husked|shucked|boned|boneless|filleted|trimmed|topped and tailed|flesh only)(?![\p{L}])/iu;
/** Not done to it after all: 'not peeled', 'unpeeled' has no word of the list. */
const NOT_PREPARED =
  /(?<!\p{L})(?:not|un|without being|before being)\s+(?:peeled|skinned|stoned|pitted|cored|seeded|shelled)/iu;

/** Of citrus fruit the peel is often used too; only a plain 'peeled' takes it away. */
const PEELED = /(?<![\p{L}-])peeled(?![\p{L}])/iu;
/** What came off goes in after all: 'peeled, the peel kept'. */
const KEPT = /(?<!\p{L})(?:kept|reserved|saved|zested)(?!\p{L})/iu;

/** Whether the line's words say that what is not eaten was off when it was weighed (`before`), or came off later (`after`). */
function preparedWhen({ content: { name, note } }: InItem, food: Food): 'before' | 'after' | undefined {
  if (PREPARED.test(name.text)) return 'before';
  const words = note?.text ?? '';
  if (NOT_PREPARED.test(words) || KEPT.test(words)) return undefined;
  return (food.classes.includes('citrus fruit') ? PEELED : PREPARED).test(words) ? 'after' : undefined;
}

function weighedAs(item: InItem, food: Food | undefined): WeighedAs {
  const edible = food?.ediblePortion;
  if (!food || !edible || isZero(edible)) return EDIBLE;
  const when = preparedWhen(item, food);
  if (when === 'before') return EDIBLE;
  // A weight that somebody wrote; one that the table supplies is of the part that it has figures for.
  if (when === 'after' && item.weighed.basis === 'stated' && compare(edible, ONE) < 0) {
    return { as: 'bought', eaten: edible };
  }
  if (compare(edible, NEARLY_ALL) >= 0) return EDIBLE;
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
