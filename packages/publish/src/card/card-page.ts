import type { CardData } from '@quern/views';
import { jsonInScript } from '../escape.js';
import { cardScript, cardScriptHash } from '../generated/card-script.js';
import { element, toHtml, type Child, type ElementNode } from '../html/tree.js';
import { cardJsonLd } from '../json-ld/json-ld.js';
import { cardStyle } from './card-style.js';
import { cardTree, type CardOptions } from './card-tree.js';
import { siteStyle } from '../site/site-style.js';
import { isRightToLeft } from './setting.js';

export interface CardPageOptions extends CardOptions {
  /** Address of the page, for the linked data and for other pages to name it by. */
  readonly address?: string;
  /** Style sheet text that follows the card's own: a theme. */
  readonly theme?: string;
  /** What stands above the card: the way back to an index. */
  readonly before?: readonly ElementNode[];
}

/**
 * Text of a theme that cannot end the style element it stands in.
 * @throws RangeError when it would.
 */
function themeText(theme: string): string {
  if (/<\/?style|<!--/i.test(theme))
    throw new RangeError('a theme is a style sheet; it cannot hold a style tag or an HTML comment');
  return theme;
}

/** What a page of ours may do: show itself. It asks no other machine for anything, and runs no script but the card's. */
function contentPolicy(...scriptHashes: readonly string[]): string {
  const scripts = scriptHashes.length === 0 ? "'none'" : scriptHashes.map((hash) => `'${hash}'`).join(' ');
  return `default-src 'none'; img-src 'self' data: file:; style-src 'unsafe-inline'; script-src ${scripts}; base-uri 'none'; form-action 'none'`;
}

/** The frame of every page: head, policy, style. The body is given. */
export function htmlPage(page: {
  readonly title: string;
  readonly language: string;
  readonly description?: string | undefined;
  readonly style: string;
  readonly theme?: string | undefined;
  readonly scriptHashes: readonly string[];
  readonly head?: readonly Child[];
  readonly body: readonly Child[];
}): string {
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    element('meta', { httpEquiv: 'Content-Security-Policy', content: contentPolicy(...page.scriptHashes) }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('meta', { name: 'referrer', content: 'no-referrer' }),
    element('title', {}, page.title),
    page.description !== undefined && element('meta', { name: 'description', content: page.description }),
    element('style', {}, page.theme === undefined ? page.style : `${page.style}\n${themeText(page.theme)}`),
    page.head,
  );
  const direction = isRightToLeft(page.language) ? 'rtl' : 'ltr';
  const body = element('body', {}, ...page.body);
  return `<!doctype html>\n${toHtml(element('html', { lang: page.language, dir: direction }, head, body))}\n`;
}

/** The ground on which a card lies when it has a page to itself. */
export const pageStyle = `
html{background:var(--quern-paper,#fdfcf9);-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0}
@media (prefers-color-scheme:dark){html:not([data-quern-theme=light]){background:var(--quern-dark-paper,#181a1a)}}
html[data-quern-theme=dark]{background:var(--quern-dark-paper,#181a1a)}
@media print{html{background:#fff!important}}
@page{margin:14mm}
`.trim();

/** The card as a page of its own: one file, no request to anybody. */
export function cardHtml(card: CardData, options: CardPageOptions = {}): string {
  const scalable = options.scalable ?? true;
  const address = options.address === undefined ? {} : { address: options.address };
  return htmlPage({
    title: card.variant === undefined ? card.title : `${card.title} (${card.variant})`,
    language: card.language,
    description: card.introduction[0],
    style: [pageStyle, cardStyle, ...(options.before ? [siteStyle] : [])].join('\n'),
    theme: options.theme,
    scriptHashes: scalable ? [cardScriptHash] : [],
    head: [rawScript('application/ld+json', jsonInScript(cardJsonLd(card, address)))],
    body: [
      options.before,
      element('main', {}, cardTree(card, { headingLevel: 1, ...options })),
      scalable && rawScript(undefined, cardScript),
    ],
  });
}

/** A script element; its text is ours or comes from `jsonInScript`, and is not escaped. */
export function rawScript(type: string | undefined, text: string): Child {
  return {
    type: 'element',
    tagName: 'script',
    properties: type === undefined ? {} : { type },
    children: [{ type: 'text', value: text }],
  };
}
