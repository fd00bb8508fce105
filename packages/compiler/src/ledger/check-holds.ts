import {
  compare,
  isZero,
  rational,
  roundTo,
  sizeOf,
  divide,
  ZERO,
  type CupSystem,
  type Rational,
} from '@quern/quantity';
import type { CheckLine } from '@quern/syntax';
import { baseValue } from '../weighing.js';

/**
 * Whether a `check` holds: the value found, rounded to the digits written, equals what is written (NOTATION 0.2, 0.17).
 * A figure written as a range holds when the value lies in it. A fraction is exact.
 */
export function checkHolds(amount: CheckLine['amount'], found: Rational, cups: CupSystem): boolean {
  const { range } = amount;
  const size = amount.kind === 'measure' ? sizeOf(amount.unit.id, cups) : rational(1);
  const value = divide(found, size);
  if (amount.kind === 'measure' && amount.and) return compare(baseValue(amount, cups, 'middle'), found) === 0;
  const rounded = range.decimals === null ? value : roundTo(value, rational(1, 10n ** BigInt(range.decimals)));
  if (isZero(range.low) && isZero(range.high)) return compare(rounded, ZERO) === 0;
  return compare(rounded, range.low) >= 0 && compare(rounded, range.high) <= 0;
}
