import { diagnose, nearest, ownValue, shift, type Diagnostic, type Place } from '@quern/text';
import {
  absolute,
  add,
  compare,
  divide,
  exact,
  greatest,
  multiply,
  rational,
  sizeOf,
  subtract,
  toDecimal,
  units,
  type CupSystem,
  type Rational,
} from '@quern/quantity';
import type { FoodBlock, Line, PerFact, WeighsFact, ListFact } from '@quern/syntax';
import type { AllergenId, Food, FoodBook, NutrientId, PieceWeight, Spread, VolumeWeight } from './food-book.js';
import { allergensDeclared, allergenWords } from './allergen-names.js';
import type { LineRef } from './model.js';
import { normaliseName } from './names.js';
import { linePlace } from './places.js';
import { isSpelledCount } from './weighing.js';

/** Words of a label for what it declares, and the nutrient each stands for. */
const labelWords: Readonly<Record<string, NutrientId | 'salt' | 'energy'>> = {
  energy: 'energy',
  fat: 'fat',
  saturates: 'saturates',
  'saturated fat': 'saturates',
  'trans fat': 'trans',
  monounsaturates: 'monounsaturates',
  polyunsaturates: 'polyunsaturates',
  carbohydrate: 'carbohydrateAvailable',
  carbohydrates: 'carbohydrateAvailable',
  sugars: 'sugars',
  sugar: 'sugars',
  starch: 'starch',
  polyols: 'polyols',
  fibre: 'fibre',
  fiber: 'fibre',
  protein: 'protein',
  salt: 'salt',
  sodium: 'sodium',
  alcohol: 'alcohol',
  water: 'water',
  cholesterol: 'cholesterol',
  potassium: 'potassium',
  calcium: 'calcium',
  iron: 'iron',
  'vitamin d': 'vitaminD',
};

const KILOJOULE_TO_KILOCALORIE = exact('4.184'); // thermochemical calorie
const inMilligrams: ReadonlySet<string> = new Set(['sodium', 'cholesterol', 'potassium', 'calcium', 'iron']);

const stated = (value: Rational): Spread => ({ low: value, usual: value, high: value, sources: ['stated'] });

/**
 * A food written in the file, as the table would hold it. Values are the label's own.
 * Carbohydrate on a label is taken as available carbohydrate, without fibre.
 */
export function foodOfBlock(
  block: FoodBlock,
  file: string,
  cups: CupSystem,
  book: FoodBook,
  report: (d: Diagnostic) => void,
): Food {
  const name = block.heading.content.name?.text ?? '';
  const answer = book.find(name);
  const table = answer.kind === 'found' ? answer.match.food : undefined;
  const nutrients: Partial<Record<NutrientId, Rational>> = {};
  const volumes: VolumeWeight[] = [];
  const pieces: PieceWeight[] = [];
  let allergens: AllergenId[] | undefined;
  let traces: AllergenId[] = [];
  let perMillilitre: Rational | undefined;
  for (const { content, line } of block.facts) {
    if (content.kind === 'weighs' && weighsNothing(content))
      report(diagnose('Q17', linePlace({ file, line }), { what: 'this measure' }));
    else if (content.kind === 'weighs') {
      const weight = weighsFact(content, cups);
      if (weight.kind === 'volume') {
        perMillilitre = weight.grams;
        volumes.push({ form: '', perMillilitre: stated(weight.grams) });
      } else pieces.push({ piece: weight.piece, size: '', grams: stated(weight.grams), basis: 'edible' });
    }
    if (content.kind === 'list-fact' && (content.word === 'contains' || content.word === 'traces')) {
      const found = allergenList(content, { file, line }, report);
      if (content.word === 'contains') allergens = [...(allergens ?? []), ...found];
      else traces = [...traces, ...found];
    }
  }
  for (const { content, line } of block.facts) {
    if (content.kind === 'per') readLabel(content, nutrients, perMillilitre, { file, line }, report);
  }
  checkEnergy(name, nutrients, { file, line: block.heading.line }, report);
  const own: Food = {
    id: `file:${normaliseName(name)}`,
    name,
    synonyms: [],
    roles: [],
    classes: [],
    nutrients,
    volumes,
    pieces,
    ...(allergens ? { allergens } : {}),
    traces,
    flags: [],
    sources: ['stated'],
  };
  return table ? onTopOf(table, own) : own;
}

/**
 * A block for a food that the table has says what this packet's label says; of what it leaves out, the table's food
 * still holds: what the food is, how it weighs, and its water. Of a label's own nutrients none is filled in.
 */
function onTopOf(table: Food, own: Food): Food {
  const { water, alcohol } = table.nutrients;
  const labelled = Object.keys(own.nutrients).length > 0;
  const nutrients = labelled
    ? { ...(water ? { water } : {}), ...(alcohol ? { alcohol } : {}), ...own.nutrients }
    : table.nutrients;
  const allergens = own.allergens ?? table.allergens;
  return {
    ...own,
    roles: table.roles,
    classes: table.classes,
    ...(table.ediblePortion ? { ediblePortion: table.ediblePortion } : {}),
    nutrients,
    volumes: own.volumes.length > 0 ? own.volumes : table.volumes,
    pieces: own.pieces.length > 0 ? own.pieces : table.pieces,
    ...(allergens ? { allergens } : {}),
    traces: [...table.traces, ...own.traces],
    flags: table.flags,
    sources: labelled ? own.sources : [...own.sources, ...table.sources],
  };
}

