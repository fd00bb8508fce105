import { describe, expect, test } from 'vitest';
import { compareFormulas, fileReport, summaryOf, type Change } from '@quern/views';
import { compiled, compared, edited, recipeText, inputs, linesOf, recipe, told } from './states.js';

const BREAD = `recipe Quay Bread
gives 2 loaves of 557 g

make dough
  684 g strong wheat flour
  479 g water
  16 g fine salt
  6 g instant yeast
  hands 10 min: Mix and knead until smooth.
  wait 2 h at 24 C: Leave to rise.

make loaves
  all dough
  hands 5 min: Shape [2] loaves.
  oven 40 min at 230 C: Bake until brown.
  lose 70 g as water
`;

const change = (
  comparison: { readonly changes: readonly Change[] },
  kind: Change['kind'],
  name = '',
): Change | undefined => comparison.changes.find((one) => one.kind === kind && JSON.stringify(one).includes(name));

describe('amounts', () => {
  // 16 / 684 and 17.5 / 684 are 2.339 % and 2.558 %; 17.5 / 16 is 1.09375; the loaves weigh 1115 g and 1116.5 g.
  const salted = compared(BREAD, edited(BREAD, ['16 g fine salt', '17.5 g fine salt']));
  const [only] = salted.recipes;

  test('are told absolutely, in per cent and on the flour', () => {
    const [salt] = linesOf(only ?? { changes: [] });
    expect(salt).toMatchObject({ role: 'food', action: 'changed', subject: { after: 'fine salt' } });
    expect(salt?.grams).toMatchObject({
      before: { exact: '16' },
      after: { exact: '17.5' },
      percent: { exact: '9.375', text: '+9.4 %' },
    });
    expect(salt?.share).toMatchObject({ before: { text: '2.34 %' }, after: { text: '2.56 %' } });
  });

  test('a baker reads one sentence', () => {
    expect(summaryOf(only ?? { changes: [], same: false })).toBe(
      'Fine salt 2.34 % to 2.56 % on flour; 0.1 % heavier; salt +9.2 % and 2 more figures of the label; everything else the same.',
    );
  });

  test('a line in per cent of the flour weighs otherwise when the flour does', () => {
    const inPercent = edited(BREAD, ['16 g fine salt', '2 % fine salt on flour']);
    const more = recipe(inPercent, edited(inPercent, ['684 g strong', '700 g strong']));
    // 2 % of 684 g and of 700 g.
    expect(change(more, 'weighed')).toMatchObject({
      food: 'fine salt',
      before: { exact: '13.68' },
      after: { exact: '14' },
    });
    // 479 g of water on 684 g and on 700 g of flour: 70.03 % and 68.43 %.
    expect(change(more, 'share', 'water')).toMatchObject({ before: { text: '70.03 %' }, after: { text: '68.43 %' } });
    expect(change(more, 'bakers', 'hydration')).toMatchObject({
      before: { text: '70.03 %' },
      after: { text: '68.43 %' },
    });
  });
});

describe('what is no change', () => {
  test.each([
    ['a moved line', edited(BREAD, ['  6 g instant yeast\n', ''], ['  684 g', '  6 g instant yeast\n  684 g'])],
    ['another spelling of a number', edited(BREAD, ['684 g', '0.684 kg'], ['10 min', '1/6 h'], ['2 h', '120 min'])],
    ['another spelling of a name', edited(BREAD, ['fine salt', 'Fine  Salt'], ['all dough', 'all the dough'])],
    ['the same heat in the other scale', edited(BREAD, ['230 C', '446 F'])],
    ['remarks and empty lines', `// the loaf of the quay\n${BREAD}\n\n// end\n`],
    ['line ends of another system', BREAD.replaceAll('\n', '\r\n')],
  ])('%s', (_, other) => {
    expect(recipe(BREAD, other).changes).toEqual([]);
    expect(recipe(other, BREAD).changes).toEqual([]);
  });

  test('1/2 and 0.5', () => {
    const [a, b] = ['1/2 tsp', '0.5 tsp'].map(
      (amount) => `recipe Tea\n\nmake tea\n  ${amount} fine salt\n  1 kg water\n  hands 1 min: Stir.\n`,
    );
    expect(recipe(a ?? '', b ?? '').same).toBe(true);
  });

  test('every example compared with itself', () => {
    for (const name of ['black-tin-loaf', 'lantern-cheeks', 'pear-quark-pots']) {
      const text = recipeText(name);
      expect(compared(text, text)).toMatchObject({
        same: true,
        others: [],
        difference: { changes: [], arrangements: [] },
      });
    }
  });
});

