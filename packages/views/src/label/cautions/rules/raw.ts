import { compare, rational, type Rational } from '@quern/quantity';
import type { CautionFood } from '../facts.js';
import { coreTemperatures } from '../figures.js';
import type { CautionRule } from '../rule.js';
import { agree, bothDegrees, namesOf, placesOf } from '../words.js';

/*
 * Common practice, no source: something that has been ten minutes in an oven of 120 °C or more, or that was taken to the
 * published temperature inside, is not raw. Other heat may leave an egg lightly cooked.
 */
const OVEN_CELSIUS = rational(120);
const OVEN_MINUTES = rational(10);

type Doneness = 'raw' | 'perhaps' | 'cooked';

function doneness(food: CautionFood, core: Rational): Doneness {
  if (food.heatings.length === 0) return 'raw';
  const through = food.heatings.some(
    (heat) =>
      (heat.core && compare(heat.core, core) >= 0) ||
      (!heat.core &&
        heat.lane === 'oven' &&
        heat.around &&
        compare(heat.around, OVEN_CELSIUS) >= 0 &&
        heat.minutes &&
        compare(heat.minutes, OVEN_MINUTES) >= 0),
  );
  return through ? 'cooked' : 'perhaps';
}

const staying = (foods: readonly CautionFood[], flag: string): CautionFood[] =>
  foods.filter((food) => food.inDish && food.flags.includes(flag));

const NOT_FOR_SOME = 'not for the very young, the old, the pregnant and the ill';

export const rawEgg: CautionRule = {
  id: 'raw-egg',
  title: 'Raw or lightly cooked egg',
  when: 'shell egg goes in and no later step is shown to cook it through (71 °C inside, or ten minutes in an oven of 120 °C)',
  reason: 'Shell eggs can carry salmonella; the very young, the old, the pregnant and the ill are hit hardest.',
  source:
    'FDA, Assuring the Safety of Eggs (IFS01, 2020); USDA FSIS safe minimum internal temperatures, egg dishes 160 °F',
  find({ foods }) {
    const eggs = staying(foods, 'raw-egg');
    const raw = eggs.filter((food) => doneness(food, coreTemperatures.eggDishes) === 'raw');
    const doubtful = eggs.filter((food) => doneness(food, coreTemperatures.eggDishes) === 'perhaps');
    if (raw.length > 0) {
      return {
        weight: 'care',
        text: `The ${namesOf(raw)} ${agree(raw, 'stays', 'stay')} raw. For the very young, the old, the pregnant and the ill use pasteurised egg; others should know.`,
        forEater: `With raw ${namesOf(raw)}: ${NOT_FOR_SOME}.`,
        places: placesOf(raw),
      };
    }
    if (doubtful.length === 0) return undefined;
    return {
      weight: 'note',
      text: `The ${namesOf(doubtful)} may stay lightly cooked. Cook to ${bothDegrees(coreTemperatures.eggDishes)}, or use pasteurised egg.`,
      forEater: `With ${namesOf(doubtful)} that may be lightly cooked: ${NOT_FOR_SOME}.`,
      places: placesOf(doubtful),
    };
  },
};

export const rawFlour: CautionRule = {
  id: 'raw-flour',
  title: 'Raw flour',
  when: 'flour goes in and no later step heats it',
  reason: 'Flour is a raw food; grain can carry bacteria that only heat kills.',
  source: 'FDA, Handling Flour Safely',
  find({ foods }) {
    const raw = foods.filter(
      (food) =>
        food.inDish && (food.flags.includes('raw-flour') || food.roles.includes('flour')) && food.heatings.length === 0,
    );
    if (raw.length === 0) return undefined;
    return {
      weight: 'care',
      text: `The ${namesOf(raw)} ${agree(raw, 'is', 'are')} eaten without being heated. Raw flour, dough and batter are not to be eaten or tasted.`,
      forEater: `The ${namesOf(raw)} ${agree(raw, 'is', 'are')} not heated.`,
      places: placesOf(raw),
    };
  },
};

export const rawMeatOrFish: CautionRule = {
  id: 'raw-meat-or-fish',
  title: 'Meat or fish that is not cooked',
  when: 'raw meat, poultry, fish or shellfish goes in and no later step heats it',
  reason: 'Raw meat and fish can carry bacteria and parasites; some people should not eat them.',
  source: 'Washington State University Extension, foods to avoid for high-risk groups',
  find({ foods }) {
    const raw = foods.filter(
      (food) =>
        food.inDish &&
        food.heatings.length === 0 &&
        ['raw-meat', 'poultry', 'raw-fish'].some((flag) => food.flags.includes(flag)),
    );
    if (raw.length === 0) return undefined;
    return {
      weight: 'care',
      text: `No step heats the ${namesOf(raw)}. Serving meat or fish raw needs a supply and a practice meant for it; the very young, the old, the pregnant and the ill should not eat it.`,
      forEater: `The ${namesOf(raw)} ${agree(raw, 'is', 'are')} not heated: ${NOT_FOR_SOME}.`,
      places: placesOf(raw),
    };
  },
};

const DELICATE = ['unpasteurised', 'soft-ripened-cheese', 'sprouts', 'ready-to-eat-fish'];

export const unpasteurised: CautionRule = {
  id: 'unpasteurised',
  title: 'Not for everybody',
  when: 'something unpasteurised, a soft ripened cheese, raw sprouts or cold-cured fish stays in the dish unheated',
  reason: 'They can carry listeria and other bacteria, which hit the pregnant, the very young, the old and the ill.',
  source: 'Washington State University Extension, foods to avoid for high-risk groups; cold-cured fish from memory',
  find({ foods }) {
    const raw = DELICATE.flatMap((flag) => staying(foods, flag)).filter((food) => food.heatings.length === 0);
    if (raw.length === 0) return undefined;
    return {
      weight: 'note',
      text: `The ${namesOf(raw)} ${agree(raw, 'is', 'are')} not heated: not for the very young, the old, the pregnant and the ill.`,
      places: placesOf(raw),
    };
  },
};

export const cookBeforeEating: CautionRule = {
  id: 'cook-before-eating',
  title: 'To be cooked before it is eaten',
  when: 'something that makes people ill when raw (cassava, taro, dried pulses and their like) stays in the dish unheated',
  reason: 'Some plants hold poisons that only cooking takes away.',
  source: 'from memory',
  find({ foods }) {
    const raw = foods.filter(
      (food) =>
        food.inDish &&
        food.heatings.length === 0 &&
        ['cook-before-eating', 'cassava', 'dried-pulse'].some((flag) => food.flags.includes(flag)),
    );
    if (raw.length === 0) return undefined;
    return {
      weight: 'care',
      text: `No step cooks the ${namesOf(raw)}, which should not be eaten raw.`,
      places: placesOf(raw),
    };
  },
};
