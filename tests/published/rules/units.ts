import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import {
  absolute,
  agreeOnDial,
  compare,
  convert,
  degrees,
  divide,
  equal,
  exact,
  gasMark,
  multiply,
  rational,
  sizeOf,
  subtract,
  temperaturePoint,
  thermometer,
  toApproximateNumber,
  toDecimal,
  toExactText,
  toMinutes,
  toolSize,
  type CupSystem,
  type Rational,
  type ScoopTool,
  type TemperatureScale,
  type UnitId,
} from '@quern/quantity';
import { doesNotApply, found, rule, type Finding, type Row, type Rule } from '../proof.js';

const unit = (id: UnitId, cups: CupSystem = 'us'): Rational => sizeOf(id, cups);
const tool = (name: ScoopTool, cups: CupSystem = 'us'): Rational => toolSize(name, cups);
const times = (n: number, d: number, id: UnitId): Rational => multiply(rational(n, d), sizeOf(id));

const cubed = (length: Rational): Rational => multiply(length, multiply(length, length));

/** What the key of a row is called in Quern: its size in ml, g, cm or kJ. */
const SIZES: Readonly<Record<string, Rational>> = {
  'us.gallon': unit('us-gallon'),
  'us.quart': unit('us-quart'),
  'us.pint.liquid': unit('us-pint'),
  'us.cup': unit('cup'),
  // Units that the notation does not have, by the parts of those that it has (UCUM, chains down from gallon and pound).
  'us.fluid_dram': times(1, 8, 'us-fl-oz'),
  'us.minim': times(1, 480, 'us-fl-oz'),
  'us.pint.dry': multiply(exact('33.6003125'), cubed(sizeOf('inch'))),
  'nist811.pint_dry': multiply(exact('33.6003125'), cubed(sizeOf('inch'))),
  'imp.gill': times(1, 4, 'imperial-pint'),
  'imp.fluid_drachm': times(1, 8, 'imperial-fl-oz'),
  'imp.tbsp.british': times(5, 8, 'imperial-fl-oz'),
  'mass.grain': times(1, 7000, 'lb'),
  'mass.dram': times(1, 16, 'oz'),
  'us.gill': tool('half-cup'),
  'us.floz': unit('us-fl-oz'),
  'us.tbsp': unit('tbsp'),
  'us.tsp': unit('tsp'),
  'imp.gallon': unit('imperial-gallon'),
  'imp.quart': unit('imperial-quart'),
  'imp.pint': unit('imperial-pint'),
  'imp.floz': unit('imperial-fl-oz'),
  'mass.lb': unit('lb'),
  'mass.oz': unit('oz'),
  'length.inch': unit('inch'),
  'energy.kcal_th': unit('kcal'),
  'hb44.floz.exact': unit('us-fl-oz'),
  'hb44.pint.exact': unit('us-pint'),
  'nist811.cup': unit('cup'),
  'nist811.floz': unit('us-fl-oz'),
  'nist811.pint_liquid': unit('us-pint'),
  'nist811.gill': tool('half-cup'),
  'nist811.gallon_us': unit('us-gallon'),
  'nist811.gallon_imp': unit('imperial-gallon'),
  'nist811.lb': unit('lb'),
  'nist811.tbsp': unit('tbsp'),
  'nist811.tsp': unit('tsp'),
  'sp430.tsp': unit('tsp'),
  'sp430.tbsp': unit('tbsp'),
  'sp430.floz': unit('us-fl-oz'),
  'sp430.quarter_cup': tool('quarter-cup'),
  'sp430.gill_half_cup': tool('half-cup'),
  'sp430.cup': unit('cup'),
  'sp430.pint': unit('us-pint'),
  'sp430.quart': unit('us-quart'),
  'nist_kitchen.tsp_1/4': tool('quarter-teaspoon'),
  'nist_kitchen.tsp_1/2': tool('half-teaspoon'),
  'nist_kitchen.tsp': unit('tsp'),
  'nist_kitchen.tbsp': unit('tbsp'),
  'nist_kitchen.floz': unit('us-fl-oz'),
  'nist_kitchen.cup_1/4': tool('quarter-cup'),
  'nist_kitchen.cup_1/3': tool('third-cup'),
  'nist_kitchen.floz_3': times(3, 1, 'us-fl-oz'),
  'nist_kitchen.cup_1/2': tool('half-cup'),
  'nist_kitchen.floz_5': times(5, 1, 'us-fl-oz'),
  'nist_kitchen.cup_3/4': times(3, 4, 'cup'),
  'nist_kitchen.cup': unit('cup'),
  'nist_kitchen.pint': unit('us-pint'),
  'nist_kitchen.cups_3': times(3, 1, 'cup'),
  'nist_kitchen.quart': unit('us-quart'),
  'nist_kitchen.gallon': unit('us-gallon'),
  'nist_kitchen.quart.older_page': unit('us-quart'),
  'nist_kitchen.oz': unit('oz'),
  'nist_kitchen.quarter_lb': times(1, 4, 'lb'),
  'nist_kitchen.lb': unit('lb'),
  'nist_kitchen.kg': unit('kg'),
  'us_label.tsp': unit('tsp'),
  'us_label.tbsp': unit('tbsp'),
  'us_label.cup': unit('cup'),
  'us_label.floz': unit('us-fl-oz'),
  'us_label.oz': unit('oz'),
  'ucum.metric_cup': unit('cup'),
  'ucum.metric_tbsp': unit('tbsp', 'metric'),
  'ucum.metric_tsp': unit('tsp', 'metric'),
  'ucum.metric_floz': unit('us-fl-oz'),
  'ucum.metric_oz': unit('oz'),
  'au.cup': unit('cup', 'australian'),
  'au.cup_1/2': tool('half-cup', 'australian'),
  'au.cup_1/3': tool('third-cup', 'australian'),
  'au.cup_1/4': tool('quarter-cup', 'australian'),
  'au.tbsp': unit('tbsp', 'australian'),
  'au.tsp': unit('tsp', 'australian'),
  'au.tsp_1/2': tool('half-teaspoon', 'australian'),
  'au.tsp_1/4': tool('quarter-teaspoon', 'australian'),
  'nz_uk.tbsp': unit('tbsp', 'metric'),
};

