import { createToken, createTokenInstance, Lexer, type ILexingError, type IToken, type TokenType } from 'chevrotain';
import type { Span } from '@quern/text';
import { unitSpellings, units, type UnitId } from '@quern/quantity';
import type { TimeUnit } from './ast.js';

/*
 * The words of a line. Each line is read alone, so a token never holds a line end. The lexer knows only shapes (a
 * number, a mark, a word); what a word means is looked up afterwards, because most of the meanings are long lists
 * (units, times) and because a word of the language is an ordinary word inside a name.
 */

/** Everything that counts as a space between words: also no-break and thin spaces, and marks that cannot be seen. */
const SPACE =
  ' \\t\\v\\f\\u00a0\\u1680\\u2000-\\u200b\\u200e\\u200f\\u2028-\\u202f\\u205f-\\u2064\\u2066-\\u206f\\u3000\\ufeff';
const VULGAR = '\\u00bc-\\u00be\\u2150-\\u215e';
const DASH = '\\-\\u2010-\\u2015\\u2212\\ufe63\\uff0d';
const SLASH = '/\\u2044\\u2215';

const spaces = new RegExp(`[${SPACE}]+`, 'g');
const edges = new RegExp(`^[${SPACE}]+|[${SPACE}]+$`, 'g');
export const leadingSpace = new RegExp(`^[${SPACE}]*`);
/** Digits, or one of the typographic fractions, at the first place of a line. */
export const startsWithFigure = new RegExp(`^[0-9${VULGAR}]`);
/** Marks that the formatter writes in plain ASCII. */
export const typographicMarks = /[\u00bc-\u00be\u2150-\u215e\u2010-\u2015\u2212\u2044\u2215\u00d7\u00b0]/;

/** A text without the space around it. */
export function trimmed(text: string): string {
  return text.replace(edges, '');
}

/** A text without the space around it and with each run of space made one plain space. */
export function collapsed(text: string): string {
  return trimmed(text).replace(spaces, ' ');
}

const bare = (name: string, ...categories: TokenType[]): TokenType =>
  createToken({ name, pattern: Lexer.NA, categories });

/** Any token that may stand in a name. */
export const NameWord = bare('NameWord');
/** Any token that may begin a name. */
export const NameStart = bare('NameStart', NameWord);

const shape = (name: string, pattern: RegExp, ...categories: TokenType[]): TokenType =>
  createToken({ name, pattern, categories, line_breaks: false });

const Space = createToken({
  name: 'Space',
  pattern: new RegExp(`[${SPACE}]+`),
  group: Lexer.SKIPPED,
  line_breaks: false,
});
/** Lines hold no line end; the lexer wants to know what one would be, to count columns. */
const LineEnd = createToken({ name: 'LineEnd', pattern: /\r\n|\r|\n/, line_breaks: true });

export const Digits = shape('Digits', /\d+(?:[.,]\d+)*/, NameStart);
export const Vulgar = shape('Vulgar', new RegExp(`[${VULGAR}]`), NameStart);
export const Slash = shape('Slash', new RegExp(`[${SLASH}]`), NameWord);
export const Dash = shape('Dash', new RegExp(`[${DASH}]`), NameWord);
export const By = shape('By', new RegExp(`[xX\\u00d7](?=[${SPACE}]*[\\d${VULGAR}])`), NameWord);
export const Percent = shape('Percent', /%/, NameWord);
export const Equals = shape('Equals', /=/);
/** From here on, a note to the reader. */
export const Note = shape('Note', /,[^]*/);
/** The next item of a list. */
export const Comma = shape('Comma', /,/);
export const Colon = shape('Colon', /:/);
/** From here on, prose. */
export const Prose = shape('Prose', /:[^]*/);
/** Volumes that differ between countries, with the country: `us pint`, `imperial fluid ounces`. */
const NamedVolume = shape(
  'NamedVolume',
  new RegExp(
    `(?:u\\.?s\\.?|imperial)[${SPACE}]+(?:fl\\.?[${SPACE}]*oz|fluid[${SPACE}]+ounces?|pints?|quarts?|gallons?)(?![A-Za-z])\\.?`,
    'i',
  ),
  NameStart,
);
/** The same without the country: refused, because a pint is two things. */
export const NakedVolume = shape(
  'NakedVolume',
  new RegExp(
    `(?:fl\\.?[${SPACE}]*oz|fluid[${SPACE}]+ounces?|(?:pints?|quarts?|gallons?|pts?|qts?|gals?)(?![${DASH}]?[A-Za-z]))\\.?(?![A-Za-z])`,
    'i',
  ),
  NameStart,
);
export const Word = shape('Word', new RegExp(`(?:[^${SPACE},=:%${DASH}]|[${DASH}](?!\\d))+`), NameStart);
/** The text of a fact, taken whole. */
export const Text = bare('Text');

