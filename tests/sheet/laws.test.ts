import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  add,
  compare,
  divide,
  equal,
  exact,
  HUNDRED,
  multiply,
  ONE,
  parseRational,
  rational,
  subtract,
  sum,
  type Rational,
} from '@quern/quantity';
import type { Formula } from '@quern/compiler';
import { basket, sheet, type Scale, type SheetData, type SheetIn, type SheetWeight } from '@quern/views';
import { exampleFormulas } from './recipes.js';

const scale = (factor: Rational): Scale => ({ factor, words: 'a test' });

/** Every exact weight of a sheet, in order; null where it is not known. */
function weightsOf(data: SheetData): (readonly [Rational, Rational] | null)[] {
  const ends = (weight: SheetWeight | null) => weight && ([exact(weight.grams.low), exact(weight.grams.high)] as const);
  const rows = data.makes.flatMap((make) => [
    ...make.rows.flatMap((row) => {
      if (row.kind === 'in') return [row, ...row.alternatives].map(({ weight }) => ends(weight));
      return row.kind === 'out' ? [ends(row.weight)] : [];
    }),
    ends(make.total),
  ]);
  return [...rows, ends(data.yield.weight)];
}

const factors = fc
  .tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 60 }))
  .map(([top, bottom]) => rational(top, bottom));

// Named by number, so that a failure prints a number and not the whole of two recipes.
const formulas = fc.nat({ max: exampleFormulas.length - 1 });

function formulaAt(index: number): Formula {
  const formula = exampleFormulas[index];
  if (!formula) throw new Error(`no formula ${index}`);
  return formula;
}

