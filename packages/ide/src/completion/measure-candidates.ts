import { exact, HUNDRED, multiply, printExact, roundTo } from '@quern/quantity';
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

/** After `check `: what the ledger has in the pot at the line above, and in bread the water on the flour. */
export function* checkCandidates(snapshot: Snapshot, line: number): Iterable<Candidate> {
  for (let above = line - 1; above >= 0 && snapshot.line(above)?.parsed.content.kind !== 'block'; above--) {
    const place = snapshot.itemAt(above);
    const after = place?.entry?.totalAfter;
    if (place === undefined || after === undefined) continue;
    yield { label: writableGrams(after), kind: 'value', detail: 'in the pot by the ledger', rank: 0 };
    const { flour } = place.formula;
    if (flour === undefined) return;
    const percent = printExact(roundTo(multiply(flour.hydration, HUNDRED), exact('0.1')));
    yield { label: `${percent} % water on flour`, kind: 'value', detail: 'in the dough by the ledger', rank: 1 };
    return;
  }
}
