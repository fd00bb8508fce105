import { shift, type Place, type Span } from '@quern/text';
import type { LineRef } from './model.js';

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
