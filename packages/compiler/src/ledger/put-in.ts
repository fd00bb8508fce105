import { diagnose, type Diagnostic } from '@quern/text';
import {
  compare,
  divide,
  HUNDRED,
  isZero,
  multiply,
  subtract,
  sum,
  units,
  ZERO,
  ONE,
  type Rational,
} from '@quern/quantity';
import type { BoundIn } from '../bind.js';
import { newPart, timesPart } from './parts.js';
import type { InItem, Part, Weighed } from '../model.js';
import { linePlace, placeOf } from '../places.js';
import { portionsOf } from '../portions.js';
import { showGrams, showPercent } from '../show.js';
import { foodForWeighing, liquidDensity, nameOfTarget, tally } from '../substances.js';
import { baseValue, isSpelledCount, pickOf, weigh } from '../weighing.js';
import type { RunState, OpenPot, RunProduct } from './state.js';
import { record } from './record.js';
import { weightMissing } from './weight-missing.js';
import { weightOfTarget } from './targets.js';

/* What goes in: foods, cultures and shares of products. */

export function putIn(run: RunState, item: BoundIn, pot: OpenPot, index: number): InItem {
  const alternatives = item.alternatives.map((one) => alternative(run, one, pot));
  const result = weighIn(run, item, pot);
  const { content, source, ref } = item;
  const share = enter(run, item, result.weighed, pot, index);
  return {
    kind: 'in',
    ref,
    content,
    source,
    weighed:
      share.grams !== undefined && result.weighed.grams === undefined
        ? { ...result.weighed, grams: share.grams }
        : result.weighed,
    ...(share.share ? { share: share.share } : {}),
    ...(result.on ? { on: result.on } : {}),
    optional: content.optional,
    alternatives,
  };
}

function alternative(run: RunState, item: BoundIn, pot: OpenPot): InItem {
  const { weighed, on } = weighIn(run, item, pot);
  return {
    kind: 'in',
    ref: item.ref,
    content: item.content,
    source: item.source,
    weighed,
    ...(on ? { on } : {}),
    optional: item.content.optional,
    alternatives: [],
  };
}

function weighIn(
  run: RunState,
  item: BoundIn,
  pot: OpenPot,
): { weighed: Weighed; on?: { name: string; grams: Rational | undefined } } {
  const { amount } = item.content;
  if (amount.kind === 'percent') {
    const target = item.on ?? run.input.bound.basis;
    if (!target) {
      run.input.report(
        diagnose('Q07', placeOf(item.ref, amount.span), {
          percent: item.ref.line.text.slice(amount.span.start, amount.span.end),
        }),
      );
      return { weighed: { grams: undefined, basis: 'unknown', sources: [] } };
    }
    const base = weightOfTarget(run, target, pot, item);
    const percent = divide(pickOf(amount.range, run.input.pick), HUNDRED);
    const grams = base ? multiply(percent, base) : undefined;
    return {
      weighed: { grams, basis: grams ? 'reckoned' : 'unknown', sources: [] },
      on: { name: nameOfTarget(target, item.content.on?.text), grams: base },
    };
  }
  if (amount.kind === 'share' || (amount.kind === 'portion' && item.source.kind === 'product'))
    return { weighed: { grams: undefined, basis: 'reckoned', sources: [] } };
  const words = { name: item.content.name.text, note: item.content.note?.text ?? '' };
  const food = item.food ?? foodForWeighing(item);
  const context = { cups: run.input.cups, pick: run.input.pick, taught: run.input.taught };
  return { weighed: weigh(amount, item.content.equals, food, words, context) };
}

/** Puts the line's parts into the pot; for a draw gives back the share. */
function enter(
  run: RunState,
  item: BoundIn,
  weighed: Weighed,
  pot: OpenPot,
  index: number,
): { grams?: Rational; share?: Rational } {
  const { source, content, ref } = item;
  if (source.kind === 'product') return drawProduct(run, source.product, item, weighed, pot, index);
  const grams = weighed.grams;
  if (content.optional) return {};
  if (grams === undefined) {
    unweighed(run, item, pot);
    return {};
  }
  const parts = newParts(run, item, grams);
  for (const part of parts) pot.parts.put(part);
  if (source.kind === 'culture') tally(run.taken, source.culture, grams);
  record(run, pot, { ref, kind: 'food', parts, grams });
  return {};
}

function newParts(run: RunState, item: BoundIn, grams: Rational): Part[] {
  const { source, ref } = item;
  if (source.kind === 'culture') {
    const culture = run.input.cultures.get(source.culture);
    return (culture?.parts ?? []).map(({ food, share }) => newPart(food, ref, multiply(grams, share), source.culture));
  }
  return [newPart(item.food ?? foodForWeighing(item), ref, grams)];
}

