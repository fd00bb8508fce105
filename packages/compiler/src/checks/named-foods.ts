import { diagnose, type Diagnostic, singular } from '@quern/text';
import type { Food, FoodBook } from '../food-book.js';
import type { FoodScope } from '../foods-in-file.js';
import type { Formula, Item, Make, StepItem } from '../model.js';
import { normaliseName, quoted } from '../names.js';
import { placeOf } from '../places.js';

type Report = (diagnostic: Diagnostic) => void;

/*
 * Foods that a sentence names although no line puts them in (N10), and words that could mean two foods of the pot (N05).
 * Only where the sentence clearly speaks of the food as a thing to use: "the butter", "stir in milk". A food that
 * serves as a tool (a water bath, a floured board) is not asked for.
 */

const USE =
  /(?:\b(?:the|your|all|some|more|remaining|rest of the|half the|a little|an? (?:pinch|little|handful|dash|splash|knob|squeeze|drizzle|few|sprinkling|dusting|grating|touch|bit|drop|spoonful)(?: of)?)|\b(?:add|stir in|fold in|pour in|pour over|whisk in|mix in|beat in|rub in|crumble in|tip in|with|sprinkle over|scatter over|drizzle over|dust with|brush with|season with)(?: the| some| a little| more| an?| \[?[\d½¼¾⅓⅔]+\]?| one| two| three| four| five| six)?|,|\band)\s+$/iu;
