import type { Span, TextEdit } from '@quern/text';
import {
  compare,
  mapInterval,
  printDegrees,
  rational,
  shownDegrees,
  temperaturePoint,
  units,
  type CupSystem,
  type TemperatureScale,
} from '@quern/quantity';
import type { Formula, InItem } from '@quern/compiler';
import type { AtClause, Line, StepLine, Temperature, UntilClause } from '@quern/syntax';
import { itemsByLine } from '../ledger-index.js';
import { millilitresOf, states, writableGrams, writableVolume } from '../measures.js';
import type { Snapshot } from '../snapshot.js';
import type { Refactoring } from './refactor.js';

type Aim = 'grams' | 'cups';

/**
 * On a `recipe` line or in the head of the file: rewrites the measures of the whole file. In grams, each volume and each
 * ounce becomes its weight and Fahrenheit becomes Celsius; in cups, the other way round. A line that states both keeps
 * both, in the order asked for. What cannot be turned without guessing stays as it is.
 */
export function convertMeasures(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  const line = snapshot.lineAt(span.start);
  const { content } = line.parsed;
  const inHead = snapshot.blockAt(line.number) === undefined;
  if (!inHead && !(content.kind === 'block' && content.block === 'recipe')) return [];
  return (['grams', 'cups'] as const).flatMap((aim) => {
    const edits = convertFile(snapshot, aim);
    const title =
      aim === 'grams'
        ? 'Write the measures of the file in grams and Celsius'
        : 'Write the measures of the file in cups and Fahrenheit';
    return edits.length === 0 ? [] : [{ title, kind: 'rewrite' as const, edits: [{ file: snapshot.path, edits }] }];
  });
}

function convertFile(snapshot: Snapshot, aim: Aim): readonly TextEdit[] {
  const edits: TextEdit[] = [];
  for (const formula of snapshot.compiled.formulas.filter(({ variant }) => variant === undefined)) {
    for (const [number, { item, alternative }] of itemsByLine(formula)) {
      const line = snapshot.line(number);
      if (line === undefined) continue;
      const inItem = alternative ?? (item.kind === 'in' ? item : undefined);
      if (inItem !== undefined && inItem.ref.line.number === number)
        edits.push(...convertIn(line, inItem, formula, aim));
      if (item.kind === 'step' && item.ref.line.number === number) edits.push(...convertStep(line, item.content, aim));
    }
  }
  return edits.sort((a, b) => a.span.start - b.span.start);
}

function convertIn(line: Line, item: InItem, formula: Formula, aim: Aim): TextEdit[] {
  const { content } = item;
  const { amount, equals } = content;
  const [side] = equals;
  if (amount.kind !== 'measure' || amount.about) return [];
  const { dimension } = units[amount.unit.id];
  const wanted = aim === 'grams' ? 'mass' : 'volume';
  const at = (span: Span): Span => ({ start: line.start + span.start, end: line.start + span.end });
  if (side !== undefined) {
    // Both are stated: the one asked for comes first.
    const second = side.amount;
    if (
      equals.length > 1 ||
      side.each ||
      second.kind !== 'measure' ||
      dimension === wanted ||
      units[second.unit.id].dimension !== wanted
    )
      return [];
    return [
      { span: at(amount.span), text: line.text.slice(second.span.start, second.span.end) },
      { span: at(second.span), text: line.text.slice(amount.span.start, amount.span.end) },
    ];
  }
  const text = aim === 'grams' ? inGrams(item) : inCups(item, formula.facts.cups);
  return text === undefined ? [] : [{ span: at(amount.span), text }];
}

const AMERICAN: ReadonlySet<string> = new Set(['oz', 'lb']);

function inGrams(item: InItem): string | undefined {
  const { amount } = item.content;
  if (amount.kind !== 'measure' || !amount.range.single || item.weighed.grams === undefined) return undefined;
  const { dimension } = units[amount.unit.id];
  if (dimension === 'mass') return AMERICAN.has(amount.unit.id) ? writableGrams(item.weighed.grams) : undefined;
  return dimension === 'volume' && item.weighed.basis === 'table' ? writableGrams(item.weighed.grams) : undefined;
}

const SMALL = rational(5);

function inCups(item: InItem, cups: CupSystem): string | undefined {
  const { amount } = item.content;
  if (amount.kind !== 'measure' || !amount.range.single || states(item.content, 'volume')) return undefined;
  if (units[amount.unit.id].dimension !== 'mass') return undefined;
  const millilitres = millilitresOf(item, cups);
  // Under a teaspoon a weight is the better measure, and yeast or curing salt is dosed by it.
  if (millilitres === undefined || compare(millilitres, SMALL) < 0) return undefined;
  return writableVolume(millilitres, cups);
}

function convertStep(line: Line, content: StepLine, aim: Aim): TextEdit[] {
  const to: TemperatureScale = aim === 'grams' ? 'C' : 'F';
  const edits: TextEdit[] = [];
  for (const clause of content.clauses) {
    if (clause.kind === 'using' || (clause.kind === 'at' && clause.equal)) continue;
    const use = clause.kind === 'at' && content.lane === 'oven' ? 'oven' : 'food';
    for (const temperature of temperaturesOf(clause)) {
      if (temperature.scale === to) continue;
      const shown = mapInterval(temperature, (value) =>
        shownDegrees(temperaturePoint(value, temperature.scale), to, use),
      );
      const span = { start: line.start + temperature.span.start, end: line.start + temperature.span.end };
      edits.push({ span, text: printDegrees(shown, to) });
    }
  }
  return edits;
}

const temperaturesOf = (clause: AtClause | UntilClause): readonly Temperature[] =>
  clause.kind === 'at'
    ? [clause.temperature, ...(clause.change ? [clause.change.to] : [])]
    : clause.temperature
      ? [clause.temperature]
      : [];
