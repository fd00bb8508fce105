import type { IToken } from 'chevrotain';
import { add, compare, divide, multiply, rational, units, ZERO, type Rational, type UnitId } from '@quern/quantity';
import { ownValue, type Span } from '@quern/text';
import type { TimeUnit } from './ast.js';
import { Fault } from './fault.js';
import { figure, type Figure } from './numerals.js';
import { minutesIn } from './time-units.js';
import * as t from './tokens.js';

/*
 * Figures that a sentence mentions: for the hint that one will not scale, for the warning that a sentence contradicts
 * its own line, and for the sheets that print other units. Prose is never part of the sums, so a figure missed here
 * does no harm; one wrongly seen would, so whatever could be something else is passed over ("2 in the tin", "5 c").
 */

interface Seen {
  /** From the figure to its unit, counted from where the sentence begins. */
  readonly span: Span;
  readonly text: string;
  /** Between square brackets: it scales. */
  readonly bracketed: boolean;
}

/** `20 g`, `1-2 tbsp`, `1 lb 4 oz` (in the unit of the first). `each` when each, apiece, per or a head follows. */
export interface MeasureMention extends Seen {
  readonly kind: 'measure';
  readonly low: Rational;
  readonly high: Rational;
  readonly unit: UnitId;
  readonly each: boolean;
}
/** `180 C`, `24-26 °C`. */
export interface TemperatureMention extends Seen {
  readonly kind: 'temperature';
  readonly low: Rational;
  readonly high: Rational;
  readonly scale: 'C' | 'F';
}
/** `10 minutes`, `1 h 30 min`, `half an hour`, `two days`, `overnight` (8 to 16 h); in minutes. */
export interface TimeMention extends Seen {
  readonly kind: 'time';
  readonly low: Rational;
  readonly high: Rational;
}
/** `80 %`. */
export interface PercentMention extends Seen {
  readonly kind: 'percent';
  readonly low: Rational;
  readonly high: Rational;
}
/** `4 mm`, `18 x 18 cm`: one length or several multiplied. */
export interface LengthMention extends Seen {
  readonly kind: 'length';
  readonly lengths: readonly Rational[];
  readonly unit: UnitId;
}
/** `pH 4.2`. */
export interface AcidityMention extends Seen {
  readonly kind: 'acidity';
  readonly low: Rational;
  readonly high: Rational;
}

export type Mention =
  MeasureMention | TemperatureMention | TimeMention | PercentMention | LengthMention | AcidityMention;

