import { compare, exact, type Rational } from '@quern/quantity';
import type { InItem } from '@quern/compiler';
import type { InLine, Line } from '@quern/syntax';
import { gramsText, percentOf } from './figures.js';
import type { ItemPlace } from './ledger-index.js';
import { otherMeasure } from './measures.js';
import type { Snapshot } from './snapshot.js';

export interface InlayHint {
  readonly offset: number;
  readonly label: string;
  readonly kind: 'measure' | 'percent' | 'pot';
  readonly tooltip: string;
  /** Written into the file when the hint is accepted. */
  readonly insert?: string;
}

/** Which hints are shown. */
export interface InlayOptions {
  /** Grams beside cups, cups beside grams, and the grams of a percent or a share. */
  readonly otherMeasure: boolean;
  readonly bakersPercent: boolean;
  /** The weight of the pot after each line. */
  readonly potWeight: boolean;
}

export const ALL_HINTS: InlayOptions = { otherMeasure: true, bakersPercent: true, potWeight: true };

/** The figures that lines do not write, beside them. Lines are counted from zero, `to` excluded. */
export function inlayHints(snapshot: Snapshot, from: number, to: number, options: InlayOptions): readonly InlayHint[] {
  const hints: InlayHint[] = [];
  for (let number = Math.max(0, from); number < Math.min(to, snapshot.document.lines.length); number++) {
    const line = snapshot.line(number);
    const kind = line?.parsed.content.kind;
    if (line === undefined || (kind !== 'in' && kind !== 'or' && kind !== 'out')) continue;
    const place = snapshot.itemAt(number);
    if (place !== undefined) hints.push(...hintsOf(line, place, options));
  }
  return hints;
}

function hintsOf(line: Line, place: ItemPlace, options: InlayOptions): InlayHint[] {
  const { content } = line.parsed;
  const item = place.alternative ?? place.item;
  const hints: InlayHint[] = [];
  if (item.kind === 'in' && (content.kind === 'in' || content.kind === 'or')) {
    const offset = line.start + endOfMeasures(content);
    if (options.otherMeasure) hints.push(...measureHints(item, place, offset));
    if (options.bakersPercent) hints.push(...percentHints(item, place, offset));
  }
  if (
    item.kind === 'out' &&
    content.kind === 'out' &&
    options.otherMeasure &&
    item.grams &&
    content.amount.kind !== 'measure'
  ) {
    const end = (content.as ?? content.of ?? content.amount).span.end;
    hints.push({
      offset: line.start + end,
      label: ` ${gramsText(item.grams)}`,
      kind: 'measure',
      tooltip: 'What leaves the pot',
    });
  }
  const after = place.alternative ? undefined : place.entry?.totalAfter;
  if (options.potWeight && after) {
    const offset = line.start + line.text.trimEnd().length;
    hints.push({
      offset,
      label: `  pot ${gramsText(after)}`,
      kind: 'pot',
      tooltip: 'What stands in the pot after this line',
    });
  }
  return hints;
}

/** Where the measures of an in line end: after its name and every `=`. */
function endOfMeasures(content: InLine): number {
  return Math.max(
    content.name.span.end,
    content.on?.span.end ?? 0,
    content.as?.span.end ?? 0,
    content.equals.at(-1)?.span.end ?? 0,
  );
}

function measureHints(item: InItem, { formula }: ItemPlace, offset: number): InlayHint[] {
  const { amount } = item.content;
  if (amount.kind === 'percent' || amount.kind === 'share' || amount.kind === 'portion') {
    if (!item.weighed.grams) return [];
    return [{ offset, label: ` ${gramsText(item.weighed.grams)}`, kind: 'measure', tooltip: 'Reckoned by the ledger' }];
  }
  const other = otherMeasure(item, formula);
  if (other === undefined) return [];
  return [
    {
      offset,
      label: ` = ${other}`,
      kind: 'measure',
      tooltip: 'By the food table; accept to write it',
      insert: ` = ${other}`,
    },
  ];
}

const SMALL = exact('0.1');

function percentHints(item: InItem, { formula, make }: ItemPlace, offset: number): InlayHint[] {
  const { flour } = formula;
  const { grams } = item.weighed;
  if (!flour || !grams || item.source.kind !== 'food' || item.optional) return [];
  // A percent that is written already needs no second one.
  if (item.content.amount.kind === 'percent' && item.on?.name === 'flour') return [];
  const key = item.source.food.key;
  const inFormula = flour.formula.some((entry) => entry.food.key === key);
  if (!inFormula || make.index > flour.makeIndex) return [];
  return [
    {
      offset,
      label: ` ${percentOf(grams, flour.grams, finer(grams, flour.grams) ? 2 : 1)}`,
      kind: 'percent',
      tooltip: 'Baker’s percentage: on the flour of the recipe',
    },
  ];
}

const finer = (grams: Rational, flour: Rational): boolean =>
  compare(grams, { n: flour.n * SMALL.n, d: flour.d * SMALL.d * 10n }) < 0;
