import type { Span } from './span.js';

/** Replace a span by a text; an empty span inserts. */
export interface TextEdit {
  readonly span: Span;
  readonly text: string;
}

/**
 * The text with all edits made at once. Edits may come in any order.
 * @throws RangeError when two edits overlap, since the result would depend on their order.
 */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  const sorted = edits.map((edit, index) => ({ edit, index }));
  sorted.sort(
    (a, b) => a.edit.span.start - b.edit.span.start || a.edit.span.end - b.edit.span.end || a.index - b.index,
  );
  let result = '';
  let position = 0;
  for (const { edit } of sorted) {
    if (edit.span.start < position) throw new RangeError(`edits overlap at ${edit.span.start}`);
    result += text.slice(position, edit.span.start) + edit.text;
    position = edit.span.end;
  }
  return result + text.slice(position);
}
