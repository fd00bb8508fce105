/** Energy factors, daily amounts and the shape of declarations. */
import { exact, multiply, parseRational, rational, toExactText, ZERO, type Rational } from '@quern/quantity';
import { annexXiv, atwater, energyByAnnexXiv, SALT_OF_SODIUM } from '../../../packages/views/src/label/energy.js';
import { declarationOf } from '../../../packages/views/src/label/declaration.js';
import { nutritionOf } from '../../../packages/views/src/label/nutrition.js';
import {
  EU_SIGNIFICANT,
  euNutrientReferenceValues,
  euReferenceIntakes,
  usDailyValues,
  type DailyAmount,
} from '../../../packages/views/src/label/reference-intakes.js';
import { doesNotApply, found, rule, type Finding, type Row, type Rule } from '../proof.js';

/** `saturated_fat`, `pantothenic_acid` as this project names them. */
const named: Readonly<Record<string, string>> = { saturated_fat: 'saturates' };
const camel = (name: string): string =>
  named[name] ?? name.replace(/_([a-zA-Z])/g, (_whole, letter: string) => letter.toUpperCase());
const unitOf = (unit: string): string => unit.replace('mcg', 'µg').replace('ug', 'µg');

function amount(row: Row, held: Readonly<Record<string, DailyAmount>>, prefix: string): Finding {
  const one = held[camel(row.key.slice(prefix.length))];
  if (!one) return found(false, 'not held');
  return found(
    toExactText(one.amount) === row.value && one.unit === unitOf(row.unit),
    `${toExactText(one.amount)} ${one.unit}`,
  );
}

/** A figure in two units: `8400 / 2000`, `17 / 4`. */
function two(row: Row, first: Rational, second: Rational): Finding {
  const quern = `${toExactText(first)} / ${toExactText(second)}`;
  return found(row.value === quern, quern);
}

const factors: Readonly<Record<string, keyof typeof annexXiv>> = {
  carbohydrate_except_polyols: 'carbohydrateExceptPolyols',
  organic_acids: 'organicAcids',
};

const factorRule = rule(/^eu\.factor\./, (row) => {
  const name = row.key.slice('eu.factor.'.length);
  const one = annexXiv[factors[name] ?? (name as keyof typeof annexXiv)];
  return two(row, one.kj, one.kcal);
});

const general: Readonly<Record<string, Rational>> = {
  'atwater.general.protein': atwater.protein,
  'atwater.general.carbohydrate': atwater.carbohydrate,
  'atwater.general.fat': atwater.fat,
  'atwater.soluble_nondigestible': atwater.solubleNonDigestible,
  'eu.salt_factor': SALT_OF_SODIUM,
};

/** `fat 10, carb 50 (polyols 5), protein 8, fibre 4, alcohol 1 -> kJ …=1382; kcal …=329`. */
const workedEnergy = rule(['eu.check.energy_example'], (row) => {
  const grams = (part: string): Rational =>
    parseRational(new RegExp(`${part} (\\d+)`).exec(row.value)?.[1] ?? '') ?? ZERO;
  const polyols = grams('polyols');
  const energy = energyByAnnexXiv({
    fat: grams('fat'),
    carbohydrateExceptPolyols: { n: grams('carb').n - polyols.n, d: 1n },
    polyols,
    protein: grams('protein'),
    fibre: grams('fibre'),
    alcohol: grams('alcohol'),
  });
  const published = [/=(\d+); kcal/, /=(\d+)$/].map((one) => one.exec(row.value)?.[1]);
  const quern = [toExactText(energy.kj), toExactText(energy.kcal)];
  return found(published.join() === quern.join(), `${quern[0]} kJ, ${quern[1]} kcal`);
});

const euDeclaration = declarationOf(
  nutritionOf({ components: [], unweighed: [], withheld: false, estimate: false }),
  'eu',
  [],
);
const declared = euDeclaration.rows.map(({ nutrient }) => nutrient as string);

/** What stands in the law's order that Quern declares stands in that order. */
const order = rule(['eu.order'], (row) => {
  const words = row.value.split(/; |, | and /).map((word) => word.replace('of which ', ''));
  const places = declared
    .map((nutrient) => (nutrient.startsWith('energy') ? 'energy' : nutrient))
    .map((nutrient) => words.indexOf(nutrient))
    .filter((place) => place >= 0);
  return found(
    places.length >= 8 && places.every((place, index) => index === 0 || place >= (places[index - 1] ?? 0)),
    declared.join(', '),
  );
});

const mandatory = rule(['eu.mandatory'], (row) => {
  const wanted = row.value.replace(/ per .*/, '').split(', ');
  const missing = wanted.filter(
    (word) => !declared.some((one) => one === word || (word === 'energy' && one === 'energyKj')),
  );
  const per100 = euDeclaration.columns.includes('per 100 g');
  return found(missing.length === 0 && per100, declared.join(', '));
});

const significant = rule(['eu.significant_amount'], (row) => {
  const share = multiply(EU_SIGNIFICANT, rational(100));
  return found(row.value.startsWith(`${toExactText(share)} % NRV per 100 g`), `${toExactText(share)} % in 100 g`);
});

export const rules: readonly Rule[] = [
  rule(/^us\.DV\./, (row) => amount(row, usDailyValues.amounts, 'us.DV.')),
  rule(/^eu\.NRV\./, (row) => amount(row, euNutrientReferenceValues.amounts, 'eu.NRV.')),
  rule(/^eu\.RI\.(?!energy)/, (row) => amount(row, euReferenceIntakes.amounts, 'eu.RI.')),
  rule(['eu.RI.energy'], (row) =>
    two(row, euReferenceIntakes.amounts.energyKj.amount, euReferenceIntakes.amounts.energyKcal.amount),
  ),
  factorRule,
  rule(Object.keys(general), (row) => {
    const held = general[row.key] ?? exact('-1');
    return found(toExactText(held) === row.value, toExactText(held));
  }),
  workedEnergy,
  order,
  mandatory,
  significant,
  doesNotApply(/^us\.DV_old\./, 'daily values before 2016; no old label is printed'),
  doesNotApply(/^us\.RACC\./, 'reference amounts; the serving is the one the writer states, and the statement says so'),
  doesNotApply(['us.calorie_tolerance'], 'a rule for inspectors, who hold an analysis against a printed label'),
  doesNotApply(['eu.protein_factor'], 'turns measured nitrogen into protein; food tables give protein'),
];
