import type { Place, Span } from '@quern/text';
import { mentionAt, mentionsOf, type Mention } from './mentions.js';
import type { Meaning, Occurrence } from './names.js';
import { snapshotOf, type Snapshot } from './snapshot.js';

export interface Reference {
  readonly place: Place;
  readonly role: 'declared' | 'used' | 'spoken';
}

/** What the name at an offset means, whether it stands on a line or is spoken of in a sentence. */
export function meaningAt(
  snapshot: Snapshot,
  offset: number,
): { readonly meaning: Meaning; readonly span: Span } | undefined {
  const name: Occurrence | Mention | undefined = snapshot.nameAt(offset) ?? mentionAt(snapshot, offset);
  return name && { meaning: name.meaning, span: name.span };
}

/** Every place of the workspace where what a name means is named; sentences too when `spoken`. */
export function references(snapshot: Snapshot, offset: number, spoken = true): readonly Reference[] {
  return [...referencesByFile(snapshot, offset, spoken)].flat();
}

/** The same, a file a turn, so that whoever asks may stop between files. */
export function* referencesByFile(
  snapshot: Snapshot,
  offset: number,
  spoken = true,
): Generator<readonly Reference[], undefined> {
  const at = meaningAt(snapshot, offset);
  if (at === undefined) return;
  const { files } = snapshot;
  yield referencesIn(snapshot, at.meaning, spoken);
  for (const file of files) {
    if (file === snapshot.path) continue;
    const other = snapshotOf(snapshot.session, file, files);
    yield other === undefined ? [] : referencesIn(other, at.meaning, spoken);
  }
}

function referencesIn(snapshot: Snapshot, meaning: Meaning, spoken: boolean): Reference[] {
  const file = snapshot.path;
  const named = snapshot.names.filter((name) => name.meaning.key === meaning.key);
  const found: Reference[] = named.map(({ span, role }) => ({ place: { file, ...span }, role }));
  if (spoken) {
    const recipes = new Set(named.flatMap(({ recipe }) => (recipe === undefined ? [] : [recipe])));
    for (const recipe of recipes) {
      for (const { span } of mentionsOf(snapshot, meaning, recipe))
        found.push({ place: { file, ...span }, role: 'spoken' });
    }
  }
  return found.sort((a, b) => a.place.start - b.place.start);
}

/** The places of this file to light up with the one under the cursor. */
export function highlights(snapshot: Snapshot, offset: number): readonly Reference[] {
  const at = meaningAt(snapshot, offset);
  return at === undefined ? [] : referencesIn(snapshot, at.meaning, true);
}

/** Where what a name means is declared: in this file or another. Foods of the table are declared nowhere. */
export function definition(
  snapshot: Snapshot,
  offset: number,
): readonly { readonly place: Place; readonly origin: Span }[] {
  const at = meaningAt(snapshot, offset);
  if (at === undefined) return [];
  const { meaning, span } = at;
  if (meaning.kind === 'file') {
    const there = meaning.file !== undefined && snapshot.session.text(meaning.file) !== undefined;
    return there ? [{ place: { file: meaning.file, start: 0, end: 0 }, origin: span }] : [];
  }
  const file = meaning.file ?? snapshot.path;
  const home = file === snapshot.path ? snapshot : snapshotOf(snapshot.session, file, snapshot.files);
  const declared = home?.names.filter((name) => name.role === 'declared' && name.meaning.key === meaning.key) ?? [];
  return declared.map((name) => ({ place: { file, ...name.span }, origin: span }));
}
