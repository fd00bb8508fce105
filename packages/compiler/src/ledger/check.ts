import { diagnose } from '@quern/text';
import { divide, HUNDRED, multiply, sign, sum, type Rational } from '@quern/quantity';
import type { BoundCheck } from '../bind.js';
import type { CheckItem, Part } from '../model.js';
import { linePlace, placeOf } from '../places.js';
import { checkHolds } from './check-holds.js';
import { showGrams, showPercent } from '../show.js';
import { foodWater, isWater } from '../substances.js';
import type { RunState, OpenPot } from './state.js';
import { weightOfTarget, chooser, notInPot } from './targets.js';

/* `check` lines, held against the pot at their line. */

export function check(run: RunState, item: BoundCheck, pot: OpenPot): CheckItem {
  const found = checked(run, item, pot);
  const holds = found ? checkHolds(item.content.amount, found, run.input.cups) : undefined;
  if (holds === false && found) {
    const { amount } = item.content;
    const shown = amount.kind === 'percent' ? showPercent(divide(found, HUNDRED)) : showGrams(found);
    const written = item.ref.line.text.slice(amount.span.start, amount.span.end);
    run.input.report(diagnose('M14', linePlace(item.ref), { written, found: shown }));
  }
  return { kind: 'check', ref: item.ref, content: item.content, holds, found };
}

function checked(run: RunState, item: BoundCheck, pot: OpenPot): Rational | undefined {
  const { content } = item;
  const chosen = checkChooser(run, item);
  if (pot.unknown.length > 0) return undefined;
  if (content.name && item.name?.kind === 'food' && item.name.food.from === 'unknown') {
    notInPot(run, content.name.text, placeOf(item.ref, content.name.span), pot);
    return undefined;
  }
  let grams =
    chosen === 'all-water'
      ? pot.parts.water()
      : item.name?.kind === 'water'
        ? foodWaterIn(run, pot)
        : pot.parts.massWhere(chosen);
  if (item.from) {
    const via = item.from;
    const inside = chosen === 'all-water' ? () => true : chosen;
    grams = pot.parts.massWhere((part) => part.via === via && inside(part));
  }
  if (content.amount.kind !== 'percent') return run.input.checkFactor ? divide(grams, run.input.checkFactor) : grams;
  const base = checkBase(run, item, pot, chosen === 'all-water' ? () => true : chosen);
  return base && sign(base) > 0 ? multiply(divide(grams, base), HUNDRED) : undefined;
}

/** Food water: the food itself, and the water in foods that the file counts as water. */
function foodWaterIn(run: RunState, pot: OpenPot): Rational {
  return sum(pot.parts.list().map((part) => foodWater(part, run.input.counts)));
}

function checkChooser(run: RunState, item: BoundCheck): ((part: Part) => boolean) | 'all-water' {
  const { name } = item;
  if (!name) return () => true;
  switch (name.kind) {
    case 'all-water':
      return 'all-water';
    case 'water':
      return (part) => isWater(part.food);
    default:
      return chooser(run, name);
  }
}

/** What a percent check is reckoned on: `on`, else for `from` the whole of the thing, else the pot. */
function checkBase(
  run: RunState,
  item: BoundCheck,
  pot: OpenPot,
  chosen: (part: Part) => boolean,
): Rational | undefined {
  if (item.on) return weightOfTarget(run, item.on, pot, item as never);
  if (item.from) return pot.parts.massWhere(chosen);
  return pot.parts.total;
}
