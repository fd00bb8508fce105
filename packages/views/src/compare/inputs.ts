import type { Rational } from '@quern/quantity';
import type { Severity } from '@quern/text';

/*
 * What other views say of a formula, as far as it is to be compared. Whoever composes the views fills it in; what is not
 * given is not compared.
 */

export interface AllergenInput {
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Foods of which nothing is known. */
  readonly cannotSay: readonly string[];
}

/** A figure of the label in one of its columns. */
export interface NutritionInput {
  /** 'salt', 'of which sugars'. */
  readonly name: string;
  /** 'per 100 g', 'per slice'. */
  readonly per: string;
  /** As the label prints it; undefined when it is not known. */
  readonly text: string | undefined;
  /** Before rounding. */
  readonly amount: Rational | undefined;
}

export interface ClockInput {
  /** Minutes that somebody works, and minutes from the first thing done until it is ready. */
  readonly handsOn: number;
  readonly total: number;
  /** When to begin, by the clock: 'the day before, 19:40'. */
  readonly begin?: string;
}

export interface ProblemInput {
  readonly code: string;
  readonly severity: Severity;
  readonly text: string;
  /** From one. */
  readonly line: number;
}

export interface CompareInputs {
  readonly allergens?: AllergenInput;
  readonly promises?: readonly { readonly promise: string; readonly verdict: string }[];
  readonly cautions?: readonly { readonly id: string; readonly title: string; readonly text: string }[];
  readonly nutrition?: readonly NutritionInput[];
  readonly clock?: ClockInput;
  readonly problems?: readonly ProblemInput[];
}
