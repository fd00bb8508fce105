/** Damaged recipes, always the same ones. `npm run fuzz` goes on with new ones for as long as it is let. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { corpus } from './corpus.js';
import { damaged } from './mutations.js';
import { mostMilliseconds, targets } from './targets.js';

describe.each(Object.entries(targets))('%s', (_, { takes, runs }) => {
  test('takes the whole corpus', { timeout: 120_000 }, () => {
    expect(corpus.length).toBeGreaterThan(100);
    for (const text of corpus) takes(text);
  });

  test('takes any damage', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(damaged(corpus), (text) => {
        const started = performance.now();
        takes(text);
        expect(performance.now() - started).toBeLessThan(mostMilliseconds);
      }),
      { seed: 20_410_216, numRuns: runs },
    );
  });
});
