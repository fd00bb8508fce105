import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { comparisonJson, comparisonMarkdown, comparisonPage, comparisonText, jsonText } from '@quern/publish';
import { compareFormulas, fileReport, type FileComparison } from '@quern/views';
import { root } from '../sheet/recipes.js';
import { compared, compiled, edited, recipeText, inputs } from './states.js';

/*
 * Comparisons as they are printed, kept in tests/outputs/compare and reviewed by eye. UPDATE=1 writes them anew; the
 * difference in version control is the review.
 */

const folder = join(root, 'tests', 'outputs', 'compare');
const update = process.env['UPDATE'] === '1';
const seen = new Set<string>();

function compareWith(name: string, text: string): void {
  const path = join(folder, name);
  seen.add(name);
  if (update) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path, text);
  }
  expect(existsSync(path), `${name} is not there; UPDATE=1 writes it`).toBe(true);
  expect(text).toBe(readFileSync(path, 'utf8'));
}

afterAll(() => {
  const left = readdirSync(folder).filter((name) => !seen.has(name));
  if (update) for (const name of left) rmSync(join(folder, name));
  else expect(left, 'files that no test looks at').toEqual([]);
});

type Told = Omit<FileComparison, 'difference'>;
const textOf = (comparison: Told): string => comparisonText([fileReport(comparison)], { width: 100 });

function variant(name: string, wanted: string): Told {
  const file = compiled(recipeText(name));
  const [base, other] = [file.formulas[0], file.formulas.find((formula) => formula.variant === wanted)];
  if (!base || !other) throw new Error(`${name} has no variant ${wanted}`);
  const comparison = compareFormulas(base, other, { before: inputs(base, file), after: inputs(other, file) });
  return { before: name, after: name, same: comparison.same, recipes: [comparison], others: [] };
}

const tin = recipeText('black-tin-loaf');
const harbour = recipeText('harbour-white');
const soup = recipeText('hook-lane-soup');

describe('recipes that were changed', () => {
  test.each<readonly [string, string, string]>([
    ['a little more salt', tin, edited(tin, ['2 % fine salt', '2.2 % fine salt'])],
    [
      'a day’s work on the loaf',
      tin,
      edited(
        tin,
        ['25 g beet syrup = 1 1/4 tbsp', '25 g honey'],
        ['  740 g whole rye flour\n  560 g water, at 38 C\n', '  580 g water, at 36 C\n  740 g whole rye flour\n'],
        ['wait 45-60 min at 26 C', 'wait 60-75 min at 27 C'],
        ['Stir to a paste, scrape down and cover.', 'Stir to a smooth paste and cover.'],
        ['make dough = 2335 g', 'make dough = 2355 g'],
        ['keeps 5 d at 20 C, wrapped', 'keeps 4 d at 20 C, wrapped in linen'],
      ),
    ],
    [
      'a soaker split off and the leaven renamed',
      tin,
      edited(
        tin,
        ['make leaven', 'make sour'],
        ['  all leaven\n', '  all sour\n'],
        [
          'make soaker\n  210 g sunflower seeds = 1 1/2 cups, toasted\n',
          'make seeds\n  210 g sunflower seeds = 1 1/2 cups, toasted\n  hands 1 min: Have them ready.\n\nmake soaker\n',
        ],
        ['  all soaker\n', '  all soaker\n  all seeds\n'],
      ),
    ],
    [
      'six loaves for three',
      harbour,
      edited(harbour, ['gives 3 loaves', 'gives 6 loaves'], ['serves 36', 'serves 72'], ['[3]', '[6]']),
    ],
    [
      'wetter and longer',
      harbour,
      edited(
        harbour,
        ['54 % water', '57 % water'],
        ['check 72 % water', 'check 75 % water'],
        [
          'every 40 min, 2 min: Fold the dough from four sides.',
          'every 30 min, 2 min: Fold the dough from four sides.',
        ],
        ['  hands 15 min: Divide', '  hands 5 min: Tip the dough out.\n  hands 15 min: Divide'],
      ),
    ],
    ['a promise broken', soup, edited(soup, ['27 g olive oil = 2 tbsp', '28 g butter'], ['about 5 cups', '5 cups'])],
    [
      'nothing but order and spelling',
      soup,
      edited(
        soup,
        ['1.2 kg water = about 5 cups', '1200 g water = about 5 cups'],
        ['  2 cloves garlic = 8 g\n', ''],
        ['  2 onions', '  2 cloves garlic = 8 g\n  2 onions'],
      ),
    ],
    [
      'a recipe and a kitchen more',
      soup,
      `${soup}\nkitchen Hook Lane\n  has 1 oven, 4 rings, 1 cook\n\nrecipe Toast\n\nmake toast\n  120 g white bread\n  oven 5 min at 200 C: Toast.\n`,
    ],
  ])('%s', (name, before, after) => {
    const file = name.replace(/[^a-z]+/g, '-');
    compareWith(`${file}.txt`, textOf(compared(before, after)));
    compareWith(`${file}-back.txt`, textOf(compared(after, before)));
  });
});

describe('what a variant changes', () => {
  test.each([
    ['saltwhin-crescents', 'vegan'],
    ['black-tin-loaf', 'seedless'],
    ['lantern-cheeks', 'no wine'],
    ['pear-quark-pots', 'half'],
  ])('%s: %s', (name, wanted) => {
    compareWith(`variant-${name}-${wanted.replace(' ', '-')}.txt`, textOf(variant(name, wanted)));
  });
});

describe('every form of a comparison', () => {
  const told = (): Told =>
    compared(
      tin,
      edited(
        tin,
        ['2 % fine salt', '2.2 % fine salt'],
        ['25 g beet syrup = 1 1/4 tbsp', '25 g honey'],
        ['Stir to a paste', 'Stir to a <smooth> paste'],
      ),
    );
  test('Markdown', () => compareWith('form.md', comparisonMarkdown([fileReport(told())])));
  test('HTML', () => compareWith('form.html', comparisonPage([fileReport(told())])));
  test('JSON', () => compareWith('form.json', jsonText(comparisonJson([told()]))));
});
