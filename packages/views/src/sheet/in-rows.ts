import {
  divide,
  exact,
  HUNDRED,
  multiply,
  printCount,
  printInterval,
  compare,
  ONE,
  withUnit,
  equal,
  type Interval,
  type Rational,
} from '@quern/quantity';
import { printMeasure } from '@quern/quantity';
import { type InItem, type OutItem } from '@quern/compiler';
import type { Amount } from '@quern/syntax';
import { exactText } from '../common/exact-range.js';
import { amountOf, countedOf, foodOf, gramsOf, isDose, standsAsWritten, writtenInUs } from '../common/item-amount.js';
import { bothNumbers } from '../common/plural.js';
import type { ScalableAmount, ScalableCount } from '../common/scalable-amount.js';
import { offText, ouncesRange, usMeasure, type UsMeasure } from '../common/us-measure.js';
import type { SheetIn, SheetOut, SheetUs } from './sheet-data.js';
import { keyOf, percentOf, scaleRange, weightOf, type Setting } from './setting.js';

const SOURCES = { food: 'food', product: 'product', culture: 'culture', any: 'class' } as const;

/** The row of a line that puts something in, at the size of the sheet. */
export function inRow(item: InItem, setting: Setting): SheetIn {
  const { formula, factor } = setting;
  const { content, ref } = item;
  const food = foodOf(item);
  const amount = amountOf(item, formula);
  const grams = gramsOf(item, formula.facts.cups);
  const shown = setting.together.get(keyOf(ref));
  const weight = grams
    ? weightOf(scaleRange(grams, factor), setting, {
        dose: food !== undefined && isDose(food),
        ...(shown ? { shown } : {}),
      })
    : null;
  const said = saidAmount(item, amount, setting);
  const us = setting.measures === 'metric' ? undefined : usOf(item, amount, setting);
  const percent = percentOnFlour(item, setting);
  return {
    kind: 'in',
    line: ref.line.number + 1,
    name: nameAfter(item, setting),
    ...(said ? { said } : {}),
    about: amount?.about ?? content.amount.about,
    ...(content.note ? { note: content.note.text } : {}),
    optional: item.optional,
    source: SOURCES[item.source.kind],
    weight,
    estimate: item.weighed.basis === 'estimate',
    ...(us ? { us } : {}),
    ...(percent ? { percent } : {}),
    alternatives: item.alternatives.map((alternative) => inRow(alternative, setting)),
  };
}

/** What the amount says besides grams, at the size of the sheet. */
function saidAmount(item: InItem, amount: ScalableAmount | undefined, setting: Setting): string | undefined {
  const { content } = item;
  const counted = countedOf(content.amount);
  if (counted) return countText(counted, setting);
  switch (content.amount.kind) {
    case 'open':
      return content.amount.word;
    case 'share':
    case 'percent':
      return shareText(item);
    case 'measure':
      // A measure that the table cannot weigh is told as it is.
      return amount && amount.kind !== 'weight'
        ? volumeText(amount, setting)
        : amount
          ? undefined
          : printMeasure(scaleRange(content.amount.range, setting.factor), content.amount.unit.id, setting.style);
    default:
      return undefined;
  }
}

function shareText(item: InItem): string {
  const { amount, on } = item.content;
  // A phone writes a capital at the start of a line: "All leaven".
  const written = item.ref.line.text
    .slice(amount.span.start, amount.span.end)
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/^[AHR](?=(?:ll|alf|est)\b)/, (letter) => letter.toLowerCase());
  if (amount.kind === 'percent') {
    const target = on?.text ?? item.on?.name;
    return target ? `${written} on ${target}` : written;
  }
  return amount.kind === 'share' && amount.word !== 'all' && !/\bof$/i.test(written) ? `${written} of` : written;
}

