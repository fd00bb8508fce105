import { expect, test } from 'vitest';
import { Source } from './source.js';

test('what is made of a thing is made once for each thing and each question', () => {
  class Dough extends Source {
    constructor(readonly grams: number) {
      super();
    }
  }
  let asked = 0;
  const half = ({ grams }: Dough): { readonly grams: number } => {
    asked++;
    return { grams: grams / 2 };
  };
  const twice = ({ grams }: Dough): number => grams * 2;
  const [one, two] = [new Dough(500), new Dough(800)];
  expect(one.once(half)).toBe(one.once(half));
  expect([one.once(half).grams, two.once(half).grams, one.once(twice)]).toEqual([250, 400, 1000]);
  expect(asked).toBe(2);
});
