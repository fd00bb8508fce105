import { EmbeddedActionsParser, EOF, tokenMatcher, type IToken, type TokenType } from 'chevrotain';
import { compare, divide, HUNDRED, ONE, rational, type Rational, type UnitId } from '@quern/quantity';
import { cover, type Span } from '@quern/text';
import type {
  Amount,
  Bracket,
  Count,
  Equal,
  Measure,
  Name,
  NumberRange,
  Pack,
  Percent as PercentNode,
  Portion,
  Share,
  UnitWord,
} from './ast.js';
import { Fault } from './fault.js';
import { figure, numberRange, type Figure, type FigureTokens } from './numerals.js';
import * as t from './tokens.js';
import { unitMeant } from './unit-slips.js';

type Stops = ReadonlySet<TokenType>;

/** What the tokens after a figure say an amount is. */
type Shape = 'share-word' | 'open' | 'share' | 'percent' | 'measure' | 'pack' | 'portion' | 'count';

/** Dimensions that food is measured in; a length or an energy before a name is a slip. */
const FOOD_DIMENSIONS: ReadonlySet<string> = new Set(['mass', 'volume', 'count']);

/** How many words a container or a portion may have: `2 small loaf tins of 400 g`. */
const MOST_CONTAINER_WORDS = 4;

/** What ends a name: a mark or the end of the line always, and the small words that come next in its line. */
export function stopsAt(...types: TokenType[]): Stops {
  return new Set([...types, t.Equals, t.Note, t.Prose, t.Comma, EOF]);
}

const NAME_ENDS = stopsAt();

/** `pt` and `qt` in full, as they are written after a country. */
function wholeWord(unit: string): string {
  const letters = unit.toLowerCase().replace(/[\s.]/g, '');
  if (/^fl/.test(letters)) return 'fl oz';
  const word = letters.startsWith('p') ? 'pint' : letters.startsWith('q') ? 'quart' : 'gallon';
  return /s$/.test(letters) ? `${word}s` : word;
}

/** What to write for a word that measures something else than food. */
function measureOfFood(unit: string): string {
  if (/^c\.?$/i.test(unit)) return 'for a cup write “cup”; a temperature belongs in a step';
  return 'write a weight, a volume or a count, “15 g”, “1 tbsp”, “1 piece”; a time, a temperature or a length belongs in a step';
}

/**
 * Rules for numbers, units, amounts and names: what all kinds of line share. One instance parses every line; whatever
 * belongs to the line in hand stands in the fields below and is set by `begin`.
 */
export abstract class AmountParser extends EmbeddedActionsParser {
  /** The text of which the tokens are made. */
  protected text = '';
  /** Where that text begins in its line. */
  protected base = 0;
  /** The first mark that the formatter will write in plain ASCII. */
  typographic: IToken | undefined;

  constructor() {
    super(t.vocabulary as TokenType[], { recoveryEnabled: false, maxLookahead: 2 });
  }

  /** Makes ready for another line, or another bracket. */
  begin(text: string, tokens: IToken[], base: number): void {
    this.text = text;
    this.base = base;
    this.typographic = undefined;
    this.input = tokens;
  }

  // ---- helpers -----------------------------------------------------------------------------------------------------

  protected span(token: IToken): Span {
    return t.spanOf(token, this.base);
  }

  /** From the first token to the last. */
  protected between(first: IToken, last: IToken): Span {
    return { start: this.base + first.startOffset, end: this.base + (last.endOffset ?? last.startOffset) + 1 };
  }

  /** The text of a span, with each run of space made one. */
  protected words(span: Span): string {
    return t.collapsed(this.text.slice(span.start - this.base, span.end - this.base));
  }

  /** Where the next token is, or the end of the text. */
  protected here(): Span {
    const next = this.LA(1);
    if (next.tokenType !== EOF) return this.span(next);
    const end = this.base + this.text.length;
    return { start: end, end };
  }

  /** What stands from the next token to the end of the head, for a message. */
  protected rest(): string {
    const next = this.LA(1);
    if (next.tokenType === EOF) return '';
    const words = t.collapsed(this.text.slice(next.startOffset));
    return words.length > 40 ? `${words.slice(0, 39)}…` : words;
  }

  protected is(type: TokenType, ahead = 1): boolean {
    return tokenMatcher(this.LA(ahead), type);
  }

