import { diagnose, nearest, type Diagnostic, type Span } from '@quern/text';
import {
  compare,
  isWhole,
  rational,
  temperaturePoint,
  toExactText,
  unitSpellings,
  type Rational,
} from '@quern/quantity';
import type { Temperature, Time } from '@quern/syntax';
import type { Formula, InItem, Keeping, LineRef, OutItem, StepItem } from '../model.js';
import { normaliseName, quoted } from '../names.js';
import { linePlace, placeOf } from '../places.js';
import { pieceSpread } from '../weighing.js';

type Report = (diagnostic: Diagnostic) => void;

/*
 * Likely slips: figures and words that can be read, but that hardly anybody means. The bounds are wide and are common
 * practice, no source; each is a warning, since a writer may mean it.
 */

export function checkPlausible(formula: Formula, report: Report): void {
  checkCounts(formula, report);
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind === 'in') {
        checkBareCount(item, report);
        checkNothing(item, report);
      }
      if (item.kind === 'out') checkLostName(item, formula, report);
      if (item.kind === 'step') checkStep(item, report);
    }
    for (const keeping of make.keeps) checkKeeping(keeping, report);
  }
}

const SHORTEST_KEEPING = rational(5);

function checkKeeping({ ref, content }: Keeping, report: Report): void {
  if (content.at) checkRange(content.at, 'keeping', KEEPING, ref, report);
  if (compare(content.time.high.minutes, SHORTEST_KEEPING) >= 0) return;
  report(
    diagnose('T30', placeOf(ref, content.time.span), {
      written: textOf(ref, content.time.span),
      lane: 'keeping',
      hint: 'check the unit of the time',
    }),
  );
}

/** M15, Q14: what `gives` and `serves` count. */
function checkCounts(formula: Formula, report: Report): void {
  const { gives, serves } = formula.facts;
  const thing = gives?.content.thing?.text;
  for (const fact of [gives, serves]) {
    const word = fact?.content.thing?.text;
    // A figure inside the thing counted is half of the count, or of a weight, that came apart.
    if (fact && word && /\d/.test(word)) report(diagnose('Q14', linePlace(fact.ref), { word, count: '' }));
  }
  if (gives?.content.count && thing && !gives.content.each) {
    const { count } = gives.content;
    const likeUnit = thing.length <= 3 && nearest(thing.toLowerCase(), unitSpellings.keys(), 1).length > 0;
    if (!isWhole(count.low) || likeUnit)
      report(diagnose('Q14', linePlace(gives.ref), { word: thing, count: toExactText(count.low) }));
  }
  const served = serves?.content.thing?.text;
  if (!thing || !served || !serves || normaliseName(thing) !== normaliseName(served)) return;
  if (!formula.pieces || !formula.servings || compare(formula.pieces, formula.servings) === 0) return;
  report(
    diagnose('M15', linePlace(serves.ref), {
      gives: toExactText(formula.pieces),
      serves: toExactText(formula.servings),
      thing: served,
    }),
  );
}

/** Q17: an amount of nothing. */
function checkNothing(item: InItem, report: Report): void {
  const { amount, name } = item.content;
  const high = amount.kind === 'open' ? undefined : amount.kind === 'share' ? amount.high : amount.range.high;
  if (high?.n === 0n) report(diagnose('Q17', placeOf(item.ref, amount.span), { what: name.text }));
}

/** Q16: an amount that lost its unit, so that only a cup measure is left to go by. */
function checkBareCount(item: InItem, report: Report): void {
  const { amount, equals, name } = item.content;
  if (amount.kind !== 'count' || item.source.kind !== 'food' || item.weighed.basis !== 'table') return;
  if (equals.length === 0 || pieceSpread(item.source.food, '', { name: name.text, note: '' })) return;
  report(diagnose('Q16', placeOf(item.ref, amount.span), { count: toExactText(amount.range.low), name: name.text }));
}

