import type { Snapshot } from './snapshot.js';
import { blockEnds, documentSymbols, type DocumentSymbol } from './symbols.js';

export interface FoldingRange {
  /** Line numbers from zero, both included. */
  readonly from: number;
  readonly to: number;
  readonly kind: 'block' | 'remarks' | 'uses';
}

/** What can be folded: blocks (a recipe with its makes and variants), runs of remarks, runs of `use` lines. */
export function foldingRanges(snapshot: Snapshot): readonly FoldingRange[] {
  const { lines } = snapshot.document;
  const ranges: FoldingRange[] = [];
  const visit = (symbol: DocumentSymbol): void => {
    const from = snapshot.lineAt(symbol.span.start).number;
    const to = snapshot.lineAt(symbol.span.end).number;
    if (to > from) ranges.push({ from, to, kind: 'block' });
    symbol.children.forEach(visit);
  };
  documentSymbols(snapshot).forEach(visit);
  // Blocks that belong to nothing (a make outside a recipe) have no symbol but can be folded all the same.
  const seen = new Set(ranges.map(({ from }) => from));
  for (const [from, end] of blockEnds(lines)) {
    const to = snapshot.lineAt(end).number;
    if (!seen.has(from) && to > from) ranges.push({ from, to, kind: 'block' });
  }
  for (const kind of ['comment', 'use'] as const) {
    let from = 0;
    for (let number = 0; number <= lines.length; number++) {
      if (lines[number]?.parsed.content.kind === kind) continue;
      if (number - from > 1) ranges.push({ from, to: number - 1, kind: kind === 'use' ? 'uses' : 'remarks' });
      from = number + 1;
    }
  }
  return ranges.sort((a, b) => a.from - b.from || b.to - a.to);
}
