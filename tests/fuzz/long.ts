/** New damage for as long as it is let, led by coverage: a text that reaches new code is damaged further. */
import { Session } from 'node:inspector/promises';
import fc from 'fast-check';
import { corpus } from './corpus.js';
import { jsonCorpus } from './json.js';
import { damaged } from './mutations.js';
import { mostMilliseconds, targets, type Target } from './targets.js';

export interface Failure {
  readonly target: string;
  readonly message: string;
  /** The shortest text found that still fails. */
  readonly text: string;
}

export interface Outcome {
  readonly texts: number;
  /** Texts that reached code which no earlier text had reached. */
  readonly kept: number;
  readonly blocks: number;
  readonly failures: readonly Failure[];
}

const batch = 100;

/** Runs until `seconds` are over; the same seed gives the same texts. */
export async function fuzz(seconds: number, seed: number, report: (line: string) => void): Promise<Outcome> {
  const coverage = await startCoverage();
  const pool = [...corpus, ...jsonCorpus];
  const begun = pool.length;
  const failures = new Map<string, Failure>();
  const until = Date.now() + seconds * 1000;
  let texts = 0;
  for (let round = 0; Date.now() < until; round++) {
    for (const text of fc.sample(damaged(pool), { seed: seed + round, numRuns: batch })) {
      texts++;
      for (const [name, { takes: target }] of Object.entries(targets)) {
        const message = await problem(target, text);
        if (message === undefined || failures.has(`${name} ${message}`)) continue;
        failures.set(`${name} ${message}`, {
          target: name,
          message,
          text: await shortest(text, async (one) => (await problem(target, one)) === message),
        });
      }
      if (await coverage.reachedNew()) pool.push(text);
    }
    report(
      `${texts} texts, ${pool.length - begun} reached new code, ${coverage.blocks()} blocks, ${failures.size} failures`,
    );
  }
  return { texts, kept: pool.length - begun, blocks: coverage.blocks(), failures: [...failures.values()] };
}

/**
 * What is wrong when a target takes a text. Numbers are left out, so that one mistake is reported once. A machine that is
 * busy with other work may be slow for a moment: slow is what is slow three times.
 */
async function problem(target: Target, text: string): Promise<string | undefined> {
  for (let tries = 0; tries < 3; tries++) {
    const started = performance.now();
    try {
      await target(text);
    } catch (error) {
      return (error instanceof Error ? error.message : String(error)).replaceAll(/\d+/g, '#');
    }
    if (performance.now() - started <= mostMilliseconds) return undefined;
  }
  return 'too slow';
}

/** A failure is made shorter for so long; then it is told as it is. */
const SHORTENING_MS = 60_000;

/** Leaves out halves, quarters and so on of the text for as long as it still fails. */
async function shortest(text: string, fails: (text: string) => Promise<boolean>): Promise<string> {
  let best = text;
  const until = Date.now() + SHORTENING_MS;
  for (let size = best.length >> 1; size >= 1; size >>= 1) {
    for (let at = 0; at < best.length && Date.now() < until;) {
      const shorter = best.slice(0, at) + best.slice(at + size);
      if (await fails(shorter)) best = shorter;
      else at += size;
    }
  }
  return best;
}

/** Counts the blocks of code of this project that have run, through the engine's own coverage. */
async function startCoverage() {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  const seen = new Set<string>();
  return {
    blocks: () => seen.size,
    /** Whether anything ran since the last call that had never run before. */
    async reachedNew(): Promise<boolean> {
      const { result } = await session.post('Profiler.takePreciseCoverage');
      const before = seen.size;
      for (const script of result) {
        if (!script.url.startsWith('file:')) continue;
        for (const { ranges } of script.functions) {
          for (const { startOffset, endOffset, count } of ranges)
            if (count > 0) seen.add(`${startOffset}-${endOffset}`);
        }
      }
      return seen.size > before;
    },
  };
}
