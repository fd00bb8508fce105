import type { AllergenId, Food, FoodRole, NutrientId, PieceWeight, Spread, VolumeWeight } from '@quern/compiler';
import { divide, exact, HUNDRED, parseRational, type Rational } from '@quern/quantity';
import { kebab } from './names.js';

/** The millilitres of one US customary cup: 231 cubic inches / 16, exact (NIST Handbook 44, appendix C). */
const CUP_MILLILITRES = exact('236.5882365');

/** A name of a food beside its preferred one, and the part of the food that it counts (`garlic clove` counts cloves). */
interface Synonym {
  readonly name: string;
  readonly piece: string;
}

/** One line of the table: the names read, the rest still text. */
export interface FoodRow {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly Synonym[];
  readonly line: string;
}

/** A name that means several foods. */
interface AmbiguousName {
  readonly name: string;
  readonly candidates: readonly string[];
}

export interface Table {
  readonly rows: readonly FoodRow[];
  readonly ambiguous: readonly AmbiguousName[];
  readonly nutrients: readonly NutrientId[];
  /** Text of the sources, and the descriptions of their rows. */
  readonly sources: ReadonlyMap<string, string>;
  readonly descriptions: ReadonlyMap<string, string>;
}

/** The first line of a table that this library can read. */
const HEADING = 'quern food table 1';

const list = (text: string | undefined): readonly string[] =>
  text === undefined || text === '' ? [] : text.split(',');

function readSynonym(text: string): Synonym {
  const mark = text.indexOf('=');
  return mark < 0 ? { name: text, piece: '' } : { name: text.slice(0, mark), piece: text.slice(mark + 1) };
}

/**
 * Reads the packed table (docs/foods.md explains it). Only names are read at once.
 * @throws Error when the text is not such a table.
 */
export function readTable(text: string): Table {
  const lines = text.split('\n');
  if (lines[0] !== HEADING) throw new Error(`not a food table: the first line must be “${HEADING}”`);
  const rows: FoodRow[] = [];
  const ambiguous: AmbiguousName[] = [];
  const sources = new Map<string, string>();
  const descriptions = new Map<string, string>();
  let nutrients: readonly NutrientId[] = [];
  for (const line of lines) {
    const [kind, first = '', second = ''] = line.split('\t', 3);
    if (kind === 'F') {
      const synonyms = second === '' ? [] : second.split(';').map(readSynonym);
      rows.push({ id: kebab(first), name: first, synonyms, line });
    } else if (kind === 'A') ambiguous.push({ name: first, candidates: list(second) });
    else if (kind === 'D') descriptions.set(first, second);
    else if (kind === 'S') sources.set(first, second);
    else if (kind === 'N') nutrients = first.split(' ') as NutrientId[];
  }
  return { rows, ambiguous, nutrients, sources, descriptions };
}

function figure(text: string): Rational {
  const value = parseRational(text);
  if (!value) throw new Error(`food table: “${text}” is not a number`);
  return value;
}

/** `120 122.75 142 usda/20481,mill`, or `120 mill` where all sources agree; every figure is divided by `unit`. */
function readSpread(words: readonly string[], unit: Rational | undefined): Spread {
  const values = words.slice(0, -1).map((word) => (unit ? divide(figure(word), unit) : figure(word)));
  const [low, usual = low, high = low] = values;
  if (!low || !usual || !high) throw new Error('food table: a weight without a figure');
  return { low, usual, high, sources: list(words.at(-1)) };
}

const orNothing = (word: string): string => (word === '-' ? '' : word);

function readVolume(text: string): VolumeWeight {
  const [form = '', ...rest] = text.split(' ');
  return { form: orNothing(form), perMillilitre: readSpread(rest, CUP_MILLILITRES) };
}

function readPiece(text: string): PieceWeight {
  const [what = '', ...rest] = text.split(' ');
  const bought = what.endsWith('@');
  const [piece = '', size = ''] = (bought ? what.slice(0, -1) : what).split('/');
  return {
    piece: orNothing(piece),
    size: orNothing(size).replace('_', ' '),
    grams: readSpread(rest, undefined),
    basis: bought ? 'as-bought' : 'edible',
  };
}

const readAll = <T>(text: string | undefined, read: (part: string) => T): readonly T[] =>
  text === undefined || text === '' ? [] : text.split(';').map(read);

function readNutrients(text: string | undefined, ids: readonly NutrientId[]): Partial<Record<NutrientId, Rational>> {
  const found: Partial<Record<NutrientId, Rational>> = {};
  (text ?? '').split(' ').forEach((cell, index) => {
    const id = ids[index];
    if (id !== undefined && cell !== '' && cell !== '-') found[id] = figure(cell);
  });
  return found;
}

/** `wheat,eggs` is the whole answer; `?wheat` is what is known of a food whose recipe varies. */
function readAllergens(text: string): { allergens?: readonly AllergenId[]; allergensAtLeast?: readonly AllergenId[] } {
  const complete = !text.startsWith('?');
  const ids = list(complete ? text : text.slice(1)) as readonly AllergenId[];
  if (complete) return { allergens: ids };
  return ids.length > 0 ? { allergensAtLeast: ids } : {};
}

/** Adds a property that is reckoned when it is first read, and then kept. */
function whenAsked<K extends keyof Food>(food: object, key: K, read: () => Food[K]): void {
  Object.defineProperty(food, key, {
    configurable: true,
    enumerable: true,
    get() {
      const value = read();
      Object.defineProperty(food, key, { value, enumerable: true });
      return value;
    },
  });
}

function allSources(food: Food, ofNutrients: readonly string[]): readonly string[] {
  const spreads = [...food.volumes.map((weight) => weight.perMillilitre), ...food.pieces.map((weight) => weight.grams)];
  return [...new Set([...ofNutrients, ...spreads.flatMap((spread) => spread.sources)])];
}

/** A food of the table. Its figures become fractions only when they are asked for. */
export function readFood(row: FoodRow, nutrients: readonly NutrientId[]): Food {
  const cells = row.line.split('\t');
  const edible = cells[7] ?? '';
  const plain = {
    id: row.id,
    name: row.name,
    synonyms: row.synonyms.map((synonym) => synonym.name),
    roles: list(cells[3]) as readonly FoodRole[],
    classes: list(cells[4]),
    ...readAllergens(cells[5] ?? ''),
    traces: [],
    flags: list(cells[6]),
    nutrientSources: list(cells[11]),
    ...(edible === '' ? {} : { ediblePortion: divide(figure(edible), HUNDRED) }),
  };
  whenAsked(plain, 'nutrients', () => readNutrients(cells[8], nutrients));
  whenAsked(plain, 'volumes', () => readAll(cells[9], readVolume));
  whenAsked(plain, 'pieces', () => readAll(cells[10], readPiece));
  const food = plain as unknown as Food;
  whenAsked(plain, 'sources', () => allSources(food, plain.nutrientSources));
  return food;
}
