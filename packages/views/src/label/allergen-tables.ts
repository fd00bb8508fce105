import type { AllergenId, Food } from '@quern/compiler';
import type { Market } from './nutrient-list.js';

/*
 * The allergens that each market asks to be declared, as data with the dates from which they hold. An AllergenId is what
 * a food has; a class is what a market calls it. Nothing here decides what to print.
 */

export interface AllergenClass {
  /** The name of the class in the market's own list. */
  readonly name: string;
  /** `must`: to be declared. `recommended`: asked for. `regional`: only where an authority asks for it. */
  readonly status: 'must' | 'recommended' | 'regional';
  readonly members: readonly AllergenId[];
  /** What a member is called on a label, where it is not the name of the class. */
  readonly names?: Readonly<Partial<Record<AllergenId, string>>>;
  /**
   * Whole words of a food's name, for markets that list a species or a food instead of a family ('shrimp'). With
   * `members`, the food must have one of them too.
   */
  readonly words?: readonly string[];
  /** First and last day but one on which this row holds, as ISO dates; without them it always does. */
  readonly from?: string;
  readonly until?: string;
  /** From how much on, in words. The amount is hardly ever known from a recipe, so the class is named in any case. */
  readonly threshold?: string;
  /** Named in the separate statement only, not beside each ingredient. */
  readonly summaryOnly?: boolean;
  /** Exceptions and scope, in words. */
  readonly note?: string;
}

export interface AllergenTable {
  readonly source: string;
  /** In force since, for the reader. */
  readonly since?: string;
  /** The sentence that a separate statement begins with. */
  readonly opening: string;
  readonly classes: readonly AllergenClass[];
  /** What readers expect to find and the market does not list; named in the ingredient list all the same. */
  readonly notClasses: Readonly<Record<string, string>>;
}

const NUT_NAMES: Readonly<Partial<Record<AllergenId, string>>> = {
  almond: 'almond',
  hazelnut: 'hazelnut',
  walnut: 'walnut',
  cashew: 'cashew',
  pecan: 'pecan',
  'brazil-nut': 'Brazil nut',
  pistachio: 'pistachio',
  macadamia: 'macadamia',
  'pine-nut': 'pine nut',
  chestnut: 'chestnut',
  coconut: 'coconut',
  'other-nut': 'nut',
};

const EIGHT_NUTS = ['almond', 'hazelnut', 'walnut', 'cashew', 'pecan', 'brazil-nut', 'pistachio', 'macadamia'] as const;
const CEREAL_NAMES: Readonly<Partial<Record<AllergenId, string>>> = {
  wheat: 'wheat',
  spelt: 'spelt (wheat)',
  rye: 'rye',
  barley: 'barley',
  oats: 'oats',
  triticale: 'triticale (wheat and rye)',
  'other-gluten': 'gluten (cereal not stated)',
};
const GLUTEN_CEREALS = ['wheat', 'spelt', 'rye', 'barley', 'oats', 'triticale', 'other-gluten'] as const;

const must = (name: string, members: readonly AllergenId[], more: Partial<AllergenClass> = {}): AllergenClass => ({
  name,
  status: 'must',
  members,
  ...more,
});

// ---------------------------------------------------------------- European Union, United Kingdom

const annexII: AllergenTable = {
  source: 'Regulation (EU) No 1169/2011, Annex II',
  opening: 'For allergens see the ingredients in CAPITALS.',
  classes: [
    must('cereals containing gluten', GLUTEN_CEREALS, {
      names: CEREAL_NAMES,
      note: 'not for wheat glucose syrups and maltodextrins, barley glucose syrups, and cereals for distillates',
    }),
    must('crustaceans', ['crustaceans']),
    must('eggs', ['eggs']),
    must('fish', ['fish'], { note: 'not for fish gelatine as a carrier or fining agent, nor isinglass' }),
    must('peanuts', ['peanuts']),
    must('soybeans', ['soybeans'], {
      note: 'not for fully refined oil, natural tocopherols, phytosterols and plant stanol ester',
    }),
    must('milk', ['milk'], { note: 'lactose included; not for whey for distillates, nor lactitol' }),
    must('nuts', [...EIGHT_NUTS, 'other-nut'], {
      names: NUT_NAMES,
      note: 'the eight nuts of the list; a nut whose kind is not stated is named too; not for nuts for distillates',
    }),
    must('celery', ['celery']),
    must('mustard', ['mustard']),
    must('sesame', ['sesame']),
    must('sulphur dioxide and sulphites', ['sulphites'], {
      names: { sulphites: 'sulphites' },
      threshold: 'more than 10 mg/kg or 10 mg/l, reckoned as SO2',
    }),
    must('lupin', ['lupin']),
    must('molluscs', ['molluscs']),
  ],
  notClasses: {
    'pine nut': 'not among the nuts of Annex II',
    chestnut: 'not among the nuts of Annex II',
    coconut: 'not among the nuts of Annex II',
  },
};

