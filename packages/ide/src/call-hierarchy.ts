import type { Place, Span } from '@quern/text';
import type { Meaning, Occurrence } from './names.js';
import { definition, meaningAt } from './references.js';
import { snapshotOf, type Snapshot } from './snapshot.js';

/** A make or a saved thing, or the recipe that a line draws from another file. */
export interface HierarchyItem {
  readonly name: string;
  readonly kind: 'make' | 'saved' | 'recipe';
  readonly key: string;
  readonly place: Place;
}

export interface HierarchyCall {
  readonly item: HierarchyItem;
  /** The names on the lines that draw. */
  readonly at: readonly Span[];
  /** The file that those lines stand in. */
  readonly file: string;
}

/** The make or saved thing under the cursor. */
export function prepareHierarchy(snapshot: Snapshot, offset: number): HierarchyItem | undefined {
  const at = meaningAt(snapshot, offset);
  if (at === undefined) return undefined;
  const declared = definition(snapshot, offset)[0];
  return declared && itemOf(at.meaning, declared.place);
}

function itemOf({ kind, key, name }: Meaning, place: Place): HierarchyItem | undefined {
  if (kind !== 'make' && kind !== 'saved' && kind !== 'recipe') return undefined;
  return { name, kind, key, place };
}

/** Who draws from it: the makes whose lines put it in, in any file. */
export function incoming(snapshot: Snapshot, item: HierarchyItem): readonly HierarchyCall[] {
  return [...incomingByFile(snapshot, item)].flat();
}

/** The same, a file a turn, so that whoever asks may stop between files. */
export function* incomingByFile(
  snapshot: Snapshot,
  item: HierarchyItem,
): Generator<readonly HierarchyCall[], undefined> {
  const { files } = snapshot;
  for (const file of new Set([snapshot.path, ...files])) {
    const here = file === snapshot.path ? snapshot : snapshotOf(snapshot.session, file, files);
    if (here === undefined) continue;
    const calls: HierarchyCall[] = [];
    const aliases = aliasesOf(here, item.key);
    const draws = here.names.filter((name) => aliases.has(name.meaning.key) && isDrawn(here, name));
    for (const [maker, names] of groupByMaker(here, draws))
      calls.push({ item: maker, at: names.map(({ span }) => span), file });
    yield calls;
  }
}

/** What it draws: the products on the in lines of its make. */
export function outgoing(snapshot: Snapshot, item: HierarchyItem): readonly HierarchyCall[] {
  const home =
    item.place.file === snapshot.path ? snapshot : snapshotOf(snapshot.session, item.place.file, snapshot.files);
  if (home === undefined) return [];
  const line = home.lineAt(item.place.start).number;
  const drawn = new Map<string, { readonly item: HierarchyItem; readonly at: Span[] }>();
  for (const name of home.names) {
    if (!isDrawn(home, name) || makerOf(home, name)?.place.start !== makerAt(home, line)?.place.start) continue;
    const place = definition(home, name.span.start)[0]?.place;
    const target =
      place && itemOf(name.meaning.kind === 'alias' ? { ...name.meaning, kind: 'recipe' } : name.meaning, place);
    if (target === undefined) continue;
    const group = drawn.get(target.key) ?? { item: target, at: [] };
    group.at.push(name.span);
    drawn.set(target.key, group);
  }
  return [...drawn.values()].map((group) => ({ ...group, file: home.path }));
}

/** The key itself and those of the local names under which a file uses it. */
function aliasesOf(snapshot: Snapshot, key: string): ReadonlySet<string> {
  const keys = new Set([key]);
  for (const { meaning, line, role } of snapshot.names) {
    if (meaning.kind !== 'alias' || role !== 'declared') continue;
    if (snapshot.namesOn(line).some((name) => name.meaning.key === key)) keys.add(meaning.key);
  }
  return keys;
}

function isDrawn(snapshot: Snapshot, name: Occurrence): boolean {
  const line = snapshot.line(name.line);
  const content = line?.parsed.content;
  if (line === undefined || (content?.kind !== 'in' && content?.kind !== 'or')) return false;
  return (
    name.span.start === line.start + content.name.span.start &&
    ['make', 'saved', 'recipe', 'alias'].includes(name.meaning.kind)
  );
}

function groupByMaker(
  snapshot: Snapshot,
  draws: readonly Occurrence[],
): ReadonlyMap<HierarchyItem, readonly Occurrence[]> {
  const groups = new Map<string, { readonly item: HierarchyItem; readonly names: Occurrence[] }>();
  for (const draw of draws) {
    const maker = makerOf(snapshot, draw);
    if (maker === undefined) continue;
    const group = groups.get(maker.key) ?? { item: maker, names: [] };
    group.names.push(draw);
    groups.set(maker.key, group);
  }
  return new Map([...groups.values()].map(({ item, names }) => [item, names]));
}

const makerOf = (snapshot: Snapshot, { line }: Occurrence): HierarchyItem | undefined => makerAt(snapshot, line);

/** The make whose block holds a line; for a recipe without makes, the recipe. */
function makerAt(snapshot: Snapshot, line: number): HierarchyItem | undefined {
  for (let number = line; number >= 0; number--) {
    const content = snapshot.line(number)?.parsed.content;
    if (content?.kind !== 'block') continue;
    const name = snapshot.namesOn(number).find(({ role }) => role === 'declared');
    return name && itemOf(name.meaning, { file: snapshot.path, ...name.span });
  }
  return undefined;
}
