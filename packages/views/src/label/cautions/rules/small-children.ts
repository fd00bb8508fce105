import type { CautionFood } from '../facts.js';
import type { CautionRule } from '../rule.js';
import { namesOf, placesOf } from '../words.js';

export const honeyInfants: CautionRule = {
  id: 'honey-infants',
  title: 'Honey, and infants under one year',
  when: 'honey goes in, cooked or not',
  reason: 'Honey can hold spores that cause infant botulism; cooking at home does not destroy them.',
  source: 'INSPQ, From Tiny Tot to Toddler: never under 12 months, cooked or not',
  find({ foods }) {
    const honey = foods.filter((food) => food.inDish && food.flags.includes('honey'));
    if (honey.length === 0) return undefined;
    return {
      weight: 'care',
      text: 'Contains honey: not for infants under one year, cooked or not.',
      places: placesOf(honey),
    };
  },
};

/** Ways of cutting after which a nut is no longer a danger of choking; from memory: ground, flaked, finely chopped. */
const SMALL = /\b(?:ground|flaked|finely chopped|powder|paste|butter|meal|flour|slivered|minced|grated)\b/;

const whole = (food: CautionFood): boolean =>
  food.inDish &&
  (food.flags.includes('whole-nut') || food.roles.includes('nut')) &&
  !SMALL.test(`${food.name} ${food.note}`);

export const wholeNuts: CautionRule = {
  id: 'whole-nuts',
  title: 'Whole nuts, and small children',
  when: 'nuts go in that are not written as ground, flaked, finely chopped or a paste',
  reason: 'Small children can choke on whole or coarsely chopped nuts.',
  source: 'from memory: public health advice on feeding under the age of five',
  find({ foods }) {
    const nuts = foods.filter(whole);
    if (nuts.length === 0) return undefined;
    return {
      weight: 'note',
      text: `Not written as ground or finely chopped: ${namesOf(nuts)}. Not for children under five, who can choke on them.`,
      forEater: `With ${namesOf(nuts)} in pieces: not for children under five, who can choke on them.`,
      places: placesOf(nuts),
    };
  },
};
