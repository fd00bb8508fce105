import type { IToken } from 'chevrotain';
import { compare, type Rational } from '@quern/quantity';
import { cover, type Span } from '@quern/text';
import type { ClockTime, Duration, Numeral, Temperature, Time, TimeUnit } from './ast.js';
import { Fault } from './fault.js';
import type { Figure } from './numerals.js';
import { AmountParser } from './parser-amounts.js';
import { duration, OVERNIGHT } from './time-units.js';
import * as t from './tokens.js';

interface TimePart {
  readonly figure: Figure;
  readonly unit: TimeUnit;
  readonly span: Span;
}

/** Rules for times, temperatures and the clock. */
export abstract class TimeParser extends AmountParser {
  private failTime(): never {
    throw new Fault('L16', this.here(), { found: this.rest() || 'nothing' });
  }

  readonly time = this.RULE('time', (): Time => {
    let about: IToken | undefined;
    this.OPTION(() => {
      about = this.CONSUME(t.About);
    });
    this.ACTION(() => {
      if (!this.numberFollows() && !this.is(t.Overnight)) this.failTime();
    });
    return this.OR([
      {
        ALT: () => {
          const token = this.CONSUME(t.Overnight);
          return this.ACTION((): Time => ({
            kind: 'overnight',
            ...this.aboutSpan(about, this.span(token)),
            ...OVERNIGHT,
          }));
        },
      },
      { ALT: () => this.SUBRULE(this.measuredTime, { ARGS: [about] }) },
    ]);
  });

  readonly measuredTime = this.RULE('measuredTime', (about: IToken | undefined): Time => {
    const range = this.SUBRULE(this.range);
    this.ACTION(() => {
      if (!this.is(t.TimeWord)) this.failTime();
    });
    const word = this.CONSUME(t.TimeWord);
    let last: IToken = word;
    let more: TimePart | undefined;
    let high: readonly TimePart[] | undefined;
    this.OPTION({
      GATE: () => this.numberFollows(),
      DEF: () => {
        more = this.SUBRULE(this.timePart);
      },
    });
    this.OPTION2({
      GATE: () => this.numberFollows(2),
      DEF: () => {
        this.OR([{ ALT: () => this.mark(this.CONSUME(t.Dash)) }, { ALT: () => this.CONSUME(t.To) }]);
        high = this.SUBRULE(this.timeParts);
      },
    });
    let atLeast = false;
    this.OPTION3(() => {
      this.CONSUME(t.Or);
      last = this.CONSUME(t.More);
      atLeast = true;
    });
    return this.ACTION((): Time => {
      const unit = word.payload as TimeUnit;
      const first = (value: Rational): Duration =>
        duration([{ value, unit }, ...(more ? [{ value: more.figure.value, unit: more.unit }] : [])]);
      const span = cover(
        range.span,
        high?.at(-1)?.span ?? (atLeast || more === undefined ? this.span(last) : more.span),
      );
      const base = this.aboutSpan(about, span);
      const flagged = (value: Rational) =>
        range.decimals === null && value.d !== 1n ? { ...value, fraction: true as const } : value;
      if (range.single && high === undefined) {
        const low = first(flagged(range.low));
        return { ...base, kind: atLeast ? 'at-least' : 'fixed', low, high: low };
      }
      if (atLeast || (!range.single && (high !== undefined || more !== undefined)))
        throw new Fault('L16', span, { found: this.words(span) });
      const low = first(flagged(range.low));
      const top =
        high === undefined
          ? first(flagged(range.high))
          : duration(high.map((part) => ({ value: part.figure.value, unit: part.unit })));
      if (compare(low.minutes, top.minutes) > 0) throw runsDown(this.words(span), span);
      return { ...base, kind: 'range', low, high: top };
    });
  });

  readonly timePart = this.RULE('timePart', (): TimePart => {
    const figure = this.SUBRULE(this.number);
    this.ACTION(() => {
      if (!this.is(t.TimeWord)) this.failTime();
    });
    const word = this.CONSUME(t.TimeWord);
    return this.ACTION(() => ({ figure, unit: word.payload as TimeUnit, span: cover(figure.span, this.span(word)) }));
  });

