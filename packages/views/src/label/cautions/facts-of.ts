import { linePlace, type Food, type Formula, type InItem, type Make, type Part, type StepItem } from '@quern/compiler';
import { add, compare, divide, multiply, sign, subtract, sum, ZERO, HUNDRED, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import { waysToDish } from '../allergens.js';
import type { Timetable } from '../../common/timetable.js';
import { compositionOf } from '../composition.js';
import { ALCOHOL_DENSITY, saltOfSodium } from '../energy.js';
import { nutritionOf } from '../nutrition.js';
import type { CautionFacts, CautionFood, Heating, KeepingClaim, PotFacts, Standing } from './facts.js';
import { around, celsius, core, heatLane, isBreadOrDry } from './steps.js';
import { plannedTimes, plannedWays, type PlannedTimes } from './planned.js';
import { Routes, type Step } from './routes.js';

/** What is known of the kitchen and the day besides the recipe. */
export interface CautionWorld {
  /** The kitchen's own temperature in degrees Celsius, if it says. */
  readonly room?: Rational | undefined;
  /** The timetable as it is planned, if somebody planned it. */
  readonly timetable?: Timetable | undefined;
}

/** Makes the account that the cautions look at. */
export function cautionFactsOf(formula: Formula, world: CautionWorld = {}): CautionFacts {
  const { room } = world;
  const plan = world.timetable && plannedTimes(world.timetable);
  const ways = waysToDish(formula);
  const keys = new Set(formula.makes.at(-1)?.pot.parts.map((part) => part.food.key) ?? []);
  const pots = new Map<Make, PotFacts>();
  const makes: { readonly formula: Formula; readonly make: Make }[] = [];
  for (const way of [...ways].reverse()) {
    for (const make of way.formula.makes) {
      if (!way.makes.has(make.index)) continue;
      makes.push({ formula: way.formula, make });
      pots.set(make, potFacts(make));
    }
  }
  const dish: Dish = { keys, routes: new Routes(formula), pots, room, plan };
  // The ledger at its ends takes the time of all the rest together, and most who ask for facts do not ask for this.
  const alcohol = once(() => alcoholOf(formula));
  const standings = once(() =>
    makes.flatMap(({ make }) =>
      stepsOf(make).flatMap((item) => standing(item, make, pots.get(make), false, room) ?? []),
    ),
  );
  const foods: CautionFood[] = [];
  for (const { formula: one, make } of makes) {
    for (const [index, item] of make.items.entries()) {
      if (item.kind !== 'in') continue;
      for (const each of [item, ...item.alternatives]) {
        foods.push(...foodsOf(dish, one, make, index, each));
      }
    }
  }
  return {
    foods,
    pots: [...pots.values()],
    keeps: makes.flatMap(({ formula: one, make }) => keepsOf(make, one === formula && make === formula.makes.at(-1))),
    acidity: acidityOf(makes.map(({ make }) => make)),
    get standings() {
      return standings();
    },
    get alcohol() {
      return alcohol();
    },
    title: formula.title,
    place: linePlace(formula.ref),
  };
}

/** A value that is worked out when it is first asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

const stepsOf = (make: Make): StepItem[] => make.items.filter((item): item is StepItem => item.kind === 'step');

/** What the foods of one dish share. */
interface Dish {
  /** Keys of the foods that stand in the finished dish. */
  readonly keys: ReadonlySet<string>;
  readonly routes: Routes;
  readonly pots: ReadonlyMap<Make, PotFacts>;
  readonly room: Rational | undefined;
  readonly plan: PlannedTimes | undefined;
}

function foodsOf(dish: Dish, formula: Formula, make: Make, index: number, item: InItem): CautionFood[] {
  const { keys, routes, pots, room, plan } = dish;
  const way = once(() => ({
    ...wayOf(routes.after(formula, make, index), pots, room),
    ...(plan && { planned: plannedWays(routes.ways(formula, make, index), plan, pots, room) }),
  }));
  const where: Whereabouts = { note: item.content.note?.text ?? '', make: make.name, place: linePlace(item.ref), way };
  const { source } = item;
  const { grams } = item.weighed;
  if (source.kind === 'food') {
    const { food } = source;
    const inDish = keys.has(food.key) || item.optional || grams === undefined;
    return [new FoodOnItsWay(item.content.name.text, food.food, grams, inDish, where)];
  }
  if (source.kind === 'any') {
    const name = `any ${source.class}`;
    return source.foods.map((food) => new FoodOnItsWay(name, food, grams, true, where));
  }
  if (source.kind === 'culture') {
    return (formula.cultures.get(source.culture)?.parts ?? []).map(
      ({ food, share }) =>
        new FoodOnItsWay(food.name, food.food, grams && multiply(grams, share), keys.has(food.key), where),
    );
  }
  return [];
}

type Way = Pick<CautionFood, 'heatings' | 'standings' | 'planned'>;

/** What heats a food and where it stands, from the steps after it. */
function wayOf(steps: readonly Step[], pots: ReadonlyMap<Make, PotFacts>, room: Rational | undefined): Way {
  const heatings: Heating[] = [];
  const standings: Standing[] = [];
  for (const { make, item } of steps) {
    const heat = heating(item);
    if (heat) heatings.push(heat);
    const stand = standing(item, make, pots.get(make), heatings.length > 0, room);
    if (stand) standings.push(stand);
  }
  return { heatings, standings };
}

/** Where a food goes in, and what becomes of it. */
interface Whereabouts extends Pick<CautionFood, 'note' | 'make' | 'place'> {
  readonly way: () => Way;
}

/** A food, with its way looked at only when a rule asks for it. */
class FoodOnItsWay implements CautionFood {
  readonly flags: CautionFood['flags'];
  readonly roles: CautionFood['roles'];
  readonly note: CautionFood['note'];
  readonly make: CautionFood['make'];
  readonly place: CautionFood['place'];
  readonly #way: () => Way;

  constructor(
    readonly name: CautionFood['name'],
    food: Food | undefined,
    readonly grams: CautionFood['grams'],
    readonly inDish: CautionFood['inDish'],
    where: Whereabouts,
  ) {
    this.flags = food?.flags ?? [];
    this.roles = food?.roles ?? [];
    this.note = where.note;
    this.make = where.make;
    this.place = where.place;
    this.#way = where.way;
  }

  get heatings(): readonly Heating[] {
    return this.#way().heatings;
  }

  get standings(): readonly Standing[] {
    return this.#way().standings;
  }

  get planned(): CautionFood['planned'] {
    return this.#way().planned;
  }
}

// ---------------------------------------------------------------- steps

function heating(item: StepItem): Heating | undefined {
  const lane = heatLane(item);
  if (!lane) return undefined;
  return {
    lane,
    minutes: item.content.time?.high.minutes,
    least: item.content.time?.low.minutes,
    around: around(item),
    core: core(item),
    place: linePlace(item.ref),
  };
}

function standing(
  item: StepItem,
  make: Make,
  pot: PotFacts | undefined,
  afterHeat: boolean,
  room: Rational | undefined,
): Standing | undefined {
  const { lane, time } = item.content;
  if (heatLane(item) || (lane !== 'wait' && lane !== 'hands') || !time) return undefined;
  return {
    minutes: time.high.minutes,
    orMore: time.kind === 'at-least',
    celsius: around(item) ?? room,
    breadOrDry: pot !== undefined && isBreadOrDry(pot),
    afterHeat,
    make: make.name,
    place: linePlace(item.ref),
  };
}

function acidityOf(makes: readonly Make[]): { readonly pH: Rational; readonly place: Place } | undefined {
  let best: { readonly pH: Rational; readonly place: Place } | undefined;
  for (const item of makes.flatMap(stepsOf)) {
    for (const clause of item.content.clauses) {
      if (clause.kind !== 'until' || !clause.acidity) continue;
      if (!best || compare(clause.acidity.value, best.pH) < 0)
        best = { pH: clause.acidity.value, place: linePlace(item.ref) };
    }
  }
  return best;
}

function keepsOf(make: Make, ofDish: boolean): KeepingClaim[] {
  return make.keeps.map(({ ref, content }) => ({
    minutes: content.time.high.minutes,
    celsius: content.at && celsius(content.at.low, content.at.scale),
    note: content.note?.text ?? '',
    make: make.name,
    ofDish,
    place: linePlace(ref),
  }));
}

// ---------------------------------------------------------------- pots

type Nutrient = 'water' | 'sugars' | 'fat' | 'sodium' | 'alcohol';

/** What is in 100 g of a pot; undefined when the table lacks it for a part, or the weight is not known. */
function per100(
  { parts, grams }: Make['pot'],
  inPart: (part: Part, in100: Rational | undefined) => Rational | undefined,
  nutrient: Nutrient,
): Rational | undefined {
  if (!grams || sign(grams) <= 0) return undefined;
  let total = ZERO;
  for (const part of parts) {
    const one = inPart(part, part.food.food?.nutrients[nutrient]);
    if (!one) return undefined;
    total = add(total, one);
  }
  return divide(total, grams);
}

/** A hundred times what a part holds: the table speaks of 100 g, and so does the answer. */
const held = (part: Part, in100: Rational | undefined): Rational | undefined => in100 && multiply(in100, part.grams);
const heldOrNone = (part: Part, in100: Rational | undefined): Rational => held(part, in100) ?? ZERO;
function waterHeld(part: Part, in100: Rational | undefined): Rational | undefined {
  const had = held(part, in100);
  return had && subtract(had, multiply(part.waterLost, HUNDRED));
}

/** Most rules ask for one or two of the figures, so each is worked out when it is asked for. */
function potFacts(make: Make): PotFacts {
  const { parts, grams } = make.pot;
  const water = once(() => per100(make.pot, waterHeld, 'water'));
  const sodium = once(() => per100(make.pot, held, 'sodium'));
  const sugars = once(() => per100(make.pot, held, 'sugars'));
  const fat = once(() => per100(make.pot, held, 'fat'));
  const alcohol = once(() => per100(make.pot, heldOrNone, 'alcohol'));
  const produce = once(() => saltOnProduce(make));
  const all = sum(parts.map((part) => part.grams));
  const flour = sum(parts.filter((part) => part.food.food?.roles.includes('flour')).map((part) => part.grams));
  return {
    make: make.name,
    grams,
    get water() {
      return water();
    },
    get salt() {
      const found = sodium();
      return found && saltOfSodium(found);
    },
    get sugars() {
      return sugars();
    },
    get fat() {
      return fat();
    },
    get alcohol() {
      return alcohol();
    },
    flour: sign(all) > 0 ? divide(flour, all) : ZERO,
    leavened: parts.some((part) => part.culture !== undefined || part.food.food?.roles.includes('leaven')),
    get saltOnProduce() {
      return produce();
    },
    place: linePlace(make.ref),
  };
}

/** Salt put in as salt, on the vegetables and fruit of the make; undefined when there is none of either. */
function saltOnProduce(make: Make): Rational | undefined {
  const weight = (role: 'salt' | 'produce'): Rational =>
    sum(
      make.pot.parts
        .filter((part) => {
          const roles = part.food.food?.roles ?? [];
          return role === 'salt' ? roles.includes('salt') : roles.includes('vegetable') || roles.includes('fruit');
        })
        .map((part) => part.grams),
    );
  const produce = weight('produce');
  const salt = weight('salt');
  return sign(produce) > 0 && sign(salt) > 0 ? divide(multiply(salt, HUNDRED), produce) : undefined;
}

function alcoholOf(formula: Formula): CautionFacts['alcohol'] {
  const nutrition = nutritionOf(compositionOf(formula));
  const inHundred = nutrition.per100('alcohol')?.amount.usual;
  if (!inHundred || sign(inHundred) <= 0) return undefined;
  const { servings } = formula;
  return {
    per100: inHundred,
    perServing: servings && sign(servings) > 0 ? nutrition.perPart('alcohol', servings)?.amount.usual : undefined,
    // By volume, as if the rest were water: exact enough for a drink, and said to be about so much.
    byVolume: byVolume(inHundred),
  };
}

function byVolume(grams: Rational): Rational {
  const alcohol = divide(grams, ALCOHOL_DENSITY);
  const rest = subtract(HUNDRED, grams);
  return divide(multiply(alcohol, HUNDRED), add(alcohol, rest));
}
