import type { TimetableEntry } from '@quern/views';
import type { Moments } from './moments.js';

/** What stands beside an entry: whose it is, how long it lasts, how hot, until when. Empty when there is nothing to add. */
export function entryNote(entry: TimetableEntry, moments: Moments, severalDishes: boolean): string {
  const { make, dish, lasts, heat } = entry;
  const whose = severalDishes && make !== '' && make !== dish ? [dish, make] : [make];
  // A short wait is over before anybody needs to be told when.
  const until = entry.kind === 'wait' && entry.until - entry.at >= 60 ? `until ${moments.at(entry.until)}` : '';
  return [...whose, lasts, heat ?? '', until].filter((text) => text !== '').join(', ');
}

/** Why an entry may move and why not, a line each, when that is asked for. */
export function entryReasons(entry: TimetableEntry, wanted: boolean | undefined): string[] {
  if (!wanted || !entry.reasons) return [];
  const { mayMove, mayNot } = entry.reasons;
  return [...mayMove.map((why) => `may move: ${why}`), ...mayNot.map((why) => `may not: ${why}`)];
}
