import { ownValue } from '@quern/text';
import type { AllergenId } from './food-book.js';

/*
 * The words a writer uses for allergens, in `contains`, `traces` and `free of`, and the classes each stands for.
 * A word for a group ('gluten', 'nuts') stands for every class of the group when it is promised absent.
 */

export const GLUTEN_CEREALS: readonly AllergenId[] = [
  'wheat',
  'rye',
  'barley',
  'oats',
  'spelt',
  'triticale',
  'other-gluten',
];
export const TREE_NUTS: readonly AllergenId[] = [
  'almond',
  'hazelnut',
  'walnut',
  'cashew',
  'pecan',
  'brazil-nut',
  'pistachio',
  'macadamia',
  'pine-nut',
  'chestnut',
  'other-nut',
];

const groups: Readonly<Record<string, readonly AllergenId[]>> = {
  gluten: GLUTEN_CEREALS,
  nut: TREE_NUTS,
  'tree nut': TREE_NUTS,
  milk: ['milk'],
  dairy: ['milk'],
  egg: ['eggs'],
  peanut: ['peanuts'],
  soybean: ['soybeans'],
  soya: ['soybeans'],
  soy: ['soybeans'],
  fish: ['fish'],
  crustacean: ['crustaceans'],
  shellfish: ['crustaceans', 'molluscs'],
  mollusc: ['molluscs'],
  mollusk: ['molluscs'],
  celery: ['celery'],
  mustard: ['mustard'],
  sesame: ['sesame'],
  sulphite: ['sulphites'],
  sulfite: ['sulphites'],
  'sulphur dioxide': ['sulphites'],
  lupin: ['lupin'],
  buckwheat: ['buckwheat'],
  coconut: ['coconut'],
  wheat: ['wheat', 'spelt'],
  rye: ['rye'],
  barley: ['barley'],
  oat: ['oats'],
  spelt: ['spelt'],
  triticale: ['triticale'],
  almond: ['almond'],
  hazelnut: ['hazelnut'],
  walnut: ['walnut'],
  cashew: ['cashew'],
  pecan: ['pecan'],
  'brazil nut': ['brazil-nut'],
  pistachio: ['pistachio'],
  macadamia: ['macadamia'],
  'pine nut': ['pine-nut'],
  pinenut: ['pine-nut'],
  chestnut: ['chestnut'],
};

/** What `contains WORD` puts in: one class, or for a group its unspecified member. */
const unspecified: Readonly<Record<string, readonly AllergenId[]>> = {
  gluten: ['other-gluten'],
  nut: ['other-nut'],
  'tree nut': ['other-nut'],
  wheat: ['wheat'],
};

/** Every class a promise about this word speaks of; undefined when the word is not known. The word is normalised. */
export function allergensPromised(word: string): readonly AllergenId[] | undefined {
  return ownValue(groups, word);
}

/** The classes that a food declared to contain this word has; undefined when the word is not known. */
export function allergensDeclared(word: string): readonly AllergenId[] | undefined {
  return ownValue(unspecified, word) ?? ownValue(groups, word);
}

/** Words for completion and for near misses. */
export const allergenWords: readonly string[] = Object.keys(groups);
