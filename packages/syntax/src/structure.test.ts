import { describe, expect, test } from 'vitest';
import { sentence } from '@quern/text';
import type { BodyItem, MakeBlock } from './outline-types.js';
import { parseDocument } from './document.js';
import { outline } from './outline.js';
import { indents } from './structure.js';

const outlineOf = (text: string) => outline(parseDocument('f.quern', text));

/** The items of a make as one word each, with what hangs on them. */
function itemsOf(make: MakeBlock | undefined): string[] {
  return (make?.items ?? []).map((item: BodyItem) => {
    if (item.kind === 'in') return `in+${item.alternatives.length}`;
    if (item.kind === 'step') return `step+${item.more.length}+${item.every.length}`;
    return item.kind;
  });
}

const complaints = (text: string): string[] =>
  outlineOf(text).diagnostics.map(
    (diagnostic) => `${diagnostic.code} ${text.slice(diagnostic.place.start, diagnostic.place.end)}`,
  );

describe('blocks', () => {
  const text = `use paste from paste.quern
recipe Tart
serves 4
note On a recipe.

food beet syrup
  contains nothing

make paste
  90 g hazelnuts
  // a remark changes nothing
  or 78 g walnuts
  or 93 g sunflower seeds
  tip Cold hands.
  hands 3 min: Rub.
  : And rub.
  wait 3 d: Leave.
  every 1 d: Turn.
  : It may weep.
  warning Hot.
  check 90 g
  lose 2 g as water
  keeps 3 d

variant vegan
  swap butter for oil
make glaze
  20 g oil
  hands 1 min: Stir.

culture starter
  parts 1 rye, 1 water
  every 7 d, 3 min: Feed it.

make tart
  all paste
  hands 2 min: Fill.

kitchen Hall
  has 1 oven
  traces nuts

menu Supper
date 2041-02-16
course 19:30
  4 servings of tart
  or 4 servings of soup
`;
  const file = outlineOf(text);
  const [recipe] = file.recipes;

  test('nothing is complained of', () => {
    expect(file.diagnostics.map(sentence)).toEqual([]);
  });

  test('the head of the file', () => {
    expect(file.head.map(({ content }) => content.kind)).toEqual(['use']);
  });

  test('a recipe has its facts and makes, over foods that stand between them', () => {
    expect(recipe?.facts.map(({ content }) => content.kind)).toEqual(['serves', 'text-fact']);
    expect(recipe?.makes.map(({ heading }) => heading?.content.name?.text)).toEqual(['paste', 'tart']);
  });

  test('a make keeps its lines in order, with what hangs on them', () => {
    expect(itemsOf(recipe?.makes[0])).toEqual(['in+2', 'remark', 'step+1+0', 'step+1+1', 'remark', 'check', 'out']);
    expect(recipe?.makes[0]?.facts.map(({ content }) => content.kind)).toEqual(['keeps']);
  });

  test('a make after a variant belongs to it, until a block of another kind', () => {
    expect(
      recipe?.variants.map(({ facts, makes }) => [
        facts.length,
        makes.map(({ heading }) => heading?.content.name?.text),
      ]),
    ).toEqual([[1, ['glaze']]]);
  });

  test('foods, cultures, kitchens and menus belong to the file', () => {
    expect([file.foods.length, file.cultures[0]?.every.length, file.kitchens[0]?.facts.length]).toEqual([1, 1, 2]);
    expect(file.menus[0]?.facts.length).toBe(1);
    expect(file.menus[0]?.courses.map(({ lines }) => lines.map(({ alternatives }) => alternatives.length))).toEqual([
      [1],
    ]);
  });

  test('body lines and the facts of all blocks but recipe and menu are indented', () => {
    const document = parseDocument('f', text);
    const known = indents(document);
    for (const line of document.lines) {
      if (['blank', 'comment'].includes(line.parsed.content.kind)) continue;
      expect([line.text, known[line.number]]).toEqual([line.text, line.text.startsWith('  ') ? 2 : 0]);
    }
  });
});

describe('a simple dish', () => {
  test('needs no make: its body lines are one product', () => {
    const { recipes, diagnostics } = outlineOf(
      'recipe Toast\nserves 1\n80 g bread\nhands 2 min: Toast.\ntip Butter it.\ngives 1 slice\nkeeps 1 d\n',
    );
    expect(diagnostics).toEqual([]);
    const [recipe] = recipes;
    expect(recipe?.makes.map((make) => [make.heading, itemsOf(make), make.facts.length])).toEqual([
      [undefined, ['in+0', 'step+0+0', 'remark'], 1],
    ]);
    expect(recipe?.facts.map(({ content }) => content.kind)).toEqual(['serves', 'gives']);
  });

  test('may have makes after it', () => {
    const { recipes } = outlineOf(
      'recipe Toast\n80 g bread\nhands 2 min: Toast.\nmake butter\n20 g butter\nhands 1 min: Beat.\n',
    );
    expect(recipes[0]?.makes.map(({ heading, items }) => [heading?.content.name?.text, items.length])).toEqual([
      [undefined, 2],
      ['butter', 2],
    ]);
  });

  test('a batch record under the last make is of the recipe', () => {
    const { recipes, diagnostics } = outlineOf(
      'recipe Loaf\nmake loaf\n500 g rye flour\nhands 2 min: Mix.\nbaked 2041-02-16, 2 loaves: good\n',
    );
    expect(diagnostics).toEqual([]);
    expect(recipes[0]?.facts.map(({ content }) => content.kind)).toEqual(['baked']);
  });
});

