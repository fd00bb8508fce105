import {
  add,
  divide,
  equal,
  greatest,
  least,
  middle,
  multiply,
  ONE,
  rational,
  sizeOf,
  subtract,
  units,
  type CupSystem,
  type Rational,
  type UnitId,
} from '@quern/quantity';
import type { Amount, Count, Equal, Measure, Pack } from '@quern/syntax';
import type { Food, PieceWeight, Spread, VolumeWeight } from './food-book.js';
import type { LedgerFood, Weighed } from './model.js';
import { normaliseName } from './names.js';

/*
 * From a written amount to grams: a stated weight wins, then the food's own weights, then what another line taught.
 * Nothing is guessed: what cannot be weighed is undefined.
 */

export const NO_WORDS: FormWords = { name: '', note: '' };

/** Which end of every range the ledger takes. */
export type Pick = 'low' | 'middle' | 'high';

export function pickOf(range: { readonly low: Rational; readonly high: Rational }, pick: Pick): Rational {
  if (equal(range.low, range.high)) return range.low;
  return pick === 'low' ? range.low : pick === 'high' ? range.high : middle(range.low, range.high);
}

export const isSpelledCount = (id: UnitId): boolean => units[id].dimension === 'count';

/** A weight that other lines of the file state for a food the table cannot weigh. */
export interface Taught {
  /** Grams a millilitre, or grams each; `unit` is '' for the thing itself. */
  readonly grams: Rational;
  readonly unit: 'ml' | string;
}

export interface WeighingContext {
  readonly cups: CupSystem;
  readonly pick: Pick;
  readonly taught: ReadonlyMap<string, readonly Taught[]>;
}

const UNKNOWN: Weighed = { grams: undefined, basis: 'unknown', sources: [] };

/** A measure in its base unit (g, ml, piece), a second part ('1 lb 4 oz') included. */
export function baseValue(measure: Measure, cups: CupSystem, pick: Pick): Rational {
  const value = multiply(pickOf(measure.range, pick), sizeOf(measure.unit.id, cups));
  return measure.and ? add(value, multiply(measure.and.value, sizeOf(measure.and.unit.id, cups))) : value;
}

/** The grams of an in line's amount (not for shares and percents, which need the pot). */
export function weigh(
  amount: Amount,
  equals: readonly Equal[],
  food: LedgerFood,
  words: FormWords,
  context: WeighingContext,
): Weighed {
  const direct = massOfAmount(amount, context);
  if (direct) return { grams: direct, basis: 'stated', sources: [] };
  for (const side of equals) {
    const grams = massOfEqual(amount, side, context);
    if (grams && amount.kind === 'open') return estimate({ grams, basis: 'estimate', sources: [] }, side, context.pick);
    if (grams) return { grams, basis: 'stated', sources: [] };
  }
  const own = byFood(amount, food, words, context);
  if (own.grams) return own;
  for (const side of equals) {
    const found = byFood(side.amount, food, words, context);
    if (found.grams) return amount.kind === 'open' ? estimate(found, side, context.pick) : found;
  }
  return UNKNOWN;
}

/**
 * How far off `about` may be: as far as two measures may be apart of which one says it (agreement.ts). An open amount is
 * an estimate whether or not it says so, and of one written figure the ends are that far away.
 */
export const ABOUT_WIDTH = rational(15, 100);

function estimate(weighed: Weighed, { amount }: Equal, pick: Pick): Weighed {
  const found: Weighed = { ...weighed, basis: 'estimate' };
  if (!weighed.grams || pick === 'middle' || !equal(amount.range.low, amount.range.high)) return found;
  const times = pick === 'low' ? subtract(ONE, ABOUT_WIDTH) : add(ONE, ABOUT_WIDTH);
  return { ...found, grams: multiply(weighed.grams, times) };
}

