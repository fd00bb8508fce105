import { diagnose, type Diagnostic } from '@quern/text';
import {
  absolute,
  add,
  compare,
  divide,
  exact,
  greatest,
  HUNDRED,
  isZero,
  least,
  middle,
  PLAIN,
  printCount,
  printScoops,
  roundTo,
  scoop,
  multiply,
  rational,
  sizeOf,
  subtract,
  toExactText,
  units,
  type CupSystem,
  type Rational,
} from '@quern/quantity';
import type { Amount, Count, Equal, InLine, Measure, NumberRange } from '@quern/syntax';
import type { LedgerFood, LineRef } from './model.js';
import { placeOf } from './places.js';
import { showGrams } from './show.js';
import {
  ABOUT_WIDTH,
  baseValue,
  countOf,
  pieceOf,
  pieceSpread,
  pickOf,
  volumeOf,
  volumeSpread,
  type FormWords,
  type Taught,
} from './weighing.js';

/*
 * Whether two measures of one thing agree (NOTATION 0.1, 0.21, 4.3). Exact when `each` is written or both sides are
 * weights; else within the published spread of that food in that form, a little widened; else within the draft's 5 %
 * (15 % with `about` or a bare count). Just outside is a warning (Q02), far outside an error (Q01).
 */

const CLOSE = exact('0.05');
/** Common practice, no source: one level spoon and the next differ by a tenth. */
const SPOON = exact('0.1');
/** A published spread is widened by this, for a scoop is never quite level. */
const WIDENED = exact('0.025');

type Side = Measure | Count | Amount;

/** The grams a side may mean: what is written, give or take half of its last digit. */
interface Grams {
  readonly low: Rational;
  readonly high: Rational;
}

export interface AgreementContext {
  readonly cups: CupSystem;
  /** Text of a source of the food table, for the message. */
  source(id: string): string | undefined;
  report(diagnostic: Diagnostic): void;
}

/** Checks every `=` of a line against its amount; gives back what the line teaches of a food that has no table weight. */
export function checkAgreement(
  content: InLine,
  ref: LineRef,
  food: LedgerFood,
  context: AgreementContext,
): readonly Taught[] {
  const taught: Taught[] = [];
  const words: FormWords = { name: content.name.text, note: content.note?.text ?? '' };
  for (const side of content.equals) {
    const pair = order(content.amount, side);
    if (!pair) {
      twoVolumes(content.amount, side, ref, food, context);
      continue;
    }
    const learned = compareMeasures(pair, side, ref, food, words, context);
    if (learned) taught.push(learned);
  }
  return taught;
}

interface Pair {
  /** The side that is a mass, and the other. */
  readonly mass: Measure | Extract<Amount, { kind: 'pack' }>;
  readonly other: Side;
  readonly about: boolean;
}

function isMass(amount: Side): amount is Measure {
  return amount.kind === 'measure' && units[amount.unit.id].dimension === 'mass';
}

function order(left: Amount, side: Equal): Pair | undefined {
  const about = left.about || side.amount.about;
  if (isMass(side.amount)) return { mass: side.amount, other: left, about };
  if (isMass(left)) return { mass: left, other: side.amount, about };
  if (left.kind === 'pack' && isMass(left.each)) return { mass: left, other: side.amount, about };
  return undefined;
}

function massRange(mass: Pair['mass'], cups: CupSystem): Grams {
  if (mass.kind === 'pack') {
    const each = massRange(mass.each, cups);
    return { low: multiply(each.low, mass.range.low), high: multiply(each.high, mass.range.high) };
  }
  const size = sizeOf(mass.unit.id, cups);
  const more = mass.and ? multiply(mass.and.value, sizeOf(mass.and.unit.id, cups)) : rational(0);
  const slack = multiply(lastDigit(mass.range), size);
  return {
    low: subtract(add(multiply(mass.range.low, size), more), slack),
    high: add(add(multiply(mass.range.high, size), more), slack),
  };
}

/** Half of the last digit written: `25 g` may be 24.5 to 25.5. A fraction is exact. */
function lastDigit(range: NumberRange): Rational {
  return range.decimals === null ? rational(0) : rational(1, 2n * 10n ** BigInt(range.decimals));
}

