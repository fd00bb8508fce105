import type { Allowance, Minute } from './problem.js';

/*
 * What the clock minds, in points, so that a plan can be the best. The page docs/clock.md says the same in words.
 * A thousand small units make a point, so that a price for each minute is a whole number.
 */

export const POINT = 1000;

/** Whatever may last or stand for a range of times costs nothing at its best and 100 points at its limit. */
const AT_LIMIT = 100 * POINT;

/** A visit to the kitchen, that is, hands-on work after more than an hour without any. */
export const VISIT = 30 * POINT;
export const VISIT_GAP: Minute = 60;

/** With no top to a range, twice as long again, or half a day again, costs as much as a limit. */
const OPEN_SCALE: Minute = 720;

/** Units a minute above the preferred time. */
export function priceAbove(allowance: Allowance): number {
  const reach =
    allowance.most === Infinity ? Math.max(allowance.preferred, OPEN_SCALE) : allowance.most - allowance.preferred;
  return reach > 0 ? quotientUp(AT_LIMIT, reach) : 0;
}

/** Units a minute below the preferred time. */
export function priceBelow(allowance: Allowance): number {
  const reach = allowance.preferred - allowance.least;
  return reach > 0 ? quotientUp(AT_LIMIT, reach) : 0;
}

/**
 * Units a minute that a dish is done before its moment. Far above everything else, so that a dish is early only when it
 * must be; lower for a dish that keeps, so that the pudding waits and not the roast.
 */
export function priceEarly(stand: Allowance): number {
  const reach = Math.min(stand.most - stand.least, 7 * 1440);
  return quotientUp(10_000 * AT_LIMIT, Math.max(reach, 1));
}

/** a / b rounded up, for whole positive numbers. */
export function quotientUp(a: number, b: number): number {
  const rest = a % b;
  return (a - rest) / b + (rest > 0 ? 1 : 0);
}
