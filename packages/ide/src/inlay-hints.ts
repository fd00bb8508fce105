import { add, compare, HUNDRED, multiply, ZERO, type Rational } from '@quern/quantity';
import { normaliseName, type Formula, type InItem } from '@quern/compiler';
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

function percentHints(item: InItem, { formula }: ItemPlace, offset: number): InlayHint[] {
  const { flour } = formula;
  const grams = formulaGrams(formula).get(item.ref.line.number);
  if (!flour || !grams || item.source.kind !== 'food' || item.optional) return [];
  // A percent that is written already needs no second one.
  if (item.content.amount.kind === 'percent' && item.on?.name === 'flour') return [];
  const label = ` ${percentOf(grams, flour.grams, compare(multiply(grams, HUNDRED), flour.grams) < 0 ? 2 : 1)}`;
  return [{ offset, label, kind: 'percent', tooltip: 'Baker’s percentage: on the flour of the recipe' }];
}

const known = new WeakMap<Formula, ReadonlyMap<number, Rational>>();

/**
 * What each in line brings to the flour's pot and to what is made of it, by line number: of an inner make only the share
 * that is drawn, so that starter kept back does not count.
 */
function formulaGrams(formula: Formula): ReadonlyMap<number, Rational> {
  const before = known.get(formula);
  if (before !== undefined) return before;
  const grams = new Map<number, Rational>();
  const { flour } = formula;
  const followed = new Set<string>();
  for (const make of formula.makes.slice(flour?.makeIndex ?? formula.makes.length)) {
    const own = make.index === flour?.makeIndex;
    const joins = make.items.some(
      (item) => item.kind === 'in' && item.source.kind === 'product' && followed.has(item.source.product),
    );
    if (!own && !joins) continue;
    followed.add(normaliseName(make.name));
    for (const entry of make.pot.entries) {
      if (entry.kind !== 'food' && entry.kind !== 'draw') continue;
      for (const part of entry.parts) {
        if (followed.has(part.via)) continue;
        const line = part.origin.line.number;
        grams.set(line, add(grams.get(line) ?? ZERO, part.grams));
      }
    }
  }
  known.set(formula, grams);
  return grams;
}