function compareMeasures(
  pair: Pair,
  side: Equal,
  ref: LineRef,
  food: LedgerFood,
  words: FormWords,
  context: AgreementContext,
): Taught | undefined {
  const { mass, other } = pair;
  if (side.each) return undefined; // exact by its meaning: the weight is count times each
  const written = massRange(mass, context.cups);
  if (isMass(other)) {
    const second = massRange(other, context.cups);
    if (compare(written.high, second.low) < 0 || compare(second.high, written.low) < 0) {
      const grounds = { usual: second.low, mend: 'make the two the same', grounds: 'both are weights' };
      disagree('Q01', written, grounds, { side, ref, food }, context);
    }
    return undefined;
  }
  const published = publishedGrams(other, food, words, context.cups);
  if (!published) return teaches(mass, other, side, ref, food, context);
  const wide = pair.about || countOf(other, 'middle') ? ABOUT_WIDTH : isSpoon(other) ? SPOON : CLOSE;
  const allowed = widen(published, wide);
  if (overlaps(written, allowed)) return undefined;
  // "Far outside" begins where the distance to the usual weight is twice what is allowed.
  const far = {
    low: subtract(allowed.low, absolute(subtract(published.usual, allowed.low))),
    high: add(allowed.high, absolute(subtract(allowed.high, published.usual))),
  };
  const grounds = publishedGrounds(other, written, published, context);
  disagree(overlaps(written, far) ? 'Q02' : 'Q01', written, grounds, { side, ref, food }, context);
  return undefined;
}

const isSpoon = (side: Side): boolean => side.kind === 'measure' && (side.unit.id === 'tsp' || side.unit.id === 'tbsp');

interface Published {
  readonly low: Rational;
  readonly usual: Rational;
  readonly high: Rational;
  readonly sources: readonly string[];
}

