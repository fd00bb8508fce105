import { EOF, type IToken } from 'chevrotain';
import { compare, rational, type Rational } from '@quern/quantity';
import { cover } from '@quern/text';
import type {
  Amount,
  AtClause,
  BlockLine,
  BlockWord,
  CheckLine,
  Clause,
  Equal,
  EveryLine,
  InLine,
  Lane,
  Measure,
  MoreLine,
  Name,
  OutLine,
  Percent,
  Prose,
  Share,
  StepLine,
  Temperature,
  Thing,
  Time,
  UntilClause,
  UsingClause,
  Words,
} from './ast.js';
import { Fault } from './fault.js';
import type { Figure } from './numerals.js';
import { stopsAt } from './parser-amounts.js';
import { TimeParser } from './parser-times.js';
import { singular } from './plurals.js';
import { proseNode } from './prose.js';
import * as t from './tokens.js';

const IN_NAME = stopsAt(t.As, t.Colon);
const IN_NAME_AFTER_PERCENT = stopsAt(t.As, t.On, t.Colon);
const PLAIN_NAME = stopsAt();
const OUT_NAME = stopsAt(t.As, t.Colon);
const CHECK_NAME = stopsAt(t.On, t.From, t.Colon);
const THING_NAME = stopsAt(t.Of, t.At, t.Until, t.Using);

/** Without the marker of its kind; the line's indent is added when the line is finished. */
type Bare<T> = Omit<T, 'indent'>;

/** Rules for what stands in the body of a make, and for block lines. */
export abstract class BodyParser extends TimeParser {
  // ---- the parts of body lines -------------------------------------------------------------------------------------

  readonly note = this.RULE('note', (): Words | undefined => {
    const token = this.CONSUME(t.Note);
    return this.ACTION(() => this.freeWords(token, 1));
  });

  /** The words of a token without its first `skip` characters and the space around them; undefined when none are left. */
  protected freeWords(token: IToken, skip: number): Words | undefined {
    const inner = token.image.slice(skip);
    const text = t.trimmed(inner);
    if (text === '') return undefined;
    const start = this.base + token.startOffset + skip + inner.indexOf(text);
    return { span: { start, end: start + text.length }, text };
  }

  readonly prose = this.RULE('prose', (): Prose => {
    const token = this.CONSUME(t.Prose);
    return this.ACTION(() => {
      const end = this.base + (token.endOffset ?? token.startOffset) + 1;
      return proseNode(this.freeWords(token, 1) ?? { span: { start: end, end }, text: '' });
    });
  });

  /** With `heated` an oven may say how hot it goes; after `using` a temperature is a clause of its own. */
  readonly thing = this.RULE('thing', (heated = false): Thing => {
    let count: Figure | undefined;
    let shelves: Figure | undefined;
    let heat: Temperature | undefined;
    this.OPTION(() => {
      count = this.SUBRULE(this.number);
    });
    const name = this.SUBRULE(this.name, { ARGS: [THING_NAME] });
    let last: IToken | undefined;
    this.OPTION2(() => {
      this.CONSUME(t.Of);
      shelves = this.SUBRULE2(this.number);
      last = this.CONSUME(t.Word);
    });
    this.OPTION3({
      GATE: () => heated,
      DEF: () => {
        this.CONSUME(t.At);
        heat = this.SUBRULE(this.temperature);
      },
    });
    return this.ACTION(() => {
      const start = count?.span ?? name.span;
      const end = heat?.span ?? (last === undefined ? name.span : this.span(last));
      const span = cover(start, end);
      if (last !== undefined && singular(last.image.toLowerCase()) !== 'shelf')
        throw new Fault('L24', this.span(last), { found: last.image, way: 'write “of 2 shelves”' });
      const one = singular(name.text.toLowerCase());
      return {
        span,
        count: count?.value ?? rational(1),
        name: one,
        ...(one !== name.text && { written: name.text }),
        ...(count === undefined && { bare: true as const }),
        ...(shelves && { shelves: shelves.value }),
        ...(heat && { heat }),
      };
    });
  });

