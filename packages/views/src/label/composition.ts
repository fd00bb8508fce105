import { linePlace, type Food, type Formula, type Part } from '@quern/compiler';
import { add, divide, isZero, multiply, ONE, ZERO, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import { addRanges, NOTHING, point, rangeOf, subtractRanges, type Range } from './range.js';

/** One food that stands in the finished dish, from all the lines that put it there. */
export interface Component {
  readonly key: string;
  readonly name: string;
  /** Missing when neither the table nor the file knows the food. */
  readonly food?: Food;
  /** Grams as put in, less the shares that were taken out again. Edible parts only, as the ledger counts. */
  readonly grams: Range;
  /** Of each gram put in, the grams of water and of alcohol that left by heat: 0 to 1. */
  readonly waterLost: Range;
  readonly alcoholLost: Range;
  readonly lines: readonly Place[];
}

/** What stands in the finished dish: all that nutrition is worked out from. */
export interface Composition {
  readonly components: readonly Component[];
  /** Why the weights are not whole: things without a known weight. Then a figure per 100 g is not known. */
  readonly withoutWeight: readonly string[];
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

/** The finished weight. */
export function weightOf(composition: Composition): Range {
  return composition.components.map(massOf).reduce(addRanges, NOTHING);
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

/** The pot of the dish: that of the last make. */
export function dishPot(formula: Formula): { readonly parts: readonly Part[]; readonly unknown: readonly string[] } {
  const pot = formula.makes.at(-1)?.pot;
  return { parts: pot?.parts ?? [], unknown: [...new Set(pot?.unknown.map((one) => one.name) ?? [])] };
}

/** The composition of a compiled recipe. Ends of ranges come from the ledger run at its low and its high ends. */
export function compositionOf(formula: Formula): Composition {
  const { low, high } = formula.bounds();
  const { parts, unknown } = dishPot(formula);
  const lows = sumsByFood(dishPot(low).parts);
  const highs = sumsByFood(dishPot(high).parts);
  const usual = sumsByFood(parts);
  const seen = new Map<string, Part[]>();
  for (const part of [...parts, ...dishPot(low).parts, ...dishPot(high).parts]) {
    const list = seen.get(part.food.key);
    if (list) list.push(part);
    else seen.set(part.food.key, [part]);
  }
  const components: Component[] = [];
  for (const [key, list] of seen) {
    const food = list[0]!.food;
    const a = lows.get(key) ?? NO_SUMS;
    const b = usual.get(key) ?? NO_SUMS;
    const c = highs.get(key) ?? NO_SUMS;
    if (isZero(a.grams) && isZero(b.grams) && isZero(c.grams)) continue;
    components.push({
      key,
      name: food.name,
      ...(food.food && { food: food.food }),
      grams: rangeOf(a.grams, b.grams, c.grams),
      waterLost: shares(a, b, c, 'waterLost'),
      alcoholLost: shares(a, b, c, 'alcoholLost'),
      lines: uniquePlaces(list.map((part) => linePlace(part.origin))),
    });
  }
  return { components, withoutWeight: unknown, estimate: hasEstimate(formula) };
}

/** What left of each gram put in; an end at which nothing stands says nothing. */
function shares(low: Sums, usual: Sums, high: Sums, part: 'waterLost' | 'alcoholLost'): Range {
  const share = (sums: Sums): Rational | undefined => (isZero(sums.grams) ? undefined : divide(sums[part], sums.grams));
  const middle = share(usual) ?? share(high) ?? share(low) ?? ZERO;
  return rangeOf(share(low) ?? middle, middle, share(high) ?? middle);
}

export function uniquePlaces(places: readonly Place[]): Place[] {
  const found = new Map(places.map((one) => [`${one.file}:${one.start}`, one]));
  return [...found.values()];
}

function hasEstimate(formula: Formula): boolean {
  return formula.makes.some((make) => make.items.some((item) => item.kind === 'out' && item.estimate));
}
