/**
 * Weights of cups, spoons and pieces: written as a cook would write them, two measures on one line, none of them may be called
 * a disagreement. A false alarm on two published weights of one food would teach cooks to ignore the true ones.
 */
import { sentence } from '@quern/text';
import { doesNotApply, found, rule, type Finding, type Row, type Rule } from '../proof.js';
import { compileText } from '../compile-text.js';
import { names } from './cup-weight-names.js';

const sizes = /^1 (extra large|jumbo|large|medium|small|extra small)\b/;
const measured = /^(\d+ \d\/\d|\d+\/\d+|\d*\.?\d+) (cups?|tbsp|tablespoons?|tsp|fl oz|liter|metric cup)\b(.*)$/;

/** The words of a measure that say in what form the food was weighed, as a cook would write them before its name. */
const forms: readonly (readonly [RegExp, string])[] = [
  [/not packed|unpacked/, ''],
  [/packed/, 'packed'],
  [/unsifted/, 'unsifted'],
  [/sifted/, 'sifted'],
  [/chopped/, 'chopped'],
  [/diced/, 'diced'],
  [/shredded/, 'shredded'],
  [/grated/, 'grated'],
  [/melted/, 'melted'],
  [/mashed/, 'mashed'],
  [/pureed/, 'puréed'],
  [/slivered/, 'slivered'],
  [/ground/, 'ground'],
  [/, whipped/, 'whipped'],
  [/halves|shelled/, 'halved'],
  [/sections/, 'segmented'],
  [/whole/, 'whole'],
];

/** Pieces, and measures that are written in another order. */
const lines: Readonly<Record<string, string>> = {
  'usda.butter_without_salt@1 stick': '1 stick unsalted butter = 113 g',
  'usda.butter_salted@1 stick': '1 stick salted butter = 113 g',
  'usda.raisins_seedless@50 raisins': '50 raisins = 26 g',
  'usda.dates_deglet_noor@1 date, pitted': '1 pitted date = 7.1 g',
  'usda.apricots_dried_sulfured_uncooked@1 half': '1 dried apricot half = 3.5 g',
  'usda.blueberries_raw@50 berries': '50 blueberries = 68 g',
  'usda.raspberries_raw@10 raspberries': '10 raspberries = 19 g',
  'usda.lemons_raw_without_peel@1 fruit (2-1/8 in dia)': '1 peeled lemon = 58 g',
  'usda.lemons_raw_without_peel@1 fruit (2-3/8 in dia)': '1 peeled lemon = 84 g',
  'usda.oranges_raw_all_commercial_varieties@1 fruit (2-5/8 in dia)': '1 peeled orange = 131 g',
  'usda.nuts_almonds@1 almond': '1 almond = 1.2 g',
  'usda.nuts_hazelnuts_or_filberts@10 nuts': '10 hazelnuts = 14 g',
  'usda.nuts_pine_nuts_dried@10 nuts': '10 pine nuts = 1.7 g',
  'usda.nuts_pistachio_nuts_raw@1 kernel': '1 pistachio = 0.7 g',
  'usda.nuts_brazilnuts_dried_unblanched@1 kernel': '1 brazil nut = 5 g',
  'usda.garlic_raw@1 clove': '1 clove garlic = 3 g',
  'usda.garlic_raw@3 cloves': '3 cloves garlic = 9 g',
  'usda.tomatoes_red_ripe_raw_year_round_average@1 cup cherry tomatoes': '149 g cherry tomatoes = 1 cup',
  'usda.tomatoes_red_ripe_raw_year_round_average@1 cherry': '1 cherry tomato = 17 g',
  'usda.tomatoes_red_ripe_raw_year_round_average@1 plum tomato': '1 plum tomato = 62 g',
  'usda.tomatoes_red_ripe_raw_year_round_average@1 Italian tomato': '1 plum tomato = 62 g',
  'usda.parsley_fresh@10 sprigs': '10 sprigs parsley = 10 g',
  'usda.basil_fresh@5 leaves': '5 basil leaves = 2.5 g',
  'usda.basil_fresh@.25 cup leaves, whole': '6 g basil leaves = 1/4 cup',
  'usda.spices_pepper_black@1 tsp, whole': '2.9 g black peppercorns = 1 tsp',
  'mill.egg_large@1': '1 large egg = 50 g',
  'bba.egg_large': '1 large egg = 47 g',
};

