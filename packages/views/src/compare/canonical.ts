import { normaliseName, scaleAmount, singular } from '@quern/compiler';
import {
  add,
  degrees,
  multiply,
  rational,
  sizeOf,
  temperaturePoint,
  units,
  type CupSystem,
  type Rational,
} from '@quern/quantity';
import {
  printAmount,
  type Bracket,
  type Duration,
  type LineContent,
  type Measure,
  type Name,
  type Prose,
  type Temperature,
} from '@quern/syntax';

/*
 * What a line says, apart from how it is spelled: `1/2` and `0.5`, `1 kg` and `1000 g`, `half of` and `1/2 of`, `Onions`
 * and `onion` are the same. Two lines say the same exactly when their canonical forms print alike.
 */

/** Places of a line that hold the name of a food or a thing made; every other text is kept letter by letter. */
const NAMES: ReadonlySet<string> = new Set(['name', 'on', 'as', 'of', 'from', 'to', 'in', 'beside']);

export function canonical<C extends LineContent>(content: C, cups: CupSystem): C {
  // A check is compared at the digits written, so its digits are part of what it says.
  if (content.kind === 'check') return { ...content, ...namesOf(content) };
  return plain(content, '', cups) as C;
}

function namesOf(content: { readonly name?: Name; readonly on?: Name; readonly from?: Name }): Record<string, Name> {
  const named = Object.entries({ name: content.name, on: content.on, from: content.from });
  return Object.fromEntries(named.flatMap(([key, name]) => (name ? [[key, plainName(name)]] : [])));
}

const plainName = (name: Name): Name => ({ span: name.span, text: normaliseName(name.text) });

/** The value with every part of it in one spelling. The shape stays, so a line stays a line of its kind. */
function plain(value: unknown, key: string, cups: CupSystem): unknown {
  if (Array.isArray(value)) return value.map((one) => plain(one, key, cups));
  if (typeof value !== 'object' || value === null) return value;
  if (isRational(value)) return rational(value.n, value.d);
  if (isMeasure(value)) return plainMeasure(value, cups);
  if (isProse(value)) return plainProse(value, cups);
  if (isDuration(value)) return { minutes: value.minutes, parts: [{ value: value.minutes, unit: 'min' }] };
  if (isTemperature(value)) return plainTemperature(value);
  if (NAMES.has(key) && isName(value)) return plainName(value);
  // What is counted is one loaf or two loaves.
  if (key === 'thing' && isName(value)) return plainName(value);
  const entries = Object.entries(value).map(([name, part]) => [name, plain(part, name, cups)] as const);
  return { ...Object.fromEntries(entries), ...respelled(value) };
}

/** What is spelled in several ways besides its numbers. */
function respelled(value: object): object {
  if ('single' in value) return { decimals: null };
  if ('container' in value && typeof value.container === 'string') {
    return { container: singular(value.container.toLowerCase()) };
  }
  if (!('kind' in value)) return {};
  if (value.kind === 'portion' && 'of' in value && typeof value.of === 'string') {
    return { of: singular(value.of.toLowerCase()) };
  }
  if (value.kind === 'share' && 'word' in value && value.word !== 'rest') return { word: 'fraction' };
  return {};
}

const isRational = (value: object): value is Rational => 'n' in value && 'd' in value;
const isMeasure = (value: object): value is Measure => 'kind' in value && value.kind === 'measure';
const isProse = (value: object): value is Prose => 'brackets' in value;
const isDuration = (value: object): value is Duration => 'minutes' in value && 'parts' in value;
const isTemperature = (value: object): value is Temperature => 'scale' in value;
const isName = (value: object): value is Name => 'text' in value && typeof value.text === 'string';

const BASE = { mass: 'g', volume: 'ml' } as const;

