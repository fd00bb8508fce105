import { add, compare, subtract, ZERO, type Rational } from '@quern/quantity';
import type { Entry, LineRef, Part } from '../model.js';
import { countsAsFlour } from '../substances.js';
import type { RunState, OpenPot } from './state.js';

/* The book of a pot: each movement with what stands after it, and the line at which the flour is fullest. */

export interface Movement {
  readonly ref?: LineRef;
  readonly kind: Entry['kind'];
  readonly parts: readonly Part[];
  readonly water?: Rational;
  readonly alcohol?: Rational;
  readonly grams: Rational | undefined;
}

export function record(run: RunState, pot: OpenPot, movement: Movement): void {
  const { ref, kind, parts, grams, water = ZERO, alcohol = ZERO } = movement;
  const goesIn = kind === 'food' || kind === 'draw';
  let flour = ZERO;
  for (const part of parts) if (countsAsFlour(part.food, run.input.counts)) flour = add(flour, part.grams);
  const totalAfter = pot.unknown.length === 0 ? pot.parts.total : undefined;
  const entry: Entry = { kind, parts, water, alcohol, grams, totalAfter };
  pot.entries.push(ref ? { ...entry, ref } : entry);
  if (flour.n === 0n) return;
  pot.flour = goesIn ? add(pot.flour, flour) : subtract(pot.flour, flour);
  if (!goesIn || (run.peak && compare(pot.flour, run.peak.grams) <= 0)) return;
  run.peak = {
    makeIndex: pot.make.index,
    entryIndex: pot.entries.length - 1,
    grams: pot.flour,
    parts: pot.parts.list(),
  };
}
