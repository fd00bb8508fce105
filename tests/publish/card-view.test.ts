import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { describe, expect, test } from 'vitest';
import { card, type CardData, type CardIngredient, type CardViewOptions } from '@quern/views';
import { rational } from '@quern/quantity';

const foods = createFoodBook();

function cardOf(text: string, options: CardViewOptions = {}): CardData {
  const compiled = compile('quay.quern', text, { foods, read: () => undefined });
  const [formula, ...others] = compiled.formulas;
  if (!formula) throw new Error('no recipe');
  return card(formula, { variants: others, ...options });
}

const dish = (...lines: string[]): string =>
  `recipe Quay Dish\n\nmake dish\n${lines.map((line) => `  ${line}\n`).join('')}`;

function only(line: string, ...more: string[]): CardIngredient {
  const found = cardOf(dish(...more, line, 'hands 1 min: Mix.')).makes[0]?.ingredients.at(-1);
  if (!found) throw new Error('no ingredient');
  return found;
}

describe('an amount stands in both measures', () => {
  test.each([
    // USDA SR28, NDB 19335, granulated sugar: 1 cup is 200 g.
    ['200 g sugar', '200 g', '1 cup'],
    // What the writer states is printed as written.
    ['85 g sugar = 3/8 cup', '85 g', '3/8 cup'],
    ['25 g honey = 1 1/4 tbsp', '25 g', '1 1/4 tbsp'],
    // A liquid is told as it is measured; a US pint is 473.176473 ml (NIST Handbook 44).
    ['250 ml whole milk', '250 ml', '1 cup + 1 tbsp'],
    ['1 us pint whole milk', expect.stringMatching(/^4[789]\d g$/), '1 us pint'],
    // What is counted is counted in both; a weight stands beside it only where the writer states it.
    ['4 cloves garlic', '4 cloves', '4 cloves'],
    ['4 cloves garlic = 20 g', '4 cloves (20 g)', '4 cloves'],
    ['6 beef cheeks = about 2.1 kg', '6 (about 2100 g)', '6'],
    ['2 tins of 400 g chopped tomatoes', '2 tins of 400 g', '2 tins of 400 g'],
    // No room is published for meat: pounds and ounces. 454 g are 1.001 lb (NIST Handbook 44).
    ['454 g beef cheeks', '454 g', '1 lb'],
    ['340-360 g water', '340-360 g', expect.stringMatching(/ to /)],
    ['a little fine salt', 'a little', 'a little'],
  ])('%s', (line, metric, us) => {
    expect(only(line).amount).toMatchObject({ metric, us });
  });

  test('an open amount with a guess keeps its words', () => {
    expect(only('enough water = about 150 g').amount).toMatchObject({ words: 'enough', metric: 'about 150 g' });
  });

  test('a share is told in words, with its weight; all of it without', () => {
    const two =
      'recipe Quay Dish\n\nmake base\n  300 g sugar\n  hands 1 min: Mix.\n\nmake dish\n  half of base\n  rest of base\n  hands 1 min: Mix.\n';
    const [half, rest] = cardOf(two).makes[1]?.ingredients ?? [];
    expect(half).toMatchObject({ make: 'base', amount: { words: 'half', metric: '150 g' } });
    expect(rest).toMatchObject({ make: 'base', amount: { words: 'rest', metric: '150 g' } });
    const whole = cardOf(two.replace('half of base\n  rest of base', 'all base')).makes[1]?.ingredients[0];
    expect(whole?.amount).toEqual({ metric: 'all', us: 'all' });
  });

  test('a per cent is weighed, and its words stand beside it', () => {
    expect(only('2 % fine salt on wheat flour', '500 g wheat flour')).toMatchObject({
      percent: '2 % on wheat flour',
      amount: { metric: '10 g' },
    });
  });

  test('alternatives and options are told as such', () => {
    const item = cardOf(
      dish('optional 90 g hazelnuts = 2/3 cup, chopped', 'or 78 g walnuts = 2/3 cup', 'hands 1 min: Mix.'),
    ).makes[0]?.ingredients[0];
    expect(item).toMatchObject({
      optional: true,
      note: 'chopped',
      alternatives: [{ name: 'walnuts', amount: { metric: '78 g', us: '2/3 cup' } }],
    });
  });
});

describe('the yield names the field', () => {
  test.each([
    [
      'gives 2 loaves of 1040 g\nserves 40 slices',
      { thing: 'loaves', count: '2', each: { metric: '1040 g' }, serves: { metric: '40 slices' } },
    ],
    ['gives 24 biscuits', { thing: 'biscuits', count: '24' }],
    ['gives 8 pots\nserves 8 pots', { thing: 'pots', count: '8', serves: undefined }],
    ['serves 6', { thing: 'servings', count: '6' }],
    ['gives 500 g', { thing: 'g', count: '500' }],
    ['', { thing: 'batches', count: '1', total: { metric: '500 g' } }],
  ])('%j', (facts, wanted) => {
    const found = cardOf(`recipe Quay Dish\n${facts}\n\nmake dish\n  500 g sugar\n  hands 1 min: Mix.\n`).yield;
    for (const [name, value] of Object.entries(wanted)) {
      const own = (found as unknown as Record<string, unknown>)[name];
      if (value === undefined) expect(own).toBeUndefined();
      else
        expect(typeof value === 'object' ? own : own).toEqual(
          typeof value === 'object' ? expect.objectContaining(value) : value,
        );
    }
  });

  test('the vessel follows in number, not in size', () => {
    const text =
      'recipe Quay Dish\nvessel 2 loaf tins of 23 x 11 x 8 cm\n\nmake dish\n  500 g sugar\n  hands 1 min: Mix.\n';
    expect(cardOf(text).yield.vessel?.metric).toBe('2 loaf tins of 23 x 11 x 8 cm');
    expect(cardOf(text, { factor: rational(1, 2) }).yield.vessel?.metric).toBe('1 loaf tin of 23 x 11 x 8 cm');
  });
});

