import { describe, expect, test } from 'vitest';
import { ensureGroupBy, groupBy } from './object-group-by.js';

describe('the stand-in for Object.groupBy', () => {
  test('groups in the order of first appearance, in an object without a prototype (ECMAScript 2024, 20.1.2.13)', () => {
    const groups = groupBy(
      ['oat', 'rye', 'olive', 'rice'],
      (word, index) => `${String(word)[0]}${index > 2 ? '!' : ''}`,
    );
    expect(Object.getPrototypeOf(groups)).toBeNull();
    expect(Object.entries(groups)).toEqual([
      ['o', ['oat', 'olive']],
      ['r', ['rye']],
      ['r!', ['rice']],
    ]);
  });

  test('takes any iterable, and symbols for keys', () => {
    const key = Symbol('key');
    expect(groupBy(new Set([1, 2]), () => key)).toEqual({ [key]: [1, 2] });
    expect(groupBy([], () => 'never')).toEqual({});
  });

  test('steps in only where the engine has none', () => {
    const object = Object as { groupBy?: unknown };
    const own = object.groupBy;
    try {
      delete object.groupBy;
      ensureGroupBy();
      expect(object.groupBy).toBe(groupBy);
      const engine = (): object => ({});
      object.groupBy = engine;
      ensureGroupBy();
      expect(object.groupBy).toBe(engine);
    } finally {
      object.groupBy = own;
    }
  });
});
