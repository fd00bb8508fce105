import {
  add,
  compare,
  divide,
  equal,
  floor,
  HUNDRED,
  isWhole,
  multiply,
  negate,
  ONE,
  PLAIN,
  printCount,
  printDecimal,
  printPercent,
  rational,
  type Rational,
} from '@quern/quantity';
import type { InItem, Make, OutItem, StepItem } from '@quern/compiler';
import type { Amount, VesselFact } from '@quern/syntax';
import { bothNumbers } from '../common/plural.js';
import { proseRuns } from '../common/prose-runs.js';
import { shortWeight } from '../common/short-weight.js';
import { factorOfCount, type Setting } from './setting.js';
import type { SheetWarning } from './sheet-data.js';
import { tinOf, tinText } from './vessel.js';

/*
 * What does not follow when a recipe is scaled. Weights follow; times in the oven and on the hob, amounts in words,
 * whole things and the room in tins do not, and a sheet that kept silent about them would be trusted too far.
 */

export function sheetWarnings(setting: Setting): readonly SheetWarning[] {
  const scaled = !equal(setting.factor, ONE) || setting.scale.tin !== undefined;
  return [
    ...unknownWeights(setting),
    ...(scaled
      ? [
          ...depth(setting),
          ...bakeTimes(setting),
          ...boilTimes(setting),
          ...openAmounts(setting),
          ...sentenceFigures(setting),
          ...partPieces(setting),
          ...vessels(setting),
        ]
      : []),
    ...mixer(setting),
  ];
}

const itemsOf = <K extends 'in' | 'out' | 'step'>(
  setting: Setting,
  kind: K,
): { make: Make; item: Extract<InItem | OutItem | StepItem, { kind: K }> }[] =>
  setting.formula.makes.flatMap((make) =>
    make.items.flatMap((item) =>
      item.kind === kind ? [{ make, item: item as Extract<InItem | OutItem | StepItem, { kind: K }> }] : [],
    ),
  );

const lineOf = (item: { readonly ref: { readonly line: { readonly number: number } } }): number =>
  item.ref.line.number + 1;

function lineList(lines: readonly number[]): string {
  const last = lines.at(-1);
  if (lines.length === 1) return `line ${last}`;
  return `lines ${lines.slice(0, -1).join(', ')} and ${last}`;
}

const percentText = (share: Rational): string => printPercent(multiply(share, HUNDRED), 0);

function unknownWeights(setting: Setting): SheetWarning[] {
  return itemsOf(setting, 'in').flatMap(({ item }) => {
    if (item.weighed.grams || item.optional || item.content.amount.kind === 'open') return [];
    const line = lineOf(item);
    const text = `The weight of ${item.content.name.text} (line ${line}) is not known, so sums with it are left open.`;
    return [{ code: 'unknown-weight' as const, text, lines: [line] }];
  });
}

/** How deep the filling stands in other tins. */
function depth({ scale, formula }: Setting): SheetWarning[] {
  if (!scale.tin) return [];
  const own = formula.facts.vessel?.content;
  const before = own && tinOf(own, formula.facts.cups)?.depth;
  const after = scale.tin.tin.depth;
  const lines = formula.facts.vessel ? [lineOf(formula.facts.vessel)] : [];
  if (!own || !before || !after || !scale.tin.depth) {
    const text =
      'The depth of one of the tins is not known, so nothing can be said of the baking time: judge by the cue in the sentence.';
    return [{ code: 'depth', text, lines }];
  }
  const depths = `these tins are ${printDecimal(after, 1)} cm deep, those of the recipe ${printDecimal(before, 1)} cm`;
  const ratio = percentText(scale.tin.depth);
  const text = `Scaled by volume: ${depths}. The filling stands ${ratio} as deep as written${depthAdvice(scale.tin.depth)}.`;
  return [{ code: 'depth', text, lines }];
}

function depthAdvice(ratio: Rational): string {
  if (compare(ratio, rational(105, 100)) > 0) return ' and takes longer to bake through';
  if (compare(ratio, rational(95, 100)) < 0) return ' and is done sooner: look early';
  return ', so the baking time is near that of the recipe';
}

