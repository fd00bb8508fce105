import type { CardAmount, CardTemperature, ExactRange } from '@quern/views';
import { divide, exact, less, printCount, rational, round } from '@quern/quantity';
import { asciiJson } from '../escape.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { typesetFigure } from './typeset.js';
import type { CardWords } from './words.js';

/** What the parts of a card need to know of the whole. */
export interface Setting {
  readonly words: CardWords;
  readonly measures: 'both' | 'metric' | 'us';
  /** Level of the title; headings below it count on. */
  readonly level: number;
  readonly prefix: string;
  readonly scalable: boolean;
  /** The card's own words are in another language than the recipe. */
  readonly foreign: boolean;
}

/** A word of the card's own, marked with its language where the recipe's is another. */
export function label(setting: Setting, text: string): Child {
  return setting.foreign ? element('bdi', { lang: setting.words.language }, text) : text;
}

/** The heading `below` levels under the title. */
export function headingTag(setting: Setting, below: number): string {
  return `h${Math.min(6, setting.level + below)}`;
}

/** Languages and scripts written from right to left (Unicode CLDR, layout orientation). */
const RIGHT_TO_LEFT =
  /^(?:ar|arc|ckb|dv|fa|he|iw|ks|ps|sd|syr|ug|ur|yi)(?:-|$)|-(?:Arab|Hebr|Syrc|Thaa|Nkoo|Adlm)(?:-|$)/i;

export function isRightToLeft(language: string): boolean {
  return RIGHT_TO_LEFT.test(language) && !/-Latn(?:-|$)/i.test(language);
}

/**
 * What the script needs to print an amount at another size, for the element that holds its two measures
 * (`.quern-m`, `.quern-u`) or the one text for both (`.quern-same`).
 */
export function scaleProperties(amount: CardAmount, setting: Setting): { dataQuernScale?: string } {
  return setting.scalable && amount.scale ? { dataQuernScale: asciiJson(amount.scale) } : {};
}

/** An amount in a sentence: both measures, the second in brackets; one where they are the same; words ahead of both. */
export function amountIn(amount: CardAmount, setting: Setting): ElementNode {
  const { words, metric, us } = amount;
  const properties = { className: ['quern-amount'], ...scaleProperties(amount, setting) };
  const inside = (...figures: Child[]): ElementNode =>
    words === undefined ? element('bdi', properties, figures) : element('bdi', properties, `${words} (`, figures, ')');
  if (metric === us) return inside(figure('quern-same', metric));
  if (setting.measures === 'metric') return inside(figure('quern-m', metric));
  if (setting.measures === 'us') return inside(figure('quern-u', us));
  const between = (text: string): ElementNode => element('span', { className: ['quern-between'] }, text);
  const [open, close] = words === undefined ? [' (', ')'] : ['; ', ''];
  return inside(figure('quern-m', metric), between(open), figure('quern-u', us), between(close));
}

/** A figure that a page may print anew at another size. */
function figure(className: string, text: string): ElementNode {
  return element('bdi', { className: ['quern-figure', className] }, typesetFigure(text));
}

/** A temperature in both scales: `24 °C / 75 °F`. */
export function temperature(value: CardTemperature, setting: Setting): Child {
  const celsius = element('span', { className: ['quern-nowrap'] }, typesetFigure(value.celsius));
  const fahrenheit = element('span', { className: ['quern-nowrap'] }, typesetFigure(value.fahrenheit));
  if (setting.measures === 'metric') return celsius;
  if (setting.measures === 'us') return fahrenheit;
  return [celsius, ' / ', fahrenheit];
}

/** The figure of the yield as a cook writes it: `2`, `1 1/2`. */
export const saidCount = (count: string): string => printCount(exact(count));

const DAY = 1440n;
const HOUR = 60n;

/** Minutes as a reader says them: `25 min`, `1 h 30 min`, `2 d 4 h`; from a day on to the hour, from a week on to the day. */
export function duration(minutes: ExactRange): string {
  const low = durationText(minutes.low);
  const high = durationText(minutes.high);
  return low === high ? low : `${low} \u2013 ${high}`;
}

function durationText(exactMinutes: string): string {
  const minutes = exact(exactMinutes);
  const step = less(minutes, rational(DAY)) ? 1n : less(minutes, rational(7n * DAY)) ? HOUR : DAY;
  const total = round(divide(minutes, rational(step))) * step;
  const parts: readonly [bigint, string][] = [
    [total / DAY, 'd'],
    [(total % DAY) / HOUR, 'h'],
    [total % HOUR, 'min'],
  ];
  const said = parts.filter(([number]) => number > 0n).map(([number, unit]) => `${number}\u00A0${unit}`);
  return said.length === 0 ? '0\u00A0min' : said.join(' ');
}
