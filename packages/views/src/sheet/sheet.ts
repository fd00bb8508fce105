import {
  divide,
  isZero,
  middleOf,
  multiply,
  printCount,
  printInterval,
  sum,
  compare,
  ONE,
  withUnit,
  type Interval,
  type Rational,
} from '@quern/quantity';
import type { Formula, Item, Make } from '@quern/compiler';
import { exactText } from '../common/exact-range.js';
import { isDose } from '../common/item-amount.js';
import { bothNumbers } from '../common/plural.js';
import { inRow, outRow } from './in-rows.js';
import { UNSCALED } from './scale.js';
import {
  factorOfCount,
  makeSetting,
  percentOf,
  scaledWeight,
  scaleRange,
  weightOf,
  type Setting,
  type SheetOptions,
} from './setting.js';
import type { SheetData, SheetFormula, SheetMake, SheetRow, SheetYield } from './sheet-data.js';
import { stepRow } from './step-rows.js';
import { tinText } from './vessel.js';
import { sheetWarnings } from './warnings.js';

/**
 * The weighing sheet of a recipe or a variant: make by make what goes in, what is done and what comes out, at the size
 * asked for. Weights are exact until they are printed; what is not known is null.
 */
export function sheet(formula: Formula, options: SheetOptions = {}): SheetData {
  const setting = makeSetting(formula, options.scale ?? UNSCALED, options);
  const baker = setting.percentages ? formulaTable(setting) : undefined;
  return {
    format: 'quern-sheet',
    version: 1,
    title: formula.title,
    ...(formula.variant ? { variant: formula.variant } : {}),
    language: formula.facts.language,
    scale: { factor: exactText(setting.factor), words: setting.scale.words },
    measures: setting.measures,
    cups: setting.cups,
    yield: yieldOf(setting),
    makes: formula.makes.map((make) => sheetMake(make, setting)),
    ...(baker ? { formula: baker } : {}),
    warnings: sheetWarnings(setting),
  };
}

function sheetMake(make: Make, setting: Setting): SheetMake {
  return {
    id: make.id,
    name: make.name,
    implicit: make.implicit,
    line: make.ref.line.number + 1,
    rows: make.items.flatMap((item) => sheetRow(item, make, setting)),
    total: scaledWeight(make.pot.grams, setting),
  };
}

function sheetRow(item: Item, make: Make, setting: Setting): SheetRow[] {
  switch (item.kind) {
    case 'in':
      return [inRow(item, setting)];
    case 'out':
      return [outRow(item, setting)];
    case 'step':
      return [stepRow(item, make, setting)];
    case 'remark': {
      const { word, words } = item.content;
      if (word !== 'note' && word !== 'tip' && word !== 'warning' && word !== 'serve with') return [];
      return [{ kind: word, line: item.ref.line.number + 1, text: words.text }];
    }
    case 'check':
      return [];
  }
}

function yieldOf(setting: Setting): SheetYield {
  const { formula, factor, style, scale } = setting;
  const { gives, serves, vessel } = formula.facts;
  const pieces = gives?.content.count && countedThings(gives.content.count, gives.content.thing?.text, setting);
  const servings = serves && countedThings(serves.content.range, serves.content.thing?.text, setting);
  const tins = scale.tin
    ? tinText(scale.tin.fact, scale.tin.tin.count, style)
    : vessel && tinText(vessel.content, multiply(vessel.content.count, factor), style);
  return {
    weight: scaledWeight(formula.dishGrams, setting),
    ...(pieces ? { pieces } : {}),
    ...(servings ? { servings } : {}),
    ...(tins === undefined ? {} : { vessel: tins }),
  };
}

/** So many things at the size of the sheet, and what one of them weighs. */
function countedThings(
  written: Interval,
  thing: string | undefined,
  setting: Setting,
): NonNullable<SheetYield['pieces']> {
  const { formula, factor, style } = setting;
  const times = factorOfCount(written, setting);
  const scaled = scaleRange(written, times);
  const number = printInterval(scaled, printCount, style);
  const { one, many } = bothNumbers(thing ?? '');
  const text = thing === undefined ? number : withUnit(number, compare(scaled.high, ONE) <= 0 ? one : many, style);
  const count = middleOf(scaled);
  if (!formula.dishGrams || isZero(count)) return { text, each: null };
  const each = divide(multiply(formula.dishGrams, factor), count);
  return { text, each: weightOf({ low: each, high: each }, setting) };
}

function formulaTable(setting: Setting): SheetFormula | undefined {
  const { formula, style, factor } = setting;
  const { flour } = formula;
  if (!flour) return undefined;
  const total = sum(flour.formula.map(({ grams }) => grams));
  const weight = (grams: Rational, dose = false): SheetFormula['flour'] => {
    const scaled = multiply(grams, factor);
    return weightOf({ low: scaled, high: scaled }, setting, { dose });
  };
  return {
    flour: weight(flour.grams),
    rows: flour.formula.map(({ food, grams }) => ({
      name: food.name,
      flour: formula.isFlour(food),
      weight: weight(grams, isDose(food)),
      percent: percentOf(divide(grams, flour.grams), style),
    })),
    total: weight(total),
    totalPercent: percentOf(divide(total, flour.grams), style),
    hydration: percentOf(flour.hydration, style),
    allWater: flour.allWater ? percentOf(flour.allWater, style) : null,
    prefermented: percentOf(flour.prefermented, style),
  };
}
