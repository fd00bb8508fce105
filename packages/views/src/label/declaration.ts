import { add, compare, divide, multiply, rational, HUNDRED, type Rational } from '@quern/quantity';
import type { LabelNutrient, Market } from './nutrient-list.js';
import type { Figure, Nutrition } from './nutrition.js';
import {
  caDailyValues,
  EU_SIGNIFICANT,
  euNutrientReferenceValues,
  euReferenceIntakes,
  usDailyValues,
  type DailyAmount,
} from './reference-intakes.js';
import { printBy, type RoundingRule } from './rounding.js';
import {
  auRounding,
  caPercent,
  caRounding,
  euRounding,
  plainRounding,
  usPercent,
  usRounding,
  usVitaminPercent,
  type RoundingRules,
} from './rounding-rules.js';

/** A figure as a market prints it. */
export interface Printed {
  /** By the market's rule, with its unit: '12 g', 'less than 1 g'. Undefined: not known. */
  readonly text: string | undefined;
  /** The two ends as printed, where the recipe's ranges change what is printed. */
  readonly between?: readonly [string, string];
  /** Something has no figure for this nutrient, and it could change what is printed. */
  readonly atLeast: boolean;
}

export interface DeclarationRow {
  readonly nutrient: LabelNutrient;
  readonly name: string;
  /** 1 for 'of which' lines. */
  readonly level: 0 | 1 | 2;
  readonly values: readonly Printed[];
  /** Share of a day's amount, for the columns that have one. */
  readonly percents: readonly (Printed | undefined)[];
  /** Foods without a figure that could change what is printed in some column. */
  readonly missing: readonly string[];
}

/** The nutrition statement of one market, ready to be laid out; nothing in it is left to compute. */
export interface Declaration {
  readonly market: Market;
  readonly heading: string;
  /** What each column of values is for: 'per 100 g', 'per slice of 52 g'. */
  readonly columns: readonly string[];
  /** The heading of the percentages; missing when there are none. */
  readonly percentHeading?: string;
  readonly rows: readonly DeclarationRow[];
  readonly notes: readonly string[];
}

/** The parts a dish is declared in, besides 100 g. */
export interface PortionSize {
  /** 'slice', 'loaf', 'serving'. */
  readonly name: string;
  /** How many the dish gives. */
  readonly count: Rational;
}

interface RowPlan {
  readonly nutrient: LabelNutrient;
  readonly name: string;
  readonly level: 0 | 1 | 2;
  /** Share of which amount, and rounded how. */
  readonly daily?: DailyAmount;
  readonly percentRule?: RoundingRule;
  /** A voluntary line, shown only if there is enough of it in 100 g. */
  readonly fromPer100?: Rational;
}

interface Plan {
  readonly heading: string;
  readonly rounding: RoundingRules;
  readonly per100: boolean;
  readonly percentHeading?: string;
  readonly rows: readonly RowPlan[];
  readonly notes: readonly string[];
}

const row = (nutrient: LabelNutrient, name: string, level: 0 | 1 | 2 = 0, more: Partial<RowPlan> = {}): RowPlan => ({
  nutrient,
  name,
  level,
  ...more,
});

const eu = euReferenceIntakes.amounts;
const share = (daily: DailyAmount): Partial<RowPlan> => ({ daily, percentRule: usPercent });

function significantOnly(name: 'vitaminD' | 'calcium' | 'iron' | 'potassium'): Partial<RowPlan> {
  const value = euNutrientReferenceValues.amounts[name];
  return { ...share(value), fromPer100: multiply(value.amount, EU_SIGNIFICANT) };
}

const CARBOHYDRATE_WITHOUT_FIBRE =
  'Carbohydrate is without fibre; where the source gives it by difference, the fibre was taken off.';
const CARBOHYDRATE_WITH_FIBRE =
  'Total carbohydrate is by difference and holds the fibre; where the source gives it without, the fibre was added.';

const euPlan: Plan = {
  heading: 'Nutrition declaration',
  rounding: euRounding,
  per100: true,
  percentHeading:
    'of the reference intake of an average adult (8400 kJ / 2000 kcal); for vitamins and minerals, of the nutrient reference value',
  // Order of Annex XV; the seven of Article 30(1), and fibre, which may stand with them.
  rows: [
    row('energyKj', 'Energy', 0, share(eu.energyKj)),
    row('energyKcal', 'Energy', 0, share(eu.energyKcal)),
    row('fat', 'Fat', 0, share(eu.fat)),
    row('saturates', 'of which saturates', 1, share(eu.saturates)),
    row('carbohydrate', 'Carbohydrate', 0, share(eu.carbohydrate)),
    row('sugars', 'of which sugars', 1, share(eu.sugars)),
    row('fibre', 'Fibre'),
    row('protein', 'Protein', 0, share(eu.protein)),
    row('salt', 'Salt', 0, share(eu.salt)),
    row('vitaminD', 'Vitamin D', 0, significantOnly('vitaminD')),
    row('potassium', 'Potassium', 0, significantOnly('potassium')),
    row('calcium', 'Calcium', 0, significantOnly('calcium')),
    row('iron', 'Iron', 0, significantOnly('iron')),
  ],
  notes: [
    'Energy by the factors of Annex XIV of Regulation (EU) No 1169/2011, from unrounded figures.',
    'Salt is all sodium, times 2.5.',
    CARBOHYDRATE_WITHOUT_FIBRE,
  ],
};

