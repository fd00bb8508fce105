/** A stretch of text: UTF-16 offsets, end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A stretch of one file. Offsets are the only position type below the edge; lines and columns are made on demand. */
export interface Place extends Span {
  /** Path of the file as the host knows it. */
  readonly file: string;
}

/** The span moved by `by` characters, as when a line's own span becomes a span of its file. */
export function shift(span: Span, by: number): Span {
  return { start: span.start + by, end: span.end + by };
}

/** The smallest span that holds both. */
export function cover(a: Span, b: Span): Span {
  return { start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) };
}

/** Whether `offset` lies in the span; the end counts, because a cursor stands between characters. */
export function contains(span: Span, offset: number): boolean {
  return span.start <= offset && offset <= span.end;
}
