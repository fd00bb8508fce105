import {
  divide,
  equal,
  greatest,
  HUNDRED,
  KITCHEN_SCALE,
  isSingle,
  mapInterval,
  multiply,
  PLAIN,
  printPercent,
  printRange,
  showFormula,
  showGrams,
  subtract,
  sum,
  withUnit,
  ZERO,
  type CupSystem,
  type Dose,
  type Interval,
  type NumberStyle,
  type Rational,
  type Rounding,
  type Shown,
} from '@quern/quantity';
import { massOf, type Formula, type InItem, type LineRef } from '@quern/compiler';
import { exactRange, exactText } from '../common/exact-range.js';
import { bakersFlour } from '../common/goes-by-flour.js';
import { foodOf, isDose } from '../common/item-amount.js';
import type { Measures, SheetPercent, SheetWeight } from './sheet-data.js';
import type { Scale } from './scale.js';

export interface SheetOptions {
  /** Made by `findScale`; as written unless given. */
  readonly scale?: Scale;
  /** Both unless given. */
  readonly measures?: Measures;
  /** Cups and spoons of the second measure; those of the file unless given. */
  readonly cups?: CupSystem;
  /** Baker's percentages beside the lines and as a table. */
  readonly percentages?: boolean;
  /** The largest relative error that is accepted for the sake of fewer scoops; 3/100 unless given. */
  readonly tolerance?: Rational;
  /** How weights are rounded; a kitchen scale unless given. */
  readonly rounding?: Rounding;
  readonly style?: NumberStyle;
  /** Gas marks beside the heat of an oven. */
  readonly gasMarks?: boolean;
  /** The most that goes into the mixer at once, in grams. */
  readonly mixer?: Rational;
}

/** Everything that a part of the sheet needs to print a figure: the recipe, the factor and the rules. */
export interface Setting {
  readonly formula: Formula;
  readonly scale: Scale;
  readonly factor: Rational;
  readonly measures: Measures;
  readonly cups: CupSystem;
  readonly percentages: boolean;
  readonly rounding: Rounding;
  readonly style: NumberStyle;
  readonly tolerance: Rational | undefined;
  readonly mixer: Rational | undefined;
  readonly gasMarks: boolean;
  /** Weights of the formula's own lines, rounded together so that their percentages hold. */
  readonly together: ReadonlyMap<string, Shown>;
}

export function makeSetting(formula: Formula, scale: Scale, options: SheetOptions): Setting {
  const rounding = options.rounding ?? KITCHEN_SCALE;
  const style = options.style ?? PLAIN;
  return {
    formula,
    scale,
    factor: scale.factor,
    measures: options.measures ?? 'both',
    cups: options.cups ?? formula.facts.cups,
    percentages: options.percentages ?? false,
    rounding,
    style,
    tolerance: options.tolerance,
    mixer: options.mixer,
    gasMarks: options.gasMarks ?? false,
    together: roundTogether(formula, options.percentages ?? false, scale.factor, rounding, style),
  };
}

/**
 * By what a count of the recipe is multiplied: by the factor; but with other tins, as many things as there were tins
 * ("[2] oiled tins", 2 loaves) are as many as there are tins now.
 */
export function factorOfCount(count: Interval, { scale, formula, factor }: Setting): Rational {
  const vessel = formula.facts.vessel?.content;
  const isOfTins = scale.tin && vessel && isSingle(count) && equal(count.low, vessel.count);
  return isOfTins && scale.tin ? divide(scale.tin.tin.count, vessel.count) : factor;
}

export const keyOf = (ref: LineRef): string => `${ref.file}:${ref.line.number}`;

/** Lines whose foods stand with the flour, from whatever make they came. */
function linesOfFormula(formula: Formula): ReadonlySet<string> {
  const lines = new Set<string>();
  const { flour } = formula;
  if (!flour) return lines;
  const keys = new Set(flour.formula.map(({ food }) => food.key));
  for (const make of formula.makes.slice(flour.makeIndex)) {
    for (const entry of make.pot.entries) {
      if (entry.kind !== 'food' && entry.kind !== 'draw') continue;
      for (const part of entry.parts) if (keys.has(part.food.key) && massOf(part).n > 0n) lines.add(keyOf(part.origin));
    }
  }
  return lines;
}

/** The formula's lines rounded as one, so that percentages worked out from the printed figures are the recipe's. */
function roundTogether(
  formula: Formula,
  percentages: boolean,
  factor: Rational,
  rounding: Rounding,
  style: NumberStyle,
): ReadonlyMap<string, Shown> {
  const lines = percentages || bakersFlour(formula) ? linesOfFormula(formula) : new Set<string>();
  const items = formula.makes
    .flatMap((make) => make.items)
    .filter(
      (item): item is InItem =>
        item.kind === 'in' && item.source.kind === 'food' && !item.optional && lines.has(keyOf(item.ref)),
    );
  const weighed = items.flatMap((item) => {
    const { grams } = item.weighed;
    const food = foodOf(item);
    return grams && food ? [{ item, grams, food }] : [];
  });
  const formulaLines = weighed.map(({ grams, food }) => ({
    grams: multiply(grams, factor),
    dose: doseOf(isDose(food)),
    flour: formula.isFlour(food),
  }));
  const here = sum(formulaLines.filter(({ flour }) => flour).map(({ grams }) => grams));
  const besides = subtract(multiply(formula.flour?.grams ?? ZERO, factor), here);
  const shown = showFormula(formulaLines, rounding, { style, flourBesides: greatest(besides, ZERO) });
  return new Map(
    weighed.flatMap(({ item }, index) => (shown[index] ? [[keyOf(item.ref), shown[index]] as const] : [])),
  );
}

const doseOf = (small: boolean): Dose => (small ? 'small' : 'ordinary');

/** Grams as the sheet shows them. The range is already scaled. */
export function weightOf(
  grams: Interval,
  setting: Setting,
  options: { readonly dose?: boolean; readonly shown?: Shown } = {},
): SheetWeight {
  const { rounding, style } = setting;
  if (options.shown && isSingle(grams)) return { grams: exactRange(grams), text: options.shown.text };
  const show = (value: Rational): Shown => showGrams(value, rounding, { dose: doseOf(options.dose ?? false), style });
  return { grams: exactRange(grams), text: rangeText(show(grams.low), show(grams.high), style) };
}

function rangeText(low: Shown, high: Shown, style: NumberStyle): string {
  if (low.text === high.text) return high.text;
  if (low.unit !== high.unit) return printRange(low.text, high.text, style);
  return withUnit(printRange(low.number, high.number, style), high.unit, style);
}

/** A weight that the recipe knows at its own size, or null. */
export function scaledWeight(grams: Rational | undefined, setting: Setting): SheetWeight | null {
  if (!grams) return null;
  const value = multiply(grams, setting.factor);
  return weightOf({ low: value, high: value }, setting);
}

export const scaleRange = (range: Interval, factor: Rational): Interval =>
  mapInterval(range, (value) => multiply(value, factor));

/** A share (0 to 1) as a percentage with one decimal. */
export function percentOf(share: Rational, style: NumberStyle): SheetPercent {
  const hundredths = multiply(share, HUNDRED);
  return { exact: exactText(hundredths), text: printPercent(hundredths, 1, style) };
}
