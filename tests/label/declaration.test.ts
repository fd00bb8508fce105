/** Statements by market, from plain compositions. */
import { describe, expect, test } from 'vitest';
import type { Food, FoodRole, NutrientId } from '@quern/compiler';
import { exact, rational, ZERO, type Rational } from '@quern/quantity';
import type { Component, Composition } from '../../packages/views/src/label/composition.js';
import { declarationOf, printFigure, type Declaration } from '../../packages/views/src/label/declaration.js';
import type { Market } from '../../packages/views/src/label/nutrient-list.js';
import { nutritionOf } from '../../packages/views/src/label/nutrition.js';
import { point, type Range } from '../../packages/views/src/label/range.js';
import { euRounding, usRounding } from '../../packages/views/src/label/rounding-rules.js';
import { known } from './world.js';
import { printBy, significant } from '../../packages/views/src/label/rounding.js';

/** A food by what 55 g of it hold. */
function perServing(
  amounts: Readonly<Partial<Record<NutrientId, string>>>,
  grams: number,
  roles: readonly FoodRole[] = [],
): Component {
  const nutrients = Object.fromEntries(
    Object.entries(amounts).map(([name, amount]) => {
      const value = exact(amount);
      return [name, rational(value.n * 100n, value.d * BigInt(grams))];
    }),
  );
  const food: Food = {
    id: 'x',
    name: 'x',
    synonyms: [],
    roles,
    classes: [],
    nutrients,
    volumes: [],
    pieces: [],
    traces: [],
    flags: [],
    sources: [],
  };
  return {
    key: roles.join(),
    name: 'x',
    food,
    grams: point(rational(grams * 8)),
    waterLost: point(ZERO),
    alcoholLost: point(ZERO),
    lines: [],
  };
}

const made = (components: readonly Component[]): Composition => ({
  components,
  unweighed: [],
  withheld: false,
  estimate: false,
});

function rowsOf(declaration: Declaration): Record<string, string> {
  return Object.fromEntries(
    declaration.rows.map(({ nutrient, values, percents }) => {
      const percent = percents.at(-1)?.text;
      return [nutrient, `${values.at(-1)?.text ?? 'not known'}${percent === undefined ? '' : `, ${percent}`}`];
    }),
  );
}

describe('United States', () => {
  test('the FDA’s sample label comes out as it is printed', () => {
    // FDA, "What is new with the Nutrition Facts label": eight servings of 55 g. Ten of the twelve grams of sugars are added.
    // The first print of the sample has 235 mg of potassium, later ones 240 mg, as the rule for it asks.
    const sugar = perServing(
      {
        protein: '0',
        fat: '0',
        saturates: '0',
        trans: '0',
        cholesterol: '0',
        carbohydrateByDifference: '10',
        sugars: '10',
        fibre: '0',
        sodium: '0',
        vitaminD: '0',
        calcium: '0',
        iron: '0',
        potassium: '0',
      },
      10,
      ['sugar'],
    );
    const rest = perServing(
      {
        protein: '3',
        fat: '8',
        saturates: '1',
        trans: '0',
        cholesterol: '0',
        carbohydrateByDifference: '27',
        sugars: '2',
        fibre: '4',
        sodium: '160',
        vitaminD: '2',
        calcium: '260',
        iron: '8',
        potassium: '235',
      },
      45,
    );
    const declaration = declarationOf(nutritionOf(made([sugar, rest])), 'us', [
      { name: 'serving', count: rational(8) },
    ]);
    expect(declaration.columns).toEqual(['per serving of 55 g']);
    expect(rowsOf(declaration)).toEqual({
      energyGeneral: '230 kcal',
      fat: '8 g, 10 %',
      saturates: '1 g, 5 %',
      trans: '0 g',
      cholesterol: '0 mg, 0 %',
      sodium: '160 mg, 7 %',
      carbohydrateTotal: '37 g, 13 %',
      fibre: '4 g, 14 %',
      sugars: '12 g',
      addedSugars: '10 g, 20 %',
      protein: '3 g',
      vitaminD: '2 µg, 10 %',
      calcium: '260 mg, 20 %',
      iron: '8 mg, 45 %',
      potassium: '240 mg, 6 %',
    });
  });

  test('says that it is no official form', () => {
    const markets: readonly Market[] = ['eu', 'uk', 'us', 'ca', 'au', 'none'];
    for (const market of markets)
      expect(declarationOf(nutritionOf(made([])), market, []).notes[0]).toBe('Plain layout, not an official form.');
  });
});

