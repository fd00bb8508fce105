import { compare, isZero } from '@quern/quantity';
import { STATED_STRENGTH } from '../figures.js';
import type { CautionRule } from '../rule.js';
import { about, listed } from '../words.js';

export const alcoholRemains: CautionRule = {
  id: 'alcohol-remains',
  title: 'Some alcohol remains',
  when: 'alcohol is left in the finished dish by the published retention of heating',
  reason:
    'Heat does not drive all alcohol off; children, pregnant women, drivers and people who avoid it will want to know.',
  source:
    'USDA Table of Nutrient Retention Factors, Release 6 (2007), alcohol; strength: Regulation (EU) No 1169/2011, Articles 9(1)(k) and 28(2)',
  find({ alcohol, foods, place }) {
    if (!alcohol || isZero(alcohol.per100)) return undefined;
    const with_ = foods.filter((food) => food.flags.includes('alcohol') || food.roles.includes('spirit'));
    const serving = alcohol.perServing ? `, about ${about(alcohol.perServing)} g in a serving` : '';
    const strength =
      compare(alcohol.byVolume, STATED_STRENGTH) > 0
        ? ` As a drink it would be about ${about(alcohol.byVolume)} % vol; above 1.2 % vol the strength has to be stated.`
        : '';
    const from = with_.length > 0 ? ` from ${listed(with_.map((food) => food.name))}` : '';
    const heated = with_.some(({ heatings }) => heatings.length > 0)
      ? ' How much boils off varies a good deal with the pan and the stirring.'
      : '';
    return {
      weight: 'note',
      text: `About ${about(alcohol.per100)} g of alcohol${from} stay in 100 g${serving}.${heated}${strength}`,
      forEater: `Contains alcohol: about ${about(alcohol.per100)} g in 100 g.`,
      places: with_.length > 0 ? with_.map((food) => food.place) : [place],
    };
  },
};