describe('a step', () => {
  const steps = cardOf(
    dish(
      '90 g butter',
      'oven 45 min at 250 C falling to 200 C until 97 C using 1 shelf: Put in [30 g] of it, [1/3 of butter], at 180 C, in 5 g heaps.',
      ': And turn.',
      'every 12 min, 1 min: Look.',
      'save 20 g as scraps, for later',
      'tip Warm the tin.',
      'wait overnight at 4 C until pH below 4.6: Leave.',
    ),
  ).makes[0]?.steps;

  test('prints its sentence as written, with the figures that scale, are told in both measures or both scales', () => {
    expect(steps?.[0]?.sentence.map((run) => run.text).join('')).toBe(
      'Put in 30 g of it, a third of the butter, at 180 C, in 5 g heaps.',
    );
    expect(steps?.[0]?.sentence).toMatchObject([
      { kind: 'text' },
      { kind: 'amount', amount: { metric: '30 g', us: '1 oz', scale: { grams: { low: '30' } } } },
      { kind: 'text' },
      { kind: 'amount', amount: { words: 'a third of the butter', metric: '30 g' } },
      { kind: 'text' },
      // 180 C is 356 F; ovens are marked every 25 F (common practice, no source).
      { kind: 'temperature', temperature: { celsius: '180 C', fahrenheit: '350 F' } },
      { kind: 'text' },
      { kind: 'amount', text: '5 g', amount: { metric: '5 g' } },
      { kind: 'text' },
    ]);
    expect(steps?.[0]?.sentence[7]).not.toHaveProperty('amount.scale');
    expect(steps?.[0]?.more).toEqual([[{ kind: 'text', text: 'And turn.' }]]);
  });

  test('has the clock beside it', () => {
    expect(steps?.[0]?.clock).toEqual({
      lane: 'oven',
      time: { text: '45 min', minutes: { low: '45', high: '45' }, open: false },
      at: {
        temperature: { celsius: '250 C', fahrenheit: '475 F' },
        change: { direction: 'falling', to: { celsius: '200 C', fahrenheit: '400 F' } },
        fan: false,
      },
      // 97 C is 206.6 F: a thermometer shows 207.
      until: { celsius: '97 C', fahrenheit: '207 F' },
      using: ['1 shelf'],
    });
    expect(steps?.[1]?.clock).toMatchObject({
      lane: 'wait',
      time: { text: 'overnight', minutes: { low: '480', high: '960' } },
      untilAcidity: 'below 4.6',
    });
  });

  test('has its care, what it saves and what is remarked below it', () => {
    expect(steps?.[0]).toMatchObject({
      care: [{ every: { text: '12 min' }, takes: { text: '1 min' } }],
      saved: [{ name: 'scraps', note: 'for later', amount: { metric: '20 g' } }],
      remarks: [{ kind: 'tip', text: 'Warm the tin.' }],
    });
  });
});

test('at another size everything is multiplied out, to be scaled on from there', () => {
  const text = dish('150 g sugar', '4 eggs = 200 g', '100 ml whole milk', 'hands 1 min: Use [10 g].');
  const third = cardOf(text, { factor: rational(1, 3) }).makes[0];
  expect(third?.ingredients.map(({ amount }) => amount.metric)).toEqual(['50 g', '1 1/3 (67 g)', '33 ml']);
  expect(third?.ingredients.map(({ amount }) => amount.scale)).toMatchObject([
    { grams: { low: '50' } },
    { grams: { low: '200/3' }, pieces: { count: { low: '4/3' } } },
    { millilitres: { low: '100/3' } },
  ]);
  expect(third?.steps[0]?.sentence[1]?.text).toBe('3.3 g');
});

test('a variant is told in a few words, a promise is left to the label', () => {
  const text = `${dish('90 g hazelnuts', '20 g sugar', 'hands 1 min: Mix.')}
variant other
  swap hazelnuts for 80 g sunflower seeds
  drop sugar
  add 10 g honey beside sunflower seeds
  times 1/2
  free of nuts
  note Without nuts it is paler.
`;
  expect(cardOf(text).variants).toEqual([
    {
      name: 'other',
      changes: [
        '80 g sunflower seeds instead of hazelnuts',
        'sugar left out',
        '10 g honey beside sunflower seeds',
        'everything times 1/2',
        'note Without nuts it is paler.',
      ],
    },
  ]);
});

test('the photograph has words behind its comma', () => {
  const photo = (written: string): CardData['photo'] =>
    cardOf(`recipe Quay Dish\nphoto ${written}\n\nmake dish\n  1 g sugar\n  hands 1 min: Mix.\n`).photo;
  expect(photo('pot.jpg')).toEqual({ path: 'pot.jpg' });
  expect(photo('the pot.jpg, The black pot, open')).toEqual({
    path: 'the pot.jpg',
    alternative: 'The black pot, open',
  });
});

test('what is not known is left out, never guessed', () => {
  const data = cardOf(dish('3 sprigs frobnut', 'hands 1 min: Mix.'));
  expect(data.makes[0]?.ingredients[0]?.amount).toMatchObject({ metric: '3 sprigs', us: '3 sprigs' });
  expect(data.yield).not.toHaveProperty('total');
  expect(data).not.toHaveProperty('allergens');
  expect(data).not.toHaveProperty('nutrition');
  expect(data.diets).toEqual([]);
});

test('is JSON as it stands', () => {
  const data = cardOf(dish('150 g sugar', 'hands 1 min: Use [10 g].'));
  expect(JSON.parse(JSON.stringify(data))).toEqual(data);
});
