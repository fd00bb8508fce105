import {
  linePlace,
  type AllergenId,
  type Food,
  type Formula,
  type InItem,
  type Part,
  type Product,
} from '@quern/compiler';
import type { Place } from '@quern/text';
import {
  allergenTables,
  classesOfFood,
  classesOn,
  speciesNotStated,
  surelyHolds,
  type AllergenClass,
} from './allergen-tables.js';
import type { Market } from './nutrient-list.js';

/** A food that goes in somewhere on the way to the dish, whether or not it is in it at the end. */
export interface FoodUse {
  readonly name: string;
  readonly food?: Food;
  /** `in`: put in. `optional`: may be put in. `or`: may stand in for another. */
  readonly how: 'in' | 'optional' | 'or';
  /** The line leaves the choice open ('any nut'): `class` for the choice itself, `member` for each food it may be. */
  readonly choice?: 'class' | 'member';
  /** Of a member: the choice as the line writes it, 'any nut'. */
  readonly chosenFrom?: string;
  /** A line that cannot be read: what it puts in, nobody knows. */
  readonly unread?: true;
  readonly place: Place;
}

/** How a line that cannot be read is named among the ingredients. */
const UNREAD = 'a line that cannot be read';

/** Why a class is named. */
export interface AllergenReason {
  readonly food: string;
  readonly place: Place;
  readonly why: 'ingredient' | 'optional' | 'alternative' | 'traces' | 'kitchen';
}

export interface AllergenMention {
  /** As printed. */
  readonly name: string;
  readonly class: string;
  readonly status: AllergenClass['status'];
  readonly threshold?: string;
  readonly note?: string;
  readonly because: readonly AllergenReason[];
}

/** What can be said of allergens. There is no list of what is not in the food: nothing here could know it. */
export interface AllergenAccount {
  readonly market: Market;
  readonly source: string;
  readonly contains: readonly AllergenMention[];
  readonly mayContain: readonly AllergenMention[];
  /** Foods of which nothing is known. */
  readonly cannotSay: readonly { readonly name: string; readonly places: readonly Place[] }[];
  /** What the market's list leaves to the writer. */
  readonly notes: readonly string[];
}

/** A kitchen's own declaration of traces. */
export interface KitchenTraces {
  readonly kitchen: string;
  readonly allergens: readonly AllergenId[];
  readonly place: Place;
}

/** Every food on the way to the dish, from all makes that lead to it, the other files' too. */
export function foodUses(formula: Formula): FoodUse[] {
  const uses: FoodUse[] = [];
  for (const { formula: one, makes } of waysToDish(formula)) {
    for (const make of one.makes) {
      const how = makes.get(make.index);
      if (how === undefined) continue;
      for (const item of make.items) if (item.kind === 'in') pushUses(uses, one, item, further(how, item));
    }
  }
  return [...uses, ...unreadLines(formula)];
}

/** Lines on the way to the dish that cannot be read: each may put anything in. */
function unreadLines(formula: Formula): FoodUse[] {
  const places = waysToDish(formula).flatMap(({ formula: one, makes }) =>
    one.makes
      .filter((make) => makes.has(make.index))
      .flatMap(({ pot }) => pot.unknown.filter(({ why }) => why === 'bad-line').map(({ ref }) => linePlace(ref))),
  );
  // What is broken outside a pot, such as the heading of a make, has no line of its own there.
  if (places.length === 0 && formula.broken) places.push(linePlace(formula.ref));
  return places.map((place) => ({ name: UNREAD, how: 'in', unread: true, place }));
}

type How = FoodUse['how'];
const SURE: readonly How[] = ['in', 'optional', 'or'];

/** How sure it is that a line's food gets into the dish, when its make does so surely. */
function further(how: How, item: InItem): How {
  return how === 'in' && item.optional ? 'optional' : how;
}

function pushUses(uses: FoodUse[], formula: Formula, item: InItem, how: FoodUse['how']): void {
  const where = linePlace(item.ref);
  const source = item.source;
  if (source.kind === 'food') {
    uses.push({ name: source.food.name, ...(source.food.food && { food: source.food.food }), how, place: where });
  } else if (source.kind === 'culture') {
    const parts = formula.cultures.get(source.culture)?.parts ?? [];
    for (const { food } of parts)
      uses.push({ name: food.name, ...(food.food && { food: food.food }), how, place: where });
    if (parts.length === 0) uses.push({ name: source.culture, how, place: where });
  } else if (source.kind === 'any') {
    // Any food of the class may be meant: each is an alternative, and what all of them have is surely there.
    const name = `any ${source.class}`;
    const common = commonTo(source.class, name, source.foods);
    uses.push({ name, ...(common && { food: common }), how, choice: 'class', place: where });
    for (const food of source.foods) {
      uses.push({ name: food.name, food, how: 'or', choice: 'member', chosenFrom: name, place: where });
    }
  } else if (!isMade(formula, source.product)) {
    uses.push({ name: source.product, how, place: where });
  }
  for (const other of item.alternatives) pushUses(uses, formula, other, 'or');
}

/**
 * What can be said of a choice left open: allergens, roles and flags that every food of the class has. It has no figures,
 * as nobody knows which food it will be. Undefined when there is no such class.
 */