  /** Remembers the first mark that is not plain ASCII; gives the token back. */
  protected mark(token: IToken): IToken {
    if (this.typographic === undefined && t.typographicMarks.test(token.image)) this.typographic = token;
    return token;
  }

  // ---- numbers -----------------------------------------------------------------------------------------------------

  private fractionFollows(): boolean {
    if (this.is(t.Vulgar)) return true;
    if (this.is(t.Slash)) return this.is(t.Digits, 2);
    return this.is(t.Digits) && this.is(t.Slash, 2) && this.is(t.Digits, 3);
  }

  /** Number of tokens in the number that begins `ahead`, or 0. */
  private numberLength(ahead: number): number {
    if (this.is(t.Vulgar, ahead)) return 1;
    if (!this.is(t.Digits, ahead)) return 0;
    if (this.is(t.Vulgar, ahead + 1)) return 2;
    if (this.is(t.Slash, ahead + 1) && this.is(t.Digits, ahead + 2)) return 3;
    if (this.is(t.Digits, ahead + 1) && this.is(t.Slash, ahead + 2) && this.is(t.Digits, ahead + 3)) return 4;
    return 1;
  }

  /** The place after the range that begins `ahead`. */
  private afterRange(ahead: number): number {
    const next = ahead + this.numberLength(ahead);
    if (!this.is(t.Dash, next) && !this.is(t.To, next)) return next;
    const second = this.numberLength(next + 1);
    return second === 0 ? next : next + 1 + second;
  }

  protected numberFollows(ahead = 1): boolean {
    return this.is(t.Digits, ahead) || this.is(t.Vulgar, ahead);
  }

  readonly number = this.RULE('number', (): Figure => {
    const tokens: { -readonly [K in keyof FigureTokens]: FigureTokens[K] } = {};
    this.OR([
      {
        ALT: () => {
          tokens.vulgar = this.CONSUME(t.Vulgar);
        },
      },
      {
        ALT: () => {
          tokens.whole = this.CONSUME(t.Digits);
          this.OPTION({
            GATE: () => this.fractionFollows(),
            DEF: () =>
              this.OR2([
                {
                  ALT: () => {
                    tokens.vulgar = this.CONSUME2(t.Vulgar);
                  },
                },
                {
                  ALT: () => {
                    this.mark(this.CONSUME(t.Slash));
                    tokens.bottom = this.CONSUME2(t.Digits);
                  },
                },
                {
                  ALT: () => {
                    tokens.top = this.CONSUME3(t.Digits);
                    this.mark(this.CONSUME2(t.Slash));
                    tokens.bottom = this.CONSUME4(t.Digits);
                  },
                },
              ]),
          });
        },
      },
    ]);
    return this.ACTION(() => {
      if (tokens.vulgar !== undefined) this.mark(tokens.vulgar);
      return figure(tokens, this.base);
    });
  });

  readonly range = this.RULE('range', (): NumberRange => {
    const low = this.SUBRULE(this.number);
    let high: Figure | undefined;
    this.OPTION({
      GATE: () => this.numberFollows(2),
      DEF: () => {
        this.OR([{ ALT: () => this.mark(this.CONSUME(t.Dash)) }, { ALT: () => this.CONSUME(t.To) }]);
        high = this.SUBRULE2(this.number);
      },
    });
    return this.ACTION(() => numberRange(low, high));
  });

  // ---- amounts -----------------------------------------------------------------------------------------------------

  readonly unit = this.RULE('unit', (): UnitWord => {
    const token = this.CONSUME(t.Unit);
    return this.ACTION(() => ({ span: this.span(token), id: token.payload as UnitId }));
  });

  /** `4 oz` after `1 lb`: another number with another unit of the same dimension. */
  private secondUnitFollows(): boolean {
    const length = this.numberLength(1);
    if (length === 0 || !this.is(t.Unit, length + 1)) return false;
    return (
      t.unitDimension(this.LA(length + 1)) === t.unitDimension(this.LA(0)) && t.unitDimension(this.LA(0)) !== 'count'
    );
  }

