import type { Span } from '@quern/text';
import { multiply, HUNDRED, printExact, roundTo, ONE, exact } from '@quern/quantity';
import { usualEnding, type Line } from '@quern/syntax';
import { writableGrams } from '../measures.js';
import type { Snapshot } from '../snapshot.js';
import type { Refactoring } from './refactor.js';

/** A weight after `make NAME =` becomes a `check` of the pot at its end, which says more exactly where it holds. */
export function totalAsCheck(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  const line = snapshot.lineAt(span.start);
  const { content } = line.parsed;
  if (content.kind !== 'block' || content.block !== 'make' || content.equal === undefined || content.name === undefined)
    return [];
  const make = snapshot.makeAt(line.number)?.make;
  const last = make?.items.at(-1);
  if (make === undefined || last === undefined || last.ref.file !== snapshot.path) return [];
  // The check is exact at the digits written, the weight held to one per cent: the ledger's own weight is written.
  const weight = make.pot.grams
    ? writableGrams(make.pot.grams)
    : line.text.slice(content.equal.span.start, content.equal.span.end);
  const cut = { start: line.start + content.name.span.end, end: line.start + content.equal.span.end };
  const edits = [{ span: cut, text: '' }, lineAfter(snapshot, lastLineOf(snapshot, last.ref.line), `check ${weight}`)];
  return [
    { title: `Turn the total into a check: check ${weight}`, kind: 'rewrite', edits: [{ file: snapshot.path, edits }] },
  ];
}

/** A `check` below a line of the pot: its weight there, and in bread the water on the flour. */
export function addCheck(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  const line = snapshot.lineAt(span.start);
  const place = snapshot.itemAt(line.number);
  const after = place?.entry?.totalAfter;
  if (place === undefined || after === undefined || place.item.ref.line.number !== line.number) return [];
  const checks = [`check ${writableGrams(after)}`];
  const { flour } = place.formula;
  const peak = flour && place.formula.makes[flour.makeIndex]?.pot.entries.at(-1);
  if (flour && peak?.ref?.line.number === line.number) {
    const percent = roundTo(multiply(flour.hydration, HUNDRED), exact('0.1'));
    if (percent.n > 0n)
      checks.push(`check ${printExact(percent.d === 1n ? roundTo(percent, ONE) : percent)} % water on flour`);
  }
  return checks
    .filter((check) => holds(snapshot, line, check))
    .map((check) => ({
      title: `Add “${check}” below`,
      kind: 'rewrite',
      edits: [{ file: snapshot.path, edits: [lineAfter(snapshot, lastLineOf(snapshot, line), check)] }],
    }));
}

/** Whether the ledger agrees with a check at a line. Water that joins in another make is not in this pot. */
function holds(snapshot: Snapshot, line: Line, check: string): boolean {
  if (!check.includes('%')) return true;
  const edit = lineAfter(snapshot, lastLineOf(snapshot, line), check);
  const { diagnostics } = snapshot.edited([edit]).compiled;
  return !diagnostics.some(
    ({ code, place }) =>
      code === 'M14' && place.start >= edit.span.start && place.start <= edit.span.start + edit.text.length,
  );
}

/** The line itself, or the last of the alternatives, words and care that belong to it. */
function lastLineOf(snapshot: Snapshot, line: Line): Line {
  let last = line;
  for (;;) {
    const next = snapshot.line(last.number + 1);
    const kind = next?.parsed.content.kind;
    if (next === undefined || (kind !== 'or' && kind !== 'more' && kind !== 'every')) return last;
    last = next;
  }
}

function lineAfter(snapshot: Snapshot, line: Line, text: string): { span: Span; text: string } {
  const end = line.start + line.text.length;
  return { span: { start: end, end }, text: `${usualEnding(snapshot.document.lines)}  ${text}` };
}
