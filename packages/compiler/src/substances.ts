import { add, divide, HUNDRED, ONE, sign, ZERO, type Rational } from '@quern/quantity';
import type { OutLine, StepLine } from '@quern/syntax';
import type { BoundIn, Target } from './bind.js';
import { isLiquid, massOf, totalMass, waterIn } from './ledger/parts.js';
import type { LedgerFood, Part } from './model.js';
import { NO_WORDS, pickOf, volumeSpread, type Pick } from './weighing.js';

/*
 * What foods are to the ledger: flour, water, liquid; and how a line names them.
 */

/** `count X as …` of a file, by the food's key. */
export type Counts = ReadonlyMap<string, 'flour' | 'water' | 'other'>;

/** Whether a food is flour in this file: by the table, unless a `count` line says otherwise. */
export function countsAsFlour(food: LedgerFood, counts: Counts): boolean {
  const said = counts.get(food.key);
  if (said) return said === 'flour';
  return food.food?.roles.includes('flour') ?? false;
}

export const NOTHING_TO_WEIGH_BY: LedgerFood = { key: 'nothing', name: '', from: 'unknown' };

/** The food to weigh by for a culture or a class; they have no table weights of their own. */
export function foodForWeighing(item: BoundIn): LedgerFood {
  const { source, content } = item;
  if (source.kind === 'any') return { key: `any:${source.class}`, name: `any ${source.class}`, from: 'table' };
  return { key: `name:${content.name.text}`, name: content.name.text, from: 'unknown' };
}

export function nameOfTarget(target: Target, written: string | undefined): string {
  return (
    written ??
    (target.kind === 'product' || target.kind === 'culture'
      ? target.name
      : target.kind === 'food'
        ? target.food.name
        : target.kind)
  );
}

export function tally(map: Map<string, Rational>, key: string, grams: Rational): void {
  map.set(key, add(map.get(key) ?? ZERO, grams));
}

export function isWater(food: LedgerFood | undefined): boolean {
  return food?.food?.id === 'water';
}

/** Grams of food water in a part: water itself, or the water of a food that the file counts as water. */
export function foodWater(part: Part, counts: Counts): Rational {
  if (counts.get(part.food.key) === 'water') return waterIn(part) ?? massOf(part);
  return isWater(part.food) ? massOf(part) : ZERO;
}

/** Share named by an out line's amount, if it is a percent or a share. */
export function shareWritten(amount: OutLine['amount'], pick: Pick): Rational | undefined {
  if (amount.kind === 'percent') return divide(pickOf(amount.range, pick), HUNDRED);
  if (amount.kind === 'share' && amount.word !== 'rest')
    return pickOf({ low: amount.low ?? ONE, high: amount.high ?? ONE }, pick);
  return undefined;
}

export function isHeating(step: StepLine): boolean {
  if (step.lane === 'oven' || step.lane === 'hob') return true;
  return step.clauses.some(
    (clause) => clause.kind === 'using' && clause.things.some((thing) => /^(?:hob|ring|oven)$/.test(thing.name)),
  );
}

/** Grams a millilitre of a mixture of liquids: volumes add up, dissolved sugar and salt add weight alone. Undefined when a liquid's is unknown. */
export function liquidDensity(parts: readonly Part[]): Rational | undefined {
  let volume = ZERO;
  for (const part of parts) {
    if (!isLiquid(part)) continue;
    const spread = volumeSpread(part.food, NO_WORDS);
    if (!spread) return undefined;
    volume = add(volume, divide(massOf(part), spread.usual));
  }
  return sign(volume) > 0 ? divide(totalMass(parts), volume) : undefined;
}

export function waterOf(parts: readonly Part[]): LedgerFood {
  return parts.find((part) => isWater(part.food))?.food ?? PLAIN_WATER;
}

/** Water drawn out of solids when no water was put in: known by its nature. */
const PLAIN_WATER: LedgerFood = {
  key: 'water',
  name: 'water',
  from: 'table',
  food: {
    id: 'water',
    name: 'water',
    synonyms: [],
    roles: ['liquid'],
    classes: [],
    nutrients: { water: HUNDRED },
    volumes: [],
    pieces: [],
    allergens: [],
    traces: [],
    flags: [],
    sources: [],
  },
};
