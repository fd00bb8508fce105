import { diagnose, type Diagnostic } from '@quern/text';
import {
  absolute,
  add,
  compare,
  exact,
  multiply,
  rational,
  sizeOf,
  subtract,
  temperaturePoint,
  units,
  type Rational,
} from '@quern/quantity';
import {
  scanProse,
  type MeasureMention,
  type Prose,
  type Temperature,
  type TemperatureMention,
  type TimeMention,
} from '@quern/syntax';
import { findName } from '../find-name.js';
import type { FoodScope } from '../foods-in-file.js';
import type { Formula, InItem, LineRef, StepItem } from '../model.js';
import { placeOf } from '../places.js';
import { showGrams } from '../show.js';
import { NO_WORDS, volumeSpread } from '../weighing.js';

type Report = (diagnostic: Diagnostic) => void;

/*
 * Figures in sentences: those that will not scale (Q09), amounts that no line carries or that contradict their line
 * (Q13), times and temperatures that contradict the step's own (T09, T10). A sentence may speak of part of an amount or
 * of a time, so only what cannot be a part, or plainly speaks of the whole, is called a contradiction.
 */

export function checkProseFigures(formula: Formula, foods: FoodScope, report: Report): void {
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'step') continue;
      const sentences = [
        { ref: item.ref, prose: item.content.prose },
        ...item.more.map((more) => ({ ref: more.ref, prose: more.content.prose })),
      ];
      for (const { ref, prose } of sentences) checkSentence({ formula, foods, report }, item, ref, prose);
    }
  }
}

interface Context {
  readonly formula: Formula;
  readonly foods: FoodScope;
  readonly report: Report;
}

function checkSentence(context: Context, step: StepItem, ref: LineRef, prose: Prose): void {
  const { report } = context;
  if (!/\d|[½¼¾⅓⅔⅛]|\b(?:hour|minute|day|night)/i.test(prose.text)) return;
  const mentions = scanProse(prose.text);
  const times = mentions.filter((mention) => mention.kind === 'time');
  for (const mention of mentions) {
    const place = placeOf(ref, {
      start: prose.span.start + mention.span.start,
      end: prose.span.start + mention.span.end,
    });
    switch (mention.kind) {
      case 'measure':
        if (!mention.bracketed) checkMeasure(context, mention, prose.text, place);
        break;
      case 'time':
        checkTime(step, mention, prose.text, times.length, place, report);
        break;
      case 'temperature':
        checkTemperature(step, mention, place, report);
        break;
      default:
    }
  }
}

// ---------------------------------------------------------------- amounts

const PART =
  /\b(?:of the|half|third|quarter|first|second|last|rest|remaining|reserve|reserved|keep|hold|set|aside|back|more|another|extra|at a time|about|from)\b/i;
const SAME = exact('0.02');