describe('European Union', () => {
  // The example of Annex XIV factors: in 100 g fat 10, carbohydrate 45, protein 8, fibre 4; 1 g alcohol; no polyols.
  const food = perServing(
    {
      fat: '10',
      saturates: '4',
      carbohydrateAvailable: '45',
      sugars: '5',
      protein: '8',
      fibre: '4',
      sodium: '472',
      alcohol: '1',
      vitaminD: '0',
      potassium: '0',
      calcium: '0',
      iron: '2.1',
    },
    100,
  );

  test('per 100 g, in the order of Annex XV', () => {
    const declaration = declarationOf(nutritionOf(made([food])), 'eu', []);
    expect(declaration.columns).toEqual(['per 100 g']);
    // 370 + 765 + 136 + 32 + 29 = 1332 kJ; 90 + 180 + 32 + 8 + 7 = 317 kcal; salt 0.472 x 2.5 = 1.18 g.
    expect(rowsOf(declaration)).toEqual({
      energyKj: '1332 kJ, 16 %',
      energyKcal: '317 kcal, 16 %',
      fat: '10 g, 14 %',
      saturates: '4.0 g, 20 %',
      carbohydrate: '45 g, 17 %',
      sugars: '5.0 g, 6 %',
      fibre: '4.0 g',
      protein: '8.0 g, 16 %',
      salt: '1.2 g, 20 %',
      // 2.1 of 14 mg is exactly the 15 % from which iron may be declared.
      iron: '2.1 mg, 15 %',
    });
  });

  test('iron below 15 % of its reference value is not declared (Annex XIII, Part A, point 2)', () => {
    const iron = known(food.food);
    const nutrients = { ...iron.nutrients, iron: exact('2.09') };
    const declaration = declarationOf(nutritionOf(made([{ ...food, food: { ...iron, nutrients } }])), 'eu', []);
    expect(declaration.rows.some(({ nutrient }) => nutrient === 'iron')).toBe(false);
  });
});

describe('how a figure is printed', () => {
  const fat = known(euRounding.fat);
  const range = (low: string, usual: string, high: string): Range => ({
    low: exact(low),
    usual: exact(usual),
    high: exact(high),
  });
  const open = (amount: Range, more: Rational | undefined = ZERO) => printFigure(fat, { amount, more, missing: [] });

  test('with its ends only where they print otherwise', () => {
    expect(open(range('1.21', '1.22', '1.23'))).toEqual({ text: '1.2 g', atLeast: false });
    expect(open(range('1.1', '1.2', '1.3')).between).toEqual(['1.1 g', '1.3 g']);
  });

  test('as at least only where what is missing could change the print', () => {
    expect(open(range('2', '2', '2'), exact('0.01')).atLeast).toBe(false);
    expect(open(range('2', '2', '2'), exact('0.1')).atLeast).toBe(true);
    expect(printFigure(fat, { amount: range('2', '2', '2'), more: undefined, missing: ['x'] }).atLeast).toBe(true);
  });

  test('as not known where it is not', () => {
    expect(printFigure(fat, undefined).text).toBeUndefined();
  });

  test('a value that rounds up into the next band is written as that band writes', () => {
    expect(printBy(fat, exact('9.96'))).toBe('10');
    expect(printBy(known(euRounding.salt), exact('0.996'))).toBe('1.0');
    expect(printBy(known(usRounding.fat), exact('4.9'))).toBe('5');
  });

  test('significant figures', () => {
    expect(significant(exact('1234'), 3)).toBe('1230');
    expect(significant(exact('0.04567'), 2)).toBe('0.046');
    expect(significant(exact('9.996'), 3)).toBe('10');
  });
});

test('a dish whose weight is not known has figures for a portion and none for 100 g', () => {
  const food = perServing(
    { fat: '10', saturates: '4', carbohydrateAvailable: '45', sugars: '5', protein: '8', fibre: '4', sodium: '472' },
    100,
  );
  const nutrition = nutritionOf({ ...made([food]), unweighed: [{ name: 'bay leaf', open: false }] });
  const declaration = declarationOf(nutrition, 'eu', [{ name: 'serving', count: rational(8) }]);
  expect(declaration.columns).toEqual(['per 100 g', 'per serving']);
  expect(declaration.rows.every(({ values }) => values[0]?.text === undefined && values[1]?.atLeast === true)).toBe(
    true,
  );
});
