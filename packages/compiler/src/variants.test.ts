import { describe, expect, test } from 'vitest';
import { codes, formulaOf, grams, makeOf, potOf, said } from './test/recipes.js';

const base =
  'recipe R\ngives 4 buns of 100 g\nserves 4\n\nmake buns\n  250 g strong wheat flour\n  100 g whole milk\n  50 g egg = 1\n  hands 5 min: Mix the flour, milk and [1] egg; divide in [4].\n  check 400 g\n';

describe('variants', () => {
  test('swap keeps the amount and changes the name in sentences', () => {
    const formula = formulaOf(`${base}\nvariant plant\n  swap whole milk for oat drink\n`, 'plant');
    expect(potOf(makeOf(formula, 'buns'))['oat drink']).toBe('100.00');
    const step = formula.makes[0]?.items.find((item) => item.kind === 'step');
    expect(step?.kind === 'step' && step.content.prose.text).toBe(
      'Mix the flour, oat drink and [1] egg; divide in [4].',
    );
  });

  test('swap takes the amount given, or the or line’s', () => {
    const nuts = 'recipe R\n\nmake m\n  90 g hazelnuts\n  or 78 g walnuts\n  100 g honey\n  hands 1 min: Stir.\n';
    expect(potOf(makeOf(formulaOf(`${nuts}\nvariant v\n  swap hazelnuts for walnuts\n`, 'v'), 'm')).walnuts).toBe(
      '78.00',
    );
    expect(potOf(makeOf(formulaOf(`${nuts}\nvariant v\n  swap hazelnuts for 60 g almonds\n`, 'v'), 'm')).almonds).toBe(
      '60.00',
    );
  });

  test('a swap is a choice: other `or` lines of the old food go; `drop` takes an `or` line alone', () => {
    const nuts =
      'recipe R\n\nmake m\n  90 g hazelnuts\n  or 78 g walnuts\n  or 93 g sunflower seeds\n  100 g honey\n  hands 1 min: Stir.\n';
    const alternatives = (edit: string): string[] => {
      const [first] = makeOf(formulaOf(`${nuts}\nvariant v\n  ${edit}\n`, 'v'), 'm').items;
      return first?.kind === 'in' ? [first, ...first.alternatives].map(({ content }) => content.name.text) : [];
    };
    expect(alternatives('swap hazelnuts for sunflower seeds')).toEqual(['sunflower seeds']);
    expect(alternatives('swap hazelnuts for 50 g pumpkin seeds')).toEqual(['pumpkin seeds']);
    expect(alternatives('drop walnuts')).toEqual(['hazelnuts', 'sunflower seeds']);
  });

  test('swap works after on and of too', () => {
    const text =
      'recipe R\n\nmake m\n  1 kg white cabbage\n  hands 1 min: Trim.\n  bin 10 % of white cabbage\n  2 % fine salt on white cabbage\n  hands 1 min: Rub.\n\nvariant red\n  swap white cabbage for red cabbage\n';
    expect(codes(text)).toEqual([]);
    expect(potOf(makeOf(formulaOf(text, 'red'), 'm'))['fine salt']).toBe('18.00');
  });

  test('times scales amounts, yield, servings and brackets, never times; checks keep their figures', () => {
    const text = `${base}\nvariant double\n  times 2\n`;
    expect(codes(text)).toEqual([]);
    const formula = formulaOf(text, 'double');
    expect(grams(formula.dishGrams)).toBe('800.0');
    expect(grams(formula.pieces, 0)).toBe('8');
    expect(grams(formula.servings, 0)).toBe('8');
    const step = formula.makes[0]?.items.find((item) => item.kind === 'step');
    if (step?.kind !== 'step') throw new Error('no step');
    expect(
      step.content.prose.brackets.map(
        (bracket) => bracket.amount?.kind === 'count' && grams(bracket.amount.range.low, 0),
      ),
    ).toEqual(['2', '8']);
    expect(grams(step.content.time?.low.minutes, 0)).toBe('5');
  });

  test('add inserts after the line, drop takes out and warns of the sentence', () => {
    const added = formulaOf(
      `${base}\nvariant seeded\n  add 30 g sunflower seeds beside whole milk\n  gives 4 buns of 108 g\n`,
      'seeded',
    );
    expect(added.makes[0]?.items.map((item) => (item.kind === 'in' ? item.content.name.text : item.kind))).toEqual([
      'strong wheat flour',
      'whole milk',
      'sunflower seeds',
      'egg',
      'step',
      'check',
    ]);
    expect(
      said(`${base}\nvariant lean\n  drop egg\n  gives 4 buns of 88 g\n`).filter((line) => line.startsWith('V')),
    ).toEqual(['V03 13: line 9 still says “egg”']);
  });

  test('stale and ambiguous edits are errors', () => {
    expect(codes(`${base}\nvariant v\n  swap margarine for honey\n`)).toContain('V01');
    expect(
      codes(
        'recipe R\n\nmake m\n  100 g brown sugar\n  100 g caster sugar\n  hands 1 min: Mix.\n\nvariant v\n  drop sugar\n',
      ),
    ).toContain('V05');
    expect(
      codes(
        'recipe R\n\nmake m\n  10 g sugar\n  hands 1 min: Mix.\n  10 g sugar\n  hands 1 min: Dust.\n\nvariant v\n  add 1 g fine salt beside sugar\n',
      ),
    ).toContain('V04');
  });

  test('a make under a variant replaces or adds', () => {
    const text =
      'recipe R\n\nmake dough\n  200 g strong wheat flour\n  hands 1 min: Mix.\n\nmake bun\n  all dough\n  hands 1 min: Shape.\n\nvariant rye\n\nmake dough\n  300 g whole rye flour\n  hands 1 min: Mix.\n';
    expect(codes(text)).toEqual([]);
    expect(potOf(makeOf(formulaOf(text, 'rye'), 'bun'))).toEqual({ 'whole rye flour': '300.00' });
    expect(potOf(makeOf(formulaOf(text), 'bun'))).toEqual({ 'strong wheat flour': '200.00' });
  });

  test('a promise is inherited and checked again', () => {
    const text =
      'recipe R\nfree of nuts\n\nmake m\n  100 g rolled oats\n  hands 1 min: Stir.\n\nvariant nutty\n  swap rolled oats for walnuts\n';
    expect(said(text)).toEqual(['A01 2: “free of nuts”, but walnuts goes in']);
  });
});
