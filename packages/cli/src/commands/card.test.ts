import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  unlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runIn, type Told } from '../../../../tests/cli/in-process.js';

const BUNS = `recipe Quay Buns
by Idony Farrow
keywords buns, breakfast
gives 8 buns of 100 g

make buns
  500 g strong wheat flour
  65 % water on flour
  2 % fine salt on flour
  hands 10 min: Knead.
  oven 20 min at 210 C: Bake.
  lose 35 g as water
  keeps 2 d at 20 C

variant half
  times 1/2
`;
const MUSH = `recipe Tide Porridge
gives 2 bowls

make porridge
  100 g rolled oats
  500 g water
  hob 10 min: Stir until thick.
`;

// The smallest whole PNG: one black pixel.
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==',
  'base64',
);

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'quern-card-'));
  mkdirSync(join(folder, 'recipes'));
  writeFileSync(join(folder, 'recipes', 'buns.quern'), BUNS);
  writeFileSync(join(folder, 'recipes', 'porridge.quern'), MUSH);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const quern = (line: readonly string[], environment = { SOURCE_DATE_EPOCH: '2250000000' }): Promise<Told> =>
  runIn(folder, line, environment);

const card = (...args: string[]): Promise<Told> => quern(['card', ...args]);
const site = (...args: string[]): Promise<Told> => card('recipes', '--out', 'site', ...args);
const siteFiles = (): string[] => readdirSync(join(folder, 'site'), { recursive: true, encoding: 'utf8' }).sort();
const read = (...path: string[]): string => readFileSync(join(folder, ...path), 'utf8');

