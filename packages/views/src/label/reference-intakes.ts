import { exact, type Rational } from '@quern/quantity';

/*
 * Daily amounts that labels print percentages of. Published tables, kept whole as they are short; amounts in the unit
 * beside them.
 */

export interface DailyAmount {
  readonly amount: Rational;
  readonly unit: 'kJ' | 'kcal' | 'g' | 'mg' | 'µg';
}

export interface IntakeTable<Name extends string> {
  readonly source: string;
  readonly amounts: Readonly<Record<Name, DailyAmount>>;
}

function table<Name extends string>(source: string, rows: Readonly<Record<Name, string>>): IntakeTable<Name> {
  const amounts = {} as Record<Name, DailyAmount>;
  for (const name of Object.keys(rows) as Name[]) {
    const [amount = '', unit = ''] = rows[name].split(' ');
    amounts[name] = { amount: exact(amount), unit: unit as DailyAmount['unit'] };
  }
  return { source, amounts };
}

/** Daily values of the United States for adults and children of four years and over. */
export const usDailyValues = table('21 CFR 101.9(c)(8)(iv) and (c)(9), as of 2016 (81 FR 33742)', {
  fat: '78 g',
  saturates: '20 g',
  cholesterol: '300 mg',
  carbohydrate: '275 g',
  sodium: '2300 mg',
  fibre: '28 g',
  protein: '50 g',
  addedSugars: '50 g',
  vitaminA: '900 µg',
  vitaminC: '90 mg',
  calcium: '1300 mg',
  iron: '18 mg',
  vitaminD: '20 µg',
  vitaminE: '15 mg',
  vitaminK: '120 µg',
  thiamin: '1.2 mg',
  riboflavin: '1.3 mg',
  niacin: '16 mg',
  vitaminB6: '1.7 mg',
  folate: '400 µg',
  vitaminB12: '2.4 µg',
  biotin: '30 µg',
  pantothenicAcid: '5 mg',
  phosphorus: '1250 mg',
  iodine: '150 µg',
  magnesium: '420 mg',
  zinc: '11 mg',
  selenium: '55 µg',
  copper: '0.9 mg',
  manganese: '2.3 mg',
  chromium: '35 µg',
  molybdenum: '45 µg',
  chloride: '2300 mg',
  potassium: '4700 mg',
  choline: '550 mg',
});

/** Reference intakes of an average adult. */
export const euReferenceIntakes = table('Regulation (EU) No 1169/2011, Annex XIII, Part B', {
  energyKj: '8400 kJ',
  energyKcal: '2000 kcal',
  fat: '70 g',
  saturates: '20 g',
  carbohydrate: '260 g',
  sugars: '90 g',
  protein: '50 g',
  salt: '6 g',
});

/** Nutrient reference values for vitamins and minerals. */
export const euNutrientReferenceValues = table('Regulation (EU) No 1169/2011, Annex XIII, Part A', {
  vitaminA: '800 µg',
  vitaminD: '5 µg',
  vitaminE: '12 mg',
  vitaminK: '75 µg',
  vitaminC: '80 mg',
  thiamin: '1.1 mg',
  riboflavin: '1.4 mg',
  niacin: '16 mg',
  vitaminB6: '1.4 mg',
  folicAcid: '200 µg',
  vitaminB12: '2.5 µg',
  biotin: '50 µg',
  pantothenicAcid: '6 mg',
  potassium: '2000 mg',
  chloride: '800 mg',
  calcium: '800 mg',
  phosphorus: '700 mg',
  magnesium: '375 mg',
  iron: '14 mg',
  zinc: '10 mg',
  copper: '1 mg',
  manganese: '2 mg',
  fluoride: '3.5 mg',
  selenium: '55 µg',
  chromium: '40 µg',
  molybdenum: '50 µg',
  iodine: '150 µg',
});

/** A vitamin or mineral may be declared from this share of its reference value in 100 g on (Annex XIII, Part A, point 2). */
export const EU_SIGNIFICANT: Rational = exact('0.15');

/** Daily values of Canada. */
export const caDailyValues = table('Food and Drug Regulations (Canada), tables of daily values of 2016, from memory', {
  fat: '75 g',
  saturatesAndTrans: '20 g',
  fibre: '28 g',
  sugars: '100 g',
  cholesterol: '300 mg',
  sodium: '2300 mg',
  potassium: '3400 mg',
  calcium: '1300 mg',
  iron: '18 mg',
});
