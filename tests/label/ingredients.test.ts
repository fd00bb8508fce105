/** The statement of ingredients: order, water, compounds, percentages, allergens set apart. */
import { describe, expect, test } from 'vitest';
import { labelText } from '@quern/publish';
import type { AllergenId, Food, FoodRole } from '@quern/compiler';
import { exact, rational } from '@quern/quantity';
import {
  isStressed,
  quantityOf,
  statementOf,
  type StatementEntry,
  type StatementInput,
} from '../../packages/views/src/label/ingredients.js';
import { emphasise } from '../../packages/views/src/label/emphasis.js';
import { labelled, words } from './world.js';

function food(id: string, allergens: readonly AllergenId[] = [], roles: readonly FoodRole[] = []): Food {
  return {
    id,
    name: id.replace(/-/g, ' '),
    synonyms: [],
    roles,
    classes: [],
    nutrients: {},
    volumes: [],
    pieces: [],
    allergens,
    traces: [],
    flags: [],
    sources: [],
  };
}

const entry = (name: string, grams: number, one: Food = food(name)): StatementEntry => ({
  name,
  food: one,
  grams: rational(grams),
});
const input = (
  entries: readonly StatementEntry[],
  finished: number,
  more: Partial<StatementInput> = {},
): StatementInput => ({
  entries,
  takenOut: [],
  finished: rational(finished),
  moistureLost: true,
  stressed: [],
  ...more,
});

describe('order', () => {
  test('descending by the weight that went in (Regulation (EU) No 1169/2011, Article 18(1))', () => {
    const statement = statementOf(input([entry('salt', 10), entry('flour', 500), entry('butter', 200)], 700), 'eu');
    expect(words(statement.items)).toBe('flour, butter, salt');
  });

  test('a food without a weight closes the list and is not dropped', () => {
    const statement = statementOf(
      input([entry('flour', 500), { name: 'bay leaf', food: food('bay-leaf'), grams: undefined }], 500),
      'eu',
    );
    expect(words(statement.unweighed)).toBe('bay leaf');
  });

  test('a food that is not in the table is named all the same', () => {
    const statement = statementOf(input([{ name: 'frobnut', grams: rational(100) }], 100), 'eu');
    expect(statement.items[0]).toMatchObject({ name: 'frobnut', inTable: false });
  });
});

describe('added water', () => {
  // Annex VII, Part A, point 1: the weight of water is the finished weight less that of the other ingredients.
  const dough = (finished: number) => input([entry('flour', 500), entry('water', 350), entry('salt', 10)], finished);

  test('stands by what is left of it in the finished food', () => {
    // 700 - 510 = 190 g of water: after the flour, before the salt.
    expect(words(statementOf(dough(700), 'eu').items)).toBe('flour, water, salt');
  });

  test('is never more than went in', () => {
    expect(words(statementOf(input([entry('water', 40), entry('oil', 30)], 500), 'eu').items)).toBe('water, oil');
  });

  // 26.842… g of 536.8… would be 5 %: exactly, 510 / 0.95 of finished weight holds 5 % of water.
  const atFivePercent = { ...dough(1), finished: rational(51_000, 95) };

  test('of exactly 5 % may be left out in the European Union, and must be stated in Australia and New Zealand', () => {
    expect(words(statementOf(atFivePercent, 'eu').items)).toBe('flour, salt');
    expect(words(statementOf(atFivePercent, 'au').items)).toBe('flour, water, salt');
  });

  test('of a little more than 5 % is stated', () => {
    expect(words(statementOf({ ...atFivePercent, finished: rational(5_101, 9) }, 'eu').items)).toBe(
      'flour, water, salt',
    );
  });

  test('is stated whatever its share where there is bare meat', () => {
    const pie = input([entry('beef', 500, food('beef', [], ['meat'])), entry('water', 100)], 510);
    expect(words(statementOf(pie, 'eu').items)).toBe('beef, water');
    expect(words(statementOf({ ...pie, finished: rational(490) }, 'eu').items)).toBe('beef');
  });

  test('stands by what went in, in the United States and Canada', () => {
    for (const market of ['us', 'ca'] as const)
      expect(words(statementOf(dough(520), market).items)).toBe('flour, water, salt');
  });
});

