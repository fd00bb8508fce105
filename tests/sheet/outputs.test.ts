import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { ONE, rational } from '@quern/quantity';
import {
  basketCsv,
  basketMarkdown,
  basketText,
  jsonText,
  sheetCsv,
  sheetHtml,
  sheetMarkdown,
  sheetText,
} from '@quern/publish';
import { basket, findScale, readScale, sheet, type Scale, type ScaleKind } from '@quern/views';
import type { Formula } from '@quern/compiler';
import { example, exampleNames, root } from './recipes.js';

/*
 * Every example's sheet as it is printed, kept in tests/outputs/sheet and reviewed by eye. UPDATE=1 writes them anew;
 * the difference in version control is the review.
 */

const folder = join(root, 'tests', 'outputs', 'sheet');
const update = process.env['UPDATE'] === '1';
const seen = new Set<string>();

function compareWith(name: string, text: string): void {
  const path = join(folder, name);
  seen.add(name);
  if (update) {
    mkdirSync(dirname(path), { recursive: true });
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

function scaled(formula: Formula, kind: ScaleKind, text: string): Scale {
  const request = readScale(kind, text);
  const found = request.ok ? findScale(request.value, formula) : request;
  if (!found.ok) throw new Error(found.problem);
  return found.value;
}

const fileName = ({ title, variant }: Formula): string =>
  [title, variant ?? '']
    .filter(Boolean)
    .join(' - ')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');

describe('the sheet of each recipe and variant of the examples', () => {
  for (const name of exampleNames) {
    for (const formula of example(name).formulas) {
      test(fileName(formula), () => {
        compareWith(
          `${fileName(formula)}.txt`,
          sheetText(sheet(formula, { percentages: formula.flour !== undefined })),
        );
      });
    }
  }
});

const first = (name: string): Formula => {
  const [formula] = example(name).formulas;
  if (!formula) throw new Error(`no recipe in ${name}`);
  return formula;
};

describe('a sheet scaled', () => {
  test.each([
    ['black-tin-loaf', 'times', '2.5'],
    ['black-tin-loaf', 'tin', '3 of 25x10x8 cm'],
    ['black-tin-loaf', 'have', '350 g sunflower seeds'],
    ['lantern-cheeks', 'serves', '40'],
    ['saltwhin-crescents', 'makes', '100 crescents'],
    ['quay-cabbage', 'weight', '5kg'],
  ] as const)('%s %s %s', (name, kind, text) => {
    const formula = first(name);
    const data = sheet(formula, { scale: scaled(formula, kind, text) });
    compareWith(`scaled-${name}-${kind}.txt`, sheetText(data));
  });
});

describe('every form of a sheet', () => {
  const data = () => sheet(first('black-tin-loaf'), { percentages: true });
  test('Markdown', () => compareWith('form.md', sheetMarkdown(data())));
  test('HTML', () => compareWith('form.html', sheetHtml(data())));
  test('CSV', () => compareWith('form.csv', sheetCsv(data())));
  test('JSON', () => compareWith('form.json', jsonText(data())));
});

describe('the shopping list', () => {
  const data = () =>
    basket([
      { formula: first('black-tin-loaf'), factor: rational(3) },
      { formula: first('lantern-cheeks'), factor: ONE },
      { formula: first('pear-quark-pots'), factor: ONE },
    ]);
  test('text', () => compareWith('list.txt', basketText(data())));
  test('Markdown', () => compareWith('list.md', basketMarkdown(data())));
  test('CSV', () => compareWith('list.csv', basketCsv(data())));
  test('JSON', () => compareWith('list.json', jsonText(data())));
});
