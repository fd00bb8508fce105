import {
  add,
  compare,
  isWhole,
  ONE,
  multiply,
  rational,
  subtract,
  toDecimal,
  toExactText,
  units,
  type Rational,
  type UnitId,
} from '@quern/quantity';
import type {
  Amount,
  CheckLine,
  Clause,
  ClockTime,
  Duration,
  Equal,
  FactLine,
  InLine,
  LineContent,
  Measure,
  Name,
  Numeral,
  NumberRange,
  OutLine,
  Temperature,
  Thing,
  Time,
  TimeUnit,
  VesselFact,
  Words,
} from './ast.js';
import { factWord } from './classify.js';

/*
 * The canonical text of a line. Reading it gives the same tree again, apart from the spans.
 */

/**
 * The line as the formatter writes it, without its indent.
 * @returns undefined for a line that cannot be read and for a conflict mark: they have no form of their own.
 */
export function printLine(content: LineContent): string | undefined {
  switch (content.kind) {
    case 'bad':
    case 'conflict':
      return undefined;
    case 'blank':
      return '';
    case 'comment':
      return content.words.text === '' ? '//' : `// ${content.words.text}`;
    case 'in':
    case 'or':
      return printIn(content);
    case 'out':
      return printOut(content);
    case 'step':
      return `${spaced(content.lane, content.time && printTime(content.time), ...content.clauses.map(printClause))}${prose(content.prose)}`;
    case 'every': {
      const duration = content.duration === undefined ? '' : `, ${printTime(content.duration)}`;
      return `every ${printTime(content.period)}${duration}${prose(content.prose)}`;
    }
    case 'more':
      return prose(content.prose);
    case 'check':
      return printCheck(content);
    case 'block': {
      const clock = content.clock && printClock(content.clock);
      const equal = content.equal && `= ${printAmount(content.equal)}`;
      return spaced(content.block, clock, content.name?.text, equal);
    }
    default:
      return `${factWord(content)} ${printFact(content)}`;
  }
}

function spaced(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(' ');
}

function prose(words: Words): string {
  return words.text === '' ? ':' : `: ${words.text}`;
}

function note(words: Words | undefined): string {
  return words === undefined ? '' : `, ${words.text}`;
}

// ---- numbers and amounts ---------------------------------------------------------------------------------------------

/** `1 1/2`, `3/4`, `2`. */
function mixed(value: Rational): string {
  if (isWhole(value)) return value.n.toString();
  const whole = value.n / value.d;
  const part = subtract(value, rational(whole));
  const fraction = `${part.n}/${part.d}`;
  return whole === 0n ? fraction : `${whole} ${fraction}`;
}

/** A number as it was written: as a fraction, or as a decimal with its own zeros. */
export function printNumeral(value: Numeral): string {
  if (value.fraction) return mixed(value);
  if (value.decimals !== undefined) return toDecimal(value, value.decimals);
  const text = toExactText(value);
  return text.includes('/') ? mixed(value) : text;
}

/** `12`, `1.5`, `1 1/2`, `10-14`. */
export function printRange({ low, high, single, decimals }: NumberRange): string {
  if (decimals === null) return single ? mixed(low) : `${mixed(low)}-${mixed(high)}`;
  if (single) return toDecimal(low, decimals);
  const [first, second] = [toExactText(low), toExactText(high)];
  const fits =
    decimals === 0 ||
    [first, second].some((text) => text.length - text.indexOf('.') - 1 === decimals && text.includes('.'));
  return fits ? `${first}-${second}` : `${toDecimal(low, decimals)}-${toDecimal(high, decimals)}`;
}

/** A unit after a number: `cup`, `cups`. */
function unitAfter(id: UnitId, value: Rational): string {
  return compare(value, ONE) > 0 ? units[id].many : units[id].one;
}

const about = (part: { readonly about: boolean }): string => (part.about ? 'about ' : '');

function printMeasure(measure: Measure): string {
  const { range, unit, and } = measure;
  const second = and === undefined ? '' : ` ${printNumeral(and.value)} ${unitAfter(and.unit.id, and.value)}`;
  return `${about(measure)}${printRange(range)} ${unitAfter(unit.id, range.high)}${second}`;
}

