import type { CupSystem } from '@quern/quantity';
import type { ExactRange, ExactText } from '../common/scalable-amount.js';

/*
 * The shopping list as plain data. It is JSON as it stands; `docs/json/basket.schema.json` describes it. Exact numbers are texts
 * that `parseRational` reads; what is not known is null, never zero.
 */

export interface BasketWeight {
  readonly grams: ExactRange;
  readonly text: string;
}

/** So much of a food, told in one way. A food may be told in several: a tin and some loose. */
export interface BasketAmount {
  /** `weight`: weighed or measured. `count`: pieces, cloves, leaves. `pack`: as it is sold. `open`: a little, enough. */
  readonly kind: 'weight' | 'count' | 'pack' | 'open';
  /** '890 g', '7', '6 cloves', '2 tins of 400 g', 'a little'. */
  readonly text: string;
  /** The weight is about so much. */
  readonly about: boolean;
  /** null: not known. */
  readonly weight: BasketWeight | null;
  /** Cups and spoons, or pounds and ounces, when they are asked for. */
  readonly us?: string;
}

/** How many packages of a size come to what is needed. */
export interface BasketPackages {
  readonly count: ExactText;
  /** '2 packages of 1.5 kg'. */
  readonly text: string;
  /** What is left over of the last one: in grams, or in millilitres where the package is a volume. */
  readonly left: { readonly amount: ExactText; readonly text: string };
}

export interface BasketItem {
  /** As the first recipe writes it. */
  readonly name: string;
  /** The food of the table or of the file; missing when neither knows it. */
  readonly food?: string;
  readonly amounts: readonly BasketAmount[];
  /** Only for lines marked optional. */
  readonly ifUsed: readonly BasketAmount[];
  /** What may be bought instead, with how much of it: '78 g walnuts'. */
  readonly instead: readonly string[];
  readonly packages?: BasketPackages;
  /** Titles of the recipes that want it. */
  readonly recipes: readonly string[];
}

export type ShelfId =
  | 'vegetables'
  | 'meat'
  | 'fish'
  | 'dairy'
  | 'spices'
  | 'nuts'
  | 'flour'
  | 'pulses'
  | 'fats'
  | 'sugar'
  | 'baking'
  | 'drinks'
  | 'other'
  | 'tap';

export interface BasketShelf {
  readonly id: ShelfId;
  readonly name: string;
  readonly items: readonly BasketItem[];
}

export interface BasketRecipe {
  readonly title: string;
  readonly variant?: string;
  readonly factor: ExactText;
}

export interface BasketData {
  readonly format: 'quern-basket';
  readonly version: 1;
  readonly measures: 'metric' | 'us' | 'both';
  readonly cups: CupSystem;
  readonly recipes: readonly BasketRecipe[];
  readonly shelves: readonly BasketShelf[];
  /** Cultures: owned and fed, not bought. */
  readonly owned: readonly {
    readonly name: string;
    readonly weight: BasketWeight | null;
    readonly recipes: readonly string[];
  }[];
  /** What the list cannot say, a sentence each. */
  readonly warnings: readonly string[];
}
