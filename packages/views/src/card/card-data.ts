import type { BothMeasures, ExactRange, ExactText, ScalableAmount } from '../common/scalable-amount.js';

/*
 * The card as plain data: everything a page, a feed or a plain text needs, and nothing that it would have to compute.
 * It is JSON as it stands. Exact numbers are texts ('3/4', '12.5') that `parseRational` reads; figures meant for the
 * eye are texts as they are printed, with plain ASCII marks ('10-14', '1 1/2'): a renderer sets typographic forms.
 */

/** An amount in both measures, as printed at the size of the card. The two are the same text when there is but one way to say it. */
export interface CardAmount extends BothMeasures {
  /** What the writer says, where it is words and the two measures stand beside them: 'half', 'a third of the butter'. */
  readonly words?: string;
  /** Missing when the amount is in words (`all`, `a little`) or does not change with the size. */
  readonly scale?: ScalableAmount;
}

/** A temperature in both scales, rounded as dials and thermometers are marked: '150-160 C', '0 F'. */
export interface CardTemperature {
  readonly celsius: string;
  readonly fahrenheit: string;
}

/** A piece of a sentence. Put together as plain texts the pieces are the sentence as it was written, without brackets. */
export type CardRun =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'amount'; readonly text: string; readonly amount: CardAmount }
  | { readonly kind: 'temperature'; readonly text: string; readonly temperature: CardTemperature };

/** A time as written: `10-14` and `h` are one text, '10-14 h'; 'overnight'; '30 min or more'. With its exact minutes. */
export interface CardTime {
  readonly text: string;
  readonly minutes: ExactRange;
  /** No upper end: `or more`. */
  readonly open: boolean;
}

/** What stands beside a step: who is busy, how long, how hot, until when. */
export interface CardClock {
  readonly lane: 'hands' | 'wait' | 'oven' | 'hob';
  readonly time?: CardTime;
  readonly at?: {
    readonly temperature: CardTemperature;
    readonly change?: { readonly direction: 'falling' | 'rising'; readonly to: CardTemperature };
    readonly fan: boolean;
  };
  readonly until?: CardTemperature;
  /** '4.2', 'below 4.6'. */
  readonly untilAcidity?: string;
  readonly using: readonly string[];
}

export interface CardRemark {
  readonly kind: 'note' | 'tip' | 'warning' | 'serve with';
  readonly text: string;
}

export interface CardIngredient {
  readonly amount: CardAmount;
  readonly name: string;
  readonly note?: string;
  readonly optional: boolean;
  /** For a thing made above: the id of its make, to link to. */
  readonly make?: string;
  /** Share of a named thing, as written: '2 % on flour'. */
  readonly percent?: string;
  /** What may stand in for it. */
  readonly alternatives: readonly CardIngredient[];
  /** Index of the step that it stands above; the number of steps when it stands below the last. */
  readonly step: number;
}

/** What is saved after a step: '20 g' 'rye starter', 'for the next bake'. */
export interface CardSaved {
  readonly amount: CardAmount;
  readonly name: string;
  readonly note?: string;
}

export interface CardStep {
  readonly sentence: readonly CardRun[];
  /** More words of the same step, one a line. */
  readonly more: readonly (readonly CardRun[])[];
  readonly clock: CardClock;
  /** Care while it lasts: '3 d', '1 min', the sentence. */
  readonly care: readonly {
    readonly every: CardTime;
    readonly takes?: CardTime;
    readonly sentence: readonly CardRun[];
  }[];
  readonly saved: readonly CardSaved[];
  readonly remarks: readonly CardRemark[];
}

export interface CardKeeping {
  readonly time: CardTime;
  readonly at?: CardTemperature;
  readonly note?: string;
}

export interface CardMake {
  /** Letters, digits and hyphens; single in the card. */
  readonly id: string;
  readonly name: string;
  /** A simple dish without `make`: its name is the title, and no heading is needed. */
  readonly implicit: boolean;
  readonly weight?: CardAmount;
  readonly ingredients: readonly CardIngredient[];
  readonly steps: readonly CardStep[];
  /** Remarks and saved things that stand above the first step. */
  readonly remarks: readonly CardRemark[];
  readonly keeping: readonly CardKeeping[];
}

