import { describe, expect, test } from 'vitest';
import { sentence } from '@quern/text';
import { createFoodBook } from '@quern/foods';
import { Session } from './session.js';
import type { Compiled } from './model.js';

/* A variant in a file of its own: the recipe is brought in by `use`, the variant says what it does otherwise. */

const BASE = `cup metric
recipe Quay Bread
gives 1 loaf
free of milk

food quay malt
  contains gluten

make dough
  500 g strong wheat flour
  350 g water
  10 g fine salt
  20 g quay malt
  hands 10 min: Mix in the water.
`;

const foods = createFoodBook();

function compileWith(variant: string, base = BASE): Compiled {
  const files: Readonly<Record<string, string>> = { 'bread/base.quern': base, 'bread/variant.quern': variant };
  const compiled = new Session({ read: (path) => files[path], foods }).compile('bread/variant.quern');
  if (!compiled) throw new Error('not there');
  return compiled;
}

const told = ({ diagnostics }: Compiled): readonly string[] =>
  diagnostics.filter(({ severity }) => severity === 'error').map((one) => `${one.code} ${sentence(one)}`);

const MILKY = `use Quay Bread from base.quern

variant milky
  swap water for whole milk
  times 2
`;

describe('a variant in a file of its own', () => {
  test('is the recipe with its edits, under its own name and file', () => {
    const compiled = compileWith(MILKY);
    const [formula, ...more] = compiled.formulas;
    expect(more).toEqual([]);
    expect(formula).toMatchObject({
      title: 'Quay Bread',
      variant: 'milky',
      file: 'bread/variant.quern',
      id: 'bread/variant.quern#quay bread@milky',
    });
    // 500 + 350 + 10 + 20 g, twice.
    expect(formula?.dishGrams).toEqual({ n: 1760n, d: 1n });
    expect(formula?.facts.cups).toBe('metric');
    expect(formula?.edits.map(({ kind, ref }) => `${kind} in ${ref.file}`)).toEqual([
      'swap in bread/variant.quern',
      'times in bread/variant.quern',
    ]);
  });

  test('knows the foods of both files, and keeps which line stands where', () => {
    const compiled = compileWith(`use Quay Bread from base.quern

food oat gold
  contains gluten

variant golden
  add 30 g oat gold beside quay malt
`);
    expect(told(compiled)).toEqual([]);
    const items = compiled.formulas[0]?.makes[0]?.items ?? [];
    const files = items.flatMap((item) => (item.kind === 'in' ? [`${item.content.name.text}: ${item.ref.file}`] : []));
    expect(files).toEqual([
      'strong wheat flour: bread/base.quern',
      'water: bread/base.quern',
      'fine salt: bread/base.quern',
      'quay malt: bread/base.quern',
      'oat gold: bread/variant.quern',
    ]);
  });

  test('may replace a make with its own', () => {
    const compiled = compileWith(`use Quay Bread from base.quern as bread

variant plain
  make dough
    500 g strong wheat flour
    300 g water
    hands 5 min: Mix.
`);
    expect(told(compiled)).toEqual([]);
    expect(compiled.formulas[0]?.dishGrams).toEqual({ n: 800n, d: 1n });
  });

  test('what is wrong is told in the file of the variant', () => {
    const compiled = compileWith(MILKY);
    // The base promises to be free of milk.
    const promise = compiled.diagnostics.find(({ code }) => code === 'A01');
    expect(promise?.place.file).toBe('bread/variant.quern');
    expect(promise?.related.map(({ place }) => place.file)).toContain('bread/base.quern');
    expect(compiled.diagnostics.every(({ place }) => place.file === 'bread/variant.quern')).toBe(true);
  });

  test('a stale edit is told where it stands', () => {
    const compiled = compileWith(MILKY.replace('water', 'butter'));
    const stale = compiled.diagnostics.find(({ code }) => code === 'V01');
    const at = MILKY.indexOf('water');
    expect(stale?.place).toEqual({ file: 'bread/variant.quern', start: at, end: at + 'butter'.length });
  });

  test('a line of the variant is not taken for a line of the recipe that has its number', () => {
    const water = BASE.split('\n').findIndex((line) => line.includes('water'));
    const swap = 'use Quay Bread from base.quern\n\nvariant milky\n  swap water for orange juice\n';
    const added = '  add 1 bunch honey beside fine salt\n';
    const variant = `${swap}${'\n'.repeat(water - 4)}${added}`;
    expect(variant.split('\n')[water]).toBe(added.trimEnd());
    const weight = compileWith(variant).diagnostics.find(({ code }) => code === 'Q08' || code === 'V02');
    expect(weight?.code).toBe('Q08');
    expect(weight?.place.start).toBe(variant.indexOf('honey'));
  });

  test('what the recipe itself has to answer for is not told again', () => {
    const broken = BASE.replace('10 g fine salt', '10 g fine salt = cold');
    expect(told(compileWith(MILKY, broken)).filter((line) => line.startsWith('L13'))).toEqual([]);
  });

  test('can be drawn and served like any recipe', () => {
    const files: Readonly<Record<string, string>> = {
      'base.quern': BASE,
      'milky.quern': MILKY,
      'toast.quern':
        'use Quay Bread milky from milky.quern as milk bread\n\nrecipe Toast\n\nmake toast\n  200 g milk bread\n  oven 5 min at 200 C: Toast.\n',
    };
    const compiled = new Session({ read: (path) => files[path], foods }).compile('toast.quern');
    expect(compiled && told(compiled)).toEqual([]);
    expect(compiled?.formulas[0]?.dishGrams).toEqual({ n: 200n, d: 1n });
  });

  test.each([
    ['no recipe at all', 'variant milky\n  swap water for whole milk\n', 'L02'],
    ['a food', MILKY.replace('Quay Bread from', 'quay malt from'), 'V07'],
    ['a file that is not there', MILKY.replace('base.quern', 'none.quern'), 'N09'],
  ])('of %s', (_, text, code) => {
    const codes = told(compileWith(text)).map((line) => line.split(' ')[0]);
    expect(codes).toEqual([code]);
  });
});
