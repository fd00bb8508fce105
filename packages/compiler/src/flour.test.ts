import { describe, expect, test } from 'vitest';
import { codes, formulaOf, grams, said } from './test/recipes.js';

describe('flour', () => {
  test('the most flour that stands together in one pot', () => {
    const formula = formulaOf(
      'recipe R\n\nmake leaven\n  100 g whole rye flour\n  100 g water\n  hands 1 min: Stir.\n\nmake crumble\n  60 g strong wheat flour\n  40 g unsalted butter\n  hands 1 min: Rub the butter in.\n\nmake loaf\n  all leaven\n  400 g strong wheat flour\n  250 g water\n  2 % fine salt on flour\n  hands 1 min: Mix.\n  all crumble\n  hands 1 min: Press on.\n',
    );
    // At the line of the 400 g: 100 + 400. The crumble joins later and its flour makes 560, the most that stands together.
    expect(grams(formula.flour?.grams)).toBe('560.0');
    expect(grams(formula.flour?.prefermented, 4)).toBe((160 / 560).toFixed(4));
  });

  test('F = a + bF: 80 % on flour and 100 g besides make 500 g', () => {
    const formula = formulaOf(
      'recipe R\n\nmake m\n  80 % strong wheat flour on flour\n  100 g whole rye flour\n  60 % water on flour\n  hands 1 min: Mix.\n',
    );
    expect(grams(formula.flour?.grams)).toBe('500.0');
    expect(grams(formula.dishGrams)).toBe('800.0');
    expect(grams(formula.flour?.hydration, 3)).toBe('0.600');
  });

  test('all in per cent: the yield says how much', () => {
    // 100 + 70 + 2 = 172 parts; 10 % lost in the oven; 2 loaves of 774 g are 1720 g of dough and 1000 g of flour.
    const formula = formulaOf(
      'recipe R\nbasis flour\ngives 2 loaves of 774 g\n\nmake m\n  100 % strong wheat flour\n  70 % water\n  2 % fine salt\n  hands 1 min: Mix.\n  oven 40 min at 220 C: Bake.\n  lose 10 % as water\n',
    );
    expect(grams(formula.flour?.grams, 3)).toBe('1000.000');
    expect(
      codes(
        'recipe R\nbasis flour\ngives 2 loaves of 774 g\n\nmake m\n  100 % strong wheat flour\n  70 % water\n  hands 1 min: Mix.\n',
      ),
    ).toEqual([]);
  });

  test('a percent on flour with weights beside it in the dish still meets the yield', () => {
    const formula = formulaOf(
      'recipe R\nbasis flour\ngives 1 loaf of 900 g\n\nmake m\n  100 % strong wheat flour\n  70 % water\n  hands 1 min: Mix.\n  50 g egg, beaten\n  hands 1 min: Brush with the egg.\n',
    );
    expect(grams(formula.flour?.grams, 2)).toBe('500.00');
    expect(grams(formula.dishGrams)).toBe('900.0');
  });

  test('a culture by weight that is put back leaves the flour free, and the yield says how much', () => {
    const text = (gives: string): string =>
      `recipe R\nbasis flour\n${gives}\nmake leaven\n  10 % strong wheat flour\n  10 % water\n  20 g starter\n  hands 1 min: Stir.\n  save 20 g as starter\n\nmake dough\n  all leaven\n  90 % strong wheat flour\n  62 % water\n  2 % fine salt\n  hands 1 min: Mix.\n  lose 12 % as water\n\nculture starter\n  parts 1 strong wheat flour, 1 water\n`;
    // 100 + 72 + 2 = 174 parts; 12 % lost; 1531.2 g are 1740 g of dough and 1000 g of flour.
    const formula = formulaOf(text('gives 1531.2 g\n'));
    expect(grams(formula.flour?.grams)).toBe('1000.0');
    expect(grams(formula.flour?.hydration, 3)).toBe('0.720');
    expect(codes(text('gives 1531.2 g\n'))).toEqual([]);
    expect(codes(text(''))).toEqual(['F04']);
  });

  test('flours that do not come to a hundred, flour and no room, no flour, no yield', () => {
    expect(
      said(
        'recipe R\nbasis flour\ngives 1 loaf of 900 g\n\nmake m\n  90 % strong wheat flour\n  70 % water\n  hands 1 min: Mix.\n',
      )[0],
    ).toBe('F01 1: the flours come to 90 %, not 100 %');
    expect(
      codes('recipe R\n\nmake m\n  100 % strong wheat flour on flour\n  100 g whole rye flour\n  hands 1 min: Mix.\n'),
    ).toEqual(['Q11']);
    expect(codes('recipe R\n\nmake m\n  500 g water\n  2 % fine salt on flour\n  hands 1 min: Stir.\n')).toEqual([
      'F03',
    ]);
    expect(
      codes('recipe R\nbasis flour\n\nmake m\n  100 % strong wheat flour\n  70 % water\n  hands 1 min: Mix.\n'),
    ).toEqual(['F04']);
  });

  test('starches and cracked grain count when told', () => {
    const plain = 'make m\n  500 g whole rye flour\n  100 g cracked rye\n  300 g water\n  hands 1 min: Mix.\n';
    expect(grams(formulaOf(`recipe R\n\n${plain}`).flour?.grams)).toBe('500.0');
    expect(grams(formulaOf(`recipe R\ncount cracked rye as flour\n\n${plain}`).flour?.grams)).toBe('600.0');
  });

  test('the starter kept back before the dough does not count, trimmings cut off later do not matter', () => {
    const formula = formulaOf(
      'recipe R\n\nmake leaven\n  200 g strong wheat flour\n  200 g water\n  hands 1 min: Stir.\n  save 100 g as seed, for the next bake\n\nmake dough\n  all leaven\n  350 g strong wheat flour\n  200 g water\n  hands 1 min: Mix.\n  save 100 g as trimmings, for the next dough\n',
    );
    expect(grams(formula.flour?.grams)).toBe('500.0');
    expect(grams(formula.flour?.hydration, 3)).toBe('0.700');
  });

  test('checks hold at the digits written', () => {
    const dough = (check: string): string =>
      `recipe R\n\nmake m\n  300 g strong wheat flour\n  217 g water\n  6 g fine salt\n  hands 1 min: Mix.\n  check ${check}\n`;
    // 217 / 300 = 72.33 %
    expect(codes(dough('72 % water on flour'))).toEqual([]);
    expect(codes(dough('72.3 % water on flour'))).toEqual([]);
    expect(codes(dough('72.4 % water on flour'))).toEqual(['M14']);
    expect(codes(dough('523 g'))).toEqual([]);
    expect(said(dough('524 g'))[0]).toBe('M14 8: this check says 524 g, the ledger has 523 g');
  });
});