describe('scaling', () => {
  test('by a number and then by its inverse changes no weight', () => {
    fc.assert(
      fc.property(formulas, factors, (index, factor) => {
        const formula = formulaAt(index);
        const written = weightsOf(sheet(formula));
        const scaled = weightsOf(sheet(formula, { scale: scale(factor) }));
        expect(scaled.length).toBe(written.length);
        scaled.forEach((pair, index) => {
          const before = written[index];
          if (!pair || !before) return expect(pair).toBe(before);
          pair.forEach((value, end) =>
            expect(equal(multiply(value, divide(ONE, factor)), before[end] ?? ONE)).toBe(true),
          );
        });
      }),
      { numRuns: 60 },
    );
  });

  test('never moves a printed weight by more than a tenth of it, nor by more than 5 g', () => {
    fc.assert(
      fc.property(formulas, factors, (index, factor) => {
        const formula = formulaAt(index);
        const rows = inRows(sheet(formula, { scale: scale(factor) }));
        for (const { weight } of rows) {
          if (!weight || weight.text.includes('-')) continue;
          const shown = gramsInText(weight.text);
          const off = absolute(subtract(shown, exact(weight.grams.low)));
          expect(compare(off, multiply(exact(weight.grams.low), rational(1, 10))) <= 0).toBe(true);
          expect(compare(off, rational(5)) <= 0).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

const inRows = (data: SheetData): SheetIn[] =>
  data.makes.flatMap((make) => make.rows.filter((row): row is SheetIn => row.kind === 'in'));

/** Grams that a printed weight says: '210 g', '12.50 kg'. */
function gramsInText(text: string): Rational {
  const [number = '', unit] = text.split(' ');
  const value = parseRational(number);
  if (!value || (unit !== 'g' && unit !== 'kg')) throw new Error(`not a weight: ${text}`);
  return unit === 'kg' ? multiply(value, rational(1000)) : value;
}

describe('sums', () => {
  test('what goes into a pot less what comes out is what stands in it', () => {
    let looked = 0;
    for (const formula of exampleFormulas) {
      const data = sheet(formula);
      for (const [index, make] of data.makes.entries()) {
        // Alcohol that boils off is a line of the ledger and none of the sheet.
        if (!make.total || formula.makes[index]?.pot.entries.some(({ kind }) => kind === 'alcohol')) continue;
        const moved = make.rows.map((row) => {
          if (row.kind === 'in') return row.optional ? rational(0) : middle(row.weight);
          return row.kind === 'out' ? subtract(rational(0), middle(row.weight)) : rational(0);
        });
        expect(equal(sum(moved), exact(make.total.grams.low)), `${formula.title}: ${make.name}`).toBe(true);
        looked++;
      }
    }
    expect(looked).toBeGreaterThan(20);
  });

  test('percentages worked out from the printed weights are the exact ones within a twentieth of a point', () => {
    let looked = 0;
    for (const formula of exampleFormulas.filter(({ flour }) => flour)) {
      for (const factor of [rational(1), rational(7, 3), rational(1, 4)]) {
        const rows = inRows(sheet(formula, { scale: scale(factor), percentages: true })).filter(
          ({ percent }) => percent,
        );
        const flour = rows.filter((row) => isFlourRow(row, formula));
        const printed = sum(flour.map(({ weight }) => gramsInText(weight?.text ?? '')));
        for (const row of rows) {
          const worked = multiply(HUNDRED, divide(gramsInText(row.weight?.text ?? ''), printed));
          const off = absolute(subtract(worked, exact(row.percent?.exact ?? '0')));
          // The flour inside a culture is not a line, so the printed flour may be less than the formula's.
          if (flourIsAllWritten(formula))
            expect(compare(off, exact('0.05')) <= 0, `${formula.title}: ${row.name}`).toBe(true);
          looked++;
        }
      }
    }
    expect(looked).toBeGreaterThan(30);
  });
});

function middle(weight: SheetWeight | null): Rational {
  if (!weight) throw new Error('a weight of a whole pot is not known');
  return divide(add(exact(weight.grams.low), exact(weight.grams.high)), rational(2));
}

const isFlourRow = ({ name }: SheetIn, formula: Formula): boolean =>
  formula.flour?.formula.some(({ food }) => food.name === name && formula.isFlour(food)) ?? false;

const flourIsAllWritten = (formula: Formula): boolean => formula.cultures.size === 0;

describe('the shopping list', () => {
  test('of a recipe times a number is the list times that number', () => {
    fc.assert(
      fc.property(formulas, factors, (index, factor) => {
        const formula = formulaAt(index);
        const once = itemsOf(basket([{ formula, factor: ONE }]));
        const times = itemsOf(basket([{ formula, factor }]));
        expect([...times.keys()]).toEqual([...once.keys()]);
        for (const [name, grams] of once) {
          const other = times.get(name);
          if (!grams || !other) expect(other).toBe(grams);
          else expect(equal(other, multiply(grams, factor)), name).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('of two recipes is the sum of their lists', () => {
    fc.assert(
      fc.property(formulas, formulas, (a, b) => {
        const [first, second] = [a, b].map(formulaAt).map((formula) => itemsOf(basket([{ formula, factor: ONE }])));
        const both = itemsOf(basket([a, b].map(formulaAt).map((formula) => ({ formula, factor: ONE }))));
        for (const [name, grams] of both) {
          const parts = [first, second].flatMap((list) => (list?.has(name) ? [list.get(name)] : []));
          if (parts.some((part) => !part)) expect(grams).toBeUndefined();
          else expect(grams && equal(grams, sum(parts.map((part) => part ?? ONE))), name).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** Grams of each food of a list in all, however it is told; undefined when a part is not known. */
function itemsOf(data: ReturnType<typeof basket>): ReadonlyMap<string, Rational | undefined> {
  const items = new Map<string, Rational | undefined>();
  for (const item of data.shelves.flatMap((shelf) => shelf.items)) {
    const weights = [...item.amounts, ...item.ifUsed].map(({ weight }) => weight && exact(weight.grams.low));
    items.set(
      item.food ?? item.name,
      weights.some((weight) => !weight) ? undefined : sum(weights.map((weight) => weight ?? ONE)),
    );
  }
  return items;
}
