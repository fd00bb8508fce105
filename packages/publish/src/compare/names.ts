import type { FileReport } from '@quern/views';

/** A file as it is headed among several: with both names where it was renamed. */
export function namesOf({ before, after }: Pick<FileReport, 'before' | 'after'>): string {
  if (before === '') return `${after} (new)`;
  if (after === '') return `${before} (gone)`;
  return before === after ? after : `${before} -> ${after}`;
}
