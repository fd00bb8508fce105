import { shift, type Place, type Span } from '@quern/text';
import type { Line } from '@quern/syntax';
import type { LineRef } from './model.js';

/** A line of a recipe in its file: that of the recipe, unless a variant that stands elsewhere brought it. */
export const refOf = (file: string, line: Line): LineRef => ({ file: line.file ?? file, line });

/** A span of a line as a place in its file. */
export function placeOf(ref: LineRef, span: Span): Place {
  return { file: ref.file, ...shift(span, ref.line.start) };
}

/** The whole line without the space around it. */
export function linePlace(ref: LineRef): Place {
  const { text, start } = ref.line;
  const from = text.length - text.trimStart().length;
  return { file: ref.file, start: start + from, end: start + Math.max(from, text.trimEnd().length) };
}