// ---------------------------------------------------------------- United States

const EDITION_5 = '2025-01-06';

const unitedStates: AllergenTable = {
  source:
    'FD&C Act, section 201(qq) (FALCPA 2004, FASTER Act 2021); FDA, Questions and Answers Regarding Food Allergens, edition 5 (6 January 2025)',
  opening: 'Contains:',
  classes: [
    must('milk', ['milk'], { note: 'of cows, goats, sheep and other ruminants' }),
    must('egg', ['eggs'], { note: 'of hens, ducks, geese, quail and other birds' }),
    must('fish', ['fish']),
    must('crustacean shellfish', ['crustaceans']),
    must('tree nuts', [...EIGHT_NUTS, 'pine-nut'], { names: NUT_NAMES, from: EDITION_5 }),
    // From memory: the list of 2006 also had beech nut, butternut, chestnut, chinquapin, coconut, ginkgo, hickory, lichee,
    // pili and shea nut.
    must('tree nuts', [...EIGHT_NUTS, 'pine-nut', 'chestnut', 'coconut', 'other-nut'], {
      names: NUT_NAMES,
      until: EDITION_5,
    }),
    must('peanut', ['peanuts']),
    must('wheat', ['wheat', 'spelt', 'triticale'], {
      names: { spelt: 'wheat (spelt)', triticale: 'wheat (triticale)' },
    }),
    // The cereal is not stated: it may be wheat, so it is named.
    must('wheat', ['other-gluten'], { names: { 'other-gluten': 'gluten (cereal not stated, may be wheat)' } }),
    must('soybean', ['soybeans'], { names: { soybeans: 'soy' } }),
    must('sesame', ['sesame'], { from: '2023-01-01' }),
  ],
  notClasses: {
    'beech nut': 'not listed since January 2025',
    butternut: 'not listed since January 2025',
    chestnut: 'not listed since January 2025',
    chinquapin: 'not listed since January 2025',
    coconut: 'not listed since January 2025',
    'cola/kola nut': 'not listed since January 2025',
    'ginkgo nut': 'not listed since January 2025',
    'hickory nut': 'not listed since January 2025',
    'palm nut': 'not listed since January 2025',
    'pili nut': 'not listed since January 2025',
    'shea nut': 'not listed since January 2025',
    'lichee nut': 'not listed since January 2025',
    'molluscan shellfish': 'only crustacean shellfish is a class',
    'barley, rye, oats': 'only wheat is a class; a gluten-free claim is another matter',
    sulphites: 'not a class; to be declared from 10 parts in a million on (21 CFR 101.100(a)(4))',
  },
};

// ---------------------------------------------------------------- Canada

const canada: AllergenTable = {
  source: 'Health Canada, allergens and gluten sources labelling; Food and Drug Regulations B.01.010.1',
  opening: 'Contains:',
  classes: [
    must('eggs', ['eggs']),
    must('milk', ['milk']),
    must('mustard', ['mustard']),
    must('peanuts', ['peanuts']),
    must('crustaceans and molluscs', ['crustaceans', 'molluscs'], {
      names: { crustaceans: 'crustaceans', molluscs: 'molluscs' },
    }),
    must('fish', ['fish']),
    must('sesame', ['sesame']),
    must('soy', ['soybeans']),
    must('sulphites', ['sulphites'], { threshold: '10 parts in a million or more' }),
    must('tree nuts', [...EIGHT_NUTS, 'pine-nut', 'other-nut'], { names: NUT_NAMES }),
    must('wheat and triticale', ['wheat', 'spelt', 'triticale'], {
      names: { wheat: 'wheat', spelt: 'wheat (spelt)', triticale: 'triticale' },
    }),
    must('gluten sources', GLUTEN_CEREALS, {
      names: { ...CEREAL_NAMES, spelt: 'wheat (spelt)', triticale: 'triticale' },
    }),
  ],
  notClasses: {
    chestnut: 'not among the tree nuts of the list',
    coconut: 'not among the tree nuts of the list',
  },
};

// ---------------------------------------------------------------- Australia and New Zealand

