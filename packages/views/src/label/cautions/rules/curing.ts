import { add, compare, ZERO, toDecimal, type Rational } from '@quern/quantity';
import { nitrite, nitritePartsPerMillion } from '../figures.js';
import type { CautionFood } from '../facts.js';
import type { CautionRule } from '../rule.js';
import { namesOf, placesOf, sentence } from '../words.js';

const total = (foods: readonly CautionFood[]): Rational | undefined =>
  foods.reduce<Rational | undefined>((sum, food) => sum && food.grams && add(sum, food.grams), ZERO);

export const curingSalt: CautionRule = {
  id: 'curing-salt',
  title: 'Curing salt',
  when: 'a curing salt with nitrite goes in',
  reason:
    'Nitrite is poisonous in small excess, and too little does not protect: it is weighed to a tenth of a gram, never guessed.',
  source:
    "USDA FSIS Processing Inspectors' Calculations Handbook: at most 156 parts in a million of the raw meat when minced, 200 immersed or pumped, 625 dry cured; curing salt with 6.25 % sodium nitrite",
  find({ foods }) {
    const cure = foods.filter((food) => food.flags.includes('curing-salt'));
    if (cure.length === 0) return undefined;
    const meat = foods.filter(
      (food) => food.roles.includes('meat') || food.flags.includes('raw-meat') || food.flags.includes('poultry'),
    );
    const salt = total(cure);
    const block = total(meat);
    const known = salt && block && block.n > 0n ? nitritePartsPerMillion(salt, block) : undefined;
    const over = known !== undefined && compare(known, nitrite.comminuted) > 0;
    const figure = known
      ? ` If it holds 6.25 % nitrite, this is ${toDecimal(known, 0)} parts in a million of the raw meat; the limits are 156 for minced, 200 for immersed or pumped and 625 for dry-cured meat.`
      : ' The nitrite that goes in cannot be worked out, as a weight is not known.';
    return {
      weight: over ? 'check' : 'care',
      text: `${sentence(namesOf(cure))}: check the strength on the packet, weigh to a tenth of a gram, and follow a tested recipe; curing for sale is licensed work in many places.${figure}`,
      places: placesOf(cure),
    };
  },
};
