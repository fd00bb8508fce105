import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { runIn, type Told } from '../../../../tests/cli/in-process.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'quern-mend-'));
  writeFileSync(join(folder, 'toast.quern'), SLIPS);
  writeFileSync(join(folder, 'well.quern'), MENDED);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const MENDED = `recipe Toast

  80 g rye bread
  30 g unsalted butter, cold
  hands 2-3 min: Toast the bread and butter it.
`;
const SLIPS = MENDED.replace('butter, cold', 'butter = cold').replace('hands 2-3', 'hnads 2–3');

const quern = (...args: string[]): Promise<Told> => runIn(folder, ['mend', ...args]);

const read = (name: string): string => readFileSync(join(folder, name), 'utf8');

test('writes what needs no decision, and leaves alone what is well', async () => {
  const { code, out, err } = await quern();
  expect({ code, out, err }).toEqual({
    code: 0,
    out: 'mended toast.quern: L13, L01, L04\n',
    err: '2 files, 1 mended\n',
  });
  expect(read('toast.quern')).toBe(MENDED);
  expect((await quern()).out).toBe('');
});

test('changes nothing when it only checks, and ends with 1', async () => {
  const { code, out } = await quern('--check');
  expect(code).toBe(1);
  expect(out).toBe('would mend toast.quern: L13, L01, L04\n');
  expect(read('toast.quern')).toBe(SLIPS);
  expect((await quern('--check', 'well.quern')).code).toBe(0);
});

test('writes one file to the screen', async () => {
  expect((await quern('--stdout', 'toast.quern')).out).toBe(MENDED);
  expect(read('toast.quern')).toBe(SLIPS);
  expect((await quern('--stdout')).code).toBe(2);
});

test('says what else could be mended, and makes none of it', async () => {
  writeFileSync(join(folder, 'toast.quern'), MENDED.replace('30 g', '1,000 g'));
  const { err } = await quern('toast.quern', '--offers');
  expect(err).toContain('toast.quern:4:3 Q05 is that a decimal comma or a thousand?\n  Write “1000”\n  Write “1.0”\n');
  expect(read('toast.quern')).toContain('1,000 g');
});
