import { EOF, type IToken } from 'chevrotain';
import type { CupSystem, UnitId } from '@quern/quantity';
import { units } from '@quern/quantity';
import { cover, type Span } from '@quern/text';
import type {
  AddFact,
  AwakeFact,
  BakedFact,
  BasisFact,
  BestFact,
  CountFact,
  CupFact,
  DateFact,
  DropFact,
  GivesFact,
  HasFact,
  KeepsFact,
  ListFact,
  Measure,
  Name,
  NumberRange,
  PartsFact,
  PerFact,
  RoomFact,
  ServesFact,
  StandFact,
  StretchFact,
  SwapFact,
  Temperature,
  TextFact,
  TimesFact,
  UseFact,
  VesselFact,
  WeighsFact,
  Words,
} from './ast.js';
import { Fault } from './fault.js';
import type { Figure } from './numerals.js';
import { ensureGroupBy } from './object-group-by.js';
import { BodyParser } from './parser-body.js';
import { stopsAt } from './parser-amounts.js';
import * as t from './tokens.js';

const PLAIN = stopsAt();
const BEFORE_AS = stopsAt(t.As);
const BEFORE_FROM = stopsAt(t.From);
const SWAPPED = stopsAt(t.In, t.For);
const SWAPPED_IN = stopsAt(t.For);
const DROPPED = stopsAt(t.In);
const ADDED = stopsAt(t.Beside);
const NUTRIENT = stopsAt(t.Digits, t.Vulgar);
const VESSEL = stopsAt(t.Of);

type Bare<T> = Omit<T, 'indent'>;
type Value = PerFact['values'][number];

/** The whole grammar: one rule for each kind of line, and any rule can be the first. */
export class LineParser extends BodyParser {
  constructor() {
    super();
    ensureGroupBy();
    this.performSelfAnalysis();
  }

  /** Complains if the whole text was not used up. */
  expectEnd(way: string): void {
    if (this.LA(1).tokenType === EOF) return;
    throw new Fault('L24', this.here(), { found: this.rest(), way });
  }

  // ---- facts whose value is words ----------------------------------------------------------------------------------

  private opening(token: IToken): string {
    return t.collapsed(token.image).toLowerCase();
  }

  readonly textFact = this.RULE('textFact', (): Bare<TextFact> => {
    const word = this.CONSUME(t.Opening);
    const text = this.CONSUME(t.Text);
    return this.ACTION(() => {
      // `Warning: hot sugar burns` is how people write it.
      const skip = /^[^\S\r\n]*:/.exec(text.image)?.[0].length ?? 0;
      const words = this.freeWords(text, skip);
      if (words === undefined) throw unreadable(this.here());
      return { kind: 'text-fact', word: this.opening(word) as TextFact['word'], words };
    });
  });

  readonly item = this.RULE('item', (): Words => {
    let first: IToken | undefined;
    let last: IToken | undefined;
    this.AT_LEAST_ONE(() => {
      const token = this.OR([
        { ALT: () => this.CONSUME(t.NameWord) },
        { ALT: () => this.CONSUME(t.Equals) },
        { ALT: () => this.CONSUME(t.Colon) },
      ]);
      first ??= token;
      last = token;
    });
    return this.ACTION(() => {
      const span = this.between(first as IToken, last as IToken);
      return { span, text: this.words(span) };
    });
  });