describe('a card', () => {
  test('is a page on the screen, or in a file', async () => {
    const { code, out, err } = await card('recipes/buns.quern');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^<!doctype html>\n<html lang="en"/);
    const written = await card('recipes/buns.quern', '-o', 'buns.html');
    expect(written).toEqual({ code: 0, out: '', err: '' });
    expect(read('buns.html')).toBe(out);
  });

  test('in every format', async () => {
    expect((await card('recipes/buns.quern', '--format', 'text')).out).toMatch(/^Quay Buns\n=========\n/);
    expect((await card('recipes/buns.quern', '--format', 'markdown')).out).toMatch(/^# Quay Buns\n/);
    expect(JSON.parse((await card('recipes/buns.quern', '--format', 'json-ld')).out)).toMatchObject({
      '@type': 'Recipe',
      name: 'Quay Buns',
    });
    expect(JSON.parse((await card('recipes/buns.quern', '--format', 'json')).out)).toMatchObject({
      format: 'quern-card',
      version: 1,
    });
  });

  test('at another size, in one measure, of a variant, with a revision', async () => {
    const plain = async (...args: string[]): Promise<string> =>
      (await card('recipes/buns.quern', '--format', 'text', ...args)).out.replaceAll('\u00A0', ' ');
    expect(await plain()).toContain('325 g');
    // 65 % of 1 kg of flour.
    expect(await plain('--makes', '16 buns')).toContain('650 g');
    expect(await plain('--variant', 'half')).toContain('250 g');
    expect(await plain('--measures', 'metric')).not.toMatch(/cup|°F/);
    expect(await plain('--revision', '3', '--date', '2041-02-16')).toContain('Revision 3 · 2041-02-16');
  });

  test('the photograph is in the page; one that is missing is told of', async () => {
    writeFileSync(join(folder, 'recipes', 'buns.png'), PIXEL);
    writeFileSync(
      join(folder, 'recipes', 'buns.quern'),
      BUNS.replace('keywords', 'photo buns.png, Eight buns on a board\nkeywords'),
    );
    const { out, err } = await card('recipes/buns.quern');
    expect(err).toBe('');
    expect(out).toContain(
      `<img class="quern-photo" src="data:image/png;base64,${PIXEL.toString('base64')}" alt="Eight buns on a board">`,
    );
    unlinkSync(join(folder, 'recipes', 'buns.png'));
    const without = await card('recipes/buns.quern');
    expect(without.code).toBe(0);
    expect(without.out).not.toContain('<img');
    expect(without.err).toContain('the photograph “buns.png” of recipes/buns.quern is left out');
  });

  test('a photograph outside the workspace is not read, whatever links say', async () => {
    const outside = mkdtempSync(join(tmpdir(), 'quern-outside-'));
    writeFileSync(join(outside, 'secret.png'), PIXEL);
    symlinkSync(join(outside, 'secret.png'), join(folder, 'recipes', 'link.png'));
    for (const path of ['link.png', `../../${outside.split('/').at(-1)}/secret.png`, join(outside, 'secret.png')]) {
      writeFileSync(join(folder, 'recipes', 'buns.quern'), BUNS.replace('keywords', `photo ${path}\nkeywords`));
      const { out, err } = await card('recipes/buns.quern');
      expect(out).not.toContain('data:image');
      expect(err).toContain('left out');
    }
    rmSync(outside, { recursive: true });
  });

  test('a theme follows the style; what is no style sheet is refused', async () => {
    writeFileSync(join(folder, 'theme.css'), '.quern-card{--quern-accent:#405060}');
    expect((await card('recipes/buns.quern', '--theme', 'theme.css')).out).toContain('--quern-accent:#405060');
    writeFileSync(join(folder, 'theme.css'), '</style><script>1</script>');
    expect(await card('recipes/buns.quern', '--theme', 'theme.css')).toMatchObject({ code: 2, out: '' });
  });

  test('an error in the recipe is told, stands on the card, and ends with 1', async () => {
    writeFileSync(
      join(folder, 'recipes', 'buns.quern'),
      BUNS.replace('hands 10 min: Knead.', 'hands 10 min at warmly: Knead.'),
    );
    const { code, out, err } = await card('recipes/buns.quern');
    expect(code).toBe(1);
    expect(err).toContain('warmly');
    expect(out).toContain('This recipe has mistakes');
  });

  test.each([
    [[], /no file is named/],
    [['recipes/buns.quern', 'recipes/porridge.quern'], /one file/],
    [['recipes'], /nothing says where its site goes/],
    [['recipes/buns.quern', '--out', 'site'], /--out is for a site/],
    [['recipes', '--out', 'site', '--format', 'text'], /--format is for a single card/],
    [['recipes', '--out', 'site', '--address', 'quay.example'], /not the address of a site/],
    [['recipes/buns.quern', '--date', '16.2.2041'], /is not a date/],
    [['recipes/buns.quern', '--format', 'pdf'], /--format cannot be “pdf”/],
    [['nowhere.quern'], /no such file/],
  ])('%j is refused', async (args, why) => {
    const { code, out, err } = await card(...args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(why);
  });
});

describe('a site', () => {
  test('has a page for each recipe and variant, an index and a book; a feed with an address', async () => {
    const { code, err } = await site();
    expect(code).toBe(0);
    expect(err).toContain('3 cards in site: 5 written, 0 as they were');
    expect(err).toContain('without --address there is no feed');
    expect(siteFiles()).toEqual([
      'book.html',
      'index.html',
      'quay-buns-half.html',
      'quay-buns.html',
      'quern-site.json',
      'tide-porridge.html',
    ]);
    await site('--address', 'https://quay.example');
    expect(siteFiles()).toContain('feed.xml');
    expect(read('site', 'sitemap.xml')).toContain('https://quay.example/quay-buns.html');
    // 2250000000 s after the beginning of 1970 (date -u -d @2250000000).
    expect(read('site', 'feed.xml')).toContain('<updated>2041-04-19T16:00:00Z</updated>');
  });

  test('only what has changed is written again, and what is gone is taken away', async () => {
    await site('--address', 'https://quay.example/');
    const old = new Date(2_000_000_000_000);
    const pages = siteFiles().filter((name) => /html|xml/.test(name));
    for (const name of pages) utimesSync(join(folder, 'site', name), old, old);
    expect((await site('--address', 'https://quay.example/')).err).toContain('0 written');
    writeFileSync(join(folder, 'recipes', 'porridge.quern'), MUSH.replace('500 g', '520 g'));
    const later = await quern(['card', 'recipes', '--out', 'site', '--address', 'https://quay.example/'], {
      SOURCE_DATE_EPOCH: '2260000000',
    });
    expect(later.err).toContain('5 written, 2 as they were');
    const touched = pages.filter((name) => statSync(join(folder, 'site', name)).mtimeMs !== old.getTime());
    expect(touched.sort()).toEqual(['book.html', 'feed.xml', 'index.html', 'sitemap.xml', 'tide-porridge.html']);
    // The feed keeps the moment at which the buns changed.
    expect(read('site', 'feed.xml')).toContain('<updated>2041-04-19T16:00:00Z</updated>');
    unlinkSync(join(folder, 'recipes', 'porridge.quern'));
    expect((await site('--address', 'https://quay.example/')).err).toContain('1 taken away');
    expect(siteFiles()).not.toContain('tide-porridge.html');
  });

  test('a change of look makes all pages again', async () => {
    await site();
    writeFileSync(join(folder, 'theme.css'), '.quern-card{--quern-accent:#405}');
    expect((await site('--theme', 'theme.css')).err).toContain('5 written, 0 as they were');
  });

  test('what is not ours is never touched', async () => {
    mkdirSync(join(folder, 'site'));
    writeFileSync(join(folder, 'site', 'notes.txt'), 'mine');
    await site();
    expect(read('site', 'notes.txt')).toBe('mine');
    rmSync(join(folder, 'site'), { recursive: true });
    mkdirSync(join(folder, 'site'));
    writeFileSync(join(folder, 'site', 'index.html'), 'mine');
    const { code, err } = await site();
    expect(code).toBe(2);
    expect(err).toContain('site/index.html stands in the way');
    expect(siteFiles()).toEqual(['index.html']);
  });

  test('a list that was tampered with takes nothing away outside', async () => {
    await site();
    writeFileSync(join(folder, 'precious.html'), 'mine');
    const list = JSON.parse(read('site', 'quern-site.json')) as { files: Record<string, string> };
    list.files['../precious.html'] = 'x';
    writeFileSync(join(folder, 'site', 'quern-site.json'), JSON.stringify(list));
    expect((await site()).code).toBe(2);
    expect(existsSync(join(folder, 'precious.html'))).toBe(true);
    writeFileSync(join(folder, 'site', 'quern-site.json'), '{"format":"other"}');
    expect((await site()).err).toContain('is not a list that this version of quern made');
  });

  test('photographs are copied once and shown from beside the pages', async () => {
    writeFileSync(join(folder, 'recipes', 'buns.png'), PIXEL);
    writeFileSync(join(folder, 'recipes', 'buns.quern'), BUNS.replace('keywords', 'photo buns.png\nkeywords'));
    expect((await site()).code).toBe(0);
    const photos = siteFiles().filter((name) => name.startsWith('photos/'));
    expect(photos).toHaveLength(1);
    expect(readFileSync(join(folder, 'site', photos[0] ?? '')).equals(PIXEL)).toBe(true);
    expect(read('site', 'quay-buns.html')).toContain(`src="${photos[0]}"`);
  });

  test('a broken recipe is told once, its card says so, and the command ends with 1', async () => {
    writeFileSync(
      join(folder, 'recipes', 'buns.quern'),
      BUNS.replace('hands 10 min: Knead.', 'hands 10 min at warmly: Knead.'),
    );
    const { code, err } = await site();
    expect(code).toBe(1);
    expect(err.match(/is not a temperature/g)).toHaveLength(1);
    expect(read('site', 'quay-buns.html')).toContain('This recipe has mistakes');
    expect(read('site', 'tide-porridge.html')).not.toContain('This recipe has mistakes');
  });

  test('a folder without recipes is refused', async () => {
    mkdirSync(join(folder, 'empty'));
    expect((await card('empty', '--out', 'site')).err).toContain('there is no .quern file');
    writeFileSync(join(folder, 'empty', 'kitchen.quern'), 'kitchen Quay\n  has 1 oven\n');
    expect((await card('empty', '--out', 'site')).err).toContain('hold no recipe');
  });
});
