import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runIn, type Told } from '../../../../tests/cli/in-process.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'quern-label-'));
  writeFileSync(join(folder, 'buns.quern'), BUNS);
  writeFileSync(join(folder, 'egg.quern'), `${BUNS}\nvariant egg\n  swap unsalted butter for 60 g egg\n`);
  writeFileSync(join(folder, 'odd.quern'), BUNS.replace('60 g unsalted butter', '60 g frobnut paste'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const BUNS = `recipe Quay Buns
by Idony Farrow
gives 8 buns
free of eggs

make buns
  500 g strong wheat flour
  60 g unsalted butter
  300 g water
  7 g instant yeast
  9 g fine salt
  hands 10 min: Knead.
  oven 20 min at 210 C: Bake.
  lose 90 g as water
  keeps 2 d at 20 C
`;

const command = (...args: string[]): Promise<Told> => runIn(folder, args);
const quern = (...args: string[]): Promise<Told> => command('label', ...args);

describe('quern label', () => {
  test('prints the statement of a market', async () => {
    const { code, out, err } = await quern('buns.quern', '--market', 'eu', '--per', 'piece');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toContain('Ingredients: strong WHEAT flour');
    expect(out).toMatch(/per 100 g +per bun of 98 g/);
  });

  test('dates a tag as the clock does: what is ready on a day is good until the same day', async () => {
    const { out: tag } = await quern('buns.quern', '--tag', '--made-on', '2041-02-16');
    expect(tag).toMatch(/Best before: 18 February 2041/);
    const { out: clock } = await command('clock', 'buns.quern', '--ready', '2041-02-16 18:00');
    expect(clock).toMatch(/Good until: \w+ 18 February 2041/);
  });

  test('leaves portions out when asked for 100 g alone', async () => {
    expect((await quern('buns.quern', '--market', 'eu', '--per', '100g')).out).not.toMatch(/per bun/);
  });

  test('tells of a broken promise of a variant, and gives exit code 1', async () => {
    const { code, out, err } = await quern('egg.quern', '--variant', 'egg');
    expect(code).toBe(1);
    expect(err).toMatch(/egg\.quern:4:\d+: error A01/);
    expect(out).toMatch(/“free of eggs” is contradicted by egg/);
  });

  test('names an unknown food at the top, and with --strict gives exit code 1', async () => {
    const loose = await quern('odd.quern');
    expect(loose.code).toBe(0);
    expect(loose.out.split('\n')[3]).toMatch(/^! Not in the food table: frobnut paste/);
    expect(loose.out).toMatch(/Ingredients: .*frobnut paste/s);
    expect((await quern('odd.quern', '--strict')).code).toBe(1);
    expect((await quern('buns.quern', '--strict')).code).toBe(0);
  });

  test('writes JSON and pages, to a file when asked', async () => {
    const json: unknown = JSON.parse((await quern('buns.quern', '--format', 'json')).out);
    expect(json).toMatchObject({ format: 'quern-label', version: 1, title: 'Quay Buns' });
    expect((await quern('buns.quern', '--format', 'html', '-o', 'label.html')).out).toBe('');
    expect(readFileSync(join(folder, 'label.html'), 'utf8')).toMatch(/^<!doctype html>/i);
  });

  test('makes a tag with dates reckoned from the day it was made', async () => {
    const { code, out } = await quern('buns.quern', '--tag', '--made-on', '2041-02-27');
    expect(code).toBe(0);
    expect(out).toContain('Best before: 1 March 2041 (kept at 20 °C)');
    expect((await quern('buns.quern', '--tag', '--format', 'html', '--size', '99x57')).out).toContain(
      '@page{size:99mm 57mm',
    );
  });

  test.each([
    [['buns.quern', '--made-on', '2041-02-30'], /“2041-02-30” is not a date/],
    [['buns.quern', '--market', 'mars'], /cannot be “mars”/],
    [['buns.quern', '--tag', '--format', 'json'], /a tag is text or a page/],
    [[], /no file is named/],
    [['buns.quern', 'odd.quern'], /made of one file/],
    [['none.quern'], /no such file/],
  ])('refuses %j with a way out', async (args, message) => {
    const { code, err } = await quern(...args);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});
