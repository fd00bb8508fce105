import type { CardData } from '@quern/views';
import { cardHtml } from '../card/card-page.js';
import type { CardOptions } from '../card/card-tree.js';
import { fileName } from '../escape.js';
import { atomFeed, siteMap } from '../feed/feed.js';
import { element } from '../html/tree.js';
import { bookPage } from './book.js';
import { indexPage } from './index-page.js';

/** A card and the file it comes from, for messages and for what follows when the file changes. */
export interface SiteCard {
  readonly card: CardData;
  readonly source: string;
  /** When the card last changed, for the feed and the site map: ISO 8601 date or moment; else the date of the card. */
  readonly changed?: string;
}

export interface SiteOptions extends Pick<CardOptions, 'measures' | 'words' | 'photo'> {
  readonly title: string;
  readonly author: string;
  readonly language: string;
  /** Where the site will stand, `https://…/`. Without it there is no feed and no site map: both name whole addresses. */
  readonly address?: string;
  /** ISO 8601 date or moment for cards of which it is not known when they changed. */
  readonly made: string;
  /** Style sheet text after ours. */
  readonly theme?: string;
}

/** A file of the site, not yet rendered: whoever writes it may see that nothing it is made from has changed. */
export interface SiteFile {
  readonly path: string;
  /** All that the content depends on, as text; the same text gives the same content. */
  readonly inputs: string;
  readonly render: () => string;
}

/** A card with its place on the site. */
export interface SitePage extends SiteCard {
  /** File name on the site. */
  readonly path: string;
}

const NAMES_OF_OURS = ['index', 'book', 'feed', 'sitemap'];

/** The name of each card's page: made from its title, told apart by numbers where two titles make one name. */
export function sitePages(cards: readonly SiteCard[]): readonly SitePage[] {
  const taken = new Set(NAMES_OF_OURS);
  return cards.map((entry) => {
    const { title, variant } = entry.card;
    const name = fileName(variant === undefined ? title : `${title} ${variant}`);
    let free = name;
    for (let number = 2; taken.has(free); number++) free = `${name}-${number}`;
    taken.add(free);
    return { ...entry, path: `${free}.html` };
  });
}

/** The site of a list of cards: a page for each, an index with search, a print book, and a feed and site map where it has an address. */
export function site(cards: readonly SiteCard[], options: SiteOptions): readonly SiteFile[] {
  const pages = sitePages(cards);
  const address = options.address === undefined ? undefined : options.address.replace(/\/*$/, '/');
  const { made, ...look } = options;
  const common = JSON.stringify({ ...look, address });
  // The photographs' addresses are decided by a function; what it answers is part of the inputs.
  const photos = (list: readonly SitePage[]): string =>
    JSON.stringify(list.map(({ card }) => card.photo && options.photo?.(card.photo.path)));
  const file = (path: string, list: readonly SitePage[], render: () => string): SiteFile => ({
    path,
    inputs: [
      path,
      common,
      path.endsWith('.xml') ? made : '',
      photos(list),
      JSON.stringify(list.map((page) => [page.path, page.card, path.endsWith('.xml') ? page.changed : undefined])),
    ].join('\n'),
    render,
  });
  const listed = pages.map((page) => ({
    card: page.card,
    address: (address ?? '') + encodeURIComponent(page.path),
    changed: page.changed ?? page.card.date ?? made,
  }));
  return [
    ...pages.map((page) => file(page.path, [page], () => cardPage(page, options, address))),
    file('index.html', pages, () => indexPage(pages, options)),
    file('book.html', pages, () => bookPage(pages, options)),
    ...(address === undefined
      ? []
      : [
          file('feed.xml', pages, () => atomFeed(listed, { ...options, address })),
          file('sitemap.xml', pages, () =>
            siteMap([
              { address },
              { address: `${address}book.html` },
              ...listed.map((entry) => ({ address: entry.address, changed: entry.changed })),
            ]),
          ),
        ]),
  ];
}

function cardPage(page: SitePage, options: SiteOptions, address: string | undefined): string {
  const { measures, words, photo, theme } = options;
  return cardHtml(page.card, {
    ...(measures ? { measures } : {}),
    ...(words ? { words } : {}),
    ...(photo ? { photo } : {}),
    ...(theme === undefined ? {} : { theme }),
    ...(address === undefined ? {} : { address: address + encodeURIComponent(page.path) }),
    before: [
      element(
        'nav',
        { className: ['quern-nav'], ariaLabel: options.title },
        element('a', { href: 'index.html' }, options.title),
      ),
    ],
  });
}
