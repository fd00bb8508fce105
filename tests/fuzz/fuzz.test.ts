/** Damaged recipes, always the same ones. `npm run fuzz` goes on with new ones for as long as it is let. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { corpus } from './corpus.js';
import { damaged } from './mutations.js';
import { mostMilliseconds, targets, type Target } from './targets.js';

describe.each(Object.entries<Target>(targets))('%s', (_, target) => {
  test('takes the whole corpus', () => {
    expect(corpus.length).toBeGreaterThan(100);
    for (const text of corpus) target(text);
  });

  test('takes any damage', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(damaged(corpus), (text) => {
        const started = performance.now();
        target(text);
        expect(performance.now() - started).toBeLessThan(mostMilliseconds);
      }),
      { seed: 20_410_216, numRuns: 500 },
    );
  });
});