const notCompared: readonly Rule[] = [
  doesNotApply(
    /@1 (serving packet|packet|individual packet|tsp or 1 packet|cake \(0\.6 oz\)|dash|tsp brownulated)$/,
    'a packet, a cake and a dash have no weight of their own in the notation; the writer states it',
  ),
  doesNotApply(/@1 pint as purchased, yields$/, 'a yield of what is bought by the pint; a line states what goes in'),
  doesNotApply(/@1 (lemon|lime|fruit) yields$/, 'the juice of a fruit; a line states the juice'),
  doesNotApply(/(in shell|with hulls), edible yield/, 'a cup measured in the shell; a line states what goes in'),
  doesNotApply(['mill.barley_cooked@1 cup'], 'the food table has barley raw; a cooked one is made in the recipe'),
  doesNotApply(
    /^usda\.syrups_corn_high_fructose@/,
    'a syrup sold to factories, not to cooks; it is not in the food table',
  ),
  doesNotApply(['mill.fruit_blend@1 cup'], 'a mixture of one miller, not a food of the table'),
  doesNotApply(['au250.crushed_biscuits@1 metric cup'], 'any biscuit; the writer names the one'),
  doesNotApply(
    /^egg\.(us\..*dozen_min|eu\..*)$/,
    'grades of eggs in their shells; a line counts eggs, and the table weighs them without shell',
  ),
  doesNotApply(
    ['egg.us.large.edible_share', 'egg.shell_share'],
    'a share of the shell, not a weight of a cup or an egg',
  ),
];

/** The line a cook would write for a row. */
export function lineFor(row: Row): string | undefined {
  const known = lines[row.key];
  if (known !== undefined) return known;
  const [food = '', measure = ''] = row.key.split('@');
  const name = names[row.key] ?? names[food];
  if (name === undefined) return undefined;
  const equation = /^([\d.]+) oz = ([\d.]+) (cups?|tsp|tbsp)/.exec(row.value);
  if (equation) return `${equation[1]} oz ${name} = ${equation[2]} ${equation[3]}`;
  const size = sizes.exec(measure)?.[1];
  if (size !== undefined) return `1 ${size.replace(' ', '-')} ${name} = ${row.value} g`;
  const [, count = '', unit = '', rest = ''] = measured.exec(measure.replace(/\.oz$/, '')) ?? [];
  if (unit === '') return undefined;
  const form = forms.find(([pattern]) => pattern.test(rest))?.[1] ?? '';
  return `${row.value} ${weightUnit(row)} ${form} ${name} = ${fraction(count)} ${volumeUnit(unit)}`.replace(/ +/g, ' ');
}

const weightUnit = (row: Row) => (row.unit === '[oz_av]' ? 'oz' : 'g');

function volumeUnit(unit: string): string {
  const spelled: Readonly<Record<string, string>> = {
    'fl oz': 'us fl oz',
    liter: 'l',
    'metric cup': 'cup',
    tablespoon: 'tbsp',
  };
  return spelled[unit] ?? unit;
}

/** The table prints thirds and quarters as decimals. */
function fraction(count: string): string {
  const printed: Readonly<Record<string, string>> = { '.33': '1/3', '.333': '1/3', '.25': '1/4', '.5': '1/2' };
  return printed[count] ?? count;
}

function agrees(row: Row): Finding {
  const line = lineFor(row);
  if (line === undefined) return found(false, 'no line is known for this row');
  const head = row.key.startsWith('au250.') ? 'cup metric\n' : '';
  const { diagnostics } = compileText(`${head}recipe A cup of it\nmake dish\n  ${line}\n  hands 1 min: Look at it.\n`);
  const alarm = diagnostics.find(({ code }) => /^(Q0[0123568]|N0[17]|L)/.test(code));
  return alarm === undefined
    ? found(true, `no disagreement at “${line}”`)
    : found(false, `“${line}”: ${sentence(alarm)}`);
}

const isCompared = (key: string) => !notCompared.some((one) => one.claims(key));

export const rules: readonly Rule[] = [...notCompared, { ...rule(/./, agrees), claims: isCompared }];
