import type { Span, TextEdit } from '@quern/text';
import { tidy, type Line } from '@quern/syntax';
import type { Snapshot } from './snapshot.js';

/** The edits that lay the whole file out. */
export function formatDocument(snapshot: Snapshot): readonly TextEdit[] {
  return tidy(snapshot.text, snapshot.document).edits;
}

/** The edits that lay out the lines that a span touches, and no others. */
export function formatRange(snapshot: Snapshot, span: Span): readonly TextEdit[] {
  const first = snapshot.lineAt(span.start);
  const last = snapshot.lineAt(Math.max(span.start, span.end - 1));
  return formatDocument(snapshot).filter(
    (edit) => edit.span.start >= first.start && edit.span.end <= last.start + last.text.length,
  );
}

/**
 * After a line end is typed: lays out the line that was finished, and begins the new one where a line of that block
 * begins. Nothing else moves, so that typing is not disturbed.
 */
export function formatOnType(snapshot: Snapshot, offset: number): readonly TextEdit[] {
  const here = snapshot.lineAt(offset);
  const above = snapshot.line(here.number - 1);
  if (above === undefined) return [];
  const edits = formatDocument(snapshot).filter(
    ({ span }) => span.start >= above.start && span.end <= above.start + above.text.length,
  );
  return [...edits, ...indentNew(here, indentAfter(snapshot, above))];
}

function indentNew(here: Line, indent: number): TextEdit[] {
  const before = here.text.length - here.text.trimStart().length;
  if (here.text.trim() !== '' || before === indent) return [];
  return [{ span: { start: here.start, end: here.start + here.text.length }, text: ' '.repeat(indent) }];
}

/** How far the next line stands in: under `make`, `food` and the like two spaces, under `recipe` and empty lines none. */
function indentAfter(snapshot: Snapshot, above: Line): number {
  const { content } = above.parsed;
  if (content.kind === 'blank') return 0;
  const block = snapshot.blockAt(above.number);
  if (block === undefined || block.block === 'menu') return 0;
  if (block.block !== 'recipe') return 2;
  // Lines of a recipe without makes stand in, its facts do not.
  return ['in', 'or', 'out', 'step', 'every', 'more', 'check'].includes(content.kind) ? 2 : 0;
}
