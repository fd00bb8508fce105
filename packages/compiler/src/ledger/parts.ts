import {
  add,
  divide,
  isZero,
  least,
  multiply,
  subtract,
  sign,
  ZERO,
  ONE,
  HUNDRED,
  type Rational,
} from '@quern/quantity';
import type { Food } from '../food-book.js';
import type { LedgerFood, LineRef, Part } from '../model.js';

/*
 * Arithmetic on the parts of a pot: take evenly, take from one food, take liquid, take water. Everything exact.
 * A pot's parts are kept by food, origin and the product through which they came, so that any gram can be traced.
 */

/** Grams of a part that stand in the pot now. */
export function massOf(part: Part): Rational {
  if (part.waterLost.n === 0n && part.alcoholLost.n === 0n) return part.grams;
  return subtract(part.grams, add(part.waterLost, part.alcoholLost));
}

export function totalMass(parts: Iterable<Part>): Rational {
  let total = ZERO;
  for (const part of parts) total = add(total, massOf(part));
  return total;
}

/** The part, times a share between 0 and 1 (or a scale above). */
export function timesPart(part: Part, share: Rational): Part {
  if (share.n === 1n && share.d === 1n) return part;
  return {
    ...part,
    grams: multiply(part.grams, share),
    waterLost: multiply(part.waterLost, share),
    alcoholLost: multiply(part.alcoholLost, share),
  };
}

interface Contents {
  readonly water: Rational | undefined;
  readonly alcohol: Rational;
}

const contents = new WeakMap<Food, Contents>();

/** Grams of water and of alcohol in a gram of a food, worked out once a food. */
function contentsOf(food: Food): Contents {
  const known = contents.get(food);
  if (known) return known;
  const { water, alcohol } = food.nutrients;
  const made = {
    water: water ? divide(water, HUNDRED) : undefined,
    alcohol: alcohol ? divide(alcohol, HUNDRED) : ZERO,
  };
  contents.set(food, made);
  return made;
}

/** Grams of water still in a part; undefined when the table does not give the food's water. */
export function waterIn(part: Part): Rational | undefined {
  const share = part.food.food ? contentsOf(part.food.food).water : undefined;
  return share ? subtract(multiply(part.grams, share), part.waterLost) : undefined;
}

/** Grams of alcohol still in a part; zero when the food's alcohol is not given. */
export function alcoholIn(part: Part): Rational {
  const share = part.food.food ? contentsOf(part.food.food).alcohol : ZERO;
  return share.n === 0n ? ZERO : subtract(multiply(part.grams, share), part.alcoholLost);
}

/** Whether the table gives a part's food alcohol, whatever has boiled off. */
const isSpirited = (part: Part): boolean => part.food.food !== undefined && contentsOf(part.food.food).alcohol.n > 0n;

function partKey(part: Part): string {
  return `${part.food.key}|${part.origin.file}:${part.origin.line.number}|${part.via}|${part.culture ?? ''}`;
}

/** The parts that stand in one pot, in the order they came. */
export class PotParts {
  readonly #parts = new Map<string, Part>();
  #total: Rational = ZERO;
  #spirit = false;

  get total(): Rational {
    return this.#total;
  }

