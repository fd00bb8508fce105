import { describe, expect, test } from 'vitest';
import { wayOut } from '@quern/text';
import { compileText, said } from './test/recipes.js';

const recipe = (line: string): string => `recipe R\n\nmake m\n  ${line}\n  hands 1 min: Stir.\n`;
const ways = (text: string): string[] => compileText(text).diagnostics.map(wayOut);

describe('a name that is no food', () => {
  test('may be two foods', () => {
    expect(ways(recipe('a little salt and pepper'))).toEqual([
      'write a line for each: “a little salt”, “a little pepper”',
    ]);
    expect(ways(recipe('200 g butter or margarine'))).toEqual([
      'write “200 g butter”, and under it “or 200 g margarine”',
    ]);
  });

  test('may hold a package', () => {
    expect(ways(recipe('400 g tin chickpeas'))).toEqual(['write “1 tin of 400 g chickpeas”']);
  });

  test('is told once, with its weight where that is unknown too', () => {
    expect(said(recipe('2 cups frobmeal'))).toEqual([
      'N01 4: “frobmeal” is not in the food table; its weight, nutrition and allergens are unknown',
    ]);
    expect(said(recipe('200 g frobmeal'))).toEqual([
      'N01 4: “frobmeal” is not in the food table; its nutrition and allergens are unknown',
    ]);
  });
});

describe('a thing that is made below', () => {
  test('is told to move, whatever its amount', () => {
    const text = (line: string): string =>
      `recipe R\n\nmake cake\n  ${line}\n  hands 1 min: Stir.\n\nmake filling mix\n  100 g sugar\n  hands 1 min: Stir.\n`;
    for (const line of ['100 g filling mix', 'all filling mix', 'half of filling mix']) {
      const { diagnostics } = compileText(text(line));
      const found = diagnostics.find(({ code }) => code === 'N02');
      expect(found && wayOut(found)).toMatch(/^it is made below, at line 7: move that make above this line\./);
    }
  });

  test('a product cannot be put into itself', () => {
    const text = 'recipe R\n\nmake frob mix\n  50 g frob mix\n  100 g sugar\n  hands 1 min: Stir.\n';
    expect(ways(text)[0]).toMatch(/^a product cannot be put into itself\./);
  });
});

test('a stock of which all that was saved is used is not unused: what is left over is told', () => {
  const text =
    'recipe R\n\nmake stock\n  1 kg chicken wings\n  2 kg water\n  hob 1 h: Simmer.\n  save 1.5 kg of liquid as broth\n\nmake soup\n  all broth\n  hands 1 min: Pour.\n';
  expect(said(text)).toEqual(['M02 3: 1500 g of stock is left over']);
});

describe('names in a variant', () => {
  const base =
    'recipe R\n\nmake dough\n  100 g butter\n  hands 1 min: Soften the butter.\n\nmake bun\n  all dough\n  50 g honey\n  hands 1 min: Stir.\n\n';
  test('an unknown food that is swapped in is told where it is written', () => {
    expect(said(`${base}variant v\n  swap butter for frobnut\n`)).toEqual([
      'N01 13: “frobnut” is not in the food table; its nutrition and allergens are unknown',
    ]);
  });

  test('a make that is not there is one mistake, a food of another make is told as such', () => {
    expect(ways(`${base}variant v\n  swap butter in filling for lard\n`)).toEqual([
      'the recipe makes dough, bun; write the name as the recipe’s lines have it',
    ]);
    expect(ways(`${base}variant v\n  swap honey in dough for lard\n`)).toEqual([
      'it goes into another make; write the name as the recipe’s lines have it',
    ]);
  });
});

test('two lengths of a tin that cannot be a round one', () => {
  const text = (size: string): string =>
    `recipe R\nvessel 1 tin of ${size}\n\nmake m\n  1 kg rye bread\n  hands 1 min: Press.\n`;
  expect(said(text('9 x 13 inches'))).toEqual(['M17 2: two lengths are a round tin, 9 across and 13 deep']);
  expect(said(text('20 x 8 cm'))).toEqual([]);
});
