import {
  add,
  compare,
  isZero,
  multiply,
  rational,
  subtract,
  sign,
  temperaturePoint,
  ZERO,
  type Rational,
} from '@quern/quantity';
import type { Temperature } from '@quern/syntax';
import type { BoundMake, BoundStep } from '../bind.js';
import { alcoholLeftBy, alcoholRetainedBaked } from './alcohol.js';
import { isLiquid } from './parts.js';
import type { Part, StepItem } from '../model.js';
import { isHeating, isWater } from '../substances.js';
import { pickOf } from '../weighing.js';
import type { RunState, OpenPot } from './state.js';
import { record } from './record.js';

/* Steps: heat and time drive alcohol off by the published retention, whether or not a loss is written. */

export function step(run: RunState, item: BoundStep, pot: OpenPot, index: number): StepItem {
  if (pot.parts.holdsAlcohol) {
    offTheHeat(run, pot);
    treat(run, item, pot, index);
  }
  pot.boiling = boils(item) ? pot.parts.snapshot() : undefined;
  const { content, ref } = item;
  return {
    kind: 'step',
    ref,
    content,
    more: item.item.more.map((line) => ({ ref: { file: ref.file, line: line.line }, content: line.content })),
    every: item.item.every.map((line) => ({ ref: { file: ref.file, line: line.line }, content: line.content })),
  };
}

function treat(run: RunState, { content }: BoundStep, pot: OpenPot, index: number): void {
  const written = (): boolean => writtenLossFollows(run, pot.make, index);
  const { time, lane } = content;
  // Whoever works at it stirs it in; so does what moves by boiling.
  if (lane === 'hands' || lane === 'hob') pot.parts.stirIn();
  if (uses(content, FLAME)) leave(run, pot, () => alcoholLeftBy.flame, written());
  if (isHeating(content) && time) {
    const minutes = pickOf({ low: time.low.minutes, high: time.high.minutes }, run.input.pick);
    pot.parts.heat(minutes);
    leave(
      run,
      pot,
      ({ heatedMinutes, unstirredMinutes }) =>
        alcoholRetainedBaked(unstirredMinutes, subtract(heatedMinutes, unstirredMinutes)),
      written(),
    );
  }
  if (isNightOfADish(content, pot)) leave(run, pot, () => alcoholLeftBy.night, written());
}

/** A loss of water written before the next step covers the alcohol that boiled off with it. */
function writtenLossFollows(run: RunState, make: BoundMake, index: number): boolean {
  for (const item of make.items.slice(index + 1)) {
    if (item.kind === 'step') return false;
    if (item.kind === 'out' && item.content.verb === 'lose' && isWater(item.asFood)) return true;
  }
  return false;
}

/** Alcohol leaves until no more of what went in is there than a share that each part's treatment leaves. */
function leave(run: RunState, pot: OpenPot, share: (part: Part) => Rational | undefined, written: boolean): void {
  const gone = pot.parts.leaveAlcohol(share);
  if (isZero(gone)) return;
  if (written) run.pendingAlcohol = add(run.pendingAlcohol, gone);
  else record(run, pot, { kind: 'alcohol', parts: [], alcohol: gone, grams: gone });
}

const FLAME = /^flame$/;
const HOB = /^(?:hob|ring)$/;

function uses({ clauses }: BoundStep['content'], name: RegExp): boolean {
  return clauses.some((clause) => clause.kind === 'using' && clause.things.some((thing) => name.test(thing.name)));
}

const BOILS_AT = rational(100);
const isBoiling = ({ low, scale }: Temperature): boolean =>
  compare(temperaturePoint(low, scale).celsius, BOILS_AT) >= 0;

/** Whether a step leaves a pot at the boil: on the hob, at or until 100 °C or more. A hob line without a figure may be a gentle one. */
function boils({ content }: BoundStep): boolean {
  if (content.lane !== 'hob' && !uses(content, HOB)) return false;
  return content.clauses.some(
    (clause) =>
      (clause.kind === 'at' && isBoiling(clause.temperature)) ||
      (clause.kind === 'until' && clause.temperature !== undefined && isBoiling(clause.temperature)),
  );
}

/**
 * What goes into a boiling liquid that is then taken off the heat: between a step that boils and the next line that is
 * not something put in. If all of it weighs at most a quarter of what boils, the whole stays above 78 °C, at which alcohol
 * boils (20 °C and 100 °C mix to 84 °C); more of it cools the liquid, and then nothing is said to leave.
 */
export function offTheHeat(run: RunState, pot: OpenPot): void {
  const { boiling } = pot;
  pot.boiling = undefined;
  if (!boiling || !pot.parts.holdsAlcohol || !boiling.liquid) return;
  const added = subtract(pot.parts.total, boiling.grams);
  if (sign(added) <= 0 || compare(multiply(added, rational(4)), boiling.grams) > 0) return;
  leave(run, pot, (part) => (boiling.holds(part) ? undefined : alcoholLeftBy.boilingLiquid), false);
}

const NIGHT = rational(480);
const DAY = rational(1440);

/**
 * A wait of 8 to 24 hours without heat, of a dish and not a drink or something put up in spirit, which stand closed:
 * alcohol at most a twentieth of its weight, liquids at most three quarters. The bounds are a judgement of ours.
 */
function isNightOfADish({ lane, time, clauses }: BoundStep['content'], pot: OpenPot): boolean {
  if (lane !== 'wait' || !time || time.kind === 'at-least') return false;
  if (compare(time.low.minutes, NIGHT) < 0 || compare(time.high.minutes, DAY) > 0) return false;
  const frozen = clauses.some(
    (clause) =>
      clause.kind === 'at' &&
      compare(temperaturePoint(clause.temperature.low, clause.temperature.scale).celsius, ZERO) <= 0,
  );
  if (frozen || pot.unknown.length > 0) return false;
  const { total } = pot.parts;
  return (
    compare(multiply(pot.parts.alcohol(), rational(20)), total) <= 0 &&
    compare(multiply(pot.parts.massWhere(isLiquid), rational(4)), multiply(total, rational(3))) <= 0
  );
}
