import type { Span } from '@quern/text';
import { normaliseName } from '@quern/compiler';
import { usualEnding, type Line } from '@quern/syntax';
import { makeBlockAt } from '../mentions.js';
import type { Snapshot } from '../snapshot.js';
import type { Refactoring } from './refactor.js';

const BODY: ReadonlySet<string> = new Set([
  'in',
  'or',
  'out',
  'step',
  'every',
  'more',
  'check',
  'comment',
  'blank',
  'text-fact',
]);

/** The selected lines of a make become a make of their own above it, all of which is put in where they stood. */
export function extractMake(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  if (span.end === span.start) return [];
  const first = snapshot.lineAt(span.start);
  const last = snapshot.lineAt(span.end > first.start ? span.end - 1 : span.end);
  const lines = snapshot.document.lines.slice(first.number, last.number + 1);
  const block = makeBlockAt(snapshot, first.number);
  const heading = block?.heading?.line;
  if (block === undefined || heading === undefined || makeBlockAt(snapshot, last.number) !== block) return [];
  if (!lines.every(({ parsed }) => BODY.has(parsed.content.kind)) || first.number <= heading.number) return [];
  // Lines that belong to the one above go with it, and something has to go in.
  const kinds = lines.map(({ parsed }) => parsed.content.kind).filter((kind) => kind !== 'blank' && kind !== 'comment');
  if (!kinds.includes('in') || ['or', 'more', 'every'].includes(kinds[0] ?? '')) return [];
  const ending = usualEnding(snapshot.document.lines);
  const name = freeName(snapshot, heading);
  const moved = lines.map(({ text }) => text).join(ending);
  const edits = [
    { span: { start: heading.start, end: heading.start }, text: [`make ${name}`, moved, '', ''].join(ending) },
    { span: { start: first.start, end: last.start + last.text.length }, text: `  all ${name}` },
  ];
  return [
    {
      title: `Extract these lines into a make of their own (“${name}”)`,
      kind: 'extract',
      edits: [{ file: snapshot.path, edits }],
    },
  ];
}

/** A name that nothing else has, after the make that the lines come from. */
function freeName(snapshot: Snapshot, heading: Line): string {
  const { content } = heading.parsed;
  const whole = content.kind === 'block' ? (content.name?.text ?? 'make') : 'make';
  const taken = new Set(
    snapshot.names.filter(({ role }) => role === 'declared').map(({ text }) => normaliseName(text)),
  );
  let name = `${whole} base`;
  for (let number = 2; taken.has(normaliseName(name)); number++) name = `${whole} base ${number}`;
  return name;
}
