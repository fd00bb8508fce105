import type { AllergenId, Food, FoodBook, NutrientId, Spread } from '@quern/compiler';
import { HUNDRED, multiply, type Rational } from '@quern/quantity';

/** A source as a reader sees it. */
export interface DescribedSource {
  readonly id: string;
  readonly text: string;
}

export interface DescribedWeight {
  /** Form, piece or size in words; `as it comes` when the name says nothing. */
  readonly what: string;
  readonly low: Rational;
  readonly usual: Rational;
  readonly high: Rational;
  readonly sources: readonly DescribedSource[];
}

/** A food as plain data, for `quern foods NAME`: every figure with where it comes from. */
export interface FoodDescription {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly roles: readonly string[];
  readonly classes: readonly string[];
  readonly flags: readonly string[];
  readonly allergens:
    | { readonly kind: 'known'; readonly contains: readonly AllergenId[] }
    /** The recipe of the food varies: more cannot be said than what it surely contains. */
    | { readonly kind: 'unknown'; readonly surely: readonly AllergenId[] };
  /** Percent of what is bought. */
  readonly ediblePercent?: Rational;
  /** Per 100 g edible portion, in the units of `NutrientId`. */
  readonly nutrients: readonly { readonly nutrient: NutrientId; readonly amount: Rational }[];
  /** Where the nutrients and the edible portion come from. */
  readonly nutrientSources: readonly DescribedSource[];
  /** Grams a millilitre, by form. */
  readonly perMillilitre: readonly DescribedWeight[];
  /** Grams a piece. */
  readonly perPiece: readonly (DescribedWeight & { readonly basis: 'edible' | 'as-bought' })[];
}

function describeSources(ids: readonly string[], book: FoodBook): readonly DescribedSource[] {
  return ids.map((id) => ({ id, text: book.source(id) ?? id }));
}

function describeSpread(what: string, spread: Spread, book: FoodBook): DescribedWeight {
  const { low, usual, high } = spread;
  return { what, low, usual, high, sources: describeSources(spread.sources, book) };
}

const UNQUALIFIED = 'as it comes';

/** Every figure of a food with its sources, as plain data. */
export function describeFood(food: Food, book: FoodBook): FoodDescription {
  return {
    id: food.id,
    name: food.name,
    synonyms: food.synonyms,
    roles: food.roles,
    classes: food.classes,
    flags: food.flags,
    allergens: food.allergens
      ? { kind: 'known', contains: food.allergens }
      : { kind: 'unknown', surely: food.allergensAtLeast ?? [] },
    ...(food.ediblePortion ? { ediblePercent: multiply(food.ediblePortion, HUNDRED) } : {}),
    nutrients: Object.entries(food.nutrients).map(([nutrient, amount]) => ({
      nutrient: nutrient as NutrientId,
      amount,
    })),
    nutrientSources: describeSources(food.nutrientSources ?? [], book),
    perMillilitre: food.volumes.map(({ form, perMillilitre }) =>
      describeSpread(form || UNQUALIFIED, perMillilitre, book),
    ),
    perPiece: food.pieces.map(({ piece, size, grams, basis }) => ({
      ...describeSpread([size, piece].filter(Boolean).join(' ') || UNQUALIFIED, grams, book),
      basis,
    })),
  };
}