/** Times in the oven belong to the size of one piece and to what stands in the oven. */
function bakeTimes(setting: Setting): SheetWarning[] {
  const { formula, scale, factor } = setting;
  const lines = itemsOf(setting, 'step').flatMap(({ item }) => (item.content.lane === 'oven' ? [lineOf(item)] : []));
  if (lines.length === 0 || scale.tin) return [];
  const pieces = formula.pieces && multiply(formula.pieces, factor);
  if (pieces && isWhole(pieces)) {
    const more = compare(factor, ONE) > 0;
    if (!more) return [];
    const text = `The times in the oven (${lineList(lines)}) are for one piece of the same size. With more in the oven at once it comes back to heat more slowly: judge by the cue, or bake in turns.`;
    return [{ code: 'bake-time', text, lines }];
  }
  const text = `The times in the oven (${lineList(lines)}) do not scale: they follow the size and depth of what is baked, not the sum of the weights. Keep the depth of the recipe, or judge by the cue in the sentence.`;
  return [{ code: 'bake-time', text, lines }];
}

/** Boiling down takes as long as the water takes to leave, which grows with the batch. */
function boilTimes(setting: Setting): SheetWarning[] {
  const lines = setting.formula.makes.flatMap((make) =>
    make.items.flatMap((item, index) => {
      const after = make.items.slice(index + 1);
      const next = after.findIndex((later) => later.kind === 'step');
      const until = next < 0 ? after : after.slice(0, next);
      const loses = until.some((later) => later.kind === 'out' && later.content.verb === 'lose');
      return item.kind === 'step' && item.content.lane === 'hob' && loses ? [lineOf(item)] : [];
    }),
  );
  if (lines.length === 0) return [];
  const text = `Boiling down (${lineList(lines)}) takes longer with more in the pan and less time with less, unless the pan is wider in step: weigh what is left rather than watch the clock.`;
  return [{ code: 'boil-time', text, lines }];
}

/** Weights and volumes in sentences stand as written; right where each is of one piece and the pieces keep their size. */
function sentenceFigures(setting: Setting): SheetWarning[] {
  const { formula, factor, scale } = setting;
  const pieces = formula.pieces && multiply(formula.pieces, factor);
  const keepsSize = !scale.tin && pieces !== undefined && isWhole(pieces);
  const found: { text: string; line: number }[] = [];
  for (const { item, make } of itemsOf(setting, 'step')) {
    const runs = proseRuns(item.content.prose, formula, make);
    runs.forEach((run, index) => {
      if (run.kind !== 'measure') return;
      const after = runs[index + 1];
      const isOfOne = after?.kind === 'text' && /^\s*(?:each|apiece|per)\b/i.test(after.text);
      if (!isOfOne || !keepsSize) found.push({ text: run.text, line: lineOf(item) });
    });
  }
  if (found.length === 0) return [];
  const list = found.map(({ text, line }) => `${text} (line ${line})`).join(', ');
  const text = `Figures in sentences stand as written: ${list}. Square brackets in the file make them scale.`;
  return [{ code: 'sentence-figure', text, lines: found.map(({ line }) => line) }];
}

function openAmounts(setting: Setting): SheetWarning[] {
  return itemsOf(setting, 'in').flatMap(({ item }) => {
    const { amount, name } = item.content;
    if (amount.kind !== 'open') return [];
    const line = lineOf(item);
    const text = `“${amount.word} ${name.text}” (line ${line}) does not scale: ${item.weighed.grams ? 'the weight beside it is the scaled estimate; ' : ''}go by taste or by need.`;
    return [{ code: 'open-amount' as const, text, lines: [line] }];
  });
}

/** Things that are whole in the recipe and no longer are. */
function partPieces(setting: Setting): SheetWarning[] {
  const { formula } = setting;
  const broken: { text: string; line: number }[] = [];
  const look = (count: Rational, thing: string, line: number): void => {
    const scaled = multiply(count, factorOfCount({ low: count, high: count }, setting));
    if (isWhole(count) && !isWhole(scaled)) broken.push({ text: `${printCount(scaled, PLAIN)} ${thing}`.trim(), line });
  };
  for (const { item } of itemsOf(setting, 'in')) {
    const { amount, name } = item.content;
    const count = wholeCount(amount);
    if (count)
      look(
        count,
        amount.kind === 'pack' ? `${bothNumbers(amount.container).many} of ${name.text}` : bothNumbers(name.text).many,
        lineOf(item),
      );
  }
  const { gives } = formula.facts;
  if (gives?.content.count?.single) look(gives.content.count.low, gives.content.thing?.text ?? 'pieces', lineOf(gives));
  for (const { item, make } of itemsOf(setting, 'step')) {
    for (const run of proseRuns(item.content.prose, formula, make)) {
      if (run.kind !== 'scaled' || run.amount?.kind !== 'count') continue;
      const count = wholeText(run.amount.count.low);
      if (count) look(count, `for the [${run.text}] of a sentence`, lineOf(item));
    }
  }
  if (broken.length === 0) return [];
  const list = broken.map(({ text, line }) => `${text} (line ${line})`).join(', ');
  const text = `Counts that no longer come out whole: ${list}. Weigh what can be weighed, or choose a size at which they do.`;
  return [{ code: 'part-of-a-piece', text, lines: broken.map(({ line }) => line) }];
}

