import { diagnose } from '@quern/text';
import { add, compare, divide, isZero, multiply, sign, subtract, ZERO, ONE, type Rational } from '@quern/quantity';
import type { BoundOut } from '../bind.js';
import { isDissolved, isLiquid, newPart, waterIn } from './parts.js';
import type { OutItem, Part } from '../model.js';
import { linePlace, placeOf } from '../places.js';
import { showGrams } from '../show.js';
import { isWater, liquidDensity, NOTHING_TO_WEIGH_BY, shareWritten, tally, waterOf } from '../substances.js';
import { volumeOf, weigh, type Pick } from '../weighing.js';
import type { RunState, OpenPot } from './state.js';
import { record } from './record.js';
import { weightMissing } from './weight-missing.js';
import { chooser, notInPot } from './targets.js';

/* What comes out: evenly, of one thing, of the liquid, or as water. Nothing leaves that is not there. */

export function takeOut(run: RunState, item: BoundOut, pot: OpenPot, index: number): OutItem {
  const { content, ref } = item;
  const asWater = content.verb !== 'save' && !item.of && isWater(item.asFood);
  const before = pot.unknown.length;
  const taken = asWater ? loseWater(run, item, pot) : takeParts(run, item, pot);
  if (!taken) {
    if (pot.unknown.length === before) pot.unknown.push({ ref, why: 'depends', name: '' });
  }
  const grams = taken?.grams;
  keepSaved(run, item, taken?.parts ?? [], grams, index);
  return {
    kind: 'out',
    ref,
    content,
    grams,
    ...(item.saved ? { saved: item.saved } : item.culture ? { saved: item.culture } : {}),
    manner: asWater ? 'food' : (taken?.manner ?? 'evenly'),
    estimate: taken?.manner === 'liquid',
  };
}

function keepSaved(
  run: RunState,
  item: BoundOut,
  parts: readonly Part[],
  grams: Rational | undefined,
  index: number,
): void {
  if (item.culture) {
    if (grams) tally(run.saved, item.culture, grams);
    return;
  }
  if (!item.saved) return;
  const named = run.input.bound.products.get(item.saved);
  if (
    named?.kind !== 'saved' ||
    named.itemIndex !== index ||
    (named.ref !== item.ref && named.ref.line !== item.ref.line)
  )
    return;
  // A drained liquid may be stated to be a food of the table: then that is its composition.
  const stated =
    item.asFood && item.of?.kind === 'liquid' && grams ? [newPart(item.asFood, item.ref, grams)] : undefined;
  run.products.set(item.saved, { parts: stated ?? parts, grams, draws: [] });
}

function loseWater(
  run: RunState,
  item: BoundOut,
  pot: OpenPot,
): { grams: Rational; parts: readonly Part[]; manner: OutItem['manner'] } | undefined {
  const inPot = pot.unknown.length === 0 ? pot.parts.total : undefined;
  const grams = outGrams(run, item, add(pot.parts.total, run.pendingAlcohol), inPot === undefined, pot);
  const alcohol = run.pendingAlcohol;
  run.pendingAlcohol = ZERO;
  if (grams === undefined) return undefined;
  const water = subtract(grams, alcohol);
  const held = pot.parts.water();
  if (compare(water, held) > 0) {
    if (pot.unknown.length === 0) tooMuch(run, item, grams, add(held, alcohol), 'water');
    return undefined;
  }
  if (sign(water) > 0) pot.parts.dry(water);
  record(run, pot, {
    ref: item.ref,
    kind: item.content.verb,
    parts: [],
    water: sign(water) > 0 ? water : ZERO,
    alcohol,
    grams,
  });
  return { grams, parts: [], manner: 'food' };
}

function takeParts(
  run: RunState,
  item: BoundOut,
  pot: OpenPot,
): { grams: Rational | undefined; parts: readonly Part[]; manner: OutItem['manner'] } | undefined {
  const target = outTarget(run, item, pot);
  if (!target) return undefined;
  const { chosen, manner, name } = target;
  if (item.content.verb === 'save' && item.content.of && !item.content.as && pot.parts.has(chosen)) {
    // What is taken is in the pot, so the new thing still needs a name.
    run.input.report(diagnose('L14', placeOf(item.ref, item.content.of.span), { found: item.content.of.text }));
  }
  if (
    item.content.verb === 'lose' &&
    item.of?.kind === 'food' &&
    isWater(item.of.food) &&
    shareWritten(item.content.amount, 'middle') &&
    item.content.of
  ) {
    run.input.report(diagnose('M08', placeOf(item.ref, item.content.of.span), {}));
  }
  if (manner === 'liquid') return drain(run, item, pot);
  const held = pot.parts.massWhere(chosen);
  const inexact =
    pot.unknown.length > 0 && (manner === 'evenly' || pot.unknown.some((entry) => entry.name === name.key));
  if (isZero(held) && manner !== 'evenly') {
    // Of a thing whose own weight is unknown nothing can be said; a thing that is not there is a mistake.
    if (pot.unknown.length === 0) nothingThere(run, item, name.text, pot);
    return undefined;
  }
  const grams = outGrams(run, item, held, inexact, pot);
  const { amount } = item.content;
  const share = shareWritten(amount, run.input.pick);
  if (share && inexact) {
    const parts = pot.parts.take(share, chosen);
    record(run, pot, { ref: item.ref, kind: item.content.verb, parts, grams: undefined });
    return { grams: undefined, parts, manner };
  }
  if (grams === undefined) return undefined;
  if (compare(grams, held) > 0) {
    if (!inexact) tooMuch(run, item, grams, held, name.text);
    return undefined;
  }
  const parts = isZero(held) ? [] : pot.parts.take(divide(grams, held), chosen);
  record(run, pot, { ref: item.ref, kind: item.content.verb, parts, grams });
  return { grams, parts, manner };
}

