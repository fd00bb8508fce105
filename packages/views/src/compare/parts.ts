import { normaliseName, baseValue } from '@quern/compiler';
import { degrees, temperaturePoint, type CupSystem, type Interval } from '@quern/quantity';
import {
  factWord,
  printAmount,
  printLine,
  printTemperature,
  printTime,
  type AtClause,
  type Clause,
  type Equal,
  type InLine,
  type LineContent,
  type OutLine,
  type StepLine,
  type Temperature,
  type Time,
  type Words,
} from '@quern/syntax';
import { canonical } from './canonical.js';

/*
 * The parts of a line, each with a key: two lines differ in a part when its keys differ. Which parts a line has depends
 * on its kind alone, so that the difference of two lines can be told part by part.
 */

export type PartName =
  | 'name'
  | 'amount'
  | 'second measure'
  | 'on'
  | 'as'
  | 'of'
  | 'from'
  | 'optional'
  | 'note'
  | 'verb'
  | 'busy'
  | 'time'
  | 'heat'
  | 'until'
  | 'using'
  | 'every'
  | 'lasts'
  | 'words'
  | 'weight'
  | 'clock'
  | 'value';

/** What a part measures, where it is a measure. */
export type PartValue =
  | { readonly kind: 'grams'; readonly range: Interval }
  | { readonly kind: 'minutes'; readonly range: Interval }
  | { readonly kind: 'celsius'; readonly range: Interval };

export interface Part {
  readonly name: PartName;
  /** Equal keys say the same. */
  readonly key: string;
  /** As it is written, in the usual layout; empty when the line does not have it. */
  readonly text: string;
  /** Free words, to be compared word by word. */
  readonly wording: boolean;
  readonly value?: PartValue;
}

/** The parts of a line; `cups` says which cup its file means. */
export function partsOf(content: LineContent, cups: CupSystem): readonly Part[] {
  const plain = canonical(content, cups);
  const keys = partTexts(plain);
  const texts = partTexts(content);
  return keys.map(({ name, text: key }, index): Part => {
    const value = valueOf(content, name, cups);
    return {
      name,
      key,
      text: texts[index]?.text ?? '',
      wording: WORDING.has(name) || (name === 'value' && content.kind === 'text-fact'),
      ...(value ? { value } : {}),
    };
  });
}

const WORDING: ReadonlySet<PartName> = new Set<PartName>(['note', 'words']);

/** All that a line says, as one text; equal texts say the same. */
export const keyOf = (content: LineContent, cups: CupSystem): string => {
  const plain = canonical(content, cups);
  return `${plain.kind} ${partTexts(plain)
    .map(({ text }) => text)
    .join('\u0000')}`;
};

interface PartText {
  readonly name: PartName;
  readonly text: string;
}

const part = (name: PartName, text: string | undefined): PartText => ({ name, text: text ?? '' });
const words = (of: Words | undefined): string | undefined => of?.text;

/** Each part of a line as text. A line of a kind always has the same parts in the same order. */
function partTexts(content: LineContent): readonly PartText[] {
  switch (content.kind) {
    case 'in':
    case 'or':
      return inParts(content);
    case 'out':
      return outParts(content);
    case 'step':
      return stepParts(content);
    case 'every':
      return [
        part('every', printTime(content.period)),
        part('lasts', content.duration && printTime(content.duration)),
        part('words', content.prose.text),
      ];
    case 'more':
      return [part('words', content.prose.text)];
    case 'check':
      return [
        part('amount', printAmount(content.amount)),
        part('name', words(content.name)),
        part('on', words(content.on)),
        part('from', words(content.from)),
      ];
    case 'block':
      return [
        part('clock', content.clock && String(content.clock.minutes)),
        part('name', words(content.name)),
        part('weight', content.equal && printAmount(content.equal)),
      ];
    case 'blank':
    case 'comment':
    case 'conflict':
      return [];
    case 'bad':
      return [part('value', content.opening)];
    case 'keeps':
      return [
        part('time', printTime(content.time)),
        part('heat', content.at && printTemperature(content.at)),
        part('note', words(content.note)),
      ];
    case 'best-after':
      return [part('time', printTime(content.time)), part('note', words(content.note))];
    default:
      return [part('value', (printLine(content) ?? '').slice(factWord(content).length + 1))];
  }
}

function inParts(content: InLine): readonly PartText[] {
  return [
    part('name', `${content.any ? 'any ' : ''}${content.name.text}`),
    part('amount', printAmount(content.amount, true)),
    part('on', words(content.on)),
    part('as', words(content.as)),
    part('optional', content.optional ? 'optional' : ''),
    part('second measure', content.equals.map(equalText).join(' = ')),
    part('note', words(content.note)),
  ];
}

