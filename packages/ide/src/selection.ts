import { contains, shift, type Span } from '@quern/text';
import type { Line, LineContent } from '@quern/syntax';
import { makeBlockAt } from './mentions.js';
import type { Snapshot } from './snapshot.js';
import { documentSymbols, type DocumentSymbol } from './symbols.js';

/**
 * The spans that hold an offset, from the word under it outward: word, name or amount, line, step with its further lines,
 * block, recipe, file. Each lies inside the next.
 */
export function selectionRanges(snapshot: Snapshot, offset: number): readonly Span[] {
  const line = snapshot.lineAt(offset);
  const spans: Span[] = [...wordAt(snapshot.text, line, offset)];
  for (const span of partsOf(line.parsed.content)) {
    const placed = shift(span, line.start);
    if (contains(placed, offset)) spans.push(placed);
  }
  const trimmed = { start: line.start + line.parsed.content.indent, end: line.start + line.text.trimEnd().length };
  if (contains(trimmed, offset)) spans.push(trimmed);
  spans.push(...itemSpan(snapshot, line), ...blocksAt(documentSymbols(snapshot), offset));
  spans.push({ start: 0, end: snapshot.text.length });
  return nested(spans);
}

const WORD = /[\p{L}\p{N}\p{M}'’-]/u;

function wordAt(text: string, line: Line, offset: number): Span[] {
  let start = offset;
  let end = offset;
  while (start > line.start && WORD.test(text[start - 1] ?? '')) start--;
  while (end < line.start + line.text.length && WORD.test(text[end] ?? '')) end++;
  return end > start ? [{ start, end }] : [];
}

/** Every span of a line's tree. */
function partsOf(content: LineContent): Span[] {
  const spans: Span[] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if (Array.isArray(value)) return value.forEach(visit);
    const { span } = value as { readonly span?: Span };
    if (span !== undefined) spans.push(span);
    for (const part of Object.values(value)) if (part !== span) visit(part);
  };
  visit(content);
  return spans;
}

/** A step with its further words and its care; an in line with its alternatives. */
function itemSpan(snapshot: Snapshot, line: Line): Span[] {
  for (const item of makeBlockAt(snapshot, line.number)?.items ?? []) {
    const others = item.kind === 'step' ? [...item.more, ...item.every] : item.kind === 'in' ? item.alternatives : [];
    const all = [item.main, ...others].map((one) => one.line);
    const last = all.toSorted((a, b) => a.number - b.number).at(-1);
    if (all.length > 1 && last && all.some(({ number }) => number === line.number)) {
      const first = item.main.line;
      return [{ start: first.start + first.parsed.content.indent, end: last.start + last.text.trimEnd().length }];
    }
  }
  return [];
}

function blocksAt(symbols: readonly DocumentSymbol[], offset: number): Span[] {
  return symbols
    .filter(({ span, kind }) => contains(span, offset) && kind !== 'saved')
    .flatMap((symbol) => [...blocksAt(symbol.children, offset), symbol.span]);
}

/** The spans from small to large, without repeats and without any that does not hold the one before. */
function nested(spans: readonly Span[]): Span[] {
  const sorted = spans.toSorted((a, b) => a.end - a.start - (b.end - b.start));
  const result: Span[] = [];
  for (const span of sorted) {
    const last = result.at(-1);
    if (
      last === undefined ||
      (span.start <= last.start && span.end >= last.end && span.end - span.start > last.end - last.start)
    ) {
      result.push(span);
    }
  }
  return result;
}
