/*
 * How names are compared: Unicode NFC, case folded, without a leading "the", runs of space as one, and with the last
 * word's English plural folded. Accents count.
 */

const IRREGULAR: ReadonlyMap<string, string> = new Map([
  ['leaves', 'leaf'],
  ['loaves', 'loaf'],
  ['halves', 'half'],
  ['knives', 'knife'],
  ['shelves', 'shelf'],
  ['calves', 'calf'],
  ['geese', 'goose'],
  ['feet', 'foot'],
  ['teeth', 'tooth'],
]);

// Words that end in s and are not plurals.
const NOT_PLURAL = new Set([
  'molasses',
  'couscous',
  'asparagus',
  'hummus',
  'houmous',
  'swiss',
  'citrus',
  'hibiscus',
  'bass',
  'watercress',
  'cress',
  'lemongrass',
  'grass',
  'glass',
  'schnapps',
  'quark',
  'gras',
  'jus',
  'octopus',
  'anis',
  'calvados',
  'cassis',
  'brussels',
  'us',
]);

const folded = new Map<string, string>();

/** Singular of an English word in lower case; a word that is not a plural is returned as it is. */
export function singular(word: string): string {
  const known = IRREGULAR.get(word);
  if (known) return known;
  if (word.length < 4 || !word.endsWith('s') || NOT_PLURAL.has(word) || word.endsWith('ss')) return word;
  if (word.endsWith('ies') && word.length > 4 && !/(?:cook|brown|smooth|veg|p|t)ies$/.test(word))
    return word.slice(0, -3) + 'y';
  if (/(?:cook|brown|smooth|vegg)ies$/.test(word)) return word.slice(0, -1);
  if (/(?:tomato|potato|mango|echo|hero)es$/.test(word)) return word.slice(0, -2);
  if (/(?:ch|sh|x|ss|zz)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

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

/** The name without accents, to tell a near miss. */
export function withoutAccents(name: string): string {
  return name.normalize('NFD').replace(/\p{M}/gu, '').normalize('NFC');
}

/** Names that cannot be given to a product. */
export const RESERVED = new Set(['all', 'flour', 'liquid', 'nothing']);

/** A name in quotation marks for a sentence. */
export const quoted = (name: string): string => `“${name}”`;
