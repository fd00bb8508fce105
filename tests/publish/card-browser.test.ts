import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cardHtml } from '@quern/publish';
import type { CardData } from '@quern/views';
import { launchBrowser } from '../browser/launch.js';
import { hebrewLoaf, HOSTILE, hostileCard, plainCordial, tinLoaf } from './cards.js';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

let browser: Browser;
let folder: string;
beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'quern-card-'));
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly requests: string[];
  readonly complaints: string[];
}

let count = 0;

async function open(card: CardData, width: number, options: BrowserContextOptions = {}): Promise<Opened> {
  const file = join(folder, `card-${++count}.html`);
  writeFileSync(file, cardHtml(card));
  const context = await browser.newContext({ viewport: { width, height: 900 }, ...options });
  const page = await context.newPage();
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(pathToFileURL(file).href);
  return { page, context, requests, complaints };
}

const seen = (page: Page, selector: string): Promise<boolean> => page.locator(selector).first().isVisible();
const cells = (page: Page, column: string): Promise<string[]> => page.locator(`tbody td.${column}`).allTextContents();
const plain = (text: string | null): string => (text ?? '').replace(/\u00A0/g, ' ');

describe('measures', () => {
  test('both stand side by side where there is room', async () => {
    const { page, context } = await open(tinLoaf, 1280);
    expect(await seen(page, 'tbody td.quern-m')).toBe(true);
    expect(await seen(page, 'tbody td.quern-u')).toBe(true);
    expect(await seen(page, '.quern-turn')).toBe(false);
    const [metric, us] = [
      await page.locator('tbody td.quern-m').first().boundingBox(),
      await page.locator('tbody td.quern-u').first().boundingBox(),
    ];
    expect(metric?.y).toBe(us?.y);
    expect((metric?.x ?? 0) + (metric?.width ?? 0)).toBeLessThanOrEqual(us?.x ?? 0);
    await context.close();
  });

  test('on a narrow page a tap turns the one column to the other', async () => {
    const { page, context } = await open(tinLoaf, 360, { hasTouch: true });
    expect(await seen(page, 'tbody td.quern-m')).toBe(true);
    expect(await seen(page, 'tbody td.quern-u')).toBe(false);
    await page.locator('.quern-turn').tap();
    expect(await seen(page, 'tbody td.quern-m')).toBe(false);
    expect(await seen(page, 'tbody td.quern-u')).toBe(true);
    // What has but one measure stands in either column.
    const all = page.locator('tr', { hasText: 'soaker' }).locator('td.quern-u');
    expect(plain(await all.textContent())).toBe('all');
    expect((await all.locator('bdi').boundingBox())?.width).toBeGreaterThan(10);
    await page.locator('.quern-turn').tap();
    expect(await seen(page, 'tbody td.quern-m')).toBe(true);
    await context.close();
  });

  test('without scripts both stand at any width, and no field or button', async () => {
    const { page, context } = await open(tinLoaf, 320, { javaScriptEnabled: false });
    expect(await seen(page, 'tbody td.quern-m')).toBe(true);
    expect(await seen(page, 'tbody td.quern-u')).toBe(true);
    expect(await page.locator('input,button').count()).toBe(0);
    expect(plain(await page.locator('.quern-yield').textContent())).toContain('Loaves2');
    await context.close();
  });
});

