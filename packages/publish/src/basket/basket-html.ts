import type { BasketData, BasketItem } from '@quern/views';
import { htmlPage } from '../card/card-page.js';
import { typesetFigure } from '../card/typeset.js';
import { element, type ElementNode } from '../html/tree.js';
import { sheetStyle } from '../sheet/sheet-style.js';
import { listLine, ownedLines, recipeLines } from './said.js';

/** The shopping list as a page of its own: one file, no script, no request to anybody. */
export function basketHtml(data: BasketData, language = 'en'): string {
  return htmlPage({
    title: 'Shopping list',
    language,
    style: sheetStyle,
    scriptHashes: [],
    body: [element('main', {}, basketTree(data))],
  });
}

/** The list as a tree, to stand in another page. */
export function basketTree(data: BasketData): ElementNode {
  return element(
    'article',
    { className: 'quern-basket' },
    element('h1', {}, 'Shopping list'),
    element('ul', {}, ...recipeLines(data).map((line) => element('li', {}, `for ${line}`))),
    ...data.shelves.map(({ name, items }) =>
      element(
        'section',
        {},
        element('h2', {}, name),
        element('table', {}, element('tbody', {}, ...items.map((item) => itemTree(item, data)))),
      ),
    ),
    data.owned.length > 0 &&
      element(
        'section',
        {},
        element('h2', {}, 'at hand'),
        element('ul', {}, ...ownedLines(data).map((line) => element('li', {}, line))),
      ),
    data.warnings.length > 0 &&
      element(
        'section',
        { className: 'quern-watch' },
        element('h2', {}, 'What to watch'),
        element('ul', {}, ...data.warnings.map((text) => element('li', {}, text))),
      ),
  );
}

function itemTree(item: BasketItem, data: BasketData): ElementNode {
  const line = listLine(item, data);
  return element(
    'tr',
    {},
    element('td', { className: 'quern-weight' }, typesetFigure(line.amount)),
    element(
      'th',
      { scope: 'row', className: 'quern-what' },
      line.name,
      line.more.length > 0 && element('span', { className: 'quern-note' }, `; ${line.more.join('; ')}`),
    ),
    data.measures === 'both' && element('td', { className: 'quern-us' }, typesetFigure(line.us)),
  );
}
