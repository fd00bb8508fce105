import { exact, rational, type Rational } from '@quern/quantity';

/*
 * The published figures that the cautions hold a recipe against. Temperatures in degrees Celsius, converted exactly from
 * the published degrees Fahrenheit; times in minutes. Checked row by row against tests/published/safety.tsv.
 */

const fahrenheit = (degrees: number): Rational => rational((degrees - 32) * 5, 9);
const hours = (count: number): Rational => rational(count * 60);
const days = (count: number): Rational => rational(count * 1440);

/** Least temperatures inside, USDA FSIS safe minimum internal temperatures. */
export const coreTemperatures = {
  poultry: fahrenheit(165),
  minced: fahrenheit(160),
  wholeMeat: fahrenheit(145),
  fish: fahrenheit(145),
  eggDishes: fahrenheit(160),
} as const;

/** Rest after cooking whole meat, minutes (the same chart). */
export const MEAT_REST: Rational = rational(3);

/** USDA FSIS, 'danger zone' of 40 to 140 °F: two hours at most, one above 90 °F. */
export const dangerZone = {
  low: fahrenheit(40),
  high: fahrenheit(140),
  longest: hours(2),
  hot: fahrenheit(90),
  longestHot: hours(1),
} as const;

/** FDA Food Code 3-501.14. */
export const cooling = {
  from: fahrenheit(135),
  firstTo: fahrenheit(70),
  firstWithin: hours(2),
  to: fahrenheit(41),
  within: hours(6),
  fromRoomWithin: hours(4),
} as const;

/** FDA Food Code 3-501.16 and 3-501.17: held cold at 41 °F or below, ready-to-eat for seven days at most. */
export const coldHold = { celsius: fahrenheit(41), days: 7 } as const;

/** 21 CFR 113.3, 114.3. */
export const preserves = { acidPh: exact('4.6'), lowWaterActivity: exact('0.85') } as const;

/** Salt on the weight of cabbage: a university leaflet's two recipes, and the range that guides recommend (from memory). */
export const vegetableFerment = {
  lowest: exact('1.9'),
  leaflet: exact('2.4'),
  recommended: { low: exact('2.25'), high: exact('2.5') },
} as const;

/** USDA FSIS Processing Inspectors' Calculations Handbook: sodium nitrite that goes in, parts in a million of raw meat. */
export const nitrite = {
  curingSaltPercent: exact('6.25'),
  comminuted: rational(156),
  immersed: rational(200),
  dryCured: rational(625),
} as const;

/** FDA, Bad Bug Book, phytohaemagglutinin. Some consumer pages say ten minutes: the longer is what is asked for. */
export const kidneyBeans = {
  soak: hours(5),
  boil: rational(30),
  boilElsewhere: rational(10),
  celsius: rational(100),
} as const;

/** National Center for Home Food Preservation: garlic in oil, at 40 °F or below. */
export const garlicInOil = { longest: days(4), celsius: fahrenheit(40) } as const;

/** Regulation (EU) No 1169/2011, Articles 9(1)(k) and 28(2): the strength is stated above this per cent by volume. */
export const STATED_STRENGTH: Rational = exact('1.2');

/** Nitrite that curing salt brings to raw meat, in parts in a million. @throws RangeError when there is no meat. */
export function nitritePartsPerMillion(curingSalt: Rational, meat: Rational): Rational {
  const top = rational(nitrite.curingSaltPercent.n * 10_000n, nitrite.curingSaltPercent.d);
  return rational(curingSalt.n * top.n * meat.d, curingSalt.d * top.d * meat.n);
}

/** Grams of curing salt that bring so many parts in a million of nitrite to so much meat. */
export function curingSaltFor(meat: Rational, partsPerMillion: Rational): Rational {
  const strength = nitrite.curingSaltPercent;
  return rational(meat.n * partsPerMillion.n * strength.d, meat.d * partsPerMillion.d * strength.n * 10_000n);
}
