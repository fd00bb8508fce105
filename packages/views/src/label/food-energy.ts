import type { Formula, LedgerFood } from '@quern/compiler';
import {
  absolute,
  add,
  compare,
  exact,
  multiply,
  rational,
  subtract,
  toDecimal,
  ZERO,
  type Rational,
} from '@quern/quantity';
import { energyByAnnexXiv } from './energy.js';

/** A stated energy that does not follow from the parts, both in kilojoules, whole. */
export interface EnergyMismatch {
  readonly food: LedgerFood;
  readonly parts: string;
  readonly stated: string;
}

const KILOJOULES = exact('4.184'); // thermochemical calorie
// Figures on packets are rounded: a twentieth apart, or 25 kJ, says nothing. Common practice, no source.
const SHARE = rational(1, 20);
const LEAST = rational(25);

/** Foods written in the file whose energy is not what their parts make by Annex XIV. */
export function energyMismatches(formula: Formula): EnergyMismatch[] {
  const foods = new Map<string, LedgerFood>();
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind === 'in' && item.source.kind === 'food' && item.source.food.from === 'file')
        foods.set(item.source.food.key, item.source.food);
    }
  }
  return [...foods.values()].flatMap((food) => mismatchOf(food) ?? []);
}

function mismatchOf(food: LedgerFood): EnergyMismatch | undefined {
  const values = food.food?.nutrients;
  const { energyKcal, fat, protein } = values ?? {};
  const carbohydrate = values?.carbohydrateAvailable ?? values?.carbohydrateByDifference;
  if (!energyKcal || !fat || !protein || !carbohydrate) return undefined;
  const polyols = values?.polyols ?? ZERO;
  const { kj } = energyByAnnexXiv({
    fat,
    protein,
    carbohydrateExceptPolyols: subtract(carbohydrate, polyols),
    polyols,
    fibre: values?.fibre ?? ZERO,
    alcohol: values?.alcohol ?? ZERO,
  });
  const stated = multiply(energyKcal, KILOJOULES);
  // Fibre that the packet does not give can be no more than what the other parts leave room for.
  const room = values?.fibre
    ? ZERO
    : multiply(rational(8), subtract(rational(100), add(fat, add(protein, carbohydrate))));
  const over = subtract(stated, compare(room, ZERO) > 0 ? add(kj, room) : kj);
  const under = subtract(kj, stated);
  const off = compare(over, under) > 0 ? over : under;
  const allowed = multiply(absolute(kj), SHARE);
  if (compare(off, allowed) <= 0 || compare(off, LEAST) <= 0) return undefined;
  return { food, parts: `${toDecimal(kj, 0)} kJ`, stated: `${toDecimal(stated, 0)} kJ` };
}
