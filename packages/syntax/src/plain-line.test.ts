import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseByGrammar, parseLine } from './parse-line.js';
import { readPlainLine } from './plain-line.js';
import { lineWords } from './classify.js';

const examples = join(import.meta.dirname, '../../../examples');

const exampleLines = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.quern'))
  .flatMap((path) => readFileSync(join(examples, path), 'utf8').split('\n'));

/** Every line of the examples, of the list of line words, and of the tests of the grammar beside this file. */
const lines = [
  ...exampleLines,
  '  half of overnight-soaked oats',
  '  hands 5 min: Add [20 g] of butter and [2] eggs.',
  '  hands 5 min: Roll [10-12 g] and [1/2 tsp], then [all butter].',
  ...lineWords.map(({ example }) => example),
  ...[...readFileSync(join(import.meta.dirname, 'parse-line.test.ts'), 'utf8').matchAll(/'([^'\n]+)'/g)].map(
    ([, line = '']) => line,
  ),
];

/** Words and marks that change what a line is, put together in every way. */
const PIECES = [
  ...'0 1 3 12 250 1.5 0.75 1/2 3/4 4/2 1 1/2 10-14 14-10 08 1,5 1.50 - / = , : % . ( ) [ ] + & x X of on as any a the or to and'.split(
    ' ',
  ),
  ...'g kg ml cup cups tbsp tsp lb oz floz pint fl us imperial t T h min d s C F c f cloves leaf serving inch gms about overnight'.split(
    ' ',
  ),
  ...'flour water other half rest all enough little optional each more falling fan until at using from in for beside'.split(
    ' ',
  ),
  ...'wheat eggs Butter crème half-and-half cook’s heaped level scant is before when together note tip make recipe'.split(
    ' ',
  ),
  ...'19:30 05:00-21:30 7:5 24:00 2041-06-01 2041-02-29 rye.quern a/rye.quern ../rye.quern kJ energy 20 x 30 cm swap use every has awake date course servings'.split(
    ' ',
  ),
  ...'hands wait oven hob lose bin save check serves gives keeps by source stir: Bake. shelves ring free %'.split(' '),
];

function agree(line: string): void {
  if (readPlainLine(line) !== undefined) expect(parseLine(line), line).toEqual(parseByGrammar(line));
}

describe('the short way', () => {
  test('reads what the grammar reads, on every line at hand', () => {
    lines.forEach(agree);
  });

  test('is taken by nearly every line of the examples', () => {
    const written = exampleLines.filter((line) => line.trim() !== '' && !line.trim().startsWith('//'));
    const taken = written.filter((line) => readPlainLine(line) !== undefined);
    expect(taken.length / written.length).toBeGreaterThan(0.95);
  });

  test('reads what the grammar reads, on lines with a piece put in, taken out or exchanged', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...lines),
        fc.nat(),
        fc.constantFrom(
          '',
          ' ',
          ...PIECES,
          ...PIECES.map((piece) => ` ${piece}`),
          ...PIECES.map((piece) => `${piece} `),
        ),
        fc.nat(6),
        (line, where, piece, taken) => {
          const at = where % (line.length + 1);
          agree(line.slice(0, at) + piece + line.slice(at + taken));
        },
      ),
      { numRuns: 20_000, seed: 7 },
    );
  });

  test('reads what the grammar reads, on words and marks in any order', () => {
    const words = fc.array(fc.constantFrom(...PIECES), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(
        fc.constantFrom(
          '',
          '  ',
          '2 ',
          '30 g ',
          '3 cups ',
          'all ',
          'or ',
          'lose ',
          'hands ',
          'make ',
          'keeps ',
          'gives ',
          'serves ',
          'bin ',
          'free of ',
          ...[
            'half of ',
            'rest of ',
            '6 servings of ',
            'gives 6 servings ',
            'every ',
            'every 7 d, ',
            'course ',
            'use ',
          ],
          ...[
            'course 19:30 ',
            'use Rye from ',
            'swap ',
            'swap rum for ',
            'has ',
            'has 1 oven ',
            'awake ',
            'date ',
            'best after ',
          ],
          ...['vessel 2 ', 'vessel 1 jar of ', 'vessel 1 tin of 20 x ', 'per 100 g ', 'weighs 1 tbsp = ', 'add 20 g '],
          ...['save 20 g ', 'times ', 'optional ', 'optional all ', 'enough ', 'enough water = ', '  60 g water = '],
          ...['wait 2-2 ', 'hands 5 min: Add [2] and [', 'hands 5 min: Add [14 g'],
        ),
        words,
        fc.constantFrom(' ', ' ', ' ', '  ', ''),
        (head, tail, space) => agree(head + tail.join(space)),
      ),
      { numRuns: 60_000, seed: 8 },
    );
  });

  test('complains of nothing: what it cannot read is read by the grammar', () => {
    expect(parseLine('  250 gms flour')).toEqual(parseByGrammar('  250 gms flour'));
    expect(readPlainLine('  250 gms flour')).toBeUndefined();
  });
});