  readonly measure = this.RULE('measure', (about: IToken | undefined): Measure => {
    const range = this.SUBRULE(this.range);
    this.ACTION(() => this.checkUnit(1));
    const unit = this.SUBRULE(this.unit);
    let value: Figure | undefined;
    let second: UnitWord | undefined;
    this.OPTION({
      GATE: () => this.secondUnitFollows(),
      DEF: () => {
        value = this.SUBRULE(this.number);
        second = this.SUBRULE2(this.unit);
      },
    });
    return this.ACTION(() => {
      const start = about === undefined ? range.span : this.span(about);
      const span = cover(start, second?.span ?? unit.span);
      const and = value !== undefined && second !== undefined ? { and: { value: value.value, unit: second } } : {};
      return { kind: 'measure', span, about: about !== undefined, range, unit, ...and };
    });
  });

  /** Refuses what stands where a unit belongs and means two things, or nothing that food is measured in. */
  private checkUnit(ahead: number): void {
    const token = this.LA(ahead);
    const written = token.image;
    if (this.is(t.NakedVolume, ahead))
      throw new Fault('Q20', this.span(token), { unit: t.collapsed(written), whole: wholeWord(written) });
    if (/^t\.?$/i.test(written)) throw new Fault('Q06', this.span(token), { unit: written });
    const wrong =
      this.is(t.TimeWord, ahead) ||
      this.is(t.Degrees, ahead) ||
      (this.is(t.Unit, ahead) && !FOOD_DIMENSIONS.has(t.unitDimension(token)));
    if (wrong) throw new Fault('Q21', this.span(token), { unit: written, way: measureOfFood(written) });
  }

  /** What kind of amount begins here (an `about` may have been read). */
  private shape(): Shape {
    if (this.is(t.All) || this.is(t.Half) || this.is(t.Rest)) return 'share-word';
    if (this.is(t.Enough) || this.is(t.ALittle)) return 'open';
    if (!this.numberFollows()) throw new Fault('Q00', this.here(), { name: this.rest() });
    const next = this.afterRange(1);
    if (this.is(t.Percent, next)) return this.is(t.Of, next + 1) ? 'share' : 'percent';
    if (this.is(t.Of, next)) return 'share';
    if (this.numberFollows(next) || this.is(t.By, next)) throw this.sideBySide(next);
    this.checkUnit(next);
    // No container is called by a weight or a volume: `1 lb of 00 flour` is a pound of it.
    const weighed = this.is(t.Unit, next) && t.unitDimension(this.LA(next)) !== 'count';
    const container = weighed ? 0 : this.containerEnd(next);
    if (container > 0) {
      if (this.numberFollows(this.is(t.About, container + 1) ? container + 2 : container + 1)) return 'pack';
      if (!this.is(t.Unit, next) || this.LA(next).payload === 'serving') return 'portion';
    }
    if (!this.is(t.Unit, next)) {
      this.checkSlip(next);
      return 'count';
    }
    // A unit word with no name after it is the name: six cloves are the spice.
    const alone = NAME_ENDS.has(this.LA(next + 1).tokenType) && t.unitDimension(this.LA(next)) === 'count';
    return alone ? 'count' : 'measure';
  }

  /** Refuses a mistyped unit before a name. */
  private checkSlip(next: number): void {
    const token = this.LA(next);
    if (token.tokenType !== t.Word || !this.is(t.NameStart, next + 1)) return;
    const near = unitMeant(token.image);
    if (near !== undefined)
      throw new Fault('Q25', this.span(token), { written: token.image, near, count: this.LA(1).image });
  }

  private sideBySide(next: number): Fault {
    const span = this.between(this.LA(1), this.LA(next));
    return new Fault('Q23', span, { written: this.words(span) });
  }

  /** The place of the `of` that ends a container's words (`loaf tins of`), or 0. */
  private containerEnd(from: number): number {
    for (let ahead = from; ahead <= from + MOST_CONTAINER_WORDS; ahead++) {
      if (this.is(t.Of, ahead)) return ahead > from ? ahead : 0;
      if (!this.is(t.NameStart, ahead) || this.numberFollows(ahead) || this.is(t.As, ahead)) return 0;
    }
    return 0;
  }

  private shapeNow: Shape = 'count';

