import type { CardAmount, CardData, CardIngredient, CardRun, CardStep, CardTemperature, CardTime } from '@quern/views';

/*
 * Cards made by hand, for the tests of what is printed: they need no compiler, and they hold what a single recipe
 * seldom has together. All of it happens in Pennymoss Quay, which does not exist.
 */

const weight = (metric: string, us: string, grams: string, millilitres?: string, dose = false): CardAmount => ({
  metric,
  us,
  scale: {
    kind: 'weight',
    about: false,
    grams: { low: grams, high: grams },
    dose,
    ...(millilitres === undefined ? {} : { millilitres: { low: millilitres, high: millilitres } }),
  },
});

const count = (text: string, exact: string, one = '', many = one): CardAmount => ({
  metric: text,
  us: text,
  scale: { kind: 'count', about: false, count: { low: exact, high: exact }, one, many },
});

const words = (text: string): CardAmount => ({ metric: text, us: text });

const ingredient = (
  step: number,
  amount: CardAmount,
  name: string,
  more: Partial<CardIngredient> = {},
): CardIngredient => ({
  amount,
  name,
  optional: false,
  alternatives: [],
  step,
  ...more,
});

const text = (sentence: string): CardRun[] => [{ kind: 'text', text: sentence }];

const time = (written: string, low: string, high = low): CardTime => ({
  text: written,
  minutes: { low, high },
  open: written.endsWith('or more'),
});

const heat = (celsius: string, fahrenheit: string): CardTemperature => ({
  celsius: `${celsius} C`,
  fahrenheit: `${fahrenheit} F`,
});

function step(
  lane: CardStep['clock']['lane'],
  sentence: readonly CardRun[],
  clock: Partial<CardStep['clock']>,
  more: Partial<CardStep> = {},
): CardStep {
  return { sentence, more: [], clock: { lane, using: [], ...clock }, care: [], saved: [], remarks: [], ...more };
}

// 1 US cup = 473176473/2000000 ml (NIST Handbook 44).
const CUP = '473176473/2000000';

