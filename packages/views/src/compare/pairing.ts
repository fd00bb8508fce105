import { compare, multiply, rational, type Rational } from '@quern/quantity';

/*
 * How two lists are paired: the small algorithms that matching is built of. Everything is settled by the order of the
 * lists where several pairings are equally good.
 */

export type Pair<T> = readonly [before: T, after: T];

/** What is left of two lists after pairing. */
export interface Left<T> {
  before: T[];
  after: T[];
}

/** How a thing is known in the first list and in the second; undefined when it is not. */
export interface Keys<T> {
  before(one: T): string | undefined;
  after(one: T): string | undefined;
}

export const sameKeys = <T>(key: (one: T) => string | undefined): Keys<T> => ({ before: key, after: key });

/** Takes out of both lists what has the same key, first with first. Things without a key stay. */
export function pairByKey<T>(left: Left<T>, keys: Keys<T>, pair: (a: T, b: T) => void): void {
  const waiting = new Map<string, T[]>();
  for (const one of left.after) {
    const its = keys.after(one);
    if (its !== undefined) waiting.set(its, [...(waiting.get(its) ?? []), one]);
  }
  const taken = new Set<T>();
  left.before = left.before.filter((one) => {
    const its = keys.before(one);
    const other = its === undefined ? undefined : waiting.get(its)?.shift();
    if (other === undefined) return true;
    taken.add(other);
    pair(one, other);
    return false;
  });
  left.after = left.after.filter((one) => !taken.has(one));
}

/** Takes the best pairs out of both lists, as long as they are likely at all. */
export function pairByLikeness<T>(
  left: Left<T>,
  likeness: (a: T, b: T) => number,
  least: number,
  pair: (a: T, b: T) => void,
): void {
  const scores = left.before.flatMap((a, i) => left.after.map((b, j) => ({ a, b, i, j, score: likeness(a, b) })));
  const likely = scores.filter(({ score }) => score >= least);
  likely.sort((x, y) => y.score - x.score || x.i - y.i || x.j - y.j);
  const taken = new Set<T>();
  for (const { a, b } of likely) {
    if (taken.has(a) || taken.has(b)) continue;
    taken.add(a).add(b);
    pair(a, b);
  }
  left.before = left.before.filter((one) => !taken.has(one));
  left.after = left.after.filter((one) => !taken.has(one));
}

/** Pairs two sequences so that the pairs stand in the same order in both and are together as alike as can be. */
export function alignSequences<T>(
  before: readonly T[],
  after: readonly T[],
  likeness: (a: T, b: T) => number,
  least: number,
): readonly Pair<T>[] {
  const best: number[][] = Array.from({ length: before.length + 1 }, () => new Array<number>(after.length + 1).fill(0));
  const at = (i: number, j: number): number => best[i]?.[j] ?? 0;
  const scores = before.map((a) => after.map((b) => likeness(a, b)));
  const score = (i: number, j: number): number => scores[i]?.[j] ?? 0;
  for (let i = before.length - 1; i >= 0; i--) {
    for (let j = after.length - 1; j >= 0; j--) {
      const together = score(i, j) >= least ? score(i, j) + at(i + 1, j + 1) : -1;
      const row = best[i];
      if (row) row[j] = Math.max(together, at(i + 1, j), at(i, j + 1));
    }
  }
  const pairs: Pair<T>[] = [];
  let [i, j] = [0, 0];
  while (i < before.length && j < after.length) {
    const [a, b] = [before[i] as T, after[j] as T];
    if (score(i, j) >= least && at(i, j) === score(i, j) + at(i + 1, j + 1)) {
      pairs.push([a, b]);
      i++;
      j++;
    } else if (at(i, j) === at(i + 1, j)) i++;
    else j++;
  }
  return pairs;
}

/** The most members of a sequence of numbers that already stand in rising order, as a set of positions. */
export function longestRising(values: readonly number[]): ReadonlySet<number> {
  const best: { readonly length: number; readonly from: number }[] = [];
  for (const [index, value] of values.entries()) {
    let [length, from] = [1, -1];
    for (let before = 0; before < index; before++) {
      const its = best[before]?.length ?? 0;
      if ((values[before] ?? 0) < value && its + 1 > length) [length, from] = [its + 1, before];
    }
    best.push({ length, from });
  }
  const most = best.reduce((longest, { length }) => Math.max(longest, length), 0);
  let at = best.findIndex(({ length }) => length === most);
  const kept = new Set<number>();
  while (at >= 0) {
    kept.add(at);
    at = best[at]?.from ?? -1;
  }
  return kept;
}

/** How much two lists of words have in common, 0 to 1, whatever their order (Dice's coefficient). */
export function sharedWords(a: readonly string[], b: readonly string[]): number {
  if (a.length + b.length === 0) return 1;
  const counts = new Map<string, number>();
  for (const word of a) counts.set(word, (counts.get(word) ?? 0) + 1);
  let shared = 0;
  for (const word of b) {
    const left = counts.get(word) ?? 0;
    if (left === 0) continue;
    counts.set(word, left - 1);
    shared++;
  }
  return (2 * shared) / (a.length + b.length);
}

const WORD = /[\p{L}\p{M}\p{N}]+/gu;
export const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(WORD) ?? [];

/** The value that occurs most often; of equally frequent ones the smallest. */
export function mostCommon(
  values: readonly Rational[],
): { readonly value: Rational; readonly count: number } | undefined {
  const counts = new Map<string, { readonly value: Rational; count: number }>();
  for (const value of values) {
    const key = `${value.n}/${value.d}`;
    const known = counts.get(key) ?? { value: multiply(value, rational(1)), count: 0 };
    known.count++;
    counts.set(key, known);
  }
  const all = [...counts.values()];
  return all.sort((a, b) => b.count - a.count || compare(a.value, b.value))[0];
}