const wholeText = (text: string): Rational | undefined => (/^\d+$/.test(text) ? rational(BigInt(text)) : undefined);

function wholeCount(amount: Amount): Rational | undefined {
  if (amount.kind !== 'count' && amount.kind !== 'pack') return undefined;
  return amount.range.single ? amount.range.low : undefined;
}

/** Whether the tins of the recipe can be had in that number, and whether each holds its share. */
function vessels(setting: Setting): SheetWarning[] {
  const { formula, factor, scale } = setting;
  const fact = formula.facts.vessel;
  if (!fact || scale.tin) return [];
  const count = multiply(fact.content.count, factor);
  if (isWhole(count)) return [];
  const tin = tinOf(fact.content, formula.facts.cups);
  const litres = tin && printDecimal(divide(multiply(count, tin.volume), rational(1000)), 2);
  const room = litres === undefined ? '' : `, ${litres} l in all`;
  const fewer = rational(count.n / count.d);
  const choices = [fewer, add(fewer, ONE)]
    .filter(({ n }) => n > 0n)
    .map((whole) => fillText(fact.content, whole, divide(count, whole), bakes(setting)));
  const text = `Written for ${tinText(fact.content, fact.content.count)}; at this size it takes ${printCount(count, PLAIN)} of them${room}. ${choices.join(' ')}`;
  return [{ code: fewer.n > 0n ? 'vessel-full' : 'vessel-count', text, lines: [lineOf(fact)] }];
}

const bakes = (setting: Setting): boolean => itemsOf(setting, 'step').some(({ item }) => item.content.lane === 'oven');

/** How full so many of them would be against what is written. */
function fillText(fact: VesselFact, count: Rational, full: Rational, isBaked: boolean): string {
  const tooFull = compare(full, ONE) > 0;
  const advice = tooFull ? ', more than there may be room for' : isBaked ? ', and is done sooner' : '';
  return `In ${tinText(fact, count)} it stands ${percentText(full)} as full as written${advice}.`;
}

/** Makes that are mixed in one go and are more than the mixer holds. */
function mixer(setting: Setting): SheetWarning[] {
  const { mixer: most, factor, formula } = setting;
  if (!most) return [];
  const using = formula.makes.filter((make) => make.items.some((item) => item.kind === 'step' && usesMixer(item)));
  const mixed = using.length > 0 ? using : formula.makes.filter((make) => make.index === formula.flour?.makeIndex);
  return mixed.flatMap((make) => {
    const grams = fullest(make);
    const scaled = grams && multiply(grams, factor);
    if (!scaled || compare(scaled, most) <= 0) return [];
    const batches = -floor(negate(divide(scaled, most)));
    const text = `${make.name} comes to ${shortWeight(scaled, { style: PLAIN })}, more than the mixer holds (${shortWeight(most, { style: PLAIN })}): mix it in ${batches} batches of ${shortWeight(divide(scaled, rational(batches)), { style: PLAIN })}.`;
    return [{ code: 'mixer-full' as const, text, lines: [lineOf(make)] }];
  });
}

const usesMixer = (item: StepItem): boolean =>
  item.content.clauses.some(
    (clause) => clause.kind === 'using' && clause.things.some(({ name }) => /\bmixer$/.test(name)),
  );

/** The most that stands in the pot at any line. */
function fullest(make: Make): Rational | undefined {
  let most: Rational | undefined = make.pot.grams;
  for (const { totalAfter } of make.pot.entries)
    if (totalAfter && (!most || compare(totalAfter, most) > 0)) most = totalAfter;
  return most;
}