function outTarget(
  run: RunState,
  item: BoundOut,
  pot: OpenPot,
): { chosen: (part: Part) => boolean; manner: OutItem['manner']; name: { text: string; key: string } } | undefined {
  const { of, asFood, content } = item;
  if (of) {
    if (of.kind === 'liquid') return { chosen: isLiquid, manner: 'liquid', name: { text: 'liquid', key: '' } };
    const key = of.kind === 'food' ? of.food.key : of.kind === 'product' ? of.name : '';
    return { chosen: chooser(run, of), manner: 'of', name: { text: content.of?.text ?? '', key } };
  }
  if (asFood && !item.culture && content.verb !== 'save') {
    const chosen = (part: Part): boolean => part.food.key === asFood.key;
    // A name of the table that is not in the pot ('as peel') only labels.
    if (pot.parts.has(chosen)) return { chosen, manner: 'food', name: { text: asFood.name, key: asFood.key } };
  }
  return { chosen: () => true, manner: 'evenly', name: { text: 'the pot', key: '' } };
}

/**
 * Takes liquid with what is dissolved in it. When more is wanted than the liquids hold, the solids give water in
 * proportion to theirs (M11).
 */
function drain(
  run: RunState,
  item: BoundOut,
  pot: OpenPot,
): { grams: Rational | undefined; parts: readonly Part[]; manner: OutItem['manner'] } | undefined {
  const inPhase = (part: Part): boolean => isLiquid(part) || isDissolved(part);
  const held = pot.parts.massWhere(inPhase);
  const grams = outGrams(run, item, held, pot.unknown.length > 0, pot);
  if (grams === undefined) return undefined;
  if (compare(grams, held) <= 0) {
    const parts = isZero(held) ? [] : pot.parts.take(divide(grams, held), inPhase);
    record(run, pot, { ref: item.ref, kind: item.content.verb, parts, grams });
    return { grams, parts, manner: 'liquid' };
  }
  const missing = subtract(grams, held);
  const solids = (part: Part): boolean => !inPhase(part);
  if (compare(missing, pot.parts.water(solids)) > 0) {
    if (pot.unknown.length === 0) tooMuch(run, item, grams, add(held, pot.parts.water(solids)), 'liquid');
    return undefined;
  }
  run.input.report(diagnose('M11', linePlace(item.ref), { grams: showGrams(missing) }));
  const juice = waterFrom(run, pot, solids, missing);
  const parts = [...pot.parts.take(ONE, inPhase), ...juice];
  record(run, pot, { ref: item.ref, kind: item.content.verb, parts, grams });
  return { grams, parts, manner: 'liquid' };
}

/** Water drawn out of solids, as parts of plain water that remember the food they came from. */
function waterFrom(run: RunState, pot: OpenPot, solids: (part: Part) => boolean, grams: Rational): Part[] {
  const held = pot.parts.water(solids);
  const share = divide(grams, held);
  const waterFood = waterOf(pot.parts.list());
  const juice = pot.parts
    .list()
    .filter(solids)
    .flatMap((part) => {
      const water = waterIn(part);
      return water && sign(water) > 0
        ? [{ ...newPart(waterFood, part.origin, multiply(water, share)), via: part.via }]
        : [];
    });
  pot.parts.dry(grams, solids);
  return juice;
}

/** Grams that an out line names, of `held` for a percent or a share. */
function outGrams(run: RunState, item: BoundOut, held: Rational, inexact: boolean, pot: OpenPot): Rational | undefined {
  const { amount, equals } = item.content;
  // At the low end of a weight the most leaves, at the high end the least.
  const pick: Pick = run.input.pick === 'low' ? 'high' : run.input.pick === 'high' ? 'low' : 'middle';
  const share = shareWritten(amount, pick);
  if (share) return inexact ? undefined : multiply(held, share);
  if (amount.kind === 'share' && amount.word === 'rest') return inexact ? undefined : held;
  const food = item.of?.kind === 'food' ? item.of.food : item.asFood;
  const context = { cups: run.input.cups, pick, taught: run.input.taught };
  const weighed = weigh(
    amount,
    equals,
    food ?? NOTHING_TO_WEIGH_BY,
    { name: '', note: item.content.note?.text ?? '' },
    context,
  ).grams;
  if (weighed) return weighed;
  const millilitres = volumeOf(amount, context);
  if (millilitres && item.of?.kind === 'liquid') {
    const density = liquidDensity(pot.parts.list().filter((part) => isLiquid(part) || isDissolved(part)));
    if (density) return multiply(millilitres, density);
  }
  run.input.report(
    weightMissing(
      linePlace(item.ref),
      item.content.of?.text ?? item.content.as?.text ?? 'this',
      amount,
      item.ref.line.text,
    ),
  );
  return undefined;
}

function tooMuch(run: RunState, item: BoundOut, wanted: Rational, held: Rational, name: string): void {
  run.input.report(diagnose('M03', linePlace(item.ref), { wanted: showGrams(wanted), held: showGrams(held), name }));
}

function nothingThere(run: RunState, item: BoundOut, name: string, pot: OpenPot): void {
  const of = item.content.of;
  const hasOf = of ? /\bof\s+$/i.test(item.ref.line.text.slice(0, of.span.start)) : false;
  if (of && !hasOf && !item.content.as) {
    run.input.report(diagnose('M07', placeOf(item.ref, of.span), { name }));
  } else if (of) notInPot(run, name, placeOf(item.ref, of.span), pot);
}