/** The first words of each source ('United States Department of Agriculture'), each once. */
function namesOf(sources: readonly string[], context: AgreementContext): string {
  const names = sources.map((id) => (context.source(id) ?? id).split(/,| \(/)[0] ?? id);
  return [...new Set(names)].join('; ') || 'stated in this file';
}

/** The other side as it would be for the weight written: cups and spoons, or a count. */
function otherMeasure(side: Side, grams: Rational, published: Published, cups: CupSystem): string {
  const share = isZero(published.usual) ? rational(0) : divide(grams, published.usual);
  const volume = volumeOf(side, { cups, pick: 'middle' });
  if (volume) return printScoops(scoop(multiply(volume, share), { cups }));
  const count = multiply(countOf(side, 'middle') ?? rational(1), share);
  // Of a few things the nearest half, of more the nearest whole: nobody counts 3.6 of anything.
  const step = compare(count, rational(2)) < 0 ? rational(1, 2) : rational(1);
  return printCount(greatest(roundTo(count, step), step), PLAIN);
}

function publishedGrams(side: Side, food: LedgerFood, words: FormWords, cups: CupSystem): Published | undefined {
  const volume = volumeOf(side, { cups, pick: 'middle' });
  if (volume) {
    const spread = volumeSpread(food, words);
    if (!spread) return undefined;
    const low = volumeOf(side, { cups, pick: 'low' }) ?? volume;
    const high = volumeOf(side, { cups, pick: 'high' }) ?? volume;
    return {
      low: multiply(low, spread.low),
      usual: multiply(volume, spread.usual),
      high: multiply(high, spread.high),
      sources: spread.sources,
    };
  }
  const count = countOf(side, 'middle');
  if (!count || side.kind === 'pack') return undefined;
  const piece = pieceOf(side);
  const spread = pieceSpread(food, piece, words);
  if (!spread) return undefined;
  const range = side.kind === 'count' || side.kind === 'measure' ? side.range : undefined;
  return {
    low: multiply(range?.low ?? count, spread.low),
    usual: multiply(count, spread.usual),
    high: multiply(range?.high ?? count, spread.high),
    sources: spread.sources,
  };
}

function widen(published: Published, tolerance: Rational): Grams {
  const one = rational(1);
  return {
    low: least(multiply(published.low, subtract(one, WIDENED)), multiply(published.usual, subtract(one, tolerance))),
    high: greatest(multiply(published.high, add(one, WIDENED)), multiply(published.usual, add(one, tolerance))),
  };
}

const overlaps = (a: Grams, b: Grams): boolean => compare(a.low, b.high) <= 0 && compare(b.low, a.high) <= 0;

/** Why the two sides differ, and how each could be corrected. */
interface Grounds {
  readonly usual: Rational;
  readonly mend: string;
  readonly grounds: string;
}

function publishedGrounds(side: Side, written: Grams, published: Published, context: AgreementContext): Grounds {
  const { low, usual, high } = published;
  const run = compare(low, high) === 0 ? showGrams(low) : `${showGrams(low)} to ${showGrams(high)}`;
  return {
    usual,
    mend: `write ${showGrams(usual)}, or ${otherMeasure(side, middle(written.low, written.high), published, context.cups)}`,
    grounds: `published weights of this measure run ${run} (${namesOf(published.sources, context)})`,
  };
}

function disagree(
  code: 'Q01' | 'Q02',
  written: Grams,
  why: Grounds,
  at: { readonly side: Equal; readonly ref: LineRef; readonly food: LedgerFood },
  context: AgreementContext,
): void {
  const said = middle(written.low, written.high);
  const off = isZero(why.usual)
    ? rational(0)
    : divide(multiply(absolute(subtract(said, why.usual)), HUNDRED), why.usual);
  context.report(
    diagnose(code, placeOf(at.ref, at.side.span), {
      name: at.food.name,
      written: showGrams(said),
      table: showGrams(why.usual),
      percent: `${off.n / off.d} %`,
      mend: why.mend,
      grounds: why.grounds,
    }),
  );
}

function teaches(
  mass: Pair['mass'],
  other: Side,
  side: Equal,
  ref: LineRef,
  food: LedgerFood,
  context: AgreementContext,
): Taught | undefined {
  const grams =
    mass.kind === 'pack'
      ? multiply(pickOf(mass.range, 'middle'), baseValue(mass.each, context.cups, 'middle'))
      : baseValue(mass, context.cups, 'middle');
  const volume = volumeOf(other, { cups: context.cups, pick: 'middle' });
  const count = countOf(other, 'middle');
  const by = volume ?? (other.kind === 'pack' ? undefined : count);
  if (!by || isZero(by)) return undefined;
  const unit = volume ? 'ml' : pieceOf(other);
  // A count beside its weight ('6 beef cheeks = about 2.1 kg') is the ordinary way to write; only a volume is worth a word.
  if (volume) context.report(diagnose('Q03', placeOf(ref, side.span), { name: food.name }));
  return { grams: divide(grams, by), unit };
}

/** Two volumes of one thing, or two counts: exact as numbers. */
function twoVolumes(left: Amount, side: Equal, ref: LineRef, food: LedgerFood, context: AgreementContext): void {
  if (left.kind === 'count' && side.amount.kind === 'count') {
    twoCounts(left, side.amount, side, ref, food, context);
    return;
  }
  const a = volumeOf(left, { cups: context.cups, pick: 'middle' });
  const b = volumeOf(side.amount, { cups: context.cups, pick: 'middle' });
  if (!a || !b || isZero(a)) return;
  const off = absolute(subtract(divide(b, a), rational(1)));
  const about = left.about || side.amount.about ? ABOUT_WIDTH : CLOSE;
  if (compare(off, about) <= 0) return;
  const far = compare(off, multiply(about, rational(2))) > 0;
  context.report(
    diagnose(far ? 'Q01' : 'Q02', placeOf(ref, side.span), {
      name: food.name,
      written: `${showGrams(b).replace(/k?g$/, (unit) => (unit === 'kg' ? 'l' : 'ml'))}`,
      table: `${showGrams(a).replace(/k?g$/, (unit) => (unit === 'kg' ? 'l' : 'ml'))}`,
      percent: `${multiply(off, HUNDRED).n / multiply(off, HUNDRED).d} %`,
      mend: 'correct one of the two',
      grounds: 'both are volumes',
    }),
  );
}

/** Two counts of one thing are the same number, or one of them has lost its unit. */
function twoCounts(
  left: Count,
  right: Count,
  side: Equal,
  ref: LineRef,
  food: LedgerFood,
  context: AgreementContext,
): void {
  if (compare(left.range.low, right.range.low) === 0 && compare(left.range.high, right.range.high) === 0) return;
  const shown = (count: Count): string => toExactText(count.range.low);
  context.report(
    diagnose('Q01', placeOf(ref, side.span), {
      name: food.name,
      written: shown(right),
      table: shown(left),
      percent: 'a unit may be missing',
      mend: 'write the unit that is missing, or the same count',
      grounds: 'both are counts',
    }),
  );
}
