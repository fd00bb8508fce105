import type { Table } from './table.js';

const STAND_IN = '/stand-in';

/**
 * The text of a source: `mill` is in the table; `usda/20481` is a row of a published table, named by number and
 * description; `usda/20062/stand-in` is the nearest published row, used for a food that has none of its own.
 */
export function sourceText(id: string, table: Table): string | undefined {
  const plain = table.sources.get(id);
  if (plain !== undefined) return plain;
  const standIn = id.endsWith(STAND_IN);
  const row = standIn ? id.slice(0, -STAND_IN.length) : id;
  const [publication = '', number = ''] = row.split('/');
  const text = table.sources.get(publication);
  const description = table.descriptions.get(row);
  if (text === undefined || description === undefined) return undefined;
  const known = `${text}: no. ${number}, ${description}`;
  return standIn ? `the nearest published row, standing in for this food: ${known}` : known;
}
