import { compare, divide, HUNDRED, rational, unitSpellings, units, type Rational, type UnitId } from '@quern/quantity';
import type {
  ClockTime,
  Measure,
  Name,
  NumberRange,
  Numeral,
  Percent,
  Share,
  Temperature,
  Time,
  TimeUnit,
  Words,
} from './ast.js';
import { SENTENCE_WORDS } from './prose-shape.js';
import { duration, OVERNIGHT } from './time-units.js';
import { degreeSpellings, MEANINGS, timeSpellings } from './tokens.js';

/*
 * The parts of plain lines: numbers, measures, names and times as most people write most of them. Everything here reads
 * what it knows for certain and gives undefined for the rest, which is then left to the grammar.
 */

const SPACE = 32;
export const COMMA = 44;
export const DASH = 45;
const POINT = 46;
const SLASH = 47;
const ZERO = 48;
const NINE = 57;
export const COLON = 58;
export const EQUALS = 61;
const APOSTROPHE = 39;

const SMALL = 1;
const CAPITAL = 2;
/** What a character of ASCII is as a letter; 0 for none. */
const LETTERS = new Uint8Array(128);
for (let code = 97; code <= 122; code++) LETTERS[code] = SMALL;
for (let code = 65; code <= 90; code++) LETTERS[code] = CAPITAL;

/** Volumes that differ between countries, which the grammar reads or refuses. */
const COUNTRY_VOLUMES = 'us imperial fl floz fluid pint pints quart quarts gallon gallons pt pts qt qts gal gals'.split(
  ' ',
);
export const isCountryVolume = (word: string): boolean => COUNTRY_VOLUMES.includes(word);
/** What a spoon or cup can be besides level, which the grammar refuses before a unit. */
const FILLED = 'heaped heaping level levelled scant rounded generous good brimming'.split(' ');

/** Words that make a name one for the grammar: they end it, or a sentence could hold them. */
const NOT_PLAIN: ReadonlySet<string> = new Set([
  ...SENTENCE_WORDS,
  ...COUNTRY_VOLUMES,
  ...FILLED,
  ...['the', 'a', 'any', 'x', 'overnight'],
]);
/** Small words that end a name in one kind of line or another: what they mean is for the line to say. */
const ENDS_NAME: ReadonlySet<string> = new Set(['as', 'on', 'of']);
/** No word that is not plain is longer; longer words need not be looked up. */
const LONGEST = Math.max(...[...NOT_PLAIN].map((word) => word.length));

/** Small words of the language that also begin the names of foods. */
const BEGIN_NAMES: ReadonlySet<string> = new Set(['flour', 'water']);

const integers: readonly Rational[] = Array.from({ length: 2001 }, (_, value) => rational(value));
const integer = (value: number): Rational => integers[value] ?? rational(value);

const CLOCK = /([01]\d|2[0-3]):([0-5]\d)(?!\d)/y;

/** How many digits plain numbers have at most before and after the point. */
const MOST_BEFORE = 6;
const MOST_AFTER = 3;

/** A number with where it stands; no `decimals` when it was written as a fraction. */
interface PlainNumber {
  readonly start: number;
  readonly end: number;
  readonly value: Rational;
  readonly decimals: number | null;
}

/** `15 % of` something, as a share. */
export function shareOf({ span, range }: Percent): Share {
  const part = (value: Rational): Rational => divide(value, HUNDRED);
  return { kind: 'share', span, about: false, word: 'percent', low: part(range.low), high: part(range.high) };
}

/** Whether a number is a whole one or has a fraction. */
const countsOrParts = ({ decimals }: PlainNumber): boolean => decimals === 0 || decimals === null;

/** A number as the tree has it outside a range: a fraction says that it was written as one. */
export function numeral({ value, decimals }: PlainNumber): Numeral {
  return decimals === null ? { ...value, fraction: true } : value;
}

/** Reads the parts of one line from left to right. One instance serves every line. */
export abstract class PlainAmounts {
  protected text = '';
  protected at = 0;

  /** The character at the cursor; NaN at the end. */
  protected code(): number {
    return this.text.charCodeAt(this.at);
  }

  protected get ended(): boolean {
    return this.at === this.text.length;
  }

  /** Takes one character; false when another stands there. */
  protected take(code: number): boolean {
    if (this.code() !== code) return false;
    this.at++;
    return true;
  }

  protected takeSpace(): boolean {
    return this.take(SPACE);
  }

  /** Takes a small word and the space after it. */
  protected takeWord(word: string): boolean {
    if (!this.text.startsWith(word, this.at) || this.text.charCodeAt(this.at + word.length) !== SPACE) return false;
    this.at += word.length + 1;
    return true;
  }

  protected digitFollows(): boolean {
    const code = this.code();
    return code >= ZERO && code <= NINE;
  }

