/*
 * Chevrotain 13 declares Node 22 and uses one thing that Node 20 lacks, `Object.groupBy`, while it analyses a grammar.
 * This module supplies it, to the letter of ECMAScript 2024, and only where it is missing. It goes when Node 20 goes.
 */

type GroupBy = (items: Iterable<unknown>, keyOf: (item: unknown, index: number) => PropertyKey) => object;

/** `Object.groupBy` as the standard says: an object without a prototype, groups in the order in which they first appear. */
export function groupBy(items: Iterable<unknown>, keyOf: (item: unknown, index: number) => PropertyKey): object {
  const groups = Object.create(null) as Record<PropertyKey, unknown[]>;
  let index = 0;
  for (const item of items) (groups[keyOf(item, index++)] ??= []).push(item);
  return groups;
}

/** Makes sure `Object.groupBy` exists. Called before a parser analyses its grammar. */
export function ensureGroupBy(): void {
  const object = Object as { groupBy?: GroupBy };
  object.groupBy ??= groupBy;
}
