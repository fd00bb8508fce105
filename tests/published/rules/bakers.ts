/**
 * Worked baker's formulas: each is a recipe under formulas/, and every weight and percentage printed in the source is compared
 * with what the ledger of that recipe says. Sources: tests/published/bakers.tsv.
 */
import { massOf, type Formula, type InItem } from '@quern/compiler';
import { divide, exact, multiply, rational, sum, toDecimal, type Rational } from '@quern/quantity';
import { compileText, formulaOf } from '../compile-text.js';
import { agreement, type Figures } from '../printed.js';
import { doesNotApply, found, rule, type Row, type Rule } from '../proof.js';
import { rules as tins } from './tins.js';

/** What the names in the keys are called in the formulas. */
const foodNames: Readonly<Record<string, string>> = {
  flour: 'bread flour',
  white_flour: 'bread flour',
  bread_flour: 'bread flour',
  whole_rye: 'whole rye flour',
  whole_wheat: 'whole wheat flour',
  salt: 'fine salt',
  sugar: 'white sugar',
  yeast: 'fresh yeast',
  yeast_compressed: 'fresh yeast',
  dry_yeast: 'dried yeast',
  instant_yeast: 'instant yeast',
  instant_dry_yeast: 'instant yeast',
  olive_oil: 'olive oil',
  milk_solids: 'milk powder',
  dark_beer: 'dark beer',
  rye_starter: 'rye starter',
  rye_levain: 'rye levain',
  liquid_levain: 'liquid levain',
  rye_sour: 'rye sour',
  mature_culture: 'mature culture',
  levain_culture: 'levain culture',
  rye_culture: 'rye culture',
};

const nameOf = (key: string) => foodNames[key] ?? key;

/** The in lines of a make. */
function itemsOf(formula: Formula, make: string): readonly InItem[] {
  const found = formula.makes.find(({ name }) => name === make);
  if (!found) throw new Error(`${formula.title} makes no ${make}`);
  return found.items.filter((item) => item.kind === 'in');
}

function itemName({ source }: InItem): string {
  if (source.kind === 'food') return source.food.name;
  return source.kind === 'product' ? source.product : source.kind === 'culture' ? source.culture : source.class;
}

function known(grams: Rational | undefined): Rational {
  if (grams === undefined) throw new Error('a weight is not known');
  return grams;
}

/** Weight of what one line puts in, and its share of the flour lines of the same make. */
function lineFigures(formula: Formula, make: string, name: string, flours: readonly string[]): Figures {
  const items = itemsOf(formula, make);
  const weightOf = (wanted: string) => known(items.find((item) => itemName(item) === wanted)?.weighed.grams);
  const base = sum(flours.map(weightOf));
  const grams = weightOf(name);
  return { grams, percent: percentOf(grams, base) };
}

/** Weight of all that goes into a make. */
function makeFigures(formula: Formula, make: string, flours: readonly string[]): Figures {
  const items = itemsOf(formula, make);
  const grams = sum(items.map(({ weighed }) => known(weighed.grams)));
  const base = sum(items.filter((item) => flours.includes(itemName(item))).map(({ weighed }) => known(weighed.grams)));
  return { grams, percent: percentOf(grams, base) };
}

/** Weight and baker's percentage of a food in the whole formula. */
function overallFigures(formula: Formula, name: string): Figures {
  const flour = flourOf(formula);
  const part = flour.formula.find(({ food }) => food.name === name);
  if (!part) throw new Error(`${formula.title} has no ${name}`);
  return { grams: part.grams, percent: part.percent };
}

function totalFigures(formula: Formula): Figures {
  const flour = flourOf(formula);
  return {
    grams: sum(flour.formula.map(({ grams }) => grams)),
    percent: sum(flour.formula.map(({ percent }) => percent)),
  };
}

function flourOf(formula: Formula): NonNullable<Formula['flour']> {
  if (!formula.flour) throw new Error(`${formula.title} has no flour`);
  return formula.flour;
}

const percentOf = (part: Rational, whole: Rational) => multiply(divide(part, whole), rational(100));

const lastOf = (row: Row) => row.key.split('.').at(-1) ?? '';

/** The rows under a prefix that name a food, compared with the whole formula; `total` is its sum. */
function overall(prefix: string, file: string, places?: Rational): Rule {
  return rule(under(prefix), (row) => {
    const formula = formulaOf(file);
    const last = lastOf(row);
    return agreement(row, last === 'total' ? totalFigures(formula) : overallFigures(formula, nameOf(last)), places);
  });
}

/** The rows of one make, line by line; percentages are on its own flours. `total` is all that goes in. */
function ofMake(prefix: string, file: string, make: string, flours: readonly string[], places?: Rational): Rule {
  return rule(under(prefix), (row) => {
    const formula = formulaOf(file);
    const last = lastOf(row);
    if (last === 'total') return agreement(row, makeFigures(formula, make, flours), places);
    const name = last === 'culture' ? `${make === 'rye sour' ? 'rye' : 'levain'} culture` : nameOf(last);
    return agreement(row, lineFigures(formula, make, name, flours), places);
  });
}

