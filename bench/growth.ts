/** Whether a long file costs more a line than a short one. */
import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { parseDocument } from '@quern/syntax';
import { longFile } from './corpus.js';
import { inTurns, type Measured } from './measure.js';

const sizes = [10, 100, 1000, 10_000] as const;

export async function growth(rounds: number): Promise<Measured[]> {
  const foods = createFoodBook();
  const host = { read: () => undefined, foods };
  return [
    await curve('read', rounds, (text) => parseDocument('main.quern', text)),
    await curve('check', rounds, (text) => compile('main.quern', text, host)),
  ];
}

async function curve(what: string, rounds: number, run: (text: string) => unknown): Promise<Measured> {
  const lines: Record<string, number> = {};
  for (const size of sizes) {
    const text = longFile(size);
    // Short texts are run many times over and kept, so that every size reads as many lines and leaves as many to clear away.
    const times = 10_000 / size;
    const { once } = await inTurns({ once: () => Array.from({ length: times }, () => run(text)) }, rounds);
    lines[size] = (once * 1000) / times / size;
  }
  const cost = (size: (typeof sizes)[number]) => lines[size] ?? Number.NaN;
  const ratio = cost(10_000) / cost(1000);
  return {
    what: `${what} 10, 100, 1,000 and 10,000 lines`,
    value: `${sizes.map((size) => cost(size).toFixed(1)).join(', ')} µs a line`,
    goal: 'a line of 10,000 costs at most half as much again as one of 1,000',
    reached: ratio <= 1.5,
    ratio: { id: `${what}-growth`, value: ratio, better: 'less' },
  };
}
