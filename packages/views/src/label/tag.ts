import type { Formula } from '@quern/compiler';
import { divide, sign, toExactText, type Rational } from '@quern/quantity';
import type { AllergenAccount } from './allergens.js';
import { grams } from './declaration.js';
import type { Statement } from './ingredients.js';

/** How long something lasts: minutes, and where, as written. */
export interface Lasting {
  readonly minutes: Rational;
  /** Months and weeks as written, so that a date can be reckoned by the calendar. */
  readonly parts: readonly { readonly value: Rational; readonly unit: string }[];
  readonly at: string | undefined;
  readonly note: string;
}

/** What goes on a small label for a gift or a stall. Dates are reckoned where the day is known. */
export interface Tag {
  readonly name: string;
  readonly by: readonly string[];
  readonly netWeight: string | undefined;
  readonly statement: Statement;
  readonly allergens: AllergenAccount;
  readonly keeps: readonly Lasting[];
  readonly bestAfter: readonly Lasting[];
  readonly care: readonly { readonly every: string; readonly text: string }[];
  readonly warnings: readonly string[];
}

/** The label of one piece, or of the whole dish when it gives no pieces. */
export function tagOf(
  formula: Formula,
  statement: Statement,
  allergens: AllergenAccount,
  cautions: readonly string[],
): Tag {
  const dish = formula.makes.at(-1);
  const { dishGrams, pieces } = formula;
  const each = dishGrams && (pieces && sign(pieces) > 0 ? divide(dishGrams, pieces) : dishGrams);
  return {
    name: formula.variant === undefined ? formula.title : `${formula.title}, ${formula.variant}`,
    by: formula.facts.by,
    netWeight: each && `${pieces && sign(pieces) > 0 ? '' : 'about '}${grams(each)}`,
    statement,
    allergens,
    keeps: (dish?.keeps ?? []).map(({ content }) => ({
      // The shorter end of a range is promised.
      minutes: content.time.low.minutes,
      parts: content.time.low.parts,
      at: content.at && `${degreesText(content.at.low, content.at.high)} °${content.at.scale}`,
      note: content.note?.text ?? '',
    })),
    bestAfter: (dish?.bestAfter ?? []).map(({ content }) => ({
      minutes: content.time.high.minutes,
      parts: content.time.high.parts,
      at: undefined,
      note: content.note?.text ?? '',
    })),
    care: careOf(formula),
    warnings: [...formula.facts.warnings, ...cautions],
  };
}

function degreesText(low: Rational, high: Rational): string {
  const one = (value: Rational): string => toExactText(value);
  return low.n === high.n && low.d === high.d ? one(low) : `${one(low)} to ${one(high)}`;
}

/** The repeated care of the dish's last wait that has any: 'every 3 d: Turn the jar over.' */
function careOf(formula: Formula): Tag['care'] {
  const steps = (formula.makes.at(-1)?.items ?? []).filter((item) => item.kind === 'step');
  const last = steps.findLast((step) => step.every.length > 0);
  return (last?.every ?? []).map(({ content }) => ({
    every: content.period.low.parts.map(({ value, unit }) => `${toExactText(value)} ${unit}`).join(' '),
    text: content.prose.text,
  }));
}