/** Weights in grams, volumes in millilitres; what is counted stays in its own unit. */
function plainMeasure(measure: Measure, cups: CupSystem): Measure {
  const { range, unit, and, ...rest } = measure;
  const { dimension } = units[unit.id];
  const plainRange = { ...range, decimals: null, low: bare(range.low), high: bare(range.high) };
  if (dimension !== 'mass' && dimension !== 'volume') return { ...rest, range: plainRange, unit };
  const more = and ? multiply(and.value, sizeOf(and.unit.id, cups)) : rational(0);
  const base = (value: Rational): Rational => add(multiply(value, sizeOf(unit.id, cups)), more);
  return {
    ...rest,
    range: { ...plainRange, low: base(range.low), high: base(range.high) },
    unit: { span: unit.span, id: BASE[dimension] },
  };
}

function plainTemperature({ span, low, high, scale }: Temperature): Temperature {
  const celsius = (value: Rational): Rational => degrees(temperaturePoint(value, scale), 'C');
  return { span, low: celsius(low), high: celsius(high), scale: 'C' };
}

const bare = ({ n, d }: Rational): Rational => rational(n, d);

/** A sentence with the figures in its brackets in one spelling. */
function plainProse(prose: Prose, cups: CupSystem): Prose {
  return withBrackets(prose, (bracket) => ({
    ...bracket,
    ...(bracket.amount ? { amount: plain(bracket.amount, '', cups) as typeof bracket.amount } : {}),
    ...(bracket.of ? { of: plainName(bracket.of) } : {}),
  }));
}

/** A sentence with other brackets; its text says what they say. */
function withBrackets(prose: Prose, change: (bracket: Bracket) => Bracket): Prose {
  const brackets: Bracket[] = [];
  let text = '';
  let from = 0;
  for (const old of prose.brackets) {
    const bracket = change(old);
    const { amount, of } = bracket;
    const written = prose.text.slice(old.span.start - prose.span.start, old.span.end - prose.span.start);
    const inside = amount && `${printAmount(amount, of !== undefined)}${of ? ` ${of.text}` : ''}`;
    text += prose.text.slice(from, old.span.start - prose.span.start);
    const start = prose.span.start + text.length;
    text += inside === undefined ? written : `[${inside}]`;
    const span = { start, end: prose.span.start + text.length };
    brackets.push({ ...bracket, span, text: inside ?? bracket.text });
    from = old.span.end - prose.span.start;
  }
  text += prose.text.slice(from);
  return { span: { start: prose.span.start, end: prose.span.start + text.length }, text, brackets };
}

/**
 * The line of a recipe made `factor` times: amounts, what it gives and serves, the number of vessels, asserted weights and
 * the figures in brackets. Percentages, shares, times, temperatures and lengths stay.
 */
export function scaledLine(content: LineContent, factor: Rational): LineContent {
  const times = (value: Rational): Rational => multiply(value, factor);
  const range = <R extends { readonly low: Rational; readonly high: Rational }>(of: R): R => ({
    ...of,
    low: times(of.low),
    high: times(of.high),
    decimals: null,
  });
  switch (content.kind) {
    case 'in':
    case 'or':
    case 'out': {
      const equals = content.equals.map((side) =>
        side.each ? side : { ...side, amount: scaleAmount(side.amount, factor) },
      );
      return { ...content, amount: scaleAmount(content.amount, factor), equals };
    }
    case 'check':
    case 'add':
      return { ...content, amount: scaleAmount(content.amount, factor) } as LineContent;
    case 'swap':
      return content.amount ? { ...content, amount: scaleAmount(content.amount, factor) } : content;
    case 'step':
    case 'every':
    case 'more':
      return { ...content, prose: scaledProse(content.prose, factor) };
    case 'block':
      return content.equal ? { ...content, equal: scaleAmount(content.equal, factor) } : content;
    case 'gives':
      if (content.count) return { ...content, count: range(content.count) };
      return content.total ? { ...content, total: scaleAmount(content.total, factor) } : content;
    case 'serves':
      return { ...content, range: range(content.range) };
    case 'vessel':
      return { ...content, count: times(content.count) };
    default:
      return content;
  }
}

function scaledProse(prose: Prose, factor: Rational): Prose {
  return withBrackets(prose, (bracket) =>
    bracket.amount && bracket.amount.kind !== 'share'
      ? { ...bracket, amount: scaleAmount(bracket.amount, factor) }
      : bracket,
  );
}