function countText(counted: ScalableCount, setting: Setting): string {
  const range = scaleRange({ low: exact(counted.count.low), high: exact(counted.count.high) }, setting.factor);
  const number = printInterval(range, printCount, setting.style);
  const word = compare(range.high, ONE) <= 0 ? counted.one : counted.many;
  return word === '' ? number : withUnit(number, word, setting.style);
}

function volumeText(amount: ScalableAmount, setting: Setting): string | undefined {
  const told = usMeasure(amount, setting.factor, usOptions(setting));
  return told?.text;
}

const usOptions = ({ cups, tolerance, style }: Setting): Parameters<typeof usMeasure>[2] => ({
  cups,
  style,
  ...(tolerance ? { tolerance } : {}),
});

/** The name with the number of the count: '1 onion' twice is '2 onions'. Only in English, whose plurals we know. */
function nameAfter({ content: { amount, name } }: InItem, { factor, formula }: Setting): string {
  if (amount.kind !== 'count' || equal(factor, ONE) || !/^en\b/i.test(formula.facts.language)) return name.text;
  const { one, many } = bothNumbers(name.text);
  return compare(multiply(amount.range.high, factor), ONE) <= 0 ? one : many;
}

/** Cups, spoons, ounces or pieces: a measure that the file states is printed as written when nothing is scaled. */
function usOf(item: InItem, amount: ScalableAmount | undefined, setting: Setting): SheetUs | undefined {
  const { formula, factor, cups } = setting;
  const written = standsAsWritten(formula, factor, cups) ? writtenInUs(item) : undefined;
  if (written) return { text: written, manner: 'written' };
  if (!amount || isWhole(item.content.amount)) return undefined;
  const counted = countedOf(item.content.amount);
  if (counted) return { text: countText(counted, setting), manner: 'counted' };
  return told(usMeasure(amount, setting.factor, usOptions(setting)), setting);
}

/** All of a thing, or the rest of it, needs no measure. */
const isWhole = (amount: Amount): boolean =>
  amount.kind === 'share' && (amount.word === 'all' || amount.word === 'rest');

function told(measure: UsMeasure | undefined, setting: Setting): SheetUs | undefined {
  if (!measure) return undefined;
  const { text, manner, off, near } = measure;
  return {
    text,
    manner,
    ...(off ? { off: { percent: exactText(multiply(off, HUNDRED)), text: offText(off, setting.style), near } } : {}),
  };
}

function percentOnFlour(item: InItem, { formula, percentages, style, together }: Setting): SheetIn['percent'] {
  const flour = formula.flour;
  if (!percentages || !flour || !item.weighed.grams || !together.has(keyOf(item.ref))) return undefined;
  return percentOf(divide(item.weighed.grams, flour.grams), style);
}

/** The row of a line that takes something out. */
export function outRow(item: OutItem, setting: Setting): SheetOut {
  const { content, ref } = item;
  const grams: Rational | undefined = item.grams && multiply(item.grams, setting.factor);
  const range: Interval | undefined = grams && { low: grams, high: grams };
  const said = outSaid(item);
  const us =
    range && setting.measures === 'us' && !isWhole(content.amount)
      ? told(ouncesRange(range, setting.style), setting)
      : undefined;
  return {
    kind: 'out',
    line: ref.line.number + 1,
    verb: content.verb,
    what: [content.of ? `of ${content.of.text}` : '', content.as ? `as ${content.as.text}` : '']
      .filter(Boolean)
      .join(' '),
    ...(said ? { said } : {}),
    ...(content.note ? { note: content.note.text } : {}),
    weight: range ? weightOf(range, setting) : null,
    ...(us ? { us } : {}),
    estimate: item.estimate,
  };
}

/** A share or a percent as written; a weight or a volume is told by its figure. */
function outSaid({ content, ref }: OutItem): string | undefined {
  const { amount } = content;
  if (amount.kind === 'measure') return undefined;
  return ref.line.text.slice(amount.span.start, amount.span.end).trim().replace(/\s+/g, ' ').replace(/ of$/i, '');
}
