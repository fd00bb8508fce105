import { gramsText } from '../figures.js';
import { otherMeasure, states, writableGrams } from '../measures.js';
import type { Snapshot } from '../snapshot.js';
import type { Candidate } from './item.js';

/** The other measure of the line, as the food table has it. */
export function* measureCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  const content = snapshot.line(line)?.parsed.content;
  // With a bare `=` the line cannot be read; the ledger is asked with the sign taken away.
  const text = snapshot.line(line)?.text ?? '';
  const place =
    content?.kind === 'in' || content?.kind === 'or' ? snapshot.itemAt(line) : without(snapshot, line, text);
  const item = place?.alternative ?? (place?.item.kind === 'in' ? place.item : undefined);
  if (item === undefined || place === undefined) return;
  const other = otherMeasure(item, place.formula);
  if (other !== undefined) yield { label: other, kind: 'value', detail: 'by the food table', rank: 0 };
  const { grams } = item.weighed;
  if (grams && !states(item.content, 'mass')) {
    yield {
      label: `about ${writableGrams(grams)}`,
      kind: 'value',
      detail: `the ledger takes ${gramsText(grams)}`,
      rank: 1,
    };
  }
}

/** The item of a line as it would be without its last `=`. */
function without(snapshot: Snapshot, line: number, text: string): ReturnType<Snapshot['itemAt']> {
  const equals = text.lastIndexOf('=');
  const { start } = snapshot.line(line) ?? { start: 0 };
  if (equals < 0) return undefined;
  return snapshot.edited([{ span: { start: start + equals, end: start + text.length }, text: '' }]).itemAt(line);
}
