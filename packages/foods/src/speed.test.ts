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

// An idle machine takes a tenth of these times; a busy one must not fail the build.
test('the table opens in under 150 ms, its first look-up included', () => {
  const time = quickest(8, () => openFoodBook(FOOD_TABLE).find('plain flour'));
  expect(time).toBeLessThan(150);
});

test('a look-up takes under 200 µs', () => {
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
  expect(each).toBeLessThan(200);
});
