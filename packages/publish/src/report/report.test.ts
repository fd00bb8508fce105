import { describe, expect, test } from 'vitest';
import { diagnose } from '@quern/text';
import { displayWidth } from '../terminal/columns.js';
import { tellDiagnostics, tallyText, type Found } from './found.js';
import { reportGithub } from './report-github.js';
import { checkReport, mergeReports } from './report-json.js';
import { reportSarif } from './report-sarif.js';
import { reportText } from './report-text.js';

const text = '\uFEFFrecipe Tøast\r\n\r\n  100 g sugar = 3/4 cup\r\n';
const at = (words: string) => ({
  file: 'a folder/toast.quern',
  start: text.indexOf(words),
  end: text.indexOf(words) + words.length,
});

const found = (): readonly Found[] =>
  tellDiagnostics(
    [
      diagnose('N09', at('Tøast'), { path: 'x' }),
      diagnose('N01', at('sugar'), { name: 'sugar', near: '', unknown: 'nutrition', way: 'name it' }, [
        { place: at('3/4 cup'), note: 'measured here' },
      ]),
    ],
    (file) => (file === 'a folder/toast.quern' ? text : undefined),
  );

const first = (): Found => {
  const [one] = found();
  if (!one) throw new Error('nothing found');
  return one;
};

describe('positions', () => {
  test('count from one; a byte-order mark is no column; CRLF is one line end', () => {
    expect(found().map(({ start, end, source }) => [start, end, source])).toEqual([
      [{ line: 1, column: 8 }, { line: 1, column: 13 }, 'recipe Tøast'],
      [{ line: 3, column: 9 }, { line: 3, column: 14 }, '  100 g sugar = 3/4 cup'],
    ]);
  });

  test('a place in a file that is not there is at its beginning', () => {
    const [one] = tellDiagnostics(
      [diagnose('N09', { file: 'gone', start: 5, end: 6 }, { path: 'x' })],
      () => undefined,
    );
    expect(one).toMatchObject({ start: { line: 1, column: 1 }, source: '' });
  });
});

describe('a report for a reader', () => {
  test('has the place, the line, the place underlined, the way out, and what is related', () => {
    const [, second] = found();
    if (!second) throw new Error('nothing found');
    const lines = reportText(second).split('\n');
    expect(lines[0]).toMatch(/^a folder\/toast\.quern:3:9: warning N01: .*sugar/);
    expect(lines[1]).toBe('  3 |   100 g sugar = 3/4 cup');
    expect(lines[2]).toBe('    |         ~~~~~');
    expect(lines[3]).toMatch(/^ {4}way out: /);
    expect(lines.at(-2)).toBe('    measured here: a folder/toast.quern:3:17');
  });

  test('a long line is cut around the place', () => {
    const source = `${'x'.repeat(300)}HERE${'y'.repeat(300)}`;
    const one: Found = { ...first(), source, start: { line: 1, column: 301 }, end: { line: 1, column: 305 } };
    const [, shown = '', mark = ''] = reportText(one, { width: 80 }).split('\n');
    expect(displayWidth(shown)).toBeLessThanOrEqual(80);
    expect(shown.slice(mark.indexOf('~'), mark.lastIndexOf('~') + 1)).toBe('HERE');
  });

  test('nothing in a line reaches the terminal as a control or turns the line round', () => {
    const source = 'a\u001b[31mb\u202ec\tHERE';
    const one: Found = { ...first(), source, start: { line: 1, column: 12 }, end: { line: 1, column: 16 } };
    expect(reportText(one)).not.toMatch(/[\u001b\u202e]/);
  });

  test('marks stand under the place behind wide characters and combining accents', () => {
    const source = '米 cre\u0300me HERE';
    const one: Found = { ...first(), source, start: { line: 1, column: 10 }, end: { line: 1, column: 14 } };
    const [, , mark = ''] = reportText(one).split('\n');
    // 米 takes two columns, the accent none: 2 + 1 + 5 + 1.
    expect(mark.indexOf('~') - '    | '.length).toBe(9);
  });
});

describe('annotations', () => {
  test('are one line each, with percent signs, colons, commas and line ends encoded', () => {
    const one: Found = { ...first(), file: 'a,b:c%.quern', message: '50 %\nof it', help: 'do' };
    // GitHub Actions, 'Workflow commands': data and properties are encoded like this by its own toolkit.
    expect(reportGithub(one)).toBe(
      '::error file=a%2Cb%3Ac%25.quern,line=1,endLine=1,col=8,endColumn=13,title=N09::50 %25%0Aof it%0Away out: do\n',
    );
  });
});

describe('SARIF', () => {
  test('names the tool, every rule it uses, and each result with a region and an encoded address', () => {
    const log = JSON.parse(reportSarif(found(), '1.2.3')) as Record<string, never>;
    expect(log).toMatchObject({
      version: '2.1.0',
      runs: [
        {
          tool: { driver: { name: 'quern', semanticVersion: '1.2.3', rules: [{ id: 'N01' }, { id: 'N09' }] } },
          columnKind: 'utf16CodeUnits',
          results: [
            {
              ruleId: 'N09',
              ruleIndex: 1,
              level: 'error',
              locations: [
                {
                  physicalLocation: {
                    artifactLocation: { uri: 'a%20folder/toast.quern' },
                    region: { startLine: 1, startColumn: 8, endLine: 1, endColumn: 13 },
                  },
                },
              ],
            },
            { ruleId: 'N01', ruleIndex: 0, level: 'warning', relatedLocations: [{ id: 1 }] },
          ],
        },
      ],
    });
  });
});

describe('reports of shards', () => {
  test('put together are the report of one run', () => {
    const [a, b] = found();
    if (!a || !b) throw new Error('nothing found');
    const parts = [checkReport([{ ...b, file: 'b.quern' }], 3), checkReport([{ ...a, file: 'a.quern' }], 2)];
    const whole = checkReport(
      [
        { ...a, file: 'a.quern' },
        { ...b, file: 'b.quern' },
      ],
      5,
    );
    expect(mergeReports(parts)).toEqual(whole);
    expect(tallyText(whole.summary)).toBe('1 error, 1 warning');
    expect(tallyText(checkReport([], 1).summary)).toBe('nothing to report');
  });
});
