import type { CardData } from '@quern/views';
import { cardTree } from '../card/card-tree.js';
import { toHtml } from '../html/tree.js';
import { xml, xmlDocument, type XmlElement } from './xml.js';

/** A page that a feed or a site map tells of. */
export interface FeedEntry {
  readonly card: CardData;
  /** Address of its page, whole: it is also what the entry is known by for ever. */
  readonly address: string;
  /** When it last changed: ISO 8601 date or moment. */
  readonly changed: string;
}

export interface FeedOptions {
  readonly title: string;
  /** Address of the site, ending in `/`. */
  readonly address: string;
  readonly author: string;
  readonly language: string;
  /** The moment an empty feed was made: ISO 8601 date or moment. */
  readonly made: string;
}

/** RFC 3339: a date without a time is its first moment, in universal time. */
const moment = (date: string): string => (/^\d{4}-\d{2}-\d{2}$/.test(date) ? `${date}T00:00:00Z` : date);

/** An Atom feed (RFC 4287) of the cards, the newest first. The cards stand in it whole, without their script. */
export function atomFeed(entries: readonly FeedEntry[], options: FeedOptions): string {
  const dated = entries.map((entry) => ({ ...entry, updated: moment(entry.changed) }));
  const sorted = dated.toSorted((a, b) => (a.updated === b.updated ? 0 : a.updated < b.updated ? 1 : -1));
  return xmlDocument(
    xml(
      'feed',
      { xmlns: 'http://www.w3.org/2005/Atom', 'xml:lang': options.language },
      xml('id', {}, options.address),
      xml('title', {}, options.title),
      xml('updated', {}, sorted[0]?.updated ?? moment(options.made)),
      xml('author', {}, xml('name', {}, options.author)),
      xml('link', { rel: 'self', type: 'application/atom+xml', href: `${options.address}feed.xml` }),
      xml('link', { rel: 'alternate', type: 'text/html', href: options.address }),
      ...sorted.map(entryElement),
    ),
  );
}

function entryElement({ card, address, updated }: FeedEntry & { readonly updated: string }): XmlElement {
  const title = card.variant === undefined ? card.title : `${card.title} (${card.variant})`;
  const [summary] = card.introduction;
  return xml(
    'entry',
    { 'xml:lang': card.language },
    xml('id', {}, address),
    xml('title', {}, title),
    xml('updated', {}, updated),
    ...card.by.map((name) => xml('author', {}, xml('name', {}, name))),
    ...card.keywords.map((term) => xml('category', { term })),
    xml('link', { rel: 'alternate', type: 'text/html', href: address }),
    summary === undefined ? undefined : xml('summary', {}, summary),
    xml(
      'content',
      { type: 'html' },
      toHtml(cardTree(card, { scalable: false, photo: (path) => beside(path, address) })),
    ),
  );
}

/** A path as the page at `address` means it, made whole for a reader that stands elsewhere. */
function beside(path: string, address: string): string {
  return /^[a-z][a-z0-9+.-]*:|^\//i.test(path) ? path : address.replace(/[^/]*$/, '') + path;
}

/** A site map (sitemaps.org, 0.9) of the pages. */
export function siteMap(pages: readonly { readonly address: string; readonly changed?: string | undefined }[]): string {
  const urls = pages.map(({ address, changed }) =>
    xml('url', {}, xml('loc', {}, address), changed === undefined ? undefined : xml('lastmod', {}, changed)),
  );
  return xmlDocument(xml('urlset', { xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9' }, ...urls));
}
