import { diagnose, type Diagnostic } from '@quern/text';
import type { Rational } from '@quern/quantity';
import type { Target } from '../bind.js';
import { isLiquid } from './parts.js';
import type { LineRef, Part } from '../model.js';
import { placeOf } from '../places.js';
import { countsAsFlour } from '../substances.js';
import type { RunState, OpenPot } from './state.js';

/* What a name after `on`, `of` or in a check means in a pot. */

export function weightOfTarget(
  run: RunState,
  target: Target,
  pot: OpenPot,
  item: { ref: LineRef; content: { on?: { span: { start: number; end: number }; text: string } } },
): Rational | undefined {
  switch (target.kind) {
    case 'flour':
      run.asksForFlour = true;
      return run.input.flour;
    case 'all':
      return pot.unknown.length === 0 ? pot.parts.total : undefined;
    case 'product': {
      if (pot.parts.has((part) => part.via === target.name))
        return pot.parts.massWhere((part) => part.via === target.name);
      return run.products.get(target.name)?.grams;
    }
    default: {
      const chosen = chooser(run, target);
      if (!pot.parts.has(chosen)) {
        if (pot.unknown.length === 0 && item.content.on)
          notInPot(run, item.content.on.text, placeOf(item.ref, item.content.on.span), pot);
        return undefined;
      }
      return pot.unknown.some((entry) => target.kind === 'food' && entry.name === target.food.key)
        ? undefined
        : pot.parts.massWhere(chosen);
    }
  }
}

export function chooser(run: RunState, target: Target): (part: Part) => boolean {
  switch (target.kind) {
    case 'all':
      return () => true;
    case 'flour':
      return (part) => countsAsFlour(part.food, run.input.counts);
    case 'liquid':
      return isLiquid;
    case 'product':
      return (part) => part.via === target.name;
    case 'culture':
      return (part) => part.culture === target.name;
    case 'food':
      return (part) => part.food.key === target.food.key;
  }
}

export function notInPot(run: RunState, name: string, place: Diagnostic['place'], pot: OpenPot): void {
  const inside = [...new Set(pot.parts.list().map((part) => part.food.name))].slice(0, 5).join(', ');
  run.input.report(diagnose('Q10', place, { name, inside: inside || 'nothing yet' }));
}
