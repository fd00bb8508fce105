/** Damaged recipes, always the same ones. `npm run fuzz` goes on with new ones for as long as it is let. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { corpus } from './corpus.js';
import { damaged } from './mutations.js';
import { mostMilliseconds, targets } from './targets.js';

describe.each(Object.entries(targets))('%s', (_, { takes, runs, also = [] }) => {
  test('takes the whole corpus', { timeout: 120_000 }, async () => {
    expect(corpus.length).toBeGreaterThan(100);
    for (const text of [...corpus, ...also]) await takes(text);
  });

  test('takes any damage', { timeout: 120_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(damaged(also.length > 0 ? also : corpus), async (text) => {
        const started = performance.now();
        await takes(text);
        expect(performance.now() - started).toBeLessThan(mostMilliseconds);
      }),
      { seed: 20_410_216, numRuns: runs },
    );
  });
});