  readonly amount = this.RULE('amount', (): Amount => {
    let about: IToken | undefined;
    this.OPTION(() => {
      about = this.CONSUME(t.About);
    });
    this.ACTION(() => {
      this.shapeNow = this.shape();
    });
    const arguments_ = { ARGS: [about] as [IToken | undefined] };
    return this.OR({
      IGNORE_AMBIGUITIES: true,
      DEF: [
        { GATE: () => this.shapeNow === 'measure', ALT: () => this.SUBRULE(this.measureOf, arguments_) },
        { GATE: () => this.shapeNow === 'share-word', ALT: () => this.SUBRULE(this.shareWord, arguments_) },
        { GATE: () => this.shapeNow === 'share', ALT: () => this.SUBRULE(this.share, arguments_) },
        { GATE: () => this.shapeNow === 'percent', ALT: () => this.SUBRULE(this.percent, arguments_) },
        { GATE: () => this.shapeNow === 'pack', ALT: () => this.SUBRULE(this.pack, arguments_) },
        { GATE: () => this.shapeNow === 'portion', ALT: () => this.SUBRULE(this.portion, arguments_) },
        { GATE: () => this.shapeNow === 'open', ALT: () => this.SUBRULE(this.open, arguments_) },
        { GATE: () => this.shapeNow === 'count', ALT: () => this.SUBRULE(this.count, arguments_) },
      ],
    });
  });

  /** A measure before a name; English puts an `of` between them, which says nothing more. */
  readonly measureOf = this.RULE('measureOf', (about: IToken | undefined): Measure => {
    const measure = this.SUBRULE(this.measure, { ARGS: [about] });
    this.OPTION(() => this.CONSUME(t.Of));
    return measure;
  });

  protected aboutSpan(about: IToken | undefined, span: Span): { span: Span; about: boolean } {
    return about === undefined ? { span, about: false } : { span: cover(this.span(about), span), about: true };
  }

  readonly shareWord = this.RULE('shareWord', (about: IToken | undefined): Share => {
    const token = this.OR([
      { ALT: () => this.CONSUME(t.All) },
      { ALT: () => this.CONSUME(t.Half) },
      { ALT: () => this.CONSUME(t.Rest) },
    ]);
    this.OPTION(() => this.CONSUME(t.Of));
    return this.ACTION((): Share => {
      const base = { kind: 'share' as const, ...this.aboutSpan(about, this.span(token)) };
      if (token.tokenType === t.All) return { ...base, word: 'all', low: ONE, high: ONE };
      if (token.tokenType === t.Half) return { ...base, word: 'half', low: rational(1, 2), high: rational(1, 2) };
      return { ...base, word: 'rest' };
    });
  });

  readonly share = this.RULE('share', (about: IToken | undefined): Share => {
    const range = this.SUBRULE(this.range);
    let percent: IToken | undefined;
    this.OPTION(() => {
      percent = this.CONSUME(t.Percent);
    });
    this.CONSUME(t.Of);
    return this.ACTION((): Share => {
      if (percent !== undefined) return this.percentShare(about, range, percent);
      if (range.decimals !== null || compare(range.high, ONE) > 0) {
        throw new Fault('Q26', range.span, { written: this.words(range.span) });
      }
      return {
        kind: 'share',
        ...this.aboutSpan(about, range.span),
        word: 'fraction',
        low: range.low,
        high: range.high,
      };
    });
  });

  private percentShare(about: IToken | undefined, range: NumberRange, percent: IToken): Share {
    const span = cover(range.span, this.span(percent));
    const part = (value: Rational) => divide(value, HUNDRED);
    return {
      kind: 'share',
      ...this.aboutSpan(about, span),
      word: 'percent',
      low: part(range.low),
      high: part(range.high),
    };
  }

  readonly percent = this.RULE('percent', (about: IToken | undefined): PercentNode => {
    const range = this.SUBRULE(this.range);
    const token = this.CONSUME(t.Percent);
    return this.ACTION(() => ({
      kind: 'percent',
      ...this.aboutSpan(about, cover(range.span, this.span(token))),
      range,
    }));
  });

  /** The words of a container or a portion, up to `of`. */
  readonly container = this.RULE('container', (): string => {
    const first = this.CONSUME(t.NameStart);
    let last = first;
    this.MANY({
      GATE: () => !this.is(t.Of),
      DEF: () => {
        last = this.CONSUME2(t.NameStart);
      },
    });
    return this.ACTION(() => this.words(this.between(first, last)));
  });

  readonly pack = this.RULE('pack', (about: IToken | undefined): Pack => {
    const range = this.SUBRULE(this.range);
    const container = this.SUBRULE(this.container);
    this.CONSUME(t.Of);
    let aboutEach: IToken | undefined;
    this.OPTION(() => {
      aboutEach = this.CONSUME(t.About);
    });
    const each = this.SUBRULE(this.measure, { ARGS: [aboutEach] });
    return this.ACTION(() => ({
      kind: 'pack',
      ...this.aboutSpan(about, cover(range.span, each.span)),
      range,
      container,
      each,
    }));
  });

