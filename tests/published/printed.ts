/** Figures as sources print them: `1 lb 3.2 oz (19.2 oz) = 3.0 %`. */
import {
  absolute,
  add,
  compare,
  divide,
  exact,
  multiply,
  rational,
  subtract,
  toDecimal,
  type Rational,
} from '@quern/quantity';
import { found, type Finding, type Row } from './proof.js';

/** What Quern says: a weight and its percentage. */
export interface Figures {
  readonly grams?: Rational;
  readonly percent?: Rational;
}

/** A printed figure and the worth of its last place. */
interface Printed {
  readonly value: Rational;
  readonly place: Rational;
}

// Grams; NIST Handbook 44, Appendix C: the avoirdupois pound and ounce, exactly.
const gramsIn: Readonly<Record<string, Rational>> = {
  g: rational(1),
  kg: rational(1000),
  lb: exact('453.59237'),
  oz: exact('28.349523125'),
};

const half = rational(1, 2);

/**
 * Compares every weight and the percentage printed in a row with what Quern says, to the last place printed.
 * @param places how many units of its last place a weight may differ by: half of one, unless the source itself adds up
 * weights that it has rounded.
 * @throws Error when the row prints neither, or something that Quern was not asked for.
 */
export function agreement(row: Row, figures: Figures, places = half): Finding {
  // What stands in brackets after 'printed' explains a slip of the source.
  const value = row.value.replace(/ \(printed[^)]*\)/, '');
  const percents = printedPercents(value);
  const weights = printedWeights(value, row.unit, percents.length > 0);
  if (percents.length + weights.length === 0) throw new Error(`no figure in ${row.key}`);
  const close = (one: Printed, quern: Rational | undefined, by: Rational) => {
    if (quern === undefined) throw new Error(`nothing to compare with ${row.key}`);
    return compare(absolute(subtract(one.value, quern)), multiply(one.place, by)) <= 0;
  };
  const holds =
    percents.every((one) => close(one, figures.percent, half)) &&
    weights.every((one) => close(one, figures.grams, places));
  return found(holds, describe(figures, percents.length > 0, weights.length > 0));
}

function describe({ grams, percent }: Figures, withPercent: boolean, withWeight: boolean): string {
  const parts: string[] = [];
  if (grams && withWeight) parts.push(`${toDecimal(grams, 3)} g`);
  if (percent && withPercent) parts.push(`${toDecimal(percent, 3)} %`);
  return parts.join(' = ');
}

function printedPercents(text: string): Printed[] {
  return [...text.matchAll(/(\d+(?:\.\d+)?) %/g)].map(([, digits = '']) => printed(digits, rational(1)));
}

/** Weights with their units, in grams; a bare figure at the start is in the unit of the row, if that is a unit of weight. */
function printedWeights(text: string, unit: string, besidePercent: boolean): Printed[] {
  const spelled = [...text.matchAll(/(?:(\d+) lb )?(\d+(?:\.\d+)?) (kg|g|lb|oz)\b/g)].map(
    ([, pounds = '0', digits = '', written = '']) => {
      const one = printed(digits, gramsIn[written] ?? rational(1));
      return { ...one, value: add(one.value, multiply(exact(pounds), gramsIn['lb'] ?? rational(1))) };
    },
  );
  if (spelled.length > 0) return spelled;
  const bare = /^(\d+(?:\.\d+)?)(?![\d.]| %)/.exec(text)?.[1];
  const size = gramsIn[unit];
  if (bare === undefined || (size === undefined && !besidePercent)) return [];
  return [printed(bare, size ?? rational(1))];
}

function printed(digits: string, size: Rational): Printed {
  const decimals = digits.split('.')[1]?.length ?? 0;
  return { value: multiply(exact(digits), size), place: divide(size, rational(10n ** BigInt(decimals))) };
}
