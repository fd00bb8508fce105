/** Times that can be compared: taken in turns in one run, medians, and ratios between them. */

/** One line of the report. */
export interface Measured {
  readonly what: string;
  /** The ratio or figure that matters, as printed. */
  readonly value: string;
  /** What is aimed at, in words. */
  readonly goal: string;
  readonly reached: boolean;
  /** For the gate: a ratio, and whether more or less of it is better. */
  readonly ratio?: { readonly id: string; readonly value: number; readonly better: 'more' | 'less' };
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle];
  const lower = sorted[sorted.length % 2 === 0 ? middle - 1 : middle];
  if (upper === undefined || lower === undefined) throw new Error('no values');
  return (lower + upper) / 2;
}

/** Runs the candidates in turns, so that a busy machine is busy for all of them, and gives the median milliseconds of each. */
export async function inTurns<Name extends string>(
  candidates: Readonly<Record<Name, () => unknown>>,
  rounds: number,
): Promise<Record<Name, number>> {
  const entries = Object.entries(candidates) as [Name, () => unknown][];
  const times = new Map<Name, number[]>(entries.map(([name]) => [name, []]));
  // The first round warms up and is not counted.
  for (let round = 0; round <= rounds; round++) {
    for (const [name, run] of entries) {
      const started = performance.now();
      await run();
      if (round > 0) times.get(name)?.push(performance.now() - started);
    }
  }
  return Object.fromEntries(entries.map(([name]) => [name, median(times.get(name) ?? [])])) as Record<Name, number>;
}

export const perSecond = (bytes: number, milliseconds: number) => `${(bytes / 1000 / milliseconds).toFixed(1)} MB/s`;
