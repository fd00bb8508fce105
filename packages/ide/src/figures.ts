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
import { singularWords } from '@quern/text';
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
  const written = facts.gives?.content.thing?.text;
  const thing = variant === undefined || written === undefined ? written : wordFor(written, pieces);
  return `${printDecimal(pieces, 2)} ${thing ?? (one ? 'piece' : 'pieces')}`;
}

/** The base's word for what a variant gives, which may be another number of it; undefined when its plural is not written. */
function wordFor(written: string, pieces: Rational): string | undefined {
  const alone = singularWords(written);
  if (pieces.n <= pieces.d) return alone;
  return alone === written ? undefined : written;
}

const MARKDOWN = /[\\`*_{}[\]<>#|~]/g;

/** Words of a file inside Markdown: marks that Markdown would read are made plain. */
export const escapeMarkdown = (text: string): string => text.replace(MARKDOWN, '\\$&');
