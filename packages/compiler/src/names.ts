import { singular } from '@quern/text';

/*
 * How names are compared: Unicode NFC, case folded, without a leading "the", runs of space as one, and with the last
 * word's English plural folded. Accents count.
 */

const folded = new Map<string, string>();

/** The form in which names are compared. */
export function normaliseName(name: string): string {
  const known = folded.get(name);
  if (known !== undefined) return known;
  const words = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\u2019\u02bc]/g, "'")
    .trim()
    .split(/\s+/);
  if (words.length > 1 && words[0] === 'the') words.shift();
  const last = words.length - 1;
  words[last] = singular(words[last] ?? '');
  const result = words.join(' ');
  // Bounded, so that a long-lived editor does not keep every half-typed word.
  if (folded.size > 20_000) folded.clear();
  folded.set(name, result);
  return result;
}

/** Names that cannot be given to a product. */
export const RESERVED = new Set(['all', 'flour', 'liquid', 'nothing']);

/** A name in quotation marks for a sentence. */
export const quoted = (name: string): string => `“${name}”`;