export const tinLoaf: CardData = {
  format: 'quern-card',
  version: 1,
  title: 'Pennymoss Black Tin Loaf',
  language: 'en',
  by: ['Idony Farrow'],
  source: ['Pennymoss Bakehouse day book, leaf 14'],
  keywords: ['rye', 'leaven', 'tin loaf'],
  introduction: [
    'The crumb is gummy on the day it is baked. It needs the night.',
    'Mixed on Wednesday night, baked on Thursday, sliced on Friday evening: the Friday loaf of the Quay.',
  ],
  yield: {
    thing: 'loaves',
    count: '2',
    each: { metric: '1040 g', us: '2 lb 5 oz' },
    serves: count('40 slices', '40', 'slice', 'slices'),
    vessel: count('2 loaf tins of 23 x 11 x 8 cm', '2', 'loaf tin of 23 x 11 x 8 cm', 'loaf tins of 23 x 11 x 8 cm'),
  },
  times: { handsOn: { low: '26', high: '26' }, total: { low: '2529', high: '4584' }, begin: '2 days before' },
  makes: [
    {
      id: 'leaven',
      name: 'leaven',
      implicit: false,
      ingredients: [
        ingredient(0, weight('150 g', '1 1/2 cups', '150', `${CUP}`), 'whole rye flour'),
        ingredient(0, weight('150 g', '2/3 cup', '150', '150'), 'water', { note: 'at 30 C' }),
        ingredient(0, weight('20 g', '2/3 oz', '20'), 'rye starter'),
      ],
      steps: [
        step('hands', text('Stir to a paste, scrape down and cover.'), { time: time('3 min', '3') }),
        step(
          'wait',
          text('Leave until domed and cracked on top.'),
          { time: time('10-14 h', '600', '840'), at: { temperature: heat('24', '75'), fan: false } },
          { saved: [{ amount: weight('20 g', '2/3 oz', '20'), name: 'rye starter', note: 'for the next bake' }] },
        ),
      ],
      remarks: [],
      keeping: [],
    },
    {
      id: 'soaker',
      name: 'soaker',
      implicit: false,
      ingredients: [
        ingredient(0, weight('210 g', '1 1/2 cups', '210', '354'), 'sunflower seeds', {
          note: 'toasted',
          alternatives: [ingredient(0, weight('195 g', '1 1/2 cups', '195', '354'), 'pumpkin seeds')],
        }),
        ingredient(0, weight('120 g', '4 1/4 oz', '120'), 'cracked rye'),
        ingredient(0, weight('360 g', '1 1/2 cups', '360', '360'), 'water', { note: 'boiling' }),
        ingredient(0, weight('20.2 g', '1 tbsp', '20.2', '17', true), 'fine salt', { percent: '2 % on flour' }),
      ],
      steps: [
        step('hands', text('Pour the water over the seeds, the cracked rye and the salt; stir and cover.'), {
          time: time('5 min', '5'),
        }),
        step('wait', text('Leave to swell and cool.'), { time: time('10-18 h', '600', '1080') }),
      ],
      remarks: [{ kind: 'tip', text: 'Toast the seeds in a dry pan until they smell of biscuit.' }],
      keeping: [],
    },
    {
      id: 'dough',
      name: 'dough',
      implicit: false,
      weight: { metric: '2335 g', us: '5 lb 2 oz' },
      ingredients: [
        ingredient(0, words('all'), 'leaven', { make: 'leaven' }),
        ingredient(0, words('all'), 'soaker', { make: 'soaker' }),
        ingredient(0, weight('740 g', '7 1/4 cups', '740', '1715'), 'whole rye flour'),
        ingredient(0, weight('560 g', '2 1/3 cups', '560', '560'), 'water', { note: 'at 38 C' }),
        ingredient(0, weight('25 g', '1 tbsp + 3/4 tsp', '25', '18.5'), 'beet syrup'),
        ingredient(0, words('a little'), 'sunflower oil', { note: 'for the tins', optional: true }),
      ],
      steps: [
        step('hands', text('Mix to a thick batter with no dry flour left.'), {
          time: time('8 min', '8'),
          until: heat('28', '82'),
        }),
        step('wait', text('Leave until risen by a third.'), {
          time: time('45-60 min', '45', '60'),
          at: { temperature: heat('26', '79'), fan: false },
        }),
      ],
      remarks: [],
      keeping: [],
    },
    {
      id: 'loaves',
      name: 'loaves',
      implicit: false,
      ingredients: [ingredient(0, words('all'), 'dough', { make: 'dough' })],
      steps: [
        step(
          'hands',
          [
            { kind: 'text', text: 'Scrape into the ' },
            { kind: 'amount', text: '2', amount: count('2', '2') },
            { kind: 'text', text: ' oiled tins, ' },
            { kind: 'amount', text: '1167 g', amount: { metric: '1167 g', us: '2 lb 9 oz' } },
            { kind: 'text', text: ' each, and smooth the tops with a wet hand.' },
          ],
          { time: time('10 min', '10') },
        ),
        step('wait', text('Prove until pinholes show.'), {
          time: time('90-120 min', '90', '120'),
          at: { temperature: heat('26', '79'), fan: false },
        }),
        step('oven', text('Bake with a pan of hot water on the oven floor.'), {
          time: time('15 min', '15'),
          at: { temperature: heat('250', '475'), fan: false },
        }),
        step('oven', text('Turn the dial down and bake until the crust is dark.'), {
          time: time('45 min', '45'),
          at: { temperature: heat('250', '475'), change: { direction: 'falling', to: heat('200', '400') }, fan: false },
          until: heat('97', '207'),
        }),
        step(
          'wait',
          text('Cool out of the tins, wrap in linen and hold before slicing.'),
          { time: time('24-48 h', '1440', '2880') },
          {
            care: [{ every: time('12 h', '720'), takes: time('1 min', '1'), sentence: text('Turn the loaves over.') }],
          },
        ),
      ],
      remarks: [],
      keeping: [],
    },
  ],
  remarks: [
    { kind: 'warning', text: 'The steam from the pan of water scalds: open the oven with your face away.' },
    { kind: 'serve with', text: 'Cold butter and pickled herring.' },
  ],
  variants: [
    { name: 'one loaf', changes: ['everything times 1/2'] },
    { name: 'seedless', changes: ['cracked rye instead of sunflower seeds', 'promised without: nuts, sesame'] },
  ],
  allergens: {
    contains: ['cereals containing gluten: rye'],
    mayContain: [{ name: 'nuts', because: 'traces in sunflower seeds' }],
    unknown: [],
    market: 'eu',
  },
  nutrition: {
    column: 'per slice of 52 g',
    portion: 'slice of 52 g',
    rows: [
      { id: 'energyKj', name: 'Energy', level: 0, text: '462 kJ', atLeast: false },
      { id: 'energyKcal', name: 'Energy', level: 0, text: '110 kcal', atLeast: false },
      { id: 'fat', name: 'Fat', level: 0, text: '2.9 g', atLeast: false },
      { id: 'saturates', name: 'of which saturates', level: 1, text: '0.3 g', atLeast: true },
      { id: 'carbohydrate', name: 'Carbohydrate', level: 0, text: '16 g', atLeast: false },
      { id: 'sugars', name: 'of which sugars', level: 1, text: '0.9 g', atLeast: false },
      { id: 'fibre', name: 'Fibre', level: 0, text: '4.3 g', atLeast: false },
      { id: 'protein', name: 'Protein', level: 0, text: '3.4 g', atLeast: false },
      { id: 'salt', name: 'Salt', level: 0, text: '0.5 g', atLeast: false },
    ],
    notes: ['Reckoned from the recipe; made by hand, a loaf differs.'],
  },
  diets: ['vegan', 'vegetarian'],
  keeping: [
    { time: time('7 d', '10080'), at: heat('20', '68'), note: 'wrapped' },
    { time: time('3 months', '129600'), at: heat('-18', '0'), note: 'sliced' },
  ],
  bestAfter: [{ time: time('1 d', '1440') }],
  cautions: [
    {
      text: 'Do not taste the raw batter.',
      reason: 'Raw flour is not a ready-to-eat food.',
      source: 'US Food and Drug Administration',
    },
  ],
  fixed: ['Times, temperatures and the size of the tins stay as written; a different loaf bakes in a different time.'],
  revision: '14',
  date: '2041-02-16',
  problems: [],
};

