/** A short soak; `npm run soak` makes 100,000 edits. */
import { expect, test } from 'vitest';
import { soak } from './soak.js';

test('after each of many random edits the kept state equals a fresh one, and memory stays flat', () => {
  const { failures, memory } = soak(1_500, 1);
  expect(failures).toEqual([]);
  const [half = 0, end = 0] = [memory[4], memory.at(-1)];
  // Bounded caches fill up at first; from the middle on they hardly grow.
  expect(end).toBeLessThan(half * 1.25);
}, 300_000);
