import { htmlPage, pageStyle } from '../card/card-page.js';
import { cardStyle } from '../card/card-style.js';
import { cardTree } from '../card/card-tree.js';
import { element } from '../html/tree.js';
import type { SiteOptions, SitePage } from './site.js';
import { siteStyle } from './site-style.js';

/** All cards on one page, each on a new sheet when printed, behind a list of contents. */
export function bookPage(pages: readonly SitePage[], options: SiteOptions): string {
  const { measures, words, photo } = options;
  const anchor = (index: number): string => `recipe-${index + 1}`;
  return htmlPage({
    title: options.title,
    language: options.language,
    style: [pageStyle, cardStyle, siteStyle].join('\n'),
    theme: options.theme,
    scriptHashes: [],
    body: [
      element(
        'main',
        { className: ['quern-book'] },
        element(
          'div',
          { className: ['quern-site'] },
          element('h1', { dir: 'auto' }, options.title),
          element('p', { className: ['quern-links'] }, element('a', { href: 'index.html' }, 'Index')),
          element(
            'ol',
            { className: ['quern-contents'] },
            pages.map(({ card }, index) =>
              element(
                'li',
                { lang: card.language },
                element(
                  'a',
                  { href: `#${anchor(index)}-title`, dir: 'auto' },
                  card.title,
                  card.variant !== undefined && ` (${card.variant})`,
                ),
              ),
            ),
          ),
        ),
        pages.map(({ card }, index) =>
          cardTree(card, {
            ...(measures ? { measures } : {}),
            ...(words ? { words } : {}),
            ...(photo ? { photo } : {}),
            idPrefix: anchor(index),
            scalable: false,
          }),
        ),
      ),
    ],
  });
}