/** A dish without `make`, with little said. */
export const plainCordial: CardData = {
  ...tinLoaf,
  title: 'Quay Mint Cordial',
  by: [],
  source: [],
  keywords: ['drink', 'mint'],
  introduction: [],
  yield: { thing: 'batches', count: '1' },
  times: { handsOn: { low: '10', high: '10' }, total: { low: '10', high: '10' } },
  makes: [
    {
      id: 'quay-mint-cordial',
      name: 'Quay Mint Cordial',
      implicit: true,
      ingredients: [
        ingredient(0, weight('200 g', '1 cup', '200', CUP), 'sugar'),
        ingredient(0, count('1 bunch', '1', 'bunch', 'bunches'), 'mint'),
      ],
      steps: [step('hob', text('Simmer and strain.'), { time: time('10 min', '10') })],
      remarks: [],
      keeping: [],
    },
  ],
  remarks: [],
  variants: [],
  keeping: [],
  bestAfter: [],
  cautions: [],
  fixed: [],
  diets: [],
};
delete (plainCordial as { allergens?: unknown }).allergens;
delete (plainCordial as { nutrition?: unknown }).nutrition;
delete (plainCordial as { revision?: unknown }).revision;

/** The same loaf said in Hebrew: the page runs from right to left, its figures do not. */
export const hebrewLoaf: CardData = {
  ...tinLoaf,
  title: 'לחם שיפון שחור',
  language: 'he',
  by: ['עדן מזרחי'],
  introduction: ['הפרור דביק ביום האפייה. הלחם צריך את הלילה.'],
  makes: tinLoaf.makes.slice(0, 2).map((make) => ({
    ...make,
    name: make.id === 'leaven' ? 'מחמצת' : 'גרעינים מושרים',
    ingredients: make.ingredients.map((item, index) => ({
      ...item,
      name: ['קמח שיפון מלא', 'מים', 'מחמצת שיפון', 'מלח דק'][index] ?? item.name,
    })),
    steps: make.steps.map((one) => ({ ...one, sentence: text('לערבב לעיסה אחידה ולכסות.') })),
  })),
};

/** What ill will writes into names, notes and sentences. */
export const HOSTILE: readonly string[] = [
  '<script>window.broken = 1</script>',
  '"><img src=x onerror="window.broken = 1">',
  "' onmouseover='window.broken = 1",
  '</script><script>window.broken = 1</script>',
  '<!-- <style>*{display:none}</style>',
  ']]><x>&amp;&lt;',
  'javascript:window.broken = 1',
  '[click](javascript:window.broken=1) ![x](x "onerror=1")',
  '{{ constructor.constructor("window.broken = 1")() }} {% raw %} ${window.broken = 1} <%= 1 %> #{1}',
  '\u202Egnp.exe\u202C \u2067 \u2069\u2069 left open \u202E',
  '=HYPERLINK("x","y")',
  '| a | b |\n|---|---|\n# heading\n---\n```js\nwindow.broken = 1\n```',
  'zero \u0000, escape \u001B[31m, half \uD800 a pair, line \u2028 end',
];

/** The loaf with every text replaced by a hostile one. */
export function hostileCard(evil: string): CardData {
  const replace = (value: unknown, key: string): unknown => {
    if (
      [
        'format',
        'kind',
        'id',
        'make',
        'lane',
        'severity',
        'direction',
        'low',
        'high',
        'count',
        'grams',
        'millilitres',
      ].includes(key)
    ) {
      return typeof value === 'object' ? each(value) : value;
    }
    return typeof value === 'string' ? evil : each(value);
  };
  const each = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map((item) => replace(item, ''));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, replace(item, key)]));
  };
  const card = each(tinLoaf) as CardData;
  return { ...card, yield: { ...card.yield, count: '2' }, photo: { path: evil, alternative: evil }, diets: ['vegan'] };
}
