/** The TextMate grammar colours each line as the parser files it. Run with the engine that editors use (Oniguruma). */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import oniguruma from 'vscode-oniguruma';
import textmate, { type IGrammar } from 'vscode-textmate';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { lineWords, parseDocument, parseLine, type LineContent } from '@quern/syntax';
import { tmGrammar } from '../../packages/syntax/scripts/tm-grammar.js';
import type { LineList } from '../../packages/syntax/scripts/line-kinds.js';
import { readableLine } from './lines.js';

const root = join(import.meta.dirname, '../..');
const file = (path: string): string => readFileSync(join(root, path), 'utf8');
let grammar: IGrammar;

beforeAll(async () => {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(wasm);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => oniguruma.createOnigScanner(patterns),
      createOnigString: (text) => oniguruma.createOnigString(text),
    }),
    loadGrammar: () => Promise.resolve(textmate.parseRawGrammar(file('grammar/quern.tmLanguage.json'), 'quern.json')),
  });
  const loaded = await registry.loadGrammar('source.quern');
  if (loaded === null) throw new Error('no grammar');
  grammar = loaded;
});

/** The line cut where the colour changes: its text and its innermost scope. */
function coloured(text: string): (readonly [text: string, scope: string])[] {
  return grammar
    .tokenizeLine(text, textmate.INITIAL)
    .tokens.map(({ startIndex, endIndex, scopes }) => [text.slice(startIndex, endIndex), scopes.at(-1) ?? ''] as const);
}

/** The kind that the highlighter files a line under. */
function colouredKind(text: string): string {
  const scopes = grammar.tokenizeLine(text, textmate.INITIAL).tokens.flatMap((token) => token.scopes);
  const kind = scopes
    .map(
      (scope) =>
        /^meta\.line\.(\w+)/.exec(scope)?.[1] ??
        /^(comment)\.line|invalid\.illegal\.(conflict)/.exec(scope)?.slice(1).join(''),
    )
    .find(Boolean);
  return kind ?? (text.trim() === '' ? 'blank' : 'none');
}

const FACTS = new Set<LineContent['kind']>([
  'blank',
  'comment',
  'bad',
  'conflict',
  'in',
  'or',
  'out',
  'step',
  'every',
  'more',
  'check',
  'block',
]);
const kindOf = (content: LineContent): string => (FACTS.has(content.kind) ? content.kind : 'fact');

describe('the highlighter files a line as the parser does', () => {
  test('in all examples', () => {
    const folder = join(root, 'examples');
    const seen = new Map<string, number>();
    for (const name of readdirSync(folder).filter((one) => one.endsWith('.quern'))) {
      for (const { text, parsed } of parseDocument(name, readFileSync(join(folder, name), 'utf8')).lines) {
        expect([text, colouredKind(text)]).toEqual([text, kindOf(parsed.content)]);
        const kind = kindOf(parsed.content);
        seen.set(kind, (seen.get(kind) ?? 0) + 1);
      }
    }
    // The run says something only if every kind of line that a good file can hold was there, and none that it cannot.
    const expected = [...new Set(lineWords.map(({ kind }) => kind)), 'blank', 'comment', 'more'];
    expect([...seen.keys()].sort()).toEqual(expected.sort());
    expect([...seen.values()].reduce((sum, count) => sum + count)).toBeGreaterThan(300);
  });

  test.each(lineWords.map(({ example, kind }) => [example, kind] as const))('%s', (example, kind) => {
    expect(colouredKind(example)).toBe(kind);
    expect(colouredKind(`\t${example.charAt(0).toUpperCase()}${example.slice(1)}`)).toBe(kind);
    expect(kindOf(parseLine(example).content)).toBe(kind);
  });

  test.each([
    ['<<<<<<< mine', 'conflict'],
    ['// a remark', 'comment'],
    [': more', 'more'],
    ['½ tsp salt', 'in'],
    ['mkae dough', 'none'],
    ['all-purpose flour', 'none'],
    ['organic wine', 'none'],
    ['butter', 'none'],
  ])('%s', (text, kind) => {
    expect(colouredKind(text)).toBe(kind);
  });

  test('whatever can be read', () => {
    fc.assert(
      fc.property(readableLine, (text) => {
        expect(colouredKind(text)).toBe(kindOf(parseLine(text).content));
      }),
      { seed: 20410216, numRuns: 1500 },
    );
  });
});

describe('inside a line', () => {
  test.each([
    ['  240 g whipping cream = 1 cup, cold', { amount: ['240', '1'], unit: ['g', 'cup'], note: [' cold'] }],
    ['  2 leaves gelatine', { amount: ['2'], unit: ['leaves'], note: [] }],
    ['  2 leeks', { amount: ['2'], unit: [], note: [] }],
    ['  1 1/2-2 us fl oz red wine', { amount: ['1 1/2-2'], unit: ['us fl oz'], note: [] }],
    ['  1,5 kg rye flour, 2 % of it sifted', { amount: ['1,5'], unit: ['kg'], note: [' 2 % of it sifted'] }],
  ])('%s', (text, { amount, unit, note }) => {
    const of = (scope: string): string[] =>
      coloured(text)
        .filter(([, one]) => one.startsWith(scope))
        .map(([words]) => words);
    expect(of('constant.numeric.amount')).toEqual(amount);
    expect(of('keyword.other.unit')).toEqual(unit);
    expect(of('comment.other.note')).toEqual(note);
  });

  test('a step is lane, time, heat, colon and prose, with what scales marked', () => {
    expect(
      coloured('  oven 45 min at 250 C falling to 200 C until 97 C: Bake [2] at once.').filter(
        ([words]) => words.trim() !== '',
      ),
    ).toEqual([
      ['oven', 'keyword.control.lane.quern'],
      ['45', 'constant.numeric.time.quern'],
      ['min', 'keyword.other.unit.quern'],
      ['at', 'keyword.other.clause.quern'],
      ['250', 'constant.numeric.temperature.quern'],
      ['C', 'keyword.other.unit.quern'],
      ['falling to', 'keyword.other.clause.quern'],
      ['200', 'constant.numeric.temperature.quern'],
      ['C', 'keyword.other.unit.quern'],
      ['until', 'keyword.other.clause.quern'],
      ['97', 'constant.numeric.temperature.quern'],
      ['C', 'keyword.other.unit.quern'],
      [':', 'punctuation.separator.prose.quern'],
      [' Bake ', 'string.unquoted.prose.quern'],
      ['[', 'punctuation.section.bracket.quern'],
      ['2', 'constant.numeric.scaled.quern'],
      [']', 'punctuation.section.bracket.quern'],
      [' at once.', 'string.unquoted.prose.quern'],
    ]);
  });

  test('nothing runs over the end of a line', () => {
    fc.assert(
      fc.property(readableLine, (text) => {
        const { ruleStack } = grammar.tokenizeLine(text, textmate.INITIAL);
        expect(grammar.tokenizeLine('butter', ruleStack).tokens.flatMap(({ scopes }) => scopes)).toEqual([
          'source.quern',
        ]);
      }),
      { seed: 20410216, numRuns: 300 },
    );
  });
});

test('the file is made from the list and the units (node packages/syntax/scripts/generate.mjs)', () => {
  const list = JSON.parse(file('grammar/lines.json')) as LineList;
  expect(JSON.parse(file('grammar/quern.tmLanguage.json'))).toEqual(JSON.parse(JSON.stringify(tmGrammar(list))));
});
