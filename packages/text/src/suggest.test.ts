import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearest, slips } from './suggest.js';

const names = [
  'suet',
  'sugar',
  'surge',
  'saffron',
  'crème fraîche',
  'creme',
  'oat drink',
  'oats',
  'ab',
  'ba',
  '123',
  '',
];
const word = fc.oneof(
  fc.constantFrom(...names),
  fc.string({ unit: fc.constantFrom(...'abcdeèz 1'), maxLength: 7 }),
  fc.string({ unit: 'binary', maxLength: 5 }),
);

test('no name within the slips allowed is passed over', () => {
  fc.assert(
    fc.property(word, fc.array(word, { maxLength: 20 }), (written, others) => {
      const limit = written.length < 4 ? 1 : 2;
      const all = [...others, ...names];
      const within = all.filter((name) => slips(written, name, limit) <= limit);
      expect(nearest(written, all, all.length).toSorted()).toEqual(within.toSorted());
    }),
    { numRuns: 3000, seed: 3 },
  );
});

test('the nearest come first, and of equals the first of the alphabet', () => {
  expect(nearest('suger', names)).toEqual(['sugar', 'suet', 'surge']);
  expect(nearest('sugar', ['sugars', 'sugar'])).toEqual(['sugar', 'sugars']);
  expect(nearest('fig', ['fog', 'fag', 'fugue'])).toEqual(['fag', 'fog']);
});