/** N17: `lose 40 g as watre`. What is thrown away or kept may be called anything but a near miss of a food of the pot. */
function checkLostName(item: OutItem, formula: Formula, report: Report): void {
  const { as, verb, of } = item.content;
  if (!as || of || item.manner !== 'evenly' || verb === 'save') return;
  const inRecipe = new Set(['water']);
  for (const make of formula.makes)
    for (const other of make.items) if (other.kind === 'in') inRecipe.add(normaliseName(other.content.name.text));
  const near = nearest(normaliseName(as.text), inRecipe, 1)[0];
  if (!near && verb === 'bin') return;
  report(
    diagnose('N17', placeOf(item.ref, as.span), {
      name: as.text,
      near: near ? `did you mean ${quoted(near)}? If not, ` : '',
    }),
  );
}

// ---------------------------------------------------------------- times and temperatures

interface Bounds {
  readonly low: Rational;
  readonly high: Rational;
}
const bounds = (low: number, high: number): Bounds => ({ low: rational(low), high: rational(high) });

// Degrees Celsius.
const KEEPING = bounds(-40, 35);
const OVEN = bounds(30, 350);
const WAIT = bounds(-40, 70);
const UNTIL = bounds(-20, 200);
/** A wait whose temperature may run over more than this is hardly meant. */
const WIDEST_WAIT = rational(20);
const LONGEST_HANDS = rational(240);
const LONGEST_OVEN = rational(24 * 60);

function checkStep(item: StepItem, report: Report): void {
  const { lane, time, clauses } = item.content;
  if (time) checkTime(time, lane, item.ref, report);
  for (const every of item.every) {
    const { period, duration } = every.content;
    checkTime(period, 'care', every.ref, report);
    if (period.low.parts.length > 1 && !duration) {
      report(
        diagnose('T30', placeOf(every.ref, period.span), {
          written: textOf(every.ref, period.span),
          lane: 'care',
          hint: 'put a comma between how often and how long',
        }),
      );
    }
  }
  for (const clause of clauses) {
    if (clause.kind === 'at') {
      const usual = lane === 'wait' ? WAIT : lane === 'oven' ? OVEN : UNTIL;
      checkRange(
        clause.temperature,
        lane === 'oven' ? 'an oven' : `this ${lane} line`,
        usual,
        item.ref,
        report,
        lane === 'wait' ? WIDEST_WAIT : undefined,
      );
    }
    if (clause.kind === 'at' && clause.change)
      checkRange(clause.change.to, 'an oven', lane === 'oven' ? OVEN : UNTIL, item.ref, report);
    if (clause.kind === 'until' && clause.temperature) checkRange(clause.temperature, 'food', UNTIL, item.ref, report);
  }
}

const textOf = (ref: LineRef, span: Span): string => ref.line.text.slice(span.start, span.end);

function checkTime(time: Time, lane: string, ref: LineRef, report: Report): void {
  const written = textOf(ref, time.span);
  const say = (hint: string): void =>
    report(
      diagnose('T30', placeOf(ref, time.span), { written, lane: lane === 'wait' ? 'a wait' : `${lane} work`, hint }),
    );
  if ([time.low, time.high].some(({ parts }) => parts.length > 1 && parts[0]?.unit === parts[1]?.unit))
    say('put a comma, a dash or the larger unit between the two times');
  else if (time.high.minutes.n === 0n || (time.kind === 'range' && time.low.minutes.n === 0n && lane !== 'wait'))
    say('write how long it takes');
  else if (lane === 'hands' && compare(time.high.minutes, LONGEST_HANDS) > 0)
    say('split the work, or make the part in which nobody is busy a wait');
  else if ((lane === 'oven' || lane === 'hob') && compare(time.high.minutes, LONGEST_OVEN) > 0)
    say('check the figure and its unit');
}

function checkRange(
  temperature: Temperature,
  what: string,
  usual: Bounds,
  ref: LineRef,
  report: Report,
  widest?: Rational,
): void {
  const low = temperaturePoint(temperature.low, temperature.scale).celsius;
  const high = temperaturePoint(temperature.high, temperature.scale).celsius;
  const wide = widest !== undefined && compare(high, { n: low.n + widest.n * low.d, d: low.d }) > 0;
  if (!wide && compare(low, usual.low) >= 0 && compare(high, usual.high) <= 0) return;
  const written = ref.line.text.slice(temperature.span.start, temperature.span.end);
  report(
    diagnose('T31', placeOf(ref, temperature.span), {
      written,
      what,
      range: `${toExactText(usual.low)} to ${toExactText(usual.high)} C`,
    }),
  );
}
