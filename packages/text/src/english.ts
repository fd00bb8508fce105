/** Plurals that the rules below would spoil, and words that only look like plurals. */
const LISTED: ReadonlyMap<string, string> = new Map(
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
    shelves: 'shelf',
    smoothies: 'smoothie',
    swiss: 'swiss',
    ties: 'tie',
    trays: 'tray',
    veggies: 'veggie',
    geese: 'goose',
    feet: 'foot',
    teeth: 'tooth',
    lemongrass: 'lemongrass',
    gras: 'gras',
    brussels: 'brussels',
    cassis: 'cassis',
    calvados: 'calvados',
    schnapps: 'schnapps',
  }),
);

/** The singular of an English word in lower case; a word that is no plural comes back as it is. */
export function singular(word: string): string {
  const listed = LISTED.get(word);
  if (listed !== undefined) return listed;
  if (word.length < 4 || !word.endsWith('s')) return word;
  const before = word.charAt(word.length - 2);
  if (before === 's' || before === 'u' || before === 'i') return word;
  if (before !== 'e') return word.slice(0, -1);
  if (word.endsWith('ies')) return word.length > 4 ? word.slice(0, -3) + 'y' : word;
  return /(?:oes|ches|shes|xes|sses|zzes)$/.test(word) ? word.slice(0, -2) : word.slice(0, -1);
}

/** Words with the last of them in the singular: `round loaves` as `round loaf`. */
export function singularWords(text: string): string {
  const words = text.trim().split(/\s+/);
  return [...words.slice(0, -1), singular(words.at(-1) ?? '')].join(' ');
}

/** The same text without its accents, to find names that differ by accents alone. */
export function withoutAccents(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .normalize('NFC');
}
