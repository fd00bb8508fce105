import { toExactText, type Interval, type Rational } from '@quern/quantity';
import type { ExactRange, ExactText } from './scalable-amount.js';

/** A number as the exact text that `parseRational` reads back. */
export const exactText = (value: Rational): ExactText => toExactText(value);

/** A range as exact texts. */
export const exactRange = ({ low, high }: Interval): ExactRange => ({ low: toExactText(low), high: toExactText(high) });