describe('foods', () => {
  test('come in, go, and take each other’s place', () => {
    const other = edited(
      BREAD,
      ['  479 g water\n', '  479 g whole milk\n'],
      ['  6 g instant yeast\n', ''],
      ['  16 g', '  30 g honey\n  16 g'],
    );
    expect(told(recipe(BREAD, other)).toSorted()).toEqual([
      'added food honey',
      'removed food instant yeast',
      'swapped food whole milk',
    ]);
  });

  test('the same food by another name is only called otherwise', () => {
    const text = 'recipe Roast\n\nmake roast\n  300 g aubergine\n  20 g olive oil\n  oven 30 min at 200 C: Roast.\n';
    expect(linesOf(recipe(text, edited(text, ['aubergine', 'eggplant'])))).toMatchObject([
      { role: 'food', action: 'renamed', subject: { before: 'aubergine', after: 'eggplant' } },
    ]);
  });
});

describe('makes', () => {
  test('a renamed make is one change, and the lines that draw it follow', () => {
    const other = edited(BREAD, ['make dough', 'make white dough'], ['all dough', 'all white dough']);
    const renamed = recipe(BREAD, other);
    expect(
      linesOf(renamed)
        .filter((line) => !line.change.follows)
        .map(({ role, action }) => `${action} ${role}`),
    ).toEqual(['renamed make']);
    expect(linesOf(renamed).filter((line) => line.change.follows)).toHaveLength(1);
  });

  const SPLIT = edited(BREAD, [
    'make dough\n  684 g strong wheat flour\n  479 g water\n',
    'make batter\n  684 g strong wheat flour\n  479 g water\n  hands 2 min: Stir.\n\nmake dough\n  all batter\n',
  ]);

  test('a make out of another is told as that', () => {
    const split = recipe(BREAD, SPLIT);
    expect(linesOf(split).find(({ role }) => role === 'make')).toMatchObject({
      action: 'split',
      other: 'dough',
      subject: { after: 'batter' },
    });
    expect(told(split).filter((line) => line.startsWith('moved'))).toEqual([
      'moved food strong wheat flour',
      'moved food water',
    ]);
    // Nothing else: the same goes in.
    expect(split.changes.filter(({ kind }) => kind !== 'line')).toEqual([]);
  });

  test('and turned round, as one put into another', () => {
    expect(linesOf(recipe(SPLIT, BREAD)).find(({ role }) => role === 'make')).toMatchObject({
      action: 'merged',
      other: 'dough',
      subject: { before: 'batter' },
    });
  });
});

describe('steps', () => {
  test('times and temperatures are told apart from words', () => {
    const other = edited(BREAD, [
      'oven 40 min at 230 C: Bake until brown.',
      'oven 45 min at 220 C until 96 C: Bake until dark brown.',
    ]);
    const [step] = linesOf(recipe(BREAD, other));
    expect(step?.change.parts.map(({ part }) => part)).toEqual(['time', 'heat', 'until', 'words']);
    expect(step?.change.parts.at(-1)?.runs).toEqual([
      { kind: 'same', text: 'Bake until' },
      { kind: 'added', text: ' dark' },
      { kind: 'same', text: ' brown.' },
    ]);
  });

  test('work in another order is a change', () => {
    const folded = edited(BREAD, ['Leave to rise.\n', 'Leave to rise.\n  hands 2 min: Fold it over.\n']);
    const other = edited(
      folded,
      ['  hands 2 min: Fold it over.\n', ''],
      ['  wait 2 h', '  hands 2 min: Fold it over.\n  wait 2 h'],
    );
    expect(linesOf(recipe(folded, other)).map(({ action }) => action)).toEqual(['reordered']);
  });
});

describe('a recipe so many times another', () => {
  const DOUBLE = edited(
    BREAD,
    ['2 loaves', '4 loaves'],
    ['684 g', '1368 g'],
    ['479 g', '958 g'],
    ['16 g', '32 g'],
    ['6 g', '12 g'],
    ['[2]', '[4]'],
    ['70 g', '140 g'],
  );

  test('is the same formula times a number, and nothing else', () => {
    expect(recipe(BREAD, DOUBLE).changes).toMatchObject([{ kind: 'rescaled', factor: { exact: '2' } }]);
    expect(recipe(DOUBLE, BREAD).changes).toMatchObject([{ kind: 'rescaled', factor: { exact: '0.5' } }]);
  });

  test('what was rounded besides is told beyond it', () => {
    const rounded = recipe(BREAD, edited(DOUBLE, ['12 g instant', '15 g instant']));
    expect(change(rounded, 'rescaled')).toMatchObject({ factor: { exact: '2' } });
    // 15 g against twice 6 g.
    expect(linesOf(rounded)).toMatchObject([
      { subject: { after: 'instant yeast' }, grams: { percent: { exact: '25' } }, beyond: { exact: '2' } },
    ]);
  });

  test('a variant that says times is just that', () => {
    const file = compiled(recipeText('pear-quark-pots'));
    const [base, half] = [file.formulas[0], file.formulas.find(({ variant }) => variant === 'half')];
    if (!base || !half) throw new Error('no such variant');
    expect(compareFormulas(base, half).changes).toMatchObject([{ kind: 'rescaled', factor: { exact: '0.5' } }]);
  });

  test('other recipes are not taken for it', () => {
    expect(change(recipe(BREAD, recipeText('saltwhin-crescents')), 'rescaled')).toBeUndefined();
  });
});

