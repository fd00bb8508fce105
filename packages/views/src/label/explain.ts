import { divide, HUNDRED, isZero, multiply, toDecimal, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import type { Component, Composition } from './composition.js';
import type { LabelNutrient, Market } from './nutrient-list.js';
import { ofGrams } from './nutrients.js';
import { contributionsTo, type Nutrition } from './nutrition.js';

/** Where one figure comes from: what each food gives of it. */
export interface Explanation {
  readonly nutrient: LabelNutrient;
  /** In words. */
  readonly name: string;
  readonly unit: string;
  /** Of the whole dish, unrounded to three decimals. */
  readonly total: string;
  readonly atLeast: boolean;
  readonly rows: readonly {
    readonly food: string;
    /** The entry of the table, or undefined for a food that is not in it. */
    readonly entry: string | undefined;
    /** Grams that went in and stayed; of what is eaten. */
    readonly grams: string;
    /** The share that is eaten, in per cent, where the food was weighed with its peel, stone or shell. */
    readonly eaten: string | undefined;
    /** In 100 g of the food; undefined where the source gives none. */
    readonly per100: string | undefined;
    readonly amount: string;
    /** The share of a food's alcohol that its heating or standing leaves, in per cent, where some of it left. */
    readonly stays: string | undefined;
    readonly sources: readonly string[];
    /** The lines that put it in. */
    readonly places: readonly Place[];
  }[];
}

const UNITS: Readonly<Partial<Record<LabelNutrient, string>>> = {
  energyKj: 'kJ',
  energyKcal: 'kcal',
  energyGeneral: 'kcal',
  energyTable: 'kcal',
  sodium: 'mg',
  cholesterol: 'mg',
  calcium: 'mg',
  iron: 'mg',
  potassium: 'mg',
  vitaminD: 'µg',
};

const NAMES: Readonly<Record<LabelNutrient, string>> = {
  energyKj: 'energy in kilojoules, by Annex XIV',
  energyKcal: 'energy in kilocalories, by Annex XIV',
  energyGeneral: 'energy by 4, 4 and 9',
  energyTable: 'energy as the food table has it',
  fat: 'fat',
  saturates: 'saturates',
  trans: 'trans fat',
  monounsaturates: 'monounsaturates',
  polyunsaturates: 'polyunsaturates',
  carbohydrate: 'carbohydrate without fibre',
  carbohydrateTotal: 'carbohydrate with fibre',
  sugars: 'sugars',
  addedSugars: 'added sugars',
  fibre: 'fibre',
  protein: 'protein',
  salt: 'salt',
  sodium: 'sodium',
  cholesterol: 'cholesterol',
  vitaminD: 'vitamin D',
  calcium: 'calcium',
  iron: 'iron',
  potassium: 'potassium',
  alcohol: 'alcohol',
  water: 'water',
};

const COMMON: readonly LabelNutrient[] = [
  'fat',
  'saturates',
  'carbohydrate',
  'sugars',
  'fibre',
  'protein',
  'salt',
  'alcohol',
  'water',
];

const explained: Readonly<Record<'general' | 'annex', readonly LabelNutrient[]>> = {
  annex: ['energyKj', 'energyKcal', ...COMMON],
  general: [
    'energyGeneral',
    'energyTable',
    'fat',
    'saturates',
    'trans',
    'cholesterol',
    'carbohydrateTotal',
    'sugars',
    'addedSugars',
    'fibre',
    'protein',
    'sodium',
    'potassium',
    'calcium',
    'iron',
    'vitaminD',
    'alcohol',
    'water',
  ],
};

const percentText = (share: Rational): string => toDecimal(multiply(share, HUNDRED), 0);

/** What stays of the alcohol of a food, where some left. */
function staysOf({ grams, alcoholLost }: Component, per100: Rational, amount: Rational): string | undefined {
  const whole = ofGrams(per100, grams.usual);
  return isZero(alcoholLost.usual) || isZero(whole) ? undefined : percentText(divide(amount, whole));
}

/** Every figure of a market's declaration, traced to the foods that give it. */
export function explain(composition: Composition, nutrition: Nutrition, market: Market): Explanation[] {
  const nutrients = market === 'us' || market === 'ca' ? explained.general : explained.annex;
  return nutrients.flatMap((nutrient) => {
    const figure = nutrition.total(nutrient);
    if (!figure) return [];
    return {
      nutrient,
      name: NAMES[nutrient],
      unit: UNITS[nutrient] ?? 'g',
      total: toDecimal(figure.amount.usual, 3),
      atLeast: !figure.more || !isZero(figure.more),
      rows: contributionsTo(composition, nutrient).map(({ component, content, amount, sources }) => ({
        food: component.name,
        entry: component.food?.name,
        grams: toDecimal(component.grams.usual, 2),
        eaten: component.weighed?.as === 'bought' ? percentText(component.weighed.eaten) : undefined,
        per100: content.more && isZero(content.more) ? toDecimal(content.known, 3) : undefined,
        amount: toDecimal(amount, 3),
        stays: nutrient === 'alcohol' ? staysOf(component, content.known, amount) : undefined,
        sources,
        places: component.lines,
      })),
    };
  });
}
