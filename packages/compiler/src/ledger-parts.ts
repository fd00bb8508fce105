import {
  add, compare, divide, isZero, multiply, subtract, sign, ZERO, ONE, HUNDRED, type Rational,
} from '@quern/quantity';
import type { LedgerFood, LineRef, Part } from './model.js';

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

/** Grams of water still in a part; undefined when the table does not give the food's water. */
export function waterIn(part: Part): Rational | undefined {
  const per100 = part.food.food?.nutrients.water;
  if (!per100) return undefined;
  return subtract(divide(multiply(part.grams, per100), HUNDRED), part.waterLost);
}

/** Grams of alcohol still in a part; zero when the food's alcohol is not given. */
export function alcoholIn(part: Part): Rational {
  const per100 = part.food.food?.nutrients.alcohol;
  if (!per100 || per100.n === 0n) return ZERO;
  return subtract(divide(multiply(part.grams, per100), HUNDRED), part.alcoholLost);
}

function partKey(part: Part): string {
  return `${part.food.key}|${part.origin.file}:${part.origin.line.number}|${part.via}|${part.culture ?? ''}`;
}

/** The parts that stand in one pot, in the order they came. */
export class PotParts {
  readonly #parts = new Map<string, Part>();
  #total: Rational = ZERO;

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
    this.#parts.set(key, old ? merge(old, part) : part);
  }

  /** Replaces parts one by one; a part of no mass is forgotten. Returns nothing: the caller knows what it took. */
  replace(change: (part: Part) => Part): void {
    let total = ZERO;
    for (const [key, part] of this.#parts) {
      const changed = change(part);
      const mass = massOf(changed);
      if (isZero(changed.grams)) this.#parts.delete(key);
      else if (changed !== part) this.#parts.set(key, changed);
      total = add(total, mass);
    }
    this.#total = total;
  }

  /** Takes a share of each part that `chosen` accepts; gives back what was taken. */
  take(share: Rational, chosen: (part: Part) => boolean = () => true): Part[] {
    const taken: Part[] = [];
    const rest = subtract(ONE, share);
    this.replace((part) => {
      if (!chosen(part)) return part;
      taken.push(timesPart(part, share));
      return timesPart(part, rest);
    });
    return taken;
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
  water(chosen: (part: Part) => boolean = () => true): Rational {
    let total = ZERO;
    for (const part of this.#parts.values()) if (chosen(part)) total = add(total, waterIn(part) ?? ZERO);
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
  dry(grams: Rational, chosen: (part: Part) => boolean = () => true): void {
    const held = this.water(chosen);
    if (sign(held) <= 0) return;
    const share = divide(grams, held);
    this.replace((part) => {
      const water = chosen(part) ? waterIn(part) : undefined;
      if (!water || sign(water) <= 0) return part;
      return { ...part, waterLost: add(part.waterLost, multiply(water, share)) };
    });
  }
}

function merge(a: Part, b: Part): Part {
  const grams = add(a.grams, b.grams);
  // Heat is remembered by the mean, weighted by mass: exact when either portion was heated alone.
  const heatedMinutes =
    compare(a.heatedMinutes, b.heatedMinutes) === 0
      ? a.heatedMinutes
      : divide(add(multiply(a.heatedMinutes, a.grams), multiply(b.heatedMinutes, b.grams)), grams);
  return {
    ...a,
    grams,
    waterLost: add(a.waterLost, b.waterLost),
    alcoholLost: add(a.alcoholLost, b.alcoholLost),
    heatedMinutes,
  };
}

export function newPart(food: LedgerFood, origin: LineRef, grams: Rational, culture?: string): Part {
  const part = { food, origin, via: '', grams, waterLost: ZERO, alcoholLost: ZERO, heatedMinutes: ZERO };
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
