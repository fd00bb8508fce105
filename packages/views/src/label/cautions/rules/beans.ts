import { add, compare, ZERO, type Rational } from '@quern/quantity';
import type { CautionFood } from '../facts.js';
import { kidneyBeans as figures } from '../figures.js';
import type { CautionRule } from '../rule.js';
import { namesOf, placesOf, sentence, time } from '../words.js';

/** Minutes at the boil, each step at its shortest: on the hob, `at` 100 °C or more. A hob line without a figure may simmer. */
function boiled(food: CautionFood): Rational {
  return food.heatings
    .filter(({ lane, around }) => lane === 'hob' && around !== undefined && compare(around, figures.celsius) >= 0)
    .reduce((sum, { least }) => add(sum, least ?? ZERO), ZERO);
}

const soaked = (food: CautionFood): boolean =>
  food.standings.some(({ afterHeat, minutes }) => !afterHeat && compare(minutes, figures.soak) >= 0);

export const kidneyBeans: CautionRule = {
  id: 'kidney-beans',
  title: 'Dried kidney beans',
  when: 'dried kidney beans and their like go in, unless the lines show a soak of 5 h and then 30 min on the hob at 100 °C; a shorter boil, of 10 min or more, is a note, none is more pressing. Tinned beans are cooked',
  reason:
    'They hold a poison (phytohaemagglutinin) that a full boil destroys and a slow cooker or a low oven does not.',
  source:
    'FDA, Bad Bug Book, phytohaemagglutinin: soak at least 5 h, boil in fresh water at least 30 min; 10 min by consumer pages',
  find({ foods }) {
    const beans = foods.filter((food) => food.flags.includes('kidney-bean'));
    const unsafe = beans.filter((food) => compare(boiled(food), figures.boil) < 0 || !soaked(food));
    const [first] = unsafe;
    if (!first) return undefined;
    const shortest = unsafe.map(boiled).reduce((a, b) => (compare(a, b) <= 0 ? a : b), boiled(first));
    const boils = compare(shortest, figures.boilElsewhere) >= 0;
    const written = boils ? ` The lines boil for ${time(shortest)}.` : '';
    return {
      weight: boils ? 'note' : 'care',
      text: `${sentence(namesOf(unsafe))}: soak at least ${time(figures.soak)}, pour the water off, and boil hard in fresh water for at least ${time(figures.boil)} before any slow cooking.${written}`,
      places: placesOf(unsafe),
    };
  },
};
