import type { CardAmount, CardData } from '@quern/views';
import { pictureAddress, safeAddress } from '../escape.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { makeSection } from './make-section.js';
import { endSections } from './end-sections.js';
import { amountIn, duration, isRightToLeft, label, saidCount, type Setting } from './setting.js';
import { englishWords, type CardWords } from './words.js';

export interface CardOptions {
  /** Which measures stand on the page; both by default. */
  readonly measures?: 'both' | 'metric' | 'us';
  /** The card's own words, for a page in another language. */
  readonly words?: CardWords;
  /** Level of the title; 2 by default, because a card stands in a page that has a title. */
  readonly headingLevel?: 1 | 2 | 3 | 4;
  /** Begins every id on the card; two cards on a page need two. */
  readonly idPrefix?: string;
  /** Address to show for the photograph as written; undefined to leave it out. By default the path itself. */
  readonly photo?: (path: string) => string | undefined;
  /** Whether the page can be scaled; true by default. It takes the script of the card as well. */
  readonly scalable?: boolean;
}

/** The card as a tree of elements: `article.quern-card`. */
export function cardTree(card: CardData, options: CardOptions = {}): ElementNode {
  const words = options.words ?? englishWords;
  const setting: Setting = {
    words,
    measures: options.measures ?? 'both',
    level: options.headingLevel ?? 2,
    prefix: options.idPrefix ?? 'quern',
    scalable: options.scalable ?? true,
    foreign: words.language !== card.language,
  };
  const titleId = `${setting.prefix}-title`;
  return element(
    'article',
    {
      className: ['quern-card'],
      lang: card.language,
      dir: isRightToLeft(card.language) ? 'rtl' : 'ltr',
      ariaLabelledBy: titleId,
      dataMeasures: setting.measures,
      ...(setting.scalable
        ? { dataQuernNotNumber: words.notANumber, dataQuernShowMetric: words.showMetric, dataQuernShowUs: words.showUs }
        : {}),
    },
    element(
      'header',
      { className: ['quern-head'] },
      heading(card, setting, titleId),
      photo(card, setting, options.photo ?? ((path) => path)),
      problems(card, setting),
      card.introduction.map((note) => element('p', { className: ['quern-introduction'], dir: 'auto' }, note)),
      facts(card, setting),
      allergens(card, setting),
    ),
    card.makes.map((make) => makeSection(make, card, setting)),
    endSections(card, setting),
  );
}

function heading(card: CardData, setting: Setting, id: string): Child {
  const by = card.by.join(', ');
  return [
    element(
      `h${setting.level}`,
      { id, className: ['quern-title'], dir: 'auto' },
      card.title,
      card.variant !== undefined && element('span', { className: ['quern-variant-name'] }, ` (${card.variant})`),
    ),
    by !== '' &&
      element('p', { className: ['quern-by'] }, label(setting, setting.words.by), ' ', element('bdi', {}, by)),
  ];
}

function photo(card: CardData, setting: Setting, resolve: (path: string) => string | undefined): Child {
  if (!card.photo) return undefined;
  const alternative = card.photo.alternative ?? `${setting.words.photo} ${card.title}`;
  const address = resolve(card.photo.path);
  if (address === undefined) return undefined;
  const picture = pictureAddress(address);
  if (picture !== undefined) return element('img', { className: ['quern-photo'], src: picture, alt: alternative });
  // A picture elsewhere is not fetched: the page asks nobody for anything. It can be followed.
  const link = safeAddress(address);
  return link === undefined
    ? undefined
    : element('p', { className: ['quern-quiet'] }, element('a', { href: link, rel: ['noreferrer'] }, alternative));
}

function problems(card: CardData, setting: Setting): Child {
  const errors = card.problems.filter((problem) => problem.severity === 'error');
  if (errors.length === 0) return undefined;
  return element(
    'div',
    { className: ['quern-problems'], role: 'note' },
    element('p', {}, label(setting, setting.words.problems)),
    element(
      'ul',
      {},
      errors.map((problem) =>
        element(
          'li',
          { lang: 'en', dir: 'ltr' },
          `${setting.words.line} ${problem.line}: ${problem.text} (${problem.code}): ${problem.help}`,
        ),
      ),
    ),
  );
}

function facts(card: CardData, setting: Setting): Child {
  const { words } = setting;
  const fact = (name: string, ...value: Child[]): Child =>
    element('div', {}, element('dt', {}, label(setting, name)), element('dd', { dir: 'auto' }, ...value));
  const time = (name: string, minutes: CardData['times']['total']): Child => minutes && fact(name, duration(minutes));
  const amount = (name: string, value: CardAmount | undefined): Child => value && fact(name, amountIn(value, setting));
  return element(
    'dl',
    { className: ['quern-facts'] },
    yieldFact(card, setting),
    amount(words.serves, card.yield.serves),
    amount(words.vessel, card.yield.vessel),
    time(words.handsOn, card.times.handsOn),
    time(words.total, card.times.total),
    card.times.begin !== undefined && fact(words.begin, card.times.begin),
  );
}

/** The field that scales the page: without the script it is a fact like the others. */
function yieldFact(card: CardData, setting: Setting): Child {
  const { thing, count, each, total } = card.yield;
  const name = thing === 'batches' ? setting.words.batches : thing;
  const scaled = setting.words.scaled.replace('{yield}', `${saidCount(count)} ${name}`);
  return element(
    'div',
    {
      className: ['quern-yield'],
      ...(setting.scalable ? { dataQuernYield: count, dataQuernScaled: [scaled, ...card.fixed].join(' ') } : {}),
    },
    element('dt', {}, element('bdi', { className: ['quern-yield-name'] }, capital(name))),
    element(
      'dd',
      {},
      element('span', { className: ['quern-yield-count'] }, saidCount(count)),
      each && [
        ' ',
        element(
          'span',
          { className: ['quern-quiet'] },
          label(setting, setting.words.ofEach),
          ' ',
          amountIn(each, setting),
        ),
      ],
      total && [' ', element('span', { className: ['quern-quiet'] }, amountIn(total, setting))],
    ),
  );
}

const capital = (text: string): string => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

function allergens(card: CardData, setting: Setting): Child {
  const found = card.allergens;
  if (!found) return undefined;
  const { words } = setting;
  const line = (name: string, items: readonly string[]): Child =>
    items.length > 0 &&
    element('p', {}, element('b', {}, label(setting, name)), ' ', element('bdi', { lang: 'en' }, items.join('; ')));
  return element(
    'div',
    { className: ['quern-allergens'], role: 'group', ariaLabel: words.allergens },
    line(`${words.contains}:`, found.contains),
    line(
      `${words.mayContain}:`,
      found.mayContain.map((item) => `${item.name} (${item.because})`),
    ),
    line(`${words.cannotSay}:`, found.unknown),
  );
}
