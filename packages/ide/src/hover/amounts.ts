import { contains, type Span } from '@quern/text';
import {
  divide,
  HUNDRED,
  interval,
  multiply,
  PLAIN,
  printDecimal,
  printInterval,
  printScoops,
  rational,
  scoop,
  units,
  unitWord,
  type CupSystem,
  type Rational,
  type UnitId,
} from '@quern/quantity';
import { baseValue, pieceSpread, type InItem, type LedgerFood, type Spread } from '@quern/compiler';
import type { Amount, Count, InLine, Line, Measure, Pack } from '@quern/syntax';
import { gramsText, percentOf } from '../figures.js';
import type { ItemPlace } from '../ledger-index.js';
import { densityOfLine, foodOf, measureIn } from '../measures.js';
import type { Snapshot } from '../snapshot.js';
import { sourceList } from './sources.js';
import type { Hover } from './hover.js';

/** An amount or the other side of an `=`: in both systems, with the weight and the source it is reckoned by. */
export function hoverAmount(snapshot: Snapshot, line: Line, at: number): Hover | undefined {
  const { content } = line.parsed;
  if (content.kind !== 'in' && content.kind !== 'or' && content.kind !== 'out' && content.kind !== 'check')
    return undefined;
  const place = snapshot.itemAt(line.number);
  const sides = content.kind === 'check' ? [] : content.equals.map((side) => side.amount);
  const side = [content.amount, ...sides].find(({ span }) => contains(span, at));
  if (side === undefined) return undefined;
  const item = place?.alternative ?? (place?.item.kind === 'in' ? place.item : undefined);
  const contents = [
    ...(content.kind === 'in' || content.kind === 'or' ? inAmount(snapshot, side, content, item, place) : plain(side)),
    ...moved(place, content.kind),
  ];
  return contents.length === 0 ? undefined : { span: spanOf(side), contents: contents.join('\n\n') };
}

const spanOf = (amount: { readonly span: Span }): Span => amount.span;

/** What the line moves, where the amount does not say it in grams. */
function moved(place: ItemPlace | undefined, kind: string): string[] {
  const after = place?.entry?.totalAfter;
  const lines: string[] = [];
  if (kind === 'out' && place?.item.kind === 'out' && place.item.grams)
    lines.push(`Takes out **${gramsText(place.item.grams)}**.`);
  if (kind === 'check' && place?.item.kind === 'check' && place.item.found) {
    const { amount } = place.item.content;
    const found = amount.kind === 'percent' ? `${printDecimal(place.item.found, 2)} %` : gramsText(place.item.found);
    lines.push(`The ledger has **${found}**${place.item.holds ? '' : ': this check fails'}.`);
  }
  if (after && kind !== 'check') lines.push(`The pot then holds ${gramsText(after)}.`);
  return lines;
}

function plain(amount: Amount | Measure | Count): string[] {
  return amount.kind === 'measure' ? [bothSystems(amount, 'us')] : [];
}

function inAmount(
  snapshot: Snapshot,
  amount: Amount | Measure | Count,
  content: InLine,
  item: InItem | undefined,
  place: ItemPlace | undefined,
): string[] {
  const cups = place?.formula.facts.cups ?? 'us';
  const food = item && foodOf(item);
  switch (amount.kind) {
    case 'measure':
    case 'pack':
      return measured(snapshot, amount, content, item, food, cups);
    case 'count':
      return [...counted(snapshot, '', content, food), ...weighs(item)];
    case 'percent':
      return reckoned(item, place);
    case 'share':
    case 'portion':
      return drawn(item);
    case 'open':
      return item?.weighed.grams
        ? [`Taken as ${gramsText(item.weighed.grams)}.`]
        : ['Counted as nothing: add `= about … g`.'];
  }
}

function weighs(item: InItem | undefined): string[] {
  return item?.weighed.grams
    ? [`Weighs **${gramsText(item.weighed.grams)}** (${BASIS[item.weighed.basis]}).`]
    : ['No weight is known.'];
}

const BASIS: Readonly<Record<InItem['weighed']['basis'], string>> = {
  stated: 'as the line states',
  table: 'by the food table',
  taught: 'as another line of the file states',
  reckoned: 'reckoned',
  estimate: 'the line’s estimate',
  unknown: 'unknown',
};

