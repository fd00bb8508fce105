import { massOf, type Formula, type LedgerFood, type Part } from '@quern/compiler';
import { add, isZero, sum, ZERO, type Rational } from '@quern/quantity';
import type { FoodUse } from './allergens.js';
import type { Composition } from './composition.js';
import type { StatementEntry, StatementInput } from './ingredients.js';

/*
 * From the ledger to what an ingredient statement needs. A food counts by what went in and stayed, whatever water left it
 * later; foods of this recipe's own makes are named one by one, and something from another file is a compound.
 */

interface Gathered {
  readonly food: LedgerFood;
  grams: Rational;
}

const gather = (into: Map<string, Gathered>, part: Part): void => {
  const old = into.get(part.food.key);
  if (old) old.grams = add(old.grams, part.grams);
  else into.set(part.food.key, { food: part.food, grams: part.grams });
};

const entryOf = ({ food, grams }: Gathered): StatementEntry => ({
  name: food.name,
  ...(food.food && { food: food.food }),
  grams,
});

/** The ledger's side of the ingredient statement of a recipe. */
export function statementInputOf(
  formula: Formula,
  composition: Composition,
  uses: readonly FoodUse[],
  pictured: readonly string[],
): StatementInput {
  const parts = formula.makes.at(-1)?.pot.parts ?? [];
  const own = new Map<string, Gathered>();
  const compounds = new Map<string, Map<string, Gathered>>();
  for (const part of parts) {
    const compound = part.origin.file === formula.file ? undefined : usedName(formula, part);
    if (compound === undefined) {
      gather(own, part);
      continue;
    }
    const inside = compounds.get(compound) ?? new Map<string, Gathered>();
    compounds.set(compound, inside);
    gather(inside, part);
  }
  const entries: StatementEntry[] = [...own.values()].map(entryOf);
  for (const [name, inside] of compounds) {
    const each = [...inside.values()].map(entryOf);
    entries.push({ name, grams: sum(each.map(({ grams }) => grams ?? ZERO)), parts: each });
  }
  const unweighed = unweighedEntries(composition, uses, entries);
  return {
    entries: [...entries, ...unweighed],
    takenOut: takenOut(composition, uses, parts, unweighed),
    finished: formula.dishGrams,
    moistureLost: parts.some((part) => !isZero(part.waterLost) || !isZero(part.alcoholLost)),
    stressed: [formula.title, ...(formula.variant === undefined ? [] : [formula.variant]), ...pictured],
  };
}

/** The local name of the thing from another file through which a part came. */
function usedName(formula: Formula, part: Part): string | undefined {
  const used = [...formula.products.values()].filter((product) => product.kind === 'used');
  const direct = used.find((product) => product.name === part.via);
  if (direct) return direct.name;
  const holding = used.find((product) =>
    product.parts.some((one) => one.food.key === part.food.key && one.origin.file === part.origin.file),
  );
  return holding?.name;
}

/**
 * Foods that are in the dish though no weight of them is: those put in without one, and, in a ledger that does not come
 * out, all that cannot be followed. They are named all the same.
 */
function unweighedEntries(
  composition: Composition,
  uses: readonly FoodUse[],
  entries: readonly StatementEntry[],
): StatementEntry[] {
  const weighed = new Set(entries.flatMap((entry) => [entry.name, ...(entry.parts ?? []).map((part) => part.name)]));
  const wanting = new Set(composition.unweighed.map(({ name }) => name));
  const named = namesOf(uses).filter(({ name }) => !weighed.has(name) && (composition.withheld || wanting.has(name)));
  // A name written in another way than at first is found by its food.
  const others = composition.unweighed.filter(
    ({ name, food }) => !weighed.has(name) && !named.some((use) => use.name === name || (food && use.food === food)),
  );
  return [...named, ...others].map(({ name, food }) => ({ name, ...(food && { food }), grams: undefined }));
}

/** Foods that went in with a weight and of which nothing stands in the dish. */
function takenOut(
  composition: Composition,
  uses: readonly FoodUse[],
  parts: readonly Part[],
  unweighed: readonly StatementEntry[],
): StatementEntry[] {
  if (composition.withheld) return [];
  const standing = parts.filter((part) => massOf(part).n > 0n);
  const names = new Set(standing.map((part) => part.food.name));
  const foods = new Set(standing.map((part) => part.food.food));
  const wanting = new Set(unweighed.map(({ name }) => name));
  return namesOf(uses)
    .filter(({ name, food }) => !names.has(name) && !(food && foods.has(food)) && !wanting.has(name))
    .map(({ name, food }) => ({ name, ...(food && { food }), grams: undefined }));
}

function namesOf(uses: readonly FoodUse[]): FoodUse[] {
  const byName = new Map<string, FoodUse>();
  for (const use of uses) if (use.how === 'in' && !byName.has(use.name)) byName.set(use.name, use);
  return [...byName.values()];
}