/** An amount as it stands before a name, with the `of` of a share when a name follows. */
export function printAmount(amount: Amount, named = false): string {
  switch (amount.kind) {
    case 'measure':
      return printMeasure(amount);
    case 'count':
      return about(amount) + printRange(amount.range);
    case 'pack':
      return `${about(amount)}${printRange(amount.range)} ${amount.container} of ${printMeasure(amount.each)}`;
    case 'portion':
      return `${about(amount)}${printRange(amount.range)} ${amount.of} of`;
    case 'percent':
      return `${about(amount)}${printRange(amount.range)} %`;
    case 'open':
      return about(amount) + amount.word;
    case 'share': {
      const { word, low = ONE, high = low } = amount;
      if (word === 'all') return `${about(amount)}all`;
      if (word === 'half' || word === 'rest') return `${about(amount)}${word}${named ? ' of' : ''}`;
      const hundredfold = (value: Rational): Rational => (word === 'percent' ? multiply(value, rational(100)) : value);
      const print = word === 'percent' ? printNumeral : mixed;
      const [first, last] = [print(hundredfold(low)), print(hundredfold(high))];
      return `${about(amount)}${first === last ? first : `${first}-${last}`}${word === 'percent' ? ' %' : ''} of`;
    }
  }
}

const printEqual = ({ amount, each }: Equal): string => `= ${printAmount(amount)}${each ? ' each' : ''}`;
const prefixed = (word: string, name: Name | undefined): string | undefined => name && `${word} ${name.text}`;

function printIn(line: InLine): string {
  const opening = line.kind === 'or' ? 'or' : line.optional ? 'optional' : undefined;
  const any = line.any ? 'any' : undefined;
  const head = spaced(
    opening,
    printAmount(line.amount, true),
    any,
    line.name.text,
    prefixed('as', line.as),
    prefixed('on', line.on),
    ...line.equals.map(printEqual),
  );
  return head + note(line.note);
}

function printOut(line: OutLine): string {
  const { amount } = line;
  // A share brings its own `of`; `2 of lemons` would be no share, so a count has none.
  // Nor has `save 60 g liquor`, which names a thing or says where it comes from: the ledger asks.
  const unclear = line.verb === 'save' && line.as === undefined;
  const of = !unclear && (amount.kind === 'measure' || amount.kind === 'open') ? 'of' : undefined;
  const from = line.of === undefined ? undefined : spaced(of, line.of.text);
  const head = spaced(
    line.verb,
    printAmount(amount, line.of !== undefined),
    from,
    prefixed('as', line.as),
    ...line.equals.map(printEqual),
  );
  return head + note(line.note);
}

function printCheck({ amount, name, on, from }: CheckLine): string {
  return spaced('check', printAmount(amount), name?.text, prefixed('on', on), prefixed('from', from));
}

// ---- times, temperatures, clauses ------------------------------------------------------------------------------------

const TIME_WORDS: Readonly<Record<TimeUnit, readonly [one: string, many: string]>> = {
  s: ['s', 's'],
  min: ['min', 'min'],
  h: ['h', 'h'],
  d: ['d', 'd'],
  week: ['week', 'weeks'],
  month: ['month', 'months'],
};

function timeWord(unit: TimeUnit, value: Rational): string {
  const [one, many] = TIME_WORDS[unit];
  return compare(value, ONE) > 0 ? many : one;
}

function printDuration({ parts }: Duration): string {
  return parts.map(({ value, unit }) => `${printNumeral(value)} ${timeWord(unit, value)}`).join(' ');
}

/** `10-14 h`, `about 20 min`, `overnight`, `30 min or more`. */
export function printTime(time: Time): string {
  const { kind, low, high } = time;
  if (kind === 'overnight') return `${about(time)}overnight`;
  if (kind === 'at-least') return `${about(time)}${printDuration(low)} or more`;
  if (kind === 'fixed') return about(time) + printDuration(low);
  const [first, second] = [low.parts[0], high.parts[0]];
  const simple = low.parts.length === 1 && high.parts.length === 1 && first?.unit === second?.unit;
  if (!simple || first === undefined || second === undefined)
    return `${about(time)}${printDuration(low)} - ${printDuration(high)}`;
  return `${about(time)}${printNumeral(first.value)}-${printNumeral(second.value)} ${timeWord(second.unit, second.value)}`;
}

/**
 * `24 C`, `150-160 C`, `-20-18 C` (a minus before a range with a hyphen holds for both its ends), `-5 to 2 C` (with the
 * word each end has its own sign).
 */
export function printTemperature({ low, high, scale }: Temperature): string {
  if (low.n < 0n && high.n >= 0n) return `-${printNumeral({ ...low, n: -low.n })} to ${printNumeral(high)} ${scale}`;
  const positive = (value: Numeral): string => printNumeral(value.n < 0n ? { ...value, n: -value.n } : value);
  const sign = low.n < 0n ? '-' : '';
  const range = compare(low, high) === 0 ? positive(low) : `${positive(low)}-${positive(high)}`;
  return `${sign}${range} ${scale}`;
}

