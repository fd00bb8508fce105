import { PLAIN, printDecimal, printFixed, withUnit, type NumberStyle } from './print.js';
import {
  absolute,
  add,
  compare,
  divide,
  exact,
  HUNDRED,
  isZero,
  multiply,
  rational,
  roundTo,
  subtract,
  sum,
  ZERO,
  type Rational,
} from './rational.js';

/** What is weighed: `small` doses (salt, yeast, spice, raising agents) are told finer than the rest. */
export type Dose = 'ordinary' | 'small';

/** Below so many grams (or millilitres), to the nearest `step`. The last entry of a list has no limit. */
export interface Step {
  readonly below?: Rational;
  readonly step: Rational;
}

/**
 * How weights (or volumes) are rounded and shown. A named value that is passed in; nothing else in the project decides
 * how many digits a reader sees.
 */
export interface Rounding {
  readonly id: string;
  readonly steps: Readonly<Record<Dose, readonly Step[]>>;
  /** From here on told in kilograms (litres). */
  readonly thousandsFrom: Rational;
  /** No rounding moves an amount by more than this part of it: 0.14 g is not shown as 0.1 g. */
  readonly relativeBound: Rational;
  /** No rounding moves a baker's percentage by more than so many percentage points. */
  readonly percentBound: Rational;
  /** `20.0 g`, as a scale with tenths shows it, instead of `20 g`. */
  readonly keepZeros: boolean;
}

const TENTH = exact('0.1');
const UNIT = rational(1);
const FIVE = rational(5);
const TEN = rational(10);
const KILO = rational(1000);

/** A kitchen scale: 0.1 g under 10 g (small doses: under 100 g), 1 g, 5 g from 1 kg, 10 g from 10 kg, then told in kg. */
export const KITCHEN_SCALE: Rounding = {
  id: 'kitchen scale',
  steps: {
    ordinary: [
      { below: TEN, step: TENTH },
      { below: KILO, step: UNIT },
      { below: rational(10_000), step: FIVE },
      { step: TEN },
    ],
    small: [{ below: HUNDRED, step: TENTH }, { below: KILO, step: UNIT }, { step: FIVE }],
  },
  thousandsFrom: rational(10_000),
  relativeBound: TENTH,
  percentBound: exact('0.05'),
  keepZeros: false,
};

/** A scale with tenths: 0.1 g up to 1 kg, 1 g above, always in grams, zeros shown. */
export const FINE_SCALE: Rounding = {
  id: 'fine scale',
  steps: {
    ordinary: [{ below: KILO, step: TENTH }, { step: UNIT }],
    small: [{ below: KILO, step: TENTH }, { step: UNIT }],
  },
  thousandsFrom: rational(1_000_000),
  relativeBound: TENTH,
  percentBound: exact('0.05'),
  keepZeros: true,
};

/** Sums of a batch or a shopping list: kilograms from 1 kg, to the gram up to 10 kg, to ten grams above. */
export const TOTALS: Rounding = {
  id: 'totals',
  steps: {
    ordinary: [{ below: TEN, step: TENTH }, { below: rational(10_000), step: UNIT }, { step: TEN }],
    small: [{ below: HUNDRED, step: TENTH }, { below: rational(10_000), step: UNIT }, { step: TEN }],
  },
  thousandsFrom: KILO,
  relativeBound: TENTH,
  percentBound: exact('0.05'),
  keepZeros: false,
};

/** An amount as it is shown, and what exactly that says. */
export interface Shown {
  /** `210`, `1.25`. */
  readonly number: string;
  readonly unit: 'g' | 'kg' | 'ml' | 'l';
  /** Number and unit together. */
  readonly text: string;
  /** Exactly what the text says, in g or ml. */
  readonly value: Rational;
  /** It was rounded to a multiple of this, in g or ml. */
  readonly step: Rational;
}

export interface ShowOptions {
  readonly dose?: Dose;
  readonly measure?: 'mass' | 'volume';
  readonly style?: NumberStyle;
}

export interface FlourBound {
  /** The flour on which percentages are reckoned, in g, exactly. */
  readonly flour: Rational;
  /** Percentage points; the policy's own bound unless given. */
  readonly bound?: Rational;
}

/**
 * Grams (or millilitres) as a scale shows them. If the rounding would move the amount by more than the policy's
 * relative bound, or, with `percent`, its percentage on the flour by more than the bound, more digits are shown.
 * @throws RangeError when the bound is not above zero.
 */
export function showGrams(
  grams: Rational,
  rounding: Rounding,
  options: ShowOptions & { readonly percent?: FlourBound } = {},
): Shown {
  const { dose = 'ordinary', percent } = options;
  const bound = positive(percent?.bound ?? rounding.percentBound);
  let step = firstStep(grams, rounding, dose);
  if (percent && !isZero(percent.flour)) {
    const most = multiply(percent.flour, divide(bound, HUNDRED));
    step = fineEnough(grams, step, most);
  }
  return show(roundTo(grams, step), step, rounding, options);
}

/** The step, or the first finer one that moves the amount by no more than `most`. */
function fineEnough(amount: Rational, step: Rational, most: Rational): Rational {
  let found = step;
  while (compare(absolute(subtract(roundTo(amount, found), amount)), absolute(most)) > 0) found = finer(found);
  return found;
}

