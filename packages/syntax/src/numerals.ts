import type { IToken } from 'chevrotain';
import { add, compare, isWhole, rational, type Rational } from '@quern/quantity';
import { cover, type Span } from '@quern/text';
import type { Numeral, NumberRange } from './ast.js';
import { Fault } from './fault.js';
import { spanOf } from './tokens.js';

/** More digits than any kitchen needs; a bound, so that no line can make a number that takes long to reckon with. */
const MOST_BEFORE_POINT = 15;
const MOST_AFTER_POINT = 9;

/** A number as read. */
export interface Figure {
  readonly span: Span;
  readonly value: Numeral;
  /** Digits after the point; null for a fraction. */
  readonly decimals: number | null;
  readonly text: string;
}

/** The tokens of a number: `12`, `1.5`, `½`, `1½`, `3/4`, `1 1/2`. */
export interface FigureTokens {
  readonly whole?: IToken | undefined;
  readonly vulgar?: IToken | undefined;
  readonly top?: IToken | undefined;
  readonly bottom?: IToken | undefined;
}

const VULGAR_FRACTIONS: Readonly<Record<string, readonly [number, number]>> = {
  '¼': [1, 4],
  '½': [1, 2],
  '¾': [3, 4],
  '⅐': [1, 7],
  '⅑': [1, 9],
  '⅒': [1, 10],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** `08 g` is a slip of `8`, `80` or `0.8`; nobody writes it on purpose. */
function refuseLeadingZero(text: string, span: Span): void {
  if (/^0\d/.test(text)) throw new Fault('Q15', span, { figure: text, plain: text.replace(/^0+(?=\d)/, '') });
}

/** The exact value of a number's tokens. @throws Fault when the figure is ambiguous, too long or no number. */
export function figure(tokens: FigureTokens, base: number): Figure {
  const all = [tokens.whole, tokens.top, tokens.bottom, tokens.vulgar].filter((token) => token !== undefined);
  const span = all.map((token) => spanOf(token, base)).reduce(cover);
  if (tokens.whole !== undefined && all.length === 1) return decimal(tokens.whole, span);
  const whole = tokens.vulgar !== undefined || tokens.top !== undefined ? tokens.whole : undefined;
  const part = fraction(tokens, span);
  const start = whole === undefined ? '' : `${whole.image} `;
  const value = whole === undefined ? part.value : add(rational(integer(whole, span)), part.value);
  if (whole !== undefined && compare(part.value, { n: 1n, d: 1n }) >= 0) throw unreadable(start + part.text, span);
  if (isWhole(value)) return { span, value, decimals: 0, text: start + part.text };
  return { span, value: { ...value, fraction: true }, decimals: null, text: start + part.text };
}

function fraction(tokens: FigureTokens, span: Span): { value: Rational; text: string } {
  if (tokens.vulgar !== undefined) {
    const [n, d] = VULGAR_FRACTIONS[tokens.vulgar.image] ?? [0, 1];
    return { value: rational(n, d), text: `${n}/${d}` };
  }
  const top = tokens.top ?? tokens.whole;
  const text = `${top?.image ?? ''}/${tokens.bottom?.image ?? ''}`;
  const bottom = integer(tokens.bottom, span);
  if (bottom === 0n) throw unreadable(text, span);
  return { value: rational(integer(top, span), bottom), text };
}

function integer(token: IToken | undefined, span: Span): bigint {
  const text = token?.image ?? '';
  if (!/^\d+$/.test(text)) throw unreadable(text, span);
  if (text.length > MOST_BEFORE_POINT) throw tooLong(text, span);
  refuseLeadingZero(text, span);
  return BigInt(text);
}

function decimal(token: IToken, span: Span): Figure {
  const text = token.image;
  const [, before = '', mark, after = ''] = /^(\d+)(?:([.,])(\d+))?$/.exec(text) ?? [];
  if (before === '') throw unreadable(text, span);
  if (mark === ',' && before.length <= 3 && after.length === 3 && !before.startsWith('0'))
    throw thousand(before, after, span);
  if (before.length > MOST_BEFORE_POINT || after.length > MOST_AFTER_POINT) throw tooLong(text, span);
  refuseLeadingZero(before, span);
  const value = rational(BigInt(before + after), 10n ** BigInt(after.length));
  // Zeros at the end say how finely something was measured: the printer writes them again.
  const exact = after.endsWith('0') ? { ...value, decimals: after.length } : value;
  return { span, value: exact, decimals: after.length, text };
}

function thousand(before: string, after: string, span: Span): Fault {
  const decimals = after.replace(/0+$/, '') || '0';
  return new Fault('Q05', span, { thousand: before + after, decimal: `${before}.${decimals}` });
}

function tooLong(text: string, span: Span): Fault {
  return new Fault('Q22', span, { written: text.length > 24 ? `${text.slice(0, 24)}…` : text });
}

function unreadable(text: string, span: Span): Fault {
  return new Fault('Q24', span, { written: text });
}

/** The range between two numbers, or the range of one. @throws Fault when it runs down. */
export function numberRange(low: Figure, high: Figure | undefined): NumberRange {
  const bottom = plain(low.value);
  if (high === undefined) return { span: low.span, low: bottom, high: bottom, single: true, decimals: low.decimals };
  const span = cover(low.span, high.span);
  if (compare(low.value, high.value) > 0) throw runsDown(low, high, span);
  const decimals = low.decimals === null || high.decimals === null ? null : Math.max(low.decimals, high.decimals);
  return { span, low: bottom, high: plain(high.value), single: false, decimals };
}

/** The value without the mark of how it was written: a range keeps that in `decimals`. */
function plain({ n, d }: Numeral): Rational {
  return { n, d };
}

function runsDown(low: Figure, high: Figure, span: Span): Fault {
  const mixed = low.decimals === 0 && high.decimals === null && high.value.n < high.value.d;
  const way = mixed
    ? `for a mixed number write “${low.text} ${high.text}”`
    : `write the smaller number first, “${high.text}-${low.text}”`;
  return new Fault('Q04', span, { low: low.text, high: high.text, way });
}
