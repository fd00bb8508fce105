import {
  add,
  compare,
  divide,
  isZero,
  multiply,
  sign,
  subtract,
  ZERO,
  ONE,
  HUNDRED,
  type Rational,
} from '@quern/quantity';
import { eatenOf, weightOf, type Component, type Composition } from './composition.js';
import type { LabelNutrient } from './nutrient-list.js';
import { contentOf, ofGrams, type Content } from './nutrients.js';
import { annexXiv, atwater } from './energy.js';
import { addRanges, NOTHING, point, timesRange, type Range } from './range.js';

/**
 * A computed amount. `more` is what foods without this figure could add to it: zero when every food has one, undefined
 * when nothing bounds it. `missing` names those foods.
 */
export interface Figure {
  readonly amount: Range;
  readonly more: Rational | undefined;
  readonly missing: readonly string[];
}

export interface Nutrition {
  /** Finished weight in grams; undefined when something went in whose weight is not known. */
  readonly weight: Range | undefined;
  /** Of the whole dish; undefined when figures are withheld. */
  total(nutrient: LabelNutrient): Figure | undefined;
  /** In 100 g of what is eaten of the finished dish; undefined when the weight is not known. */
  per100(nutrient: LabelNutrient): Figure | undefined;
  /** In one of so many equal parts. */
  perPart(nutrient: LabelNutrient, parts: Rational): Figure | undefined;
}

/** One food's share in a figure, for tracing it. */
export interface Contribution {
  /** What is eaten of it. */
  readonly component: Component;
  /** What the table says of 100 g. */
  readonly content: Content;
  /** In the whole dish, after what left. */
  readonly amount: Rational;
  /** Ids of the sources of the food's figures. */
  readonly sources: readonly string[];
}

/*
 * What a component gives of a nutrient: its grams, times what a gram put in gives, less what went with the water and the
 * alcohol that left. Most nutrients stay when water leaves; water, alcohol and the energy of alcohol do not.
 */
interface Slope {
  /** A gram as put in; then what a gram of lost water and of lost alcohol takes along. */
  readonly gram: Rational;
  readonly water: Rational;
  readonly alcohol: Rational;
}

function slope(nutrient: LabelNutrient, per100: Rational): Slope {
  return {
    gram: divide(per100, HUNDRED),
    water: nutrient === 'water' ? ONE : ZERO,
    alcohol: alcoholSlopes[nutrient] ?? ZERO,
  };
}

const alcoholSlopes: Readonly<Partial<Record<LabelNutrient, Rational>>> = {
  alcohol: ONE,
  energyKj: annexXiv.alcohol.kj,
  energyKcal: annexXiv.alcohol.kcal,
  energyGeneral: atwater.alcohol,
  energyTable: atwater.alcohol,
};

const MASS: Slope = { gram: ONE, water: ONE, alcohol: ONE };

/** What is left in a gram that was put in, when so much of it left. */
function left(one: Slope, water: Rational, alcohol: Rational): Rational {
  return subtract(one.gram, add(multiply(one.water, water), multiply(one.alcohol, alcohol)));
}

/** The nutrition of a composition. */
export function nutritionOf(composition: Composition): Nutrition {
  const { withheld, unweighed } = composition;
  const eaten = composition.components.map(eatenOf);
  const weight = withheld || unweighed.some(({ open }) => !open) ? undefined : weightOf(composition);
  const totals = new Map<LabelNutrient, Figure>();
  const total = (nutrient: LabelNutrient): Figure | undefined => {
    if (withheld) return undefined;
    let figure = totals.get(nutrient);
    if (!figure) totals.set(nutrient, (figure = totalOf({ ...composition, components: eaten }, nutrient)));
    return figure;
  };
  return {
    weight,
    total,
    per100(nutrient) {
      const figure = total(nutrient);
      if (!figure || !weight || sign(weight.usual) <= 0) return undefined;
      const { more, missing } = figure;
      const amount = concentration(eaten, nutrient);
      const whole = weightOf({ ...composition, components: eaten }).usual;
      return { amount, more: more && divide(multiply(more, HUNDRED), whole), missing };
    },
    perPart(nutrient, parts) {
      const figure = total(nutrient);
      if (!figure) return undefined;
      const share = divide(ONE, parts);
      const { amount, more, missing } = figure;
      return { amount: timesRange(amount, share), more: more && multiply(more, share), missing };
    },
  };
}