function positive(bound: Rational): Rational {
  if (bound.n <= 0n) throw new RangeError('a bound on rounding must be above zero');
  return bound;
}

/** The policy's step for an amount of this size, finer where that would move the amount too far. */
function firstStep(amount: Rational, rounding: Rounding, dose: Dose): Rational {
  const size = absolute(amount);
  const entry = rounding.steps[dose].find(({ below }) => below === undefined || compare(size, below) < 0);
  if (!entry) throw new RangeError(`the rounding '${rounding.id}' has no step without a limit`);
  const most = multiply(size, positive(rounding.relativeBound));
  return fineEnough(amount, entry.step, most);
}

/** One digit more: 10 and 5 become 1, 1 becomes 0.1. */
function finer(step: Rational): Rational {
  let power = UNIT;
  while (compare(power, step) >= 0) power = divide(power, TEN);
  while (compare(multiply(power, TEN), step) < 0) power = multiply(power, TEN);
  return power;
}

function decimalsOf(step: Rational): number {
  let places = 0;
  for (let scaled = step; scaled.d !== 1n; scaled = multiply(scaled, TEN)) places++;
  return places;
}

function show(value: Rational, step: Rational, rounding: Rounding, options: ShowOptions): Shown {
  const style = options.style ?? PLAIN;
  const inThousands = compare(absolute(value), rounding.thousandsFrom) >= 0;
  const divisor = inThousands ? KILO : UNIT;
  const places = decimalsOf(divide(step, divisor));
  const print = rounding.keepZeros || inThousands ? printFixed : printDecimal;
  const number = print(divide(value, divisor), places, style);
  const [small, large] = options.measure === 'volume' ? (['ml', 'l'] as const) : (['g', 'kg'] as const);
  const unit = inThousands ? large : small;
  return { number, unit, text: withUnit(number, unit, style), value, step };
}

/** A line of a formula to be shown with the others. */
export interface FormulaLine {
  readonly grams: Rational;
  readonly dose?: Dose;
  /** Whether it is part of the flour on which the percentages are reckoned. */
  readonly flour: boolean;
}

/**
 * All weights of a formula together, so that the percentages a reader works out from the figures shown (flour shown
 * rounded too) differ from the exact ones by no more than the policy's bound. Where they would, the figure that does
 * most of it gets one more digit, until they do not. `flourBesides` is flour that none of the lines weighs out (it comes
 * in a product of another recipe), in g.
 * @returns one shown weight for each line, in order.
 */
export function showFormula(
  lines: readonly FormulaLine[],
  rounding: Rounding,
  options: Pick<ShowOptions, 'style'> & { readonly bound?: Rational; readonly flourBesides?: Rational } = {},
): readonly Shown[] {
  const bound = positive(options.bound ?? rounding.percentBound);
  const steps = lines.map(({ grams, dose }) => firstStep(grams, rounding, dose ?? 'ordinary'));
  const besides = options.flourBesides ?? ZERO;
  const exactFlour = add(besides, sum(lines.filter(({ flour }) => flour).map(({ grams }) => grams)));
  const nextToRefine = (): number | undefined =>
    exactFlour.n > 0n ? worstLine(lines, steps, { exactFlour, besides }, bound) : undefined;
  for (let worst = nextToRefine(); worst !== undefined; worst = nextToRefine()) {
    steps[worst] = finer(steps[worst] ?? UNIT);
  }
  return lines.map(({ grams, dose }, index) => {
    const step = steps[index] ?? UNIT;
    return show(roundTo(grams, step), step, rounding, { ...options, ...(dose ? { dose } : {}) });
  });
}

/** The line to refine: of the first percentage that is moved too far, the weight (its own or a flour's) that moves it most. */
function worstLine(
  lines: readonly FormulaLine[],
  steps: readonly Rational[],
  { exactFlour, besides }: { readonly exactFlour: Rational; readonly besides: Rational },
  bound: Rational,
): number | undefined {
  const shown = lines.map(({ grams }, index) => roundTo(grams, steps[index] ?? UNIT));
  const moved = lines.map(({ grams }, index) => absolute(subtract(shown[index] ?? grams, grams)));
  const shownFlour = add(besides, sum(shown.filter((_, index) => lines[index]?.flour)));
  for (const [index, { grams }] of lines.entries()) {
    if (shownFlour.n > 0n) {
      const before = divide(grams, exactFlour);
      const after = divide(shown[index] ?? grams, shownFlour);
      if (compare(absolute(multiply(HUNDRED, subtract(after, before))), bound) <= 0) continue;
    }
    return heaviestMove(index, lines, moved, divide(absolute(grams), exactFlour));
  }
  return undefined;
}

function heaviestMove(
  index: number,
  lines: readonly FormulaLine[],
  moved: readonly Rational[],
  share: Rational,
): number {
  let worst = index;
  let most = moved[index] ?? UNIT;
  for (const [other, { flour }] of lines.entries()) {
    const weight = multiply(moved[other] ?? UNIT, share);
    if (!flour || compare(weight, most) <= 0) continue;
    worst = other;
    most = weight;
  }
  return worst;
}
