import { diagnose, type Diagnostic, type Place } from '@quern/text';
import {
  add,
  compare,
  divide,
  equal,
  HUNDRED,
  isZero,
  multiply,
  ONE,
  sign,
  subtract,
  toExactText,
  sum,
  ZERO,
  type Rational,
} from '@quern/quantity';
import type { LedgerInput, LedgerRun } from './ledger/state.js';
import { runLedger } from './ledger/run.js';
import { countsAsFlour, foodWater } from './substances.js';
import { waterIn } from './ledger/parts.js';
import type { Flour, LedgerFood, LineRef, Part } from './model.js';
import { linePlace } from './places.js';
import { showPercent } from './show.js';

/*
 * What counts as flour, and how much of it there is (NOTATION 4.6). The flour F obeys F = a + bF: a is the flour by
 * weight, b the flour by per cent on flour. Both are read off two runs of the ledger (with F = 0 and F = 1), which is
 * exact because every amount is linear in F; a third run with the solution proves it.
 */

export interface FlourSolution {
  readonly run: LedgerRun;
  readonly flour: Rational | undefined;
}

/** The ledger with the recipe's flour solved for. `yieldGrams` anchors a formula written all in per cent. */
export function solveFlour(
  input: Omit<LedgerInput, 'flour'>,
  yieldGrams: Rational | undefined,
  at: LineRef,
): FlourSolution {
  const trials = new Trials(input);
  const first = trials.run(undefined);
  if (!first.asksForFlour) return trials.accept(undefined);
  const problems: Diagnostic[] = [];
  const flour = solve(trials, yieldGrams, at, (diagnostic) => problems.push(diagnostic));
  problems.forEach(input.report);
  return trials.accept(flour);
}

/** Runs of one ledger with several amounts of flour; what a run says is held back until that run is taken. */
class Trials {
  readonly #runs = new Map<string, { readonly run: LedgerRun; readonly said: readonly Diagnostic[] }>();

  constructor(readonly input: Omit<LedgerInput, 'flour'>) {}

  run(flour: Rational | undefined): LedgerRun {
    const key = flour ? toExactText(flour) : '';
    const known = this.#runs.get(key);
    if (known) return known.run;
    const said: Diagnostic[] = [];
    const run = runLedger({ ...this.input, flour, report: (diagnostic) => said.push(diagnostic) });
    this.#runs.set(key, { run, said });
    return run;
  }

  /** Grams of flour at the fullest line, and grams of the dish, with so much flour to reckon on. */
  peak(flour: Rational): Rational {
    return this.run(flour).peak?.grams ?? ZERO;
  }
  dish(flour: Rational): Rational | undefined {
    return this.run(flour).makes.at(-1)?.pot.grams;
  }

  accept(flour: Rational | undefined): FlourSolution {
    const run = this.run(flour);
    this.#runs.get(flour ? toExactText(flour) : '')?.said.forEach(this.input.report);
    return { run, flour: flour ?? run.peak?.grams };
  }
}

type Report = (diagnostic: Diagnostic) => void;

function solve(trials: Trials, yieldGrams: Rational | undefined, at: LineRef, report: Report): Rational | undefined {
  const byWeight = trials.peak(ZERO);
  // Mostly no flour is in per cent: then what lies there by weight is all of it.
  if (!isZero(byWeight) && equal(trials.peak(byWeight), byWeight)) return byWeight;
  // The gram of flour assumed may be less than what already lies there by weight: the slope is taken at the same pot.
  const probe = add(byWeight, ONE);
  const slope = divide(subtract(trials.peak(probe), byWeight), probe);
  if (isZero(byWeight)) return fromYield(trials, slope, yieldGrams, at, report);
  const flour = compare(slope, ONE) < 0 ? settle(trials, divide(byWeight, subtract(ONE, slope))) : undefined;
  if (flour && equal(trials.peak(flour), flour)) {
    // More flour would do as well: what lay there by weight was taken out again (a culture fed and put back).
    const more = add(flour, ONE);
    return equal(trials.peak(more), more) ? anchored(trials, yieldGrams, linePlace(at), report) : flour;
  }
  report(diagnose('Q11', linePlace(at), { percent: showPercent(slope) }));
  return undefined;
}

/** A formula all in per cent: the flours must come to 100 %, and the yield says how much that is. */
function fromYield(
  trials: Trials,
  slope: Rational,
  yieldGrams: Rational | undefined,
  at: LineRef,
  report: Report,
): Rational | undefined {
  const place = linePlace(at);
  if (isZero(slope)) report(diagnose('F03', place, {}));
  else if (!equal(slope, ONE)) report(diagnose('F01', place, { percent: showPercent(slope) }));
  else return anchored(trials, yieldGrams, place, report);
  return undefined;
}

