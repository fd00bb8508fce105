import { printMixed, printPercent, withUnit, PLAIN, unitWord, type NumberStyle } from './print.js';
import {
  add,
  compare,
  divide,
  exact,
  floor,
  greatest,
  HUNDRED,
  isZero,
  middle,
  multiply,
  negate,
  rational,
  round,
  subtract,
  sum,
  type Rational,
} from './rational.js';
import { sizeOf, type CupSystem, type UnitId } from './units.js';

/** The measures a cook owns, largest first. */
export type ScoopTool =
  | 'cup'
  | 'half-cup'
  | 'third-cup'
  | 'quarter-cup'
  | 'tablespoon'
  | 'teaspoon'
  | 'half-teaspoon'
  | 'quarter-teaspoon'
  | 'eighth-teaspoon';

/** So many level fills of one measure. */
export interface Scoop {
  readonly tool: ScoopTool;
  readonly count: bigint;
}

/**
 * What a volume becomes in cups and spoons. Every kind but `nothing` states how far off it is:
 * `error` is its own volume less the target, in ml, exactly; `relativeError` is that over the target.
 */
export type Scooped =
  | {
      readonly kind: 'scoops';
      /** Largest measure first. */
      readonly scoops: readonly Scoop[];
      readonly volume: Rational;
      readonly error: Rational;
      readonly relativeError: Rational;
      /** False when no combination comes within the tolerance: then this is the nearest there is. */
      readonly withinTolerance: boolean;
    }
  /** About a pinch: no measure is that small, so nothing is promised beyond the error. */
  | { readonly kind: 'pinch'; readonly volume: Rational; readonly error: Rational; readonly relativeError: Rational }
  /** Less than half a pinch; to be weighed, or taken as a trace. The volume is that which was asked for. */
  | { readonly kind: 'less-than-a-pinch'; readonly volume: Rational }
  | { readonly kind: 'nothing' };

export interface ScoopOptions {
  readonly cups: CupSystem;
  /** The largest relative error that is accepted for the sake of fewer scoops; 3/100 unless given. */
  readonly tolerance?: Rational;
}

interface ToolFacts {
  readonly tool: ScoopTool;
  readonly of: UnitId;
  readonly share: Rational;
}

const TOOLS: readonly ToolFacts[] = [
  { tool: 'cup', of: 'cup', share: rational(1) },
  { tool: 'half-cup', of: 'cup', share: rational(1, 2) },
  { tool: 'third-cup', of: 'cup', share: rational(1, 3) },
  { tool: 'quarter-cup', of: 'cup', share: rational(1, 4) },
  { tool: 'tablespoon', of: 'tbsp', share: rational(1) },
  { tool: 'teaspoon', of: 'tsp', share: rational(1) },
  { tool: 'half-teaspoon', of: 'tsp', share: rational(1, 2) },
  { tool: 'quarter-teaspoon', of: 'tsp', share: rational(1, 4) },
  { tool: 'eighth-teaspoon', of: 'tsp', share: rational(1, 8) },
];
const FACTS = new Map(TOOLS.map((facts) => [facts.tool, facts]));

function factsOf(tool: ScoopTool): ToolFacts {
  const facts = FACTS.get(tool);
  if (!facts) throw new RangeError(`no such measure: ${tool}`);
  return facts;
}

/** ml in one level fill. */
export function toolSize(tool: ScoopTool, cups: CupSystem): Rational {
  const { of, share } = factsOf(tool);
  return multiply(sizeOf(of, cups), share);
}

/** ml in all of them together. */
export function scoopsVolume(scoops: readonly Scoop[], cups: CupSystem): Rational {
  return sum(scoops.map(({ tool, count }) => multiply(toolSize(tool, cups), rational(count))));
}

/** One way to fill part of a cup or a little more: counts in the order of `TOOLS` without the whole cup. */
interface Filling {
  /** In units of 1/scale ml. */
  readonly size: bigint;
  readonly counts: readonly number[];
  readonly scoops: number;
  readonly tools: number;
}

