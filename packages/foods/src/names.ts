/**
 * How a written name becomes a key of the index. Names are compared in Unicode NFC, in lower case, without a leading
 * `the`, with hyphens as spaces, without apostrophes, and with the plural of the last word (and of the word before
 * `of`) folded by English rules. Accents count.
 */

import { singular, withoutAccents } from '@quern/text';

// Nearly every name is written in these characters, which need no Unicode work.
const PLAIN = /^[a-z ]*$/;
const ASCII = /^[ -~]*$/;
const MARKS = /['’‘ʼ`]/g;
const PERCENT = /(\d)%/g;
const GAPS = /[-‐‑‒–—\s]+/g;

const withoutThe = (name: string): string => (name.startsWith('the ') ? name.slice(4) : name);

/** Lower case, NFC, one space between words and before a percent sign, no leading `the`, no apostrophes; plurals are left alone. */
export function tidyName(name: string): string {
  if (PLAIN.test(name) && !name.includes('  ')) return withoutThe(name.trim());
  const composed = ASCII.test(name) ? name : name.normalize('NFC');
  return withoutThe(composed.toLowerCase().replace(MARKS, '').replace(PERCENT, '$1 %').replace(GAPS, ' ').trim());
}

/** Folds the plural of the last word, and of the last word before `of` (`legs of lamb`). */
export function foldPlural(tidy: string): string {
  const last = tidy.lastIndexOf(' ') + 1;
  const word = tidy.slice(last);
  const one = singular(word);
  // Most names are no plurals: they come back as they are, without a new text.
  const folded = one === word ? tidy : tidy.slice(0, last) + one;
  const of = folded.indexOf(' of ');
  if (of < 0) return folded;
  const before = folded.lastIndexOf(' ', of - 1) + 1;
  return folded.slice(0, before) + singular(folded.slice(before, of)) + folded.slice(of);
}

/** The key under which a name stands in the index. */
export const nameKey = (name: string): string => foldPlural(tidyName(name));

/** `Whole rye flour` → `whole-rye-flour`: the identifier of a food of the table. */
export function kebab(name: string): string {
  const tidy = tidyName(name);
  if (PLAIN.test(tidy)) return tidy.replaceAll(' ', '-');
  return withoutAccents(tidy)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}
