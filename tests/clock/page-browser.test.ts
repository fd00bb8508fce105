import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { awakeHours, menuRequest } from '@quern/views';
import { clockPage, midnightOf, planDated } from '@quern/publish';
import { launchBrowser } from '../browser/launch.js';

/*
 * The page with its chart in a real browser: on a phone and a wide screen, light, dark and in print.
 */
const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const examples = join(import.meta.dirname, '..', '..', 'examples');

let browser: Browser;
let folder: string;
let address: string;

beforeAll(async () => {
  const read = (path: string): string => readFileSync(join(examples, path), 'utf8');
  const name = 'clock-supper-of-four.quern';
  const file = compile(name, read(name), { read, foods: createFoodBook() });
  const [menu] = file.menus;
  const [kitchen] = file.kitchens;
  if (!menu?.date) throw new Error('no menu');
  const midnight = midnightOf(menu.date, 'Europe/London');
  const when = { kind: 'day', midnight, now: midnight.subtract({ days: 30 }) } as const;
  const { plan, moments } = planDated(menuRequest(menu, kitchen), when, awakeHours(kitchen));
  if (!plan) throw new Error('no plan');
  folder = mkdtempSync(join(tmpdir(), 'clock-page-'));
  const path = join(folder, 'supper.html');
  writeFileSync(path, clockPage(plan, { moments }));
  address = pathToFileURL(path).href;
  browser = await launchBrowser();
}, 60_000);

afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

async function open(width: number, options: BrowserContextOptions = {}): Promise<{ page: Page; requests: string[] }> {
  const context = await browser.newContext({ viewport: { width, height: 800 }, ...options });
  const page = await context.newPage();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(address);
  return { page, requests };
}

/** How far letters of the chart stand out of the drawing, in pixels. */
const overhang = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const drawing = document.querySelector('svg');
    if (!drawing) return NaN;
    const frame = drawing.getBoundingClientRect();
    const out = [...drawing.querySelectorAll('text')].map((text) => {
      const box = text.getBoundingClientRect();
      return Math.max(box.right - frame.right, frame.left - box.left);
    });
    return Math.max(...out);
  });

describe('the page of a plan', () => {
  test.each([320, 375, 900])('fits a screen of %i pixels, its labels whole', async (width) => {
    const { page, requests } = await open(width);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await overhang(page)).toBeLessThanOrEqual(2);
    // Nothing is asked of any other machine.
    expect(requests).toEqual([address]);
    await page.context().close();
  });

  test.each(['light', 'dark'] as const)('has no fault that axe finds, %s', async (colorScheme) => {
    const { page } = await open(900, { colorScheme });
    await page.addScriptTag({ path: AXE });
    const faults = await page.evaluate(async () => {
      const axe = (
        globalThis as unknown as {
          axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        }
      ).axe;
      return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
    });
    expect(faults).toEqual([]);
    await page.context().close();
  });

  test('is dark where that is asked for, and black on white in print', async () => {
    const { page } = await open(900, { colorScheme: 'dark' });
    const paper = (): Promise<string> =>
      page.evaluate(() => getComputedStyle(document.querySelector('svg .paper') as Element).fill);
    const dark = (await paper()).match(/\d+/g)?.map(Number) ?? [];
    expect(Math.max(...dark)).toBeLessThan(60);
    await page.emulateMedia({ media: 'print' });
    expect(await paper()).toBe('rgb(255, 255, 255)');
    expect(await page.evaluate(() => getComputedStyle(document.querySelector('svg .lane') as Element).fill)).toBe(
      'rgb(0, 0, 0)',
    );
    await page.context().close();
  });

  test('tells lanes apart without colour', async () => {
    const { page } = await open(900);
    const fills = await page.evaluate(() =>
      ['hands', 'oven', 'hob', 'wait'].map((lane) => {
        const bar = document.querySelector(`svg .bar.${lane}`);
        return bar ? getComputedStyle(bar).fill : '';
      }),
    );
    // One solid, two patterns, one open: four different fills, none empty.
    expect(new Set(fills).size).toBe(4);
    expect(fills).not.toContain('');
    await page.context().close();
  });

  test('is read out in words', async () => {
    const { page } = await open(900);
    const named = page.getByRole('img', { name: /Supper of Four: the plan as a chart/ });
    expect(await named.count()).toBe(1);
    await page.context().close();
  });
});