function reckoned(item: InItem | undefined, place: ItemPlace | undefined): string[] {
  const lines: string[] = [];
  if (item?.on) {
    const base = item.on.grams ? ` (${gramsText(item.on.grams)})` : ', whose weight is not known';
    lines.push(`Reckoned on ${item.on.name}${base}.`);
  }
  if (item?.weighed.grams) {
    lines.push(`Comes to **${gramsText(item.weighed.grams)}**.`);
    const flour = place?.formula.flour;
    if (flour && item.on?.name !== 'flour') lines.push(`${percentOf(item.weighed.grams, flour.grams)} on flour.`);
  }
  return lines;
}

function drawn(item: InItem | undefined): string[] {
  if (item?.share === undefined) return [];
  const grams = item.weighed.grams ? ` = **${gramsText(item.weighed.grams)}**` : '';
  return [`${printDecimal(multiply(item.share, HUNDRED), 1)} % of it${grams}.`];
}

function measured(
  snapshot: Snapshot,
  amount: Measure | Pack,
  content: InLine,
  item: InItem | undefined,
  food: LedgerFood | undefined,
  cups: CupSystem,
): string[] {
  const measure = amount.kind === 'pack' ? amount.each : amount;
  const lines = [amount.kind === 'pack' ? `Each: ${bothSystems(measure, cups)}` : bothSystems(measure, cups)];
  const { dimension } = units[measure.unit.id];
  if (dimension === 'count') return [...counted(snapshot, measure.unit.id, content, food), ...weighs(item)];
  const density = densityOfLine(food, content);
  if (density === undefined) {
    lines.push(`No published weight of a cup of ${content.name.text} is known.`);
    return lines;
  }
  const value = baseValue(measure, cups, 'middle');
  if (dimension === 'volume') lines.push(`Weighs **${gramsText(multiply(value, density.usual))}** by the food table.`);
  else if (dimension === 'mass') lines.push(`Fills **${scooped(divide(value, density.usual), cups)}**.`);
  lines.push(`${cupWeight(density, cups)}${sourceList(snapshot, density.sources)}`);
  return lines;
}

/** Every unit of both systems that a cook would use for it. */
function bothSystems(measure: Measure, cups: CupSystem): string {
  const { dimension } = units[measure.unit.id];
  const others: readonly UnitId[] =
    dimension === 'mass' ? ['g', 'oz'] : dimension === 'volume' ? ['ml', 'us-fl-oz'] : [];
  const told = others
    .filter((unit) => unit !== measure.unit.id)
    .flatMap((unit) => {
      const range = measureIn(measure, unit, cups);
      return range
        ? [`${printInterval(range, (value) => printDecimal(value, placesFor(value)))} ${units[unit].many}`]
        : [];
    });
  if (dimension === 'volume' && !['cup', 'tbsp', 'tsp'].includes(measure.unit.id))
    told.push(scooped(baseValue(measure, cups, 'middle'), cups));
  const written = `${printInterval(interval(measure.range.low, measure.range.high), (value) => printDecimal(value, 2))} ${unitWord(measure.unit.id, measure.range.high)}`;
  return told.length === 0 ? written : `${written} = ${told.join(' = ')}`;
}

const placesFor = (value: Rational): number => (value.n < value.d * 10n ? 2 : value.n < value.d * 100n ? 1 : 0);

const scooped = (millilitres: Rational, cups: CupSystem): string => printScoops(scoop(millilitres, { cups }), PLAIN);

/** The published weight of a cup and its spread. */
export function cupWeight(density: Spread, cups: CupSystem): string {
  const cup = cups === 'us' ? rational(473176473n, 2_000_000n) : rational(250);
  const grams = [density.low, density.usual, density.high].map((value) => gramsText(multiply(value, cup)));
  const [low, usual, high] = grams;
  const spread = low === high ? usual : `${usual} (published from ${low} to ${high})`;
  return `A cup weighs ${spread}`;
}

function counted(snapshot: Snapshot, piece: string, content: InLine, food: LedgerFood | undefined): string[] {
  const words = { name: content.name.text, note: content.note?.text ?? '' };
  const spread = food && pieceSpread(food, piece, words);
  if (!spread) return [];
  const range =
    spread.low === spread.high ? '' : ` (published from ${gramsText(spread.low)} to ${gramsText(spread.high)})`;
  return [`Each weighs ${gramsText(spread.usual)}${range}${sourceList(snapshot, spread.sources)}`];
}
