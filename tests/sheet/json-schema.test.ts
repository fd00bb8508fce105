import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { rational } from '@quern/quantity';
import { Session } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { checkReport, jsonText, reportJson, tellDiagnostics } from '@quern/publish';
import { basket, readPackageSize, sheet } from '@quern/views';
import { foodJson } from '../../packages/cli/src/commands/foods.js';
import { describeFood } from '@quern/foods';
import { brokenRecipeOf, exampleFormulas, root } from './recipes.js';

/* Every JSON that the command gives is held to its published schema by a validator that knows nothing of Quern. */

function complaints(name: string, text: string): string[] {
  const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true });
  const validate = ajv.compile(
    JSON.parse(readFileSync(join(root, 'docs', 'json', `${name}.schema.json`), 'utf8')) as object,
  );
  validate(JSON.parse(text));
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
}

const broken = brokenRecipeOf(
  'recipe Unknown\n\n  200 g water\n  1 cup frobnut\n  a little salt\n  hands 1 min: Stir it.\n',
);

describe('the schemas of docs/json', () => {
  test('hold the sheet of every example, scaled and not, and of a recipe with gaps', () => {
    const scale = { factor: rational(7, 3), words: 'times 7/3' };
    for (const formula of [...exampleFormulas, broken]) {
      for (const options of [{ percentages: true }, { scale }, { measures: 'metric' as const, scale }]) {
        expect(complaints('sheet', jsonText(sheet(formula, options))), formula.title).toEqual([]);
      }
    }
  });

  test('hold the shopping list', () => {
    const size = readPackageSize('1.5 kg whole rye flour');
    if (!size.ok) throw new Error(size.problem);
    const data = basket(
      [...exampleFormulas, broken].map((formula) => ({ formula, factor: rational(3, 2) })),
      { packages: [size.value] },
    );
    expect(data.shelves.flatMap(({ items }) => items).some(({ packages }) => packages)).toBe(true);
    expect(complaints('basket', jsonText(data))).toEqual([]);
  });

  test('hold the report of a check', () => {
    const session = new Session({ read: () => undefined, foods: createFoodBook() });
    session.set('a.quern', 'recipe Toast\n\n  80 g rye bread\n  hands 2 min Toast the bread.\nmake a\nmake a\n');
    const found = tellDiagnostics(session.compile('a.quern')?.diagnostics ?? [], (path) => session.text(path));
    expect(found.length).toBeGreaterThan(1);
    expect(complaints('check', reportJson(checkReport(found, 1)))).toEqual([]);
  });

  test('hold every food of the table', () => {
    const book = createFoodBook();
    const foods = book.names().flatMap((name) => {
      const answer = book.find(name);
      return answer.kind === 'found' ? [answer.match.food] : [];
    });
    expect(foods.length).toBeGreaterThan(500);
    for (const food of foods.filter((_, index) => index % 20 === 0))
      expect(complaints('food', foodJson(describeFood(food, book))), food.name).toEqual([]);
  });

  test('refuse what is not as they say', () => {
    const [formula] = exampleFormulas;
    if (!formula) throw new Error('no example');
    const data = { ...sheet(formula), version: 2, more: true };
    expect(complaints('sheet', JSON.stringify(data)).length).toBeGreaterThan(1);
  });
});