describe('what it means to whoever eats', () => {
  const vegan = (): ReturnType<typeof compareFormulas> => {
    const file = compiled(recipeText('saltwhin-crescents'));
    const [base, other] = [file.formulas[0], file.formulas.find(({ variant }) => variant === 'vegan')];
    if (!base || !other) throw new Error('no such variant');
    return compareFormulas(base, other, { before: inputs(base, file), after: inputs(other, file) });
  };

  test('allergens come first, those gained before those lost', () => {
    const { changes } = vegan();
    const first = changes
      .slice(0, 4)
      .map((one) => (one.kind === 'allergen' ? `${one.allergen}: ${one.before} to ${one.after}` : one.kind));
    expect(first).toEqual([
      'oats: not named to contains',
      'soybeans: not named to may contain',
      'eggs: contains to not named',
      'milk: contains to not named',
    ]);
  });

  test('nothing is ever said to be free of anything', () => {
    const [{ sections } = { sections: [] }] = fileReport({
      before: '',
      after: '',
      same: false,
      recipes: [vegan()],
      others: [],
    }).recipes;
    const rows = sections.flatMap(({ groups }) => groups).find(({ title }) => title === 'Allergens')?.rows ?? [];
    expect(rows.map(({ after }) => after)).not.toContainEqual(expect.stringMatching(/free|none|no /i));
  });

  test('cautions and broken promises are told before the rest', () => {
    const promised = edited(BREAD, ['gives', 'free of milk\ngives']);
    const [only] = compared(promised, edited(promised, ['479 g water', '479 g whole milk'])).recipes;
    const kinds = only?.changes.slice(0, 3).map(({ kind }) => kind);
    expect(kinds).toEqual(['allergen', 'promise', 'problem']);
    const honeyed = compared(BREAD, edited(BREAD, ['479 g water', '450 g water\n  29 g honey'])).recipes[0];
    expect(honeyed?.changes[0]).toMatchObject({ kind: 'caution', id: 'honey-infants' });
  });

  test('a check that now fails is told', () => {
    const checked = edited(BREAD, ['make loaves', '  check 70 % water on flour\n\nmake loaves']);
    const [only] = compared(checked, edited(checked, ['684 g', '674 g'], ['479 g water', '489 g water'])).recipes;
    expect(only?.changes.find(({ kind }) => kind === 'problem')).toMatchObject({ severity: 'error', code: 'M14' });
  });

  test('the clock tells when it takes longer', () => {
    const [only] = compared(BREAD, edited(BREAD, ['wait 2 h', 'wait 3 h'])).recipes;
    expect(only?.changes.find(({ kind }) => kind === 'clock')).toMatchObject({ figure: 'time in all', minutes: 60 });
  });
});

describe('files', () => {
  test('recipes and blocks that came or went stand beside the recipes', () => {
    const two = `${BREAD}\nrecipe Toast\n\nmake toast\n  100 g bread\n  oven 5 min at 200 C: Toast.\n\nkitchen Hall\n  has 1 oven\n`;
    const { recipes, others } = compared(BREAD, two);
    expect(recipes.map(({ same }) => same)).toEqual([true]);
    expect(others.map(({ role, action, subject }) => `${action} ${role} ${subject.after}`)).toEqual([
      'added recipe Toast',
      'added block Hall',
    ]);
  });

  test('a food of the file whose label changed', () => {
    const text = recipeText('black-tin-loaf');
    const { recipes, others } = compared(
      text,
      edited(text, ['salt 0.2 g', 'salt 0.8 g'], ['contains nothing', 'contains gluten']),
    );
    expect(others.map(({ role, where }) => `${role} in ${where.after.block ?? ''}`)).toEqual([
      'fact in food beet syrup',
      'fact in food beet syrup',
    ]);
    expect(recipes[0]?.changes.map(({ kind }) => kind)).toContain('allergen');
  });
});