/** kJ a gram (Regulation (EU) 1169/2011, Annex XIV). */
const ENERGY_FACTORS: readonly (readonly [NutrientId, Rational])[] = [
  ['fat', rational(37)],
  ['carbohydrateAvailable', rational(17)],
  ['protein', rational(17)],
  ['fibre', rational(8)],
  ['alcohol', rational(29)],
];
// Labels round each part: the energy may lie this far from what the printed parts give, or 40 kJ for light foods.
const ENERGY_TOLERANCE = exact('0.1');
const ENERGY_SLACK = rational(40);

/** A03: energy that does not follow from the parts beside it. Asked only when fat, carbohydrate and protein all stand there. */
function checkEnergy(
  name: string,
  nutrients: Partial<Record<NutrientId, Rational>>,
  ref: LineRef,
  report: (d: Diagnostic) => void,
): void {
  const { energyKcal, fat, carbohydrateAvailable, protein } = nutrients;
  if (!energyKcal || !fat || !carbohydrateAvailable || !protein) return;
  let parts = rational(0);
  for (const [nutrient, factor] of ENERGY_FACTORS)
    parts = add(parts, multiply(nutrients[nutrient] ?? rational(0), factor));
  const label = multiply(energyKcal, KILOJOULE_TO_KILOCALORIE);
  const off = absolute(subtract(parts, label));
  if (compare(off, greatest(multiply(label, ENERGY_TOLERANCE), ENERGY_SLACK)) <= 0) return;
  report(
    diagnose('A03', linePlace(ref), { name, parts: `${toDecimal(parts, 0)} kJ`, label: `${toDecimal(label, 0)} kJ` }),
  );
}

const weighsNothing = (content: WeighsFact): boolean =>
  content.amount.range.low.n <= 0n || content.equal.range.low.n <= 0n;

function weighsFact(
  content: WeighsFact,
  cups: CupSystem,
): { kind: 'volume' | 'piece'; piece: string; grams: Rational } {
  const grams = multiply(content.equal.range.low, sizeOf(content.equal.unit.id, cups));
  const left = content.amount;
  if (left.kind === 'measure' && units[left.unit.id].dimension === 'volume') {
    return { kind: 'volume', piece: '', grams: divide(grams, multiply(left.range.low, sizeOf(left.unit.id, cups))) };
  }
  const piece = left.kind === 'measure' && isSpelledCount(left.unit.id) ? left.unit.id : '';
  return { kind: 'piece', piece: piece === 'piece' ? '' : piece, grams: divide(grams, left.range.low) };
}

function allergenList(
  content: ListFact,
  at: { file: string; line: Line },
  report: (d: Diagnostic) => void,
): AllergenId[] {
  const found: AllergenId[] = [];
  for (const item of content.items) {
    const word = normaliseName(item.text);
    if (word === 'nothing') continue;
    const classes = allergensDeclared(word);
    if (classes) found.push(...classes);
    else report(unknownAllergen(item.text, { file: at.file, ...shift(item.span, at.line.start) }));
  }
  return found;
}

export function unknownAllergen(word: string, place: Place): Diagnostic {
  const near = nearest(normaliseName(word), allergenWords)[0];
  return diagnose('A04', place, {
    word,
    near: near
      ? `write “${near}”`
      : 'write one of gluten, milk, eggs, nuts, peanuts, soybeans, fish, crustaceans, molluscs, celery, mustard, sesame, lupin, sulphites',
  });
}

function readLabel(
  content: PerFact,
  into: Partial<Record<NutrientId, Rational>>,
  perMillilitre: Rational | undefined,
  at: { file: string; line: Line },
  report: (d: Diagnostic) => void,
): void {
  if (content.basis === '100 ml' && !perMillilitre) {
    report(diagnose('A05', { file: at.file, start: at.line.start, end: at.line.start + at.line.text.length }, {}));
    return;
  }
  for (const item of content.values) {
    const nutrient =
      ownValue(labelWords, normaliseName(item.nutrient)) ?? ownValue(labelWords, item.nutrient.toLowerCase());
    const place = { file: at.file, ...shift(item.span, at.line.start) };
    if (!nutrient) {
      report(diagnose('A06', place, { word: item.nutrient }));
      continue;
    }
    const value = content.basis === '100 ml' && perMillilitre ? divide(item.value, perMillilitre) : item.value;
    store(nutrient, value, item.unit.toLowerCase(), into);
  }
}

function store(
  nutrient: NutrientId | 'salt' | 'energy',
  value: Rational,
  unit: string,
  into: Partial<Record<NutrientId, Rational>>,
): void {
  if (nutrient === 'energy') {
    // kcal wins when a label gives both, because the figures are kept in kcal.
    if (unit === 'kcal') into.energyKcal = value;
    else into.energyKcal ??= divide(value, KILOJOULE_TO_KILOCALORIE);
    return;
  }
  const grams =
    unit === 'mg'
      ? divide(value, rational(1000))
      : unit === 'µg' || unit === 'ug' || unit === 'mcg'
        ? divide(value, rational(1_000_000))
        : value;
  // Salt equivalent is sodium times 2.5 (Regulation (EU) 1169/2011, Annex I).
  if (nutrient === 'salt') into.sodium = multiply(divide(grams, exact('2.5')), rational(1000));
  else if (nutrient === 'vitaminD') into.vitaminD = multiply(grams, rational(1_000_000));
  else into[nutrient] = inMilligrams.has(nutrient) ? multiply(grams, rational(1000)) : grams;
}