/** Marks that stand against words; as spaces they leave every other character in its place. */
const MARKS = /[()[\]{}"“”„«»;!?*•]/g;
const EACH = /^(?:each|apiece|per)$/i;
const PLAIN_DEGREE = /^[cf]\.?$/;
const NUMBER_WORDS: Readonly<Record<string, Rational>> = {
  a: rational(1),
  an: rational(1),
  one: rational(1),
  two: rational(2),
  three: rational(3),
  four: rational(4),
  five: rational(5),
  six: rational(6),
  seven: rational(7),
  eight: rational(8),
  nine: rational(9),
  ten: rational(10),
  twelve: rational(12),
};

/** The figures of a sentence in the order in which they stand. */
export function scanProse(text: string): Mention[] {
  return new ProseScanner(text).scan();
}

interface Range {
  readonly low: Rational;
  readonly high: Rational;
  /** Index of the token after it. */
  readonly next: number;
  readonly lengths: readonly Rational[];
}

class ProseScanner {
  readonly #text: string;
  readonly #tokens: readonly IToken[];
  readonly #brackets: readonly Span[];
  readonly #mentions: Mention[] = [];

  constructor(text: string) {
    this.#text = text;
    this.#tokens = t.tokenize(text.replace(MARKS, ' '), 'list');
    this.#brackets = [...text.matchAll(/\[[^[\]]*\]/g)].map(({ 0: whole, index }) => ({
      start: index,
      end: index + whole.length,
    }));
  }

  scan(): Mention[] {
    let index = 0;
    while (index < this.#tokens.length) index = this.#at(index);
    return this.#mentions;
  }

  #token(index: number): IToken | undefined {
    return this.#tokens[index];
  }

  #type(index: number): IToken['tokenType'] | undefined {
    return this.#tokens[index]?.tokenType;
  }

  /** Looks at one place and gives the next to look at. */
  #at(index: number): number {
    const type = this.#type(index);
    if (type === t.Overnight && !/^(?:the|an|your)$/i.test(this.#token(index - 1)?.image ?? ''))
      return this.#add(index, index + 1, { kind: 'time', low: rational(480), high: rational(960) });
    if (type === t.Acidity) return this.#acidity(index);
    if (type === t.Digits || type === t.Vulgar) return this.#figure(index);
    return this.#spelledTime(index);
  }

  #add(from: number, next: number, mention: Unplaced): number {
    const first = this.#tokens[from] as IToken;
    const last = this.#tokens[next - 1] as IToken;
    const span = { start: first.startOffset, end: t.spanOf(last).end };
    // The stop of the sentence is not part of the unit before it.
    if (this.#text[span.end - 1] === '.') span.end--;
    const bracketed = this.#brackets.some(({ start, end }) => start < span.start && span.end < end);
    this.#mentions.push({ ...mention, span, text: this.#text.slice(span.start, span.end), bracketed } as Mention);
    return next;
  }

  #acidity(index: number): number {
    const at = this.#type(index + 1) === t.Below ? index + 2 : index + 1;
    const range = this.#range(at);
    return range === undefined
      ? index + 1
      : this.#add(index, range.next, { kind: 'acidity', low: range.low, high: range.high });
  }

  #figure(index: number): number {
    const range = this.#range(index);
    if (range === undefined) return index + 1;
    const { low, high, next, lengths } = range;
    const token = this.#token(next);
    if (token === undefined) return next;
    if (token.tokenType === t.Percent) return this.#add(index, next + 1, { kind: 'percent', low, high });
    if (token.tokenType === t.TimeWord) return this.#time(index, range);
    if (token.tokenType === t.Degrees && !PLAIN_DEGREE.test(token.image)) return this.#temperature(index, range, token);
    if (token.tokenType !== t.Unit) return next;
    const unit = token.payload as UnitId;
    const { dimension } = units[unit];
    if (dimension === 'length' && token.image !== 'm')
      return this.#add(index, next + 1, { kind: 'length', lengths, unit });
    if ((dimension !== 'mass' && dimension !== 'volume') || lengths.length > 1) return next + 1;
    return this.#measure(index, range, unit);
  }

  #measure(index: number, { low, high, next }: Range, unit: UnitId): number {
    let end = next + 1;
    let more: Rational = ZERO;
    const second = this.#range(end);
    const secondUnit = second && this.#token(second.next);
    if (second !== undefined && secondUnit?.tokenType === t.Unit) {
      const other = units[secondUnit.payload as UnitId];
      // `1 lb 4 oz`, but not `20 g 100 ml`, which are two measures.
      if (other.dimension === 'mass' && units[unit].dimension === 'mass' && compare(other.size, units[unit].size) < 0) {
        more = multiply(second.low, divide(other.size, units[unit].size));
        end = second.next + 1;
      }
    }
    const each = EACH.test(this.#token(end)?.image.replace(/\.$/, '') ?? '');
    return this.#add(index, end, { kind: 'measure', low: add(low, more), high: add(high, more), unit, each });
  }

  #time(index: number, { low, high, next }: Range): number {
    const minutes = (value: Rational, at: number): Rational => minutesIn(value, this.#token(at)?.payload as TimeUnit);
    let end = next + 1;
    let more: Rational = ZERO;
    const at = /^and$/i.test(this.#token(end)?.image ?? '') ? end + 1 : end;
    const second = this.#range(at);
    if (second !== undefined && this.#type(second.next) === t.TimeWord) {
      const smaller = compare(minutes(rational(1), second.next), minutes(rational(1), next)) < 0;
      if (smaller) {
        more = minutes(second.low, second.next);
        end = second.next + 1;
      }
    }
    return this.#add(index, end, {
      kind: 'time',
      low: add(minutes(low, next), more),
      high: add(minutes(high, next), more),
    });
  }

  #temperature(index: number, { low, high, next }: Range, token: IToken): number {
    const before = this.#token(index - 1);
    const figureStart = this.#token(index)?.startOffset ?? 0;
    const minus =
      before?.tokenType === t.Dash &&
      t.spanOf(before).end === figureStart &&
      !/\d/.test(this.#text[before.startOffset - 1] ?? '');
    const scale = token.payload as 'C' | 'F';
    if (!minus) return this.#add(index, next + 1, { kind: 'temperature', low, high, scale });
    const negative = ({ n, d }: Rational): Rational => ({ n: -n, d });
    return this.#add(index - 1, next + 1, { kind: 'temperature', low: negative(high), high: negative(low), scale });
  }

  /** `half an hour`, `two days`, `an hour`; but not `a second`, which is most often the one after the first. */
  #spelledTime(index: number): number {
    const half = this.#type(index) === t.Half;
    const article = half ? index + 1 : index;
    const number = ownValue(NUMBER_WORDS, this.#token(article)?.image.toLowerCase() ?? '');
    const word = this.#token(article + 1);
    if (number === undefined || word?.tokenType !== t.TimeWord || word.image.length < 3 || word.payload === 's')
      return index + 1;
    const minutes = minutesIn(half ? rational(number.n, number.d * 2n) : number, word.payload as TimeUnit);
    return this.#add(index, article + 2, { kind: 'time', low: minutes, high: minutes });
  }

  // ---- numbers -----------------------------------------------------------------------------------------------------

  #number(index: number): { figure: Figure; next: number } | undefined {
    const [a, b, c, d] = [0, 1, 2, 3].map((ahead) => this.#token(index + ahead));
    const is = (token: IToken | undefined, type: IToken['tokenType']): boolean => token?.tokenType === type;
    try {
      if (is(a, t.Vulgar)) return { figure: figure({ vulgar: a }, 0), next: index + 1 };
      if (!is(a, t.Digits)) return undefined;
      if (is(b, t.Vulgar)) return { figure: figure({ whole: a, vulgar: b }, 0), next: index + 2 };
      if (is(b, t.Slash) && is(c, t.Digits)) return { figure: figure({ whole: a, bottom: c }, 0), next: index + 3 };
      if (is(b, t.Digits) && is(c, t.Slash) && is(d, t.Digits)) {
        return { figure: figure({ whole: a, top: b, bottom: this.#token(index + 3) }, 0), next: index + 4 };
      }
      return { figure: figure({ whole: a }, 0), next: index + 1 };
    } catch (error) {
      if (error instanceof Fault) return undefined;
      throw error;
    }
  }

  /** A number, a range, or lengths multiplied. */
  #range(index: number): Range | undefined {
    const first = this.#number(index);
    if (first === undefined) return undefined;
    let { next } = first;
    const lengths = [first.figure.value];
    while (this.#type(next) === t.By) {
      const factor = this.#number(next + 1);
      if (factor === undefined) break;
      lengths.push(factor.figure.value);
      next = factor.next;
    }
    const low = first.figure.value;
    const joined = this.#type(next) === t.Dash || this.#type(next) === t.To;
    const second = joined && lengths.length === 1 ? this.#number(next + 1) : undefined;
    if (second === undefined || compare(second.figure.value, low) < 0) return { low, high: low, next, lengths };
    return { low, high: second.figure.value, next: second.next, lengths };
  }
}

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
type Unplaced = DistributiveOmit<Mention, 'span' | 'text' | 'bracketed'>;
