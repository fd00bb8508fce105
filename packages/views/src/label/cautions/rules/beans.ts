import { kidneyBeans as figures } from '../figures.js';
import type { CautionRule } from '../rule.js';
import { namesOf, placesOf, sentence, time } from '../words.js';

export const kidneyBeans: CautionRule = {
  id: 'kidney-beans',
  title: 'Dried kidney beans',
  when: 'dried kidney beans go in, however they are cooked: no line says that water boils',
  reason:
    'They hold a poison (phytohaemagglutinin) that a full boil destroys and a slow cooker or a low oven does not.',
  source: 'FDA, Bad Bug Book, phytohaemagglutinin: soak at least 5 h, boil in fresh water at least 30 min',
  find({ foods }) {
    const beans = foods.filter((food) => food.flags.includes('kidney-bean'));
    if (beans.length === 0) return undefined;
    return {
      weight: 'care',
      text: `${sentence(namesOf(beans))}: soak at least ${time(figures.soak)}, pour the water off, and boil hard in fresh water for at least ${time(figures.boil)} before any slow cooking.`,
      places: placesOf(beans),
    };
  },
};
