import { describe, expect, test } from 'vitest';
import { singular, withoutAccents } from '@quern/text';
import { kebab, nameKey, tidyName } from './names.js';

describe('singular', () => {
  test.each([
    ['onions', 'onion'],
    ['tomatoes', 'tomato'],
    ['cherries', 'cherry'],
    ['radishes', 'radish'],
    ['peaches', 'peach'],
    ['leaves', 'leaf'],
    ['olives', 'olive'],
    ['cloves', 'clove'],
    ['chillies', 'chilli'],
    ['cookies', 'cookie'],
    ['anchovies', 'anchovy'],
  ])('%s is %s', (plural, expected) => {
    expect(singular(plural)).toBe(expected);
  });

  test.each(['molasses', 'couscous', 'asparagus', 'swiss', 'watercress', 'hummus', 'gas'])(
    '%s is no plural',
    (word) => {
      expect(singular(word)).toBe(word);
    },
  );

  test('folding twice is folding once', () => {
    for (const word of ['cheeses', 'grasses', 'leaves', 'pies', 'quinces', 'molasses', 'chives']) {
      expect(singular(singular(word))).toBe(singular(word));
    }
  });
});

describe('a key', () => {
  test.each([
    ['The Eggs', 'egg'],
    ['  Self-Raising   Flour ', 'self raising flour'],
    ['confectioners’ sugar', 'confectioners sugar'],
    ["goat's cheese", 'goats cheese'],
    ['legs of lamb', 'leg of lamb'],
    ['Cre\u0300me frai\u0302che', 'crème fraîche'],
    ['CRÈME FRAÎCHE', 'crème fraîche'],
    ['extra\u2011virgin\u00a0olive oil', 'extra virgin olive oil'],
  ])('“%s” is “%s”', (name, expected) => {
    expect(nameKey(name)).toBe(expected);
  });

  test('keeps accents, which count', () => {
    expect(nameKey('pâté')).not.toBe(nameKey('pate'));
    expect(withoutAccents('crème fraîche')).toBe('creme fraiche');
  });

  test('of scripts without capitals is the text itself', () => {
    expect(tidyName('味噌')).toBe('味噌');
    expect(tidyName('زعتر')).toBe('زعتر');
  });
});

test('identifiers are kebab case without accents', () => {
  expect(kebab('Crème fraîche')).toBe('creme-fraiche');
  expect(kebab("goat's cheese")).toBe('goats-cheese');
  expect(kebab('00 flour')).toBe('00-flour');
});
