import { exact, multiply, rational, type Rational } from './rational.js';

/** What a unit measures. A percent, a pH and a temperature are not units here: they have types of their own. */
export type Dimension = 'mass' | 'volume' | 'count' | 'length' | 'energy';

/**
 * The units of the notation. `cup`, `tbsp` and `tsp` mean what the file's `cup` fact says (see CupSystem); the others
 * mean one thing everywhere.
 */
export type UnitId =
  | 'mg'
  | 'g'
  | 'kg'
  | 'oz'
  | 'lb'
  | 'ml'
  | 'cl'
  | 'dl'
  | 'l'
  | 'tsp'
  | 'tbsp'
  | 'cup'
  | 'us-fl-oz'
  | 'us-pint'
  | 'us-quart'
  | 'us-gallon'
  | 'imperial-fl-oz'
  | 'imperial-pint'
  | 'imperial-quart'
  | 'imperial-gallon'
  | 'drop'
  | 'pinch'
  | 'clove'
  | 'sprig'
  | 'leaf'
  | 'slice'
  | 'stick'
  | 'sheet'
  | 'bunch'
  | 'piece'
  | 'serving'
  | 'mm'
  | 'cm'
  | 'm'
  | 'inch'
  | 'kj'
  | 'kcal';

/** Which cup a file means: US customary (the default), metric, or Australian (metric cup, tablespoon of 20 ml). */
export type CupSystem = 'us' | 'metric' | 'australian';

export interface Unit {
  readonly id: UnitId;
  readonly dimension: Dimension;
  /** Size in the dimension's base (g, ml, cm, kJ, one piece); spoons and cups as in the US system. */
  readonly size: Rational;
  /** How it is written after one, and after any other number. */
  readonly one: string;
  readonly many: string;
  /** Every lower-case spelling that is read as this unit, besides the two above. */
  readonly spellings: readonly string[];
}

const cubicInch = exact('16.387064'); // ml; 2.54 cm cubed, exact since 1959
const gallon = multiply(rational(231), cubicInch); // 231 cubic inches (NIST Handbook 44)
const part = (whole: Rational, n: number): Rational => multiply(whole, rational(1, n));
const imperialGallon = exact('4546.09'); // ml (Weights and Measures Act 1985)
const pound = exact('453.59237'); // g (NIST Handbook 44)

function unit(
  id: UnitId,
  dimension: Dimension,
  size: Rational,
  one: string,
  many: string,
  spellings: readonly string[] = [],
): Unit {
  return { id, dimension, size, one, many, spellings };
}

