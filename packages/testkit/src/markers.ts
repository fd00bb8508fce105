import type { Span } from '@quern/text';

/** Stands where the cursor is. */
const cursorMark = '┆';
/** Stand before and behind a range. */
const rangeMarks = ['⟦', '⟧'] as const;

/** A text without its markers, and where they stood (UTF-16 offsets into `text`). */
export interface Marked {
  readonly text: string;
  readonly cursor: number | undefined;
  /** In the order of their beginnings. */
  readonly ranges: readonly Span[];
}

/**
 * Takes the markers out of a text.
 * @throws Error when there are two cursors, or a range is not closed or not opened.
 */
export function readMarkers(marked: string): Marked {
  const [open, close] = rangeMarks;
  let text = '';
  let cursor: number | undefined;
  const ranges: Span[] = [];
  const starts: number[] = [];
  for (const character of marked) {
    if (character === cursorMark) {
      if (cursor !== undefined) throw new Error(`two cursors ${cursorMark} in one text`);
      cursor = text.length;
    } else if (character === open) starts.push(text.length);
    else if (character === close) {
      const start = starts.pop();
      if (start === undefined) throw new Error(`${close} without ${open}`);
      ranges.push({ start, end: text.length });
    } else text += character;
  }
  if (starts.length > 0) throw new Error(`${open} without ${close}`);
  ranges.sort((a, b) => a.start - b.start || b.end - a.end);
  return { text, cursor, ranges };
}
