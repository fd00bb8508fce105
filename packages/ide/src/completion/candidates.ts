import { units, type UnitId } from '@quern/quantity';
import { allergenWords, normaliseName, type Food, type FoodBook, outlineOf } from '@quern/compiler';
import { describeAllergen } from '../hover/allergen-words.js';
import { makeBlockAt, spokenOf } from '../mentions.js';
import type { Meaning } from '../names.js';
import type { Snapshot } from '../snapshot.js';
import type { Candidate } from './item.js';
import { otherFiles, usedFoods } from './used-names.js';

/* What can stand in each kind of place. */

/** Foods: those of the workspace as they are written there, most used first, then those of the table. */
export function* foodCandidates(snapshot: Snapshot): Iterable<Candidate> {
  const used = usedFoods(snapshot);
  for (const { heading } of snapshot.outline.foods) {
    const name = heading.content.name?.text;
    if (name !== undefined) yield { label: name, kind: 'food', detail: 'food of this file', rank: 10 };
  }
  for (const { heading } of snapshot.outline.cultures) {
    const name = heading.content.name?.text;
    if (name !== undefined) yield { label: name, kind: 'culture', detail: 'culture of this file', rank: 20 };
  }
  for (const { name, score } of used.values()) {
    const answer = snapshot.foods.find(name);
    if (answer.kind !== 'found') continue;
    yield { label: name, kind: 'food', detail: detailOf(answer.match.food), rank: Math.max(30, 300 - score) };
  }
  for (const { name, candidate } of tableCandidates(snapshot.foods)) if (!used.has(name)) yield candidate;
}

interface TableName {
  /** Normalised. */
  readonly name: string;
  readonly candidate: Candidate;
}

const tableNames = new WeakMap<FoodBook, readonly TableName[]>();

/** The foods of the table, the same for every keystroke. */
function tableCandidates(book: FoodBook): readonly TableName[] {
  const known = tableNames.get(book);
  if (known) return known;
  const made = book.names().map((label): TableName => {
    return { name: normaliseName(label), candidate: { label, kind: 'food', rank: 400 } };
  });
  tableNames.set(book, made);
  return made;
}

/** Role and allergens of a food, in a few words. */
export function detailOf(food: Food): string {
  const allergens = food.allergens?.map(describeAllergen).join(', ') ?? 'allergens not known';
  return [food.roles.join(', '), allergens === '' ? '' : `contains ${allergens}`]
    .filter((part) => part !== '')
    .join('; ')
    .replace('contains allergens not known', 'allergens not known');
}

/** Makes and saved things above a line, and what is used from other files; those not yet drawn first. */
export function* productCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  const recipe = snapshot.outline.recipes.findLast(({ heading }) => heading.line.number <= line);
  const make = snapshot.makeAt(line)?.make;
  const products = snapshot.formulaAt(line)?.products;
  for (const name of snapshot.namesAround(line)) {
    const { meaning, role, recipe: home } = name;
    const local = home === recipe?.heading.line.number && name.line < line;
    if (role === 'declared' && local && (meaning.kind === 'make' || meaning.kind === 'saved')) {
      if (meaning.name === make?.name) continue;
      const drawn = products?.get(normaliseName(meaning.name))?.draws.length ?? 0;
      yield {
        label: meaning.name,
        kind: 'product',
        detail: meaning.kind === 'make' ? 'made above' : 'saved above',
        rank: drawn > 0 ? 25 : 5,
      };
    }
    if (role === 'declared' && meaning.kind === 'alias')
      yield { label: meaning.name, kind: 'product', detail: 'from another file', rank: 15 };
  }
  for (const { content } of snapshot.outline.head) {
    if (content.kind === 'use' && content.as === undefined)
      yield { label: content.name.text, kind: 'product', detail: `from ${content.path.text}`, rank: 15 };
  }
}

