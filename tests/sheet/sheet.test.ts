import { describe, expect, test } from 'vitest';
import { exact, rational, toApproximateNumber } from '@quern/quantity';
import type { Formula } from '@quern/compiler';
import { findScale, readScale, sheet, type ScaleKind, type Scale, type SheetData, type SheetIn } from '@quern/views';
import { brokenRecipeOf, example, recipeOf } from './recipes.js';

function scaled(formula: Formula, kind: ScaleKind, text: string): Scale {
  const request = readScale(kind, text);
  if (!request.ok) throw new Error(request.problem);
  const scale = findScale(request.value, formula);
  if (!scale.ok) throw new Error(scale.problem);
  return scale.value;
}

const factorOf = (formula: Formula, kind: ScaleKind, text: string): string => {
  const { factor } = scaled(formula, kind, text);
  return `${factor.n}/${factor.d}`;
};

const rowNamed = (data: SheetData, name: string): SheetIn => {
  const row = data.makes.flatMap((make) => make.rows).find((one) => one.kind === 'in' && one.name === name);
  if (row?.kind !== 'in') throw new Error(`no line puts in ${name}`);
  return row;
};

const loaf = (): Formula => {
  const [formula] = example('black-tin-loaf').formulas;
  if (!formula) throw new Error('no loaf');
  return formula;
};

describe('what a sheet is scaled by', () => {
  const bread = recipeOf(
    'recipe Bread\ngives 2 loaves of 800 g\nserves 20 slices\nvessel 2 loaf tins of 20 x 10 x 10 cm\n\n' +
      '  1 kg strong wheat flour\n  580 g water\n  20 g fine salt\n  4 eggs = 50 g each\n  hands 5 min: Mix the flour, the water, the salt and the eggs.\n  lose 200 g as water\n',
  );

  test.each([
    ['times', '2.5', '5/2'],
    ['times', '1 1/2', '3/2'],
    ['makes', '6 loaves', '3/1'],
    ['makes', '6', '3/1'],
    // The word of `serves` is understood too.
    ['makes', '30 slices', '3/2'],
    ['serves', '40', '2/1'],
    // 1 kg + 580 g + 20 g + 200 g - 200 g is 1600 g as it is served.
    ['weight', '4kg', '5/2'],
    ['weight', '800 g', '1/2'],
    // 20 x 10 x 10 cm is 2 l; twice. 25 x 10 x 8 cm is 2 l; three times.
    ['tin', '3 of 25x10x8 cm', '3/2'],
    ['tin', '1 of 2 l', '1/2'],
    ['have', '350 g strong wheat flour', '7/20'],
    ['have', '500 g flour', '1/2'],
    ['have', '2 eggs', '1/2'],
    // The scarcest decides.
    ['have', '2 kg strong wheat flour, 290 g water', '1/2'],
  ] as const)('%s %s is times %s', (kind, text, factor) => {
    expect(factorOf(bread, kind, text)).toBe(factor);
  });

  test('a round tin is measured across and deep', () => {
    // Pi to 15 digits from a general-purpose source: the machine's own.
    const { factor } = scaled(bread, 'tin', '1 of 20 x 8 cm');
    expect(toApproximateNumber(factor)).toBeCloseTo((Math.PI * 10 * 10 * 8) / 4000, 12);
  });

  test.each([
    ['times', 'many'],
    ['times', '0'],
    ['times', '-2'],
    ['makes', 'loaves'],
    ['makes', '4-6 loaves'],
    ['weight', '5'],
    ['weight', '5 l'],
    ['serves', 'everybody'],
    ['tin', '3 of 25 cm'],
    ['tin', 'large'],
    ['have', 'sunflower seeds'],
    ['have', 'a little salt'],
  ] as const)('%s %s is refused with a way out', (kind, text) => {
    const read = readScale(kind, text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.help).not.toBe('');
  });

  test.each([
    ['makes', '6 cakes', /makes loaves, not cakes/],
    ['have', '300 g butter', /does not go into/],
  ] as const)('%s %s is refused for this recipe', (kind, text, why) => {
    const request = readScale(kind, text);
    if (!request.ok) throw new Error(request.problem);
    const found = findScale(request.value, bread);
    expect(found).toMatchObject({ ok: false, problem: expect.stringMatching(why) as string });
  });

  test('what the recipe does not say cannot be scaled by', () => {
    const plain = recipeOf(
      'recipe Porridge\n\n  50 g rolled oats\n  400 g water\n  hob 5 min: Simmer the oats in the water.\n',
    );
    for (const [kind, text] of [
      ['makes', '6 bowls'],
      ['serves', '4'],
      ['tin', '1 of 2 l'],
    ] as const) {
      const request = readScale(kind, text);
      if (!request.ok) throw new Error(request.problem);
      expect(findScale(request.value, plain).ok).toBe(false);
    }
  });
});