/** No word of use is longer than this. */
const USE_LENGTH = 40;
const LIST_LINK = /(?:,|\band)\s+$/i;
// After these a food's name is part of a thing's name or of what is made: "the milk pan", "the egg mixture".
const TOOL =
  /^(?:-|'s?\s|\s+(?:pan|pot|dish|mill|towel|paper|jar|tin|tray|bowl|bag|board|knife|wash|bath|cloth|side|mixture|mix|mass|layer|layers|crust|skin|foam|cellar|grinder|bottle|crock|cooker|rack|shells?|boxes|box|cups?|liquor|bin|glass|glasses|base|sheet|sheets|block|balls?)\b)/i;
// Words of the table that in a sentence mostly mean what is being made, or the cook's water.
const NOT_ASKED_FOR = new Set([
  'water',
  'ice',
  'dough',
  'bread',
  'cake',
  'crust',
  'batter',
  'pastry',
  'loaf',
  'roll',
  'bun',
  'biscuit',
  'cookie',
  'cracker',
  'pie',
  'tart',
  'pancake',
  'waffle',
  'muffin',
  'sauce',
  'stock',
  'broth',
  'soup',
  'custard',
  'syrup',
  'jam',
  'paste',
  'puree',
  'juice',
  'zest',
  'peel',
  'oil',
  'salad',
  'stew',
  'cheese',
  'mince',
  'steak',
  'chop',
  'roast',
  'vegetable',
  'fruit',
  'meat',
  'fish',
  'nut',
  'seed',
  'herb',
  'spice',
  'bean',
  'pea',
  'berry',
  'leaf',
  'flower',
  'dressing',
  'icing',
  'frosting',
  'filling',
  'topping',
  'glaze',
  'gravy',
  'cream',
  'butter cream',
  'foam',
  'jelly',
  'noodle',
  'pasta',
  'rice',
  'toast',
  'crumb',
  'breadcrumb',
  'sandwich',
  'pudding',
  'pickle',
  'brine',
  'marinade',
  'rind',
  'stuffing',
]);

interface SentenceNames {
  /** Every name of the table by which a sentence may call a food, normalised. */
  readonly all: ReadonlySet<string>;
  /** The first words of those that have several. */
  readonly firstOfSeveral: ReadonlySet<string>;
}

const namesByBook = new WeakMap<FoodBook, SentenceNames>();

function sentenceNames(book: FoodBook): SentenceNames {
  const known = namesByBook.get(book);
  if (known) return known;
  const names = new Set<string>();
  for (const name of book.names()) {
    const answer = book.find(name);
    const all = answer.kind === 'found' ? [name, ...answer.match.food.synonyms] : [name];
    for (const one of all) {
      const normal = normaliseName(one);
      if (normal.length >= 3 && normal.split(' ').length <= 3 && !NOT_ASKED_FOR.has(normal)) names.add(normal);
    }
  }
  // The bare words under which ordinary kinds go, though the table has several of each.
  for (const word of ['butter', 'flour', 'sugar', 'salt', 'milk', 'egg', 'yeast', 'honey', 'lemon', 'onion'])
    names.add(word);
  const several = [...names].filter((name) => name.includes(' '));
  const made = { all: names, firstOfSeveral: new Set(several.map((name) => name.slice(0, name.indexOf(' ')))) };
  namesByBook.set(book, made);
  return made;
}

export function checkNamedFoods(formula: Formula, foods: FoodScope, report: Report): void {
  const names = sentenceNames(foods.book);
  const known = knownWords(formula);
  for (const make of formula.makes) {
    make.items.forEach((item, index) => {
      if (item.kind !== 'step') return;
      // A line that cannot be read may be the one that puts it in.
      if (!formula.broken) missingFoods(item, names, known, report);
      twoMeanings(item, foodsBefore(make, index), report);
    });
  }
}

const namesInWords = new Map<string, readonly string[]>();

function wordsOfName(name: string): readonly string[] {
  const known = namesInWords.get(name);
  if (known) return known;
  const words = normaliseName(name)
    .split(/[\s-]+/)
    .map(singular);
  // Bounded, so that a long-lived editor does not keep every half-typed word.
  if (namesInWords.size > 20_000) namesInWords.clear();
  namesInWords.set(name, words);
  return words;
}

const wordsByFood = new WeakMap<Food, readonly string[]>();

/** The words of all names of a food, worked out once a food. */
function wordsOfFood(food: Food): readonly string[] {
  const known = wordsByFood.get(food);
  if (known) return known;
  const words = [...new Set([food.name, ...food.synonyms].flatMap(wordsOfName))];
  wordsByFood.set(food, words);
  return words;
}

/** Every word of every name that the recipe puts in, makes or saves, in the singular. */
function knownWords(formula: Formula): ReadonlySet<string> {
  const words = new Set<string>();
  const add = (name: string): void => {
    for (const word of wordsOfName(name)) words.add(word);
  };
  const visit = (item: Item): void => {
    if (item.kind === 'in') {
      add(item.content.name.text);
      if (item.content.note) add(item.content.note.text);
      if (item.source.kind === 'food' && item.source.food.food) {
        for (const word of wordsOfFood(item.source.food.food)) words.add(word);
      }
      item.alternatives.forEach(visit);
    } else if (item.kind === 'out') {
      if (item.content.as) add(item.content.as.text);
      if (item.content.note) add(item.content.note.text);
    }
  };
  for (const make of formula.makes) {
    add(make.name);
    make.items.forEach(visit);
  }
  for (const product of formula.products.values()) {
    add(product.name);
    for (const part of product.parts) add(part.food.name);
  }
  for (const culture of formula.cultures.values()) add(culture.name);
  add(formula.title);
  for (const gives of [
    formula.facts.gives?.content.thing,
    formula.facts.serves?.content.thing,
    formula.facts.vessel?.content.thing,
  ])
    if (gives) add(gives.text);
  formula.facts.serveWith.forEach(add);
  return words;
}

function missingFoods(item: StepItem, names: SentenceNames, known: ReadonlySet<string>, report: Report): void {
  const proses = [
    { ref: item.ref, prose: item.content.prose },
    ...item.more.map((more) => ({ ref: more.ref, prose: more.content.prose })),
  ];
  const said = new Set<string>();
  for (const { ref, prose } of proses) {
    let linked = false;
    for (const found of longestNames(prose.text, names)) {
      const before = prose.text.slice(Math.max(0, found.start - USE_LENGTH), found.start);
      // In "the butter, sugar and eggs" the list carries the article on; without one before it a comma says nothing.
      const used: boolean = USE.test(before) && (!LIST_LINK.test(before) || linked);
      linked = used || known.has(found.last);
      if (!used || known.has(found.last) || said.has(found.name) || TOOL.test(prose.text.slice(found.end))) continue;
      said.add(found.name);
      const span = { start: prose.span.start + found.start, end: prose.span.start + found.end };
      report(diagnose('N10', placeOf(ref, span), { name: prose.text.slice(found.start, found.end).toLowerCase() }));
    }
  }
}

interface FoundName {
  readonly start: number;
  readonly end: number;
  readonly name: string;
  readonly last: string;
}

/** The longest names that stand in a sentence, up to three words each. */
function longestNames(text: string, names: SentenceNames): FoundName[] {
  const words = wordsOf(text);
  const found: FoundName[] = [];
  for (let at = 0; at < words.length; at++) {
    const first = words[at];
    // A leading article belongs to what stands before the name.
    if (!first || first.lower === 'the') continue;
    let length = 1;
    if (names.firstOfSeveral.has(first.lower)) while (length < 3 && words[at + length]?.follows === true) length++;
    for (; length >= 1; length--) {
      const last = words[at + length - 1];
      if (!last) continue;
      const name = length === 1 ? last.singular : nameOf(words.slice(at, at + length));
      if (!names.all.has(name)) continue;
      found.push({ start: first.start, end: last.end, name, last: last.singular });
      at += length - 1;
      break;
    }
  }
  return found;
}

const nameOf = (words: readonly ProseWord[]): string =>
  words.map(({ lower, singular: one }, index) => (index === words.length - 1 ? one : lower)).join(' ');

interface ProseWord {
  readonly start: number;
  readonly end: number;
  readonly lower: string;
  readonly singular: string;
  /** Whether nothing but space stands between it and the word before. */
  readonly follows: boolean;
}

const ASCII = /^[a-z'-]+$/i;
const plainLower = (word: string): string =>
  ASCII.test(word) ? word.toLowerCase() : word.normalize('NFC').toLowerCase().replaceAll('’', "'");

const WORD = /[\p{L}\p{M}][\p{L}\p{M}'’-]*/gu;

function wordsOf(text: string): readonly ProseWord[] {
  let last = 0;
  return [...text.matchAll(WORD)].map((match): ProseWord => {
    const start = match.index;
    const end = start + match[0].length;
    const lower = plainLower(match[0]);
    const follows = start > 0 && (start === last + 1 ? text[last] === ' ' : text.slice(last, start).trim() === '');
    last = end;
    return { start, end, lower, singular: singular(lower), follows };
  });
}

function foodsBefore(make: Make, index: number): string[] {
  const names = new Set<string>();
  for (const item of make.items.slice(0, index))
    if (item.kind === 'in' && item.source.kind === 'food') names.add(normaliseName(item.content.name.text));
  return [...names];
}

const lastWord = (name: string): string => name.slice(name.lastIndexOf(' ') + 1);

/** N05: "the salt" where fine salt and coarse salt both stand in the make. */
function twoMeanings(item: StepItem, inPot: readonly string[], report: Report): void {
  const byLast = new Map<string, string[]>();
  const lasts = new Set(inPot.map(lastWord));
  if (lasts.size === inPot.length) return;
  for (const name of inPot) {
    const last = lastWord(name);
    byLast.set(last, [...(byLast.get(last) ?? []), name]);
  }
  const { prose } = item.content;
  for (const [last, candidates] of byLast) {
    if (candidates.length < 2) continue;
    for (const word of prose.text.matchAll(/[\p{L}\p{M}]+/gu)) {
      if (singular(word[0].toLowerCase()) !== last || /s$/i.test(word[0])) continue;
      const before = prose.text.slice(0, word.index);
      if (!/\bthe\s+$/i.test(before)) continue;
      const span = { start: prose.span.start + word.index, end: prose.span.start + word.index + word[0].length };
      report(
        diagnose('N05', placeOf(item.ref, span), { word: word[0], candidates: candidates.map(quoted).join(' or ') }),
      );
      break;
    }
  }
}