function massOfAmount(amount: Amount, context: WeighingContext): Rational | undefined {
  if (amount.kind === 'measure' && units[amount.unit.id].dimension === 'mass')
    return baseValue(amount, context.cups, context.pick);
  if (amount.kind === 'pack' && units[amount.each.unit.id].dimension === 'mass') {
    return multiply(pickOf(amount.range, context.pick), baseValue(amount.each, context.cups, context.pick));
  }
  return undefined;
}

/** Grams of the right side of `=`; with `each`, times the count on the left. */
function massOfEqual(left: Amount, side: Equal, context: Pick | WeighingContext): Rational | undefined {
  const { cups, pick } = typeof context === 'string' ? { cups: 'us' as const, pick: context } : context;
  if (side.amount.kind !== 'measure' || units[side.amount.unit.id].dimension !== 'mass') return undefined;
  const grams = baseValue(side.amount, cups, pick);
  if (!side.each) return grams;
  const count = countOf(left, pick);
  return count ? multiply(grams, count) : undefined;
}

export function countOf(amount: Amount, pick: Pick): Rational | undefined {
  if (amount.kind === 'count' || amount.kind === 'pack' || amount.kind === 'portion') return pickOf(amount.range, pick);
  if (amount.kind === 'measure' && isSpelledCount(amount.unit.id)) return pickOf(amount.range, pick);
  return undefined;
}

function byFood(
  amount: Amount | Measure | Count,
  food: LedgerFood,
  words: FormWords,
  context: WeighingContext,
): Weighed {
  const inMillilitres = volumeOf(amount, context);
  if (inMillilitres) {
    const spread = volumeSpread(food, words);
    if (spread) return { grams: multiply(inMillilitres, spread.usual), basis: 'table', sources: spread.sources };
    return taughtWeight(food, 'ml', inMillilitres, context);
  }
  const count = countOf(amount, context.pick);
  if (!count || amount.kind === 'pack') return UNKNOWN;
  const piece = pieceOf(amount);
  const spread = pieceSpread(food, piece, words);
  if (spread) return { grams: multiply(count, spread.usual), basis: 'table', sources: spread.sources };
  return taughtWeight(food, piece, count, context);
}

function taughtWeight(food: LedgerFood, unit: string, times: Rational, context: WeighingContext): Weighed {
  const taught = context.taught.get(food.key)?.find((entry) => entry.unit === unit);
  return taught ? { grams: multiply(times, taught.grams), basis: 'taught', sources: [] } : UNKNOWN;
}

/** Millilitres of an amount, if it is a volume or packs of a volume. */
export function volumeOf(amount: Amount | Measure | Count | Pack, context: Pick1): Rational | undefined {
  if (amount.kind === 'measure' && units[amount.unit.id].dimension === 'volume')
    return baseValue(amount, context.cups, context.pick);
  if (amount.kind === 'pack' && units[amount.each.unit.id].dimension === 'volume') {
    return multiply(pickOf(amount.range, context.pick), baseValue(amount.each, context.cups, context.pick));
  }
  return undefined;
}
type Pick1 = { readonly cups: CupSystem; readonly pick: Pick };

/** The words of a line that may name a form: those of the name, and those of the note after the comma. */
export interface FormWords {
  readonly name: string;
  readonly note: string;
}

/**
 * Published weight of a millilitre of the food in the form that its name names ('chopped walnuts'), or as it comes.
 * A form after the comma ('walnuts, roughly chopped') is done after measuring, so either weight may be meant and the
 * spread runs over both, unless it says how the measure was filled ('packed'). With no form '' in the table and several
 * others, the spread runs over all of them.
 */
export function volumeSpread(food: LedgerFood, words: FormWords): Spread | undefined {
  const volumes = food.food?.volumes;
  if (!volumes || volumes.length === 0) return undefined;
  const byName = longestForm(volumes, `${food.match?.form ?? ''} ${words.name}`);
  if (byName) return byName.perMillilitre;
  const byNote = words.note === '' ? undefined : longestForm(volumes, words.note);
  if (byNote && /\b(?:packed|heaped|level)\b/.test(byNote.form)) return byNote.perMillilitre;
  const plain = volumes.find((entry) => entry.form === '') ?? volumes.find((entry) => entry.form === 'whole');
  if (plain) return byNote ? unionOf([plain.perMillilitre, byNote.perMillilitre]) : plain.perMillilitre;
  return byNote?.perMillilitre ?? unionOf(volumes.map((entry) => entry.perMillilitre));
}

