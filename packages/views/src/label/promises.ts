import { allergensPromised, normaliseName, type AllergenId, type Food, type RecipeFacts } from '@quern/compiler';
import { ownValue, type Place } from '@quern/text';
import { surelyHolds } from './allergen-tables.js';
import type { FoodUse, KitchenTraces } from './allergens.js';

/** Something a recipe promises of itself, in a `free of` line or as a keyword. */
export interface Promised {
  /** As a reader reads it: 'free of milk', 'vegan'. */
  readonly text: string;
  readonly test: PromiseTest;
  readonly place: Place;
}

/** What the ledger knows of one food against a promise. */
type Answer = 'breaks' | 'traces' | 'unknown' | 'fine';
interface PromiseTest {
  readonly kind: 'allergen' | 'diet' | 'unreadable';
  readonly word: string;
  ask(food: Food | undefined): Answer;
  kitchen(traces: readonly AllergenId[]): boolean;
}

export interface Against {
  readonly food: string;
  readonly place: Place;
  readonly why: 'ingredient' | 'optional' | 'alternative' | 'traces' | 'kitchen' | 'unknown' | 'unread';
}

/**
 * `contradicted`: a food that goes in, or that a line allows to, breaks it. `cannot confirm`: something unknown or in traces. `not
 * contradicted`: no food of the recipe speaks against it, which is not proof that the food is free of anything.
 */
export interface Verdict {
  readonly promised: Promised;
  readonly verdict: 'contradicted' | 'cannot confirm' | 'not contradicted';
  readonly against: readonly Against[];
}

// Most readers take 'nuts' to hold the peanut too; a promise about nuts that meets a peanut is broken.
const WIDER: Readonly<Record<string, readonly AllergenId[]>> = { nut: ['peanuts'] };
const OTHER_WORDS: Readonly<Record<string, readonly AllergenId[]>> = { lactose: ['milk'] };

function allergenTest(word: string, classes: readonly AllergenId[]): PromiseTest {
  return {
    kind: 'allergen',
    word,
    ask(food) {
      if (!food) return 'unknown';
      if (classes.some((one) => surelyHolds(food).includes(one))) return 'breaks';
      if (!food.allergens) return 'unknown';
      return classes.some((one) => food.traces.includes(one)) ? 'traces' : 'fine';
    },
    kitchen: (traces) => classes.some((one) => traces.includes(one)),
  };
}

const FROM_ANIMALS: readonly AllergenId[] = ['milk', 'eggs', 'fish', 'crustaceans', 'molluscs'];
const FROM_THE_SEA: readonly AllergenId[] = ['fish', 'crustaceans', 'molluscs'];

function dietTest(word: 'vegan' | 'vegetarian'): PromiseTest {
  const vegan = word === 'vegan';
  const flesh = ['meat', 'fish', 'shellfish', 'raw-meat', 'poultry', 'raw-fish', 'liver', 'rennet'];
  const breakingFlags = vegan ? ['animal', 'honey', ...flesh] : flesh;
  const breakingRoles = vegan ? ['egg', 'dairy', 'meat', 'fish'] : ['meat', 'fish'];
  const breakingClasses = vegan ? FROM_ANIMALS : FROM_THE_SEA;
  return {
    kind: 'diet',
    word,
    ask(food) {
      if (!food) return 'unknown';
      if (food.flags.includes('vegan') || (!vegan && food.flags.includes('vegetarian'))) return 'fine';
      const breaks =
        breakingFlags.some((flag) => food.flags.includes(flag)) ||
        breakingRoles.some((role) => (food.roles as readonly string[]).includes(role)) ||
        breakingClasses.some((one) => surelyHolds(food).includes(one));
      return breaks ? 'breaks' : 'unknown';
    },
    kitchen: () => false,
  };
}

const alcoholTest: PromiseTest = {
  kind: 'diet',
  word: 'alcohol',
  ask(food) {
    if (!food) return 'unknown';
    const value = food.nutrients.alcohol;
    if (food.flags.includes('alcohol') || food.roles.includes('spirit') || (value && value.n > 0n)) return 'breaks';
    return 'fine';
  },
  kitchen: () => false,
};

const unreadable = (word: string): PromiseTest => ({
  kind: 'unreadable',
  word,
  ask: () => 'unknown',
  kitchen: () => false,
});

function freeOfTest(written: string): PromiseTest {
  const word = normaliseName(written);
  if (word === 'alcohol') return alcoholTest;
  const classes = allergensPromised(word) ?? ownValue(OTHER_WORDS, word);
  return classes ? allergenTest(word, [...classes, ...(ownValue(WIDER, word) ?? [])]) : unreadable(word);
}

/**
 * The promises of a recipe: `free of` lines, and keywords that are promises ('vegan', 'gluten-free'). `placeOfKeyword`
 * finds where a keyword stands.
 */
export function promisesOf(facts: RecipeFacts, placeOfKeyword: (keyword: string) => Place): Promised[] {
  const promised: Promised[] = facts.freeOf.map(({ allergen, place }) => ({
    text: `free of ${allergen}`,
    test: freeOfTest(allergen),
    place,
  }));
  for (const keyword of facts.keywords) {
    const word = keyword.trim().toLowerCase();
    if (word === 'vegan' || word === 'vegetarian')
      promised.push({ text: word, test: dietTest(word), place: placeOfKeyword(keyword) });
    const free = /^(.+?)[- ]free$/.exec(word)?.[1];
    if (free !== undefined) promised.push({ text: word, test: freeOfTest(free), place: placeOfKeyword(keyword) });
  }
  return promised;
}

const HOW_IT_BREAKS = { in: 'ingredient', optional: 'optional', or: 'alternative' } as const;

/** Holds a promise against everything that goes in. */
export function judge(promised: Promised, uses: readonly FoodUse[], kitchens: readonly KitchenTraces[]): Verdict {
  const breaking: Against[] = [];
  const doubtful: Against[] = [];
  for (const use of uses) {
    const answer = promised.test.ask(use.food);
    if (answer === 'fine') continue;
    const one = { food: use.name, place: use.place };
    // What a line allows to go in breaks the promise of whoever takes the line at its word.
    if (answer === 'breaks') {
      // Of a choice left open it is the choice that breaks it, told once.
      const against = { ...one, food: use.chosenFrom ?? use.name, why: HOW_IT_BREAKS[use.how] };
      const told = ({ food, place }: Against): boolean =>
        food === against.food && place.file === against.place.file && place.start === against.place.start;
      if (!breaking.some(told)) breaking.push(against);
    } else if (use.unread) doubtful.push({ ...one, why: 'unread' });
    // A choice left open is judged food by food; what its foods share only serves to break a promise.
    else if (use.choice !== 'class') doubtful.push({ ...one, why: answer });
  }
  for (const kitchen of kitchens) {
    if (promised.test.kitchen(kitchen.allergens))
      doubtful.push({ food: kitchen.kitchen, place: kitchen.place, why: 'kitchen' });
  }
  // What goes in for certain is told before what may.
  const sure = breaking.filter(({ why }) => why === 'ingredient');
  const against = [...sure, ...breaking.filter((one) => !sure.includes(one))];
  if (against.length > 0) return { promised, verdict: 'contradicted', against };
  const doubt = doubtful.length > 0 || promised.test.kind === 'unreadable';
  return { promised, verdict: doubt ? 'cannot confirm' : 'not contradicted', against: doubtful };
}