function checkMeasure(
  { formula, foods, report }: Context,
  mention: MeasureMention,
  text: string,
  place: Diagnostic['place'],
): void {
  const { dimension } = units[mention.unit];
  if (mention.each || (dimension !== 'mass' && dimension !== 'volume')) return;
  const after = text.slice(mention.span.end).match(/^\s+(?:of\s+)?(?:the\s+)?((?:[\p{L}\p{M}'’-]+\s?){1,3})/u)?.[1];
  const lines = after ? linesOf(formula, after) : [];
  const [first] = lines;
  if (!after || !first) {
    const stranger = after && foodNowhere(after, formula, foods);
    if (stranger) report(diagnose('Q13', place, { figure: mention.text, name: stranger, found: 'no line puts it in' }));
    else report(diagnose('Q09', place, { figure: mention.text }));
    return;
  }
  const total = sumGrams(lines);
  const said = gramsOf(mention, first, formula);
  const contradicts = total && said && differs(said, total, PART.test(text));
  if (contradicts) {
    const line = first.ref.line.number + 1;
    report(
      diagnose('Q13', place, {
        figure: mention.text,
        name: first.content.name.text,
        found: `line ${line} puts in ${showGrams(total)}`,
      }),
    );
  } else report(diagnose('Q09', place, { figure: mention.text }));
}

/** The food that the words after a figure begin with, if nothing of that name goes in or is made. */
function foodNowhere(words: string, formula: Formula, foods: FoodScope): string | undefined {
  const parts = words.trim().split(/\s+/);
  for (let length = parts.length; length >= 1; length--) {
    const name = parts.slice(0, length).join(' ');
    if (!foods.isNamed(name)) continue;
    const isHere =
      [...formula.products.values()].some((product) => findName(name, product.name)) || speaksOf(name, formula);
    return isHere ? undefined : name.toLowerCase();
  }
  return undefined;
}

/** Whether a part of any pot, or any in line, shares a word with the name. */
function speaksOf(name: string, formula: Formula): boolean {
  const names = formula.makes.flatMap((make) => [
    ...make.pot.parts.map(({ food }) => food.name),
    ...make.items.flatMap((item) => (item.kind === 'in' ? [item.content.name.text] : [])),
  ]);
  return names.some((other) => findName(name, other) ?? findName(other, name));
}

/** In lines of the food that the words after a figure begin with. */
function linesOf(formula: Formula, words: string): InItem[] {
  const found: InItem[] = [];
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'in' || item.source.kind !== 'food') continue;
      const where = findName(words, item.content.name.text);
      if (where && where.how !== 'word') found.push(item);
    }
  }
  return found;
}

function sumGrams(items: readonly InItem[]): Rational | undefined {
  let total = rational(0);
  for (const item of items) {
    if (!item.weighed.grams) return undefined;
    total = add(total, item.weighed.grams);
  }
  return total;
}

function gramsOf(mention: MeasureMention, item: InItem, formula: Formula): Rational | undefined {
  const value = multiply(mention.high, sizeOf(mention.unit, formula.facts.cups));
  if (units[mention.unit].dimension === 'mass') return value;
  const spread = item.source.kind === 'food' ? volumeSpread(item.source.food, NO_WORDS) : undefined;
  return spread ? multiply(value, spread.high) : undefined;
}

/** More than there is contradicts; less does unless the sentence speaks of a part. */
function differs(said: Rational, total: Rational, part: boolean): boolean {
  const slack = multiply(total, SAME);
  const over = subtract(said, total);
  if (compare(over, slack) > 0) return true;
  return !part && compare(absolute(over), slack) > 0;
}

// ---------------------------------------------------------------- times

const NOT_THE_STEP =
  /\b(?:every|each|after|before|ahead|first|last|then|more|another|further|up to|within|later|again|at a time|halfway|between|apart|keeps?|earlier|old|until)\b/i;

function checkTime(
  step: StepItem,
  mention: TimeMention,
  text: string,
  count: number,
  place: Diagnostic['place'],
  report: Report,
): void {
  const { time } = step.content;
  if (!time || time.kind === 'overnight') return;
  const longest = time.kind === 'at-least' ? undefined : time.high.minutes;
  const words = NOT_THE_STEP.test(text);
  const tooLong = longest !== undefined && compare(mention.low, longest) > 0 && !words;
  const speaksOfStep =
    count === 1 && !words && /\bfor\s+(?:about\s+|another\s+)?$/i.test(text.slice(0, mention.span.start));
  const apart =
    compare(mention.high, time.low.minutes) < 0 || (longest !== undefined && compare(mention.low, longest) > 0);
  if (!tooLong && !(speaksOfStep && apart)) return;
  const written = step.ref.line.text.slice(time.span.start, time.span.end);
  report(diagnose('T09', place, { figure: mention.text, written }));
}

// ---------------------------------------------------------------- temperatures

const DIAL = rational(8);

function checkTemperature(
  step: StepItem,
  mention: TemperatureMention,
  place: Diagnostic['place'],
  report: Report,
): void {
  const stated = temperaturesOf(step);
  if (stated.length === 0) {
    if (step.content.lane === 'oven')
      report(diagnose('T10', place, { figure: mention.text, written: 'no temperature' }));
    return;
  }
  const inCelsius = (value: Rational, scale: 'C' | 'F'): Rational => temperaturePoint(value, scale).celsius;
  const low = subtract(inCelsius(mention.low, mention.scale), DIAL);
  const high = add(inCelsius(mention.high, mention.scale), DIAL);
  const near = stated.some(
    (one) => compare(inCelsius(one.low, one.scale), high) <= 0 && compare(low, inCelsius(one.high, one.scale)) <= 0,
  );
  if (near) return;
  const written = stated.map((one) => step.ref.line.text.slice(one.span.start, one.span.end)).join(', ');
  report(diagnose('T10', place, { figure: mention.text, written }));
}

function temperaturesOf(step: StepItem): Temperature[] {
  return step.content.clauses.flatMap((clause) => {
    if (clause.kind === 'at')
      return [
        clause.temperature,
        ...(clause.equal ? [clause.equal] : []),
        ...(clause.change ? [clause.change.to] : []),
      ];
    if (clause.kind === 'until') return clause.temperature ? [clause.temperature] : [];
    return [];
  });
}