/** All that a cook can reach with one set of measures, besides whole cups. */
interface Reach {
  /** The least number that makes every measure a whole number of 1/scale ml. */
  readonly scale: bigint;
  readonly cup: bigint;
  /** One per size, ascending, each the one that is easiest to scoop. */
  readonly fillings: readonly Filling[];
}

// At most so many of each: two halves are a cup, three thirds likewise, two quarters a half, and no cook counts past
// three tablespoons before reaching for a cup. Teaspoons stop short of a tablespoon, which differs with the system.
const MOST_TABLESPOONS = 3;
const mostOfEach = (cups: CupSystem): readonly number[] => {
  const spoonfuls = divide(sizeOf('tbsp', cups), sizeOf('tsp', cups));
  let teaspoons = 0;
  while (compare(rational(teaspoons + 1), spoonfuls) < 0) teaspoons++;
  return [1, 2, 1, MOST_TABLESPOONS, teaspoons, 1, 1, 1];
};

const reaches = new Map<CupSystem, Reach>();

function reachOf(cups: CupSystem): Reach {
  const known = reaches.get(cups);
  if (known) return known;
  const made = makeReach(cups);
  reaches.set(cups, made);
  return made;
}

function makeReach(cups: CupSystem): Reach {
  const sizes = TOOLS.map(({ tool }) => toolSize(tool, cups));
  let scale = 1n;
  for (const size of sizes) scale *= multiply(size, rational(scale)).d;
  const [cup = 0n, ...steps] = sizes.map((size) => (size.n * scale) / size.d);
  let found: Filling[] = [{ size: 0n, counts: [], scoops: 0, tools: 0 }];
  mostOfEach(cups).forEach((most, index) => {
    const step = steps[index] ?? 0n;
    found = found.flatMap((filling) => Array.from({ length: most + 1 }, (_, count) => addFills(filling, step, count)));
  });
  const best = new Map<bigint, Filling>();
  for (const filling of found) {
    const other = best.get(filling.size);
    if (!other || easier(filling, other) < 0) best.set(filling.size, filling);
  }
  return { scale, cup, fillings: [...best.values()].sort((a, b) => (a.size < b.size ? -1 : 1)) };
}

function addFills(filling: Filling, step: bigint, count: number): Filling {
  return {
    size: filling.size + step * BigInt(count),
    counts: [...filling.counts, count],
    scoops: filling.scoops + count,
    tools: filling.tools + (count > 0 ? 1 : 0),
  };
}

