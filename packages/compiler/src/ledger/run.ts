import { ZERO } from '@quern/quantity';
import type { BoundMake } from '../bind.js';
import { PotParts } from './parts.js';
import type { Item, Pot } from '../model.js';
import type { RunState, OpenPot, LedgerInput, LedgerRun } from './state.js';
import { putIn } from './put-in.js';
import { offTheHeat, step } from './heat.js';
import { takeOut } from './take-out.js';
import { check } from './check.js';

/*
 * The ledger: runs the makes line by line and keeps what stands in each pot. A run is a pure function of what is
 * bound, of the flour all percentages stand on, and of the end of the ranges that is taken. Nothing leaves that is
 * not there; what cannot be weighed makes its pot inexact from that line, and sums that depend on it are withheld.
 */

export function runLedger(input: LedgerInput): LedgerRun {
  const run: RunState = {
    input,
    products: new Map(),
    taken: new Map(),
    saved: new Map(),
    asksForFlour: false,
    peak: undefined,
    pendingAlcohol: ZERO,
  };
  for (const [name, product] of input.bound.products) {
    if (product.used) run.products.set(name, { parts: product.used.parts, grams: product.used.grams, draws: [] });
  }
  const makes = input.bound.makes.map((make) => runMake(run, make));
  return {
    makes,
    products: run.products,
    peak: run.peak,
    asksForFlour: run.asksForFlour,
    makeOf: new Map([...input.bound.products].map(([name, product]) => [name, product.makeIndex])),
    cultureTaken: run.taken,
    cultureSaved: run.saved,
  };
}

function runMake(run: RunState, make: BoundMake): { items: Item[]; pot: Pot } {
  const pot: OpenPot = { make, parts: new PotParts(), entries: [], unknown: [], flour: ZERO, boiling: undefined };
  const items: Item[] = [];
  make.items.forEach((item, index) => {
    switch (item.kind) {
      case 'in':
        items.push(putIn(run, item, pot, index));
        break;
      case 'out':
        offTheHeat(run, pot);
        items.push(takeOut(run, item, pot, index));
        break;
      case 'step':
        items.push(step(run, item, pot, index));
        break;
      case 'check':
        items.push(check(run, item, pot));
        break;
      case 'remark':
        items.push({ kind: 'remark', ref: item.ref, content: item.content });
        break;
      case 'bad':
        pot.unknown.push({ ref: item.ref, why: 'bad-line', name: '' });
    }
  });
  offTheHeat(run, pot);
  const grams = pot.unknown.length === 0 ? pot.parts.total : undefined;
  const parts = pot.parts.list();
  if (isNamed(run, make)) run.products.set(make.id, { parts, grams, draws: [] });
  return { items, pot: { entries: pot.entries, parts, grams, unknown: pot.unknown } };
}

/** A make whose name is taken by another (N03) or reserved is not drawable. */
function isNamed(run: RunState, make: BoundMake): boolean {
  const named = run.input.bound.products.get(make.id);
  return named?.kind === 'make' && named.makeIndex === make.index;
}