  readonly portion = this.RULE('portion', (about: IToken | undefined): Portion => {
    const range = this.SUBRULE(this.range);
    const of = this.SUBRULE(this.container);
    const token = this.CONSUME(t.Of);
    return this.ACTION(() => ({
      kind: 'portion',
      ...this.aboutSpan(about, cover(range.span, this.span(token))),
      range,
      of,
    }));
  });

  readonly open = this.RULE('open', (about: IToken | undefined): Amount => {
    const token = this.OR([{ ALT: () => this.CONSUME(t.Enough) }, { ALT: () => this.CONSUME(t.ALittle) }]);
    this.OPTION(() => this.CONSUME(t.Of));
    return this.ACTION(() => {
      const word = token.tokenType === t.Enough ? 'enough' : 'a little';
      return { kind: 'open', ...this.aboutSpan(about, this.span(token)), word };
    });
  });

  readonly count = this.RULE('count', (about: IToken | undefined): Count => {
    const range = this.SUBRULE(this.range);
    return this.ACTION(() => ({ kind: 'count', ...this.aboutSpan(about, range.span), range }));
  });

  // ---- names -------------------------------------------------------------------------------------------------------

  readonly name = this.RULE('name', (stops: Stops): Name => {
    this.ACTION(() => {
      if (stops.has(this.LA(1).tokenType) || !this.is(t.NameStart))
        throw new Fault('L12', this.here(), { found: this.rest() || 'nothing' });
    });
    const first = this.CONSUME(t.NameStart);
    let last = first;
    this.MANY({
      GATE: () => !stops.has(this.LA(1).tokenType),
      DEF: () => {
        last = this.CONSUME(t.NameWord);
      },
    });
    return this.ACTION(() => {
      const span = this.between(first, last);
      return { span, text: this.words(span) };
    });
  });

  /** `= 1 cup`, `= about 200 g`, `= 4`, `= 50 g each`. */
  readonly equal = this.RULE('equal', (): Equal => {
    const equals = this.CONSUME(t.Equals);
    let about: IToken | undefined;
    let each: IToken | undefined;
    this.OPTION(() => {
      about = this.CONSUME(t.About);
    });
    const amount = this.SUBRULE(this.measureOrCount, { ARGS: [about] });
    this.OPTION2(() => {
      each = this.CONSUME(t.Each);
    });
    return this.ACTION(() => {
      const span = cover(this.span(equals), each === undefined ? amount.span : this.span(each));
      if (!NAME_ENDS.has(this.LA(1).tokenType)) throw new Fault('L13', this.here(), { found: this.rest() });
      return { span, amount, each: each !== undefined };
    });
  });

  /** After `=`: a measure, or a bare number of pieces. */
  readonly measureOrCount = this.RULE('measureOrCount', (about: IToken | undefined): Measure | Count => {
    this.ACTION(() => {
      if (!this.numberFollows()) throw new Fault('L13', this.here(), { found: this.rest() || 'nothing' });
      const next = this.afterRange(1);
      this.checkUnit(next);
      this.shapeNow = this.is(t.Unit, next) ? 'measure' : 'count';
    });
    return this.OR({
      IGNORE_AMBIGUITIES: true,
      DEF: [
        { GATE: () => this.shapeNow === 'measure', ALT: () => this.SUBRULE(this.measure, { ARGS: [about] }) },
        { GATE: () => this.shapeNow === 'count', ALT: () => this.SUBRULE(this.count, { ARGS: [about] }) },
      ],
    });
  });

  // ---- brackets in prose -------------------------------------------------------------------------------------------

  /** What stands between square brackets: a number, a measure, or a share and a name. */
  readonly bracket = this.RULE('bracket', (): Pick<Bracket, 'amount' | 'of'> => {
    let of: Name | undefined;
    const amount = this.SUBRULE(this.amount);
    this.OPTION(() => {
      of = this.SUBRULE(this.name, { ARGS: [NAME_ENDS] });
    });
    return this.ACTION(() => {
      const fits =
        amount.kind === 'share'
          ? of !== undefined
          : (amount.kind === 'measure' || amount.kind === 'count') && of === undefined;
      return fits ? { amount: amount as Measure | Count | Share, ...(of && { of }) } : {};
    });
  });
}
