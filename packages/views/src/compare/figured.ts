import {
  absolute,
  compare,
  divide,
  exact,
  HUNDRED,
  isZero,
  KITCHEN_SCALE,
  multiply,
  printCount,
  printDecimal,
  printFixed,
  printMixed,
  rational,
  showGrams,
  subtract,
  TOTALS,
  type Rational,
} from '@quern/quantity';
import { exactText } from '../common/exact-range.js';
import type { BothFigures, Figured } from './changes.js';

/* Figures as they are told in a comparison: fine enough to see the change, no finer. */

export type Printer = (value: Rational) => string;

export const grams: Printer = (value) => showGrams(value, KITCHEN_SCALE).text;
/** Salt, yeast and spices: to a tenth of a gram. */
export const doses: Printer = (value) => showGrams(value, KITCHEN_SCALE, { dose: 'small' }).text;
export const totals: Printer = (value) => showGrams(value, TOTALS).text;
export const counts: Printer = (value) => printCount(value);
export const factors: Printer = (value) => printMixed(value);
/** Hundredths: 66.7 %. */
export const percents: Printer = (value) => `${printDecimal(value, 2)} %`;

export const figured = (value: Rational, print: Printer): Figured => ({ exact: exactText(value), text: print(value) });

/** Both figures and how much more the second is; undefined when they are the same or neither is known. */
export function bothFigures(
  before: Rational | undefined,
  after: Rational | undefined,
  print: Printer,
): BothFigures | undefined {
  if (!before && !after) return undefined;
  if (before && after && compare(before, after) === 0) return undefined;
  const percent = before && after && !isZero(before) ? more(before, after) : undefined;
  // A share is told to a hundredth of a per cent; what is less is no news.
  if (before && after && print === percents && print(before) === print(after)) return undefined;
  const told = before && after ? apart(before, after, print) : print;
  return {
    ...(before ? { before: figured(before, told) } : {}),
    ...(after ? { after: figured(after, told) } : {}),
    ...(percent ? { percent } : {}),
  };
}

const MOST_PLACES = 4;

/** A printer fine enough that two figures do not look the same. */
function apart(before: Rational, after: Rational, print: Printer): Printer {
  if (print(before) !== print(after)) return print;
  const unit = / (\S+)$/.exec(print(after))?.[1];
  // Kilograms and the like are told in the unit that is counted in.
  if (unit !== undefined && unit !== 'g' && unit !== '%') return apart(before, after, inGrams);
  for (let places = 1; places <= MOST_PLACES; places++) {
    const finer: Printer = (value) => `${printFixed(value, places)}${unit === undefined ? '' : ` ${unit}`}`;
    if (finer(before) !== finer(after)) return finer;
  }
  return print;
}

const inGrams: Printer = (value) => `${printDecimal(value, 0)} g`;

/** How much more, in hundredths: '+9.4 %', '-3 %', 'twice' is left to the eye. */
export function more(before: Rational, after: Rational): Figured {
  const hundredths = divide(multiply(subtract(after, before), HUNDRED), absolute(before));
  return figured(hundredths, signedPercent);
}

const TEN = rational(10);
const FINE = exact('0.1');

function signedPercent(value: Rational): string {
  const size = absolute(value);
  const sign = value.n > 0n ? '+' : '';
  if (compare(size, FINE) < 0) return value.n > 0n ? 'under 0.1 % more' : 'under 0.1 % less';
  return `${sign}${printDecimal(value, compare(size, TEN) < 0 ? 1 : 0)} %`;
}
