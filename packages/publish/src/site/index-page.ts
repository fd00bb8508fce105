import { exact, floor, negate } from '@quern/quantity';
import type { CardData } from '@quern/views';
import { htmlPage, pageStyle, rawScript } from '../card/card-page.js';
import { duration, isRightToLeft } from '../card/setting.js';
import { asciiJson, oneLine } from '../escape.js';
import { siteScript, siteScriptHash } from '../generated/site-script.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import type { SiteOptions, SitePage } from './site.js';
import { siteStyle } from './site-style.js';

/** What the index knows of a card to search by. */
export interface SearchFacts {
  /** All words to search, in lower case. */
  readonly text: string;
  readonly tags: readonly string[];
  /** What it contains or may contain, in the market's words. */
  readonly allergens: readonly string[];
  /** Whether the label could say all: where it could not, the card may contain anything. */
  readonly labelled: boolean;
  /** Longest time in all, in minutes; missing when it is not known. */
  readonly minutes?: number;
}

/** The times one may ask for, in minutes, with their words. */
const TIMES: readonly (readonly [number, string])[] = [
  [30, '30 min'],
  [60, '1 h'],
  [180, '3 h'],
  [1440, '1 day'],
  [4320, '3 days'],
];

function searchFacts(card: CardData): SearchFacts {
  const words = [
    card.title,
    card.variant ?? '',
    ...card.by,
    ...card.keywords,
    ...card.introduction,
    ...card.makes.flatMap((make) => [
      make.name,
      ...make.ingredients.flatMap((item) => [item.name, ...item.alternatives.map(({ name }) => name)]),
    ]),
  ];
  const { allergens } = card;
  const total = card.times.total && wholeMinutes(card.times.total.high);
  return {
    text: oneLine(words.join(' ')).toLowerCase(),
    tags: card.keywords.map((word) => word.toLowerCase()),
    allergens: allergens ? [...allergens.contains, ...allergens.mayContain.map(({ name }) => name)] : [],
    labelled: allergens !== undefined && allergens.unknown.length === 0,
    ...(total === undefined ? {} : { minutes: total }),
  };
}

/** The next whole minute: for comparing with the times one may ask for. */
const wholeMinutes = (minutes: string): number => Number(-floor(negate(exact(minutes))));

/** The page that finds a recipe: a plain list, and with its script a search that works without a network. */
export function indexPage(pages: readonly SitePage[], options: SiteOptions): string {
  const facts = pages.map(({ card }) => searchFacts(card));
  const links: Child[] = [
    element('a', { href: 'book.html' }, 'Print book'),
    options.address !== undefined && [' · ', element('a', { href: 'feed.xml', type: 'application/atom+xml' }, 'Feed')],
  ];
  return htmlPage({
    title: options.title,
    language: options.language,
    style: [pageStyle, siteStyle].join('\n'),
    theme: options.theme,
    scriptHashes: [siteScriptHash],
    head:
      options.address === undefined
        ? []
        : [
            element('link', {
              rel: ['alternate'],
              type: 'application/atom+xml',
              href: 'feed.xml',
              title: options.title,
            }),
          ],
    body: [
      element(
        'main',
        { className: ['quern-site'] },
        element('h1', { dir: 'auto' }, options.title),
        element('p', { className: ['quern-links'] }, links),
        searchForm(facts),
        element('p', { className: ['quern-found'], role: 'status' }),
        element(
          'ul',
          { className: ['quern-list'] },
          pages.map((page, index) => listItem(page, facts[index])),
        ),
      ),
      rawScript(undefined, siteScript),
    ],
  });
}

const byName = (names: readonly string[]): string[] => [...new Set(names)].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));

function searchForm(facts: readonly SearchFacts[]): ElementNode {
  const choice = (name: string, id: string, first: string, options: readonly (readonly [string, string])[]): Child =>
    options.length > 0 &&
    element(
      'label',
      {},
      name,
      element(
        'select',
        { dataSearch: id },
        element('option', { value: '' }, first),
        options.map(([value, text]) => element('option', { value }, text)),
      ),
    );
  const same = (text: string): readonly [string, string] => [text, text];
  return element(
    'div',
    { className: ['quern-search'], role: 'search' },
    element('label', {}, 'Search', element('input', { type: 'search', dataSearch: 'text', autocomplete: 'off' })),
    choice('Tag', 'tag', 'any', byName(facts.flatMap(({ tags }) => tags)).map(same)),
    choice(
      'Leave out what has or may have',
      'allergen',
      'nothing',
      byName(facts.flatMap(({ allergens }) => allergens)).map(same),
    ),
    choice(
      'Ready within',
      'time',
      'any time',
      TIMES.map(([minutes, text]) => [String(minutes), text] as const),
    ),
  );
}

function listItem({ card, path }: SitePage, facts: SearchFacts | undefined): ElementNode {
  const [introduction] = card.introduction;
  const total = card.times.total && duration(card.times.total);
  const line = [total, card.keywords.join(', ')].filter((part) => part !== undefined && part !== '').join(' · ');
  return element(
    'li',
    { lang: card.language, dir: isRightToLeft(card.language) ? 'rtl' : 'ltr', dataCard: asciiJson(facts) },
    element(
      'a',
      { href: encodeURIComponent(path), dir: 'auto' },
      card.title,
      card.variant !== undefined && ` (${card.variant})`,
    ),
    introduction !== undefined && element('p', { dir: 'auto' }, introduction),
    line !== '' && element('p', { className: ['quern-facts-line'], dir: 'auto' }, line),
  );
}