/** Every unit. Constants: NIST Handbook 44 and UCUM; a pinch of 0.3 g is a convention of this notation. */
export const units: Readonly<Record<UnitId, Unit>> = {
  mg: unit('mg', 'mass', rational(1, 1000), 'mg', 'mg', ['milligram', 'milligrams', 'milligramme', 'milligrammes']),
  g: unit('g', 'mass', rational(1), 'g', 'g', ['gram', 'grams', 'gramme', 'grammes', 'gr']),
  kg: unit('kg', 'mass', rational(1000), 'kg', 'kg', [
    'kilo',
    'kilos',
    'kilogram',
    'kilograms',
    'kilogramme',
    'kilogrammes',
  ]),
  oz: unit('oz', 'mass', part(pound, 16), 'oz', 'oz', ['ounce', 'ounces']),
  lb: unit('lb', 'mass', pound, 'lb', 'lb', ['lbs', 'pound', 'pounds']),
  ml: unit('ml', 'volume', rational(1), 'ml', 'ml', ['millilitre', 'millilitres', 'milliliter', 'milliliters']),
  cl: unit('cl', 'volume', rational(10), 'cl', 'cl', ['centilitre', 'centilitres', 'centiliter', 'centiliters']),
  dl: unit('dl', 'volume', rational(100), 'dl', 'dl', ['decilitre', 'decilitres', 'deciliter', 'deciliters']),
  l: unit('l', 'volume', rational(1000), 'l', 'l', ['litre', 'litres', 'liter', 'liters']),
  tsp: unit('tsp', 'volume', part(gallon, 768), 'tsp', 'tsp', ['tsps', 'teaspoon', 'teaspoons']),
  tbsp: unit('tbsp', 'volume', part(gallon, 256), 'tbsp', 'tbsp', ['tbsps', 'tbs', 'tablespoon', 'tablespoons']),
  cup: unit('cup', 'volume', part(gallon, 16), 'cup', 'cups'),
  'us-fl-oz': unit('us-fl-oz', 'volume', part(gallon, 128), 'us fl oz', 'us fl oz', [
    'us fluid ounce',
    'us fluid ounces',
  ]),
  'us-pint': unit('us-pint', 'volume', part(gallon, 8), 'us pint', 'us pints'),
  'us-quart': unit('us-quart', 'volume', part(gallon, 4), 'us quart', 'us quarts'),
  'us-gallon': unit('us-gallon', 'volume', gallon, 'us gallon', 'us gallons'),
  'imperial-fl-oz': unit('imperial-fl-oz', 'volume', part(imperialGallon, 160), 'imperial fl oz', 'imperial fl oz', [
    'imperial fluid ounce',
    'imperial fluid ounces',
  ]),
  'imperial-pint': unit('imperial-pint', 'volume', part(imperialGallon, 8), 'imperial pint', 'imperial pints'),
  'imperial-quart': unit('imperial-quart', 'volume', part(imperialGallon, 4), 'imperial quart', 'imperial quarts'),
  'imperial-gallon': unit('imperial-gallon', 'volume', imperialGallon, 'imperial gallon', 'imperial gallons'),
  drop: unit('drop', 'volume', rational(1, 20), 'drop', 'drops'),
  pinch: unit('pinch', 'mass', rational(3, 10), 'pinch', 'pinches'),
  clove: unit('clove', 'count', rational(1), 'clove', 'cloves'),
  sprig: unit('sprig', 'count', rational(1), 'sprig', 'sprigs'),
  leaf: unit('leaf', 'count', rational(1), 'leaf', 'leaves'),
  slice: unit('slice', 'count', rational(1), 'slice', 'slices'),
  stick: unit('stick', 'count', rational(1), 'stick', 'sticks'),
  sheet: unit('sheet', 'count', rational(1), 'sheet', 'sheets'),
  bunch: unit('bunch', 'count', rational(1), 'bunch', 'bunches'),
  piece: unit('piece', 'count', rational(1), 'piece', 'pieces'),
  serving: unit('serving', 'count', rational(1), 'serving', 'servings'),
  mm: unit('mm', 'length', rational(1, 10), 'mm', 'mm', ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  cm: unit('cm', 'length', rational(1), 'cm', 'cm', ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  m: unit('m', 'length', rational(100), 'm', 'm', ['metre', 'metres', 'meter', 'meters']),
  inch: unit('inch', 'length', exact('2.54'), 'inch', 'inches', ['in']),
  kj: unit('kj', 'energy', rational(1), 'kJ', 'kJ'),
  kcal: unit('kcal', 'energy', exact('4.184'), 'kcal', 'kcal', ['cal']),
};

const CUPS: Readonly<Record<CupSystem, Partial<Record<UnitId, Rational>>>> = {
  us: {},
  metric: { cup: rational(250), tbsp: rational(15), tsp: rational(5) },
  australian: { cup: rational(250), tbsp: rational(20), tsp: rational(5) },
};

/** Size of a unit in the base of its dimension (g, ml, cm, kJ, piece), with the cups of the file. */
export function sizeOf(id: UnitId, cups: CupSystem = 'us'): Rational {
  return CUPS[cups][id] ?? units[id].size;
}

/** Lower-case spelling to unit, for every spelling of every unit. Spellings of two or three words have single spaces. */
export const unitSpellings: ReadonlyMap<string, UnitId> = new Map(
  Object.values(units).flatMap((u) =>
    [u.one, u.many, ...u.spellings].map((spelling): [string, UnitId] => [spelling.toLowerCase(), u.id]),
  ),
);