  list(): Part[] {
    return [...this.#parts.values()];
  }

  put(part: Part): void {
    const key = partKey(part);
    const old = this.#parts.get(key);
    this.#total = add(this.#total, massOf(part));
    this.#spirit ||= isSpirited(part);
    this.#parts.set(key, old ? merge(old, part) : part);
  }

  /**
   * Takes a share of each part that `chosen` accepts; gives back what was taken. The total is kept by what moves, for
   * summing many fractions anew costs more than all the rest.
   */
  take(share: Rational, chosen?: (part: Part) => boolean): Part[] {
    const taken: Part[] = [];
    const rest = subtract(ONE, share);
    let mass = ZERO;
    for (const [key, part] of this.#parts) {
      if (chosen && !chosen(part)) continue;
      taken.push(timesPart(part, share));
      if (chosen) mass = add(mass, massOf(part));
      if (isZero(rest)) this.#parts.delete(key);
      else this.#parts.set(key, timesPart(part, rest));
    }
    this.#total = subtract(this.#total, multiply(chosen ? mass : this.#total, share));
    return taken;
  }

  /** Whether anything with alcohol in it ever went in; without, no heat need be remembered. */
  get holdsAlcohol(): boolean {
    return this.#spirit;
  }

  /** What stands in the pot now, to tell later what came after. */
  snapshot(): { readonly grams: Rational; readonly liquid: boolean; holds(part: Part): boolean } {
    const keys = new Set(this.#parts.keys());
    return { grams: this.#total, liquid: this.has(isLiquid), holds: (part) => keys.has(partKey(part)) };
  }

  /** Remembers that everything has been on the heat for some minutes more. */
  heat(minutes: Rational): void {
    for (const [key, part] of this.#parts) {
      if (!isSpirited(part)) continue;
      this.#parts.set(key, {
        ...part,
        heatedMinutes: add(part.heatedMinutes, minutes),
        unstirredMinutes: part.stirred ? part.unstirredMinutes : add(part.unstirredMinutes, minutes),
      });
    }
  }

  /** Remembers that everything has been stirred. */
  stirIn(): void {
    for (const [key, part] of this.#parts) {
      if (!part.stirred && isSpirited(part)) this.#parts.set(key, { ...part, stirred: true });
    }
  }

  /**
   * Lets alcohol leave each part until no more stands in it than `share` of what went in; undefined leaves a part as it
   * is. Gives back the sum.
   */
  leaveAlcohol(share: (part: Part) => Rational | undefined): Rational {
    let gone = ZERO;
    for (const [key, part] of this.#parts) {
      const alcohol = alcoholIn(part);
      const stays = sign(alcohol) > 0 ? share(part) : undefined;
      if (!stays) continue;
      const lost = subtract(alcohol, multiply(stays, add(alcohol, part.alcoholLost)));
      if (sign(lost) <= 0) continue;
      gone = add(gone, lost);
      this.#parts.set(key, { ...part, alcoholLost: add(part.alcoholLost, lost) });
    }
    this.#total = subtract(this.#total, gone);
    return gone;
  }

  massWhere(chosen: (part: Part) => boolean): Rational {
    let total = ZERO;
    for (const part of this.#parts.values()) if (chosen(part)) total = add(total, massOf(part));
    return total;
  }

  has(chosen: (part: Part) => boolean): boolean {
    for (const part of this.#parts.values()) if (chosen(part)) return true;
    return false;
  }

  /** Water that could still leave: of everything whose water the table gives. */
  water(chosen?: (part: Part) => boolean): Rational {
    let total = ZERO;
    for (const part of this.#parts.values()) if (!chosen || chosen(part)) total = add(total, waterIn(part) ?? ZERO);
    return total;
  }

  alcohol(): Rational {
    let total = ZERO;
    for (const part of this.#parts.values()) total = add(total, alcoholIn(part));
    return total;
  }

  /**
   * Lets `grams` of water leave, from each part in proportion to the water it still holds.
   * The caller has made sure that there is as much.
   */
  dry(grams: Rational, chosen?: (part: Part) => boolean): void {
    const held = this.water(chosen);
    if (sign(held) <= 0) return;
    const share = divide(grams, held);
    for (const [key, part] of this.#parts) {
      const water = !chosen || chosen(part) ? waterIn(part) : undefined;
      if (water && sign(water) > 0)
        this.#parts.set(key, { ...part, waterLost: add(part.waterLost, multiply(water, share)) });
    }
    this.#total = subtract(this.#total, grams);
  }
}

function merge(a: Part, b: Part): Part {
  return {
    ...a,
    grams: add(a.grams, b.grams),
    waterLost: add(a.waterLost, b.waterLost),
    alcoholLost: add(a.alcoholLost, b.alcoholLost),
    // The alcohol is exact; what further heat may drive off goes by the portion that had less of it.
    heatedMinutes: least(a.heatedMinutes, b.heatedMinutes),
    unstirredMinutes: least(a.unstirredMinutes, b.unstirredMinutes),
    stirred: a.stirred && b.stirred,
  };
}

export function newPart(food: LedgerFood, origin: LineRef, grams: Rational, culture?: string): Part {
  const part: Part = {
    food,
    origin,
    via: '',
    grams,
    waterLost: ZERO,
    alcoholLost: ZERO,
    heatedMinutes: ZERO,
    unstirredMinutes: ZERO,
    stirred: false,
  };
  return culture === undefined ? part : { ...part, culture };
}

/** Whether a part belongs to the liquid phase: a liquid by the table, or what dissolves in it. */
export function isLiquid(part: Part): boolean {
  return part.food.food?.roles.includes('liquid') ?? false;
}
export function isDissolved(part: Part): boolean {
  const roles = part.food.food?.roles;
  return roles !== undefined && !roles.includes('liquid') && (roles.includes('salt') || roles.includes('sugar'));
}
