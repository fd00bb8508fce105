import { fromHtml } from 'hast-util-from-html';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { atomFeed, site, sitePages, type SiteCard, type SiteOptions } from '@quern/publish';
import { hebrewLoaf, HOSTILE, hostileCard, plainCordial, tinLoaf } from './cards.js';

const cards: readonly SiteCard[] = [
  { card: tinLoaf, source: 'loaf.quern' },
  { card: { ...tinLoaf, variant: 'seedless', date: '2041-03-02' }, source: 'loaf.quern' },
  { card: plainCordial, source: 'cordial.quern' },
  { card: hebrewLoaf, source: 'loaf-he.quern' },
];
const options: SiteOptions = {
  title: 'Pennymoss Quay',
  author: 'Idony Farrow',
  language: 'en',
  address: 'https://quay.example/recipes',
  made: '2041-03-05',
};

interface Parsed {
  readonly name: string;
  readonly attributes: Record<string, string>;
  readonly text: string;
  readonly children: readonly Parsed[];
}

/** The document by a parser that refuses what is not well-formed XML. */
function parseXml(text: string): Parsed {
  const parser = new SaxesParser();
  type Open = { name: string; attributes: Record<string, string>; text: string; children: Parsed[] };
  const stack: Open[] = [{ name: '', attributes: {}, text: '', children: [] }];
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) =>
    stack.push({ name: tag.name, attributes: tag.attributes as Record<string, string>, text: '', children: [] }),
  );
  parser.on('text', (part) => {
    const top = stack.at(-1);
    if (top) top.text += part;
  });
  parser.on('closetag', () => {
    const done = stack.pop();
    if (done) stack.at(-1)?.children.push(done);
  });
  parser.write(text).close();
  const root = stack[0]?.children[0];
  if (!root) throw new Error('no document');
  return root;
}

const child = (node: Parsed, name: string): Parsed | undefined => node.children.find((part) => part.name === name);
const content = (path: string, list = site(cards, options)): string =>
  list.find((file) => file.path === path)?.render() ?? '';