function unweighed(run: RunState, item: BoundIn, pot: OpenPot): void {
  const { content, ref, source } = item;
  const food = item.food ?? foodForWeighing(item);
  // An open amount with no estimate counts as nothing and says so; everything else makes the pot inexact.
  if (content.amount.kind === 'open') {
    // Of a food that nobody knows no more is said than that.
    if (food.from !== 'unknown')
      run.input.report(
        diagnose('Q12', placeOf(ref, content.name.span), { amount: content.amount.word, name: content.name.text }),
      );
    return;
  }
  if (
    source.kind === 'food' &&
    food.from === 'unknown' &&
    (content.amount.kind === 'share' || content.amount.kind === 'portion')
  ) {
    pot.unknown.push({ ref, why: 'depends', name: food.key });
    return;
  }
  if (content.amount.kind !== 'percent') noWeight(run, item);
  pot.unknown.push({ ref, why: content.amount.kind === 'percent' ? 'depends' : 'no-weight', name: food.key });
}

/** Q08; where a variant's `swap` put the food there, V02 at that line. */
function noWeight(run: RunState, item: BoundIn): void {
  const { content, ref } = item;
  const swap = run.input.swapAt(ref);
  if (swap) run.input.report(diagnose('V02', linePlace(swap), { name: content.name.text }));
  // The message that nobody knows the food says that its weight is unknown too.
  else if (item.source.kind !== 'food' || item.source.food.from !== 'unknown') run.input.report(unweighable(item));
}

const unweighable = ({ ref, content }: BoundIn): Diagnostic =>
  weightMissing(placeOf(ref, content.name.span), content.name.text, content.amount, ref.line.text);

function drawProduct(
  run: RunState,
  name: string,
  item: BoundIn,
  weighed: Weighed,
  pot: OpenPot,
  itemIndex: number,
): { grams?: Rational; share?: Rational } {
  const product = run.products.get(name);
  const { ref, content } = item;
  if (!product) {
    pot.unknown.push({ ref, why: 'depends', name });
    return {};
  }
  const named = run.input.bound.products.get(name);
  const drawn = shareOf(run, item, weighed, product, name);
  if (drawn.share === undefined) {
    if (drawn.noWeight) run.input.report(unweighable(item));
    pot.unknown.push({ ref, why: 'depends', name });
    return {};
  }
  const share = drawn.share;
  const grams = product.grams ? multiply(product.grams, share) : undefined;
  product.draws.push({ makeIndex: pot.make.index, itemIndex, grams, share, optional: content.optional });
  if (named?.kind !== 'used') overdrawn(run, product, item, name);
  const result = { share, ...(grams ? { grams } : {}) };
  if (content.optional) return result;
  if (!product.grams) pot.unknown.push({ ref, why: 'depends', name });
  const parts = product.parts.map((part) => ({ ...timesPart(part, share), via: name }));
  for (const part of parts) pot.parts.put(part);
  record(run, pot, { ref, kind: 'draw', parts, grams });
  return result;
}

function shareOf(
  run: RunState,
  item: BoundIn,
  weighed: Weighed,
  product: RunProduct,
  name: string,
): { share?: Rational; noWeight?: boolean } {
  const { amount } = item.content;
  if (amount.kind === 'share') {
    if (amount.word === 'rest') {
      const before = sum(product.draws.filter((draw) => !draw.optional).map((draw) => draw.share ?? ZERO));
      return { share: subtract(ONE, before) };
    }
    return { share: pickOf({ low: amount.low ?? ONE, high: amount.high ?? ONE }, run.input.pick) };
  }
  if (amount.kind === 'portion') {
    const whole = portionsWanted(run, name, amount.of);
    return whole ? { share: divide(pickOf(amount.range, run.input.pick), whole) } : { noWeight: true };
  }
  if (amount.kind === 'measure' && isSpelledCount(amount.unit.id)) {
    const whole = portionsWanted(run, name, units[amount.unit.id].many);
    if (whole) return { share: divide(pickOf(amount.range, run.input.pick), whole) };
  }
  if (!product.grams || isZero(product.grams)) return {};
  const grams = weighed.grams ?? productVolume(run, item, product);
  return grams ? { share: divide(grams, product.grams) } : { noWeight: true };
}

/** How many of that thing a used dish gives: its servings, or its pieces. */
function portionsWanted(run: RunState, name: string, of: string): Rational | undefined {
  const formula = run.input.bound.products.get(name)?.used?.formula;
  return formula ? portionsOf(formula, of) : undefined;
}

/** A product drawn by volume weighs what its liquid weighs, if the pot is all liquid. */
function productVolume(run: RunState, item: BoundIn, product: RunProduct): Rational | undefined {
  const { amount } = item.content;
  if (amount.kind !== 'measure' || units[amount.unit.id].dimension !== 'volume') return undefined;
  const density = liquidDensity(product.parts);
  return density ? multiply(baseValue(amount, run.input.cups, run.input.pick), density) : undefined;
}

function overdrawn(run: RunState, product: RunProduct, item: BoundIn, name: string): void {
  const shares = sum(product.draws.filter((draw) => !draw.optional).map((draw) => draw.share ?? ZERO));
  const over = compare(shares, ONE) > 0;
  if (!over || item.content.optional) return;
  const made = product.grams;
  run.input.report(
    diagnose('M01', linePlace(item.ref), {
      name,
      drawn: made ? showGrams(multiply(shares, made)) : `${showPercent(shares)}`,
      made: made ? showGrams(made) : '100 %',
    }),
  );
}