const australia: AllergenTable = {
  source: 'Food Standards Code, Standard 1.2.3 and Schedule 9',
  since: '2024-02-25',
  opening: 'Contains:',
  classes: [
    must('wheat', ['wheat', 'spelt', 'triticale'], { names: { wheat: 'wheat', spelt: 'wheat', triticale: 'wheat' } }),
    must('fish', ['fish']),
    must('crustacean', ['crustaceans']),
    must('mollusc', ['molluscs']),
    must('egg', ['eggs']),
    must('milk', ['milk']),
    must('lupin', ['lupin']),
    must('peanut', ['peanuts']),
    must('soy', ['soybeans'], { note: 'soy, soya or soybean' }),
    must('sesame', ['sesame']),
    ...[...EIGHT_NUTS, 'pine-nut' as const].map((nut) => must(NUT_NAMES[nut] ?? nut, [nut])),
    must('nut', ['other-nut'], { note: 'the kind is not stated, and has to be' }),
    must('barley', ['barley'], { note: 'if it holds gluten' }),
    must('oats', ['oats'], { note: 'if they hold gluten' }),
    must('rye', ['rye', 'triticale'], { names: { rye: 'rye', triticale: 'rye' }, note: 'if it holds gluten' }),
    must('gluten', GLUTEN_CEREALS, {
      names: Object.fromEntries(GLUTEN_CEREALS.map((one) => [one, 'gluten'])),
      summaryOnly: true,
    }),
    must('sulphites', ['sulphites'], { threshold: '10 mg/kg or more, added' }),
  ],
  notClasses: {
    chestnut: 'not among the required names',
    coconut: 'not among the required names',
  },
};

// ---------------------------------------------------------------- Japan

const word = (name: string, words: readonly string[], more: Partial<AllergenClass> = {}): AllergenClass => ({
  name,
  status: 'recommended',
  members: [],
  words,
  ...more,
});

const japan: AllergenTable = {
  source:
    'Japan, Food Labelling Standards, appended table 14 (9 March 2023), and the notification on recommended items (2024)',
  opening: 'Contains:',
  classes: [
    must('shrimp/prawn', ['crustaceans'], { words: ['shrimp', 'prawn', 'prawns', 'shrimps'] }),
    must('crab', ['crustaceans'], { words: ['crab', 'crabs', 'crabmeat'] }),
    must('walnut', ['walnut']),
    must('wheat', ['wheat', 'spelt', 'triticale', 'other-gluten'], {
      names: { 'other-gluten': 'gluten (cereal not stated, may be wheat)' },
    }),
    must('buckwheat', ['buckwheat']),
    must('egg', ['eggs']),
    must('milk', ['milk']),
    must('peanut', ['peanuts']),
    { name: 'almond', status: 'recommended', members: ['almond'] },
    word('abalone', ['abalone']),
    word('squid', ['squid', 'calamari']),
    word('salmon roe', ['roe'], { note: 'named for any roe, as the fish may not be stated' }),
    word('orange', ['orange', 'oranges']),
    {
      name: 'cashew',
      status: 'recommended',
      members: ['cashew'],
      note: 'to become the ninth mandatory item, expected from April 2026: confirm before you rely on the eight',
    },
    word('kiwifruit', ['kiwi', 'kiwifruit', 'kiwis']),
    word('beef', ['beef', 'veal']),
    { name: 'sesame', status: 'recommended', members: ['sesame'] },
    word('salmon', ['salmon']),
    word('mackerel', ['mackerel']),
    { name: 'soybean', status: 'recommended', members: ['soybeans'] },
    word('chicken', ['chicken']),
    word('banana', ['banana', 'bananas']),
    word('pork', ['pork', 'bacon', 'ham', 'lard']),
    { name: 'macadamia', status: 'recommended', members: ['macadamia'], from: '2024-03-28' },
    word('matsutake', ['matsutake'], { until: '2024-03-28' }),
    word('peach', ['peach', 'peaches']),
    word('yam', ['yam', 'yams']),
    word('apple', ['apple', 'apples', 'cider']),
    word('gelatin', ['gelatine', 'gelatin']),
    {
      name: 'pistachio',
      status: 'recommended',
      members: ['pistachio'],
      note: 'to be added to the recommended items with the change expected in April 2026: confirm',
    },
  ],
  notClasses: { matsutake: 'no longer recommended since 2024' },
};

// ---------------------------------------------------------------- Codex Alimentarius

const CAC47 = '2024-11-25';
const SIX_NUTS = ['almond', 'cashew', 'hazelnut', 'pecan', 'pistachio', 'walnut'] as const;
const regional = (name: string, members: readonly AllergenId[]): AllergenClass => ({
  name,
  status: 'regional',
  members,
  from: CAC47,
});