describe('percentages of stressed ingredients', () => {
  test('sultana loaf of a council guide: 200 g of sultanas in 800 g baked are 25 %', () => {
    // 800 g dough and 200 g sultanas, 1000 g, baked to 800 g (a council's guide to QUID, worked example).
    const statement = statementOf(
      input([entry('dough', 800), entry('sultanas', 200)], 800, { stressed: ['Sultana Loaf'] }),
      'uk',
    );
    expect(words(statement.items)).toBe('dough, sultanas (25 %)');
  });

  test('fish fingers of a trade article: 70 g of fish in 112 g are 62.5 %', () => {
    // Fish 70, batter 20, crumb 20, oil +7, water -5: 112 g. Printed whole by the rule; 62.5 rounds away from zero.
    const fingers = input(
      [entry('fish', 70, food('fish', ['fish'], ['fish'])), entry('batter', 20), entry('crumb', 20), entry('oil', 7)],
      112,
      { stressed: ['Fish Fingers'] },
    );
    expect(words(statementOf(fingers, 'uk').items)).toBe('FISH (63 %), batter, crumb, oil');
  });

  test('above 100 % are printed as grams per 100 g of product (Annex VIII, point 4)', () => {
    expect(quantityOf(rational(120), rational(100))).toBe('120 g per 100 g');
  });

  test('below 5 % are printed to a half', () => {
    expect(quantityOf(exact('2.3'), rational(100))).toBe('2.5 %');
  });

  test('are on the weight of everything where no moisture was lost', () => {
    const raw = input([entry('oats', 60), entry('honey', 40)], 100, { moistureLost: false, stressed: ['Honey Oats'] });
    expect(words(statementOf(raw, 'eu').items)).toBe('oats (60 %), honey (40 %)');
  });

  test('a word of the title that says how, not what, stresses nothing', () => {
    expect(isStressed('white flour', ['Pennymoss White Loaf'])).toBe(false);
    expect(isStressed('whole rye flour', ['Rye Loaf'])).toBe(true);
    expect(isStressed('lemons', ['Salt-House Lemon Pot'])).toBe(true);
  });

  test('what a picture shows is stressed like the title', () => {
    const value = labelled(
      'recipe Quay Buns\n\nmake buns\n  300 g plain flour\n  100 g raisins\n  hands 5 min: Mix.\n',
      { pictured: ['raisins'] },
    ).value;
    expect(words(value.statement.items)).toBe(
      'plain flour, raisins (25 %)'.replace('plain flour', 'plain flour (WHEAT)'),
    );
  });
});

describe('allergens in the list', () => {
  const text = (name: string, allergens: readonly string[]): string =>
    emphasise(name, allergens)
      .map((one) => one.text)
      .join('');

  test('are in capitals in the name, or added in brackets', () => {
    expect(text('whole wheat flour', ['wheat'])).toBe('whole WHEAT flour');
    expect(text('butter', ['milk'])).toBe('butter (MILK)');
    expect(text('eggs', ['egg'])).toBe('EGGS');
    expect(text('spelt flour', ['wheat', 'spelt (wheat)'])).toBe('SPELT flour (WHEAT)');
    expect(text('brazil nuts', ['Brazil nut'])).toBe('BRAZIL NUTS');
  });

  test('only the capitals are marked', () => {
    expect(emphasise('butter', ['milk'])).toEqual([
      { text: 'butter (', emphasis: false },
      { text: 'MILK', emphasis: true },
      { text: ')', emphasis: false },
    ]);
  });
});

const PASTRY = `recipe Puff
make puff
  200 g plain flour
  150 g butter
  80 g water
  hands 10 min: Fold.
`;

