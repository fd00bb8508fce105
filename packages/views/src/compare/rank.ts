import type { Change, LineFinding } from './changes.js';

/*
 * The order in which changes are told: what matters to whoever eats, then to whoever bakes, then the words. Allergens
 * always come first.
 */

/** For whom a change is told. */
export type Audience = 'eater' | 'baker' | 'reader';

/** Of each kind of change its place in the order; the hundreds are the audience. */
function rankOf(change: Change): number {
  switch (change.kind) {
    case 'allergen':
      return change.after === 'contains' ? 0 : change.after === 'may contain' && change.before === 'not named' ? 1 : 3;
    case 'unsaid':
      return change.after === undefined ? 4 : 2;
    case 'promise':
      return 5;
    case 'caution':
      return change.after === undefined ? 7 : 6;
    case 'problem':
      return (change.after === undefined ? 10 : 8) + (change.severity === 'error' ? 0 : 1);
    case 'nutrition':
      return 30;
    case 'yield':
      return 40;
    case 'clock':
      return 101;
    case 'rescaled':
      return 100;
    case 'bakers':
      return 110;
    case 'weighed':
      return 125;
    case 'share':
      return 126;
    case 'line':
      return change.change.follows ? 290 : rankOfLine(change);
  }
}

function rankOfLine({ role, action, change }: LineFinding): number {
  const wordsOnly = change.kind === 'changed' && change.parts.every(({ part }) => part === 'words' || part === 'note');
  switch (role) {
    case 'food':
    case 'alternative':
      if (wordsOnly) return 210;
      if (action === 'renamed' && change.parts.length === 1) return 200;
      return action === 'added' || action === 'removed' || action === 'swapped' ? 20 : 120;
    case 'promise':
      return 5;
    case 'keeping':
      return wordsOnly ? 210 : 45;
    case 'unreadable':
      return 12;
    case 'product':
    case 'out':
      return wordsOnly ? 210 : 121;
    case 'make':
      return 130;
    case 'check':
      return 150;
    case 'step':
    case 'care':
      return wordsOnly ? 205 : 140;
    case 'words':
    case 'remark':
      return 205;
    case 'yield':
      return 160;
    case 'fact':
    case 'block':
      return 165;
    case 'edit':
    case 'variant':
      return 170;
    case 'recipe':
      return action === 'renamed' ? 200 : 15;
    case 'credit':
      return 220;
  }
}

export function audienceOf(change: Change): Audience {
  const rank = rankOf(change);
  return rank < 100 ? 'eater' : rank < 200 ? 'baker' : 'reader';
}

/** The changes in the order of telling; within a kind, in the order of the file. */
export function ordered(changes: readonly Change[]): readonly Change[] {
  return changes.toSorted((a, b) => rankOf(a) - rankOf(b) || comparePlaces(placeOf(a), placeOf(b)));
}

/** Where a change stands in the file as it is now, or as it was. */
function placeOf(change: Change): readonly number[] {
  if (change.kind !== 'line') return [];
  const { before, after, target, source } = change.change;
  // What is gone stands where its block stands now, in the place it had.
  if (!after && before && source) return [...source.after, ...before.path.slice(-1)];
  return after?.path ?? target?.after ?? before?.path ?? [];
}

function comparePlaces(a: readonly number[], b: readonly number[]): number {
  for (let at = 0; at < Math.max(a.length, b.length); at++) {
    const [x, y] = [a[at] ?? -1, b[at] ?? -1];
    if (x !== y) return x - y;
  }
  return 0;
}