  /** The word of small or capital letters at the cursor, in lower case. */
  protected letters(): string | undefined {
    const { text } = this;
    const start = this.at;
    let kinds = 0;
    let end = start;
    for (; end < text.length; end++) {
      const kind = LETTERS[text.charCodeAt(end)];
      if (!kind) break;
      kinds |= kind;
    }
    if (end === start) return undefined;
    this.at = end;
    const word = text.slice(start, end);
    return kinds & CAPITAL ? word.toLowerCase() : word;
  }

  // ---- numbers -----------------------------------------------------------------------------------------------------

  /** Digits as a number; undefined when there are none, too many, or a zero before others. */
  private digits(most: number): number | undefined {
    const start = this.at;
    let value = 0;
    while (this.digitFollows()) value = value * 10 + this.text.charCodeAt(this.at++) - ZERO;
    const length = this.at - start;
    if (length === 0 || length > most) return undefined;
    return length > 1 && this.text.charCodeAt(start) === ZERO ? undefined : value;
  }

  /** `250`, `1.5`, `3/4`, `1 1/2`. */
  protected number(): PlainNumber | undefined {
    const start = this.at;
    const whole = this.digits(MOST_BEFORE);
    if (whole === undefined) return undefined;
    const next = this.code();
    if (next === POINT) return this.decimal(start, whole);
    if (next === SLASH) return this.fraction(start, 0, whole);
    if (next === SPACE) {
      const end = this.at++;
      const top = this.digitFollows() ? this.digits(MOST_AFTER) : undefined;
      if (top !== undefined && this.code() === SLASH) return this.fraction(start, whole, top);
      this.at = end;
    }
    return { start, end: this.at, value: integer(whole), decimals: 0 };
  }

  private decimal(start: number, whole: number): PlainNumber | undefined {
    this.at++;
    const from = this.at;
    let part = 0;
    while (this.digitFollows()) part = part * 10 + this.text.charCodeAt(this.at++) - ZERO;
    const decimals = this.at - from;
    if (decimals === 0 || decimals > MOST_AFTER) return undefined;
    const next = this.code();
    if (next === POINT || next === SLASH) return undefined;
    const parts = 10 ** decimals;
    return { start, end: this.at, value: rational(whole * parts + part, parts), decimals };
  }

  private fraction(start: number, whole: number, top: number): PlainNumber | undefined {
    this.at++;
    const bottom = this.digits(MOST_AFTER);
    if (bottom === undefined || top === 0 || top >= bottom) return undefined;
    return { start, end: this.at, value: rational(whole * bottom + top, bottom), decimals: null };
  }

  /** `250`, `10-14`. */
  protected range(): NumberRange | undefined {
    const low = this.number();
    if (low === undefined) return undefined;
    const { start, value } = low;
    if (!this.take(DASH)) {
      return { span: { start, end: low.end }, low: value, high: value, single: true, decimals: low.decimals };
    }
    const high = this.number();
    if (high === undefined || low.decimals !== 0 || high.decimals !== 0 || value.n > high.value.n) return undefined;
    return { span: { start, end: high.end }, low: value, high: high.value, single: false, decimals: 0 };
  }

  // ---- measures ----------------------------------------------------------------------------------------------------

  /** A unit of food at the cursor; the cursor stays where it was when there is none. */
  protected unit(): UnitId | undefined {
    const start = this.at;
    const word = this.letters();
    const id = word === undefined || MEANINGS.has(word) ? undefined : unitSpellings.get(word);
    if (id !== undefined) {
      const { dimension } = units[id];
      if (dimension === 'mass' || dimension === 'volume' || dimension === 'count') return id;
    }
    this.at = start;
    return undefined;
  }

  /** `250 g`, `1 1/2 cups`, `10-12 g`; `from` is where an `about` before it began. */
  protected measure(from: number | undefined): Measure | undefined {
    const range = this.range();
    if (range === undefined || !this.takeSpace()) return undefined;
    return this.measured(range, from);
  }

  /** The measure of a number, with the unit at the cursor. */
  protected measured(range: NumberRange, from: number | undefined): Measure | undefined {
    const start = this.at;
    const id = this.unit();
    if (id === undefined) return undefined;
    const end = this.at;
    const unit = { span: { start, end }, id };
    return { kind: 'measure', span: { start: from ?? range.span.start, end }, about: from !== undefined, range, unit };
  }

  // ---- names -------------------------------------------------------------------------------------------------------

  /**
   * Words of letters parted by single spaces, up to the end of the line, a comma, or the space before an `=` or before
   * `as`, `on`, `of` or the word given. Every one of them can be nothing but a part of the name.
   */
  protected name(before?: string): Name | undefined {
    const { text } = this;
    const start = this.at;
    for (;;) {
      const from = this.at;
      if (!this.nameWord()) return undefined;
      const length = this.at - from;
      if (length <= LONGEST) {
        const word = text.slice(from, this.at).toLowerCase();
        if (from !== start && word === before) {
          this.at = from - 1;
          break;
        }
        if (NOT_PLAIN.has(word)) return undefined;
        if (from === start) {
          if (MEANINGS.has(word) && !BEGIN_NAMES.has(word)) return undefined;
        } else if (ENDS_NAME.has(word)) {
          this.at = from - 1;
          break;
        }
      }
      const next = this.code();
      if (next === SPACE && text.charCodeAt(this.at + 1) !== EQUALS) this.at++;
      else if (next === SPACE || next === COMMA || this.ended) break;
      else return undefined;
    }
    return { span: { start, end: this.at }, text: text.slice(start, this.at) };
  }

