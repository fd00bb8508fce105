import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { formatCases, parseCases } from './case-file.js';
import { readMarkers } from './markers.js';
import { runCases } from './run-cases.js';
import { memoryHost, splitExample, type SourceText } from './world.js';

describe('markers', () => {
  test('are taken out and remembered', () => {
    expect(readMarkers('a⟦b┆c⟧d')).toEqual({ text: 'abcd', cursor: 2, ranges: [{ start: 1, end: 3 }] });
  });

  test('count UTF-16 units, as editors do', () => {
    expect(readMarkers('🥖┆').cursor).toBe('🥖'.length);
  });

  test.each([['┆a┆'], ['⟦a'], ['a⟧']])('%s is refused', (text) => {
    expect(() => readMarkers(text)).toThrow();
  });
});

describe('case files', () => {
  const text = 'Words.\n\n=== one\n12 g salt\n--- b.quern\nx\n\n--- tree\ny\n\n=== two\n--- main.quern\nz\n--- tree\n';

  test('hold files and expectations', () => {
    const { preface, cases } = parseCases(text);
    expect(preface).toBe('Words.\n\n');
    expect(cases).toEqual([
      {
        heading: 'one',
        files: [
          { path: 'main.quern', text: '12 g salt\n' },
          { path: 'b.quern', text: 'x\n' },
        ],
        expected: [{ title: 'tree', text: 'y\n' }],
      },
      { heading: 'two', files: [{ path: 'main.quern', text: 'z\n' }], expected: [{ title: 'tree', text: '' }] },
    ]);
  });

  test('are read as they are written', () => {
    const file = parseCases(text);
    expect(parseCases(formatCases(file))).toEqual(file);
  });

  test.each([
    ['nothing to run', 'words'],
    ['no file', '=== a\n--- tree\nx\n'],
    ['no expectation', '=== a\nx\n'],
    ['two parts with one title', '=== a\nx\n--- tree\ny\n--- tree\nz\n'],
    ['two cases with one heading', '=== a\nx\n--- tree\ny\n=== a\nx\n--- tree\ny\n'],
  ])('with %s are refused', (_, refused) => {
    expect(() => parseCases(refused)).toThrow();
  });
});

describe('the runner', () => {
  const folder = mkdtempSync(join(tmpdir(), 'quern-cases-'));
  const path = join(folder, 'loud.txt');
  const right = '=== a word\n--- main.quern\nsalt\n--- upper\nSALT\n--- suffix !\nsalt!\n';
  const renderers = {
    upper: ([file]: readonly SourceText[]) => (file?.text ?? '').toUpperCase(),
    suffix: ([file]: readonly SourceText[], argument: string) => `${file?.text.trim()}${argument}\n`,
  };
  afterAll(() => rmSync(folder, { recursive: true }));

  describe('compares', () => {
    writeFileSync(path, right);
    runCases(folder, renderers);
  });

  describe('rewrites when asked to', () => {
    const before = process.env['UPDATE'];
    writeFileSync(path, right.replace('SALT', 'wrong'));
    process.env['UPDATE'] = '1';
    try {
      runCases(folder, renderers);
    } finally {
      if (before === undefined) delete process.env['UPDATE'];
      else process.env['UPDATE'] = before;
    }
  });

  test('has rewritten', () => {
    expect(readFileSync(path, 'utf8')).toBe(right);
  });
});

describe('the world in memory', () => {
  test('has its files and no others', () => {
    const foods = {
      version: 'none',
      find: () => ({ kind: 'unknown', near: [], accents: false }) as const,
      get: () => undefined,
      ofClass: () => [],
      source: () => undefined,
      names: () => [],
    };
    const host = memoryHost([{ path: 'a.quern', text: 'x' }], foods);
    expect(host.read('a.quern')).toBe('x');
    expect(host.read('b.quern')).toBeUndefined();
    expect(host.foods).toBe(foods);
  });

  test('is written in one text with a line for each further file', () => {
    expect(splitExample('a\n=== pie.quern\nb\n')).toEqual([
      { path: 'main.quern', text: 'a\n' },
      { path: 'pie.quern', text: 'b\n' },
    ]);
  });
});