function commonTo(className: string, name: string, foods: readonly Food[]): Food | undefined {
  const [first, ...others] = foods;
  if (!first) return undefined;
  const shared = <T>(of: (food: Food) => readonly T[]): T[] =>
    of(first).filter((one) => others.every((food) => of(food).includes(one)));
  return {
    id: `any ${className}`,
    name,
    synonyms: [],
    roles: shared((food) => food.roles),
    classes: shared((food) => food.classes),
    nutrients: {},
    volumes: [],
    pieces: [],
    allergens: shared(surelyHolds),
    traces: [],
    flags: shared((food) => food.flags),
    sources: [],
  };
}

/** Whether a product's make is at hand; one from a file that cannot be read is not. */
export function isMade(formula: Formula, name: string): boolean {
  const product = formula.products.get(name);
  return product !== undefined && (product.makeIndex >= 0 || product.formula !== undefined);
}

/** The makes of one recipe that lead to the dish, and how surely: one that an optional line draws may be left out. */
export interface Way {
  readonly formula: Formula;
  readonly makes: ReadonlyMap<number, How>;
}

/** Every make on the way to the dish: the last make and every make whose product is drawn, in other files too. */
export function waysToDish(formula: Formula): Way[] {
  const found = new Map<string, { readonly formula: Formula; readonly makes: Map<number, How> }>();
  const visit = (one: Formula, index: number, how: How): void => {
    const known = found.get(one.id) ?? { formula: one, makes: new Map<number, How>() };
    found.set(one.id, known);
    const before = known.makes.get(index);
    if (index < 0 || (before !== undefined && SURE.indexOf(before) <= SURE.indexOf(how))) return;
    known.makes.set(index, how);
    for (const item of one.makes[index]?.items ?? []) {
      if (item.kind !== 'in') continue;
      visitSource(one, item, further(how, item));
      for (const other of item.alternatives) visitSource(one, other, 'or');
    }
  };
  const visitSource = (one: Formula, item: InItem, how: How): void => {
    if (item.source.kind !== 'product') return;
    const product = one.products.get(item.source.product);
    if (!product) return;
    if (product.formula) for (const index of makesOfUsed(product, product.formula)) visit(product.formula, index, how);
    else visit(one, product.makeIndex, how);
  };
  visit(formula, formula.makes.length - 1, 'in');
  return [...found.values()];
}

/**
 * The makes of another file that a thing drawn from it may come from: the dish's, if it is made of the same foods as the
 * dish; else any, so that nothing is overlooked.
 */
function makesOfUsed(product: Product, formula: Formula): readonly number[] {
  const keys = (parts: readonly Part[]): string => [...new Set(parts.map((part) => part.food.key))].sort().join('|');
  const last = formula.makes.at(-1);
  if (last && keys(product.parts) === keys(last.pot.parts)) return [last.index];
  return formula.makes.map((make) => make.index);
}

/** The account of allergens by a market's list on a day. */
export function allergensOf(
  uses: readonly FoodUse[],
  market: Market,
  options: { readonly day?: string; readonly kitchens?: readonly KitchenTraces[] } = {},
): AllergenAccount {
  const classes = classesOn(market, options.day);
  const contains = new Mentions();
  const may = new Mentions();
  const cannotSay = new Map<string, Place[]>();
  const notes = new Set<string>();
  for (const use of uses) {
    const allergens = surelyHolds(use.food);
    if (!use.food?.allergens) {
      cannotSay.set(use.name, [...(cannotSay.get(use.name) ?? []), use.place]);
    }
    const name = use.food?.name ?? use.name;
    const into = use.how === 'in' ? contains : may;
    const why = use.how === 'in' ? 'ingredient' : use.how === 'optional' ? 'optional' : 'alternative';
    for (const one of classesOfFood(classes, allergens, name))
      into.add(one.class, one.name, { food: use.name, place: use.place, why });
    for (const one of classesOfFood(classes, use.food?.traces ?? [], ''))
      may.add(one.class, one.name, { food: use.name, place: use.place, why: 'traces' });
    for (const family of speciesNotStated(classes, allergens, name)) {
      notes.add(`${use.name}: this list names ${family} by their kind; say which it is`);
    }
  }
  for (const kitchen of options.kitchens ?? []) {
    for (const one of classesOfFood(classes, kitchen.allergens, '')) {
      may.add(one.class, one.name, { food: kitchen.kitchen, place: kitchen.place, why: 'kitchen' });
    }
  }
  const named = new Set(contains.list().map((one) => one.name));
  const order = (one: AllergenMention): number => classes.findIndex((each) => each.name === one.class);
  const inOrder = (list: AllergenMention[]): AllergenMention[] => list.sort((a, b) => order(a) - order(b));
  return {
    market,
    source: allergenTables[market].source,
    contains: inOrder(contains.list()),
    // What is certain need not be said again as possible.
    mayContain: inOrder(may.list().filter((one) => !named.has(one.name))),
    cannotSay: [...cannotSay].map(([name, places]) => ({ name, places })),
    notes: [...notes],
  };
}

/** Mentions by printed name. */
class Mentions {
  readonly #byName = new Map<string, AllergenMention & { because: AllergenReason[] }>();

  add(one: AllergenClass, name: string, reason: AllergenReason): void {
    const old = this.#byName.get(name);
    if (old) {
      if (!old.because.some((each) => each.food === reason.food && each.why === reason.why)) old.because.push(reason);
      return;
    }
    this.#byName.set(name, {
      name,
      class: one.name,
      status: one.status,
      ...(one.threshold !== undefined && { threshold: one.threshold }),
      ...(one.note !== undefined && { note: one.note }),
      because: [reason],
    });
  }

  list(): AllergenMention[] {
    return [...this.#byName.values()];
  }
}