  /** Takes one word of a name: letters, with apostrophes and dashes between them. */
  private nameWord(): boolean {
    const { text } = this;
    const start = this.at;
    let end = start;
    for (; end < text.length; end++) {
      const code = text.charCodeAt(end);
      if (LETTERS[code]) continue;
      if ((code !== DASH && code !== APOSTROPHE) || end === start || !LETTERS[text.charCodeAt(end + 1)]) break;
      // The only volume that is one to the grammar whatever a dash joins to it.
      if (end === start + 4 && text.slice(start, end).toLowerCase() === 'floz') return false;
    }
    this.at = end;
    return end > start;
  }

  /** The words from the cursor to the end of the line; undefined when there are none or their edges need a closer look. */
  protected wordsToEnd(): Words | undefined {
    const { text } = this;
    while (this.code() === SPACE) this.at++;
    const start = this.at;
    const end = text.length;
    if (start === end || text.charCodeAt(start) > 126 || text.charCodeAt(start) < SPACE) return undefined;
    const last = text.charCodeAt(end - 1);
    if (last > 126 || last <= SPACE) return undefined;
    this.at = end;
    return { span: { start, end }, text: text.slice(start) };
  }

  // ---- clocks, times and temperatures --------------------------------------------------------------------------------------

  /** `05:00`, `19:30`. */
  protected clock(): ClockTime | undefined {
    const start = this.at;
    CLOCK.lastIndex = start;
    const [, hours, minutes] = CLOCK.exec(this.text) ?? [];
    if (hours === undefined || minutes === undefined) return undefined;
    this.at = CLOCK.lastIndex;
    return { span: { start, end: this.at }, minutes: Number(hours) * 60 + Number(minutes) };
  }

  /** `20 min`, `10-14 h`, `1 h 30 min`, `about 5 min`, `overnight`. */
  protected time(): Time | undefined {
    const from = this.at;
    const about = this.takeWord('about');
    const start = this.at;
    if (this.text.startsWith('overnight', start)) {
      this.at = start + 'overnight'.length;
      return { kind: 'overnight', span: { start: from, end: this.at }, about, ...OVERNIGHT };
    }
    const first = this.number();
    const dash = first !== undefined && this.take(DASH);
    const last = dash ? this.number() : first;
    if (first === undefined || last === undefined || !this.takeSpace()) return undefined;
    const unit = this.timeUnit();
    if (unit === undefined) return undefined;
    const span = (): Time['span'] => ({ start: from, end: this.at });
    if (dash) {
      if (!countsOrParts(first) || !countsOrParts(last) || compare(first.value, last.value) > 0) return undefined;
      const [low, high] = [first, last].map((number) => duration([{ value: numeral(number), unit }]));
      return low && high && { span: span(), about, kind: 'range', low, high };
    }
    if (first.decimals === null) return undefined;
    const parts = [{ value: first.value, unit }];
    const next = this.text.charCodeAt(this.at + 1);
    if (this.code() === SPACE && next >= ZERO && next <= NINE) {
      this.at++;
      const more = this.number();
      if (more === undefined || more.decimals !== 0 || !this.takeSpace()) return undefined;
      const second = this.timeUnit();
      if (second === undefined) return undefined;
      parts.push({ value: more.value, unit: second });
    }
    const low = duration(parts);
    const atLeast = parts.length === 1 && this.takeOrMore();
    return { span: span(), about, kind: atLeast ? 'at-least' : 'fixed', low, high: low };
  }

  private takeOrMore(): boolean {
    const words = ' or more';
    if (!this.text.startsWith(words, this.at) || LETTERS[this.text.charCodeAt(this.at + words.length)]) return false;
    this.at += words.length;
    return true;
  }

  private timeUnit(): TimeUnit | undefined {
    const word = this.letters();
    return word === undefined ? undefined : timeSpellings.get(word);
  }

  /** `180 C`, `-18 C`, `150-160 C`. */
  protected temperature(): Temperature | undefined {
    const start = this.at;
    const minus = this.take(DASH);
    const range = this.range();
    if (range === undefined || range.decimals !== 0 || (minus && !range.single) || !this.takeSpace()) return undefined;
    const word = this.letters();
    const scale = word === undefined ? undefined : degreeSpellings.get(word);
    if (scale === undefined) return undefined;
    const signed = (value: Rational): Rational => (minus ? { n: -value.n, d: value.d } : value);
    return { span: { start, end: this.at }, low: signed(range.low), high: signed(range.high), scale };
  }
}