/** The flour with which the dish comes to its yield. */
function anchored(
  trials: Trials,
  yieldGrams: Rational | undefined,
  place: Place,
  report: Report,
): Rational | undefined {
  if (!yieldGrams || isZero(yieldGrams)) {
    report(diagnose('F04', place, {}));
    return undefined;
  }
  // Weights beside the percents (an egg wash of 30 g) make the dish affine in F, not proportional. Two amounts of the
  // size of the yield are tried, for with a gram of flour a fixed weight that goes out would be more than there is.
  const once = trials.dish(yieldGrams);
  const twice = trials.dish(add(yieldGrams, yieldGrams));
  if (!once || !twice) return undefined;
  const perGram = divide(subtract(twice, once), yieldGrams);
  return sign(perGram) > 0 ? add(yieldGrams, divide(subtract(yieldGrams, once), perGram)) : undefined;
}

/** When another pot turns out fuller with this flour, its own line through two points is taken. */
function settle(trials: Trials, candidate: Rational): Rational {
  let flour = candidate;
  for (let round = 0; round < 4; round++) {
    const found = trials.peak(flour);
    if (equal(found, flour)) return flour;
    const slope = subtract(trials.peak(add(flour, ONE)), found);
    if (equal(slope, ONE)) return flour;
    flour = divide(subtract(found, multiply(slope, flour)), subtract(ONE, slope));
  }
  return flour;
}

/** Baker's reckoning of a finished run; undefined when there is no flour. */
export function describeFlour(run: LedgerRun, counts: LedgerInput['counts']): Flour | undefined {
  const { peak } = run;
  if (!peak || sign(peak.grams) <= 0) return undefined;
  const parts = formulaParts(run, peak.makeIndex, peak.entryIndex, peak.parts);
  const byFood = new Map<string, { food: LedgerFood; grams: Rational }>();
  for (const part of parts) {
    const before = byFood.get(part.food.key);
    byFood.set(part.food.key, { food: part.food, grams: add(before?.grams ?? ZERO, part.grams) });
  }
  const percentOf = (grams: Rational): Rational => multiply(divide(grams, peak.grams), HUNDRED);
  const through = sum(
    peak.parts.filter((part) => part.via !== '' && countsAsFlour(part.food, counts)).map((part) => part.grams),
  );
  const waters = parts.map((part) => waterIn({ ...part, waterLost: ZERO }));
  return {
    grams: peak.grams,
    makeIndex: peak.makeIndex,
    entryIndex: peak.entryIndex,
    formula: [...byFood.values()].map(({ food, grams }) => ({ food, grams, percent: percentOf(grams) })),
    prefermented: divide(through, peak.grams),
    hydration: divide(sum(parts.map((part) => foodWater({ ...part, waterLost: ZERO }, counts))), peak.grams),
    allWater: waters.every((water) => water !== undefined)
      ? divide(sum(waters.map((water) => water ?? ZERO)), peak.grams)
      : undefined,
  };
}

/**
 * Everything put with the flour: what stands with it at its fullest line, what goes into that pot later, and what joins
 * it in the makes that draw that pot.
 */
function formulaParts(run: LedgerRun, makeIndex: number, entryIndex: number, atPeak: readonly Part[]): readonly Part[] {
  const parts: Part[] = [...atPeak];
  const later = (entries: (typeof run.makes)[number]['pot']['entries']): void => {
    for (const entry of entries) if (entry.kind === 'food' || entry.kind === 'draw') parts.push(...entry.parts);
  };
  later(run.makes[makeIndex]?.pot.entries.slice(entryIndex + 1) ?? []);
  const followed = new Set([makeIndex]);
  run.makes.forEach((make, index) => {
    if (index <= makeIndex) return;
    const draws = make.items.flatMap((item) =>
      item.kind === 'in' && item.source.kind === 'product' && !item.optional ? [item.source.product] : [],
    );
    const joins = draws.filter((name) => followed.has(run.makeOf.get(name) ?? -1));
    if (joins.length === 0) return;
    followed.add(index);
    for (const entry of make.pot.entries) {
      if (entry.kind === 'food') parts.push(...entry.parts);
      if (entry.kind === 'draw') parts.push(...entry.parts.filter((part) => !joins.includes(part.via)));
    }
  });
  return parts;
}
