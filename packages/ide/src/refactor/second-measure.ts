import type { Span } from '@quern/text';
import { otherMeasure } from '../measures.js';
import type { Snapshot } from '../snapshot.js';
import type { Refactoring } from './refactor.js';

/** Writes the measure that an in line does not state, by the food table: cups beside grams, grams beside cups. */
export function secondMeasure(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  const line = snapshot.lineAt(span.start);
  const place = snapshot.itemAt(line.number);
  const item = place?.alternative ?? (place?.item.kind === 'in' ? place.item : undefined);
  const { content } = line.parsed;
  if (place === undefined || item === undefined || (content.kind !== 'in' && content.kind !== 'or')) return [];
  const other = otherMeasure(item, place.formula);
  if (other === undefined) return [];
  const end =
    line.start + Math.max(content.name.span.end, content.as?.span.end ?? 0, content.equals.at(-1)?.span.end ?? 0);
  const edits = [{ span: { start: end, end }, text: ` = ${other}` }];
  return [{ title: `Write the second measure: = ${other}`, kind: 'rewrite', edits: [{ file: snapshot.path, edits }] }];
}
