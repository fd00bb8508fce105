import { add, isZero, multiply, subtract, ONE, type Rational } from '@quern/quantity';
import type { BoundMake, BoundStep } from '../bind.js';
import { alcoholKept } from './alcohol.js';
import type { StepItem } from '../model.js';
import { isHeating, isWater } from '../substances.js';
import { pickOf } from '../weighing.js';
import type { RunState, OpenPot } from './state.js';
import { record } from './record.js';

/* Steps: heat drives alcohol off by the published retention, whether or not a loss is written. */

export function step(run: RunState, item: BoundStep, pot: OpenPot, index: number): StepItem {
  const { content } = item;
  if (isHeating(content) && content.time) {
    const minutes = pickOf({ low: content.time.low.minutes, high: content.time.high.minutes }, run.input.pick);
    boilOff(run, pot, minutes, writtenLossFollows(run, pot.make, index));
  }
  const ref = item.ref;
  return {
    kind: 'step',
    ref,
    content,
    more: item.item.more.map((line) => ({ ref: { file: ref.file, line: line.line }, content: line.content })),
    every: item.item.every.map((line) => ({ ref: { file: ref.file, line: line.line }, content: line.content })),
  };
}

/** A loss of water written before the next step covers the alcohol that boiled off with it. */
function writtenLossFollows(run: RunState, make: BoundMake, index: number): boolean {
  for (const item of make.items.slice(index + 1)) {
    if (item.kind === 'step') return false;
    if (item.kind === 'out' && item.content.verb === 'lose' && isWater(item.asFood)) return true;
  }
  return false;
}

function boilOff(run: RunState, pot: OpenPot, minutes: Rational, written: boolean): void {
  const gone = pot.parts.heat(minutes, (part, alcohol) =>
    multiply(alcohol, subtract(ONE, alcoholKept(part.heatedMinutes, add(part.heatedMinutes, minutes)))),
  );
  if (isZero(gone)) return;
  if (written) {
    run.pendingAlcohol = add(run.pendingAlcohol, gone);
    return;
  }
  record(run, pot, { kind: 'alcohol', parts: [], alcohol: gone, grams: gone });
}