/** `07:00`. */
export function printClock({ minutes }: ClockTime): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two((minutes - (minutes % 60)) / 60)}:${two(minutes % 60)}`;
}

function printThing({ count, bare, name, written, shelves, heat }: Thing): string {
  const number = bare ? undefined : printNumeral(count);
  const of = shelves && `of ${printNumeral(shelves)} ${compare(shelves, ONE) > 0 ? 'shelves' : 'shelf'}`;
  return spaced(number, written ?? name, of, heat && `at ${printTemperature(heat)}`);
}

function printClause(clause: Clause): string {
  switch (clause.kind) {
    case 'at': {
      const { temperature, equal, change, fan } = clause;
      const moving = change && `${change.direction} to ${printTemperature(change.to)}`;
      return spaced(
        'at',
        printTemperature(temperature),
        equal && `= ${printTemperature(equal)}`,
        moving,
        fan ? 'fan' : undefined,
      );
    }
    case 'until': {
      const { temperature, acidity } = clause;
      if (temperature !== undefined) return `until ${printTemperature(temperature)}`;
      return spaced('until pH', acidity?.below ? 'below' : undefined, acidity && printNumeral(acidity.value));
    }
    case 'using':
      return `using ${clause.things.map(printThing).join(', ')}`;
  }
}

// ---- facts -----------------------------------------------------------------------------------------------------------

function printVessel({ count, thing, volume, lengths = [], lengthUnit = 'cm' }: VesselFact): string {
  const longest = lengths.reduce<Rational>((most, length) => add(most, length), rational(0));
  const box = `${lengths.map(printNumeral).join(' x ')} ${unitAfter(lengthUnit, longest)}`;
  return `${printNumeral(count)} ${thing.text} of ${volume === undefined ? box : printMeasure(volume)}`;
}

/** A fact after its opening word. */
function printFact(fact: FactLine): string {
  switch (fact.kind) {
    case 'text-fact':
      return fact.words.text;
    case 'list-fact':
      return fact.items.map(({ text }) => text).join(', ');
    case 'cup':
      return fact.system;
    case 'gives': {
      if (fact.total !== undefined) return printMeasure(fact.total);
      const count = fact.count && `${fact.about ? 'about ' : ''}${printRange(fact.count)}`;
      return spaced(count, fact.thing?.text, fact.each && `of ${printMeasure(fact.each)}`);
    }
    case 'serves':
      return spaced(printRange(fact.range), fact.thing?.text);
    case 'vessel':
      return printVessel(fact);
    case 'basis':
      return fact.name.text;
    case 'count-as':
      return `${fact.name.text} as ${fact.as}`;
    case 'use':
      return spaced(fact.name.text, `from ${fact.path.text}`, prefixed('as', fact.as));
    case 'keeps':
      return spaced(printTime(fact.time), fact.at && `at ${printTemperature(fact.at)}`) + note(fact.note);
    case 'best-after':
      return printTime(fact.time) + note(fact.note);
    case 'per': {
      const values = fact.values.map(({ nutrient, value, unit }) => `${nutrient} ${printNumeral(value)} ${unit}`);
      return `${fact.basis} ${values.join(', ')}`;
    }
    case 'parts':
      return fact.parts.map(({ value, name }) => `${printNumeral(value)} ${name.text}`).join(', ');
    case 'weighs':
      return `${printAmount(fact.amount)} = ${printMeasure(fact.equal)}`;
    case 'swap': {
      const amount = fact.amount && printAmount(fact.amount, true);
      return spaced(fact.from.text, prefixed('in', fact.in), 'for', amount, fact.to.text);
    }
    case 'drop':
      return spaced(fact.name.text, prefixed('in', fact.in));
    case 'add':
      return `${printAmount(fact.amount, true)} ${fact.name.text} beside ${fact.beside.text}`;
    case 'times':
      return printNumeral(fact.factor);
    case 'has':
      return fact.things.map(printThing).join(', ');
    case 'awake':
      return `${printClock(fact.from)}-${printClock(fact.to)}`;
    case 'room':
      return printTemperature(fact.temperature);
    case 'stand':
      return printTime(fact.time);
    case 'stretch':
      return `${printRange(fact.percent)} %`;
    case 'date':
      return fact.date;
    case 'baked': {
      const lost = fact.lost && `lost ${printRange(fact.lost)} %`;
      const head = [fact.date, fact.yield?.text, lost].filter((part) => part !== undefined).join(', ');
      return fact.remark === undefined ? head : `${head}: ${fact.remark.text}`;
    }
  }
}