  readonly timeParts = this.RULE('timeParts', (): readonly TimePart[] => {
    const parts = [this.SUBRULE(this.timePart)];
    this.OPTION({
      GATE: () => this.numberFollows(),
      DEF: () => {
        parts.push(this.SUBRULE2(this.timePart));
      },
    });
    return parts;
  });

  readonly temperature = this.RULE('temperature', (): Temperature => {
    let minus: IToken | undefined;
    this.OPTION(() => {
      minus = this.mark(this.CONSUME(t.Dash));
    });
    this.ACTION(() => {
      if (!this.numberFollows()) throw new Fault('L15', this.here(), { found: this.rest() || 'nothing' });
    });
    const low = this.SUBRULE(this.number);
    let high: Figure | undefined;
    let minusHigh: IToken | undefined;
    let to: IToken | undefined;
    this.OPTION2({
      GATE: () => this.numberFollows(2) || (this.is(t.Dash, 2) && this.numberFollows(3)),
      DEF: () => {
        this.OR([{ ALT: () => this.mark(this.CONSUME2(t.Dash)) }, { ALT: () => (to = this.CONSUME(t.To)) }]);
        this.OPTION3(() => {
          minusHigh = this.mark(this.CONSUME3(t.Dash));
        });
        high = this.SUBRULE2(this.number);
      },
    });
    this.ACTION(() => {
      if (!this.is(t.Degrees)) throw new Fault('L15', low.span, { found: this.words(low.span) });
    });
    const scale = this.mark(this.CONSUME(t.Degrees));
    return this.ACTION(() => {
      const start = minus === undefined ? low.span : this.span(minus);
      const span = cover(start, this.span(scale));
      return {
        span,
        ...bounds(low, high, { low: minus !== undefined, high: minusHigh !== undefined, to: to !== undefined }, span),
        scale: scale.payload as 'C' | 'F',
      };
    });
  });

  readonly clockTime = this.RULE('clockTime', (): ClockTime => {
    const hour = this.CONSUME(t.Digits);
    this.CONSUME(t.Colon);
    const minute = this.CONSUME2(t.Digits);
    return this.ACTION(() => {
      const span = this.between(hour, minute);
      const text = this.words(span);
      const [, h = '', m = ''] = /^(\d{1,2}):(\d\d)$/.exec(text) ?? [];
      const minutes = Number(h) * 60 + Number(m);
      if (h === '' || Number(m) > 59 || minutes > 1440) throw new Fault('L33', span, { found: text });
      return { span, minutes };
    });
  });
}

function runsDown(text: string, span: Span): Fault {
  const [low = text, high = ''] = text.split(/ ?(?:[-\u2010-\u2015\u2212]| to ) ?/);
  return new Fault('Q04', span, { low, high, way: 'write the shorter time first' });
}

/**
 * A minus before a range with a hyphen holds for both its ends, as in `-20-18 C`. With the word each end has its own:
 * `-5 to 2 C` goes across zero, `-20 to -18 C` does not.
 */
function bounds(
  low: Figure,
  high: Figure | undefined,
  minus: { readonly low: boolean; readonly high: boolean; readonly to: boolean },
  span: Span,
): { low: Numeral; high: Numeral } {
  const signed = ({ value }: Figure, negative: boolean): Numeral => (negative ? { ...value, n: -value.n } : value);
  const bottom = signed(low, minus.low);
  if (high === undefined) return { low: bottom, high: bottom };
  const top = signed(high, minus.high || (minus.low && !minus.to));
  if (compare(bottom, top) <= 0) return { low: bottom, high: top };
  // `-18-20 C` names the same stretch of cold as `-20-18 C`: colder is not later, so only plain numbers run down.
  if (minus.low) return { low: top, high: bottom };
  throw new Fault('Q04', span, {
    low: low.text,
    high: `${minus.high ? '-' : ''}${high.text}`,
    way: 'write the lower temperature first',
  });
}