describe('the lines of a sheet', () => {
  test('a cup measure is printed as written, and reckoned anew when the recipe is scaled', () => {
    const written = rowNamed(sheet(loaf()), 'sunflower seeds');
    expect(written.us).toEqual({ text: '1 1/2 cups', manner: 'written' });
    const twice = rowNamed(sheet(loaf(), { scale: scaled(loaf(), 'times', '2') }), 'sunflower seeds');
    expect(twice.us).toMatchObject({ text: '3 cups', manner: 'scooped', off: { text: 'exact', near: true } });
  });

  test('2/3 cup of brown sugar is about 140 g', () => {
    // common practice, no source
    const formula = recipeOf('recipe Sugar\n\n  140 g brown sugar, packed\n  hands 1 min: Weigh the sugar.\n');
    const { us } = rowNamed(sheet(formula), 'brown sugar');
    expect(us?.text).toBe('2/3 cup');
    expect(
      Math.abs(Number(us?.off?.percent.includes('/') ? toApproximateNumber(exact(us.off.percent)) : us?.off?.percent)),
    ).toBeLessThan(3);
  });

  test('a cup computed from the table says how far off it is', () => {
    const row = rowNamed(sheet(loaf()), 'whole rye flour');
    expect(row.us?.manner).toBe('scooped');
    const percent = toApproximateNumber(exact(row.us?.off?.percent ?? '100'));
    expect(Math.abs(percent)).toBeLessThanOrEqual(3);
    expect(row.us?.off?.text).toMatch(/^(exact|under 0\.1 %|[+-]\d\.\d %)$/);
  });

  test('metric sheets hold no cups, and metric cups are those of 250 ml', () => {
    expect(rowNamed(sheet(loaf(), { measures: 'metric' }), 'water').us).toBeUndefined();
    const formula = recipeOf('recipe Water\n\n  500 g water\n  hands 1 min: Pour the water.\n');
    expect(rowNamed(sheet(formula, { cups: 'metric' }), 'water').us?.text).toBe('2 cups');
  });

  test('percents, shares, packs, counts and open amounts say what the file says, and weigh', () => {
    const formula = recipeOf(
      'recipe Pot\n\nmake base\n  1 kg strong wheat flour\n  2 % fine salt on flour\n  2 tins of 400 g chopped tomatoes\n  3 onions = 450 g\n  4 cloves garlic = 20 g\n' +
        '  a little black pepper = about 2 g\n  hands 5 min: Mix the flour, the salt, the tomatoes, the onions, the garlic and the pepper.\n\nmake pot\n  half of base\n  rest of base\n  hands 1 min: Put it together.\n',
    );
    const data = sheet(formula, { scale: scaled(formula, 'times', '2') });
    const told = data.makes.flatMap((make) =>
      make.rows.flatMap((row) => (row.kind === 'in' ? [[row.said, row.weight?.text, row.name]] : [])),
    );
    expect(told).toEqual([
      [undefined, '2000 g', 'strong wheat flour'],
      ['2 % on flour', '40 g', 'fine salt'],
      ['4 tins of 400 g', '1600 g', 'chopped tomatoes'],
      ['6', '900 g', 'onions'],
      ['8 cloves', '40 g', 'garlic'],
      ['a little', '4 g', 'black pepper'],
      ['half of', '2290 g', 'base'],
      ['rest of', '2290 g', 'base'],
    ]);
  });

  test('a range keeps both its ends', () => {
    const formula = recipeOf('recipe Range\n\n  340-360 g water\n  hands 1 min: Pour the water.\n');
    expect(rowNamed(sheet(formula, { scale: scaled(formula, 'times', '1/2') }), 'water').weight).toEqual({
      grams: { low: '170', high: '180' },
      text: '170-180 g',
    });
  });

  test('what is not known is null and said to be so, never a number', () => {
    const formula = brokenRecipeOf(
      'recipe Unknown\n\n  200 g water\n  1 cup frobnut\n  hands 1 min: Stir the frobnut into the water.\n',
    );
    const data = sheet(formula);
    expect(rowNamed(data, 'frobnut').weight).toBeNull();
    expect(data.makes[0]?.total).toBeNull();
    expect(data.yield.weight).toBeNull();
    expect(data.warnings.map(({ code, lines }) => [code, lines])).toContainEqual(['unknown-weight', [4]]);
  });

  test('alternatives and optional lines stand with the line they belong to', () => {
    const formula = recipeOf(
      'recipe Nuts\n\n  100 g hazelnuts\n  or 90 g walnuts\n  optional 10 g honey\n  hands 1 min: Mix the hazelnuts with the honey.\n',
    );
    const row = rowNamed(sheet(formula), 'hazelnuts');
    expect(row.alternatives.map(({ name, weight }) => [name, weight?.text])).toEqual([['walnuts', '90 g']]);
    expect(rowNamed(sheet(formula), 'honey').optional).toBe(true);
    expect(sheet(formula).yield.weight?.text).toBe('100 g');
  });
});

