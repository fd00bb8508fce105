import { createRequire } from 'node:module';
import { evaluate } from '@mdx-js/mdx';
import { fromHtml } from 'hast-util-from-html';
import rehypeSanitize from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import remarkStringify from 'remark-stringify';
import type { Element, Root, RootContent } from 'hast';
import { unified } from 'unified';
import { VFile } from 'vfile';
import { describe, expect, test } from 'vitest';
import { HOSTILE } from '../publish/cards.js';
import remarkQuern, { quernSchema, rehypeQuern, rehypeQuernAssets, type RemarkQuernOptions } from 'remark-quern';

const LOAF = `recipe Quay Tin Loaf
keywords rye
gives 2 loaves of 910 g
serves 40 slices

make dough
  1 kg whole rye flour
  80 % water on flour
  2 % fine salt on flour
  hands 8 min until 28 C: Mix to a thick batter in the [2] tins.
  oven 60 min at 220 C: Bake until dark.

variant one loaf
  times 1/2
`;

const FENCE = '```';
const page = (recipe: string, meta = ''): string =>
  `# The Friday loaf\n\nSome words.\n\n${FENCE}quern${meta === '' ? '' : ` ${meta}`}\n${recipe}${FENCE}\n\nMore words.\n`;

interface Made {
  readonly html: string;
  readonly file: VFile;
}

/** A real pipeline, as a static site has it: Markdown in, sanitized HTML with the card's style and script out. */
async function make(markdown: string, options: RemarkQuernOptions = {}): Promise<Made> {
  const file = await unified()
    .use(remarkParse)
    .use(remarkQuern, options)
    .use(remarkRehype)
    .use(rehypeQuern)
    .use(rehypeSanitize, quernSchema)
    .use(rehypeQuernAssets)
    .use(rehypeStringify)
    .process(new VFile({ path: 'posts/loaf.md', value: markdown }));
  return { html: String(file), file };
}

function elements(node: Root | RootContent): Element[] {
  if (node.type !== 'root' && node.type !== 'element') return [];
  return [...(node.type === 'element' ? [node] : []), ...node.children.flatMap(elements)];
}
const found = (html: string): Element[] => elements(fromHtml(html, { fragment: true }));
const withClass = (html: string, name: string): Element[] =>
  found(html).filter(
    ({ properties }) => Array.isArray(properties['className']) && properties['className'].includes(name),
  );
const text = (node: Root | RootContent): string =>
  node.type === 'text'
    ? node.value
    : node.type === 'root' || node.type === 'element'
      ? node.children.map(text).join('')
      : '';
const plain = (html: string): string => text(fromHtml(html, { fragment: true })).replace(/\u00A0/g, ' ');

