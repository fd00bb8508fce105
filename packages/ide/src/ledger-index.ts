import type { Entry, Formula, InItem, Item, Make } from '@quern/compiler';

/** An item of the ledger with the make and the formula it stands in. */
export interface ItemPlace {
  readonly formula: Formula;
  readonly make: Make;
  readonly item: Item;
  /** For an `or` line: the alternative itself. */
  readonly alternative?: InItem;
  /** What the line moves in the pot; missing where nothing moves. */
  readonly entry?: Entry;
}

const indexes = new WeakMap<Formula, ReadonlyMap<number, ItemPlace>>();

/** The items of a formula by the numbers of the lines that they stand in, or that belong to them. */
export function itemsByLine(formula: Formula): ReadonlyMap<number, ItemPlace> {
  const known = indexes.get(formula);
  if (known !== undefined) return known;
  const made = indexed(formula);
  indexes.set(formula, made);
  return made;
}

function indexed(formula: Formula): ReadonlyMap<number, ItemPlace> {
  const index = new Map<number, ItemPlace>();
  for (const make of formula.makes) {
    const entries = new Map(make.pot.entries.flatMap((entry) => (entry.ref ? [[entry.ref.line.number, entry]] : [])));
    for (const item of make.items) {
      const number = item.ref.line.number;
      const entry = entries.get(number);
      index.set(number, { formula, make, item, ...(entry ? { entry } : {}) });
      if (item.kind === 'in') {
        for (const alternative of item.alternatives) {
          index.set(alternative.ref.line.number, { formula, make, item, alternative });
        }
      }
      if (item.kind === 'step') {
        for (const { ref } of [...item.more, ...item.every]) index.set(ref.line.number, { formula, make, item });
      }
    }
  }
  return index;
}