describe('sentences', () => {
  const butter = (step: string): string[] => {
    const formula = recipeOf(`recipe Sauce\ngives 4 pots\n\n  42 g butter\n  hands 4 min: ${step}\n`);
    const texts = (measures: 'metric' | 'us' | 'both', times: string): string =>
      sheet(formula, { measures, scale: scaled(formula, 'times', times) })
        .makes.flatMap((make) => make.rows)
        .flatMap((row) => (row.kind === 'step' ? row.sentences : []))
        .join(' ');
    return [texts('metric', '1'), texts('metric', '2'), texts('both', '1')];
  };

  test('figures in square brackets scale, and the brackets are gone', () => {
    expect(butter('Beat in the butter, [14 g] at a time, into [4] pots.')).toEqual([
      'Beat in the butter, 14 g at a time, into 4 pots.',
      'Beat in the butter, 28 g at a time, into 8 pots.',
      'Beat in the butter, 14 g (1/2 oz) at a time, into 4 pots.',
    ]);
  });

  test('shares are told in words with their weight', () => {
    expect(butter('Beat in [1/3 of butter].')).toEqual([
      'Beat in a third of the butter (14 g).',
      'Beat in a third of the butter (28 g).',
      'Beat in a third of the butter (14 g; 1/2 oz).',
    ]);
  });

  test('other figures are converted and never scaled; temperatures stand in both scales', () => {
    expect(butter('Beat in the butter with 30 g of ice at 180 C.')).toEqual([
      'Beat in the butter with 30 g of ice at 180 C.',
      'Beat in the butter with 30 g of ice at 180 C.',
      'Beat in the butter with 30 g (1 oz) of ice at 180 C (356 F).',
    ]);
  });

  test('clauses tell both scales as dials and thermometers are marked', () => {
    const formula = recipeOf(
      'recipe Bun\n\n  500 g strong wheat flour\n  300 g water\n  hands 5 min until 26 C: Mix the flour and the water.\n  oven 15-20 min at 330 F falling to 150 C until 97 C: Bake.\n',
    );
    const steps = sheet(formula)
      .makes.flatMap((make) => make.rows)
      .flatMap((row) => (row.kind === 'step' ? [row] : []));
    // 330 F is 165 C on an oven dial: common practice, no source. 207 F and 79 F by the definition of the scales (NIST SP 811).
    expect(steps.map(({ clauses }) => clauses)).toEqual([
      ['until 26 C (79 F)'],
      ['at 165 C (330 F) falling to 150 C (300 F)', 'until 97 C (207 F)'],
    ]);
  });
});

