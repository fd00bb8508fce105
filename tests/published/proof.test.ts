/** Every published figure against what Quern computes. `npm run proof` prints the table and rewrites the page. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { failures, page, sums } from './page.js';
import { doesNotApply, found, prove, rule } from './proof.js';
import { tables } from './tables.js';

describe('published figures', () => {
  test('agree with what Quern computes, each one of them', () => {
    expect(failures()).toEqual([]);
    expect(sums().passed).toBeGreaterThan(0);
  });

  test('are all compared: no table is left out', () => {
    const copied = readdirSync(import.meta.dirname).filter((name) => name.endsWith('.tsv'));
    expect(tables.map(({ name }) => `${name}.tsv`).sort()).toEqual(copied.sort());
  });

  test('are in docs/proof.md as they stand (npm run proof)', () => {
    const path = join(import.meta.dirname, '..', '..', 'docs', 'proof.md');
    expect(existsSync(path) && readFileSync(path, 'utf8')).toBe(page());
  });
});

describe('the comparison', () => {
  const failed = (rules: Parameters<typeof prove>[0][number]['rules']) =>
    prove([{ name: 'bakers', rules }]).filter(({ finding }) => finding.kind === 'failed').length;
  const rows = failed([]);

  test('fails a row that no rule claims', () => {
    expect(rows).toBeGreaterThan(100);
  });

  test('fails a row that two rules claim', () => {
    expect(failed([doesNotApply(/./, 'a'), doesNotApply(/./, 'b')])).toBe(rows);
  });

  test('fails a row whose figure is not Quern’s', () => {
    expect(failed([rule(/./, () => found(false, '12 g'))])).toBe(rows);
    expect(failed([rule(/./, () => found(true, '12 g'))])).toBe(0);
  });
});