describe('lines in the wrong place', () => {
  test.each([
    ['200 g flour\nhands 1 min: Mix.\n', ['L02 200 g flour']],
    ['make dough\n  200 g flour\n', ['L02 make dough']],
    ['course 19:30\n  4 servings of tart\n', ['L02 course 19:30']],
    ['gives 2 loaves\nrecipe Loaf\n', ['L02 gives 2 loaves']],
    ['recipe A\n  20 g oil\n  every 1 d: Turn.\n', ['L07 every 1 d: Turn.']],
    ['recipe A\n  20 g oil\n  hands 2 min: Stir.\n  every 1 d: Turn.\n', ['L07 every 1 d: Turn.']],
    ['recipe A\n  hands 2 min: Stir.\n  or 20 g oil\n', ['L08 or 20 g oil']],
    ['recipe A\n  20 g oil\n  : More.\n', ['L29 : More.']],
    ['recipe A\n  20 g oil\n  hands 2 min: Stir.\n  20 g oil\n  : More.\n', ['L29 : More.']],
    ['recipe A\nmake a\n  gives 2 loaves\n', ['L28 gives 2 loaves']],
    ['recipe A\nmake a\n  swap a for b\n', ['L28 swap a for b']],
    ['food a\n  20 g oil\n', ['L28 20 g oil']],
    ['kitchen a\n  keeps 2 d\n', ['L28 keeps 2 d']],
    ['menu a\ncourse 19:30\n  hands 2 min: Stir.\n', ['L28 hands 2 min: Stir.']],
    ['recipe A\nkeeps 2 d\nmake a\n  20 g oil\n', ['L28 keeps 2 d']],
    ['recipe A\nserves 2\nserves 4\n', ['L30 serves 4']],
    ['recipe A\nnote a\nnote b\n', []],
    // what hangs on a line that cannot be read is not complained of as well
    ['recipe A\n  butter\n  or 20 g oil\n', []],
    ['recipe A\n  wait 3 d\n  every 1 d: Turn.\n', []],
    ['recipe A\n  hands 2 min\n  : More.\n', []],
  ])('%j', (text, expected) => {
    expect(complaints(text)).toEqual(expected);
  });

  test('says where the line does belong', () => {
    const [misplaced] = outlineOf('recipe A\nmake a\n  swap a for b\n').diagnostics;
    expect(misplaced?.args).toEqual({ what: '“swap”', where: 'a make', belongs: 'a variant' });
    expect(misplaced?.place.file).toBe('f.quern');
  });
});

describe('lines that cannot be read', () => {
  const makes = (text: string) =>
    outlineOf(text).recipes.map(({ makes: all }) =>
      all.map((make) => [make.heading?.content.name?.text ?? make.unnamed?.text, itemsOf(make)]),
    );

  test('stay in the make where they stand, whose pot is then not known', () => {
    expect(makes('recipe A\nmake a\n  20 g oil\n  butter\n  hands 1 min: Stir.\n')).toEqual([
      [['a', ['in+0', 'bad', 'step+0+0']]],
    ]);
  });

  test('a fact that cannot be read leaves the pot alone', () => {
    expect(makes('recipe A\ngives plenty\nmake a\n  20 g oil\n')).toEqual([[['a', ['in+0']]]]);
  });

  test('before the first make they count as its own', () => {
    expect(makes('recipe A\nbutter\nmake a\n  20 g oil\n')).toEqual([[['a', ['bad', 'in+0']]]]);
  });

  test('after an empty line, near a block word, they open an unnamed block, so that nothing falls into the make above', () => {
    expect(makes('recipe A\nmake a\n  20 g oil\n\nmkae b\n  30 g oil\n')).toEqual([
      [
        ['a', ['in+0']],
        ['mkae b', ['in+0']],
      ],
    ]);
    expect(makes('recipe A\nmake a\n  20 g oil\n\nmake = 20 g\n  30 g oil\n')).toEqual([
      [
        ['a', ['in+0']],
        ['make = 20 g', ['in+0']],
      ],
    ]);
  });

  test('without an empty line they open nothing', () => {
    expect(makes('recipe A\nmake a\n  20 g oil\nmkae b\n  30 g oil\n')).toEqual([[['a', ['in+0', 'bad', 'in+0']]]]);
  });

  test('a sentence opens nothing, nor does an English word', () => {
    for (const line of ['Make a well in the middle.', 'Mix well.', 'coarse salt', 'take care', 'good oil']) {
      expect(makes(`recipe A\nmake a\n  20 g oil\n\n${line}\n  30 g oil\n`), line).toEqual([
        [['a', ['in+0', 'bad', 'in+0']]],
      ]);
    }
  });

  test('a recipe line that cannot be read takes no make into the recipe above', () => {
    expect(makes('recipe A\nmake a\n  20 g oil\n\nrecpe B\nmake b\n  30 g oil\n')).toEqual([[['a', ['in+0']]]]);
  });
});

test('a line that cannot be read among the facts of a recipe leaves the facts below it where they are', () => {
  const text =
    'recipe Tart\nserves 4\nfrobnicate nine\nnote For the feast.\n\nmake paste\n  90 g hazelnuts\n  hands: Rub.\n';
  const [recipe] = outlineOf(text).recipes;
  expect(recipe?.facts.map(({ content }) => content.kind)).toContain('text-fact');
  expect(itemsOf(recipe?.makes[0])).toEqual(['bad', 'in+0', 'step+0+0']);
});
