import { expect, test } from 'vitest';
import { singular } from './plurals.js';

// English plurals, from memory.
test.each([
  ['shelves', 'shelf'],
  ['oven shelves', 'oven shelf'],
  ['palette knives', 'palette knife'],
  ['rings', 'ring'],
  ['dishes', 'dish'],
  ['boxes', 'box'],
  ['glasses', 'glass'],
  ['trolleys', 'trolley'],
  ['pantries', 'pantry'],
  ['churn', 'churn'],
  ['glass', 'glass'],
])('%s is more than one %s', (many, one) => {
  expect(singular(many)).toBe(one);
});
