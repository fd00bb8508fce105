import { expect, test } from 'vitest';
import { FOOD_TABLE } from './generated/food-table.js';
import { openFoodBook } from './index.js';

/** The quickest of several runs, in milliseconds: the machine may be busy with other things. */
function quickest(runs: number, work: () => void, prepare: () => void = () => undefined): number {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run++) {
    prepare();
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

test('the table opens in under 15 ms, its first look-up included', () => {
  const time = quickest(8, () => openFoodBook(FOOD_TABLE).find('plain flour'));
  console.log(`food table: opens, with its first look-up, in ${time.toFixed(1)} ms`);
  expect(time).toBeLessThan(15);
});

test('a look-up takes under 20 µs', () => {
  const names = openFoodBook(FOOD_TABLE).names();
  let book = openFoodBook(FOOD_TABLE);
  const all = quickest(
    5,
    () => names.forEach((name) => book.find(name)),
    () => {
      book = openFoodBook(FOOD_TABLE);
      book.find('plain flour');
    },
  );
  const each = (1000 * all) / names.length;
  console.log(`food table: ${each.toFixed(1)} µs a look-up, over ${names.length} names`);
  expect(each).toBeLessThan(20);
});