describe('from recipes', () => {
  test('a thing from another file is a compound, with its own ingredients in order', () => {
    const value = labelled(`recipe Pear Slices
gives 8 slices
use puff from puff.quern

make slices
  200 g puff
  400 g pears
  hands 10 min: Lay the pears on.
  oven 30 min at 200 C: Bake.
  lose 60 g as water
=== puff.quern
${PASTRY}`).value;
    expect(words(value.statement.items)).toBe('pears (74 %), puff [plain flour (WHEAT), butter (MILK), water]');
    expect(value.allergens.contains.map(({ name }) => name)).toEqual(['wheat', 'milk']);
  });

  // 21 CFR 101.4(b)(2) and Regulation (EU) No 1169/2011, Annex VII, Part E: a compound ingredient is followed by a list of
  // its own ingredients, each level by weight. That lists nest is common practice.
  test('a compound of a compound nests, brackets in brackets', () => {
    const value = labelled(`recipe Pear Slices
gives 8 slices
use base from base.quern

make slices
  300 g base
  100 g butter
  100 g pears
  hands 10 min: Lay the pears on.
=== base.quern
recipe Base
gives 1 base of 500 g
use puff from puff.quern

make base
  200 g puff
  260 g almond paste
  40 g butter
  hands 5 min: Spread.
=== puff.quern
${PASTRY}`).value;
    // By hand: of 300 g of base 120 g are puff, 156 g almond paste, 24 g butter; in the puff flour stands first.
    expect(words(value.statement.items)).toBe(
      'base [ALMOND paste, puff [plain flour (WHEAT), butter (MILK), water], butter (MILK)], butter (MILK), pears (20 %)',
    );
    expect(labelText(value, { width: 400 })).toMatch(
      /base \(.*puff \[plain flour \(WHEAT\), butter \(MILK\), water\], butter/,
    );
  });

  test('what is cooked with and taken out is named apart, its allergens too', () => {
    const value = labelled(`recipe Broth
make broth
  1 kg water
  200 g celery = 200 g
  10 g fine salt
  hob 30 min: Simmer.
  bin all celery
`).value;
    expect(words(value.statement.items)).toBe('water, fine salt');
    expect(words(value.statement.takenOut)).toBe('CELERY');
    expect(value.allergens.contains.map(({ name }) => name)).toEqual(['celery']);
  });

  test('a line that cannot be read leaves the label saying so, and the rest is still named', () => {
    const value = labelled(
      'recipe Buns\n\nmake buns\n  300 g plain flour\n  1-1/2 cups sugar\n  50 g butter\n  hands 5 min: Mix.\n',
    ).value;
    expect(value.complete).toBe(false);
    expect(value.weight).toBeUndefined();
    expect(value.alerts.join(' ')).toMatch(/cannot be read|does not come out/);
    const named = `${words(value.statement.items)}, ${words(value.statement.unweighed)}`;
    expect(named).toMatch(/flour/);
    expect(named).toMatch(/butter/);
  });

  test('a little salt is named, and the salt of the label is at least', () => {
    const value = labelled(
      'recipe Buns\ngives 4 buns\n\nmake buns\n  300 g plain flour\n  200 g water\n  a little fine salt\n  hands 5 min: Mix.\n',
    ).value;
    expect(words(value.statement.unweighed)).toBe('fine salt');
    const rows = new Map(value.declaration.rows.map((row) => [row.nutrient, row.values[0]]));
    expect(rows.get('salt')?.atLeast).toBe(true);
    expect(rows.get('fat')?.atLeast).toBe(false);
  });

  test('a weight that may be that of the thing as bought is said to count as edible, unless something is binned', () => {
    const pears = (more: string): string =>
      `recipe Pears\n\nmake pears\n  1 kg mangoes\n  hands 5 min: Peel.\n${more}  100 g sugar\n  hob 10 min: Stew.\n`;
    expect(labelled(pears('')).value.notes.join(' ')).toMatch(/Weights count as edible: mangoes/);
    expect(labelled(pears('  bin 30 % of mangoes as peel and stones\n')).value.notes.join(' ')).not.toMatch(
      /count as edible/,
    );
  });
});
