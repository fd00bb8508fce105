import { linePlace, type Food, type Formula, type InItem, type Part } from '@quern/compiler';
import { add, divide, isZero, multiply, ONE, subtract, ZERO, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import { isMade, waysToDish } from './allergens.js';
import { together, weighedAsOf, type WeighedAs } from './edible.js';
import { addRanges, NOTHING, point, rangeOf, subtractRanges, timesRange, type Range } from './range.js';

/** One food that stands in the finished dish, from all the lines that put it there. */
export interface Component {
  readonly key: string;
  readonly name: string;
  /** Missing when neither the table nor the file knows the food. */
  readonly food?: Food;
  /** Grams as put in, less the shares that were taken out again; of the thing as the ledger weighs it. */
  readonly grams: Range;
  /** How it was weighed, and which share of the grams is eaten. Without it, all of it is. */
  readonly weighed?: WeighedAs;
  /** Of each gram put in, the grams of water and of alcohol that left by heat: 0 to 1. */
  readonly waterLost: Range;
  readonly alcoholLost: Range;
  readonly lines: readonly Place[];
}

/** A food without a known weight. */
interface Unweighed {
  readonly name: string;
  readonly food?: Food;
  /** `a little`, `enough`: the ledger counts it as nothing, and the finished weight is known all the same. */
  readonly open: boolean;
}

/** What stands in the finished dish: all that nutrition is worked out from. */
export interface Composition {
  readonly components: readonly Component[];
  /** What went in without a known weight; its figures are missing from every sum. */
  readonly unweighed: readonly Unweighed[];
  /** A bad line or an impossible one stands on the way: no figure is known. */
  readonly withheld: boolean;
  /** Whether a drained liquid takes part, whose make-up is an estimate. */
  readonly estimate: boolean;
}

const ALL: Range = point(ONE);

/** Grams of a component that stand in the finished dish. */
export function massOf(component: Component): Range {
  const kept = subtractRanges(ALL, addRanges(component.waterLost, component.alcoholLost));
  return {
    low: multiply(component.grams.low, kept.low),
    usual: multiply(component.grams.usual, kept.usual),
    high: multiply(component.grams.high, kept.high),
  };
}

/** What is eaten of a component: peel, stone and shell that were weighed with it left out. */
export function eatenOf(component: Component): Component {
  const { weighed, grams } = component;
  return weighed?.as === 'bought' ? { ...component, grams: timesRange(grams, weighed.eaten) } : component;
}

/** The finished weight, with whatever no line took out. */
export function weightOf(composition: Composition): Range {
  return composition.components.map(massOf).reduce(addRanges, NOTHING);
}

/** What stands in the finished dish when every range stands at its middle: who is there, without the ends. */
export interface Presence extends Pick<Composition, 'unweighed' | 'withheld'> {
  /** Grams of each food as they stand there at last. */
  readonly foods: readonly { readonly food: Food | undefined; readonly grams: Rational }[];
  readonly grams: Rational;
}

/** What stands in the finished dish. Runs no ledger at its ends, which is what a composition takes its time for. */
export function presenceIn(formula: Formula): Presence {
  const foods = new Map<string, { readonly food: Food | undefined; readonly grams: Rational }>();
  let all = ZERO;
  for (const { food, grams, waterLost, alcoholLost } of dishParts(formula)) {
    const mass = subtract(grams, add(waterLost, alcoholLost));
    all = add(all, mass);
    const before = foods.get(food.key);
    foods.set(food.key, { food: food.food, grams: before ? add(before.grams, mass) : mass });
  }
  const unweighed = unweighedIn(formula);
  return { foods: [...foods.values()], grams: all, unweighed, withheld: isWithheld(formula, unweighed) };
}

interface Sums {
  readonly grams: Rational;
  readonly waterLost: Rational;
  readonly alcoholLost: Rational;
}
const NO_SUMS: Sums = { grams: ZERO, waterLost: ZERO, alcoholLost: ZERO };

function sumsByFood(parts: readonly Part[]): Map<string, Sums> {
  const sums = new Map<string, Sums>();
  for (const part of parts) {
    const old = sums.get(part.food.key) ?? NO_SUMS;
    sums.set(part.food.key, {
      grams: add(old.grams, part.grams),
      waterLost: add(old.waterLost, part.waterLost),
      alcoholLost: add(old.alcoholLost, part.alcoholLost),
    });
  }
  return sums;
}

const dishParts = (formula: Formula): readonly Part[] => formula.makes.at(-1)?.pot.parts ?? [];

/** Foods put in without a known weight, in the makes that surely lead to the dish. */
function unweighedIn(formula: Formula): Unweighed[] {
  const found = new Map<string, Unweighed>();
  for (const { formula: one, item } of surelyIn(formula)) {
    const { grams } = item.weighed;
    const open = item.content.amount.kind === 'open';
    if (item.source.kind === 'product' && !isMade(one, item.source.product)) {
      // From a file that cannot be read: whatever is in it, no figure knows of it.
      found.set(item.source.product, { name: item.source.product, open: false });
      continue;
    }
    if (grams && !(open && isZero(grams))) continue;
    const { source } = item;
    if (source.kind === 'product' || (grams === undefined && item.content.amount.kind === 'percent')) continue;
    const name = source.kind === 'any' ? `any ${source.class}` : item.content.name.text;
    const food = source.kind === 'food' ? source.food.food : undefined;
    found.set(name, { name, ...(food && { food }), open });
  }
  return [...found.values()];
}

function surelyIn(formula: Formula): { readonly formula: Formula; readonly item: InItem }[] {
  return waysToDish(formula).flatMap(({ formula: one, makes }) =>
    one.makes
      .filter((make) => makes.get(make.index) === 'in')
      .flatMap((make) => make.items.filter((item): item is InItem => item.kind === 'in' && !item.optional))
      .map((item) => ({ formula: one, item })),
  );
}

/** Whether something other than a missing weight makes a pot on the way unknown. */
function isWithheld(formula: Formula, unweighed: readonly Unweighed[]): boolean {
  if (formula.dishGrams !== undefined) return false;
  const unknown = waysToDish(formula).flatMap(({ formula: one, makes }) =>
    one.makes.filter((make) => makes.has(make.index)).flatMap((make) => make.pot.unknown),
  );
  return unknown.some(({ why }) => why === 'bad-line') || unweighed.every(({ open }) => open);
}

/** The composition of a compiled recipe. Ends of ranges come from the ledger run at its low and its high ends. */
export function compositionOf(formula: Formula): Composition {
  const { low, high } = formula.bounds();
  const parts = dishParts(formula);
  const lows = sumsByFood(dishParts(low));
  const highs = sumsByFood(dishParts(high));
  const usual = sumsByFood(parts);
  const seen = new Map<string, Part[]>();
  for (const part of [...parts, ...dishParts(low), ...dishParts(high)]) {
    const list = seen.get(part.food.key);
    if (list) list.push(part);
    else seen.set(part.food.key, [part]);
  }
  const weighed = weighedAsOf(waysToDish(formula));
  const components: Component[] = [];
  for (const [key, list] of seen) {
    const food = list[0]?.food;
    if (!food) continue;
    const a = lows.get(key) ?? NO_SUMS;
    const b = usual.get(key) ?? NO_SUMS;
    const c = highs.get(key) ?? NO_SUMS;
    if (isZero(a.grams) && isZero(b.grams) && isZero(c.grams)) continue;
    components.push({
      key,
      name: food.name,
      ...(food.food && { food: food.food }),
      grams: rangeOf(a.grams, b.grams, c.grams),
      weighed: together(list, weighed),
      waterLost: shares(a, b, c, 'waterLost'),
      alcoholLost: shares(a, b, c, 'alcoholLost'),
      lines: uniquePlaces(list.map((part) => linePlace(part.origin))),
    });
  }
  const unweighed = unweighedIn(formula);
  return { components, unweighed, withheld: isWithheld(formula, unweighed), estimate: hasEstimate(formula) };
}

/** What left of each gram put in; an end at which nothing stands says nothing. */
function shares(low: Sums, usual: Sums, high: Sums, part: 'waterLost' | 'alcoholLost'): Range {
  const share = (sums: Sums): Rational | undefined => (isZero(sums.grams) ? undefined : divide(sums[part], sums.grams));
  const middle = share(usual) ?? share(high) ?? share(low) ?? ZERO;
  return rangeOf(share(low) ?? middle, middle, share(high) ?? middle);
}

function uniquePlaces(places: readonly Place[]): Place[] {
  const found = new Map(places.map((one) => [`${one.file}:${one.start}`, one]));
  return [...found.values()];
}

function hasEstimate(formula: Formula): boolean {
  return formula.makes.some((make) => make.items.some((item) => item.kind === 'out' && item.estimate));
}
