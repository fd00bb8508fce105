import type { Position, Range } from 'vscode-languageserver';
import type { Span } from '@quern/text';
import type { Snapshot } from '@quern/ide';

/** The offset of a line and column; outside the file the nearest place in it. */
export function offset(snapshot: Snapshot, { line, character }: Position): number {
  if (!(line >= 0)) return 0;
  const found = snapshot.line(line);
  if (found === undefined) return snapshot.text.length;
  return found.start + Math.max(0, Math.min(character, found.text.length));
}

export function span(snapshot: Snapshot, { start, end }: Range): Span {
  const from = offset(snapshot, start);
  return { start: from, end: Math.max(from, offset(snapshot, end)) };
}
