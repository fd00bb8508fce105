/** The pages of the project: every link leads somewhere, and every page can be reached from the index. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
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

/** The relative links of a page, as paths from the root. */
function linksOf(page: string): string[] {
  const links: string[] = [];
  visit(
    unified()
      .use(remarkParse)
      .parse(readFileSync(join(root, page), 'utf8')),
    (node) => {
      if (node.type !== 'link' && node.type !== 'image' && node.type !== 'definition') return;
      const target = node.url.replace(/#.*$/, '');
      if (target === '' || /^[a-z]+:/i.test(target)) return;
      links.push(relative(root, resolve(root, dirname(page), decodeURI(target))));
    },
  );
  return links;
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