describe('the field', () => {
  test('is named after the yield and rescales every figure exactly', async () => {
    const { page, context } = await open(tinLoaf, 1280);
    const field = page.getByRole('textbox', { name: 'Loaves' });
    expect(await field.inputValue()).toBe('2');
    const before = await cells(page, 'quern-m');
    await field.fill('3');
    // 3 of 2 loaves: 150 g becomes 225 g, 210 g becomes 315 g, 20.2 g becomes 30.3 g, 740 g becomes 1110 g.
    const after = (await cells(page, 'quern-m')).map(plain);
    for (const wanted of ['225 g', '315 g', '30.3 g', '1110 g', '540 g']) expect(after).toContain(wanted);
    // 1 1/2 cups of seeds become 2 1/4; 1 1/2 cups of flour become 2 1/4.
    expect(
      (await cells(page, 'quern-u')).map(plain).filter((text) => text === '2¼ cups').length,
    ).toBeGreaterThanOrEqual(2);
    expect(plain(await page.locator('.quern-sentence').filter({ hasText: 'Scrape into' }).textContent())).toContain(
      'into the 3 oiled tins',
    );
    expect(plain(await page.locator('.quern-facts').textContent())).toContain('3 loaf tins of 23 × 11 × 8 cm');
    // What does not scale does not: the weight of each loaf, words, lengths, times.
    expect(plain(await page.locator('.quern-facts').textContent())).toContain('of 1040 g (2 lb 5 oz)');
    expect(after).toContain('all');
    expect(await page.getByRole('status').textContent()).toMatch(/^Scaled from 2 loaves\. Times, temperatures/);
    await field.fill('2');
    expect(await cells(page, 'quern-m')).toEqual(before);
    expect(await page.getByRole('status').textContent()).toBe('');
    await context.close();
  });

  test('reads figures as cooks write them', async () => {
    const { page, context } = await open(tinLoaf, 1280);
    // 150 g of flour for 2 loaves.
    const readings = { '2 1/2': '188 g', '2½': '188 g', '0,5': '38 g', '1/3': '25 g', ' 4 ': '300 g' };
    for (const [written, wanted] of Object.entries(readings)) {
      await page.getByRole('textbox', { name: 'Loaves' }).fill(written);
      expect(plain((await cells(page, 'quern-m'))[0] ?? ''), written).toBe(wanted);
    }
    await context.close();
  });

  test('refuses what is no figure, says how to write one, and keeps the last good page', async () => {
    const { page, context } = await open(tinLoaf, 1280);
    const field = page.getByRole('textbox', { name: 'Loaves' });
    for (const written of ['', '0', '-1', 'two', '1e9', '1,000', '9'.repeat(30), '1/0', '<b>2</b>', '2001']) {
      await field.fill('4');
      expect(await field.getAttribute('aria-invalid')).toBe('false');
      await field.fill(written);
      expect(await field.getAttribute('aria-invalid'), written).toBe('true');
      expect(await page.getByRole('status').textContent()).toMatch(/Write a number/);
      expect(plain((await cells(page, 'quern-m'))[0] ?? '')).toBe('300 g');
    }
    await context.close();
  });

  test('a recipe without a yield counts batches; nothing is remembered', async () => {
    const { page, context } = await open(plainCordial, 800);
    await page.getByRole('textbox', { name: 'Batches' }).fill('2');
    expect(plain((await cells(page, 'quern-m'))[0] ?? '')).toBe('400 g');
    expect(plain((await cells(page, 'quern-m'))[1] ?? '')).toBe('2 bunches');
    expect(await context.cookies()).toEqual([]);
    await page.reload();
    expect(await page.getByRole('textbox', { name: 'Batches' }).inputValue()).toBe('1');
    await context.close();
  });
});