describe('a fenced block in a real pipeline', () => {
  test('becomes the card, in its place, once, not inside pre', async () => {
    const { html, file } = await make(page(LOAF));
    expect(file.messages.filter(({ fatal }) => fatal === true).map(String)).toEqual([]);
    expect(withClass(html, 'quern-card')).toHaveLength(1);
    expect(html).not.toMatch(/<pre>|<code/);
    const tags = fromHtml(html, { fragment: true }).children.flatMap((node) =>
      node.type === 'element' ? [node.tagName] : [],
    );
    expect(tags).toEqual(['style', 'h1', 'p', 'article', 'p', 'script']);
    expect(plain(html)).toContain('Mix to a thick batter in the 2 tins.');
    expect(plain(html)).toContain('800 g');
  });

  test('what the page needs for scaling passes the sanitizer', async () => {
    const { html } = await make(page(LOAF));
    const amounts = found(html).filter(({ properties }) => properties['dataQuernScale'] !== undefined);
    expect(amounts.length).toBeGreaterThanOrEqual(4);
    for (const { properties } of amounts) expect(() => JSON.parse(String(properties['dataQuernScale']))).not.toThrow();
    expect(withClass(html, 'quern-yield')[0]?.properties['dataQuernYield']).toBe('2');
    // The card is named by its title, whatever prefix the sanitizer puts before ids.
    const [card] = withClass(html, 'quern-card');
    const [title] = withClass(html, 'quern-title');
    expect(card?.properties['ariaLabelledBy']).toEqual([title?.properties['id']]);
  });

  test('without the schema the sanitizer takes the card apart but lets nothing through', async () => {
    const file = await unified()
      .use(remarkParse)
      .use(remarkQuern)
      .use(remarkRehype)
      .use(rehypeQuern)
      .use(rehypeSanitize)
      .use(rehypeStringify)
      .process(page(LOAF));
    expect(String(file)).not.toMatch(/<script|<style|data-quern/);
    expect(plain(String(file))).toContain('Mix to a thick batter');
  });

  test('a page without a recipe gets neither style nor script', async () => {
    const { html } = await make('Only words.\n\n```js\n1\n```\n');
    expect(html).not.toMatch(/<style|<script/);
    expect(html).toContain('<code class="language-js">');
  });

  test('the Markdown tree stays as it was, so it can be written again', async () => {
    const markdown = page(LOAF);
    const file = await unified().use(remarkParse).use(remarkQuern).use(remarkStringify).process(markdown);
    expect(String(file)).toBe(markdown);
  });

  test('two blocks on a page have no id in common', async () => {
    const { html } = await make(page(LOAF) + page(LOAF.replace('Quay', 'Strand')));
    const ids = found(html).flatMap(({ properties }) => (properties['id'] === undefined ? [] : [properties['id']]));
    expect(ids.length).toBeGreaterThanOrEqual(2);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('options', () => {
  test('for all blocks, and for one behind its language word', async () => {
    expect(plain((await make(page(LOAF), { measures: 'us' })).html)).not.toContain('800 g');
    expect(plain((await make(page(LOAF, 'measures=metric'), { measures: 'us' })).html)).toContain('800 g');
    // Half of 1 kg of flour; 80 % of it as water.
    const half = plain((await make(page(LOAF, 'variant="one loaf"'))).html);
    expect(half).toContain('500 g');
    expect(half).toContain('400 g');
    expect(plain((await make(page(LOAF, 'scale="6 loaves"'))).html)).toContain('2400 g');
    expect(plain((await make(page(LOAF, 'scale=1/2'))).html)).toContain('400 g');
    expect(plain((await make(page(LOAF, 'market=us'))).html)).toContain('Sodium');
    expect((await make(page(LOAF), { headingLevel: 3 })).html).toContain('<h3 id="user-content-quern-1-1-title"');
    const still = found((await make(page(LOAF), { scalable: false })).html);
    expect(still.some(({ properties }) => 'dataQuernScale' in properties)).toBe(false);
  });

  test.each([
    ['measures=imperial', /“measures” is both, metric, us, not “imperial”/, false],
    ['colour=red', /“colour” is not an option/, false],
    ['variant=seedless', /there is no variant “seedless” here/, true],
    ['recipe=biscuits', /there is no recipe “biscuits” here/, true],
    ['scale=lots', /“lots” is not a (size|number)/, true],
    ['scale="6 pies"', /makes loaves, not pies/, true],
    ['file=nowhere.quern', /“nowhere.quern” cannot be read/, true],
  ])('%s is refused at the block', async (meta, wanted, fatal) => {
    const { file } = await make(page(LOAF, meta), { read: () => undefined });
    const message = file.messages.find(({ reason }) => wanted.test(reason));
    expect(message).toMatchObject({ line: 5, source: 'quern', fatal });
    expect(message?.note).toBeTruthy();
  });

  test('what other plugins read behind the language word is left to them', async () => {
    const { file } = await make(page(LOAF, '{1,3} showLineNumbers measures=us'));
    expect(file.messages.filter(({ ruleId }) => ruleId === 'option')).toEqual([]);
  });
});

describe('files', () => {
  const read = (path: string): string | undefined =>
    ({ 'recipes/loaf.quern': LOAF, 'posts/bad.quern': LOAF.replace('  oven 60 min at 220 C', '  wait 3 h at warmly') })[
      path
    ];

  test('by file=, or as a picture that has a paragraph to itself', async () => {
    for (const markdown of [
      '```quern file=../recipes/loaf.quern\n```\n',
      '![The loaf](../recipes/loaf.quern "scale=2")\n',
    ]) {
      const { html, file } = await make(markdown, { read });
      expect(file.messages.filter(({ fatal }) => fatal === true)).toEqual([]);
      expect(withClass(html, 'quern-card')).toHaveLength(1);
      expect(html).not.toContain('<img');
    }
    expect(plain((await make('![The loaf](../recipes/loaf.quern "scale=2")\n', { read })).html)).toContain('1600 g');
  });

  test('a picture among words, and a link, stay what they are', async () => {
    const { html } = await make('See ![this](../recipes/loaf.quern) here.\n\n[The loaf](../recipes/loaf.quern)\n', {
      read,
    });
    expect(withClass(html, 'quern-card')).toHaveLength(0);
  });

  test('what is wrong in the file is said at the line that names it, with the place in the file', async () => {
    const { file } = await make('Words.\n\n![x](bad.quern)\n', { read });
    const errors = file.messages.filter(({ fatal }) => fatal === true);
    expect(errors.length).toBeGreaterThan(0);
    for (const error of errors)
      expect(error).toMatchObject({ line: 3, reason: expect.stringMatching(/^posts\/bad\.quern:11:\d+: /) });
  });

  test('a path may not leave where the Markdown lives', async () => {
    const seen: string[] = [];
    const { file } = await make('![x](../../../etc/passwd.quern)\n\n![y](file:///etc/x.quern)\n', {
      read: (path) => {
        seen.push(path);
        return undefined;
      },
    });
    expect(seen).toEqual([]);
    expect(file.messages.filter(({ fatal }) => fatal === true)).toHaveLength(2);
  });

  test('use … from is read beside the Markdown file', async () => {
    const dough = 'recipe Base\ngives 1 kg\n\nmake base\n  600 g wheat flour\n  400 g water\n  hands 5 min: Mix.\n';
    const markdown = page(
      'recipe Flats\nuse base from base.quern\n\nmake flats\n  500 g base\n  hands 5 min: Shape.\n',
    );
    const asked: string[] = [];
    const { file } = await make(markdown, {
      read: (path) => {
        asked.push(path);
        return path === 'posts/base.quern' ? dough : undefined;
      },
    });
    expect(asked).toContain('posts/base.quern');
    expect(file.messages.filter(({ fatal }) => fatal === true).map(String)).toEqual([]);
  });
});

describe('messages stand at the line and column of the Markdown file', () => {
  const broken = LOAF.replace('  oven 60 min at 220 C: Bake until dark.', '  wait 3 h at warmly: Leave.');

  test('in a plain block', async () => {
    const markdown = page(broken);
    const { file } = await make(markdown);
    const error = file.messages.find(({ fatal }) => fatal === true);
    // The page has 5 lines up to the fence; the broken line is the eleventh of the recipe.
    expect(error?.line).toBe(16);
    const line = markdown.split('\n')[(error?.line ?? 1) - 1] ?? '';
    expect(line).toContain('warmly');
    expect(line.slice((error?.column ?? 1) - 1)).toMatch(/^(at )?warmly/);
    expect(error?.ruleId).toMatch(/^L\d\d$/);
    expect(error?.note).toBeTruthy();
  });

  test.each([
    ['in a list', (block: string): string => `- item\n\n${block.replace(/^(?=.)/gm, '  ')}`, 2],
    ['in a quotation', (block: string): string => `> words\n>\n${block.replace(/^/gm, '> ')}`, 2],
  ])('%s', async (_, wrap, ahead) => {
    const markdown = wrap(`${FENCE}quern\n${broken}${FENCE}`);
    const { file } = await make(markdown);
    const error = file.messages.find(({ fatal }) => fatal === true);
    const lines = markdown.split('\n');
    expect(lines[(error?.line ?? 1) - 1]).toContain('warmly');
    expect((lines[(error?.line ?? 1) - 1] ?? '').slice((error?.column ?? 1) - 1)).toMatch(/^(at )?warmly/);
    expect(error?.column).toBeGreaterThan(ahead);
  });

  test('with line ends of two characters', async () => {
    const { file } = await make(page(broken).replaceAll('\n', '\r\n'));
    expect(file.messages.find(({ fatal }) => fatal === true)?.line).toBe(16);
  });

  test('a broken promise is said too', async () => {
    const { file } = await make(page(LOAF.replace('serves 40 slices', 'serves 40 slices\nfree of gluten')));
    const error = file.messages.find(({ ruleId }) => ruleId === 'A01');
    expect(error).toMatchObject({ line: 10, fatal: true });
  });

  test('a block without a recipe stays a block and says so', async () => {
    const { html, file } = await make('```quern\nkeywords lost\n```\n');
    expect(html).toContain('<pre><code');
    expect(file.messages.some(({ reason }) => /no recipe here/.test(reason))).toBe(true);
  });
});

describe('MDX', () => {
  test('the card stands in a page of components', async () => {
    // React is not needed: a runtime of a few lines shows what the components would get.
    type Node = { type: unknown; props: Record<string, unknown> };
    const jsx = (type: unknown, props: Record<string, unknown>): Node => ({ type, props });
    const { default: content } = await evaluate(new VFile({ path: 'posts/loaf.mdx', value: page(LOAF) }), {
      Fragment: 'fragment',
      jsx,
      jsxs: jsx,
      remarkPlugins: [remarkQuern],
      rehypePlugins: [rehypeQuern],
    } as never);
    const nodes: Node[] = [];
    const walk = (node: unknown): void => {
      if (Array.isArray(node)) node.forEach(walk);
      else if (typeof node === 'object' && node !== null && 'props' in node) {
        const element = node as Node;
        nodes.push(element);
        walk(element.props['children']);
      }
    };
    walk((content as (props: object) => unknown)({}));
    const card = nodes.find(({ type }) => type === 'article');
    expect(card?.props).toMatchObject({ className: 'quern-card', lang: 'en', 'data-measures': 'both' });
    expect(nodes.some(({ props }) => typeof props['data-quern-scale'] === 'string')).toBe(true);
    expect(nodes.some(({ type }) => type === 'pre')).toBe(false);
  });
});

test.each(HOSTILE)('ill will stays text in the pipeline: %j', async (evil) => {
  const line = evil.replace(/[\r\n\u2028]+/g, ' ');
  // The name of a food is what stands before a comma or an equals sign; the other lines take any words.
  const name = line.split(/[,=]/, 1)[0] ?? '';
  const recipe = `recipe Loaf\nby ${line}\nsource ${line}\nkeywords ${line}\nphoto ${line}\nnote ${line}\n\nmake dough\n  1 kg rye flour, ${line}\n  20 g ${name}\n  hands 1 min: ${line}\n  tip ${line}\n`;
  const { html } = await make(`~~~~quern\n${recipe}~~~~\n`);
  const [style, ...rest] = found(html);
  expect(style?.tagName).toBe('style');
  expect(rest.filter(({ tagName }) => tagName === 'script')).toHaveLength(1);
  for (const { tagName, properties } of rest) {
    expect(['iframe', 'object', 'embed', 'form', 'style']).not.toContain(tagName);
    expect(Object.keys(properties).filter((name) => /^on/i.test(name))).toEqual([]);
    expect(String(properties['href'] ?? properties['src'] ?? '')).not.toMatch(/^\s*(javascript|data:text|vbscript)/i);
  }
});

test('the package names what it needs', () => {
  const { dependencies } = createRequire(import.meta.url)('../../packages/remark-quern/package.json') as {
    dependencies: Record<string, string>;
  };
  expect(Object.keys(dependencies)).toEqual(
    expect.arrayContaining(['unist-util-visit', 'hast-util-sanitize', '@quern/publish']),
  );
});
