import { rational, type Rational } from '@quern/quantity';
import type { CautionFacts, CautionFood, PotFacts } from './facts.js';

/*
 * A published chart of how long foods keep (USDA FSIS FoodKeeper data), the rows that a home-made dish can be held
 * against. Which row is nearest to a dish is a judgement of ours, and is said beside it. Days; a month is 30 of them.
 */

export interface ChartRow {
  /** Key of the row in the published table. */
  readonly key: string;
  readonly name: string;
  /** The longest published life, in days, by place. Missing: the chart says nothing. */
  readonly pantry?: Rational;
  readonly fridge?: Rational;
  readonly freezer?: Rational;
  /** Whether the dish is of this kind. */
  fits(facts: CautionFacts): boolean;
}

const has = (facts: CautionFacts, test: (food: CautionFood) => boolean): boolean =>
  facts.foods.some((food) => food.inDish && test(food));
const role = (one: CautionFood['roles'][number]) => (food: CautionFood) => food.roles.includes(one);
const dish = (facts: CautionFacts): PotFacts | undefined => facts.pots.at(-1);
const mostlyFlour = (facts: CautionFacts): boolean => {
  const share = dish(facts)?.flour;
  return share !== undefined && share.n * 10n >= share.d * 3n;
};
/** Sweet baked goods: flour, sugar, something that raises them (not a crisp biscuit), and less water than a custard. */
const isCake = (facts: CautionFacts): boolean => {
  const pot = dish(facts);
  if (!pot?.sugars || !pot.water || !cooked(facts)) return false;
  if (pot.leavened !== true && !has(facts, role('egg'))) return false;
  return pot.flour.n * 20n >= pot.flour.d * 3n && pot.sugars.n >= pot.sugars.d * 10n && pot.water.n < pot.water.d * 40n;
};
/** Common practice, no source: from this much water in 100 g on a dish of pulses is a soup or a stew. */
const isSoup = (facts: CautionFacts): boolean => {
  const water = dish(facts)?.water;
  return water !== undefined && water.n >= water.d * 60n;
};
const cooked = (facts: CautionFacts): boolean => facts.foods.some((food) => food.heatings.length > 0);

const days = (count: number): Rational => rational(count);
const months = (count: number): Rational => rational(count * 30);

/** In the order in which they are tried: the most perishable part of a dish decides. */
export const keepingChart: readonly ChartRow[] = [
  {
    key: 'keep.cooked_fish_all',
    name: 'cooked fish',
    fridge: days(4),
    freezer: months(2),
    fits: (facts) => has(facts, role('fish')) && cooked(facts),
  },
  {
    key: 'keep.cooked_poultry_dishes',
    name: 'cooked poultry dishes',
    fridge: days(4),
    freezer: months(6),
    fits: (facts) => has(facts, (food) => food.flags.includes('poultry')) && cooked(facts),
  },
  {
    key: 'keep.soup_stews',
    // The nearest row to any cooked meat: the chart has no other for what is made at home.
    name: 'soups and stews',
    fridge: days(4),
    freezer: months(3),
    fits: (facts) => cooked(facts) && (has(facts, role('meat')) || (has(facts, role('pulse')) && isSoup(facts))),
  },
  {
    key: 'keep.muffin_homemade_including_bran_blueberry_banana_corn_chocolate_chip',
    name: 'home-made muffins',
    pantry: days(7),
    freezer: months(3),
    fits: isCake,
  },
  {
    key: 'keep.quiche',
    name: 'quiche',
    pantry: rational(1, 12),
    fridge: days(5),
    freezer: months(3),
    fits: (facts) =>
      has(facts, role('egg')) &&
      has(facts, role('dairy')) &&
      has(facts, role('flour')) &&
      !mostlyFlour(facts) &&
      cooked(facts),
  },
  {
    key: 'keep.egg_dishes',
    name: 'egg dishes',
    fridge: days(4),
    freezer: months(3),
    fits: (facts) => has(facts, role('egg')) && !mostlyFlour(facts) && !has(facts, role('flour')) && cooked(facts),
  },
  {
    key: 'keep.bread_homemade',
    name: 'home-made bread',
    pantry: days(5),
    fits: (facts) => mostlyFlour(facts) && dish(facts)?.leavened === true,
  },
  {
    key: 'keep.cooked_rice',
    name: 'cooked rice',
    fridge: days(6),
    freezer: months(6),
    fits: (facts) => has(facts, (food) => food.flags.includes('cooked-rice')) && cooked(facts),
  },
  {
    key: 'keep.salad_dressing_vinaigrette_homemade',
    name: 'home-made vinaigrette',
    fridge: days(21),
    fits: (facts) => has(facts, (food) => /vinegar/.test(food.name)) && isOil(facts) && !cooked(facts),
  },
];

function isOil(facts: CautionFacts): boolean {
  const fat = dish(facts)?.fat;
  return fat !== undefined && fat.n >= fat.d * 40n;
}

/** The row of the chart that is nearest to a dish. */
export function nearestRow(facts: CautionFacts): ChartRow | undefined {
  return keepingChart.find((row) => row.fits(facts));
}