function sizeBy(key: string): Rational {
  const size = SIZES[key];
  if (!size) throw new Error(`nothing in Quern is called ${key}`);
  return size;
}

/** The table's words for units. */
const UNIT_OF = new Map<string, UnitId>([
  ['mL', 'ml'],
  ['L', 'l'],
  ['g', 'g'],
  ['kg', 'kg'],
  ['cm', 'cm'],
  ['mg', 'mg'],
  ['kJ', 'kj'],
  ['lb', 'lb'],
  ['tbsp', 'tbsp'],
  ['tsp', 'tsp'],
  ['fl oz', 'us-fl-oz'],
  ['imp fl oz', 'imperial-fl-oz'],
  ['cup', 'cup'],
  ['pt', 'us-pint'],
  ['qt', 'us-quart'],
]);

function inUnitOf(row: Row, size: Rational): Rational {
  const id = UNIT_OF.get(row.unit);
  if (!id) throw new Error(`the unit ${row.unit} of ${row.key} is unknown`);
  return divide(size, sizeOf(id));
}

const shown = (row: Row, value: Rational): string => {
  const text = toExactText(value);
  return `${text.length > 16 ? `${toDecimal(value, 6)}…` : text} ${row.unit}`;
};

/** No more than so far from the figure printed. */
function near(row: Row, value: Rational, most: Rational): Finding {
  const apart = absolute(subtract(value, exact(row.value)));
  return found(compare(apart, most) <= 0, shown(row, value));
}

function identical(row: Row, size: Rational): Finding {
  const value = inUnitOf(row, size);
  return found(equal(value, exact(row.value)), shown(row, value));
}

/** Rounded to the figures printed, Quern's figure is the same. */
const rounded = (row: Row, size: Rational): Finding => near(row, inUnitOf(row, size), halfLastPlace(row.value));

function halfLastPlace(printed: string): Rational {
  const decimals = printed.split('.')[1]?.length ?? 0;
  return rational(1, 2n * 10n ** BigInt(decimals));
}

const relative = (row: Row, bound: string): Finding =>
  near(row, inUnitOf(row, sizeBy(row.key)), multiply(exact(row.value), exact(bound)));

const ucum = UcumLhcUtils.getInstance();

function byUcum(from: string, to: string): number {
  const { status, toVal } = ucum.convertUnitTo(from, 1, to);
  if (status !== 'succeeded' || toVal === null) throw new Error(`UCUM does not convert ${from} to ${to}`);
  return toVal;
}

