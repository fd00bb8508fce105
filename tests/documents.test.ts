/** The pages of the project: every link leads somewhere, and every page can be reached from the index. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..');

/** Pages that a reader may open: those at the top, those of docs/, and those beside the code. */
const pages = [
  ...markdownIn('.', false),
  ...markdownIn('docs', true),
  ...markdownIn('grammar', true),
  ...markdownIn('tests', false),
  'tests/published/README.md',
  ...readdirSync(join(root, 'packages')).flatMap((name) => markdownIn(join('packages', name), false)),
];

function markdownIn(folder: string, deep: boolean): string[] {
  return readdirSync(join(root, folder), { recursive: deep, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .map((name) => relative(root, join(root, folder, name)));
}

interface MarkdownNode {
  readonly type: string;
  readonly url?: string;
  readonly children?: readonly MarkdownNode[];
}

function* addressesIn(node: MarkdownNode): Iterable<string> {
  if (node.url !== undefined) yield node.url;
  for (const child of node.children ?? []) yield* addressesIn(child);
}

/** The relative links of a page, as paths from the root. */
function linksOf(page: string): string[] {
  const tree = unified()
    .use(remarkParse)
    .parse(readFileSync(join(root, page), 'utf8'));
  return [...addressesIn(tree)]
    .map((address) => address.replace(/#.*$/, ''))
    .filter((address) => address !== '' && !/^[a-z]+:/i.test(address))
    .map((address) => relative(root, resolve(root, dirname(page), decodeURI(address))));
}

test('every link of every page leads to a file or a folder', () => {
  expect(pages.length).toBeGreaterThan(20);
  const broken = pages.flatMap((page) =>
    linksOf(page)
      .filter((target) => !existsSync(join(root, target)))
      .map((target) => `${page} links to ${target}`),
  );
  expect(broken).toEqual([]);
});

test('every page of docs/ can be reached from the index', () => {
  const seen = new Set<string>();
  const follow = (page: string): void => {
    if (seen.has(page) || !page.endsWith('.md') || !existsSync(join(root, page))) return;
    seen.add(page);
    if (statSync(join(root, page)).isFile()) linksOf(page).forEach(follow);
  };
  follow('docs/README.md');
  expect(pages.filter((page) => page.startsWith('docs/') && !seen.has(page))).toEqual([]);
});
