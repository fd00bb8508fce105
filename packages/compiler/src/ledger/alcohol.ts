import { add, compare, divide, exact, least, multiply, ONE, rational, subtract, type Rational } from '@quern/quantity';

/*
 * Alcohol that stays: USDA Table of Nutrient Retention Factors, release 6 (2007), rows 5001 to 5008. Each row tells what
 * one treatment leaves of the alcohol that went in. Of treatments one after another the table says nothing: what stays is
 * the least that one of them leaves by itself, never their product, so that a label does not say too little.
 */

/** A curve through published points, straight between them and level after the last. */
type Curve = readonly { readonly minutes: Rational; readonly share: Rational }[];

/** Stirred into hot liquid 85 %; stirred in and baked or simmered 15 min 40 %, 30 min 35 %, 1 h 25 %, 1.5 h 20 %, 2 h 10 %, 2.5 h 5 %. */
const STIRRED_IN: Curve = [
  { minutes: rational(0), share: exact('0.85') },
  { minutes: rational(15), share: exact('0.40') },
  { minutes: rational(30), share: exact('0.35') },
  { minutes: rational(60), share: exact('0.25') },
  { minutes: rational(90), share: exact('0.20') },
  { minutes: rational(120), share: exact('0.10') },
  { minutes: rational(150), share: exact('0.05') },
];

/** Not stirred in, baked 25 min: 45 %. No row for a longer time, so no less is said to stay. */
const NOT_STIRRED_IN: Curve = [
  { minutes: rational(0), share: ONE },
  { minutes: rational(25), share: exact('0.45') },
];

/** What stays when a dish is flamed, when it stands overnight without heat, and when it goes into boiling liquid taken off the heat. */
export const alcoholLeftBy = { flame: exact('0.75'), night: exact('0.70'), boilingLiquid: exact('0.85') } as const;

function along(curve: Curve, minutes: Rational): Rational {
  let before = curve[0];
  for (const after of curve) {
    if (before && compare(minutes, after.minutes) <= 0) {
      const span = subtract(after.minutes, before.minutes);
      const way = span.n === 0n ? ONE : divide(subtract(minutes, before.minutes), span);
      return add(before.share, multiply(way, subtract(after.share, before.share)));
    }
    before = after;
  }
  return before?.share ?? ONE;
}

/** Share of the alcohol, 0 to 1, that remains after so many minutes of simmering or baking in all. None of heat: all of it. */
export function alcoholRetained(minutes: Rational): Rational {
  return minutes.n <= 0n ? ONE : along(STIRRED_IN, minutes);
}

/** The same for what was never stirred in: so many minutes in the oven without, then so many with. */
export function alcoholRetainedBaked(unstirred: Rational, stirred: Rational): Rational {
  const poured = unstirred.n <= 0n ? ONE : along(NOT_STIRRED_IN, unstirred);
  return least(poured, alcoholRetained(stirred));
}
