import { add, compare, divide, exact, multiply, ONE, rational, subtract, type Rational } from '@quern/quantity';

/*
 * Alcohol that stays after cooking: USDA Table of Nutrient Retention Factors, release 6 (2007), rows 5002 and 5004 to
 * 5008: stirred into hot liquid 85 %; stirred in and baked or simmered 15 min 40 %, 30 min 35 %, 1 h 25 %, 1.5 h 20 %,
 * 2 h 10 %; two hours and a half, 5 %. Between the published times the value runs straight; after that it stays at the last
 * published one.
 */
const RETAINED: readonly { readonly minutes: Rational; readonly share: Rational }[] = [
  { minutes: rational(0), share: exact('0.85') },
  { minutes: rational(15), share: exact('0.40') },
  { minutes: rational(30), share: exact('0.35') },
  { minutes: rational(60), share: exact('0.25') },
  { minutes: rational(90), share: exact('0.20') },
  { minutes: rational(120), share: exact('0.10') },
  { minutes: rational(150), share: exact('0.05') },
];

/** Share of the alcohol, 0 to 1, that remains after so many minutes of simmering or baking in all. None of heat: all of it. */
export function alcoholRetained(minutes: Rational): Rational {
  if (minutes.n <= 0n) return ONE;
  let before = RETAINED[0];
  for (const after of RETAINED) {
    if (before && compare(minutes, after.minutes) <= 0) {
      const span = subtract(after.minutes, before.minutes);
      const way = span.n === 0n ? ONE : divide(subtract(minutes, before.minutes), span);
      return add(before.share, multiply(way, subtract(after.share, before.share)));
    }
    before = after;
  }
  return before?.share ?? ONE;
}

/** Share of the alcohol still there that this further heating leaves. */
export function alcoholKept(before: Rational, after: Rational): Rational {
  return divide(alcoholRetained(after), alcoholRetained(before));
}
