import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { site } from '@quern/publish';
import type { CardData } from '@quern/views';
import { launchBrowser } from '../browser/launch.js';
import { hebrewLoaf, plainCordial, tinLoaf } from './cards.js';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

const seedless: CardData = {
  ...tinLoaf,
  variant: 'seedless',
  allergens: { contains: ['cereals containing gluten: rye'], mayContain: [], unknown: [], market: 'eu' },
};
const cards = [tinLoaf, seedless, plainCordial, hebrewLoaf].map((card) => ({ card, source: 'x.quern' }));

let browser: Browser;
let folder: string;
beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'quern-site-'));
  mkdirSync(folder, { recursive: true });
  const files = site(cards, {
    title: 'Pennymoss Quay',
    author: 'Idony Farrow',
    language: 'en',
    address: 'https://quay.example/',
    made: '2041-03-05',
  });
  for (const { path, render } of files) writeFileSync(join(folder, path), render());
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

async function open(path: string, run: (page: Page, requests: string[]) => Promise<void>, options = {}): Promise<void> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    offline: true,
    bypassCSP: true,
    ...options,
  });
  const page = await context.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(pathToFileURL(join(folder, path)).href);
  await run(page, requests);
  await context.close();
}

async function axe(page: Page): Promise<string[]> {
  await page.addScriptTag({ path: AXE });
  return page.evaluate(async () => {
    const { axe: checker } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    return (await checker.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

describe('the index', () => {
  const shown = (page: Page): Promise<string[]> => page.locator('.quern-list > li:visible > a').allTextContents();

  test('finds by words, tag, allergen and time, without a network', () =>
    open('index.html', async (page, requests) => {
      expect(await shown(page)).toHaveLength(4);
      await page.getByLabel('Search').fill('Beet LOAF');
      expect(await shown(page)).toEqual(['Pennymoss Black Tin Loaf', 'Pennymoss Black Tin Loaf (seedless)']);
      expect(await page.getByRole('status').textContent()).toBe('2 of 4.');
      await page.getByLabel('Search').fill('');
      await page.getByLabel('Tag').selectOption('mint');
      expect(await shown(page)).toEqual(['Quay Mint Cordial']);
      await page.getByLabel('Tag').selectOption('');
      await page.getByLabel('Ready within').selectOption('30');
      expect(await shown(page)).toEqual(['Quay Mint Cordial']);
      expect(requests).toHaveLength(1);
    }));

  test('leaves out what may have an allergen, and what nobody has labelled', () =>
    open('index.html', async (page) => {
      await page.getByLabel('Leave out what has or may have').selectOption('nuts');
      // The loaf may hold nuts by traces; the cordial has no label; both stay out.
      expect(await shown(page)).toEqual(['Pennymoss Black Tin Loaf (seedless)']);
      expect(await page.getByRole('status').textContent()).toContain('Read the label of each');
    }));

  test('is a plain list without scripts', () =>
    open(
      'index.html',
      async (page) => {
        expect(await shown(page)).toHaveLength(4);
        expect(await page.locator('.quern-search').isVisible()).toBe(false);
        await page.locator('.quern-list a').first().click();
        expect(await page.title()).toBe('Pennymoss Black Tin Loaf');
        await page.getByRole('link', { name: 'Pennymoss Quay' }).click();
        expect(await page.title()).toBe('Pennymoss Quay');
      },
      { javaScriptEnabled: false },
    ));

  test.each(['light', 'dark'] as const)('axe finds nothing: %s', (colorScheme) =>
    open('index.html', async (page) => expect(await axe(page)).toEqual([]), { colorScheme }),
  );
});

describe('the book', () => {
  test('begins every recipe on a new sheet and fits them on two each', () =>
    open('book.html', async (page) => {
      const pages = async (): Promise<number> => {
        const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
        return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
      };
      const all = await pages();
      expect(all).toBeGreaterThanOrEqual(1 + cards.length);
      expect(all).toBeLessThanOrEqual(1 + 2 * cards.length);
      await page.emulateMedia({ media: 'print' });
      const breaks = await page
        .locator('.quern-card')
        .evaluateAll((list) => list.map((card) => getComputedStyle(card).breakBefore));
      expect(breaks).toEqual(cards.map(() => 'page'));
    }));

  test('axe finds nothing', () => open('book.html', async (page) => expect(await axe(page)).toEqual([])));
});
