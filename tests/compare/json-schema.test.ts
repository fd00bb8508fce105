import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { comparisonJson, historyJson } from '@quern/publish';
import { figuresOf, historyOf } from '@quern/views';
import { root } from '../sheet/recipes.js';
import { compared, compiled, recipeText } from './states.js';

/* The JSON of comparisons and histories, held to its published schema by a validator that knows nothing of Quern. */

const NAMES = ['black-tin-loaf', 'harbour-white', 'hook-lane-soup', 'saltwhin-crescents', 'pear-quark-pots'];

function complaints(name: string, value: unknown): readonly string[] {
  const schema: unknown = JSON.parse(readFileSync(join(root, 'docs', 'json', `${name}.schema.json`), 'utf8'));
  const validate = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema as object);
  validate(value);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
}

describe('the schemas of docs/json', () => {
  test('hold comparisons of every recipe with another', () => {
    const files = NAMES.map((name, index) =>
      compared(recipeText(name), recipeText(NAMES[(index + 1) % NAMES.length] ?? name)),
    );
    const alone = { ...compared('', recipeText('hook-lane-soup')), before: '' };
    expect(complaints('comparison', JSON.parse(JSON.stringify(comparisonJson([...files, alone]))))).toEqual([]);
    expect(complaints('comparison', { format: 'quern-comparison', version: 1, files: [{}] })).not.toEqual([]);
  });

  test('hold a history', () => {
    const states = NAMES.map((name, index) => {
      const [formula] = compiled(recipeText(name).replace('\nby ', '\nbaked 2041-02-16, lost 3 %: well\nby ')).formulas;
      const about = { name: `state ${index}`, day: `2041-02-1${index}`, subject: name };
      return { ...about, formula: formula && figuresOf(formula, 12) };
    });
    const history = historyOf([...states, { name: 'x', day: '2041-03-01', subject: '', formula: undefined }], []);
    if (!history.ok) throw new Error(history.problem);
    expect(complaints('history', JSON.parse(historyJson(history.value)))).toEqual([]);
  });
});