/** Keys under a prefix that name a food or the total, not another sum of the formula. */
const under = (prefix: string) =>
  new RegExp(
    `^${prefix.replaceAll('.', '\\.')}\\.(?!total_|check_|divisor|water_23lb|prefermented|liquid_levain$)[a-z_]+$`,
  );

/** One figure computed by hand from a formula. */
function one(key: string, figures: () => Figures, places?: Rational): Rule {
  return rule([key], (row) => agreement(row, figures(), places));
}

/** A percentage that a source prints last: `25 of 250 = 10`. */
function lastPercent(key: string, percent: () => Rational): Rule {
  return rule([key], (row) => {
    const digits = /(?:= |^)(\d+(?:\.\d+)?)(?: %)?(?: \(.*\))?$/.exec(row.value)?.[1];
    if (digits === undefined) throw new Error(`no percentage in ${key}`);
    return agreement({ ...row, value: `${digits} %` }, { percent: percent() });
  });
}

const times100 = (share: Rational) => multiply(share, rational(100));
const two = rational(2);
const oneAndHalf = rational(3, 2);

/** The weights of one batch of three that the source prints beside each other: 10 kg, 20 lb and 2 lb of flour. */
const batches = [
  rational(1),
  divide(exact('9071.8474'), rational(10_000)),
  divide(exact('907.18474'), rational(10_000)),
];

function inBatches(keys: RegExp, figuresOf: (last: string) => Figures): Rule {
  return rule(keys, (row) => {
    const figures = figuresOf(lastOf(row));
    const [weights = '', percent] = row.value.split(' = ');
    const findings = weights.split(' / ').map((weight, index) => {
      const grams = figures.grams && multiply(figures.grams, batches[index] ?? rational(1));
      return agreement({ ...row, value: weight }, grams ? { grams } : {});
    });
    if (percent !== undefined) findings.push(agreement({ ...row, value: percent }, figures));
    return (
      findings.find(({ kind }) => kind === 'failed') ??
      agreement({ ...row, value: weights.split(' / ')[0] ?? '' }, figures)
    );
  });
}

/** Weight of what stands in the pot when all is done. */
function weightAfter(text: string): Rational {
  const { formulas, diagnostics } = compileText(text);
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(`does not compile: ${errors.map(({ code }) => code).join(', ')}`);
  return known(formulas[0]?.dishGrams);
}

const baked = (dough: number, percent: string) =>
  weightAfter(
    `recipe Bread\nmake bread\n  ${dough} g water\n  oven 20 min at 220 C: Bake.\n  lose ${percent} % as water\n`,
  );

/** How much of the culture's own flour and water is in a pot, by food. */
function fromCulture(formula: Formula, food: string): Rational {
  const parts = formula.makes.at(-1)?.pot.parts ?? [];
  return sum(parts.filter((part) => part.culture !== undefined && part.food.name === food).map(massOf));
}

const written = 'the baker writes it; Quern takes it as given';