describe('anybody can use it', () => {
  const looks: readonly [string, CardData, number, BrowserContextOptions][] = [
    ['light, wide', tinLoaf, 1280, {}],
    ['dark, wide', tinLoaf, 1280, { colorScheme: 'dark' }],
    ['light, phone', tinLoaf, 360, {}],
    ['dark, phone', tinLoaf, 320, { colorScheme: 'dark' }],
    ['right to left', hebrewLoaf, 768, {}],
    ['little said', plainCordial, 768, {}],
    ['without scripts', tinLoaf, 768, { javaScriptEnabled: false }],
  ];
  test.each(looks)('axe finds nothing: %s', async (_, card, width, options) => {
    // axe itself is a script: without scripts the page is looked at as it was sent, with ours taken out.
    const scripted = options.javaScriptEnabled !== false;
    const { page, context } = await open(card, width, { ...options, javaScriptEnabled: true, bypassCSP: true });
    if (!scripted) await page.setContent(cardHtml(card, { scalable: false }));
    await page.addScriptTag({ path: AXE });
    const result = await page.evaluate(() =>
      (
        globalThis as unknown as {
          axe: {
            run(
              options: object,
            ): Promise<{ violations: { id: string; nodes: { html: string }[] }[]; passes: unknown[] }>;
          };
        }
      ).axe.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      }),
    );
    expect(result.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(result.passes.length).toBeGreaterThan(15);
    await context.close();
  });

  test('nothing runs out of a page, however narrow', async () => {
    const { page, context } = await open(tinLoaf, 1280);
    for (const width of [320, 360, 768, 1280]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    await context.close();
  });

  test('text can be spaced out as WCAG 1.4.12 asks, and doubled in size, without loss', async () => {
    const { page, context } = await open(tinLoaf, 640);
    await page.addStyleTag({
      content:
        '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}html{font-size:200%}',
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(640);
    await context.close();
  });

  test('the keyboard reaches the field and the button, and one sees where it is', async () => {
    const { page, context } = await open(tinLoaf, 360);
    await page.keyboard.press('Tab');
    const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.className ?? '');
    expect(await focused()).toBe('quern-field');
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle);
    expect(outline).toBe('solid');
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('quern-turn');
    await page.keyboard.press('Enter');
    expect(await seen(page, 'tbody td.quern-u')).toBe(true);
    await page.keyboard.press('Space');
    expect(await seen(page, 'tbody td.quern-m')).toBe(true);
    await context.close();
  });

  test('a screen reader is told what stands where', async () => {
    const { page, context } = await open(tinLoaf, 1280);
    const tree = await page.locator('main').ariaSnapshot();
    expect(tree).toContain('article "Pennymoss Black Tin Loaf"');
    expect(tree).toContain('textbox "Loaves"');
    expect(tree).toMatch(/heading "leaven" \[level=2\]/);
    expect(tree).toMatch(/table "Ingredients: leaven"/);
    expect(tree).toMatch(/columnheader "Metric"/);
    expect(tree).toMatch(/rowheader "whole rye flour"/);
    expect(tree).toMatch(/heading "Take care" \[level=2\]/);
    await context.close();
  });
});

describe('paper', () => {
  test('prints on one or two pages, both measures, the figure asked for, no buttons', async () => {
    const { page, context } = await open(tinLoaf, 360);
    await page.getByRole('textbox', { name: 'Loaves' }).fill('3');
    const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(2);
    await page.emulateMedia({ media: 'print' });
    expect(await seen(page, '.quern-turn')).toBe(false);
    // A reader who asked for metric on a phone prints what stands there.
    expect(await page.getByRole('textbox', { name: 'Loaves' }).inputValue()).toBe('3');
    expect(
      await page.evaluate(() => getComputedStyle(document.querySelector('.quern-card') as Element).backgroundColor),
    ).toBe('rgb(255, 255, 255)');
    await context.close();
  });

  test('a dark page prints black on white', async () => {
    const { page, context } = await open(tinLoaf, 1280, { colorScheme: 'dark' });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const colours = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.querySelector('.quern-card') as Element);
      return { color, backgroundColor, ground: getComputedStyle(document.documentElement).backgroundColor };
    });
    expect(colours).toEqual({
      color: 'rgb(0, 0, 0)',
      backgroundColor: 'rgb(255, 255, 255)',
      ground: 'rgb(255, 255, 255)',
    });
    await context.close();
  });
});

test('the page asks for nothing but itself and complains of nothing', async () => {
  const { page, context, requests, complaints } = await open(tinLoaf, 1280);
  await page.getByRole('textbox', { name: 'Loaves' }).fill('7');
  expect(requests).toHaveLength(1);
  expect(complaints).toEqual([]);
  await context.close();
});

test('ill will runs nothing', async () => {
  const context = await browser.newContext({ viewport: { width: 800, height: 900 }, bypassCSP: true });
  const page = await context.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  for (const evil of HOSTILE) {
    const file = join(folder, 'hostile.html');
    writeFileSync(file, cardHtml(hostileCard(evil)));
    await page.goto(pathToFileURL(file).href);
    await page.locator('.quern-field').fill('5');
    expect(await page.evaluate(() => 'broken' in globalThis), evil).toBe(false);
    const links = await page
      .locator('a')
      .evaluateAll((list) => list.map((link) => (link as HTMLAnchorElement).protocol));
    for (const protocol of links) expect(['file:', 'http:', 'https:', 'mailto:']).toContain(protocol);
  }
  // A name that is a path is looked for beside the page, and nowhere else.
  for (const url of requests) expect(url).toMatch(/^(file|data):/);
  await context.close();
});
