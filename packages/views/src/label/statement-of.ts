import { massOf, type Formula, type LedgerFood, type Part } from '@quern/compiler';
import { add, isZero, sum, ZERO, type Rational } from '@quern/quantity';
import type { FoodUse } from './allergens.js';
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
  return {
    entries: [...entries, ...withoutWeight(formula, uses, entries)],
    takenOut: takenOut(formula, uses, parts),
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

/** Foods put in whose weight nobody knows: they are named all the same. */
function withoutWeight(
  formula: Formula,
  uses: readonly FoodUse[],
  entries: readonly StatementEntry[],
): StatementEntry[] {
  const weighed = new Set(entries.flatMap((entry) => [entry.name, ...(entry.parts ?? []).map((part) => part.name)]));
  const wanting = new Set(unweighedNames(formula));
  return namesOf(uses)
    .filter(({ name }) => wanting.has(name) && !weighed.has(name))
    .map(({ name, food }) => ({ name, ...(food && { food }), grams: undefined }));
}

/** Names of foods that a line puts in with no known weight, or with none at all (`a little`). */
function unweighedNames(formula: Formula): string[] {
  const names: string[] = [];
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'in' || item.optional) continue;
      const { grams } = item.weighed;
      if (grams && !isZero(grams)) continue;
      if (item.source.kind === 'food') names.push(item.source.food.name);
      if (item.source.kind === 'any') names.push(...item.source.foods.map((food) => food.name), item.source.class);
    }
  }
  return names;
}

/** Foods that went in with a weight and of which nothing stands in the dish. */
function takenOut(formula: Formula, uses: readonly FoodUse[], parts: readonly Part[]): StatementEntry[] {
  const there = new Set(
    parts
      .filter((part) => massOf(part).n > 0n)
      .flatMap((part) => [part.food.name, part.food.food?.name ?? part.food.name]),
  );
  const wanting = new Set(unweighedNames(formula));
  return namesOf(uses)
    .filter(({ name, food }) => !there.has(name) && !(food && there.has(food.name)) && !wanting.has(name))
    .map(({ name, food }) => ({ name, ...(food && { food }), grams: undefined }));
}

function namesOf(uses: readonly FoodUse[]): FoodUse[] {
  const byName = new Map<string, FoodUse>();
  for (const use of uses) if (use.how === 'in' && !byName.has(use.name)) byName.set(use.name, use);
  return [...byName.values()];
}