export const rules: readonly Rule[] = [
  // A: percentages of 40 lb of flour.
  overall('A.pizza', 'a-pizza'),
  lastPercent('A.pizza.total_pct', () => known(totalFigures(formulaOf('a-pizza')).percent)),
  rule(['A.pizza.total_oz'], (row) =>
    agreement({ ...row, value: `${row.value} oz` }, totalFigures(formulaOf('a-pizza'))),
  ),
  // B: everything in per cent, the flour from the yield. The sheet multiplies the flour that it has rounded.
  overall('B.baguette', 'b-baguette', two),
  one('B.baguette.total_dough', () => totalFigures(formulaOf('b-baguette'))),
  lastPercent('B.baguette.total_pct', () => known(totalFigures(formulaOf('b-baguette')).percent)),
  rule(['B.baguette.check_total'], (row) => agreement(row, totalFigures(formulaOf('b-baguette')), rational(3))),
  // C: the same dough with instant yeast.
  overall('C.slides', 'c-slides'),
  lastPercent('C.slides.total_pct', () => known(totalFigures(formulaOf('c-slides')).percent)),
  rule(['C.slides.divisor'], (row) => {
    const divisor = divide(known(totalFigures(formulaOf('c-slides')).percent), rational(100));
    return found(toDecimal(divisor, 5) === '1.62125' && row.value.includes('1.62125'), toDecimal(divisor, 5));
  }),
  hydrationOf('C.slides.water_23lb_of_40', '40 lb bread flour\n  23 lb water'),
  // D: from percentages to weights, and back.
  overall('D.lean', 'd-lean'),
  overall('D.reverse', 'd-reverse'),
  // E: a poolish.
  ofMake('E.poolish', 'e-poolish', 'poolish', ['bread flour']),
  ofMake('E.final_dough', 'e-poolish', 'dough', ['bread flour']),
  overall('E.overall', 'e-poolish'),
  lastPercent('E.overall.prefermented_flour', () => times100(flourOf(formulaOf('e-poolish')).prefermented)),
  // F: a rye levain; the total adds weights that are rounded to a gram.
  ofMake('F.rye_levain', 'f-rye', 'rye levain', ['whole rye flour']),
  ofMake('F.final_dough', 'f-rye', 'dough', ['whole rye flour', 'bread flour'], oneAndHalf),
  overall('F.overall', 'f-rye', oneAndHalf),
  lastPercent('F.overall.prefermented_flour', () => times100(flourOf(formulaOf('f-rye')).prefermented)),
  doesNotApply(['F.ddt', 'F.divide'], written),
  // G: two leavens and beer; weights are rounded to a gram before they are added.
  ofMake('G.liquid_levain', 'g-miche', 'liquid levain', ['bread flour'], two),
  ofMake('G.rye_sour', 'g-miche', 'rye sour', ['whole rye flour'], two),
  ofMake('G.final_dough', 'g-miche', 'dough', ['bread flour'], two),
  one(
    'G.final_dough.liquid_levain',
    () => lineFigures(formulaOf('g-miche'), 'dough', 'liquid levain', ['bread flour']),
    two,
  ),
  overall('G.overall', 'g-miche', two),
  lastPercent('G.overall.prefermented_flour', () => times100(flourOf(formulaOf('g-miche')).prefermented)),
  // H: a culture that is given back.
  inBatches(/^H\.overall\./, (last) =>
    last === 'total' ? totalFigures(formulaOf('h-sourdough')) : overallFigures(formulaOf('h-sourdough'), nameOf(last)),
  ),
  inBatches(/^H\.levain_build\./, (last) =>
    last === 'total'
      ? makeFigures(formulaOf('h-sourdough'), 'levain', ['bread flour'])
      : lineFigures(formulaOf('h-sourdough'), 'levain', nameOf(last), ['bread flour']),
  ),
  inBatches(/^H\.final_dough\.(?!liquid_levain)/, (last) =>
    lineFigures(formulaOf('h-sourdough'), 'dough', nameOf(last), ['bread flour']),
  ),
  rule(['H.final_dough.liquid_levain'], (row) => {
    const { grams } = lineFigures(formulaOf('h-sourdough'), 'dough', 'levain', ['bread flour']);
    const [pounds = '', kilograms = ''] = row.value.split(', ');
    const inPounds = agreement({ ...row, value: pounds }, { grams: multiply(known(grams), batches[1] ?? rational(1)) });
    const inKilograms = agreement({ ...row, value: kilograms.replace(/ \(.*/, '') }, { grams: known(grams) });
    return inPounds.kind === 'failed' ? inPounds : inKilograms;
  }),
  lastPercent('H.prefermented_flour', () => times100(flourOf(formulaOf('h-sourdough')).prefermented)),
  // I, J, L: what a leaven adds to the flour and to the water.
  lastPercent('I.hydration.leaven_not_counted', () => times100(flourOf(formulaOf('i-country-apart')).hydration)),
  lastPercent('I.hydration.leaven_counted', () => times100(flourOf(formulaOf('i-country')).hydration)),
  rule(['J.levain.split'], ({ value }) => {
    const flour = toDecimal(fromCulture(formulaOf('j-rye'), 'whole rye flour'), 2);
    const water = toDecimal(fromCulture(formulaOf('j-rye'), 'water'), 2);
    return found(value.includes(`exact ${flour} + ${water}`), `${flour} g flour + ${water} g water`);
  }),
  lastPercent('J.hydration.counted', () => times100(flourOf(formulaOf('j-rye')).hydration)),
  lastPercent('L.fermented_flour', () => times100(flourOf(formulaOf('l-inoculation')).prefermented)),
  lastPercent('L.levain.hydration', () => times100(flourOf(formulaOf('l-inoculation')).hydration)),
  // What is lost in baking is lost from the dough, not added to the bread.
  rule(['loss.convention_check'], ({ value }) => {
    const dough = toDecimal(known(totalFigures(formulaOf('loss-anchor')).grams), 1);
    return found(value.includes(`= ${dough} g dough`), `${dough} g dough`);
  }),
  rule(['loss.example.bun'], () => {
    const grams = baked(84, '10.7');
    return found(toDecimal(grams, 0) === '75', `84 g less 10.7 % is ${toDecimal(grams, 2)} g`);
  }),
  rule(['loss.example.loaf'], () => {
    const grams = baked(314, '15');
    return found(toDecimal(grams, 0) === '267', `314 g less 15.0 % is ${toDecimal(grams, 2)} g`);
  }),
  doesNotApply(/^loss\.(scaling|bakeout|range)/, `usual losses in the oven; ${written}`),
  ...tins,
  doesNotApply(
    /^DDT\./,
    'the temperature of the water for a wanted dough temperature; Quern holds temperatures, it does not work them out',
  ),
];

/** The hydration of two lines. */
function hydrationOf(key: string, lines: string): Rule {
  return lastPercent(key, () => {
    const [formula] = compileText(
      `recipe Dough\nmake dough\n  ${lines}\n  hands 5 min: Mix the flour and water.\n`,
    ).formulas;
    if (!formula) throw new Error('does not compile');
    return times100(flourOf(formula).hydration);
  });
}