/** What stands in the pot at a line: foods and products that lines above it in the same make put in. */
export function* potCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  const make = makeBlockAt(snapshot, line);
  for (const item of make?.items ?? []) {
    if (item.kind !== 'in' || item.main.line.number >= line) continue;
    yield { label: item.main.content.name.text, kind: 'food', detail: 'in the pot', rank: 10 };
  }
}

/** Every name that the sentences of a make may speak of. */
export function* spokenCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  const make = makeBlockAt(snapshot, line);
  if (make === undefined) return;
  for (const meaning of spokenOf(snapshot, make)) yield { label: meaning.name, kind: kindOf(meaning), rank: 10 };
}

const kindOf = ({ kind }: Meaning): Candidate['kind'] =>
  kind === 'make' || kind === 'saved' || kind === 'alias' ? 'product' : kind === 'culture' ? 'culture' : 'food';

/** Names that edits of a variant can select: foods and products on the lines of the recipe. */
export function* recipeNameCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  const recipe = snapshot.outline.recipes.findLast(({ heading }) => heading.line.number <= line);
  for (const make of recipe?.makes ?? []) {
    for (const item of make.items)
      if (item.kind === 'in') yield { label: item.main.content.name.text, kind: 'food', rank: 10 };
  }
}

export function* makeCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  const recipe = snapshot.outline.recipes.findLast(({ heading }) => heading.line.number <= line);
  for (const { heading } of recipe?.makes ?? []) {
    if (heading?.content.name) yield { label: heading.content.name.text, kind: 'product', rank: 10 };
  }
}

const COMMON: readonly UnitId[] = [
  'g',
  'kg',
  'ml',
  'cup',
  'tbsp',
  'tsp',
  'l',
  'oz',
  'lb',
  'pinch',
  'clove',
  'slice',
  'leaf',
  'sprig',
  'piece',
  'stick',
  'sheet',
  'bunch',
  'dl',
  'cl',
  'mg',
  'us-fl-oz',
  'us-pint',
  'imperial-pint',
  'us-quart',
  'drop',
];

/** Units after a number, in the number's own form. */
export function* unitCandidates(number: string): Iterable<Candidate> {
  const one = /^(?:1|\d+\/\d+|[¼½¾⅓⅔⅛⅜⅝⅞])$/.test(number.trim());
  for (const [index, id] of COMMON.entries()) {
    const label = one ? units[id].one : units[id].many;
    yield { label, kind: 'unit', insert: `${label} `, detail: units[id].dimension, rank: 5 + index };
  }
}

/** Recipes, foods and products of other files, for `use`. */
export function* usableCandidates(snapshot: Snapshot): Iterable<Candidate> {
  for (const other of otherFiles(snapshot)) {
    const path = relativePath(snapshot.path, other.path);
    for (const { heading, makes } of outlineOf(other.document).recipes) {
      const title = heading.content.name?.text;
      if (title !== undefined)
        yield { label: title, kind: 'recipe', insert: `${title} from ${path}`, detail: path, rank: 10 };
      for (const make of makes) {
        const name = make.heading?.content.name?.text;
        if (name !== undefined)
          yield {
            label: name,
            kind: 'product',
            insert: `${name} from ${path}`,
            detail: `made in ${title ?? path}`,
            rank: 100,
          };
      }
    }
    for (const { heading } of outlineOf(other.document).foods) {
      const name = heading.content.name?.text;
      if (name !== undefined)
        yield { label: name, kind: 'food', insert: `${name} from ${path}`, detail: `food of ${path}`, rank: 50 };
    }
  }
}

export function* fileCandidates(snapshot: Snapshot): Iterable<Candidate> {
  for (const file of snapshot.files) {
    if (file !== snapshot.path) yield { label: relativePath(snapshot.path, file), kind: 'file', rank: 10 };
  }
}

/** A path as a file would write it: from its own folder. */
export function relativePath(from: string, to: string): string {
  const start = from.split('/').slice(0, -1);
  const end = to.split('/');
  let common = 0;
  while (common < start.length && common < end.length - 1 && start[common] === end[common]) common++;
  return [...start.slice(common).map(() => '..'), ...end.slice(common)].join('/');
}