const us = usDailyValues.amounts;
const mineral = (daily: DailyAmount): Partial<RowPlan> => ({ daily, percentRule: usVitaminPercent });

const usPlan: Plan = {
  heading: 'Nutrition per serving, United States figures',
  rounding: usRounding,
  per100: false,
  percentHeading: 'of the daily value',
  rows: [
    row('energyGeneral', 'Calories'),
    row('fat', 'Total fat', 0, share(us.fat)),
    row('saturates', 'Saturated fat', 1, share(us.saturates)),
    row('trans', 'Trans fat', 1),
    row('cholesterol', 'Cholesterol', 0, share(us.cholesterol)),
    row('sodium', 'Sodium', 0, share(us.sodium)),
    row('carbohydrateTotal', 'Total carbohydrate', 0, share(us.carbohydrate)),
    row('fibre', 'Dietary fiber', 1, share(us.fibre)),
    row('sugars', 'Total sugars', 1),
    row('addedSugars', 'of which added sugars', 2, share(us.addedSugars)),
    row('protein', 'Protein'),
    row('vitaminD', 'Vitamin D', 0, mineral(us.vitaminD)),
    row('calcium', 'Calcium', 0, mineral(us.calcium)),
    row('iron', 'Iron', 0, mineral(us.iron)),
    row('potassium', 'Potassium', 0, mineral(us.potassium)),
  ],
  notes: [
    'Calories by the general factors 4, 4 and 9 (21 CFR 101.9(c)(1)(i)(B)), and 7 for alcohol, from unrounded figures.',
    'The daily values are those for adults and children of four years and over, on 2,000 calories a day.',
    CARBOHYDRATE_WITH_FIBRE,
    'Added sugars are the sugars of what is itself a sugar, a syrup or honey; a sweetened bought food is not split.',
    'The serving is the one written in the recipe; the reference amounts of 21 CFR 101.12 may ask for another.',
  ],
};

const ca = caDailyValues.amounts;
const caShare = (daily: DailyAmount): Partial<RowPlan> => ({ daily, percentRule: caPercent });

const caPlan: Plan = {
  heading: 'Nutrition per serving, Canadian figures',
  rounding: caRounding,
  per100: false,
  percentHeading: 'of the daily value',
  rows: [
    row('energyGeneral', 'Calories'),
    row('fat', 'Fat', 0, caShare(ca.fat)),
    row('saturates', 'Saturated', 1),
    row('trans', '+ Trans', 1),
    row('carbohydrateTotal', 'Carbohydrate'),
    row('fibre', 'Fibre', 1, caShare(ca.fibre)),
    row('sugars', 'Sugars', 1, caShare(ca.sugars)),
    row('protein', 'Protein'),
    row('cholesterol', 'Cholesterol'),
    row('sodium', 'Sodium', 0, caShare(ca.sodium)),
    row('potassium', 'Potassium', 0, caShare(ca.potassium)),
    row('calcium', 'Calcium', 0, caShare(ca.calcium)),
    row('iron', 'Iron', 0, caShare(ca.iron)),
  ],
  notes: [
    'Rounding and daily values of the Canadian regulations are held from memory: check them against the Food and Drug Regulations before you print.',
    'A Canadian table gives one percentage for saturated and trans fat together; it is left out here.',
    CARBOHYDRATE_WITH_FIBRE,
  ],
};

const auPlan: Plan = {
  heading: 'Nutrition information, Australia and New Zealand figures',
  rounding: auRounding,
  per100: true,
  rows: [
    row('energyKj', 'Energy'),
    row('protein', 'Protein'),
    row('fat', 'Fat, total'),
    row('saturates', 'saturated', 1),
    row('carbohydrate', 'Carbohydrate'),
    row('sugars', 'sugars', 1),
    row('fibre', 'Dietary fibre'),
    row('sodium', 'Sodium'),
  ],
  notes: [
    'The way of printing is held from memory: check it against Standard 1.2.8 before you print.',
    'Energy by the factors 17, 37, 29 and 8 kJ a gram, from unrounded figures.',
    CARBOHYDRATE_WITHOUT_FIBRE,
  ],
};