/** The one figure by which a page is scaled, and what is said with it. */
export interface CardYield {
  /** What is counted, to name the field after: 'loaves', 'servings', 'g'; 'batches' when the recipe does not say. */
  readonly thing: string;
  readonly count: ExactText;
  /** Weight of each, or of all when nothing is counted. */
  readonly each?: CardAmount;
  readonly total?: CardAmount;
  /** '40 slices', when the recipe says both what it gives and what it serves. */
  readonly serves?: CardAmount;
  /** '2 loaf tins of 23 x 11 x 8 cm'. */
  readonly vessel?: CardAmount;
}

/** Totals of the clock, in minutes. */
export interface CardTimes {
  readonly handsOn?: ExactRange;
  /** From the first step to the dish. */
  readonly total?: ExactRange;
  /** When to begin, in words: 'the day before', '2 days before'. */
  readonly begin?: string;
}

export interface CardVariant {
  readonly name: string;
  /** What is different, a few words each. */
  readonly changes: readonly string[];
}

export interface CardAllergens {
  /** In the names of the market. */
  readonly contains: readonly string[];
  /** With the reason: an alternative, an optional line, traces. */
  readonly mayContain: readonly { readonly name: string; readonly because: string }[];
  /** Foods about which nothing may be said. */
  readonly unknown: readonly string[];
  readonly market: string;
}

export interface CardNutrition {
  /** What the figures are for: 'per slice of 52 g', 'per 100 g'. */
  readonly column: string;
  /** The portion alone: 'slice of 52 g', '100 g'. */
  readonly portion: string;
  readonly rows: readonly CardNutrientRow[];
  readonly notes: readonly string[];
}

export interface CardNutrientRow {
  /** As the label names it: 'energyKcal', 'saturates'. */
  readonly id: string;
  readonly name: string;
  /** 1 and 2 for 'of which' lines. */
  readonly level: 0 | 1 | 2;
  /** As rounded for the market, with its unit: '1.2 g', '<0.5 g'. Missing: not known. */
  readonly text?: string;
  /** Both ends, where the recipe's ranges change what is printed. */
  readonly between?: readonly [string, string];
  /** A source lacks this nutrient, so the true figure may be higher. */
  readonly atLeast: boolean;
}

export interface CardCaution {
  readonly text: string;
  readonly reason?: string;
  readonly source?: string;
}

/** What is wrong with the recipe, for its writer. */
export interface CardProblem {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'hint';
  readonly text: string;
  readonly help: string;
  /** From one. */
  readonly line: number;
}

export type CardDiet = 'vegan' | 'vegetarian';

export interface CardData {
  readonly format: 'quern-card';
  readonly version: 1;
  readonly title: string;
  readonly variant?: string;
  /** A language tag (BCP 47): of the names and sentences. */
  readonly language: string;
  readonly by: readonly string[];
  readonly source: readonly string[];
  readonly keywords: readonly string[];
  readonly introduction: readonly string[];
  readonly photo?: { readonly path: string; readonly alternative?: string };
  readonly yield: CardYield;
  readonly times: CardTimes;
  readonly makes: readonly CardMake[];
  /** Tips, warnings, and what to serve it with, for the whole recipe. */
  readonly remarks: readonly CardRemark[];
  readonly variants: readonly CardVariant[];
  readonly allergens?: CardAllergens;
  readonly nutrition?: CardNutrition;
  /** Diets that the label has confirmed, never guessed. */
  readonly diets: readonly CardDiet[];
  readonly keeping: readonly CardKeeping[];
  readonly bestAfter: readonly CardKeeping[];
  readonly cautions: readonly CardCaution[];
  /** What does not follow when the page is scaled, a sentence each. */
  readonly fixed: readonly string[];
  readonly revision?: string;
  /** ISO 8601. */
  readonly date?: string;
  readonly problems: readonly CardProblem[];
}
