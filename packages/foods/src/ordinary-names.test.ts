import { expect, test } from 'vitest';
import { fixtureLines } from '../tests/fixture-lines.js';
import { createFoodBook } from './index.js';

/*
 * 370 ordinary names, British and American, written from memory before the table was opened, and for each the food that
 * a cook means by it, checked by hand. A question mark says that the name means several foods.
 */
const names = fixtureLines('ordinary-names.txt');
const expected = new Map(
  fixtureLines('ordinary-names-expected.tsv').map((line) => {
    const [name = '', id = ''] = line.split('\t');
    return [name, id] as const;
  }),
);

const book = createFoodBook();

const meaningOf = (name: string): string => {
  const answer = book.find(name);
  if (answer.kind === 'found') return answer.match.food.id;
  return answer.kind === 'ambiguous' ? '?' : `unknown (near: ${answer.near.join(', ')})`;
};

test('every ordinary name means what a cook means by it, or is reported as ambiguous', () => {
  expect(names.length).toBeGreaterThanOrEqual(300);
  expect(new Set(names).size).toBe(names.length);
  expect(names.map((name) => `${name}: ${meaningOf(name)}`)).toEqual(
    names.map((name) => `${name}: ${expected.get(name)}`),
  );
});

test('at least 95 in a hundred of them resolve', () => {
  const resolved = names.filter((name) => book.find(name).kind === 'found');
  const share = (100 * resolved.length) / names.length;
  console.log(
    `ordinary names: ${resolved.length} of ${names.length} resolve (${share.toFixed(1)} %), the rest are ambiguous`,
  );
  expect(share).toBeGreaterThanOrEqual(95);
});

test('an ambiguous name comes with two candidates or more', () => {
  for (const name of names) {
    const answer = book.find(name);
    if (answer.kind === 'ambiguous') expect(answer.candidates.length, name).toBeGreaterThanOrEqual(2);
  }
});
