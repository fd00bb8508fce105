import type { Diagnostic } from '@quern/text';
import type { CupSystem, Rational } from '@quern/quantity';
import type { Bound, BoundMake, SwapAt } from '../bind.js';
import type { PotParts } from './parts.js';
import type { Culture, Draw, Entry, Item, Part, Pot, Unknown } from '../model.js';
import type { Counts } from '../substances.js';
import type { Pick, Taught } from '../weighing.js';

export interface LedgerInput {
  readonly bound: Bound;
  readonly cultures: ReadonlyMap<string, Culture>;
  readonly cups: CupSystem;
  readonly pick: Pick;
  readonly taught: ReadonlyMap<string, readonly Taught[]>;
  /** Foods that count as flour, water or neither, by key, where the file says so. */
  readonly counts: Counts;
  /** The recipe's flour, in grams; undefined while it is being found, or when there is none. */
  readonly flour: Rational | undefined;
  /** A variant's `times`: checks keep their figures and are compared with what is found divided by it. */
  readonly checkFactor: Rational | undefined;
  readonly swapAt: SwapAt;
  report(diagnostic: Diagnostic): void;
}

export interface RunProduct {
  parts: readonly Part[];
  grams: Rational | undefined;
  draws: Draw[];
}

export interface LedgerRun {
  readonly makes: readonly { readonly items: readonly Item[]; readonly pot: Pot }[];
  readonly products: ReadonlyMap<string, RunProduct>;
  /** The fullest line of flour. */
  readonly peak:
    | {
        readonly makeIndex: number;
        readonly entryIndex: number;
        readonly grams: Rational;
        readonly parts: readonly Part[];
      }
    | undefined;
  /** A percent is reckoned on the recipe's flour. */
  readonly asksForFlour: boolean;
  /** Which make each drawable name comes from. */
  readonly makeOf: ReadonlyMap<string, number>;
  /** Grams taken from and given back to each culture. */
  readonly cultureTaken: ReadonlyMap<string, Rational>;
  readonly cultureSaved: ReadonlyMap<string, Rational>;
}

/** What a run knows so far. */
export interface RunState {
  readonly input: LedgerInput;
  readonly products: Map<string, RunProduct>;
  readonly taken: Map<string, Rational>;
  readonly saved: Map<string, Rational>;
  asksForFlour: boolean;
  peak: LedgerRun['peak'];
  /** Alcohol that has boiled off and that the loss written below covers. */
  pendingAlcohol: Rational;
}

/** A pot while its lines run. */
export interface OpenPot {
  readonly make: BoundMake;
  readonly parts: PotParts;
  readonly entries: Entry[];
  readonly unknown: Unknown[];
  /** Grams of flour in it now, kept up to date. */
  flour: Rational;
  /** What stood in it when it boiled, while nothing but lines that put something in has come since. */
  boiling: ReturnType<PotParts['snapshot']> | undefined;
}
