// Turns household portions (“1 cup, chopped”, “10 sprigs”) into weights by form and by piece.

/** Parts of a US cup. One fluid ounce is an eighth. */
const PER_CUP = { cup: 1, 'fl oz': 8, tbsp: 16, tablespoon: 16, tsp: 48, teaspoon: 48 };

/** What the words after the measure say of the form. Words that are not here are no form in which a cook measures. */
const FORMS = new Map(
  Object.entries({
    '': [''],
    fluid: [''],
    dry: [''],
    uncooked: [''],
    raw: [''],
    drained: [''],
    unsifted: [''],
    'not packed': ['loose'],
    unpacked: ['loose'],
    'loosely packed': ['loose'],
    packed: ['packed'],
    sifted: ['sifted'],
    whole: ['whole'],
    'whole kernels': ['whole'],
    'whole pieces': ['whole'],
    shelled: ['whole'],
    'whole or halves': ['whole', 'halved'],
    pitted: ['whole'],
    'without pits': ['whole'],
    halves: ['halved'],
    sliced: ['sliced'],
    slices: ['sliced'],
    'thin slices': ['sliced'],
    'strips or slices': ['sliced'],
    'chopped or sliced': ['chopped', 'sliced'],
    'sliced or diced': ['sliced', 'diced'],
    chopped: ['chopped'],
    'coarsely chopped': ['chopped'],
    'chopped or diced': ['chopped', 'diced'],
    'quartered or chopped': ['chopped'],
    'shredded or chopped': ['chopped', 'grated'],
    pieces: ['chopped'],
    'pieces or chips': ['chopped'],
    cubes: ['diced'],
    cubed: ['diced'],
    diced: ['diced'],
    balls: ['diced'],
    grated: ['grated'],
    shredded: ['grated'],
    slivered: ['slivered'],
    ground: ['ground'],
    crumbled: ['crumbled'],
    'crumbled, not packed': ['crumbled'],
    crushed: ['crushed'],
    mashed: ['mashed'],
    'mashed pulp': ['mashed'],
    pureed: ['puréed'],
    melted: ['melted'],
    whipped: ['whipped'],
    sections: ['segments'],
    'leaves, whole': ['leaves'],
    leaves: ['leaves'],
    sprigs: ['sprigs'],
    florets: ['florets'],
    flowerets: ['florets'],
    kernels: [''],
    berries: [''],
    granular: [''],
    chips: ['chips'],
    'large chips': ['chips'],
    'mini chips': ['chips'],
    'with skin': [''],
    'large curd': [''],
    'small curd': [''],
    crumbs: ['crushed'],
    flakes: [''],
    miniature: ['miniature'],
    'shredded, not packed': ['grated'],
    arils: [''],
    'unsifted, dipped': ['', 'dipped'],
    'firmly packed': ['packed'],
    'halves and whole': ['whole'],
    'halves or slices': ['sliced'],
    'pieces or slices': ['sliced'],
    'sliced or chips': ['sliced'],
    chunks: ['diced'],
    '1" pieces': ['chopped'],
    '1/2" pieces': ['chopped'],
    'small pieces': ['chopped'],
    '1" pieces, loosely packed': [''],
    'crushed, sliced, or chunks': [''],
    'solid or chunks': [''],
    pulp: [''],
    stirred: [''],
    thawed: [''],
    unthawed: [''],
    undrained: [''],
    'sections, with juice': ['segments'],
    'of miniature': ['miniature'],
    elbows: ['elbows'],
    penne: ['penne'],
    rotini: ['rotini'],
    shells: ['shells'],
    farfalle: ['farfalle'],
    spaghetti: ['spaghetti'],
    lasagne: ['lasagne'],
    lasagna: ['lasagne'],
  }),
);

const withoutBrackets = (text) =>
  text
    .replace(/\([^()]*\)/g, '')
    .replace(/\s+/g, ' ')
    .trim();

/** A weight by volume, or undefined when the portion is none that a cook would measure. */
export function volumeOf(portion) {
  const found = /^(cups?|fl oz|tbsp|tablespoon|tsp|teaspoon)\b[\s,]*(.*)$/i.exec(withoutBrackets(portion.portion));
  if (!found) return undefined;
  const unit = found[1].toLowerCase().replace(/^cups$/, 'cup');
  const forms = FORMS.get(found[2].replace(/[\s,]+$/, '').toLowerCase());
  if (!forms) return undefined;
  return { unit, forms, gramsPerCup: { grams: portion.grams, amount: portion.amount, perCup: PER_CUP[unit] } };
}

const SIZES = new Map(
  Object.entries({
    'extra small': 'extra small',
    small: 'small',
    medium: 'medium',
    large: 'large',
    'extra large': 'extra large',
    jumbo: 'jumbo',
  }),
);

/** Words for the thing itself, beside the words of its own name (`carrot` of a carrot). */
const ITSELF = new Set('fruit whole item piece unit regular kernel nut bird berry each'.split(' '));

/** Pieces that are a part. */
const PARTS = new Set(
  `clove leaf slice stick stalk sprig head bulb sheet spear wedge half cube rib ear fillet rasher pat cake packet pod
  square strip bunch bar link shell`.split(/\s+/),
);

const one = (word) => {
  if (word === 'leaves') return 'leaf';
  if (word === 'halves') return 'half';
  if (/(?:ches|shes|oes)$/.test(word)) return word.slice(0, -2);
  if (word.endsWith('ies')) return word.slice(0, -3) + 'y';
  return word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
};

/** A weight by the piece, or undefined. `words` are the words of the food's own names. */
export function pieceOf(portion, words) {
  let text = withoutBrackets(portion.portion).toLowerCase();
  text = text.replace(/,? (?:without (?:refuse|skin and seeds|skin)|with skin|bone(?: and skin)? removed)$/, '');
  if (/nlea|refuse|from 1 lb|serving|yield from|cooked|package|can\b|jar|in shell|brand|miniature/.test(text))
    return undefined;
  const juice = /^(?:lemon|lime|fruit|orange) yields$/.test(text);
  if (juice) return { piece: 'fruit', size: '', grams: portion.grams, amount: portion.amount };
  if (/yield/.test(text)) return undefined;
  let size = '';
  const swapped = /^(?!extra)(\w+),? (extra small|small|medium|large|extra large|jumbo)$/.exec(text);
  if (swapped) text = `${swapped[2]} ${swapped[1]}`;
  const sized = /^(extra small|extra large|small|medium|large|jumbo)\b[\s,]*(.*)$/.exec(text);
  if (sized) [, size, text] = [undefined, SIZES.get(sized[1]), sized[2]];
  const word = one(
    text
      .replace(/,.*$| or .*$| (?:raw|dough)$/, '')
      .replace(/^whole |\bwhole$/, '')
      .trim(),
  );
  if (word === '' || ITSELF.has(word) || (words.has(word) && !PARTS.has(word)))
    return { piece: '', size, grams: portion.grams, amount: portion.amount };
  if (PARTS.has(word)) return { piece: word, size, grams: portion.grams, amount: portion.amount };
  return undefined;
}