function outParts(content: OutLine): readonly PartText[] {
  return [
    part('verb', content.verb),
    part('of', words(content.of)),
    part('as', words(content.as)),
    part('amount', printAmount(content.amount, content.of !== undefined)),
    part('second measure', content.equals.map(equalText).join(' = ')),
    part('note', words(content.note)),
  ];
}

const equalText = ({ amount, each }: Equal): string => `${printAmount(amount)}${each ? ' each' : ''}`;

function stepParts(content: StepLine): readonly PartText[] {
  const { clauses } = content;
  const of = (kind: Clause['kind']): string =>
    clauses
      .filter((clause) => clause.kind === kind)
      .map(clauseText)
      .join(' ');
  return [
    part('busy', content.lane),
    part('time', content.time && printTime(content.time)),
    part('heat', of('at')),
    part('until', of('until')),
    part('using', of('using')),
    part('words', content.prose.text),
  ];
}

/** A clause without its first word, printed as a step of its own would be. */
function clauseText(clause: Clause): string {
  const span = { start: 0, end: 0 };
  const step: StepLine = {
    kind: 'step',
    indent: 0,
    lane: 'wait',
    laneSpan: span,
    clauses: [clause],
    prose: { span, text: '', brackets: [] },
  };
  return (printLine(step) ?? '').slice(`wait ${clause.kind} `.length, -1);
}

// ---- figures ---------------------------------------------------------------------------------------------------------

function valueOf(content: LineContent, name: PartName, cups: CupSystem): PartValue | undefined {
  if (name === 'amount' && 'amount' in content && content.amount?.kind === 'measure') {
    const { amount } = content;
    if (!['g', 'kg', 'mg', 'oz', 'lb'].includes(amount.unit.id)) return undefined;
    return { kind: 'grams', range: { low: baseValue(amount, cups, 'low'), high: baseValue(amount, cups, 'high') } };
  }
  if (name === 'time' && 'time' in content && content.time) return minutes(content.time);
  if (name === 'every' && content.kind === 'every') return minutes(content.period);
  if (name === 'lasts' && content.kind === 'every' && content.duration) return minutes(content.duration);
  if (content.kind === 'keeps' && name === 'heat' && content.at) return celsius(content.at);
  if (content.kind !== 'step') return undefined;
  const { clauses } = content;
  if (name === 'heat') {
    const at = clauses.find((clause): clause is AtClause => clause.kind === 'at');
    return at && celsius(at.temperature);
  }
  const until = clauses.find((clause) => clause.kind === 'until');
  return name === 'until' && until?.temperature ? celsius(until.temperature) : undefined;
}

const minutes = ({ low, high }: Time): PartValue => ({
  kind: 'minutes',
  range: { low: low.minutes, high: high.minutes },
});

function celsius({ low, high, scale }: Temperature): PartValue {
  const at = (value: Temperature['low']): Interval['low'] => degrees(temperaturePoint(value, scale), 'C');
  return { kind: 'celsius', range: { low: at(low), high: at(high) } };
}

// ---- what a line is about --------------------------------------------------------------------------------------------

/** The kind of a line for pairing: only lines of one kind are ever paired. */
export function categoryOf(content: LineContent): string {
  if (content.kind === 'block') return `block ${content.block}`;
  if (content.kind === 'text-fact' || content.kind === 'list-fact') return content.word;
  return content.kind;
}

/** What the line is about, its identity in its block; undefined when it has none but its place. */
export function subjectOf(content: LineContent): string | undefined {
  const names = (...all: readonly ({ readonly text: string } | undefined)[]): string =>
    all.map((name) => (name ? normaliseName(name.text) : '')).join('|');
  switch (content.kind) {
    case 'in':
    case 'or':
      return names(content.name);
    case 'out':
      return `${content.verb}|${names(content.of, content.as)}`;
    case 'check':
      return names(content.name, content.on, content.from);
    case 'block':
      return content.block === 'course' ? String(content.clock?.minutes ?? '') : names(content.name);
    case 'use':
      return names(content.as ?? content.name);
    case 'count-as':
      return names(content.name);
    case 'swap':
      return names(content.from, content.in);
    case 'drop':
      return names(content.name, content.in);
    case 'add':
      return names(content.name, content.beside);
    case 'baked':
      return content.date;
    case 'stand':
      return content.word;
    default:
      return undefined;
  }
}
