import type { Food, NutrientId } from '@quern/compiler';
import { add, divide, greatest, multiply, subtract, sum, ZERO, HUNDRED, type Rational } from '@quern/quantity';
import { annexXiv, atwater, saltOfSodium } from './energy.js';
import type { LabelNutrient } from './nutrient-list.js';

/**
 * What the table says of one nutrient in 100 g of a food: at least `known`, and at most `more` on top of it. `more` is
 * zero when the value is given, and undefined when nothing bounds what is missing.
 */
export interface Content {
  readonly known: Rational;
  readonly more: Rational | undefined;
}

const exactly = (known: Rational): Content => ({ known, more: ZERO });
const MISSING: Content = { known: ZERO, more: undefined };

/** Each label nutrient of a food, per 100 g edible. A food that is not in the table has nothing known. */
export function contentOf(food: Food | undefined, nutrient: LabelNutrient): Content {
  return food ? derivations[nutrient](food) : MISSING;
}

type Derivation = (food: Food) => Content;

/** A nutrient as it stands in the table; missing, it cannot be more than the whole it is a part of. */
function given(id: NutrientId, whole?: (food: Food) => Content): Derivation {
  return (food) => {
    const value = food.nutrients[id];
    if (value) return exactly(value);
    const bound = whole?.(food);
    return bound?.more ? { known: ZERO, more: add(bound.known, bound.more) } : MISSING;
  };
}

const plus = (a: Content, b: Content): Content => ({
  known: add(a.known, b.known),
  more: a.more && b.more ? add(a.more, b.more) : undefined,
});

const times = (a: Content, factor: Rational): Content => ({
  known: multiply(a.known, factor),
  more: a.more && multiply(a.more, factor),
});

/** Total carbohydrate, fibre in it: by difference if the table has it so, else the available with the fibre. */
const carbohydrateTotal: Derivation = (food) => {
  const total = food.nutrients.carbohydrateByDifference;
  if (total) return exactly(total);
  const available = food.nutrients.carbohydrateAvailable;
  return available ? plus(exactly(available), fibre(food)) : MISSING;
};

/** Fibre; where it is missing, no more than the carbohydrate it would be part of, or than the other parts leave room for. */
const fibre: Derivation = (food) => {
  const value = food.nutrients.fibre;
  if (value) return exactly(value);
  const total = food.nutrients.carbohydrateByDifference;
  if (total) return { known: ZERO, more: total };
  const { carbohydrateAvailable, fat: fats, protein: proteins, water, alcohol: spirit, ash } = food.nutrients;
  if (!carbohydrateAvailable || !fats || !proteins) return MISSING;
  const others = sum([carbohydrateAvailable, fats, proteins, water ?? ZERO, spirit ?? ZERO, ash ?? ZERO]);
  return { known: ZERO, more: greatest(subtract(HUNDRED, others), ZERO) };
};

/** Carbohydrate without fibre: given as available, else by difference less the fibre. */
const carbohydrate: Derivation = (food) => {
  const available = food.nutrients.carbohydrateAvailable;
  if (available) return exactly(available);
  const total = food.nutrients.carbohydrateByDifference;
  if (!total) return MISSING;
  const part = food.nutrients.fibre;
  return part ? exactly(greatest(subtract(total, part), ZERO)) : { known: ZERO, more: total };
};

/** Whether a food may hold alcohol though the table does not say how much: a spirit, or flagged so. */
const mayHoldAlcohol = (food: Food): boolean => food.flags.includes('alcohol') || food.roles.includes('spirit');

/** Alcohol. Common practice, no source: where the table gives none, only drinks and what is made with them hold any. */
const alcohol: Derivation = (food) => {
  const value = food.nutrients.alcohol;
  if (value) return exactly(value);
  return mayHoldAlcohol(food) ? MISSING : exactly(ZERO);
};

const fat: Derivation = given('fat');
const protein: Derivation = given('protein');

/** Polyols are taken out of the carbohydrate only where the table gives them; else they count as carbohydrate. */
const polyolsOf = (food: Food): Rational => food.nutrients.polyols ?? ZERO;

/**
 * Energy by Annex XIV from the parts. Where the fibre is missing, the carbohydrate by difference is worth at least what
 * it would be as fibre and at most what it would be as sugar or starch.
 */
function energyByParts(unit: 'kj' | 'kcal'): Derivation {
  return (food) => {
    const polyols = polyolsOf(food);
    const worth = (part: keyof typeof annexXiv): Rational => annexXiv[part][unit];
    const others = [
      times(protein(food), worth('protein')),
      times(fat(food), worth('fat')),
      times(alcohol(food), worth('alcohol')),
    ].reduce(plus);
    const total = food.nutrients.carbohydrateByDifference;
    const starchy = worth('carbohydrateExceptPolyols');
    if (total && !food.nutrients.fibre && !food.nutrients.carbohydrateAvailable) {
      return plus(others, {
        known: multiply(total, worth('fibre')),
        more: multiply(total, subtract(starchy, worth('fibre'))),
      });
    }
    const lessPolyols = multiply(polyols, subtract(worth('polyols'), starchy));
    const available = times(carbohydrate(food), starchy);
    return [
      others,
      { ...available, known: add(available.known, lessPolyols) },
      times(fibre(food), worth('fibre')),
    ].reduce(plus);
  };
}

/** Kilocalories by the general factors 4, 4, 9 and 7, on total carbohydrate. */
const energyGeneral: Derivation = (food) =>
  [
    times(protein(food), atwater.protein),
    times(carbohydrateTotal(food), atwater.carbohydrate),
    times(fat(food), atwater.fat),
    times(alcohol(food), atwater.alcohol),
  ].reduce(plus);

const sugars: Derivation = given('sugars', carbohydrateTotal);

/** Sugars of what is itself a sugar, a syrup or honey. A sweetened bought food is not split. */
const addedSugars: Derivation = (food) => (food.roles.includes('sugar') ? sugars(food) : exactly(ZERO));

const salt: Derivation = (food) => {
  const sodium = food.nutrients.sodium;
  return sodium ? exactly(saltOfSodium(sodium)) : MISSING;
};

const derivations: Readonly<Record<LabelNutrient, Derivation>> = {
  energyKj: energyByParts('kj'),
  energyKcal: energyByParts('kcal'),
  energyGeneral,
  energyTable: given('energyKcal'),
  fat,
  saturates: given('saturates', fat),
  trans: given('trans', fat),
  monounsaturates: given('monounsaturates', fat),
  polyunsaturates: given('polyunsaturates', fat),
  carbohydrate,
  carbohydrateTotal,
  sugars,
  addedSugars,
  fibre,
  protein,
  salt,
  sodium: given('sodium'),
  cholesterol: given('cholesterol'),
  vitaminD: given('vitaminD'),
  calcium: given('calcium'),
  iron: given('iron'),
  potassium: given('potassium'),
  alcohol,
  water: given('water'),
};

/** Content of so many grams. */
export function ofGrams(per100: Rational, grams: Rational): Rational {
  return divide(multiply(per100, grams), HUNDRED);
}
