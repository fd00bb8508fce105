/**
 * Tins: a recipe written for one tin, scaled to another by volume, as `quern sheet --tin` does. Sources:
 * tests/published/bakers.tsv, rows `pan.`.
 */
import {
  absolute,
  compare,
  divide,
  exact,
  multiply,
  rational,
  sizeOf,
  subtract,
  toDecimal,
  type Rational,
} from '@quern/quantity';
import { findScale, readScale, type ScaleKind } from '@quern/views';
import { compileText } from '../compile-text.js';
import { doesNotApply, found, rule, type Rule } from '../proof.js';

const dough = '500 g bread flour\n  332 g water\n  10 g fine salt';

/** By how much the recipe of one tin is multiplied for another request. */
function factor(vessel: string, kind: ScaleKind, request: string): Rational {
  const [formula] = compileText(
    `recipe Loaf\nvessel ${vessel}\nmake dough\n  ${dough}\n  hands 5 min: Mix the flour, water and salt.\n`,
  ).formulas;
  const read = readScale(kind, request);
  if (!formula || !read.ok) throw new Error(read.ok ? 'does not compile' : read.problem);
  const scale = findScale(read.value, formula);
  if (!scale.ok) throw new Error(scale.problem);
  return scale.value.factor;
}

/** The ratio of two tins of the same depth; a single length is the width of a round one. Inches, unless it says centimetres. */
function ratio(from: string, to: string): Rational {
  const size = (tin: string) => {
    const unit = tin.includes('cm') ? 'cm' : 'in';
    const sides = /\d+(?:\.\d+)?(?:x\d+)?/.exec(tin)?.[0] ?? '';
    const square = /\d(?:cm)?_?square/.test(tin) ? `${sides}x${sides}` : sides;
    return `${square.replaceAll('x', ' x ')} x 2 ${unit}`;
  };
  return factor(`1 tin of ${size(from)}`, 'tin', `1 of ${size(to)}`);
}

/** Equal to the digits printed. */
function near(value: Rational, digits: string): boolean {
  const places = digits.split('.')[1]?.length ?? 0;
  return toDecimal(value, places) === digits;
}

const kitchenInches = '1 tin of 1 x 1 x 1 in';

export const rules: readonly Rule[] = [
  // Areas: how often a tin of one inch each way goes into one of an inch deep.
  rule(/^pan\.area\.rect\./, ({ key, value }) => {
    const [long = '', wide = ''] = key.replace('pan.area.rect.', '').split('x');
    const area = factor(kitchenInches, 'tin', `1 of ${long} x ${wide} x 1 in`);
    return found(near(area, value), `${toDecimal(area, 2)} in²`);
  }),
  // Some of the source's round areas are rounded up, some to the nearest: all lie within one of the true figure.
  rule(/^pan\.area\.round\./, ({ key, value }) => {
    const area = factor(kitchenInches, 'tin', `1 of ${key.replace('pan.area.round.', '')} x 1 in`);
    return found(compare(absolute(subtract(area, exact(value))), rational(1)) < 0, `${toDecimal(area, 2)} in²`);
  }),
  // The table gives the exact ratio beside what the page prints, since the page cuts some figures off.
  rule(/^pan\.factor\./, ({ key, tolerance }) => {
    const [from = '', to = ''] = key.replace('pan.factor.', '').split('_to_');
    const digits = /exact ([\d.]+)/.exec(tolerance)?.[1]?.replace(/\.$/, '') ?? '';
    const value = ratio(from, to.replace('half_sheet_', ''));
    return found(near(value, digits), toDecimal(value, 4));
  }),
  rule(['pan.metric.20cm_to_23cm_round', 'pan.metric.20cm_round_to_20cm_square'], ({ key, value }) => {
    const [from = '', to = ''] = key.replace('pan.metric.', '').split('_to_');
    const ratioFound = ratio(from, to);
    return found(near(ratioFound, value), toDecimal(ratioFound, 4));
  }),
  rule(['pan.pullman_9x4x4'], ({ value }) => {
    const litres = factor('1 tin of 1 l', 'tin', '1 of 9 x 4 x 4 in');
    const millilitres = toDecimal(multiply(litres, rational(100)), 0);
    return found(value.endsWith(`= ${millilitres}0`), `${toDecimal(multiply(litres, rational(1000)), 1)} ml`);
  }),
  rule(['pan.ex3'], ({ tolerance }) => {
    const value = factor('1 tin of 8 x 3.5 x 3 in', 'tin', '1 of 9 x 4 x 4 in');
    const weight = toDecimal(multiply(value, rational(450)), 1);
    return found(
      tolerance.includes(`${weight}, ${toDecimal(value, 3)}`),
      `times ${toDecimal(value, 3)}, 450 g become ${weight} g`,
    );
  }),
  // A recipe of 842 g scaled to the 1011 g that the source puts into its second tin.
  rule(['pan.ex2.flour', 'pan.ex2.salt'], ({ value, tolerance }) => {
    const written = rational(value.startsWith('500') ? 500 : 10);
    const grams = multiply(factor('1 tin of 1 l', 'weight', '1011 g'), written);
    return found(near(grams, tolerance), `${toDecimal(grams, 2)} g`);
  }),
  doesNotApply(
    ['pan.divisor.white', 'pan.divisor.half_wholemeal', 'pan.divisor.wholemeal', 'pan.ex1', 'pan.ex2'],
    'how much dough a first tin takes; Quern scales from the tin a recipe is written for',
  ),
  doesNotApply(
    ['pan.space_per_oz'],
    'the least room for a dough in large bakeries; Quern scales from the tin a recipe is written for',
  ),
  // The same room in other units, by the sizes of the inch and of the ounce.
  rule(['pan.space_per_oz.metric'], (row) => {
    const inch = sizeOf('inch');
    const metric = toDecimal(divide(multiply(exact('7.6'), multiply(inch, multiply(inch, inch))), sizeOf('oz')), 2);
    return found(metric === row.value, `${metric} mL/g`);
  }),
  doesNotApply(['pan.fluted_8.5x4.5'], 'the volume of one maker’s tin; without its shape it cannot be worked out'),
];