const word = (name: string): TokenType => bare(name, NameStart);
export const Unit = word('Unit');
export const TimeWord = word('TimeWord');
export const Degrees = word('Degrees');
export const Of = word('Of');
export const On = word('On');
export const As = word('As');
export const At = word('At');
export const Until = word('Until');
export const Using = word('Using');
export const From = word('From');
export const In = word('In');
export const For = word('For');
export const Beside = word('Beside');
export const To = word('To');
export const Each = word('Each');
export const About = word('About');
export const Or = word('Or');
export const More = word('More');
export const Falling = word('Falling');
export const Rising = word('Rising');
export const Fan = word('Fan');
export const Overnight = word('Overnight');
export const Below = word('Below');
export const Acidity = word('Acidity');
export const Optional = word('Optional');
export const All = word('All');
export const Half = word('Half');
export const Rest = word('Rest');
export const Enough = word('Enough');
export const ALittle = word('ALittle');
export const Any = word('Any');
export const Lost = word('Lost');
export const Flour = word('Flour');
export const Water = word('Water');
export const Other = word('Other');
export const CupName = word('CupName');
/** The first word (or two) of a line, whatever it is: the line's kind was settled before the line was read. */
export const Opening = bare('Opening');

/** The small words of the language, in lower case. */
export const MEANINGS: ReadonlyMap<string, TokenType> = new Map<string, TokenType>([
  ['of', Of],
  ['on', On],
  ['as', As],
  ['at', At],
  ['until', Until],
  ['using', Using],
  ['from', From],
  ['in', In],
  ['for', For],
  ['beside', Beside],
  ['to', To],
  ['each', Each],
  ['about', About],
  ['or', Or],
  ['more', More],
  ['falling', Falling],
  ['rising', Rising],
  ['fan', Fan],
  ['overnight', Overnight],
  ['below', Below],
  ['ph', Acidity],
  ['optional', Optional],
  ['all', All],
  ['half', Half],
  ['rest', Rest],
  ['enough', Enough],
  ['any', Any],
  ['lost', Lost],
  ['flour', Flour],
  ['water', Water],
  ['other', Other],
  ['us', CupName],
  ['metric', CupName],
  ['australian', CupName],
]);

/** Spellings of the units of time. */
export const timeSpellings: ReadonlyMap<string, TimeUnit> = new Map<string, TimeUnit>([
  ...['s', 'sec', 'secs', 'second', 'seconds'].map((w) => [w, 's'] as const),
  ...['min', 'mins', 'minute', 'minutes'].map((w) => [w, 'min'] as const),
  ...['h', 'hr', 'hrs', 'hour', 'hours'].map((w) => [w, 'h'] as const),
  ...['d', 'day', 'days'].map((w) => [w, 'd'] as const),
  ...['week', 'weeks', 'wk', 'wks'].map((w) => [w, 'week'] as const),
  ...['month', 'months'].map((w) => [w, 'month'] as const),
]);

/** Spellings of the two scales of temperature. */
export const degreeSpellings: ReadonlyMap<string, 'C' | 'F'> = new Map<string, 'C' | 'F'>([
  ...['c', '°c', 'ºc', '℃', 'celsius'].map((w) => [w, 'C'] as const),
  ...['f', '°f', 'ºf', '℉', 'fahrenheit'].map((w) => [w, 'F'] as const),
]);

const shared = [Space, LineEnd, Digits, Vulgar, Dash, Slash, By, Percent, Equals];
const words = [NamedVolume, NakedVolume, Word];
const modes = {
  /** Lines of the ledger and facts with a note: the first comma begins a note. */
  note: [...shared, Note, Colon, ...words],
  /** Lines with prose: the first colon begins it, commas part a list. */
  prose: [...shared, Comma, Prose, ...words],
  /** Facts that are lists. */
  list: [...shared, Comma, Colon, ...words],
};
export type LexicalMode = keyof typeof modes;

let known: Lexer | undefined;
/** Made ready when it is first needed. */
const lexer = (): Lexer => (known ??= new Lexer({ modes, defaultMode: 'note' }, { positionTracking: 'full' }));

