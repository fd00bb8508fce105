import type { StepItem } from '@quern/compiler';
import { compare, divide, multiply, rational, subtract, type Rational } from '@quern/quantity';
import type { Temperature } from '@quern/syntax';
import type { PotFacts } from './facts.js';

/* What a step says of heat, and of what it stands in. */

export function celsius(value: Rational, scale: Temperature['scale']): Rational {
  return scale === 'C' ? value : divide(multiply(subtract(value, rational(32)), rational(5)), rational(9));
}

export function around(item: StepItem): Rational | undefined {
  const found: Rational[] = [];
  for (const clause of item.content.clauses) {
    if (clause.kind !== 'at') continue;
    found.push(celsius(clause.temperature.low, clause.temperature.scale));
    if (clause.change) found.push(celsius(clause.change.to.low, clause.change.to.scale));
  }
  return found.reduce<Rational | undefined>((a, b) => (a && compare(a, b) <= 0 ? a : b), undefined);
}

export function core(item: StepItem): Rational | undefined {
  for (const clause of item.content.clauses) {
    if (clause.kind === 'until' && clause.temperature) return celsius(clause.temperature.low, clause.temperature.scale);
  }
  return undefined;
}

/** The lane in which a step heats the food: `oven`, `hob`, or hands that use the hob. */
export function heatLane(item: StepItem): 'oven' | 'hob' | undefined {
  const { lane, clauses } = item.content;
  if (lane === 'oven' || lane === 'hob') return lane;
  const uses = clauses.flatMap((clause) => (clause.kind === 'using' ? clause.things.map((thing) => thing.name) : []));
  if (uses.includes('hob') || uses.includes('ring')) return 'hob';
  return uses.includes('oven') ? 'oven' : undefined;
}

/** A leavened dough or its bread; or something with little water (common practice, no source: less than 35 g in 100 g). */
export function isBreadOrDry(pot: PotFacts): boolean {
  if (pot.leavened && pot.flour.n * 10n >= pot.flour.d * 3n) return true;
  return pot.water !== undefined && compare(pot.water, rational(35)) < 0;
}