/** Fewer scoops, then fewer tools, then larger measures first. Never zero for two different fillings. */
function easier(a: Filling, b: Filling): number {
  if (a.scoops !== b.scoops) return a.scoops - b.scoops;
  if (a.tools !== b.tools) return a.tools - b.tools;
  for (let index = 0; index < a.counts.length; index++) {
    const difference = (b.counts[index] ?? 0) - (a.counts[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** A filling beside so many whole cups, and how far it is from the target (in 1/(scale * target.d) ml, without sign). */
interface Candidate {
  readonly wholeCups: bigint;
  readonly filling: Filling;
  readonly off: bigint;
}

const scoopsIn = (c: Candidate): bigint => c.wholeCups + BigInt(c.filling.scoops);
const toolsIn = (c: Candidate): number => c.filling.tools + (c.wholeCups > 0n ? 1 : 0);
const byBigint = (a: bigint, b: bigint): number => (a < b ? -1 : a > b ? 1 : 0);

/** Within the tolerance: fewest scoops, then fewest tools, then the smallest error, then more whole cups and larger measures. */
function byEase(a: Candidate, b: Candidate): number {
  return (
    byBigint(scoopsIn(a), scoopsIn(b)) ||
    toolsIn(a) - toolsIn(b) ||
    byBigint(a.off, b.off) ||
    byBigint(b.wholeCups, a.wholeCups) ||
    easier(a.filling, b.filling)
  );
}

/** Outside it: the smallest error first. */
const byError = (a: Candidate, b: Candidate): number => byBigint(a.off, b.off) || byEase(a, b);

function choose(candidates: Iterable<Candidate>, order: (a: Candidate, b: Candidate) => number): Candidate | undefined {
  let best: Candidate | undefined;
  for (const candidate of candidates) if (!best || order(candidate, best) < 0) best = candidate;
  return best;
}

/** Every candidate between two volumes. Fillings reach a little over two cups, so few numbers of whole cups come into question. */
function* between(low: Rational, high: Rational, target: Rational, reach: Reach): Generator<Candidate> {
  const { scale, cup, fillings } = reach;
  const bottom = -floor(negate(multiply(low, rational(scale))));
  const top = floor(multiply(high, rational(scale)));
  const largest = fillings.at(-1)?.size ?? 0n;
  for (let wholeCups = top / cup; wholeCups >= 0n && wholeCups * cup + largest >= bottom; wholeCups--) {
    const least = bottom - wholeCups * cup;
    for (let index = firstAtLeast(fillings, least); index < fillings.length; index++) {
      const filling = fillings[index];
      if (!filling || filling.size > top - wholeCups * cup) break;
      const apart = (wholeCups * cup + filling.size) * target.d - target.n * scale;
      yield { wholeCups, filling, off: apart < 0n ? -apart : apart };
    }
  }
}

function firstAtLeast(fillings: readonly Filling[], size: bigint): number {
  let low = 0;
  let high = fillings.length;
  while (low < high) {
    const half = (low + high) >> 1;
    if ((fillings[half]?.size ?? 0n) < size) low = half + 1;
    else high = half;
  }
  return low;
}

const DEFAULT_TOLERANCE = exact('0.03');
/** A pinch is half the smallest spoon (common practice, no source). */
const PINCH_OF_A_TEASPOON = rational(1, 16);
const HALF = rational(1, 2);

/**
 * A volume as a cook measures it: the combination of cups 1, 1/2, 1/3, 1/4, tablespoon and teaspoons 1, 1/2, 1/4, 1/8
 * with the fewest level scoops among those within the tolerance; of several the one with fewest kinds of measure, then
 * the nearest. At most three tablespoons, and never as many teaspoons as make one. When none is near enough, the
 * nearest of all, and it says so.
 * @param millilitres what is to be measured.
 * @throws RangeError when the volume or the tolerance is below zero.
 */
export function scoop(millilitres: Rational, options: ScoopOptions): Scooped {
  const { cups, tolerance = DEFAULT_TOLERANCE } = options;
  if (millilitres.n < 0n) throw new RangeError('a volume cannot be below zero');
  if (tolerance.n < 0n) throw new RangeError('a tolerance cannot be below zero');
  if (isZero(millilitres)) return { kind: 'nothing' };
  return tooSmall(millilitres, cups) ?? chooseScoops(millilitres, tolerance, cups);
}

/** A pinch when that is nearer than the smallest spoon; less than a pinch when nothing is nearer still. */
function tooSmall(target: Rational, cups: CupSystem): Scooped | undefined {
  const pinch = multiply(sizeOf('tsp', cups), PINCH_OF_A_TEASPOON);
  if (compare(target, middle(pinch, toolSize('eighth-teaspoon', cups))) >= 0) return undefined;
  if (compare(target, multiply(pinch, HALF)) < 0) return { kind: 'less-than-a-pinch', volume: target };
  return { kind: 'pinch', volume: pinch, ...errorOf(pinch, target) };
}

function errorOf(volume: Rational, target: Rational): { error: Rational; relativeError: Rational } {
  const error = subtract(volume, target);
  return { error, relativeError: divide(error, target) };
}

/**
 * So much that the tolerance is a cup or more: nobody leaves out a cup to scoop once less, so it is the nearest whole
 * number of cups. This also bounds the search, which would look at every number of cups within the tolerance.
 */
function wholeCups(target: Rational, cups: CupSystem): Scooped {
  const count = round(divide(target, toolSize('cup', cups)));
  const scoops: readonly Scoop[] = [{ tool: 'cup', count }];
  const volume = scoopsVolume(scoops, cups);
  return { kind: 'scoops', scoops, volume, ...errorOf(volume, target), withinTolerance: true };
}

function chooseScoops(target: Rational, tolerance: Rational, cups: CupSystem): Scooped {
  const slack = multiply(target, tolerance);
  if (compare(slack, toolSize('cup', cups)) >= 0) return wholeCups(target, cups);
  const reach = reachOf(cups);
  // Nothing at all is not a measure of something, however wide the tolerance.
  const smallest = toolSize('eighth-teaspoon', cups);
  const around = (slack: Rational): Iterable<Candidate> =>
    between(greatest(subtract(target, slack), smallest), add(target, slack), target, reach);
  const near = choose(around(slack), byEase);
  // The widest gap between two combinations is less than a teaspoon in every system.
  const chosen = near ?? choose(around(toolSize('teaspoon', cups)), byError);
  if (!chosen) throw new RangeError('no measure comes near this volume');
  const scoops = scoopsOf(chosen);
  const volume = scoopsVolume(scoops, cups);
  return { kind: 'scoops', scoops, volume, ...errorOf(volume, target), withinTolerance: near !== undefined };
}

function scoopsOf({ wholeCups, filling }: Candidate): readonly Scoop[] {
  const counts = [wholeCups, ...filling.counts.map((count) => BigInt(count))];
  return TOOLS.flatMap(({ tool }, index) => {
    const count = counts[index] ?? 0n;
    return count > 0n ? [{ tool, count }] : [];
  });
}

const FAMILIES: readonly UnitId[] = ['cup', 'tbsp', 'tsp'];

/**
 * `1 1/2 cups`, `1/4 cup + 3 tbsp`, `3/4 tsp + 1/8 tsp`, `a pinch`, `less than a pinch`, `nothing`. Fills of one family
 * are told as one number where cooks have a name for it (1/4, 1/3, 1/2, 2/3, 3/4), else one after the other.
 */
export function printScoops(scooped: Scooped, style: NumberStyle = PLAIN): string {
  switch (scooped.kind) {
    case 'scoops':
      return FAMILIES.flatMap((unit) => printFamily(scooped.scoops, unit, style)).join(' + ');
    case 'pinch':
      return 'a pinch';
    case 'less-than-a-pinch':
      return 'less than a pinch';
    case 'nothing':
      return 'nothing';
  }
}

function printFamily(scoops: readonly Scoop[], unit: UnitId, style: NumberStyle): string[] {
  let terms: Rational[] = [];
  for (const { tool, count } of scoops) {
    const { of, share } = factsOf(tool);
    if (of === unit) terms = joinTerm(terms, multiply(share, rational(count)));
  }
  return terms.map((term) => withUnit(printMixed(term, style), unitWord(unit, term), style));
}

/** The term joined to the one before it where the sum has a name, else after it. */
function joinTerm(terms: readonly Rational[], term: Rational): Rational[] {
  const last = terms.at(-1);
  if (last && isNamed(add(last, term))) return [...terms.slice(0, -1), add(last, term)];
  return [...terms, term];
}

const NAMED_FRACTIONS: ReadonlySet<string> = new Set(['1/2', '1/3', '2/3', '1/4', '3/4']);

function isNamed(value: Rational): boolean {
  return value.d === 1n || NAMED_FRACTIONS.has(`${value.n % value.d}/${value.d}`);
}

/** How far off, for a reader: `+1.2 %`, `-0.4 %`, and `exact` when nothing is. Empty for what has no error stated. */
export function printScoopError(scooped: Scooped, style: NumberStyle = PLAIN): string {
  if (scooped.kind !== 'scoops' && scooped.kind !== 'pinch') return '';
  if (isZero(scooped.relativeError)) return 'exact';
  const sign = scooped.relativeError.n > 0n ? '+' : '';
  return sign + printPercent(multiply(scooped.relativeError, HUNDRED), 1, style);
}