/** Every token that the parser may meet. */
export const vocabulary: readonly TokenType[] = [
  ...new Set([
    ...Object.values(modes).flat(),
    Text,
    NameWord,
    NameStart,
    Unit,
    TimeWord,
    Degrees,
    ALittle,
    Opening,
    ...MEANINGS.values(),
  ]),
];

/** The token of a word that begins an amount, for a line in which that word was mistyped. */
export function openingOfAmount(word: string): TokenType {
  return word === 'a little' ? ALittle : (MEANINGS.get(word) ?? Word);
}

/** What a word that is a unit, a unit of time or a scale stands for. */
type Payload = UnitId | TimeUnit | 'C' | 'F';

function spelled(text: string): string {
  const lower = text.toLowerCase();
  return lower.length > 1 && lower.endsWith('.') ? lower.slice(0, -1) : lower;
}

function setType(token: IToken, type: TokenType, payload?: Payload): void {
  token.tokenType = type;
  token.tokenTypeIdx = type.tokenTypeIdx ?? 0;
  if (payload !== undefined) token.payload = payload;
}

/** Gives a word the meaning it has in the language, if it has one. */
function settle(token: IToken): void {
  if (token.tokenType === NamedVolume) {
    const text = token.image
      .toLowerCase()
      .replace(/\bu\.?s\.?(?= |$)/, 'us')
      .replace(/fl\.?\s*oz/, 'fl oz')
      .replace(spaces, ' ');
    const unit = unitSpellings.get(spelled(text));
    if (unit !== undefined) setType(token, Unit, unit);
    return;
  }
  if (token.tokenType !== Word) return;
  const text = token.image.length > 16 ? '' : spelled(token.image);
  const meaning = MEANINGS.get(text);
  if (meaning !== undefined) return setType(token, meaning);
  const unit = unitSpellings.get(text);
  if (unit !== undefined) {
    // A capital T is a tablespoon to some cooks; no spelling of a unit is a lone t, so nothing else needs its case.
    return setType(token, Unit, unit);
  }
  const time = timeSpellings.get(text);
  if (time !== undefined) return setType(token, TimeWord, time);
  const degrees = degreeSpellings.get(text);
  if (degrees !== undefined) setType(token, Degrees, degrees);
}

/** The degree sign parted from its letter, `24 ° C`, becomes one token with it; `a little` becomes one token. */
function join(tokens: IToken[]): void {
  for (let index = 0; index + 1 < tokens.length; index++) {
    const token = tokens[index] as IToken;
    const next = tokens[index + 1] as IToken;
    const image = token.image.toLowerCase();
    if ((image === '°' || image === 'º') && next.tokenType === Degrees) {
      tokens.splice(index, 2, merged(token, next, Degrees, next.payload as Payload));
    } else if (image === 'a' && next.image.toLowerCase() === 'little') {
      tokens.splice(index, 2, merged(token, next, ALittle));
    }
  }
}

function merged(first: IToken, last: IToken, type: TokenType, payload?: Payload): IToken {
  const token: IToken = { ...first, image: `${first.image} ${last.image}`, endOffset: last.endOffset ?? Number.NaN };
  setType(token, type, payload);
  return token;
}

/**
 * The tokens of a stretch of a line.
 * @param from where in `text` to begin: the words before it are already known (the opening of the line).
 */
export function tokenize(text: string, mode: LexicalMode): IToken[] {
  const { tokens, errors } = lexer().tokenize(text, mode);
  if (errors.length > 0) throw new LexerGap(errors);
  for (const token of tokens) settle(token);
  join(tokens);
  return tokens;
}

/** A character that no token takes: a fault of the vocabulary, not of the writer. */
class LexerGap extends Error {
  constructor(errors: readonly ILexingError[]) {
    super(errors.map((error) => error.message).join('; '));
  }
}

/** A token made by hand, for what is cut before the lexer runs. */
export function handmade(type: TokenType, image: string, start: number): IToken {
  return createTokenInstance(type, image, start, start + image.length - 1, 1, 1, start + 1, start + image.length);
}

/** The one place where a token's inclusive end becomes the exclusive end of a span. */
export function spanOf(token: IToken, base = 0): Span {
  return { start: base + token.startOffset, end: base + (token.endOffset ?? token.startOffset) + 1 };
}

export function unitDimension(token: IToken): string {
  return units[token.payload as UnitId].dimension;
}

/** How the small word of a token is written. */
export function spellingOf(type: TokenType): string {
  if (type === ALittle) return 'a little';
  for (const [spelling, meaning] of MEANINGS) if (meaning === type) return spelling;
  return type.name;
}