describe('gas marks', () => {
  test('stand beside an oven, and nowhere else, when they are asked for', () => {
    const formula = recipeOf(
      'recipe Bun\n\n  500 g strong wheat flour\n  300 g water\n  wait 1 h at 26 C: Leave the flour in the water.\n  oven 15-20 min at 190 C falling to 180 C: Bake.\n',
    );
    const clauses = (options: object): string[] =>
      sheet(formula, options)
        .makes.flatMap((make) => make.rows)
        .flatMap((row) => (row.kind === 'step' ? row.clauses : []));
    // 190 C is mark 5 and 180 C mark 4 in printed tables (reference `units.tsv`, gas marks).
    expect(clauses({ gasMarks: true })).toEqual([
      'at 26 C (79 F)',
      'at 190 C (375 F, gas 5) falling to 180 C (350 F, gas 4)',
    ]);
    expect(clauses({})[1]).not.toMatch(/gas/);
  });
});

describe('what does not scale', () => {
  const codes = (data: SheetData): string[] => data.warnings.map(({ code }) => code);

  test('nothing is said of a recipe as written', () => {
    expect(codes(sheet(loaf()))).toEqual([]);
  });

  test('the number of loaves, the tins and the times are named when they do not follow', () => {
    expect(codes(sheet(loaf(), { scale: scaled(loaf(), 'times', '1.25') }))).toEqual(
      expect.arrayContaining(['bake-time', 'part-of-a-piece', 'vessel-full']),
    );
    expect(codes(sheet(loaf(), { scale: scaled(loaf(), 'makes', '4 loaves') }))).toEqual(['bake-time']);
  });

  test('other tins: the depth is stated, and how much deeper or shallower it stands', () => {
    const data = sheet(loaf(), { scale: scaled(loaf(), 'tin', '3 of 20x9x6 cm') });
    // Filled as full, the filling stands as deep as the tins: 6 cm to 8 cm is 75 %.
    expect(data.warnings.find(({ code }) => code === 'depth')?.text).toMatch(
      /6 cm deep.* 8 cm\. The filling stands 75 % as deep/,
    );
    expect(data.yield.pieces?.text).toBe('3 loaves');
  });

  test('open amounts, boiling down, and figures left in sentences', () => {
    const formula = recipeOf(
      'recipe Syrup\n\n  500 g water\n  500 g sugar\n  a little lemon juice = about 5 g\n  hob 10 min: Boil the water, the sugar and the lemon juice in a pan, and keep 50 g back.\n  lose 100 g as water\n',
    );
    expect(codes(sheet(formula, { scale: scaled(formula, 'times', '3') }))).toEqual([
      'boil-time',
      'open-amount',
      'sentence-figure',
    ]);
  });

  test('more than the mixer holds is divided into batches', () => {
    const data = sheet(loaf(), { scale: scaled(loaf(), 'makes', '8 loaves'), mixer: rational(4000) });
    const warning = data.warnings.find(({ code }) => code === 'mixer-full');
    expect(warning?.text).toMatch(/in 3 batches/);
    expect(codes(sheet(loaf(), { mixer: rational(4000) }))).toEqual([]);
  });
});