function totalOf(composition: Composition, nutrient: LabelNutrient): Figure {
  let amount = NOTHING;
  let more: Rational | undefined = ZERO;
  const missing: string[] = [];
  for (const component of composition.components) {
    const content = contentOf(component.food, nutrient);
    amount = addRanges(amount, amountIn(component, slope(nutrient, content.known)));
    if (content.more && isZero(content.more)) continue;
    missing.push(component.name);
    more = more && content.more ? add(more, ofGrams(content.more, component.grams.usual)) : undefined;
  }
  for (const { name, food } of composition.unweighed) {
    const { known, more: unsaid } = contentOf(food, nutrient);
    // Nobody knows how much went in: harmless only for what the food has none of.
    if (isZero(known) && unsaid && isZero(unsaid)) continue;
    missing.push(name);
    more = undefined;
  }
  return { amount, more, missing };
}

function amountIn({ grams, waterLost, alcoholLost }: Component, one: Slope): Range {
  return {
    low: multiply(grams.low, left(one, waterLost.high, alcoholLost.high)),
    usual: multiply(grams.usual, left(one, waterLost.usual, alcoholLost.usual)),
    high: multiply(grams.high, left(one, waterLost.low, alcoholLost.low)),
  };
}

/** What each food gives of a nutrient, greatest first. */
export function contributionsTo(composition: Composition, nutrient: LabelNutrient): Contribution[] {
  return composition.components
    .map(eatenOf)
    .map((component): Contribution => {
      const content = contentOf(component.food, nutrient);
      return {
        component,
        content,
        amount: amountIn(component, slope(nutrient, content.known)).usual,
        sources: component.food?.nutrientSources ?? component.food?.sources ?? [],
      };
    })
    .sort((a, b) => compare(b.amount, a.amount));
}

/**
 * Grams of a nutrient in 100 g of the whole, over every combination of the ranges. What is asked for is the least and the
 * greatest of a quotient of two sums; each is found by trying a value, taking in each component the corner that is best
 * against it, and going on with the quotient those corners give, until it no longer changes (Dinkelbach's method, which
 * ends, as there are finitely many corners).
 */
function concentration(components: readonly Component[], nutrient: LabelNutrient): Range {
  const sloped = components.map((component) => ({
    component,
    one: slope(nutrient, contentOf(component.food, nutrient).known),
  }));
  const quotient = (choose: (component: Component, one: Slope) => Corner): Rational => {
    let top = ZERO;
    let bottom = ZERO;
    for (const { component, one } of sloped) {
      const { grams, water, alcohol } = choose(component, one);
      top = add(top, multiply(grams, left(one, water, alcohol)));
      bottom = add(bottom, multiply(grams, left(MASS, water, alcohol)));
    }
    return sign(bottom) > 0 ? divide(multiply(top, HUNDRED), bottom) : ZERO;
  };
  const usual = quotient(({ grams, waterLost, alcoholLost }) => ({
    grams: grams.usual,
    water: waterLost.usual,
    alcohol: alcoholLost.usual,
  }));
  if (components.every(isExact)) return point(usual);
  const extreme = (towards: 1 | -1): Rational => {
    let best = usual;
    for (;;) {
      const next = quotient((component, one) => bestCorner(component, one, best, towards));
      if (compare(next, best) * towards <= 0) return best;
      best = next;
    }
  };
  return { low: extreme(-1), usual, high: extreme(1) };
}

interface Corner {
  readonly grams: Rational;
  readonly water: Rational;
  readonly alcohol: Rational;
}

/** The corner at which a component gives most (or least) above `against` grams in 100 g of itself. */
function bestCorner(component: Component, one: Slope, against: Rational, towards: 1 | -1): Corner {
  const share = divide(against, HUNDRED);
  const gain: Slope = {
    gram: subtract(one.gram, share),
    water: subtract(one.water, share),
    alcohol: subtract(one.alcohol, share),
  };
  // Losing more of what takes little along is a gain for a greatest, a loss for a least.
  const lost = (range: Range, taken: Rational): Rational => (sign(taken) * towards > 0 ? range.low : range.high);
  const water = lost(component.waterLost, gain.water);
  const alcohol = lost(component.alcoholLost, gain.alcohol);
  const grams = sign(left(gain, water, alcohol)) * towards >= 0 ? component.grams.high : component.grams.low;
  return { grams, water, alcohol };
}

function isExact(component: Component): boolean {
  return [component.grams, component.waterLost, component.alcoholLost].every(
    (range) => compare(range.low, range.high) === 0,
  );
}
