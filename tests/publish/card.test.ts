import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { toHtml as hastToHtml } from 'hast-util-to-html';
import { fromHtml } from 'hast-util-from-html';
import { toString as markdownToString } from 'mdast-util-to-string';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Element, Root, RootContent } from 'hast';
import { describe, expect, test } from 'vitest';
import {
  cardHtml,
  cardJsonLd,
  cardMarkdown,
  cardScript,
  cardScriptHash,
  cardText,
  cardTree,
  toHtml,
} from '@quern/publish';
import {
  bundlePageScript,
  pageScriptModule,
  pageScripts,
} from '../../packages/publish/scripts/bundle-page-scripts.mjs';
import { hebrewLoaf, HOSTILE, hostileCard, plainCordial, tinLoaf } from './cards.js';

function elements(node: Root | RootContent): Element[] {
  if (node.type !== 'root' && node.type !== 'element') return [];
  const inside = node.children.flatMap(elements);
  return node.type === 'element' ? [node, ...inside] : inside;
}

const found = (html: string): Element[] => elements(fromHtml(html));

describe('the page', () => {
  test('is one file that asks nobody for anything', () => {
    for (const element of found(cardHtml(tinLoaf))) {
      expect(['link', 'iframe', 'object', 'embed', 'base', 'form']).not.toContain(element.tagName);
      const { src, href } = element.properties;
      expect(String(src ?? href ?? '')).not.toMatch(/^[a-z]+:|^\/\//i);
    }
    expect(cardHtml(tinLoaf)).not.toMatch(/@import|url\(/);
  });

  test('lets its own script run and no other', () => {
    const policy = found(cardHtml(tinLoaf)).find(({ properties }) => properties['httpEquiv'] !== undefined);
    const hash = createHash('sha256').update(cardScript).digest('base64');
    expect(String(policy?.properties['content'])).toContain(`script-src 'sha256-${hash}';`);
    expect(cardScriptHash).toBe(`sha256-${hash}`);
  });

  test.each(pageScripts)('$name is the bundle of its sources as they stand today', async (entry) => {
    const module = pageScriptModule(entry, await bundlePageScript(entry));
    const written = readFileSync(
      new URL(`../../packages/publish/src/generated/${entry.module}`, import.meta.url),
      'utf8',
    );
    // If this fails, run: node packages/publish/scripts/bundle-page-scripts.mjs
    expect(written === module, `${entry.module} is older than its sources`).toBe(true);
  });

  test('is under 60 kB with its script, packed as a server sends it', () => {
    const size = gzipSync(cardHtml(tinLoaf)).length;
    expect(size).toBeLessThan(60_000);
    expect(gzipSync(cardScript).length).toBeLessThan(12_000);
  });

  test('has one field and nothing to remember people by', () => {
    expect(cardScript).not.toMatch(/localStorage|sessionStorage|indexedDB|cookie|fetch\(|XMLHttp|sendBeacon|WebSocket/);
  });

  test('writes its tree as the HTML library of the unified ecosystem does', () => {
    const tree = cardTree(tinLoaf);
    // Both are parsed again, because the two may spell the same character differently.
    expect(fromHtml(toHtml(tree), { fragment: true })).toEqual(
      expect.objectContaining({ children: [expect.objectContaining({ tagName: 'article' })] }),
    );
    const plain = (html: string): string => hastToHtml(fromHtml(html, { fragment: true }));
    expect(plain(toHtml(tree))).toBe(plain(hastToHtml(tree as unknown as Element)));
  });

  test('headings follow one another without a gap, and ids are single', () => {
    const all = found(cardHtml(tinLoaf));
    const levels = all.flatMap(({ tagName }) => (/^h[1-6]$/.test(tagName) ? [Number(tagName.slice(1))] : []));
    expect(levels[0]).toBe(1);
    levels.forEach((level, index) => expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1));
    const ids = all.flatMap(({ properties }) => (properties['id'] === undefined ? [] : [String(properties['id'])]));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('sentences print as they were written', () => {
    const written = tinLoaf.makes.flatMap((make) =>
      make.steps.map((step) => step.sentence.map((run) => run.text).join('')),
    );
    // The program's own figures are set with a space that does not break.
    const text = cardText(tinLoaf, { measures: 'metric', width: 10_000 }).replaceAll('\u00A0', ' ');
    for (const sentence of written) expect(text).toContain(sentence);
  });

  test('runs from right to left in a language that does', () => {
    const article = found(cardHtml(hebrewLoaf)).find(({ tagName }) => tagName === 'article');
    expect(article?.properties).toMatchObject({ dir: 'rtl', lang: 'he' });
  });

  test('leaves out what is not known, and the heading of a dish that is its only make', () => {
    const html = cardHtml(plainCordial);
    expect(html).not.toMatch(/Nutrition|Allergens|Keeping|Variants|undefined/);
    expect(found(html).filter(({ tagName }) => tagName === 'h2')).toHaveLength(0);
  });

  test('an error in the recipe stands on its card', () => {
    const problem = {
      code: 'M01',
      severity: 'error',
      text: 'leaven: 110 g drawn, only 100 g made',
      help: 'draw less',
      line: 12,
    } as const;
    const broken = { ...tinLoaf, problems: [problem] };
    for (const output of [cardHtml(broken), cardMarkdown(broken), cardText(broken, { width: 200 })]) {
      expect(output).toContain('line 12: leaven: 110 g drawn, only 100 g made');
    }
    expect(cardHtml(tinLoaf)).not.toContain('has mistakes');
  });

  test('a theme cannot leave the style sheet', () => {
    expect(cardHtml(tinLoaf, { theme: '.quern-card{--quern-accent:#405}' })).toContain('--quern-accent:#405');
    expect(() => cardHtml(tinLoaf, { theme: '</style><script>' })).toThrow(RangeError);
  });
});

describe('hostile texts break out of no output', () => {
  test.each(HOSTILE)('%j', (evil) => {
    const card = hostileCard(evil);
    const wanted = found(cardHtml(tinLoaf));
    const all = found(cardHtml(card));
    const names = new Set([...wanted.map(({ tagName }) => tagName), 'img', 'a']);
    for (const { tagName, properties } of all) {
      expect(names).toContain(tagName);
      expect(Object.keys(properties).filter((name) => /^on/i.test(name))).toEqual([]);
      expect(String(properties['href'] ?? properties['src'] ?? '')).not.toMatch(/^\s*(javascript|data:text|vbscript)/i);
    }
    // As many scripts and styles as on the harmless page: none was added, none was cut short.
    for (const tag of ['script', 'style', 'table', 'li', 'article']) {
      const count = (list: readonly Element[]): number => list.filter(({ tagName }) => tagName === tag).length;
      expect(count(all)).toBe(count(wanted));
    }
    expect(() => JSON.parse(JSON.stringify(cardJsonLd(card)))).not.toThrow();
    expect(cardText(card)).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F]/);
  });

  test.each(HOSTILE)('Markdown: %j', (evil) => {
    const tree = unified()
      .use(remarkParse)
      .parse(cardMarkdown(hostileCard(evil)));
    const types: string[] = [];
    const walk = (node: { type: string; children?: readonly unknown[]; url?: string }): void => {
      types.push(node.type);
      if (node.url !== undefined) expect(node.url).not.toMatch(/^\s*javascript/i);
      for (const child of node.children ?? []) walk(child as Parameters<typeof walk>[0]);
    };
    walk(tree);
    expect(types).not.toContain('html');
    expect(types).not.toContain('code');
    expect(types).not.toContain('link');
    expect(markdownToString(tree)).not.toBe('');
  });
});

describe('Markdown', () => {
  test('measures can be one or both', () => {
    expect(cardMarkdown(tinLoaf)).toContain('| 210 g | 1½ cups | sunflower seeds, toasted |');
    expect(cardMarkdown(tinLoaf, { measures: 'metric' })).toContain('| 210 g | sunflower seeds, toasted |');
    expect(cardMarkdown(tinLoaf, { measures: 'us' })).toContain('| 1½ cups | sunflower seeds, toasted |');
    expect(cardMarkdown(tinLoaf, { measures: 'us' })).not.toContain('°C');
  });
});