const plainPlan: Plan = {
  heading: 'Nutrition',
  rounding: plainRounding,
  per100: true,
  rows: [
    row('energyKj', 'Energy'),
    row('energyKcal', 'Energy'),
    row('fat', 'Fat'),
    row('saturates', 'of which saturates', 1),
    row('carbohydrate', 'Carbohydrate'),
    row('sugars', 'of which sugars', 1),
    row('fibre', 'Fibre'),
    row('protein', 'Protein'),
    row('salt', 'Salt'),
    row('alcohol', 'Alcohol'),
  ],
  notes: ['Rounded by a convention of ours, not by any market.', CARBOHYDRATE_WITHOUT_FIBRE],
};

const plans: Readonly<Record<Market, Plan>> = {
  eu: euPlan,
  uk: euPlan,
  us: usPlan,
  ca: caPlan,
  au: auPlan,
  jp: plainPlan,
  codex: plainPlan,
  none: plainPlan,
};

const NOT_A_FORM = 'Plain layout, not an official form.';

/** The declaration of a market, per 100 g where the market asks for it, and for each portion. */
export function declarationOf(nutrition: Nutrition, market: Market, portions: readonly PortionSize[]): Declaration {
  const plan = plans[market];
  const columns: {
    readonly name: string;
    readonly percents: boolean;
    figure(nutrient: LabelNutrient): Figure | undefined;
  }[] = [];
  if (plan.per100 || portions.length === 0) {
    columns.push({
      name: 'per 100 g',
      percents: portions.length === 0,
      figure: (nutrient) => nutrition.per100(nutrient),
    });
  }
  for (const portion of portions) {
    columns.push({
      name: portionName(nutrition, portion),
      percents: true,
      figure: (nutrient) => nutrition.perPart(nutrient, portion.count),
    });
  }
  const rows: DeclarationRow[] = [];
  for (const one of plan.rows) {
    if (one.fromPer100 && !reaches(nutrition.per100(one.nutrient), one.fromPer100)) continue;
    const rule = plan.rounding[one.nutrient];
    if (!rule) continue;
    const figures = columns.map((column) => column.figure(one.nutrient));
    const values = figures.map((figure) => printFigure(rule, figure));
    rows.push({
      nutrient: one.nutrient,
      name: one.name,
      level: one.level,
      values,
      percents: columns.map((column, index) => (column.percents ? percentOf(one, figures[index]) : undefined)),
      missing: [
        ...new Set(figures.flatMap((figure, index) => (values[index]?.atLeast ? (figure?.missing ?? []) : []))),
      ],
    });
  }
  return {
    market,
    heading: plan.heading,
    columns: columns.map((column) => column.name),
    ...(plan.percentHeading !== undefined && { percentHeading: plan.percentHeading }),
    rows,
    notes: [NOT_A_FORM, ...plan.notes],
  };
}

function reaches(figure: Figure | undefined, least: Rational): boolean {
  return figure !== undefined && compare(figure.amount.usual, least) >= 0;
}

function portionName(nutrition: Nutrition, portion: PortionSize): string {
  if (!nutrition.weight) return `per ${portion.name}`;
  return `per ${portion.name} of ${grams(divide(nutrition.weight.usual, portion.count))}`;
}

/** A weight for reading: to a gram, below ten grams to a tenth. */
export function grams(weight: Rational): string {
  const rule: RoundingRule = {
    unit: 'g',
    bands: [
      { to: rational(10), including: false, manner: { kind: 'nearest', step: rational(1, 10), places: 1, trim: true } },
      { including: false, manner: { kind: 'nearest', step: rational(1), places: 0, trim: true } },
    ],
    source: 'convention of ours',
  };
  return `${printBy(rule, weight)} g`;
}

function percentOf(plan: RowPlan, figure: Figure | undefined): Printed | undefined {
  if (!plan.daily || !plan.percentRule) return undefined;
  if (!figure) return printFigure(plan.percentRule, undefined);
  const whole = divide(HUNDRED, plan.daily.amount);
  const times = (value: Rational): Rational => multiply(value, whole);
  return printFigure(plan.percentRule, {
    amount: { low: times(figure.amount.low), usual: times(figure.amount.usual), high: times(figure.amount.high) },
    more: figure.more && times(figure.more),
    missing: figure.missing,
  });
}

/** A figure by a rule; 'at least' only where what is missing could change the print. */
export function printFigure(rule: RoundingRule, figure: Figure | undefined): Printed {
  if (!figure) return { text: undefined, atLeast: false };
  const print = (value: Rational): string => `${printBy(rule, value)} ${rule.unit}`;
  const text = print(figure.amount.usual);
  const low = print(figure.amount.low);
  const high = print(figure.amount.high);
  const most = figure.more && add(figure.amount.usual, figure.more);
  return {
    text,
    ...(low !== high && { between: [low, high] as const }),
    atLeast: most === undefined || print(most) !== text,
  };
}