/** What one of a UCUM code is in Quern, and the UCUM unit in which the library is asked for the same. */
const BY_CODE: Readonly<Record<string, { readonly here: Rational; readonly code: string; readonly base: string }>> = {
  us_cup: { here: unit('cup'), code: '[cup_us]', base: 'mL' },
  us_tbsp: { here: unit('tbsp'), code: '[tbs_us]', base: 'mL' },
  us_tsp: { here: unit('tsp'), code: '[tsp_us]', base: 'mL' },
  us_floz: { here: unit('us-fl-oz'), code: '[foz_us]', base: 'mL' },
  us_pint: { here: unit('us-pint'), code: '[pt_us]', base: 'mL' },
  us_quart: { here: unit('us-quart'), code: '[qt_us]', base: 'mL' },
  us_gallon: { here: unit('us-gallon'), code: '[gal_us]', base: 'mL' },
  imp_floz: { here: unit('imperial-fl-oz'), code: '[foz_br]', base: 'mL' },
  imp_pint: { here: unit('imperial-pint'), code: '[pt_br]', base: 'mL' },
  imp_quart: { here: unit('imperial-quart'), code: '[qt_br]', base: 'mL' },
  imp_gallon: { here: unit('imperial-gallon'), code: '[gal_br]', base: 'mL' },
  lb: { here: unit('lb'), code: '[lb_av]', base: 'g' },
  oz: { here: unit('oz'), code: '[oz_av]', base: 'g' },
  gram: { here: unit('g'), code: 'g', base: 'g' },
  litre: { here: unit('l'), code: 'L', base: 'mL' },
  drop: { here: unit('drop'), code: '[drp]', base: 'mL' },
  cup_250mL: { here: unit('cup', 'metric'), code: '250.mL', base: 'mL' },
  kcal_label: { here: unit('kcal'), code: '[Cal]', base: 'kJ' },
  kJ: { here: unit('kj'), code: 'kJ', base: 'kJ' },
  minute: { here: toMinutes(rational(1), 'min'), code: 'min', base: 'min' },
  hour: { here: toMinutes(rational(1), 'h'), code: 'h', base: 'min' },
  day: { here: toMinutes(rational(1), 'd'), code: 'd', base: 'min' },
  degC: { here: degrees(temperaturePoint(rational(1), 'C'), 'F'), code: 'Cel', base: '[degF]' },
  degF: { here: degrees(temperaturePoint(rational(1), 'F'), 'C'), code: '[degF]', base: 'Cel' },
};

function asUcumSays(row: Row): Finding {
  const known = BY_CODE[row.key.slice('ucum.code.'.length)];
  if (!known || !row.value.includes(known.code)) return found(false, 'no such unit');
  const byLibrary = byUcum(known.code, known.base);
  const here = toApproximateNumber(known.here);
  // The library counts in machine numbers.
  const holds = Math.abs(here - byLibrary) <= 1e-10 * Math.abs(byLibrary);
  return found(holds, `${here} ${known.base}; the UCUM library: ${byLibrary}`);
}

/** `150-160 C = 300-325 F` in either order: the ends of both, as pairs. */
function ovenPairs(text: string): readonly { readonly C: Rational; readonly F: Rational }[] {
  const ends: Partial<Record<TemperatureScale, readonly string[]>> = {};
  for (const side of text.split(' = ')) {
    const read = /^(\d+)(?:-(\d+))? ([CF])$/.exec(side);
    if (!read) throw new Error(`not a temperature: ${side}`);
    const [, low = '', high, scale] = read;
    ends[scale as TemperatureScale] = high === undefined ? [low] : [low, high];
  }
  const { C = [], F = [] } = ends;
  return C.map((celsius, index) => ({ C: exact(celsius), F: exact(F[index] ?? '') }));
}

const lastPart = (key: string): string => key.slice(key.lastIndexOf('.') + 1);

function gasMarks(row: Row): Finding {
  const marks = ovenPairs(row.value).flatMap(({ C, F }) => [gasMark(C, 'C'), gasMark(F, 'F')]);
  return found(
    marks.length > 0 && marks.every((mark) => mark === lastPart(row.key)),
    marks.map((mark) => `mark ${mark ?? 'none'}`).join(', '),
  );
}

/** The source: mark 1 is 275 F and each mark 25 F more; a half is 250 F, a quarter 225 F. */
function exactGasMark(row: Row): Finding {
  const mark = lastPart(row.key);
  const belowOne: Readonly<Record<string, number>> = { '1/4': 225, '1/2': 250 };
  const fahrenheit = rational(belowOne[mark] ?? 250 + 25 * Number(mark));
  const celsius = thermometer(temperaturePoint(fahrenheit, 'F'), 'C');
  return found(
    gasMark(fahrenheit, 'F') === mark && equal(celsius, exact(row.value)),
    `${toExactText(fahrenheit)} F is mark ${gasMark(fahrenheit, 'F') ?? 'none'} and ${toExactText(celsius)} C`,
  );
}

function byFormula(row: Row): Finding {
  const [, offset = '', divisor = ''] = /^\(F-(\d+)\)\/([\d.]+)$/.exec(row.value) ?? [];
  const holds = [-40, 0, 32, 98, 212, 451].every((fahrenheit) => {
    const wanted = divide(subtract(rational(fahrenheit), exact(offset)), exact(divisor));
    return equal(temperaturePoint(rational(fahrenheit), 'F').celsius, wanted);
  });
  return found(holds, 'the same at six temperatures from -40 F to 451 F');
}

