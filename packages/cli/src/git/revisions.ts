import { UsageError } from '../command.js';
import type { Repository } from './git.js';

/** A commit in which a file is other than before. */
export interface FileRevision {
  readonly commit: string;
  /** Of the commit's author, an ISO 8601 day. */
  readonly day: string;
  readonly subject: string;
  /** The path of the file then. */
  readonly path: string;
  /** The object that holds its text. */
  readonly blob: string;
}

/**
 * The revisions of a file, oldest first, also under the names it had before. What was merged counts as one revision, that
 * of the merge: the history is that of the line one stands on.
 * @throws UsageError when git knows nothing of the file.
 */
export function revisionsOf(repository: Repository, path: string, shown: string): readonly FileRevision[] {
  const { code, out, err } = repository.git(
    'log',
    '--follow',
    '--first-parent',
    '--diff-merges=first-parent',
    '--raw',
    '--no-abbrev',
    '--find-renames',
    '-z',
    '--format=%x01%H%x00%as%x00%s',
    'HEAD',
    '--',
    path,
  );
  const revisions = code === 0 ? readLog(out) : [];
  if (revisions.length === 0) {
    const reason = code === 0 ? 'it has never been committed' : err.trim().split('\n')[0];
    throw new UsageError(`git has no history of ${shown}: ${reason ?? ''}`, 'commit the file first');
  }
  return revisions.reverse();
}

const CHANGE = /^\n?:\d+ \d+ [0-9a-f]+ ([0-9a-f]+) ([A-Z])\d*$/;

/** Fields end with NUL: a commit's three, then of its file what changed, and one path or (renamed, copied) two. */
function readLog(text: string): FileRevision[] {
  const fields = text.split('\u0000');
  const revisions: FileRevision[] = [];
  for (let at = 0; at < fields.length; at++) {
    const [head = '', day = '', subject = '', change = ''] = fields.slice(at, at + 4);
    if (!head.startsWith('\u0001')) continue;
    const [, blob = '', kind = ''] = CHANGE.exec(change) ?? [];
    const path = fields[at + (kind === 'R' || kind === 'C' ? 5 : 4)] ?? '';
    // A commit that took the file away has none to show.
    if (/[1-9a-f]/.test(blob) && path !== '') revisions.push({ commit: head.slice(1), day, subject, path, blob });
    at += 3;
  }
  return revisions;
}
