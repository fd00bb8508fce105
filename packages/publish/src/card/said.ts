import type {
  CardAmount,
  CardClock,
  CardData,
  CardIngredient,
  CardKeeping,
  CardNutrientRow,
  CardRun,
  CardTemperature,
} from '@quern/views';
import { duration, saidCount } from './setting.js';
import { typesetFigure } from './typeset.js';
import type { CardWords } from './words.js';

/*
 * The card in lines of text: what Markdown and plain text share. Every function gives text as it is, not yet escaped.
 */

export type Measures = 'both' | 'metric' | 'us';

export function saidAmount({ words, ...amount }: CardAmount, measures: Measures): string {
  const metric = typesetFigure(amount.metric);
  const us = typesetFigure(amount.us);
  const one = measures === 'us' ? us : metric;
  if (measures !== 'both' || metric === us) return words === undefined ? one : `${words} (${one})`;
  return words === undefined ? `${metric} (${us})` : `${words} (${metric}; ${us})`;
}

/** One measure of an amount, for a column. */
export function saidMeasure(amount: CardAmount, measure: 'metric' | 'us'): string {
  const text = typesetFigure(amount[measure]);
  return amount.words === undefined ? text : `${amount.words} (${text})`;
}

function saidTemperature(value: CardTemperature, measures: Measures): string {
  const celsius = typesetFigure(value.celsius);
  const fahrenheit = typesetFigure(value.fahrenheit);
  if (measures === 'metric') return celsius;
  return measures === 'us' ? fahrenheit : `${celsius} / ${fahrenheit}`;
}

export function saidSentence(runs: readonly CardRun[], measures: Measures): string {
  return runs
    .map((run) => {
      if (run.kind === 'text') return run.text;
      return run.kind === 'amount' ? saidAmount(run.amount, measures) : saidTemperature(run.temperature, measures);
    })
    .join('');
}

/** What follows the amount on an ingredient's line. */
export function saidIngredient(item: CardIngredient, words: CardWords): string {
  const note = item.note === undefined ? '' : `, ${item.note}`;
  const percent = item.percent === undefined ? '' : ` (${item.percent})`;
  return `${item.name}${note}${percent}${item.optional ? ` (${words.optional})` : ''}`;
}

/** `Wait 10–14 h · 24 °C / 75 °F · until 28 °C / 82 °F`. */
export function saidClock(clock: CardClock, measures: Measures, words: CardWords): string {
  const parts: string[] = [];
  if (clock.time) parts.push(typesetFigure(clock.time.text));
  if (clock.at) {
    const { temperature, change, fan } = clock.at;
    const turned = change ? ` ${words[change.direction]} ${saidTemperature(change.to, measures)}` : '';
    parts.push(`${saidTemperature(temperature, measures)}${turned}${fan ? ` ${words.fan}` : ''}`);
  }
  if (clock.until) parts.push(`${words.until} ${saidTemperature(clock.until, measures)}`);
  if (clock.untilAcidity !== undefined) parts.push(`${words.until} ${words.acidity} ${clock.untilAcidity}`);
  if (clock.using.length > 0) parts.push(`${words.using} ${clock.using.join(', ')}`);
  return [words.lanes[clock.lane], parts.join(' · ')].filter((part) => part !== '').join(' ');
}

export function saidKeeping(keep: CardKeeping, measures: Measures): string {
  const at = keep.at ? `, ${saidTemperature(keep.at, measures)}` : '';
  return `${typesetFigure(keep.time.text)}${at}${keep.note === undefined ? '' : `, ${keep.note}`}`;
}

export interface SaidFact {
  readonly name: string;
  readonly value: string;
}

/** The facts under the title, in order. */
export function saidFacts(card: CardData, measures: Measures, words: CardWords): SaidFact[] {
  const { thing, count, each, total, serves, vessel } = card.yield;
  const weight = each
    ? ` ${words.ofEach} ${saidAmount(each, measures)}`
    : total
      ? `, ${saidAmount(total, measures)}`
      : '';
  const facts: (SaidFact | undefined)[] = [
    thing === 'batches' ? undefined : { name: words.gives, value: `${saidCount(count)} ${thing}${weight}` },
    serves && { name: words.serves, value: saidAmount(serves, measures) },
    vessel && { name: words.vessel, value: saidAmount(vessel, measures) },
    card.times.handsOn && { name: words.handsOn, value: duration(card.times.handsOn) },
    card.times.total && { name: words.total, value: duration(card.times.total) },
    card.times.begin === undefined ? undefined : { name: words.begin, value: card.times.begin },
  ];
  return facts.filter((fact) => fact !== undefined);
}

/** Contains, may contain, cannot say: those that have something to say. */
export function saidAllergens(card: CardData, words: CardWords): SaidFact[] {
  const found = card.allergens;
  if (!found) return [];
  const facts = [
    { name: words.contains, value: found.contains.join('; ') },
    { name: words.mayContain, value: found.mayContain.map(({ name, because }) => `${name} (${because})`).join('; ') },
    { name: words.cannotSay, value: found.unknown.join('; ') },
  ];
  return facts.filter(({ value }) => value !== '');
}

/** The rows of the nutrition table: a nutrient told in two units (energy) is one row. */
export function saidNutrients(
  rows: readonly CardNutrientRow[],
  words: CardWords,
): (SaidFact & { readonly part: boolean })[] {
  const told: (SaidFact & { part: boolean })[] = [];
  for (const row of rows) {
    const value = saidNutrient(row, words);
    const last = told.at(-1);
    if (last?.name === row.name) told[told.length - 1] = { ...last, value: `${last.value} / ${value}` };
    else told.push({ name: row.name, value, part: row.level > 0 });
  }
  return told;
}

/** A figure of the nutrition table, with its unit. */
function saidNutrient({ text, between, atLeast }: CardNutrientRow, words: CardWords): string {
  const [low, high] = between ?? [text, text];
  // 'Less than' of a figure that may be higher says nothing.
  if (low === undefined || high === undefined || (atLeast && !/^\d/.test(low))) return words.notKnown;
  if (atLeast) return `${words.atLeast} ${typesetFigure(low)}`;
  return low === high ? typesetFigure(low) : `${typesetFigure(low)} – ${typesetFigure(high)}`;
}

/** Source, diets, keywords, revision and date, in one line. */
export function saidOrigin(card: CardData, words: CardWords): string {
  return [
    ...card.source.map((source) => `${words.source} ${source}`),
    ...card.diets.map((diet) => words.diets[diet]),
    card.keywords.join(', '),
    card.revision === undefined ? '' : `${words.revision} ${card.revision}`,
    card.date ?? '',
  ]
    .filter((part) => part !== '')
    .join(' · ');
}

/** What is wrong with the recipe and stands on its card. */
export function saidErrors(card: CardData, words: CardWords): string[] {
  return card.problems
    .filter(({ severity }) => severity === 'error')
    .map(({ line, text, code, help }) => `${words.line} ${line}: ${text} (${code}): ${help}`);
}