/** Dishes for a course: recipes of the file and what the menu or the head uses. */
export function* dishCandidates(snapshot: Snapshot): Iterable<Candidate> {
  for (const { heading } of snapshot.outline.recipes) {
    if (heading.content.name) yield { label: heading.content.name.text, kind: 'recipe', rank: 10 };
  }
  for (const { content } of [...snapshot.outline.head, ...snapshot.outline.menus.flatMap(({ facts }) => facts)]) {
    if (content.kind === 'use')
      yield { label: (content.as ?? content.name).text, kind: 'recipe', detail: content.path.text, rank: 10 };
  }
}

export const allergenCandidates: readonly Candidate[] = allergenWords.map((word) => ({
  label: word,
  kind: 'allergen',
  rank: ['gluten', 'milk', 'egg', 'nut', 'peanut', 'sesame', 'soya'].includes(word) ? 10 : 50,
}));

export const nutrientCandidates: readonly Candidate[] = [
  ['energy', 'kJ'],
  ['fat', 'g'],
  ['saturates', 'g'],
  ['carbohydrate', 'g'],
  ['sugars', 'g'],
  ['fibre', 'g'],
  ['protein', 'g'],
  ['salt', 'g'],
  ['sodium', 'mg'],
  ['alcohol', 'g'],
  ['water', 'g'],
].map(([word = '', unit = ''], index) => ({
  label: word,
  kind: 'nutrient',
  insert: `${word} \${1:0} ${unit}`,
  snippet: true,
  rank: index,
}));

export const timeUnitCandidates: readonly Candidate[] = ['min', 'h', 'd', 'weeks', 'months', 's'].map(
  (label, rank) => ({ label, kind: 'unit', rank }),
);

export const clauseCandidates: readonly Candidate[] = [
  {
    label: 'at',
    kind: 'word',
    insert: 'at ${1:24} C',
    snippet: true,
    detail: 'the temperature around the food',
    rank: 10,
  },
  {
    label: 'until',
    kind: 'word',
    insert: 'until ${1:97} C',
    snippet: true,
    detail: 'the temperature inside it',
    rank: 11,
  },
  {
    label: 'until pH below',
    kind: 'word',
    insert: 'until pH below ${1:4.6}',
    snippet: true,
    detail: 'its acidity',
    rank: 14,
  },
  { label: 'using', kind: 'word', insert: 'using ${1:hob}', snippet: true, detail: 'what is busy besides', rank: 12 },
  { label: 'falling to', kind: 'word', insert: 'falling to ${1:200} C', snippet: true, rank: 15 },
  { label: 'rising to', kind: 'word', insert: 'rising to ${1:220} C', snippet: true, rank: 16 },
  { label: 'fan', kind: 'word', detail: 'with the fan on', rank: 17 },
];

export const timeCandidates: readonly Candidate[] = [
  '5 min',
  '30 min',
  '1 h',
  '45-60 min',
  '10-14 h',
  'overnight',
  '1 h or more',
  '7 d',
].map((label, rank) => ({ label, kind: 'value', rank }));

/** What a step can keep busy: what the kitchens of the file have, and the usual things. */
export function* thingCandidates(snapshot: Snapshot): Iterable<Candidate> {
  for (const { facts } of snapshot.outline.kitchens) {
    for (const { content } of facts) {
      if (content.kind === 'has')
        for (const { name } of content.things)
          yield { label: name, kind: 'thing', detail: 'in the kitchen of this file', rank: 5 };
    }
  }
  for (const label of ['hob', '1 shelf', '2 rings', 'flame', 'mixer']) yield { label, kind: 'thing', rank: 20 };
}

export const values = (...labels: readonly string[]): readonly Candidate[] =>
  labels.map((label, rank) => ({ label, kind: 'value', rank }));
