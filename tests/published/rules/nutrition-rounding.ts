/** How markets round what they print: each published value of a rule, put to the rule that Quern holds as data. */
import { divide, exact, multiply, rational, type Rational } from '@quern/quantity';
import { energyByGeneralFactors, saltOfSodium } from '../../../packages/views/src/label/energy.js';
import { usDailyValues } from '../../../packages/views/src/label/reference-intakes.js';
import { printBy, type RoundingRule } from '../../../packages/views/src/label/rounding.js';
import {
  euRounding,
  usPercent,
  usRounding,
  usVitaminPercent,
} from '../../../packages/views/src/label/rounding-rules.js';
import { found, rule, type Finding, type Row, type Rule } from '../proof.js';

const rulesByName: Readonly<Record<string, RoundingRule | undefined>> = {
  'us.calories': usRounding.energyGeneral,
  'us.total_fat': usRounding.fat,
  'us.saturated_fat': usRounding.saturates,
  'us.trans_fat': usRounding.trans,
  'us.cholesterol': usRounding.cholesterol,
  'us.sodium': usRounding.sodium,
  'us.potassium(1993 rule)': usRounding.potassium,
  'us.total_carbohydrate': usRounding.carbohydrateTotal,
  'us.dietary_fibre': usRounding.fibre,
  'us.total_sugars': usRounding.sugars,
  'us.added_sugars': usRounding.addedSugars,
  'us.protein': usRounding.protein,
  'us.vitamins_minerals_pct': usVitaminPercent,
  'eu.energy_kJ': euRounding.energyKj,
  'eu.energy_kcal': euRounding.energyKcal,
  'eu.fat': euRounding.fat,
  'eu.carbohydrate': euRounding.carbohydrate,
  'eu.sugars': euRounding.sugars,
  'eu.protein': euRounding.protein,
  'eu.fibre': euRounding.fibre,
  // Starch and polyols share the rule of carbohydrate; Quern declares neither, and holds the rule once.
  'eu.polyols': euRounding.carbohydrate,
  'eu.starch': euRounding.carbohydrate,
  'eu.saturates': euRounding.saturates,
  'eu.monounsaturates': euRounding.monounsaturates,
  'eu.polyunsaturates': euRounding.polyunsaturates,
  'eu.salt': euRounding.salt,
};

/** The forms that a published value allows: `0 or <0.5`, `0 (or 5)`, `tie: rule silent (half-up gives 10)`. */
function allowed(printed: string): readonly string[] {
  const tie = /half-up gives ([\d.]+)/.exec(printed)?.[1];
  if (tie !== undefined) return [tie];
  const bare = printed
    .replace(/^.*->/, '')
    .replace(/\(or ([^)]*)\)/g, ', $1')
    .replace(/\([^)]*\)/g, '');
  return bare.match(/less than [\d.]+|<[\d.]+|[\d.]+/g) ?? [];
}

function compare(row: Row, text: string): Finding {
  return found(allowed(row.value).includes(text), text);
}

const nameOf = (key: string): string => key.slice(0, key.indexOf('@'));
const rawOf = (key: string): string => key.slice(key.indexOf('@') + 1);

const byValue = rule(/^(?!us\.pctDV|us\.label|eu\.salt_from_sodium|eu\.vitamins)/, (row) => {
  const one = rulesByName[nameOf(row.key)];
  return one ? compare(row, printBy(one, exact(rawOf(row.key)))) : found(false, 'no rule of that name');
});

const dailyNames: Readonly<Record<string, keyof typeof usDailyValues.amounts>> = {
  fat: 'fat',
  saturated: 'saturates',
  sodium: 'sodium',
  carbohydrate: 'carbohydrate',
  fibre: 'fibre',
  added_sugars: 'addedSugars',
  vitamin_D: 'vitaminD',
  calcium: 'calcium',
  iron: 'iron',
  potassium: 'potassium',
};
const vitamins = new Set(['vitamin_D', 'calcium', 'iron', 'potassium']);

/** Lines of the FDA's sample label: so much of a nutrient is printed as so many per cent. */
const percentOfDaily = rule(/^us\.pctDV\./, (row) => {
  const nutrient = nameOf(row.key).slice('us.pctDV.'.length);
  const daily = dailyNames[nutrient];
  const amount = /^([\d.]+) /.exec(rawOf(row.key))?.[1];
  if (!daily || amount === undefined) return found(false, 'no daily value of that name');
  const percent = divide(multiply(exact(amount), rational(100)), usDailyValues.amounts[daily].amount);
  return compare(row, printBy(vitamins.has(nutrient) ? usVitaminPercent : usPercent, percent));
});

const sampleCalories = rule(/^us\.label\.sample\.calories@/, (row) => {
  const gramsOf = (part: string): Rational =>
    exact(new RegExp(`([\\d.]+) g ${part}`).exec(rawOf(row.key))?.[1] ?? '-1');
  const energy = energyByGeneralFactors({
    protein: gramsOf('protein'),
    carbohydrate: gramsOf('carb'),
    fat: gramsOf('fat'),
  });
  const one = usRounding.energyGeneral;
  return one ? compare(row, printBy(one, energy)) : found(false, 'no rule for calories');
});

const saltFromSodium = rule(/^eu\.salt_from_sodium@/, (row) => {
  const sodium = /sodium ([\d.]+) g/.exec(row.key)?.[1] ?? '-1';
  const salt = saltOfSodium(multiply(exact(sodium), rational(1000)));
  const one = euRounding.salt;
  return one ? compare(row, printBy(one, salt)) : found(false, 'no rule for salt');
});

const significantFigures = rule(/^eu\.vitamins@/, (row) => {
  const wanted = /^(\d) significant figures/.exec(row.value)?.[1];
  const held = row.key.includes('Ca')
    ? [euRounding.calcium, euRounding.potassium]
    : [euRounding.iron, euRounding.vitaminD];
  const figures = held.map((one) => {
    const manner = one?.bands[0]?.manner;
    return manner?.kind === 'figures' ? String(manner.figures) : 'none';
  });
  return found(
    figures.every((count) => count === wanted),
    `${figures.join(', ')} significant figures`,
  );
});

export const rules: readonly Rule[] = [byValue, percentOfDaily, sampleCalories, saltFromSodium, significantFigures];