function longestForm(volumes: readonly VolumeWeight[], words: string): VolumeWeight | undefined {
  const text = words.toLowerCase();
  let best: VolumeWeight | undefined;
  for (const entry of volumes) {
    if (entry.form !== '' && mentions(text, entry.form) && entry.form.length > (best?.form.length ?? 0)) best = entry;
  }
  return best;
}

/** The part counted: 'clove' in `4 cloves garlic`, 'head' in `2 heads of garlic`, '' for the thing itself. */
export function pieceOf(amount: Amount | Measure | Count): string {
  if (amount.kind === 'portion') return normaliseName(amount.of);
  return amount.kind === 'measure' ? amount.unit.id : '';
}

/** Published weight of one piece ('' the thing itself), by the size that the words name, else over all sizes. */
export function pieceSpread(food: LedgerFood, piece: string, words: FormWords): Spread | undefined {
  const pieces = food.food?.pieces.filter(
    (entry) => entry.piece === piece || (piece === 'piece' && entry.piece === ''),
  );
  if (!pieces || pieces.length === 0) return undefined;
  const wanted = `${food.match?.size ?? ''} ${words.name} ${words.note}`.toLowerCase();
  const size = longest(pieces.flatMap((entry) => (mentions(wanted, entry.size) ? [entry.size] : [])));
  if (size !== undefined) return eaten(ofSize(pieces, size), food.food);
  const usual = [ofSize(pieces, ''), ofSize(pieces, 'medium'), pieces].find((some) => some.length > 0) ?? pieces;
  const all = unionOf(pieces.map((entry) => bought(entry, food.food)));
  return all && { ...all, usual: eaten(usual, food.food)?.usual ?? all.usual };
}

const ofSize = (pieces: readonly PieceWeight[], size: string): readonly PieceWeight[] =>
  pieces.filter((entry) => entry.size === size);

const longest = (words: readonly string[]): string | undefined =>
  words.filter((word) => word !== '').sort((a, b) => b.length - a.length)[0];

/** The spread of one size; what goes into the pot is the edible part where somebody has published it. */
function eaten(pieces: readonly PieceWeight[], food: Food | undefined): Spread | undefined {
  const edible = pieces.find((entry) => entry.basis === 'edible') ?? pieces[0];
  const all = unionOf(pieces.map((entry) => bought(entry, food)));
  return all && edible && { ...all, usual: edible.grams.usual };
}

/**
 * The spread that a written weight of a piece may lie in: from the edible part to the thing as bought, since a writer
 * may mean either (a shelled or an unshelled egg). The usual weight stays the source's own.
 */
function bought(entry: PieceWeight, food: Food | undefined): Spread {
  const edible = food?.ediblePortion;
  if (!edible || equal(edible, ONE)) return entry.grams;
  return entry.basis === 'edible'
    ? { ...entry.grams, high: divide(entry.grams.high, edible) }
    : { ...entry.grams, low: multiply(entry.grams.low, edible) };
}

function unionOf(spreads: readonly Spread[]): Spread | undefined {
  const first = spreads[0];
  if (!first) return undefined;
  return spreads.slice(1).reduce<Spread>(
    (all, one) => ({
      low: least(all.low, one.low),
      usual: all.usual,
      high: greatest(all.high, one.high),
      sources: [...all.sources, ...one.sources],
    }),
    first,
  );
}

function mentions(words: string, form: string): boolean {
  return new RegExp(`(?:^|[^\\p{L}])${form.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?:$|[^\\p{L}])`, 'u').test(words);
}