  readonly listFact = this.RULE('listFact', (): Bare<ListFact> => {
    const word = this.CONSUME(t.Opening);
    const items: Words[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: t.Comma,
      DEF: () => {
        items.push(this.SUBRULE(this.item));
      },
    });
    return this.ACTION(() => ({ kind: 'list-fact', word: this.opening(word) as ListFact['word'], items }));
  });

  // ---- facts of a recipe -------------------------------------------------------------------------------------------

  readonly cupFact = this.RULE('cupFact', (): Bare<CupFact> => {
    this.CONSUME(t.Opening);
    const system = this.CONSUME(t.CupName);
    return this.ACTION(() => ({ kind: 'cup', system: system.image.toLowerCase() as CupSystem }));
  });

  readonly givesFact = this.RULE('givesFact', (): Bare<GivesFact> => {
    this.CONSUME(t.Opening);
    const yielded = this.SUBRULE(this.amount);
    let thing: Words | undefined;
    this.OPTION(() => {
      thing = this.SUBRULE(this.name, { ARGS: [PLAIN] });
    });
    return this.ACTION((): Bare<GivesFact> => {
      const about = yielded.about ? { about: true } : {};
      if (yielded.kind === 'pack' && thing === undefined) {
        const span = this.wordsBetween(yielded.range.span, yielded.each.span, yielded.container);
        return { kind: 'gives', ...about, count: yielded.range, thing: span, each: yielded.each };
      }
      if (yielded.kind === 'count') return { kind: 'gives', ...about, count: yielded.range, ...(thing && { thing }) };
      if (yielded.kind !== 'measure') throw unreadable(yielded.span);
      if (units[yielded.unit.id].dimension !== 'count') {
        if (thing !== undefined) throw unreadable(thing.span);
        return { kind: 'gives', ...about, total: yielded };
      }
      const span = cover(yielded.unit.span, thing?.span ?? yielded.unit.span);
      return { kind: 'gives', ...about, count: yielded.range, thing: { span, text: this.words(span) } };
    });
  });

  /** The words of a container, whose span the amount does not keep. */
  private wordsBetween(before: Span, after: Span, words: string): Words {
    const start = before.end + this.text.slice(before.end - this.base, after.start - this.base).search(/\S/);
    let end = start;
    for (const word of words.split(' ')) end = this.base + this.text.indexOf(word, end - this.base) + word.length;
    return { span: { start, end }, text: words };
  }

  readonly servesFact = this.RULE('servesFact', (): Bare<ServesFact> => {
    this.CONSUME(t.Opening);
    const range = this.SUBRULE(this.range);
    let thing: Words | undefined;
    this.OPTION(() => {
      thing = this.SUBRULE(this.name, { ARGS: [PLAIN] });
    });
    return this.ACTION(() => ({ kind: 'serves', range, ...(thing && { thing }) }));
  });

  readonly length = this.RULE('length', (): { value: Figure; unit?: UnitId } => {
    const value = this.SUBRULE(this.number);
    let unit: IToken | undefined;
    this.OPTION(() => {
      unit = this.OR([{ ALT: () => this.CONSUME(t.Unit) }, { ALT: () => this.CONSUME(t.In) }]);
    });
    return this.ACTION(() => {
      if (unit === undefined) return { value };
      const id = unit.tokenType === t.In ? 'inch' : (unit.payload as UnitId);
      if (units[id].dimension !== 'length') throw unreadable(this.span(unit));
      return { value, unit: id };
    });
  });

  readonly lengths = this.RULE('lengths', (): Pick<VesselFact, 'lengths' | 'lengthUnit'> => {
    const lengths: { value: Figure; unit?: UnitId }[] = [];
    lengths.push(this.SUBRULE(this.length));
    this.AT_LEAST_ONE(() => {
      this.mark(this.CONSUME(t.By));
      lengths.push(this.SUBRULE2(this.length));
    });
    return this.ACTION(() => {
      const lengthUnit = lengths.at(-1)?.unit;
      const mixed = lengths.some(({ unit }) => unit !== undefined && unit !== lengthUnit);
      if (lengthUnit === undefined || mixed || lengths.length > 3) throw unreadable(this.here());
      return { lengths: lengths.map(({ value }) => value.value), lengthUnit };
    });
  });

  readonly vesselFact = this.RULE('vesselFact', (): Bare<VesselFact> => {
    this.CONSUME(t.Opening);
    const count = this.SUBRULE(this.number);
    const thing = this.SUBRULE(this.name, { ARGS: [VESSEL] });
    this.CONSUME(t.Of);
    let volume: Measure | undefined;
    let size: Pick<VesselFact, 'lengths' | 'lengthUnit'> | undefined;
    const boxed = this.ACTION(() => this.boxFollows());
    this.OR({
      IGNORE_AMBIGUITIES: true,
      DEF: [
        {
          GATE: () => boxed,
          ALT: () => {
            size = this.SUBRULE(this.lengths);
          },
        },
        {
          GATE: () => !boxed,
          ALT: () => {
            volume = this.SUBRULE(this.measure, { ARGS: [undefined] });
          },
        },
      ],
    });
    return this.ACTION(() => {
      if (volume !== undefined && units[volume.unit.id].dimension !== 'volume') throw unreadable(volume.span);
      return { kind: 'vessel', count: count.value, thing, ...(volume && { volume }), ...size };
    });
  });

  /** Whether an `x` between figures is still to come. */
  private boxFollows(): boolean {
    for (let ahead = 1; this.LA(ahead).tokenType !== EOF; ahead++) if (this.is(t.By, ahead)) return true;
    return false;
  }

  readonly basisFact = this.RULE('basisFact', (): Bare<BasisFact> => {
    this.CONSUME(t.Opening);
    const name = this.SUBRULE(this.name, { ARGS: [PLAIN] });
    return this.ACTION(() => ({ kind: 'basis', name }));
  });

  readonly countFact = this.RULE('countFact', (): Bare<CountFact> => {
    this.CONSUME(t.Opening);
    const name = this.SUBRULE(this.name, { ARGS: [BEFORE_AS] });
    this.CONSUME(t.As);
    const as = this.OR([
      { ALT: () => this.CONSUME(t.Flour) },
      { ALT: () => this.CONSUME(t.Water) },
      { ALT: () => this.CONSUME(t.Other) },
    ]);
    return this.ACTION(() => ({ kind: 'count-as', name, as: as.image.toLowerCase() as CountFact['as'] }));
  });

  /** Whatever stands where a path belongs, a drive and an address too: which paths may be read is not for the grammar to say. */
  readonly path = this.RULE('path', (): Words => {
    this.ACTION(() => {
      if (this.is(t.As) || (!this.is(t.NameWord) && !this.is(t.Colon)))
        throw new Fault('L12', this.here(), { found: this.rest() || 'nothing' });
    });
    let first: IToken | undefined;
    let last: IToken | undefined;
    this.AT_LEAST_ONE({
      GATE: () => !this.is(t.As),
      DEF: () => {
        const token = this.OR([{ ALT: () => this.CONSUME(t.NameWord) }, { ALT: () => this.CONSUME(t.Colon) }]);
        first ??= token;
        last = token;
      },
    });
    return this.ACTION(() => {
      const span = this.between(first as IToken, last as IToken);
      return { span, text: this.words(span) };
    });
  });

  readonly useFact = this.RULE('useFact', (): Bare<UseFact> => {
    this.CONSUME(t.Opening);
    const name = this.SUBRULE(this.name, { ARGS: [BEFORE_FROM] });
    this.CONSUME(t.From);
    const path = this.SUBRULE(this.path);
    let as: Name | undefined;
    this.OPTION(() => {
      this.CONSUME(t.As);
      as = this.SUBRULE3(this.name, { ARGS: [PLAIN] });
    });
    return this.ACTION(() => ({ kind: 'use', name, path, ...(as && { as }) }));
  });

  // ---- facts of a make ---------------------------------------------------------------------------------------------

  readonly keepsFact = this.RULE('keepsFact', (): Bare<KeepsFact> => {
    this.CONSUME(t.Opening);
    const time = this.SUBRULE(this.time);
    let at: Temperature | undefined;
    let note: Words | undefined;
    this.OPTION(() => {
      this.CONSUME(t.At);
      at = this.SUBRULE(this.temperature);
    });
    this.OPTION2(() => {
      note = this.SUBRULE(this.note);
    });
    return this.ACTION(() => ({ kind: 'keeps', time, ...(at && { at }), ...(note && { note }) }));
  });

  readonly bestFact = this.RULE('bestFact', (): Bare<BestFact> => {
    this.CONSUME(t.Opening);
    const time = this.SUBRULE(this.time);
    let note: Words | undefined;
    this.OPTION(() => {
      note = this.SUBRULE(this.note);
    });
    return this.ACTION(() => ({ kind: 'best-after', time, ...(note && { note }) }));
  });

  // ---- facts of a food or a culture --------------------------------------------------------------------------------

  readonly nutrient = this.RULE('nutrient', (): Value => {
    const name = this.SUBRULE(this.name, { ARGS: [NUTRIENT] });
    const value = this.SUBRULE(this.number);
    const unit = this.CONSUME(t.NameStart);
    return this.ACTION(() => ({
      span: cover(name.span, this.span(unit)),
      nutrient: name.text.toLowerCase(),
      value: value.value,
      unit: nutrientUnit(unit),
    }));
  });

  readonly perFact = this.RULE('perFact', (): Bare<PerFact> => {
    this.CONSUME(t.Opening);
    const basis = this.SUBRULE(this.measure, { ARGS: [undefined] });
    const values: Value[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: t.Comma,
      DEF: () => {
        values.push(this.SUBRULE(this.nutrient));
      },
    });
    return this.ACTION(() => {
      const written = `${this.words(basis.range.span)} ${basis.unit.id}`;
      if (written !== '100 g' && written !== '100 ml') throw unreadable(basis.span);
      return { kind: 'per', basis: written, values };
    });
  });

  readonly partsFact = this.RULE('partsFact', (): Bare<PartsFact> => {
    this.CONSUME(t.Opening);
    const parts: PartsFact['parts'][number][] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: t.Comma,
      DEF: () => {
        const value = this.SUBRULE(this.number);
        const name = this.SUBRULE(this.name, { ARGS: [PLAIN] });
        this.ACTION(() => parts.push({ value: value.value, name }));
      },
    });
    return this.ACTION(() => ({ kind: 'parts', parts }));
  });

  readonly weighsFact = this.RULE('weighsFact', (): Bare<WeighsFact> => {
    this.CONSUME(t.Opening);
    let about: IToken | undefined;
    this.OPTION(() => {
      about = this.CONSUME(t.About);
    });
    const amount = this.SUBRULE(this.measureOrCount, { ARGS: [about] });
    this.CONSUME(t.Equals);
    let aboutEqual: IToken | undefined;
    this.OPTION2(() => {
      aboutEqual = this.CONSUME2(t.About);
    });
    const equal = this.SUBRULE(this.measure, { ARGS: [aboutEqual] });
    return this.ACTION(() => ({ kind: 'weighs', amount, equal }));
  });

  // ---- facts of a variant ------------------------------------------------------------------------------------------

  private amountFollows(): boolean {
    return (
      this.numberFollows() || [t.About, t.ALittle, t.Enough].some((type) => this.is(type) && this.is(t.NameStart, 2))
    );
  }

  readonly swapFact = this.RULE('swapFact', (): Bare<SwapFact> => {
    this.CONSUME(t.Opening);
    const from = this.SUBRULE(this.name, { ARGS: [SWAPPED] });
    let within: Name | undefined;
    let amount: SwapFact['amount'];
    this.OPTION(() => {
      this.CONSUME(t.In);
      within = this.SUBRULE2(this.name, { ARGS: [SWAPPED_IN] });
    });
    this.CONSUME(t.For);
    this.OPTION2({
      GATE: () => this.amountFollows(),
      DEF: () => {
        amount = this.SUBRULE(this.amount);
      },
    });
    const to = this.SUBRULE3(this.name, { ARGS: [PLAIN] });
    return this.ACTION(() => ({ kind: 'swap', from, ...(within && { in: within }), ...(amount && { amount }), to }));
  });

  readonly dropFact = this.RULE('dropFact', (): Bare<DropFact> => {
    this.CONSUME(t.Opening);
    const name = this.SUBRULE(this.name, { ARGS: [DROPPED] });
    let within: Name | undefined;
    this.OPTION(() => {
      this.CONSUME(t.In);
      within = this.SUBRULE2(this.name, { ARGS: [PLAIN] });
    });
    return this.ACTION(() => ({ kind: 'drop', name, ...(within && { in: within }) }));
  });

  readonly addFact = this.RULE('addFact', (): Bare<AddFact> => {
    this.CONSUME(t.Opening);
    const amount = this.SUBRULE(this.amount);
    const name = this.SUBRULE(this.name, { ARGS: [ADDED] });
    this.CONSUME(t.Beside);
    const beside = this.SUBRULE2(this.name, { ARGS: [PLAIN] });
    return this.ACTION(() => ({ kind: 'add', amount, name, beside }));
  });

  readonly timesFact = this.RULE('timesFact', (): Bare<TimesFact> => {
    this.CONSUME(t.Opening);
    const factor = this.SUBRULE(this.number);
    return this.ACTION(() => ({ kind: 'times', factor: factor.value }));
  });

  // ---- facts of a kitchen and of a menu ----------------------------------------------------------------------------

  readonly hasFact = this.RULE('hasFact', (): Bare<HasFact> => {
    this.CONSUME(t.Opening);
    const things = this.SUBRULE(this.things, { ARGS: [true] });
    return this.ACTION(() => ({ kind: 'has', things }));
  });

  readonly awakeFact = this.RULE('awakeFact', (): Bare<AwakeFact> => {
    this.CONSUME(t.Opening);
    const from = this.SUBRULE(this.clockTime);
    this.OR([{ ALT: () => this.mark(this.CONSUME(t.Dash)) }, { ALT: () => this.CONSUME(t.To) }]);
    const to = this.SUBRULE2(this.clockTime);
    return this.ACTION(() => ({ kind: 'awake', from, to }));
  });

  readonly roomFact = this.RULE('roomFact', (): Bare<RoomFact> => {
    this.CONSUME(t.Opening);
    const temperature = this.SUBRULE(this.temperature);
    return this.ACTION(() => ({ kind: 'room', temperature }));
  });

  readonly standFact = this.RULE('standFact', (): Bare<StandFact> => {
    const word = this.CONSUME(t.Opening);
    const time = this.SUBRULE(this.time);
    return this.ACTION(() => ({ kind: 'stand', word: this.opening(word) as StandFact['word'], time }));
  });

  readonly stretchFact = this.RULE('stretchFact', (): Bare<StretchFact> => {
    this.CONSUME(t.Opening);
    const percent = this.SUBRULE(this.range);
    this.CONSUME(t.Percent);
    return this.ACTION(() => ({ kind: 'stretch', percent }));
  });

  readonly isoDate = this.RULE('isoDate', (): Words => {
    const first = this.CONSUME(t.Digits);
    this.CONSUME(t.Dash);
    this.CONSUME2(t.Digits);
    this.CONSUME2(t.Dash);
    const last = this.CONSUME3(t.Digits);
    return this.ACTION(() => {
      const span = this.between(first, last);
      const text = this.words(span).replace(/[^\d]/g, '-');
      if (!isDate(text)) throw new Fault('L32', span, { found: this.words(span) });
      return { span, text };
    });
  });

  readonly dateFact = this.RULE('dateFact', (): Bare<DateFact> => {
    this.CONSUME(t.Opening);
    const date = this.SUBRULE(this.isoDate);
    return this.ACTION(() => ({ kind: 'date', date: date.text, span: date.span }));
  });

  readonly bakedFact = this.RULE('bakedFact', (): Bare<BakedFact> => {
    this.CONSUME(t.Opening);
    const date = this.SUBRULE(this.isoDate);
    let yielded: Words | undefined;
    let lost: NumberRange | undefined;
    let remark: Words | undefined;
    this.MANY(() => {
      this.CONSUME(t.Comma);
      this.OR([
        {
          // `lost` may be a word of the yield too; a figure after it settles that it is the loss.
          IGNORE_AMBIGUITIES: true,
          GATE: () => this.numberFollows(2),
          ALT: () => {
            this.CONSUME(t.Lost);
            lost = this.SUBRULE(this.range);
            this.CONSUME(t.Percent);
          },
        },
        {
          ALT: () => {
            const item = this.SUBRULE(this.item);
            this.ACTION(() => {
              if (yielded !== undefined) throw unreadable(item.span);
              yielded = item;
            });
          },
        },
      ]);
    });
    this.OPTION(() => {
      const prose = this.CONSUME(t.Prose);
      remark = this.ACTION(() => this.freeWords(prose, 1));
    });
    return this.ACTION(() => ({
      kind: 'baked',
      date: date.text,
      ...(yielded && { yield: yielded }),
      ...(lost && { lost }),
      ...(remark && { remark }),
    }));
  });
}

/** A fact that cannot be read; where the line is parsed its form is added to the message. */
function unreadable(span: Span): Fault {
  return new Fault('L25', span, { word: '', form: '', example: '' });
}

/** kJ, kcal, g, mg or µg as the trade writes them; anything else as written. */
function nutrientUnit(token: IToken): string {
  if (token.tokenType === t.Unit) return units[token.payload as UnitId].one;
  return /^(?:[µμ]g|mcg|ug)$/i.test(token.image) ? 'µg' : token.image;
}

/** Whether a text is a day of the Gregorian calendar, as ISO 8601 writes it. */
function isDate(text: string): boolean {
  const [, year = '', month = '', day = ''] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  if (year === '') return false;
  const [y, m, d] = [Number(year), Number(month), Number(day)];
  const leap = (y % 4 === 0 && y % 100 !== 0) || y % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m - 1] ?? 0;
  return d >= 1 && d <= days;
}
