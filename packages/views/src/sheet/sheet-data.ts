import type { CupSystem } from '@quern/quantity';
import type { ExactRange, ExactText } from '../common/scalable-amount.js';

/*
 * The weighing sheet as plain data, at the size asked for: everything a page or a print needs, and nothing that it would
 * have to compute. It is JSON as it stands; `docs/json/sheet.schema.json` describes it. Exact numbers are texts ('3/4', '12.5')
 * that `parseRational` reads; figures meant for the eye are texts as they are printed. A weight that is not known is
 * null, never zero.
 */

export type Measures = 'metric' | 'us' | 'both';

/** Grams, exactly and as shown; of a range both ends. */
export interface SheetWeight {
  readonly grams: ExactRange;
  /** '210 g', '340-360 g', '12.50 kg'. */
  readonly text: string;
}

/** A figure of baker's arithmetic in hundredths: 66.7 %. */
export interface SheetPercent {
  readonly exact: ExactText;
  readonly text: string;
}

/** An amount in cups, spoons, pounds and ounces, or pieces. */
export interface SheetUs {
  readonly text: string;
  /** `written`: as the file states it. `scooped`: computed, in level measures. `ounces`: computed, for a scale. `counted`: pieces. */
  readonly manner: 'written' | 'scooped' | 'ounces' | 'counted';
  /** How far the measure is from the exact amount, in hundredths of it, and for the eye ('-1.2 %', 'exact'). */
  readonly off?: {
    readonly percent: ExactText;
    readonly text: string;
    /** False when no combination of cups and spoons comes within the tolerance. */
    readonly near: boolean;
  };
}

/** A line that puts something in. */
export interface SheetIn {
  readonly kind: 'in';
  /** Line of the file, from one. */
  readonly line: number;
  readonly name: string;
  /** What the amount says besides a weight: 'all', 'half of', 'a little', '2 % on flour', '2 tins of 400 g', '4 cloves', '3'. */
  readonly said?: string;
  readonly about: boolean;
  readonly note?: string;
  readonly optional: boolean;
  readonly source: 'food' | 'product' | 'culture' | 'class';
  /** null: not known. */
  readonly weight: SheetWeight | null;
  /** The weight is a guess the writer states for an open amount. */
  readonly estimate: boolean;
  readonly us?: SheetUs;
  /** On the recipe's flour, when percentages are asked for and the food belongs to the formula. */
  readonly percent?: SheetPercent;
  readonly alternatives: readonly SheetIn[];
}

/** A line that takes something out. */
export interface SheetOut {
  readonly kind: 'out';
  readonly line: number;
  readonly verb: 'lose' | 'bin' | 'save';
  /** 'of white cabbages', 'as water': what it is taken from and what becomes of it. */
  readonly what: string;
  readonly said?: string;
  readonly note?: string;
  readonly weight: SheetWeight | null;
  readonly us?: SheetUs;
  /** The composition is an estimate: a drained liquid. */
  readonly estimate: boolean;
}

export interface SheetStep {
  readonly kind: 'step';
  readonly line: number;
  readonly lane: 'hands' | 'wait' | 'oven' | 'hob';
  /** '10-14 h', 'overnight'. */
  readonly time?: string;
  /** 'at 250 C (475 F) falling to 200 C (400 F)', 'until 97 C (207 F)', 'using hob': one text a clause. */
  readonly clauses: readonly string[];
  /** Sentences with scaled figures in place: the step's own, then those of the lines below that add words. */
  readonly sentences: readonly string[];
  readonly care: readonly { readonly every: string; readonly takes?: string; readonly sentence: string }[];
}

export interface SheetRemark {
  readonly kind: 'note' | 'tip' | 'warning' | 'serve with';
  readonly line: number;
  readonly text: string;
}

export type SheetRow = SheetIn | SheetOut | SheetStep | SheetRemark;

export interface SheetMake {
  readonly id: string;
  readonly name: string;
  /** A simple dish without `make`. */
  readonly implicit: boolean;
  readonly line: number;
  readonly rows: readonly SheetRow[];
  /** What stands in the pot at the end; null: not known. */
  readonly total: SheetWeight | null;
}

/** One food of the formula in baker's percentages. */
export interface SheetFormulaRow {
  readonly name: string;
  readonly flour: boolean;
  readonly weight: SheetWeight;
  readonly percent: SheetPercent;
}

export interface SheetFormula {
  readonly flour: SheetWeight;
  readonly rows: readonly SheetFormulaRow[];
  readonly total: SheetWeight;
  readonly totalPercent: SheetPercent;
  /** Food water on flour. */
  readonly hydration: SheetPercent;
  /** The water content of everything on flour; null when a food's is not known. */
  readonly allWater: SheetPercent | null;
  readonly prefermented: SheetPercent;
}

/** What the sheet makes. */
export interface SheetYield {
  /** The dish as it is served; null: not known. */
  readonly weight: SheetWeight | null;
  /** '6 loaves' with the weight of each. */
  readonly pieces?: { readonly text: string; readonly each: SheetWeight | null };
  readonly servings?: { readonly text: string; readonly each: SheetWeight | null };
  /** '3 tins of 25 x 10 x 8 cm'. */
  readonly vessel?: string;
}

export type SheetWarningCode =
  | 'bake-time'
  | 'boil-time'
  | 'depth'
  | 'open-amount'
  | 'sentence-figure'
  | 'part-of-a-piece'
  | 'vessel-count'
  | 'vessel-full'
  | 'mixer-full'
  | 'unknown-weight';

/** What does not follow when a recipe is scaled, or stands in the way of it. */
export interface SheetWarning {
  readonly code: SheetWarningCode;
  readonly text: string;
  /** Lines of the file that it speaks of, from one. */
  readonly lines: readonly number[];
}

export interface SheetData {
  readonly format: 'quern-sheet';
  readonly version: 1;
  readonly title: string;
  readonly variant?: string;
  /** A language tag (BCP 47): of the names and sentences. */
  readonly language: string;
  readonly scale: { readonly factor: ExactText; readonly words: string };
  readonly measures: Measures;
  /** The cups and spoons of the second measure. */
  readonly cups: CupSystem;
  readonly yield: SheetYield;
  readonly makes: readonly SheetMake[];
  /** When percentages are asked for and there is flour. */
  readonly formula?: SheetFormula;
  readonly warnings: readonly SheetWarning[];
}
