import { isSingle, type Interval } from './interval.js';
import { absolute, compare, ONE, rational, subtract, toDecimal, toExactText, type Rational } from './rational.js';
import { units, type UnitId } from './units.js';

/** How numbers are set. Passed to every printing function; there is no default that a locale could change. */
export interface NumberStyle {
  /** The decimal mark. */
  readonly decimal: '.' | ',';
  /** `1½`, `340–360`, `−18` instead of `1 1/2`, `340-360`, `-18`. */
  readonly typographic: boolean;
  /** A no-break space between number and unit, and inside a mixed number, so that a line never ends between them. */
  readonly noBreak: boolean;
}

/** As Quern files are written: ASCII marks and a decimal point. `parseRational` and the notation read it back. */
export const PLAIN: NumberStyle = { decimal: '.', typographic: false, noBreak: false };

/** As cards are set: typographic forms, decimal point, no-break spaces. */
export const TYPOGRAPHIC: NumberStyle = { decimal: '.', typographic: true, noBreak: true };

// Languages that write a decimal comma, and their regions that write a point all the same (Unicode CLDR; the tests
// compare every entry with the platform's copy of it).
const COMMA_LANGUAGES = new Set(
  'af az be bg bs ca cs da de el es et eu fi fo fr gl hr hu hy id is it ka kk ky lt lv mk nb nl nn no pl pt ro ru sk sl sq sr sv tr uk uz vi'.split(
    ' ',
  ),
);
const POINT_REGIONS = new Set(
  'de-CH de-LI es-DO es-GT es-HN es-MX es-NI es-PA es-PE es-PR es-SV es-US it-CH'.split(' '),
);

/** The decimal mark of a language tag such as `de`, `fr-CA`, `es-MX`. An unknown language has a point, as English has. */
export function decimalMark(language: string): '.' | ',' {
  const [tongue = '', ...rest] = language.split(/[-_]/);
  const region = rest.find((part) => /^[a-z]{2}$/i.test(part));
  const base = tongue.toLowerCase();
  if (region && POINT_REGIONS.has(`${base}-${region.toUpperCase()}`)) return '.';
  return COMMA_LANGUAGES.has(base) ? ',' : '.';
}

/** A style with the decimal mark of a language. */
export function styleFor(language: string, base: NumberStyle = PLAIN): NumberStyle {
  return { ...base, decimal: decimalMark(language) };
}

const space = (style: NumberStyle): string => (style.noBreak ? '\u00a0' : ' ');
const minus = (style: NumberStyle): string => (style.typographic ? '\u2212' : '-');

/** ASCII digits with a point and a hyphen, set in the style. */
function dress(text: string, style: NumberStyle): string {
  const marked = style.decimal === ',' ? text.replace('.', ',') : text;
  return marked.startsWith('-') ? minus(style) + marked.slice(1) : marked;
}

/** A decimal with at most `places` digits after the mark, rounded half away from zero, trailing zeros left off. */
export function printDecimal(value: Rational, places: number, style: NumberStyle = PLAIN): string {
  const text = toDecimal(value, places);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return dress(trimmed === '-0' ? '0' : trimmed, style);
}

/** A decimal with exactly `places` digits after the mark: columns, and figures whose zeros say how fine they are. */
export function printFixed(value: Rational, places: number, style: NumberStyle = PLAIN): string {
  const text = toDecimal(value, places);
  return dress(/^-[0.]+$/.test(text) ? text.slice(1) : text, style);
}

const GLYPHS: ReadonlyMap<string, string> = new Map([
  ['1/4', '¼'],
  ['1/2', '½'],
  ['3/4', '¾'],
  ['1/3', '⅓'],
  ['2/3', '⅔'],
  ['1/8', '⅛'],
  ['3/8', '⅜'],
  ['5/8', '⅝'],
  ['7/8', '⅞'],
  ['1/5', '⅕'],
  ['2/5', '⅖'],
  ['3/5', '⅗'],
  ['4/5', '⅘'],
  ['1/6', '⅙'],
  ['5/6', '⅚'],
]);

