import { exact, rational, type Rational } from '@quern/quantity';
import type { LabelNutrient } from './nutrient-list.js';
import { above, below, figures, nearest, upTo, words, type RoundingRule } from './rounding.js';

/*
 * How each market rounds, as data. Values are in the unit of the rule. Nothing here computes.
 * The rows of tests/published/nutrition-rounding.tsv are checked against these one by one.
 */

const n = (text: string): Rational => exact(text);
const ONE = rational(1);
const FIVE = rational(5);
const TENTH = n('0.1');
const HALF = n('0.5');

export type RoundingRules = Readonly<Partial<Record<LabelNutrient, RoundingRule>>>;

// ---------------------------------------------------------------- European Union, United Kingdom

const EU_GUIDANCE = 'European Commission guidance on tolerances, December 2012, rounding table';

const euEnergy = (unit: 'kJ' | 'kcal'): RoundingRule => ({ unit, bands: [above(nearest(ONE))], source: EU_GUIDANCE });

const euMacro: RoundingRule = {
  unit: 'g',
  zero: '0',
  bands: [upTo(HALF, words('<0.5')), below(rational(10), nearest(TENTH, 1, false)), above(nearest(ONE))],
  source: EU_GUIDANCE,
};

const euFattyAcid: RoundingRule = {
  unit: 'g',
  zero: '0',
  bands: [upTo(TENTH, words('<0.1')), below(rational(10), nearest(TENTH, 1, false)), above(nearest(ONE))],
  source: EU_GUIDANCE,
};

const euSalt: RoundingRule = {
  unit: 'g',
  zero: '0',
  bands: [upTo(n('0.0125'), words('<0.01')), below(ONE, nearest(n('0.01'), 2, false)), above(nearest(TENTH, 1, false))],
  source: EU_GUIDANCE,
};

const euVitamin = (unit: 'mg' | 'µg', count: number): RoundingRule => ({
  unit,
  bands: [above(figures(count))],
  source: EU_GUIDANCE,
});

export const euRounding: RoundingRules = {
  energyKj: euEnergy('kJ'),
  energyKcal: euEnergy('kcal'),
  fat: euMacro,
  saturates: euFattyAcid,
  monounsaturates: euFattyAcid,
  polyunsaturates: euFattyAcid,
  carbohydrate: euMacro,
  sugars: euMacro,
  fibre: euMacro,
  protein: euMacro,
  salt: euSalt,
  // Vitamin A, folic acid, chloride, calcium, phosphorus, magnesium, iodine, potassium: three figures; the others two.
  vitaminD: euVitamin('µg', 2),
  calcium: euVitamin('mg', 3),
  iron: euVitamin('mg', 2),
  potassium: euVitamin('mg', 3),
};

// ---------------------------------------------------------------- United States

const CFR = '21 CFR 101.9(c); FDA Food Labeling Guide, Appendix H';

const usCalories: RoundingRule = {
  unit: 'kcal',
  bands: [below(FIVE, words('0')), upTo(rational(50), nearest(FIVE)), above(nearest(rational(10)))],
  source: CFR,
};

const usFat: RoundingRule = {
  unit: 'g',
  bands: [below(HALF, words('0')), below(FIVE, nearest(HALF, 1)), above(nearest(ONE))],
  source: CFR,
};

const usCarbohydrate: RoundingRule = {
  unit: 'g',
  bands: [below(HALF, words('0')), below(ONE, words('less than 1')), above(nearest(ONE))],
  source: CFR,
};

const usCholesterol: RoundingRule = {
  unit: 'mg',
  bands: [below(rational(2), words('0')), upTo(FIVE, words('less than 5')), above(nearest(FIVE))],
  source: CFR,
};

const usSodium: RoundingRule = {
  unit: 'mg',
  bands: [below(FIVE, words('0')), upTo(rational(140), nearest(FIVE)), above(nearest(rational(10)))],
  source: CFR,
};

export const usRounding: RoundingRules = {
  energyGeneral: usCalories,
  fat: usFat,
  saturates: usFat,
  trans: usFat,
  cholesterol: usCholesterol,
  sodium: usSodium,
  carbohydrateTotal: usCarbohydrate,
  fibre: usCarbohydrate,
  sugars: usCarbohydrate,
  addedSugars: usCarbohydrate,
  protein: usCarbohydrate,
  // Amounts of the four vitamins and minerals as the FDA's sample label writes them: to the unit of the daily value's own
  // precision; tenths for vitamin D and iron (from memory), potassium as sodium was in the 1993 rule.
  vitaminD: { unit: 'µg', bands: [above(nearest(TENTH, 1))], source: 'from memory' },
  calcium: { unit: 'mg', bands: [above(nearest(rational(10)))], source: 'from memory' },
  iron: { unit: 'mg', bands: [above(nearest(TENTH, 1))], source: 'from memory' },
  potassium: usSodium,
};

