import {
  add,
  greatest,
  interval,
  ONE,
  rational,
  subtract,
  sum,
  ZERO,
  type Interval,
  type Rational,
} from '@quern/quantity';
import { normaliseName, type Formula, type StepItem } from '@quern/compiler';

/*
 * When things are ready, counted from the moment the first line begins, if nothing has to wait for a cook, a ring or an
 * oven. The order is that of NOTATION 4.8: steps of a make follow each other, and a step waits for what is drawn above it.
 * The clock plans with kitchens, hours and freedom; this is the bound that no plan can beat.
 */

interface StepTimes {
  /** From the beginning of the first line: earliest and latest, for the two ends of every range. */
  readonly begins: Interval;
  readonly ends: Interval;
}

export interface Readiness {
  /** By line number of the step. */
  readonly steps: ReadonlyMap<number, StepTimes>;
  /** By normalised name: makes and saved things. */
  readonly products: ReadonlyMap<string, Interval>;
  readonly dish: Interval;
  /** Minutes in which the cook is busy. */
  readonly hands: Interval;
}

const known = new WeakMap<Formula, Readiness>();

export function readinessOf(formula: Formula): Readiness {
  const before = known.get(formula);
  if (before !== undefined) return before;
  const low = runEnd(formula, 'low');
  const high = runEnd(formula, 'high');
  const steps = new Map<number, StepTimes>();
  for (const [line, times] of low.steps) {
    const most = high.steps.get(line) ?? times;
    steps.set(line, { begins: interval(times.begins, most.begins), ends: interval(times.ends, most.ends) });
  }
  const products = new Map([...low.products].map(([name, at]) => [name, interval(at, high.products.get(name) ?? at)]));
  const made: Readiness = {
    steps,
    products,
    dish: interval(low.dish, high.dish),
    hands: interval(low.hands, high.hands),
  };
  known.set(formula, made);
  return made;
}

/**
 * How much longer a step may take before the dish is ready later; zero on the longest chain. Reckoned at the low end of
 * every range.
 */
export function slackOf(formula: Formula, step: StepItem): Rational {
  const far = rational(1_000_000_000);
  const { dish } = readinessOf(formula);
  const late = runEnd(formula, 'low', { line: step.ref.line.number, more: far });
  return greatest(ZERO, subtract(far, subtract(late.dish, dish.low)));
}

/** Minutes of a step at one end of its range; without a time the timetable counts one (message T01). */
function stepMinutes(step: StepItem, end: 'low' | 'high'): Rational {
  return step.content.time?.[end].minutes ?? ONE;
}

interface EndRun {
  readonly steps: ReadonlyMap<number, { readonly begins: Rational; readonly ends: Rational }>;
  readonly products: ReadonlyMap<string, Rational>;
  readonly dish: Rational;
  readonly hands: Rational;
}

function runEnd(
  formula: Formula,
  end: 'low' | 'high',
  delay?: { readonly line: number; readonly more: Rational },
): EndRun {
  const steps = new Map<number, { begins: Rational; ends: Rational }>();
  const products = new Map<string, Rational>();
  const hands: Rational[] = [];
  let dish = ZERO;
  for (const make of formula.makes) {
    let now = ZERO;
    let pending = ZERO;
    for (const item of make.items) {
      if (item.kind === 'in' && item.source.kind === 'product') {
        pending = greatest(pending, products.get(item.source.product) ?? ZERO);
      } else if (item.kind === 'step') {
        const begins = greatest(now, pending);
        const line = item.ref.line.number;
        const minutes = stepMinutes(item, end);
        const ends = add(add(begins, minutes), delay?.line === line ? delay.more : ZERO);
        if (item.content.lane === 'hands') hands.push(minutes);
        steps.set(line, { begins, ends });
        now = ends;
      } else if (item.kind === 'out' && item.saved !== undefined) products.set(item.saved, greatest(now, pending));
    }
    now = greatest(now, pending);
    products.set(normaliseName(make.name), now);
    dish = now;
  }
  return { steps, products, dish, hands: sum(hands) };
}
