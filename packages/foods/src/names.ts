/**
 * How a written name becomes a key of the index. Names are compared in Unicode NFC, in lower case, without a leading
 * `the`, with hyphens as spaces, without apostrophes, and with the plural of the last word (and of the word before
 * `of`) folded by English rules. Accents count.
 */

/** Plurals that the rules below would spoil, and words that only look like plurals. */
const PLURALS = new Map<string, string>(
  Object.entries({
    anchovies: 'anchovy',
    brownies: 'brownie',
    calves: 'calf',
    chilies: 'chili',
    chillies: 'chilli',
    chiles: 'chile',
    cookies: 'cookie',
    halves: 'half',
    knives: 'knife',
    leaves: 'leaf',
    loaves: 'loaf',
    molasses: 'molasses',
    pies: 'pie',
    pâtés: 'pâté',
    smoothies: 'smoothie',
    swiss: 'swiss',
    ties: 'tie',
    trays: 'tray',
    veggies: 'veggie',
  }),
);

/** The singular of an English word in lower case; a word that is no plural comes back as it is. */
export function singular(word: string): string {
  const listed = PLURALS.get(word);
  if (listed !== undefined) return listed;
  if (word.length < 4 || !word.endsWith('s')) return word;
  if (/(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies')) return word.length > 4 ? word.slice(0, -3) + 'y' : word;
  if (/(?:oes|ches|shes|xes|sses|zzes)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

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

/** The same text without its accents, to find names that differ by accents alone. */
export const withoutAccents = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .normalize('NFC');

/** `Whole rye flour` → `whole-rye-flour`: the identifier of a food of the table. */
export function kebab(name: string): string {
  const tidy = tidyName(name);
  if (PLAIN.test(tidy)) return tidy.replaceAll(' ', '-');
  return withoutAccents(tidy)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
}
