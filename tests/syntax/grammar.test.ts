/** The grammar as it is written, the parser as it runs, and the list of words are one. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { unitSpellings, units } from '@quern/quantity';
import { degreeSpellings, timeSpellings } from '../../packages/syntax/src/tokens.js';
import { readEbnf, type Expression } from '../../packages/syntax/scripts/ebnf.js';
import { railroadPage, spelled } from '../../packages/syntax/scripts/railroad.js';
import { parserRules } from '../../packages/syntax/scripts/gast.js';
import { lineKindsModule, type LineList } from '../../packages/syntax/scripts/line-kinds.js';

const root = join(import.meta.dirname, '../..');
const file = (path: string): string => readFileSync(join(root, path), 'utf8');
const list = JSON.parse(file('grammar/lines.json')) as LineList;
const rules = readEbnf(file('grammar/quern.ebnf'));
const written = new Map(rules.map(({ name, body }) => [name, body]));
const parsed = parserRules();

/** One form for what may be written in two: groups within groups opened, alternatives of words in the order of the alphabet. */
function normal(expression: Expression): Expression {
  switch (expression.kind) {
    case 'sequence': {
      const parts = expression.parts.map(normal).flatMap((part) => (part.kind === 'sequence' ? part.parts : [part]));
      return parts.length === 1 && parts[0] ? parts[0] : { kind: 'sequence', parts };
    }
    case 'choice': {
      const parts = expression.parts.map(normal).flatMap((part) => (part.kind === 'choice' ? part.parts : [part]));
      return { kind: 'choice', parts: parts.toSorted((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1)) };
    }
    case 'option':
    case 'repetition':
      return { kind: expression.kind, part: normal(expression.part) };
    default:
      return expression;
  }
}

function* parts(expression: Expression): Generator<Expression> {
  yield expression;
  if ('parts' in expression) for (const part of expression.parts) yield* parts(part);
  if ('part' in expression) yield* parts(expression.part);
}

const literals = (name: string): string[] => {
  const body = written.get(name);
  if (body === undefined) throw new Error(`no rule ${name}`);
  return [...parts(body)].flatMap((part) => (part.kind === 'literal' ? [part.text] : []));
};

describe('grammar/quern.ebnf and the parser', () => {
  test.each([...parsed])('say the same of %s', (name, expression) => {
    const body = written.get(name);
    expect(body, `no rule ${name} in the grammar`).toBeDefined();
    if (body !== undefined) expect(normal(body)).toEqual(normal(expression));
  });

  test('have the same rules: what only the grammar has is said by lines or by words', () => {
    const only = rules.map(({ name }) => name).filter((name) => !parsed.has(name));
    expect(only).toEqual([
      ...['line', 'blank', 'conflict', 'remark', 'fact'],
      ...[
        'noteText',
        'proseText',
        'text',
        'nameStart',
        'nameWord',
        'word',
        'digits',
        'vulgar',
        'unitWord',
        'massWord',
        'volumeWord',
      ],
      ...['namedVolume', 'countWord', 'lengthWord', 'energyWord', 'timeWord', 'degrees'],
    ]);
  });

  test('every name in the grammar has a rule, and every rule is reached from a line or a bracket', () => {
    const seen = new Set<string>();
    const visit = (name: string): void => {
      if (seen.has(name)) return;
      seen.add(name);
      const body = written.get(name);
      expect(body, name).toBeDefined();
      if (body !== undefined) for (const part of parts(body)) if (part.kind === 'name') visit(part.name);
    };
    visit('line');
    visit('bracket');
    expect(rules.map(({ name }) => name).filter((name) => !seen.has(name))).toEqual([]);
  });

  test('the rules of lines are those of the list', () => {
    const lineRules = ['line', 'fact'].flatMap((name) =>
      [...parts(written.get(name) as Expression)].flatMap((part) => (part.kind === 'name' ? [part.name] : [])),
    );
    const listed = new Set<string>(list.words.map(({ rule }) => rule));
    expect(
      new Set(lineRules.filter((name) => !['blank', 'conflict', 'remark', 'moreLine', 'fact'].includes(name))),
    ).toEqual(listed);
  });

  test('the words of units, times and degrees are those that are read', () => {
    const country = ['us', 'imperial'];
    const named = literals('namedVolume').filter((word) => !country.includes(word));
    const volumes = country.flatMap((land) => named.map((word) => `${land} ${word}`));
    const unitWords = ['massWord', 'volumeWord', 'countWord', 'lengthWord', 'energyWord'].flatMap(literals);
    expect([...unitWords, ...volumes].sort()).toEqual([...unitSpellings.keys()].sort());
    for (const [rule, dimension] of [
      ['massWord', 'mass'],
      ['countWord', 'count'],
      ['lengthWord', 'length'],
      ['energyWord', 'energy'],
    ] as const) {
      for (const word of literals(rule)) expect(units[unitSpellings.get(word) ?? 'g'].dimension, word).toBe(dimension);
    }
    expect(literals('timeWord').sort()).toEqual([...timeSpellings.keys()].sort());
    expect(literals('degrees').sort()).toEqual([...degreeSpellings.keys()].sort());
  });
});

describe('grammar/lines.json', () => {
  test('is what the parser carries (node packages/syntax/scripts/generate.mjs)', () => {
    expect(file('packages/syntax/src/generated/line-words.ts')).toBe(lineKindsModule(list));
  });

  test('has each word once, a kind for each, and a form that begins with it', () => {
    const words = list.words.map(({ word }) => word);
    expect(new Set(words).size).toBe(words.length);
    const kinds = new Set(list.kinds.map(({ kind }) => kind));
    for (const { word, kind, form, example, says } of list.words) {
      expect(kinds, word).toContain(kind);
      if (kind !== 'in') expect(form.startsWith(word), word).toBe(true);
      expect(example.startsWith(word), word).toBe(true);
      expect(says, word).not.toBe('');
    }
  });
});

describe('grammar/railroad.html', () => {
  test('is drawn from the grammar (node packages/syntax/scripts/generate.mjs)', () => {
    expect(file('grammar/railroad.html')).toBe(railroadPage(rules));
  });

  test('has each rule as a drawing whose text can be read back, or as a list of words', () => {
    const page = file('grammar/railroad.html');
    for (const { name, body } of rules) {
      expect(page).toContain(`<section id="${name}">`);
      const [again] = readEbnf(`${name} = ${spelled(body)} ;`);
      expect(again?.body, name).toEqual(body);
    }
    expect(page).not.toMatch(/<script|https?:/);
  });
});
