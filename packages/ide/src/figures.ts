import {
  divide,
  HUNDRED,
  isSingle,
  KITCHEN_SCALE,
  multiply,
  printDecimal,
  printMinutes,
  printMinutesRange,
  showGrams,
  type Interval,
  type Rational,
} from '@quern/quantity';
import type { Formula } from '@quern/compiler';

/* How the editor shows figures: plain marks, as the file writes them. */

/** `210 g`, `1.25 kg`, as a kitchen scale shows it. */
export const gramsText = (grams: Rational): string => showGrams(grams, KITCHEN_SCALE).text;

/** `12.5 %` of a share from 0 to 1. */
export const shareText = (share: Rational, places = 1): string => `${printDecimal(multiply(share, HUNDRED), places)} %`;

/** `12.5 %` of part over whole. */
export const percentOf = (part: Rational, whole: Rational, places = 1): string =>
  shareText(divide(part, whole), places);

/** `14 h 20 min`, `14-20 h`. */
export const minutesText = (range: Interval): string =>
  isSingle(range) ? printMinutes(range.low) : printMinutesRange(range);

/** `2 loaves`, `16 crescents`, `1 piece`: what a recipe gives, in its own word for it where there is one. */
export function piecesText(formula: Formula): string | undefined {
  const { pieces, facts, variant } = formula;
  if (pieces === undefined || pieces.n <= 0n) return undefined;
  const one = pieces.n === pieces.d;
  // A variant that scales keeps the word of the base, which may be the wrong number of it.
  const thing = variant === undefined ? facts.gives?.content.thing?.text : undefined;
  return `${printDecimal(pieces, 2)} ${thing ?? (one ? 'piece' : 'pieces')}`;
}

const MARKDOWN = /[\\`*_{}[\]<>#|~]/g;

/** Words of a file inside Markdown: marks that Markdown would read are made plain. */
export const escapeMarkdown = (text: string): string => text.replace(MARKDOWN, '\\$&');
