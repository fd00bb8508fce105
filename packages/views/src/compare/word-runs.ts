import { diffArrays } from 'diff';

/** Some words that both texts have, or only one of them. */
export interface WordRun {
  readonly kind: 'same' | 'removed' | 'added';
  readonly text: string;
}

/** A word or a mark with the space before it, so that a phrase stays in one piece. */
const TOKEN = /\s*(?:[\p{L}\p{M}\p{N}]+(?:['’.,/-][\p{L}\p{M}\p{N}]+)*|\S)/gu;
const tokens = (text: string): string[] => text.match(TOKEN) ?? [];

/**
 * What became of the words of a text: put together, what is not `added` gives the first text, what is not `removed` the
 * second. Told the other way round, the same words stay.
 */
export function wordRuns(before: string, after: string): readonly WordRun[] {
  const forward = before <= after;
  const changes = forward ? diffArrays(tokens(before), tokens(after)) : diffArrays(tokens(after), tokens(before));
  const runs = changes.map(({ added, removed, value }): WordRun => {
    const kind = added === removed ? 'same' : added === forward ? 'added' : 'removed';
    return { kind, text: value.join('') };
  });
  return removedFirst(runs);
}

/** Between two stretches that stay, what went stands before what came. */
function removedFirst(runs: readonly WordRun[]): readonly WordRun[] {
  const result: WordRun[] = [];
  let came: WordRun[] = [];
  for (const run of runs) {
    if (run.kind === 'added') came.push(run);
    else if (run.kind === 'removed') result.push(run);
    else {
      result.push(...came, run);
      came = [];
    }
  }
  return [...result, ...came];
}