  readonly things = this.RULE('things', (heated = false): readonly Thing[] => {
    const things: Thing[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: t.Comma,
      DEF: () => {
        things.push(this.SUBRULE(this.thing, { ARGS: [heated] }));
      },
    });
    return things;
  });

  readonly atClause = this.RULE('atClause', (): AtClause => {
    const at = this.CONSUME(t.At);
    const temperature = this.SUBRULE(this.temperature);
    let equal: Temperature | undefined;
    let to: Temperature | undefined;
    let direction: IToken | undefined;
    let fan: IToken | undefined;
    this.OPTION(() => {
      this.CONSUME(t.Equals);
      equal = this.SUBRULE2(this.temperature);
    });
    this.OPTION2(() => {
      direction = this.OR([{ ALT: () => this.CONSUME(t.Falling) }, { ALT: () => this.CONSUME(t.Rising) }]);
      this.CONSUME(t.To);
      to = this.SUBRULE3(this.temperature);
    });
    this.OPTION3(() => {
      fan = this.CONSUME(t.Fan);
    });
    return this.ACTION(() => {
      const end = fan === undefined ? (to ?? equal ?? temperature).span : this.span(fan);
      const change =
        direction !== undefined && to !== undefined
          ? {
              change: { direction: direction.tokenType === t.Falling ? ('falling' as const) : ('rising' as const), to },
            }
          : {};
      return {
        kind: 'at',
        span: cover(this.span(at), end),
        temperature,
        ...(equal && { equal }),
        ...change,
        fan: fan !== undefined,
      };
    });
  });

  readonly untilClause = this.RULE('untilClause', (): UntilClause => {
    const until = this.CONSUME(t.Until);
    return this.OR([
      { ALT: () => this.SUBRULE(this.acidity, { ARGS: [until] }) },
      {
        ALT: () => {
          const temperature = this.SUBRULE(this.temperature);
          return this.ACTION((): UntilClause => ({
            kind: 'until',
            span: cover(this.span(until), temperature.span),
            temperature,
          }));
        },
      },
    ]);
  });

  readonly acidity = this.RULE('acidity', (until: IToken): UntilClause => {
    const word = this.CONSUME(t.Acidity);
    let below: IToken | undefined;
    this.OPTION(() => {
      below = this.CONSUME(t.Below);
    });
    this.ACTION(() => {
      if (!this.numberFollows()) throw new Fault('L34', this.here(), { found: this.rest() || 'nothing' });
    });
    const value = this.SUBRULE(this.number);
    return this.ACTION(() => {
      const span = cover(this.span(word), value.span);
      if (compare(value.value, rational(14)) > 0) throw new Fault('L34', value.span, { found: value.text });
      return {
        kind: 'until',
        span: cover(this.span(until), span),
        acidity: { span, value: value.value, below: below !== undefined },
      };
    });
  });

  readonly usingClause = this.RULE('usingClause', (): UsingClause => {
    const using = this.CONSUME(t.Using);
    const things = this.SUBRULE(this.things);
    return this.ACTION(() => ({
      kind: 'using',
      span: cover(this.span(using), things.at(-1)?.span ?? this.span(using)),
      things,
    }));
  });

  readonly clause = this.RULE('clause', (): Clause =>
    this.OR([
      { ALT: () => this.SUBRULE(this.atClause) },
      { ALT: () => this.SUBRULE(this.untilClause) },
      { ALT: () => this.SUBRULE(this.usingClause) },
    ]),
  );

  // ---- body lines --------------------------------------------------------------------------------------------------

  readonly inLine = this.RULE('inLine', (): Bare<InLine> => {
    let optional: IToken | undefined;
    this.OPTION(() => {
      optional = this.CONSUME(t.Optional);
    });
    const line = this.SUBRULE(this.putIn);
    return this.ACTION(() => ({ ...line, kind: 'in', optional: optional !== undefined }));
  });

  readonly orLine = this.RULE('orLine', (): Bare<InLine> => {
    this.CONSUME(t.Opening);
    const line = this.SUBRULE(this.putIn);
    return this.ACTION(() => ({ ...line, kind: 'or', optional: false }));
  });

  /** What an in line and an `or` line share. */
  readonly putIn = this.RULE('putIn', (): Omit<InLine, 'indent' | 'kind' | 'optional'> => {
    const amount = this.SUBRULE(this.amount);
    const percent = this.ACTION(() => amount.kind === 'percent');
    const ends = percent ? IN_NAME_AFTER_PERCENT : IN_NAME;
    let any: IToken | undefined;
    let on: Name | undefined;
    let as: Name | undefined;
    let note: Words | undefined;
    const equals: Equal[] = [];
    this.OPTION({
      GATE: () => this.is(t.NameStart, 2) && !ends.has(this.LA(2).tokenType),
      DEF: () => {
        any = this.CONSUME(t.Any);
      },
    });
    const name = this.SUBRULE(this.name, { ARGS: [ends] });
    this.OPTION2(() => {
      this.CONSUME(t.As);
      as = this.SUBRULE2(this.name, { ARGS: [ends] });
    });
    this.OPTION3(() => {
      this.CONSUME(t.On);
      on = this.SUBRULE3(this.name, { ARGS: [IN_NAME] });
    });
    this.MANY(() => {
      equals.push(this.SUBRULE(this.equal));
    });
    this.OPTION4(() => {
      note = this.SUBRULE(this.note);
    });
    return this.ACTION(() => ({
      amount,
      any: any !== undefined,
      name,
      ...(on && { on }),
      equals,
      ...(note && { note }),
      ...(as && { as }),
    }));
  });

  readonly outLine = this.RULE('outLine', (): Bare<OutLine> => {
    const verb = this.CONSUME(t.Opening);
    let amount = this.SUBRULE(this.amount) as Amount;
    let of: Name | undefined;
    let ofWritten = false;
    let as: Name | undefined;
    let note: Words | undefined;
    const equals: Equal[] = [];
    this.OPTION({
      GATE: () => !this.is(t.As),
      DEF: () => {
        // A measure takes the `of` after it.
        ofWritten = this.is(t.Of) || this.is(t.Of, 0);
        of = this.SUBRULE(this.outOf);
      },
    });
    this.OPTION2(() => {
      this.CONSUME(t.As);
      as = this.SUBRULE2(this.name, { ARGS: [PLAIN_NAME] });
    });
    this.MANY(() => {
      equals.push(this.SUBRULE(this.equal));
    });
    this.OPTION3(() => {
      note = this.SUBRULE(this.note);
    });
    return this.ACTION(() => {
      // `15 % white cabbages` is the same share as `15 % of white cabbages`.
      if (amount.kind === 'percent' && of !== undefined) amount = shareOf(amount);
      // `save 60 g liquor` is left to the ledger, which knows whether there is liquor in the pot (M07).
      const told = of !== undefined && !ofWritten && amount.kind !== 'share';
      if (verb.image.toLowerCase() === 'save' && as === undefined && !told)
        throw new Fault('L14', this.between(verb, this.LA(0)), { found: of?.text ?? '' });
      return {
        kind: 'out',
        verb: verb.image.toLowerCase() as OutLine['verb'],
        amount,
        ...(of && { of }),
        ...(as && { as }),
        equals,
        ...(note && { note }),
      };
    });
  });

  readonly outOf = this.RULE('outOf', (): Name => {
    this.OPTION(() => this.CONSUME(t.Of));
    return this.SUBRULE(this.name, { ARGS: [OUT_NAME] });
  });

  readonly stepLine = this.RULE('stepLine', (): Bare<StepLine> => {
    const lane = this.CONSUME(t.Opening);
    let time: Time | undefined;
    const clauses: Clause[] = [];
    this.OPTION({
      GATE: () => this.numberFollows() || this.is(t.About) || this.is(t.Overnight),
      DEF: () => {
        time = this.SUBRULE(this.time);
      },
    });
    this.MANY(() => {
      clauses.push(this.SUBRULE(this.clause));
    });
    this.ACTION(() => this.expectProse());
    const prose = this.SUBRULE(this.prose);
    return this.ACTION(() => ({
      kind: 'step',
      lane: lane.image.toLowerCase() as Lane,
      laneSpan: this.span(lane),
      ...(time && { time }),
      clauses,
      prose,
    }));
  });

  /** The head of a step is read: now comes the colon, or a word that fits nowhere. */
  private expectProse(): void {
    if (this.is(t.Prose)) return;
    if (this.LA(1).tokenType === EOF) throw new Fault('L03', this.here(), { word: '', time: '10 min' });
    throw new Fault('L16', this.here(), { found: this.LA(1).image });
  }

  readonly everyLine = this.RULE('everyLine', (): Bare<EveryLine> => {
    this.CONSUME(t.Opening);
    const period = this.SUBRULE(this.time);
    let duration: Time | undefined;
    this.OPTION(() => {
      this.CONSUME(t.Comma);
      duration = this.SUBRULE2(this.time);
    });
    this.ACTION(() => this.expectProse());
    const prose = this.SUBRULE(this.prose);
    return this.ACTION(() => ({ kind: 'every', period, ...(duration && { duration }), prose }));
  });

  readonly moreLine = this.RULE('moreLine', (): Bare<MoreLine> => {
    const prose = this.SUBRULE(this.prose);
    return this.ACTION(() => ({ kind: 'more', prose }));
  });

  readonly checkLine = this.RULE('checkLine', (): Bare<CheckLine> => {
    this.CONSUME(t.Opening);
    const amount = this.SUBRULE(this.amount);
    let name: Name | undefined;
    let on: Name | undefined;
    let from: Name | undefined;
    this.OPTION({
      GATE: () => !CHECK_NAME.has(this.LA(1).tokenType),
      DEF: () => {
        name = this.SUBRULE(this.name, { ARGS: [CHECK_NAME] });
      },
    });
    this.OPTION2(() => {
      this.OR([
        {
          ALT: () => {
            this.CONSUME(t.On);
            on = this.SUBRULE2(this.name, { ARGS: [PLAIN_NAME] });
          },
        },
        {
          ALT: () => {
            this.CONSUME(t.From);
            from = this.SUBRULE3(this.name, { ARGS: [PLAIN_NAME] });
          },
        },
      ]);
    });
    return this.ACTION(() => {
      if (amount.kind !== 'measure' && amount.kind !== 'percent' && amount.kind !== 'count')
        throw new Fault('L35', amount.span, {});
      if (amount.kind !== 'measure' && name === undefined) throw new Fault('L35', amount.span, {});
      return { kind: 'check', amount, ...(name && { name }), ...(on && { on }), ...(from && { from }) };
    });
  });

  // ---- block lines -------------------------------------------------------------------------------------------------

  readonly blockLine = this.RULE('blockLine', (): Bare<BlockLine> => {
    const word = this.CONSUME(t.Opening);
    const name = this.SUBRULE(this.name, { ARGS: [PLAIN_NAME] });
    return this.ACTION(() => ({
      kind: 'block',
      block: word.image.toLowerCase() as BlockWord,
      wordSpan: this.span(word),
      name,
    }));
  });

  readonly makeLine = this.RULE('makeLine', (): Bare<BlockLine> => {
    const word = this.CONSUME(t.Opening);
    const name = this.SUBRULE(this.name, { ARGS: [PLAIN_NAME] });
    let equal: Measure | undefined;
    this.OPTION(() => {
      this.CONSUME(t.Equals);
      let about: IToken | undefined;
      this.OPTION2(() => {
        about = this.CONSUME(t.About);
      });
      equal = this.SUBRULE(this.measure, { ARGS: [about] });
    });
    return this.ACTION(() => ({
      kind: 'block',
      block: 'make',
      wordSpan: this.span(word),
      name,
      ...(equal && { equal }),
    }));
  });

  readonly courseLine = this.RULE('courseLine', (): Bare<BlockLine> => {
    const word = this.CONSUME(t.Opening);
    const clock = this.SUBRULE(this.clockTime);
    let name: Name | undefined;
    this.OPTION(() => {
      name = this.SUBRULE(this.name, { ARGS: [PLAIN_NAME] });
    });
    return this.ACTION(() => ({
      kind: 'block',
      block: 'course',
      wordSpan: this.span(word),
      clock,
      ...(name && { name }),
    }));
  });
}

function shareOf(percent: Percent): Share {
  const part = (value: Rational) => rational(value.n, value.d * 100n);
  return {
    kind: 'share',
    span: percent.span,
    about: percent.about,
    word: 'percent',
    low: part(percent.range.low),
    high: part(percent.range.high),
  };
}
