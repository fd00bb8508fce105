import type { Table } from './table.js';
import { withoutAccents } from '@quern/text';
import { nameKey } from './names.js';

/** What a name of the index stands for: one row by name or synonym, or several. */
export type Entry =
  | { readonly how: 'name' | 'synonym'; readonly row: number; readonly piece: string }
  | { readonly how: 'ambiguous'; readonly candidates: readonly string[] };

/** Names by key. Preferred names win over synonyms; a synonym of two foods is ambiguous. */
export function indexNames(table: Table): ReadonlyMap<string, Entry> {
  const index = new Map<string, Entry>();
  for (const { name, candidates } of table.ambiguous) index.set(nameKey(name), { how: 'ambiguous', candidates });
  table.rows.forEach((row, number) => index.set(nameKey(row.name), { how: 'name', row: number, piece: '' }));
  table.rows.forEach((row, number) => {
    for (const { name, piece } of row.synonyms) {
      const key = nameKey(name);
      const before = index.get(key);
      if (!before) index.set(key, { how: 'synonym', row: number, piece });
      else if (before.how === 'synonym' && before.row !== number) {
        const other = table.rows[before.row];
        index.set(key, { how: 'ambiguous', candidates: other ? [other.id, row.id] : [row.id] });
      }
    }
  });
  return index;
}

/** Keys by their spelling without accents, where that differs. */
export function indexAccents(keys: Iterable<string>): ReadonlyMap<string, string> {
  const accents = new Map<string, string>();
  for (const key of keys) {
    const bare = withoutAccents(key);
    if (!accents.has(bare)) accents.set(bare, key);
  }
  return accents;
}
