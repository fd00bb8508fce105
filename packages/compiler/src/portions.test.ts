import { describe, expect, test } from 'vitest';
import { compileText, formulaOf, grams, said } from './test/recipes.js';

const loaf =
  'recipe Rye\ngives 2 loaves of 500 g\nserves 40 slices\n\nmake loaf\n  1 kg rye bread\n  hands 1 min: Slice.\n';
const factor = (line: string): string => {
  const menu = compileText(`${loaf}\nmenu Supper\ncourse 19:00 first\n  ${line}\n`).menus[0];
  return grams(menu?.courses[0]?.dishes[0]?.factor, 3);
};

describe('a share of a dish', () => {
  test('is reckoned on what is counted by that word: loaves, slices, servings', () => {
    expect(factor('1 loaf of Rye')).toBe('0.500');
    // Ten slices of forty are a quarter, not five times the two loaves.
    expect(factor('10 slices of Rye')).toBe('0.250');
    expect(factor('10 servings of Rye')).toBe('0.250');
    expect(factor('3 Rye')).toBe('1.500');
    expect(factor('250 g Rye')).toBe('0.250');
  });

  test('by a word that the recipe does not count by is refused, and what it says is told', () => {
    expect(said(`${loaf}\nmenu Supper\ncourse 19:00 first\n  3 bowls of Rye\n`)).toEqual([
      'U01 11: 3 bowls of Rye cannot be drawn: it says “gives 2 loaves of 500 g”, “serves 40 slices”',
    ]);
  });

  test('is the same when another recipe puts it in', () => {
    const text = `use Rye from rye.quern\n\nrecipe Toast\n\nmake toast\n  8 slices of Rye\n  hands 1 min: Toast.\n=== rye.quern\n${loaf}`;
    expect(grams(formulaOf(text).dishGrams)).toBe('200.0');
    expect(said(text)).toEqual([]);
  });
});
