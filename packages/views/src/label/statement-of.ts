import { massOf, type Food, type Formula, type LedgerFood, type Part, type Product } from '@quern/compiler';
import { add, isZero, multiply, ONE, subtract, sum, ZERO, type Rational } from '@quern/quantity';
import { waysToDish, type FoodUse } from './allergens.js';
import type { Composition } from './composition.js';
import { weighedAsOf } from './edible.js';
import type { StatementEntry, StatementInput } from './ingredients.js';

/*
 * From the ledger to what an ingredient statement needs. A food counts by what went in and stayed, whatever water left it
 * later, and without peel, stone or shell that were weighed with it; foods of this recipe's own makes are named one by
 * one, and something from another file is a compound, with compounds in it where that file uses others in turn.
 */

interface Gathered {
  readonly food: LedgerFood;
  grams: Rational;
}

function gather(into: Map<string, Gathered>, { food, grams: whole }: Part, eaten: Rational): void {
  const grams = multiply(whole, eaten);
  const old = into.get(food.key);
  if (old) old.grams = add(old.grams, grams);
  else into.set(food.key, { food, grams });
}

const entryOf = ({ food, grams }: Gathered, choices: ReadonlyMap<string, Food>): StatementEntry => {
  const known = food.food ?? choices.get(food.name);
  return { name: food.name, ...(known && { food: known }), grams };
};

/** The ledger's side of the ingredient statement of a recipe. */
export function statementInputOf(
  formula: Formula,
  composition: Composition,
  uses: readonly FoodUse[],
  pictured: readonly string[],
): StatementInput {
  const parts = formula.makes.at(-1)?.pot.parts ?? [];
  const dish = newCompound();
  const weighed = weighedAsOf(waysToDish(formula));
  let inedible = ZERO;
  for (const part of parts) {
    const { eaten } = weighed(part);
    inedible = add(inedible, multiply(massOf(part), subtract(ONE, eaten)));
    gather(compoundOf(dish, formula, part).foods, part, eaten);
  }
  const choices = new Map<string, Food>();
  for (const { choice, name, food } of uses) if (choice === 'class' && food) choices.set(name, food);
  const entries = entriesOf(dish, choices);
  const unweighed = unweighedEntries(composition, uses, entries);
  return {
    entries: [...entries, ...unweighed, ...unreadEntries(uses)],
    takenOut: takenOut(composition, uses, parts, unweighed),
    finished: formula.dishGrams && subtract(formula.dishGrams, inedible),
    moistureLost: parts.some((part) => !isZero(part.waterLost) || !isZero(part.alcoholLost)),
    stressed: [formula.title, ...(formula.variant === undefined ? [] : [formula.variant]), ...pictured],
  };
}

/** A dish, or a thing from another file: its own foods, and what it has from other files in turn. */
interface Compound {
  readonly foods: Map<string, Gathered>;
  readonly compounds: Map<string, Compound>;
}

const newCompound = (): Compound => ({ foods: new Map(), compounds: new Map() });

/** The compound into which a part goes, through every file that it came by. */
function compoundOf(dish: Compound, formula: Formula, part: Part): Compound {
  let inside = dish;
  let one: Formula | undefined = formula;
  while (one && part.origin.file !== one.ref.file) {
    const used = usedProduct(one, part);
    if (!used) break;
    const next = inside.compounds.get(used.name) ?? newCompound();
    inside.compounds.set(used.name, next);
    inside = next;
    one = used.formula;
  }
  return inside;
}

function entriesOf({ foods, compounds }: Compound, choices: ReadonlyMap<string, Food>): StatementEntry[] {
  const own = [...foods.values()].map((one) => entryOf(one, choices));
  const others = [...compounds].map(([name, inside]): StatementEntry => {
    const parts = entriesOf(inside, choices);
    return { name, grams: sum(parts.map(({ grams }) => grams ?? ZERO)), parts };
  });
  return [...own, ...others];
}

/** The thing from another file through which a part came. */
function usedProduct(formula: Formula, part: Part): Product | undefined {
  const used = [...formula.products.values()].filter((product) => product.kind === 'used');
  return (
    used.find((product) => product.name === part.via) ??
    used.find((product) =>
      product.parts.some((one) => one.food.key === part.food.key && one.origin.file === part.origin.file),
    )
  );
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
  const namesIn = (entry: StatementEntry): string[] => [entry.name, ...(entry.parts ?? []).flatMap(namesIn)];
  const weighed = new Set(entries.flatMap(namesIn));
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

/** A line that cannot be read may hold an ingredient: it is named as what it is, once. */
function unreadEntries(uses: readonly FoodUse[]): StatementEntry[] {
  const first = uses.find(({ unread }) => unread);
  return first ? [{ name: first.name, grams: undefined }] : [];
}

function namesOf(uses: readonly FoodUse[]): FoodUse[] {
  const byName = new Map<string, FoodUse>();
  for (const use of uses) if (!use.unread && use.how === 'in' && !byName.has(use.name)) byName.set(use.name, use);
  return [...byName.values()];
}
