import { describe, expect, test } from 'vitest';
import { exact, multiply, rational } from './rational.js';
import { sizeOf, unitSpellings, units } from './units.js';

describe('the table of units', () => {
  test('no spelling is read as two units', () => {
    const owners = new Map<string, Set<string>>();
    for (const { id, one, many, spellings } of Object.values(units)) {
      for (const spelling of [one, many, ...spellings]) {
        const key = spelling.toLowerCase();
        owners.set(key, (owners.get(key) ?? new Set()).add(id));
      }
    }
    expect([...owners].filter(([, ids]) => ids.size > 1)).toEqual([]);
    expect(unitSpellings.size).toBe(owners.size);
  });

  test('what means two things in two countries is not read bare', () => {
    // NOTATION 0.9 and 4.1: pints, quarts, gallons and fluid ounces need us or imperial before them; T and t are refused.
    for (const bare of ['pint', 'quart', 'gallon', 'fl oz', 'fluid ounce', 't'])
      expect(unitSpellings.has(bare)).toBe(false);
  });

  test('each key is the unit it holds, and each size is above zero', () => {
    for (const [key, unit] of Object.entries(units)) {
      expect(unit.id).toBe(key);
      expect(unit.size.n > 0n).toBe(true);
    }
  });

  test('a file’s cup changes cups and spoons and nothing else', () => {
    // NOTATION 0.9: metric 250 ml; australian 250 ml with a tablespoon of 20 ml.
    expect(sizeOf('cup', 'metric')).toEqual(rational(250));
    expect(sizeOf('tbsp', 'metric')).toEqual(rational(15));
    expect(sizeOf('tbsp', 'australian')).toEqual(rational(20));
    expect(sizeOf('us-pint', 'metric')).toEqual(sizeOf('us-pint'));
    // NOTATION 4.1: 473176473/2000000 ml, its tablespoon 1/16 and its teaspoon 1/48; a pinch is 0.3 g.
    expect(sizeOf('cup')).toEqual(rational(473_176_473, 2_000_000));
    expect(multiply(sizeOf('tbsp'), rational(16))).toEqual(sizeOf('cup'));
    expect(multiply(sizeOf('tsp'), rational(48))).toEqual(sizeOf('cup'));
    expect(sizeOf('pinch')).toEqual(exact('0.3'));
  });
});