/** Per cent of the daily value for fat, carbohydrate, sodium and their like. */
export const usPercent: RoundingRule = {
  unit: '%',
  bands: [above(nearest(ONE))],
  source: '21 CFR 101.9(c)(7)(ii), (d)(7)(ii)',
};

/** Per cent of the daily value for vitamins and minerals: steps of 2 up to 10, of 5 up to 50, of 10 above. */
export const usVitaminPercent: RoundingRule = {
  unit: '%',
  bands: [
    below(ONE, words('0')),
    upTo(rational(10), nearest(rational(2))),
    upTo(rational(50), nearest(FIVE)),
    above(nearest(rational(10))),
  ],
  source: '21 CFR 101.9(c)(8)(iii)',
};

// ---------------------------------------------------------------- Canada

const FDR = 'Food and Drug Regulations (Canada), table to B.01.401, from memory';

const caFat: RoundingRule = {
  unit: 'g',
  bands: [below(HALF, nearest(TENTH, 1)), below(FIVE, nearest(HALF, 1)), above(nearest(ONE))],
  source: FDR,
};

const caCarbohydrate: RoundingRule = { unit: 'g', bands: [below(HALF, words('0')), above(nearest(ONE))], source: FDR };

const caMineral: RoundingRule = {
  unit: 'mg',
  bands: [
    below(FIVE, words('0')),
    below(rational(50), nearest(rational(10))),
    below(rational(250), nearest(rational(25))),
    above(nearest(rational(50))),
  ],
  source: FDR,
};

export const caRounding: RoundingRules = {
  energyGeneral: {
    unit: 'kcal',
    bands: [below(FIVE, nearest(ONE)), upTo(rational(50), nearest(FIVE)), above(nearest(rational(10)))],
    source: FDR,
  },
  fat: caFat,
  saturates: caFat,
  trans: caFat,
  cholesterol: { unit: 'mg', bands: [below(rational(2), words('0')), above(nearest(FIVE))], source: FDR },
  sodium: {
    unit: 'mg',
    bands: [below(FIVE, nearest(ONE)), upTo(rational(140), nearest(FIVE)), above(nearest(rational(10)))],
    source: FDR,
  },
  carbohydrateTotal: caCarbohydrate,
  fibre: caCarbohydrate,
  sugars: caCarbohydrate,
  protein: { unit: 'g', bands: [below(HALF, nearest(TENTH, 1)), above(nearest(ONE))], source: FDR },
  potassium: caMineral,
  calcium: caMineral,
  iron: {
    unit: 'mg',
    bands: [
      below(n('0.05'), words('0')),
      below(HALF, nearest(TENTH, 1)),
      below(n('2.5'), nearest(n('0.25'), 2)),
      above(nearest(HALF, 1)),
    ],
    source: FDR,
  },
};

export const caPercent: RoundingRule = { unit: '%', bands: [above(nearest(ONE))], source: FDR };

// ---------------------------------------------------------------- Australia and New Zealand

const FSANZ = 'Food Standards Code, Standard 1.2.8, section 1.2.8-7, from memory';

const auGrams: RoundingRule = {
  unit: 'g',
  zero: '0',
  bands: [below(ONE, words('less than 1')), above(figures(3))],
  source: FSANZ,
};

export const auRounding: RoundingRules = {
  energyKj: {
    unit: 'kJ',
    zero: '0',
    bands: [below(rational(40), words('less than 40')), above(figures(3))],
    source: FSANZ,
  },
  protein: auGrams,
  fat: auGrams,
  saturates: auGrams,
  carbohydrate: auGrams,
  sugars: auGrams,
  fibre: auGrams,
  sodium: { unit: 'mg', zero: '0', bands: [below(FIVE, words('less than 5')), above(figures(3))], source: FSANZ },
};

// ---------------------------------------------------------------- no market

const plain = (unit: RoundingRule['unit'], step: Rational, places: number): RoundingRule => ({
  unit,
  bands: [above(nearest(step, places, false))],
  source: 'convention of ours: kilojoules and kilocalories whole, grams to a tenth, salt to a hundredth',
});

export const plainRounding: RoundingRules = {
  energyKj: plain('kJ', ONE, 0),
  energyKcal: plain('kcal', ONE, 0),
  fat: plain('g', TENTH, 1),
  saturates: plain('g', TENTH, 1),
  carbohydrate: plain('g', TENTH, 1),
  sugars: plain('g', TENTH, 1),
  fibre: plain('g', TENTH, 1),
  protein: plain('g', TENTH, 1),
  salt: plain('g', n('0.01'), 2),
  alcohol: plain('g', TENTH, 1),
};