function gallonInInches(row: Row): Finding {
  const inch = convert(rational(1), 'inch', 'cm');
  const cubicInches = divide(sizeOf('us-gallon'), multiply(inch, multiply(inch, inch)));
  return found(equal(cubicInches, exact(row.value)), shown(row, cubicInches));
}

function cupInOuncesAndMillilitres(row: Row): Finding {
  const [ounces = '', millilitres = ''] = row.value.split(' fl oz; ');
  const apart = absolute(subtract(sizeOf('cup'), exact(millilitres)));
  const inOunces = convert(rational(1), 'cup', 'us-fl-oz');
  return found(
    equal(inOunces, exact(ounces)) && compare(apart, halfLastPlace(millilitres)) <= 0,
    `${toExactText(inOunces)} fl oz; ${toExactText(sizeOf('cup'))} mL`,
  );
}

const EXACT_SIZES =
  /^(us\.(gallon|quart|pint\.(?:liquid|dry)|cup|gill|floz|fluid_dram|minim|tbsp|tsp)|imp\.(gallon|quart|pint|gill|floz|fluid_drachm|tbsp\.british)|mass\.(lb|oz|grain|dram)|length\.inch|energy\.kcal_th|hb44\.\w+\.exact|nist811\.gallon_imp|ucum\.metric_(tbsp|tsp)|nz_uk\.tbsp|au\.(cup|cup_1\/2|tbsp|tsp|tsp_1\/2|tsp_1\/4))$/;
const ROUNDED_SIZES =
  /^(nist811\.(cup|floz|pint_liquid|pint_dry|gill|gallon_us|lb|tbsp|tsp)|sp430\.(tsp|tbsp|floz|quarter_cup|gill_half_cup|cup|pint|quart))$/;

/** Units, spoons, cups and oven temperatures. */
export const rules: readonly Rule[] = [
  rule(EXACT_SIZES, (row) => identical(row, sizeBy(row.key))),
  rule(/^(us|imp)\.\w+\.in_\w+$/, (row) => identical(row, sizeBy(row.key.slice(0, row.key.lastIndexOf('.'))))),
  rule(ROUNDED_SIZES, (row) => rounded(row, sizeBy(row.key))),
  rule(/^sp430\.litre\.in_/, (row) => rounded(row, sizeOf('l'))),
  rule(/^sp430\.ml\.in_/, (row) => rounded(row, sizeOf('ml'))),
  // Round figures for kitchens and labels: 240 ml for a cup of 236.6 ml is 1.4 % more.
  rule(/^(nist_kitchen\.(?!gallon_1\/2)|us_label\.|ucum\.metric_(cup|floz|oz)$)/, (row) => relative(row, '0.015')),
  // Sold as 80 and 60 ml; a third and a quarter of the same source's cup of 250 ml are 83.3 and 62.5 ml.
  rule(/^au\.cup_1\/[34]$/, (row) => relative(row, '0.05')),
  rule(/^hb44\.gallon$/, gallonInInches),
  rule(/^hb44\.cup$/, cupInOuncesAndMillilitres),
  rule(/^ucum\.code\.(?!percent|ppm)/, asUcumSays),
  rule(/^temp\.F_to_C$/, byFormula),
  rule(/^temp\.\d+F\.exact$/, (row) => {
    const fahrenheit = exact(/\d+/.exec(row.key)?.[0] ?? '');
    const celsius = toDecimal(degrees(temperaturePoint(fahrenheit, 'F'), 'C'), 2);
    return found(celsius === row.value, `${celsius} C`);
  }),
  rule(/^oven\.(nist|au)\./, (row) => {
    const pairs = ovenPairs(row.value);
    const holds = pairs.length > 0 && pairs.every(({ C, F }) => agreeOnDial(C, F));
    return found(holds, holds ? 'the same place on the dial' : 'different places on the dial');
  }),
  rule(/^gasmark\.(maker\.)?[\d/]+$/, gasMarks),
  rule(/^gasmark\.exact\./, exactGasMark),
  doesNotApply(/^ucum\.code\.(percent|ppm)$/, 'parts of a hundred or a million are not units in Quern'),
  doesNotApply(/^energy\.kcal_IT$/, 'food labels use the thermochemical calorie'),
  doesNotApply(/^nist_kitchen\.gallon_1\/2$/, 'the table marks it as a misprint of its source'),
  doesNotApply(/^au\.cookery\.oz_\d+$/, 'rounded for cookery (sixteen ounces are 500 g); ounces are exact in Quern'),
  doesNotApply(/^oven\.fan\./, 'a fan is stated on the line, and no temperature is changed for it'),
];