describe('the files', () => {
  test('a page a card, an index, a book, a feed and a map', () => {
    expect(site(cards, options).map(({ path }) => path)).toEqual([
      'pennymoss-black-tin-loaf.html',
      'pennymoss-black-tin-loaf-seedless.html',
      'quay-mint-cordial.html',
      'לחם-שיפון-שחור.html',
      'index.html',
      'book.html',
      'feed.xml',
      'sitemap.xml',
    ]);
    const { address: _, ...nowhere } = options;
    expect(site(cards, nowhere).map(({ path }) => path)).not.toContain('feed.xml');
  });

  test('two titles that make one name, and our own names, are told apart', () => {
    const twice = [tinLoaf, { ...tinLoaf, title: 'Pennymoss: black tin loaf!' }, { ...tinLoaf, title: 'Index' }];
    expect(sitePages(twice.map((card) => ({ card, source: '' }))).map(({ path }) => path)).toEqual([
      'pennymoss-black-tin-loaf.html',
      'pennymoss-black-tin-loaf-2.html',
      'index-2.html',
    ]);
  });

  test('only what a change touches has other inputs', () => {
    const before = site(cards, options);
    const changed = cards.map((entry) =>
      entry.card === plainCordial ? { ...entry, card: { ...plainCordial, keywords: ['mint'] } } : entry,
    );
    const after = site(changed, options);
    const touched = after.filter((file, index) => file.inputs !== before[index]?.inputs).map(({ path }) => path);
    expect(touched).toEqual(['quay-mint-cordial.html', 'index.html', 'book.html', 'feed.xml', 'sitemap.xml']);
    // And the same inputs give the same content, byte for byte.
    for (const [index, file] of site(cards, options).entries()) expect(file.render()).toBe(before[index]?.render());
    const themed = site(cards, { ...options, theme: '.quern-card{--quern-accent:#405}' });
    expect(themed.every((file, index) => file.inputs !== before[index]?.inputs)).toBe(true);
  });

  test('every link leads to a file that is there', () => {
    const files = site(cards, options);
    const paths = new Set(files.map(({ path }) => path));
    for (const { path, render } of files.filter((file) => file.path.endsWith('.html'))) {
      const text = render();
      const ids = new Set([...text.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
      for (const [, href = ''] of text.matchAll(/<a [^>]*href="([^"]+)"/g)) {
        if (href.startsWith('#')) expect(ids, path).toContain(href.slice(1));
        else expect(paths, path).toContain(decodeURIComponent(href));
      }
    }
  });
});

describe('the feed', () => {
  const feed = parseXml(content('feed.xml'));

  test('has what RFC 4287 asks of a feed and of an entry, the newest first', () => {
    expect(feed.name).toBe('feed');
    expect(feed.attributes['xmlns']).toBe('http://www.w3.org/2005/Atom');
    for (const name of ['id', 'title', 'updated', 'author']) expect(child(feed, name), name).toBeDefined();
    const entries = feed.children.filter(({ name }) => name === 'entry');
    expect(entries).toHaveLength(cards.length);
    for (const entry of entries) {
      for (const name of ['id', 'title', 'updated', 'content'])
        expect(
          entry.children.filter((part) => part.name === name),
          name,
        ).toHaveLength(1);
      expect(child(entry, 'id')?.text).toMatch(/^https:\/\/quay\.example\/recipes\/[!-~]+\.html$/);
      expect(child(entry, 'updated')?.text).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/);
    }
    const moments = entries.map((entry) => child(entry, 'updated')?.text ?? '');
    expect(moments).toEqual([...moments].sort().reverse());
    expect(child(feed, 'updated')?.text).toBe('2041-03-02T00:00:00Z');
    const ids = entries.map((entry) => child(entry, 'id')?.text);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('holds each card whole, as HTML without scripts', () => {
    const entry = feed.children.find(
      (part) => part.name === 'entry' && child(part, 'title')?.text === 'Quay Mint Cordial',
    );
    const card = child(entry ?? feed, 'content');
    expect(card?.attributes['type']).toBe('html');
    expect(card?.text).toContain('Simmer and strain.');
    expect(card?.text).not.toMatch(/<script|data-quern/);
    expect(fromHtml(card?.text ?? '', { fragment: true }).children).toHaveLength(1);
  });

  test.each(HOSTILE)('ill will stays text: %j', (evil) => {
    const card = hostileCard(evil);
    const told = atomFeed([{ card, address: 'https://quay.example/x.html', changed: '2041-02-16' }], {
      ...options,
      address: 'https://quay.example/',
      title: evil,
      author: evil,
    });
    const parsed = parseXml(told);
    const entry = child(parsed, 'entry');
    expect(entry?.children.map(({ name }) => name)).toEqual([
      'id',
      'title',
      'updated',
      'author',
      'category',
      'category',
      'category',
      'link',
      'summary',
      'content',
    ]);
    const names = (nodes: readonly unknown[]): string[] =>
      nodes.flatMap((node) => {
        const { tagName, children = [] } = node as { tagName?: string; children?: unknown[] };
        return [...(tagName === undefined ? [] : [tagName]), ...names(children)];
      });
    expect(names(fromHtml(child(entry ?? parsed, 'content')?.text ?? '', { fragment: true }).children)).not.toContain(
      'script',
    );
  });
});

test('the site map names every page (sitemaps.org 0.9)', () => {
  const map = parseXml(content('sitemap.xml'));
  expect(map.attributes['xmlns']).toBe('http://www.sitemaps.org/schemas/sitemap/0.9');
  const places = map.children.map((url) => child(url, 'loc')?.text);
  expect(places).toEqual([
    'https://quay.example/recipes/',
    'https://quay.example/recipes/book.html',
    'https://quay.example/recipes/pennymoss-black-tin-loaf.html',
    'https://quay.example/recipes/pennymoss-black-tin-loaf-seedless.html',
    'https://quay.example/recipes/quay-mint-cordial.html',
    `https://quay.example/recipes/${encodeURIComponent('לחם-שיפון-שחור')}.html`,
  ]);
  expect(child(map.children[3] ?? map, 'lastmod')?.text).toBe('2041-03-02');
});

test.each(HOSTILE)('ill will breaks out of no page of the site: %j', (evil) => {
  const files = site([{ card: hostileCard(evil), source: evil }], { ...options, title: evil, author: evil });
  const tags = (nodes: readonly unknown[]): string[] =>
    nodes.flatMap((node) => {
      const {
        tagName,
        properties,
        children = [],
      } = node as {
        tagName?: string;
        properties?: Record<string, unknown>;
        children?: unknown[];
      };
      expect(Object.keys(properties ?? {}).filter((name) => /^on/i.test(name))).toEqual([]);
      return [...(tagName === undefined ? [] : [tagName]), ...tags(children)];
    });
  const plain = site([{ card: tinLoaf, source: '' }], options);
  for (const [index, { path, render }] of files.entries()) {
    if (!path.endsWith('.html')) {
      parseXml(render());
      continue;
    }
    expect(path).toMatch(/^[\p{L}\p{N}\p{M}-]+\.html$/u);
    const count = (html: string, tag: string): number =>
      tags(fromHtml(html).children).filter((name) => name === tag).length;
    for (const tag of ['script', 'style', 'li', 'table'])
      expect(count(render(), tag)).toBe(count(plain[index]?.render() ?? '', tag));
  }
});