/** A whole number and a fraction, exactly: `3`, `1/2`, `1 1/2`; typographic `½`, `1½`. Any denominator is printed. */
export function printMixed(value: Rational, style: NumberStyle = PLAIN): string {
  const size = absolute(value);
  const whole = size.n / size.d;
  const part = subtract(size, rational(whole));
  const ahead = value.n < 0n ? minus(style) : '';
  if (part.n === 0n) return `${ahead}${whole}`;
  const glyph = style.typographic ? GLYPHS.get(`${part.n}/${part.d}`) : undefined;
  const fraction = glyph ?? `${part.n}${style.typographic ? '\u2044' : '/'}${part.d}`;
  if (whole === 0n) return ahead + fraction;
  return `${ahead}${whole}${glyph ? '' : space(style)}${fraction}`;
}

const COOKS_DENOMINATORS: ReadonlySet<bigint> = new Set([1n, 2n, 3n, 4n, 8n]);

/**
 * A number of things or spoons as a cook says it: an exact mixed number in halves, thirds, quarters or eighths, else a
 * decimal with at most `places` digits (so it may be rounded: 2.17 eggs).
 */
export function printCount(value: Rational, style: NumberStyle = PLAIN, places = 2): string {
  return COOKS_DENOMINATORS.has(value.d) ? printMixed(value, style) : printDecimal(value, places, style);
}

/** Nothing lost: a finite decimal as it is (`0.125`), anything else as a mixed number (`1 2/3`). */
export function printExact(value: Rational, style: NumberStyle = PLAIN): string {
  const text = toExactText(value);
  return text.includes('/') ? printMixed(value, style) : dress(text, style);
}

/** Two printed bounds as one range, `340-360`, with an en dash when typographic; the same bound twice is printed once. */
export function printRange(low: string, high: string, style: NumberStyle = PLAIN): string {
  if (low === high) return low;
  return `${low}${style.typographic ? '\u2013' : '-'}${high}`;
}

/** An interval, each bound through `print`. Bounds that come out the same are printed once. */
export function printInterval(
  range: Interval,
  print: (value: Rational, style: NumberStyle) => string,
  style: NumberStyle = PLAIN,
): string {
  const low = print(range.low, style);
  return isSingle(range) ? low : printRange(low, print(range.high, style), style);
}

/** `66.7 %`: exactly `places` digits. The value is in hundredths (66.7, not 0.667). */
export function printPercent(hundredths: Rational, places: number, style: NumberStyle = PLAIN): string {
  return `${printFixed(hundredths, places, style)}${space(style)}%`;
}

/** The unit's word after a number: `cup` after 1/2 and 1, `cups` after 1 1/2 and 0. */
export function unitWord(unit: UnitId, after: Rational): string {
  const size = absolute(after);
  return size.n > 0n && compare(size, ONE) <= 0 ? units[unit].one : units[unit].many;
}

/** A number already printed and the word after it. */
export function withUnit(number: string, word: string, style: NumberStyle = PLAIN): string {
  return `${number}${space(style)}${word}`;
}

const DECIMAL_UNITS: ReadonlySet<UnitId> = new Set<UnitId>([
  'mg', 'g', 'kg', 'ml', 'cl', 'dl', 'l', 'mm', 'cm', 'm', 'kj', 'kcal',
]); // prettier-ignore

/**
 * An amount as the notation writes it, `60 g`, `340-360 g`, `1 1/2 cups`: exact, no rounding; metric units in decimals
 * where they are finite, the others in mixed numbers.
 */
export function printMeasure(range: Interval, unit: UnitId, style: NumberStyle = PLAIN): string {
  const print = DECIMAL_UNITS.has(unit) ? printExact : printMixed;
  return withUnit(printInterval(range, print, style), unitWord(unit, range.high), style);
}
