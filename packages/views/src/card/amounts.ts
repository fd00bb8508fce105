import {
  equal,
  exact,
  multiply,
  ONE,
  printMeasure,
  toExactText,
  type CupSystem,
  type NumberStyle,
  type Rational,
} from '@quern/quantity';
import type { Formula, InItem, OutItem } from '@quern/compiler';
import { exactRange } from '../common/exact-range.js';
import {
  amountOf,
  countedOf,
  standsAsWritten,
  statedVolume,
  writtenAmount,
  writtenInUs,
} from '../common/item-amount.js';
import { showScaled, type ExactRange, type ScalableAmount } from '../common/scalable-amount.js';
import type { CardAmount } from './card-data.js';

/** What every part of a card needs: the recipe, its size and the rules of print. */
export interface CardSetting {
  readonly formula: Formula;
  readonly factor: Rational;
  readonly cups: CupSystem;
  readonly style: NumberStyle;
}

/**
 * The amount at the size of the card, with what a page needs to print it at another. `us` is the second measure as the
 * writer states it, printed as it stands.
 */
export function scaledAmount(amount: ScalableAmount, { factor, cups, style }: CardSetting, us?: string): CardAmount {
  const told = showScaled(amount, factor, { cups, style });
  return { ...told, ...(us === undefined ? {} : { us }), scale: timesFactor(amount, factor) };
}

/** An amount that does not change with the size: the weight of each piece. */
export function fixedAmount(amount: ScalableAmount, { cups, style }: CardSetting): CardAmount {
  return showScaled(amount, ONE, { cups, style });
}

const inWords = (text: string): CardAmount => ({ metric: text, us: text });

/** The amount multiplied out, so that a card printed at one size is scaled on from there. */
function timesFactor(amount: ScalableAmount, factor: Rational): ScalableAmount {
  if (equal(factor, ONE)) return amount;
  const text = (value: string): string => toExactText(multiply(exact(value), factor));
  const range = ({ low, high }: ExactRange): ExactRange => ({ low: text(low), high: text(high) });
  switch (amount.kind) {
    case 'count':
      return { ...amount, count: range(amount.count) };
    case 'volume':
      return { ...amount, millilitres: range(amount.millilitres) };
    case 'weight':
      return {
        ...amount,
        grams: range(amount.grams),
        ...(amount.millilitres ? { millilitres: range(amount.millilitres) } : {}),
        ...(amount.flour === undefined ? {} : { flour: text(amount.flour) }),
        ...(amount.pieces ? { pieces: { ...amount.pieces, count: range(amount.pieces.count) } } : {}),
      };
  }
}

/** The amount of an in line, or in the writer's words where there is nothing to scale. */
export function ingredientAmount(item: InItem, setting: CardSetting): CardAmount {
  const { formula, factor, cups } = setting;
  const words = wordsOf(item);
  if (words === 'all') return inWords(words);
  const found = asMeasured(item, setting) ?? amountOf(item, formula);
  if (!found) return inWords(words ?? writtenOf(item, setting));
  if (words !== undefined) return { words, ...scaledAmount(found, setting) };
  return scaledAmount(found, setting, standsAsWritten(formula, factor, cups) ? writtenInUs(item) : undefined);
}

/**
 * Liquids that are measured are told as they are measured, and things that are counted as they are counted: a weight
 * that only the table gives them is for the ledger.
 */
function asMeasured(item: InItem, { formula }: CardSetting): ScalableAmount | undefined {
  const { amount, equals } = item.content;
  const pieces = equals.length === 0 ? countedOf(amount) : undefined;
  if (pieces) return { kind: 'count', about: amount.about, ...pieces };
  const isMetric = amount.kind === 'measure' && ['ml', 'cl', 'dl', 'l'].includes(amount.unit.id);
  const stated = isMetric && equals.length === 0 ? statedVolume(item, formula.facts.cups) : undefined;
  return stated && { kind: 'volume', about: amount.about, millilitres: exactRange(stated) };
}

/** The amount where it is words: 'all', 'half', '1/3', 'rest', 'a little', 'enough'. */
function wordsOf(item: InItem): string | undefined {
  const { amount } = item.content;
  if (amount.kind !== 'share' && amount.kind !== 'open') return undefined;
  return writtenAmount(amount, item.ref.line.text)
    .replace(/ of$/i, '')
    .replace(/^about /i, '')
    .toLowerCase();
}

function writtenOf(item: InItem, { factor, style }: CardSetting): string {
  const { amount } = item.content;
  // A measure that nothing can weigh is still so much of a measure.
  if (amount.kind === 'measure') {
    const range = { low: multiply(amount.range.low, factor), high: multiply(amount.range.high, factor) };
    return printMeasure(range, amount.unit.id, style);
  }
  return writtenAmount(amount, item.ref.line.text);
}

/** '2 % on flour': the share of a named thing, as written. */
export function percentWords(item: InItem): string | undefined {
  const { amount, on } = item.content;
  if (amount.kind !== 'percent') return undefined;
  const written = writtenAmount(amount, item.ref.line.text);
  const target = on?.text ?? item.on?.name;
  return target === undefined ? written : `${written} on ${target}`;
}

/** The amount of a saved thing: its weight, or the writer's words. */
export function savedAmount(item: OutItem, setting: CardSetting): CardAmount {
  if (!item.grams) return inWords(writtenAmount(item.content.amount, item.ref.line.text).replace(/ of$/i, ''));
  const grams = toExactText(item.grams);
  return scaledAmount(
    { kind: 'weight', about: item.content.amount.about, grams: { low: grams, high: grams }, dose: false },
    setting,
  );
}

/** Whether the line puts in a product of the recipe, and which make it comes from. */
export function madeIn(item: InItem, formula: Formula): string | undefined {
  if (item.source.kind !== 'product') return undefined;
  const product = formula.products.get(item.source.product);
  const make = product && formula.makes[product.makeIndex];
  return make?.id;
}
