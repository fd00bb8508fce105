import type { ExactText } from '../common/scalable-amount.js';
import type { LineChange } from './difference.js';

/*
 * What changed from one formula to another, one thing each. All but `line` follow from the lines; they are told because
 * somebody who eats or bakes would ask. `before` or `after` is missing where there is nothing to tell on that side.
 */

/** A figure on both sides, exactly and for the eye. */
export interface Figured {
  readonly exact: ExactText;
  readonly text: string;
}

interface BothFigures {
  readonly before?: Figured;
  readonly after?: Figured;
  /** How much more there is, in hundredths of what there was; missing where one of them is not known or nothing. */
  readonly percent?: Figured;
}

/** How surely an allergen is in the dish. */
export type AllergenStanding = 'contains' | 'may contain' | 'not named';

export interface AllergenChange {
  readonly kind: 'allergen';
  readonly allergen: string;
  readonly before: AllergenStanding;
  readonly after: AllergenStanding;
}

/** A food of which nothing is known came in or went. */
export interface UnsaidChange {
  readonly kind: 'unsaid';
  readonly before?: string;
  readonly after?: string;
}

export interface PromiseChange {
  readonly kind: 'promise';
  readonly promise: string;
  /** Verdicts. */
  readonly before?: string;
  readonly after?: string;
}

export interface CautionChange {
  readonly kind: 'caution';
  readonly id: string;
  readonly title: string;
  readonly before?: string;
  readonly after?: string;
}

/** A message of the check that is new, or that is gone. */
export interface ProblemChange {
  readonly kind: 'problem';
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'hint';
  readonly before?: string;
  readonly after?: string;
}

export interface NutritionChange extends BothFigures {
  readonly kind: 'nutrition';
  readonly nutrient: string;
  readonly per: string;
}

export type YieldName = 'weight' | 'pieces' | 'weight of each' | 'servings';

export interface YieldChange extends BothFigures {
  readonly kind: 'yield';
  readonly figure: YieldName;
}

export type BakersName = 'flour' | 'hydration' | 'water in all' | 'prefermented flour' | 'salt';

export interface BakersChange extends BothFigures {
  readonly kind: 'bakers';
  readonly figure: BakersName;
}

/** A food's share on the flour that moved although none of its lines did. */
export interface ShareChange extends BothFigures {
  readonly kind: 'share';
  readonly food: string;
}

/** A line that says what it said and weighs otherwise, because what it is reckoned on changed. */
export interface WeighedChange extends BothFigures {
  readonly kind: 'weighed';
  readonly where: Where;
  readonly food: string;
  /** The line as written. */
  readonly line: string;
}

export interface ClockChange {
  readonly kind: 'clock';
  readonly figure: 'hands-on time' | 'time in all' | 'begin';
  readonly before?: string;
  readonly after?: string;
  /** Minutes more. */
  readonly minutes?: number;
}

/** The same formula so many times. */
export interface RescaledChange {
  readonly kind: 'rescaled';
  readonly factor: Figured;
  readonly before?: Figured;
  readonly after?: Figured;
}

/** Where a line stands: recipe, variant and make as each side calls them. */
export interface Where {
  readonly before: BlockNames;
  readonly after: BlockNames;
}

export interface BlockNames {
  readonly recipe?: string;
  readonly variant?: string;
  readonly make?: string;
  /** Any other block: 'food beet syrup'. */
  readonly block?: string;
}

/** What a line is, to a reader. */
export type LineRole =
  | 'food'
  | 'product'
  | 'alternative'
  | 'out'
  | 'step'
  | 'care'
  | 'words'
  | 'check'
  | 'remark'
  | 'keeping'
  | 'promise'
  | 'yield'
  | 'fact'
  | 'credit'
  | 'make'
  | 'variant'
  | 'recipe'
  | 'block'
  | 'edit'
  | 'unreadable';

/** `swapped`: a food for another. `renamed`: the same thing by another name. `split`, `merged`: a make out of or into another. */
export type LineAction =
  'added' | 'removed' | 'changed' | 'swapped' | 'renamed' | 'moved' | 'reordered' | 'split' | 'merged';

export interface LineFinding {
  readonly kind: 'line';
  readonly role: LineRole;
  readonly action: LineAction;
  readonly where: Where;
  /** What it is about: a food, a make, a first word. */
  readonly subject: { readonly before: string; readonly after: string };
  /** The whole lines in the usual layout; of a block the heading. */
  readonly before?: string;
  readonly after?: string;
  /** From one, in its own file. */
  readonly lines: { readonly before?: number; readonly after?: number };
  /** What it weighs by the ledger, and all of that food on the flour, in hundredths. */
  readonly grams?: BothFigures;
  readonly share?: BothFigures;
  /** In a recipe that is so many times the other: the percentage is reckoned from so many times what it weighed. */
  readonly beyond?: Figured;
  /** Lines that came or went with a block, without those that stood elsewhere before. */
  readonly inside: readonly string[];
  /** The make that a make was split from or merged into. */
  readonly other?: string;
  /** As the lines differ, part by part. */
  readonly change: LineChange;
}

export type Change =
  | AllergenChange
  | UnsaidChange
  | PromiseChange
  | CautionChange
  | ProblemChange
  | NutritionChange
  | YieldChange
  | BakersChange
  | ShareChange
  | WeighedChange
  | ClockChange
  | RescaledChange
  | LineFinding;

export type { BothFigures };