const codex: AllergenTable = {
  source: 'Codex Alimentarius, CXS 1-1985, section 4.2.1.4, as revised in November 2024 (from memory) and before',
  opening: 'Contains:',
  classes: [
    must('cereals containing gluten', ['wheat', 'spelt', 'rye', 'barley', 'triticale', 'other-gluten'], {
      names: CEREAL_NAMES,
      from: CAC47,
    }),
    must('cereals containing gluten', GLUTEN_CEREALS, { names: CEREAL_NAMES, until: CAC47 }),
    must('crustacea', ['crustaceans']),
    must('egg', ['eggs']),
    must('fish', ['fish']),
    must('peanut', ['peanuts']),
    must('soybean', ['soybeans'], { until: CAC47 }),
    must('milk', ['milk']),
    must('sesame', ['sesame'], { from: CAC47 }),
    must('tree nuts', [...SIX_NUTS, 'other-nut'], { names: NUT_NAMES, from: CAC47 }),
    must('tree nuts', [...EIGHT_NUTS, 'pine-nut', 'chestnut', 'other-nut'], { names: NUT_NAMES, until: CAC47 }),
    regional('soybean', ['soybeans']),
    regional('Brazil nut', ['brazil-nut']),
    regional('macadamia', ['macadamia']),
    regional('pine nut', ['pine-nut']),
    regional('oats', ['oats']),
    regional('buckwheat', ['buckwheat']),
    regional('celery', ['celery']),
    regional('lupin', ['lupin']),
    regional('mustard', ['mustard']),
    must('sulphite', ['sulphites'], { threshold: '10 mg/kg or more' }),
  ],
  notClasses: {},
};

// ---------------------------------------------------------------- no market

const everything: AllergenTable = {
  source: 'every class that the food table knows',
  opening: 'Contains:',
  classes: [
    must('gluten', GLUTEN_CEREALS, { names: CEREAL_NAMES }),
    must('nuts', [...EIGHT_NUTS, 'pine-nut', 'chestnut', 'coconut', 'other-nut'], { names: NUT_NAMES }),
    ...(
      [
        'crustaceans',
        'molluscs',
        'fish',
        'eggs',
        'milk',
        'peanuts',
        'soybeans',
        'celery',
        'mustard',
        'sesame',
        'sulphites',
        'lupin',
        'buckwheat',
      ] as const
    ).map((one) => must(one, [one])),
  ],
  notClasses: {},
};

export const allergenTables: Readonly<Record<Market, AllergenTable>> = {
  eu: annexII,
  // Annex II stands in assimilated law, unchanged.
  uk: { ...annexII, source: 'Regulation 1169/2011 as assimilated United Kingdom law, Annex II' },
  us: unitedStates,
  ca: canada,
  au: australia,
  jp: japan,
  codex,
  none: everything,
};

/** The classes of a market on a day (an ISO date); without one, as they stand in the newest edition. */
export function classesOn(market: Market, day?: string): readonly AllergenClass[] {
  return allergenTables[market].classes.filter((one) => {
    if (day === undefined) return one.until === undefined;
    return (one.from === undefined || one.from <= day) && (one.until === undefined || day < one.until);
  });
}

/** The classes of a market that a food falls in, with the name each has on a label. */
export function classesOfFood(
  classes: readonly AllergenClass[],
  allergens: readonly AllergenId[],
  foodName: string,
): readonly { readonly class: AllergenClass; readonly name: string }[] {
  const nameWords = new Set(foodName.toLowerCase().match(/\p{L}+/gu) ?? []);
  const found: { readonly class: AllergenClass; readonly name: string }[] = [];
  for (const one of classes) {
    if (one.words && !one.words.some((each) => nameWords.has(each))) continue;
    if (one.members.length === 0) {
      found.push({ class: one, name: one.name });
      continue;
    }
    for (const member of one.members) {
      if (allergens.includes(member)) found.push({ class: one, name: one.names?.[member] ?? one.name });
    }
  }
  return found;
}

/**
 * Allergens of a food whose family a market knows only by species, when the food's name gives none of them (a fish soup
 * in a market that lists prawn and crab): the writer has to say which it is.
 */
export function speciesNotStated(
  classes: readonly AllergenClass[],
  allergens: readonly AllergenId[],
  foodName: string,
): readonly AllergenId[] {
  const bySpecies = classes.filter((one) => one.words && one.members.length > 0).flatMap((one) => one.members);
  const named = classesOfFood(classes, allergens, foodName).flatMap((one) => one.class.members);
  return [...new Set(bySpecies)].filter((member) => allergens.includes(member) && !named.includes(member));
}

/** Allergens that a food surely has. They are all of them only where `food.allergens` is given. */
export function surelyHolds(food: Food | undefined): readonly AllergenId[] {
  return food?.allergens ?? food?.allergensAtLeast ?? [];
}
