import type { Rational } from '@quern/quantity';

/** A food of the table or of a file. Kebab case for the table's own foods ('whole-rye-flour'). */
export type FoodId = string;

/** Allergen classes: the union of what the markets name. A market's table says which of them it declares. */
export type AllergenId =
  | 'wheat'
  | 'rye'
  | 'barley'
  | 'oats'
  | 'spelt'
  | 'triticale'
  // declared as 'gluten' without saying which cereal
  | 'other-gluten'
  | 'crustaceans'
  | 'molluscs'
  | 'fish'
  | 'eggs'
  | 'milk'
  | 'peanuts'
  | 'soybeans'
  | 'almond'
  | 'hazelnut'
  | 'walnut'
  | 'cashew'
  | 'pecan'
  | 'brazil-nut'
  | 'pistachio'
  | 'macadamia'
  | 'pine-nut'
  | 'chestnut'
  | 'coconut'
  | 'other-nut'
  | 'celery'
  | 'mustard'
  | 'sesame'
  | 'sulphites'
  | 'lupin'
  | 'buckwheat';

export type NutrientId =
  | 'energyKcal'
  | 'protein'
  | 'fat'
  | 'saturates'
  | 'trans'
  | 'monounsaturates'
  | 'polyunsaturates'
  | 'carbohydrateByDifference'
  | 'carbohydrateAvailable'
  | 'sugars'
  | 'starch'
  | 'fibre'
  | 'alcohol'
  | 'polyols'
  | 'cholesterol'
  | 'sodium'
  | 'potassium'
  | 'calcium'
  | 'iron'
  | 'vitaminD'
  | 'water'
  | 'ash';
// Units of nutrients per 100 g: kcal; g; but cholesterol, sodium, potassium, calcium, iron in mg; vitamin D in µg.

/** What a food is in a baker's reckoning and in the pot. A food may have several. */
export type FoodRole =
  | 'flour'
  | 'liquid'
  | 'fat'
  | 'sugar'
  | 'salt'
  | 'leaven'
  | 'egg'
  | 'dairy'
  | 'spice'
  | 'nut'
  | 'fruit'
  | 'vegetable'
  | 'meat'
  | 'fish'
  | 'spirit'
  | 'starch'
  | 'cereal'
  | 'pulse'
  | 'seed';

/** The published spread of a weight: grams, lowest, usual and highest of the sources named. */
export interface Spread {
  readonly low: Rational;
  readonly usual: Rational;
  readonly high: Rational;
  /** Ids of sources; `FoodBook.source` gives their text. */
  readonly sources: readonly string[];
}

/** Weight of one millilitre of a food in a form: '' as it comes; 'packed', 'sifted', 'chopped', 'melted', 'ground', 'grated', 'whole' … */
export interface VolumeWeight {
  readonly form: string;
  /** Grams a millilitre. */
  readonly perMillilitre: Spread;
}

/** Weight of one piece. `piece` is '' for the thing itself, or the part or unit: 'clove', 'leaf', 'slice', 'stick', 'sprig', 'bunch', 'sheet'. `size` is '', 'small', 'medium', 'large' … */
export interface PieceWeight {
  readonly piece: string;
  readonly size: string;
  /** Grams each. */
  readonly grams: Spread;
  /** Whether the weight is of the edible part (no shell, peel, stone) or of the thing as bought. */
  readonly basis: 'edible' | 'as-bought';
}

export interface Food {
  readonly id: FoodId;
  /** Preferred name, British English. */
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly roles: readonly FoodRole[];
  /** Classes for `any CLASS`: 'nut', 'seed', 'citrus fruit' … */
  readonly classes: readonly string[];
  /** Edible part of what is bought, 0 to 1. Missing is missing. */
  readonly ediblePortion?: Rational;
  /** Per 100 g edible portion. A nutrient not listed is unknown, never zero. */
  readonly nutrients: Readonly<Partial<Record<NutrientId, Rational>>>;
  readonly volumes: readonly VolumeWeight[];
  readonly pieces: readonly PieceWeight[];
  /** Undefined means unknown: then nothing may be said about allergens. */
  readonly allergens?: readonly AllergenId[];
  /** When `allergens` is undefined: what the food surely contains, whatever else may be in it. Never the whole answer. */
  readonly allergensAtLeast?: readonly AllergenId[];
  readonly traces: readonly AllergenId[];
  /** Flags for the cautions: 'raw-egg', 'honey', 'kidney-bean', 'raw-flour', 'curing-salt', 'raw-meat', 'poultry', 'raw-fish', 'alcohol', 'garlic', 'fresh-herb', 'whole-nut', 'unpasteurised' …; and 'vegan', 'vegetarian', 'animal', 'meat' for the diets. */
  readonly flags: readonly string[];
  /** Ids of sources. */
  readonly sources: readonly string[];
  /** Those of them that the nutrients and the edible portion come from. */
  readonly nutrientSources?: readonly string[];
}

/** How a written name was matched. `form` and `size` are qualifiers found in the name ('chopped', 'large'). */
export interface FoodMatch {
  readonly food: Food;
  readonly how: 'name' | 'synonym' | 'head';
  readonly form: string;
  readonly size: string;
  /** The part that the name counts, as in `PieceWeight.piece`: 'clove' in `garlic cloves`. */
  readonly piece?: string;
}

export type FoodAnswer =
  | { readonly kind: 'found'; readonly match: FoodMatch }
  | { readonly kind: 'ambiguous'; readonly candidates: readonly Food[] }
  /** `near` are names a slip or an accent away; `accents` when the first differs by accents alone. */
  | { readonly kind: 'unknown'; readonly near: readonly string[]; readonly accents: boolean };

/** The food table as the compiler sees it. Given by the host; pure. */
export interface FoodBook {
  readonly version: string;
  find(name: string): FoodAnswer;
  get(id: FoodId): Food | undefined;
  /** The foods of a class, for `any nut`; empty when there is no such class. */
  ofClass(name: string): readonly Food[];
  source(id: string): string | undefined;
  /** Every preferred name, for completion. */
  names(): readonly string[];
}

/** The only door to the world: files by path, and the food table. No clock, no locale, no network. */
export interface Host {
  /** Text of a file, or undefined when there is none or it may not be read. Paths use `/`. */
  read(path: string): string | undefined;
  readonly foods: FoodBook;
}
