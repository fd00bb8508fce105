/** The small label in a real browser: at every size nothing is cut off, and type is not smaller than the law asks. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import { TAG_SIZES, tagPage, type TagSize } from '@quern/publish';
import { label } from '@quern/views';
import { launchBrowser } from '../browser/launch.js';
import { compiled } from './world.js';

const LONG = `recipe Harbour Celebration Trifle with Brandied Cherries
by Idony Farrow, of the old pilot house at the far end of Pennymoss Quay
gives 2 bowls

make trifle
  500 g whole milk
  200 g egg yolk
  60 g brandy
  100 g hazelnuts
  200 g extraordinarylongunbreakablewordsofsomebodyspacketfromtheharbourshop
  50 g honey
  hands 10 min: Layer.
  wait overnight at 4 C: Chill.
  keeps 2 d at 4 C, covered, and turned with a wooden spoon every morning
`;

const folder = join(import.meta.dirname, '../../examples');
const recipes = [
  LONG,
  ...readdirSync(folder)
    .filter((name) => name.endsWith('.quern') && !name.startsWith('clock-'))
    .map((name) => readFileSync(join(folder, name), 'utf8')),
];
const tags = recipes.flatMap((text) => {
  const [first] = compiled(text).formulas;
  return first ? [label(first, { market: 'eu' }).value.tag] : [];
});

describe('the tag in print', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  }, 60_000);
  afterAll(() => browser.close());

  test.each(Object.keys(TAG_SIZES) as TagSize[])(
    'of %s: every word stands inside the page, in type with an x-height of 1.2 mm or more',
    async (size) => {
      const [across] = TAG_SIZES[size];
      const page = await browser.newPage();
      await page.emulateMedia({ media: 'print' });
      for (const tag of tags) {
        await page.setContent(tagPage(tag, { size, madeOn: '2041-02-16' }));
        const seen = await page.evaluate((width) => {
          // What `@page` leaves of the paper, as the browser lays it out.
          const margin = /margin:([\d.]+)mm/.exec(document.querySelector('style')?.textContent ?? '')?.[1] ?? '0';
          const inside = ((width - 2 * Number(margin)) * 96) / 25.4;
          const box = document.querySelector<HTMLElement>('.quern-tag');
          if (!box) throw new Error('no tag');
          box.style.width = `${inside}px`;
          const left = box.getBoundingClientRect().left;
          const outside: string[] = [];
          const walker = document.createTreeWalker(box, NodeFilter.SHOW_TEXT);
          let smallest = Infinity;
          while (walker.nextNode()) {
            const range = document.createRange();
            range.selectNodeContents(walker.currentNode);
            for (const rect of range.getClientRects())
              if (rect.left < left - 0.5 || rect.right > left + inside + 0.5)
                outside.push(walker.currentNode.textContent ?? '');
            const around = walker.currentNode.parentElement;
            if (around) smallest = Math.min(smallest, parseFloat(getComputedStyle(around).fontSize));
          }
          const hidden = [...box.querySelectorAll('*')].filter(
            (one) => getComputedStyle(one).overflow !== 'visible',
          ).length;
          return { outside, smallest, hidden };
        }, across);
        expect(seen.outside, tag.name).toEqual([]);
        expect(seen.hidden).toBe(0);
        // Regulation (EU) No 1169/2011, Article 13(2): 1.2 mm; the faces named have an x-height of 0.46 and more (from memory).
        expect(((seen.smallest * 25.4) / 96) * 0.46).toBeGreaterThanOrEqual(1.2);
      }
      await page.close();
    },
    60_000,
  );

  test('a short one fits on one label of every size, and its type grows with the label', async () => {
    const tag = tags.find(({ name }) => name === 'Salt-House Lemons');
    if (!tag) throw new Error('the example is gone');
    const page = await browser.newPage();
    const sizes: number[] = [];
    for (const size of ['99x57', 'a7', 'a6'] as const) {
      await page.setContent(tagPage(tag, { size, madeOn: '2041-02-16' }));
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
      sizes.push(
        await page.evaluate(() =>
          parseFloat(getComputedStyle(document.querySelector('.quern-tag p') ?? document.body).fontSize),
        ),
      );
    }
    await page.close();
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(sizes[2]).toBeGreaterThan(sizes[0] ?? Infinity);
  }, 60_000);
});
