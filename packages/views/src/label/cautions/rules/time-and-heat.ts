import { add, compare, rational, sign, ZERO, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import type { CautionFacts, CautionFood, Standing } from '../facts.js';
import { coldHold, cooling as coolingFigures, coreTemperatures, dangerZone as zone, MEAT_REST } from '../figures.js';
import type { CautionRule } from '../rule.js';
import { bothDegrees, degrees, namesOf, placesOf, time } from '../words.js';

/** Food that spoils: meat, fish, egg, and milk and cream but not butter. */
function isPerishable(food: CautionFood): boolean {
  if (['raw-meat', 'poultry', 'raw-fish', 'raw-egg'].some((flag) => food.flags.includes(flag))) return true;
  return food.roles.some(
    (role) => role === 'meat' || role === 'fish' || role === 'egg' || (role === 'dairy' && !food.roles.includes('fat')),
  );
}

/**
 * Rice, pulses and vegetables spoil once they are cooked; raw, they keep. The Food Code calls heat-treated plant food a
 * food that needs time and temperature control (1-201.10, from memory).
 */
const spoilsOnceCooked = (food: CautionFood): boolean =>
  isPerishable(food) ||
  food.flags.includes('cooked-rice') ||
  food.roles.some((role) => role === 'pulse' || role === 'vegetable');

const inZone = ({ celsius }: Pick<Standing, 'celsius'>): boolean =>
  // Without a temperature it stands in the room.
  !celsius || (compare(celsius, zone.low) > 0 && compare(celsius, zone.high) < 0);
const isHot = ({ celsius }: Pick<Standing, 'celsius'>): boolean =>
  celsius !== undefined && compare(celsius, zone.hot) > 0 && compare(celsius, zone.high) < 0;
const minutesOf = (standings: readonly Pick<Standing, 'minutes'>[]): Rational =>
  standings.reduce((sum, one) => add(sum, one.minutes), ZERO);

export const dangerZone: CautionRule = {
  id: 'danger-zone',
  title: 'Time between 4 and 60 °C',
  when: 'the waits and bench work after a perishable food goes in (rice, pulses and vegetables: after they are cooked) come to more than 2 h between 4 and 60 °C (1 h above 32 °C), each at its longest, or as the clock plans them, with what stands idle between (`quern label` asks the clock; elsewhere the lines alone count); a leavened dough, bread and dry things are left out',
  reason: 'Bacteria grow fastest there, and some of their poisons outlast cooking.',
  source:
    'USDA FSIS, Danger Zone (40-140 °F): 2 h, above 90 °F 1 h; leaving out doughs and dry goods is common practice, no source',
  find({ foods }) {
    const sums = foods.filter(spoilsOnceCooked).map((food) => {
      const counts = isPerishable(food) ? food.standings : food.standings.filter((one) => one.afterHeat);
      const warm = counts.filter((one) => inZone(one) && !one.breadOrDry);
      return { food, warm, minutes: minutesOf(warm), hot: minutesOf(warm.filter(isHot)), planned: plannedSum(food) };
    });
    const over = sums.filter(
      // A wait without an end may be any length.
      ({ minutes, hot, warm, planned }) =>
        isTooLong(minutes, hot) ||
        warm.some(({ orMore }) => orMore) ||
        (planned !== undefined && isTooLong(planned.minutes, planned.hot)),
    );
    const length = ({ minutes, planned }: (typeof over)[number]): Rational =>
      planned && compare(planned.minutes, minutes) > 0 ? planned.minutes : minutes;
    const worst = over.reduce<(typeof over)[number] | undefined>(
      (a, b) => (a && compare(length(a), length(b)) >= 0 ? a : b),
      undefined,
    );
    if (!worst) return undefined;
    const { planned } = worst;
    const orMore = worst.warm.some((one) => one.orMore) ? ' or more' : '';
    const idle = planned && sign(planned.idle) > 0 ? `, ${time(planned.idle)} of it idle between steps` : '';
    const account = planned
      ? `by the lines at their longest, ${time(planned.minutes)} as the clock plans it${idle}`
      : 'by the lines at their longest, without what stands idle between steps';
    return {
      weight: 'check',
      text: `The ${namesOf(over.map(({ food }) => food))} can stand ${time(worst.minutes)}${orMore} in all between ${degrees(zone.low)} and ${degrees(zone.high)} (${account}); published guidance is ${time(zone.longest)} at most, ${time(zone.longestHot)} above ${degrees(zone.hot)}. Keep them cold until they are needed, or say at which temperature they stand.`,
      places: uniquePlaces([...worst.warm.map((one) => one.place), ...(planned?.places ?? [])]),
    };
  },
};

const isTooLong = (minutes: Rational, hot: Rational): boolean =>
  compare(minutes, zone.longest) > 0 || compare(hot, zone.longestHot) > 0;

/** Time in the zone by the planned timetable, on the longest way that the food takes; undefined without a timetable. */
function plannedSum(
  food: CautionFood,
):
  | { readonly minutes: Rational; readonly hot: Rational; readonly idle: Rational; readonly places: readonly Place[] }
  | undefined {
  const ways = food.planned?.map((way) => {
    const warm = way.filter((one) => inZone(one) && !one.breadOrDry && (isPerishable(food) || one.afterHeat));
    return {
      minutes: minutesOf(warm),
      hot: minutesOf(warm.filter(isHot)),
      idle: minutesOf(warm.filter(({ idle }) => idle)),
      places: warm.map(({ place }) => place),
    };
  });
  return ways?.reduce<NonNullable<typeof ways>[number] | undefined>(
    (a, b) => (a && compare(a.minutes, b.minutes) >= 0 ? a : b),
    undefined,
  );
}

function uniquePlaces(places: readonly Place[]): Place[] {
  return [...new Map(places.map((one) => [`${one.file}:${one.start}`, one])).values()];
}

const isCold = (celsius: Rational | undefined): boolean => celsius !== undefined && compare(celsius, rational(8)) <= 0;

export const cooling: CautionRule = {
  id: 'cooling',
  title: 'Cooling what was cooked',
  when: 'a cooked dish with perishable food, rice, pulses or vegetables, no bread and not dry, is then kept cold',
  reason: 'Spores that outlast cooking grow while a big pot cools slowly.',
  source:
    'FDA Food Code 3-501.14: from 57 to 21 °C within 2 h, to 5 °C within 6 h in all; made from foods at room warmth, to 5 °C within 4 h',
  find(facts) {
    const cooked = facts.foods.filter(
      (food) => food.inDish && spoilsOnceCooked(food) && food.heatings.length > 0 && !inBreadAtTheEnd(food, facts),
    );
    if (cooked.length === 0) return undefined;
    const claims = facts.keeps.filter((claim) => isCold(claim.celsius));
    const coldWaits = cooked.flatMap((food) => food.standings.filter((one) => one.afterHeat && isCold(one.celsius)));
    if (claims.length === 0 && coldWaits.length === 0) return undefined;
    const [slowest] = cooked.flatMap((food) =>
      food.standings.filter(
        (one) =>
          one.afterHeat && !one.breadOrDry && inZone(one) && compare(one.minutes, coolingFigures.firstWithin) > 0,
      ),
    );
    return {
      weight: slowest ? 'check' : 'care',
      text: `Cool it from ${degrees(coolingFigures.from)} to ${degrees(coolingFigures.firstTo)} within ${time(coolingFigures.firstWithin)}, and to ${degrees(coolingFigures.to)} within ${time(coolingFigures.within)} in all: in shallow dishes or an ice bath.${slowest ? ` A wait of ${time(slowest.minutes)} is written.` : ''}`,
      places: slowest ? [slowest.place] : claims.map((claim) => claim.place),
    };
  },
};

function inBreadAtTheEnd(food: CautionFood, facts: CautionFacts): boolean {
  const dish = facts.pots.at(-1);
  if (!dish) return false;
  return (
    dish.leavened ||
    (dish.water !== undefined && compare(dish.water, rational(35)) < 0) ||
    food.standings.some((one) => one.afterHeat && one.breadOrDry)
  );
}

const MINCED = /\b(?:mince|minced|ground|sausage|burger)\b/;

function leastCore(food: CautionFood): { readonly celsius: Rational; readonly kind: string } | undefined {
  if (food.flags.includes('poultry')) return { celsius: coreTemperatures.poultry, kind: 'poultry' };
  if (food.flags.includes('raw-fish')) return { celsius: coreTemperatures.fish, kind: 'fish and shellfish' };
  if (!food.flags.includes('raw-meat')) return undefined;
  return food.flags.includes('minced-meat') || MINCED.test(`${food.name} ${food.note}`)
    ? { celsius: coreTemperatures.minced, kind: 'minced meat' }
    : { celsius: coreTemperatures.wholeMeat, kind: `whole pieces of meat, with ${time(MEAT_REST)} of rest` };
}

/** The highest temperature inside that a step waits for. */
function hottestCore(food: CautionFood): Rational | undefined {
  return food.heatings.reduce<Rational | undefined>(
    (best, { core }) => (core && (!best || compare(core, best) > 0) ? core : best),
    undefined,
  );
}

export const coreTemperature: CautionRule = {
  id: 'core-temperature',
  title: 'Temperature inside meat and fish',
  when: 'raw meat, poultry or fish is cooked, and no step waits for the published temperature inside, or one waits for less',
  reason: 'The temperature in the middle, not the time, shows that meat is cooked through.',
  source: 'USDA FSIS / FoodSafety.gov safe minimum internal temperatures; NIST, Culinary Temperature',
  find({ foods }) {
    const meats = foods.flatMap((food) => {
      const least = leastCore(food);
      return least && food.heatings.length > 0 ? [{ food, least, core: hottestCore(food) }] : [];
    });
    // Charts are printed in whole degrees; half a degree under is the same figure.
    const below = meats.filter(({ least, core }) => core && compare(add(core, rational(1, 2)), least.celsius) < 0);
    const unsaid = meats.filter(({ core }) => !core);
    const concerned = below.length > 0 ? below : unsaid;
    const [first] = concerned;
    if (!first) return undefined;
    const names = namesOf(concerned.map(({ food }) => food));
    const places = placesOf(concerned.map(({ food }) => food));
    const figure = `the published least inside is ${bothDegrees(first.least.celsius)} for ${first.least.kind}`;
    if (!first.core) return { weight: 'note', text: `The ${names}: ${figure}. Check with a thermometer.`, places };
    return {
      weight: 'check',
      text: `The ${names}: a step waits for ${degrees(first.core)} inside; ${figure}. Lower temperatures need a time held there, by a tested method.`,
      places,
    };
  },
};

export const coldClaim: CautionRule = {
  id: 'cold-not-cold-enough',
  title: 'Kept warmer than 5 °C',
  when: 'a dish with perishable food, no bread, not dry and not soured, is said to keep above 5 °C',
  reason: 'Above 5 °C perishable food spoils in hours, not days.',
  source: 'FDA Food Code 3-501.16: held cold at 41 °F or below; some countries allow up to 8 °C (from memory)',
  find(facts) {
    const dish = facts.pots.at(-1);
    const foods = facts.foods.filter((food) => food.inDish && isPerishable(food));
    if (foods.length === 0 || !dish || foods.every((food) => inBreadAtTheEnd(food, facts)) || facts.acidity)
      return undefined;
    if (dish.water === undefined) return undefined;
    const claims = facts.keeps.filter(
      (claim) =>
        claim.ofDish &&
        claim.celsius !== undefined &&
        compare(claim.celsius, coldHold.celsius) > 0 &&
        compare(claim.minutes, zone.longest) > 0,
    );
    const [first] = claims;
    if (!first?.celsius) return undefined;
    return {
      weight: 'check',
      text: `With ${namesOf(foods)} in it, it is said to keep ${time(first.minutes)} at ${degrees(first.celsius)}; food of this kind is held at ${degrees(coldHold.celsius)} or below.`,
      places: claims.map((claim) => claim.place),
    };
  },
};
