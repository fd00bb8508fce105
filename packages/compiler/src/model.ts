import type { Diagnostic, Place } from '@quern/text';
import type { CupSystem, Rational } from '@quern/quantity';
import type {
  BakedFact,
  CheckLine,
  EveryLine,
  GivesFact,
  InLine,
  KeepsFact,
  BestFact,
  Line,
  Measure,
  MoreLine,
  RecipeBlock,
  OutLine,
  ServesFact,
  StepLine,
  TextFact,
  Thing,
  VesselFact,
  Document,
  ClockTime,
  Temperature,
  Time,
  VariantBlock,
} from '@quern/syntax';
import type { NamedProduct } from './bind.js';
import type { Food, FoodMatch } from './food-book.js';

/*
 * What a compiled recipe is: a value, exact and whole, that every view reads and none changes.
 * A quantity that cannot be known is `undefined`, never zero; `Pot.unknown` says why.
 * Masses are grams. Ranges stand at their middle; `Formula.bounds` runs the ledger at the ends.
 */

/** A line in its file; with `Line.start` every span of the line becomes a place. */
export interface LineRef {
  readonly file: string;
  readonly line: Line;
}

/** A food as the ledger knows it. `key` is the same wherever the same food is meant. */
export interface LedgerFood {
  readonly key: string;
  /** The name as the writer first wrote it. */
  readonly name: string;
  /** Missing when neither the table nor the file knows it: then its nutrition and allergens are unknown. */
  readonly food?: Food;
  readonly match?: FoodMatch;
  /** Where the food comes from: the table, a `food` block of the file, or nowhere. */
  readonly from: 'table' | 'file' | 'unknown';
}

/**
 * Some grams of one food in a pot, with where they came from and what has left them.
 * Mass that stands in the pot = grams - waterLost - alcoholLost.
 */
export interface Part {
  readonly food: LedgerFood;
  /** The in line that first put it in, in whatever make that was. */
  readonly origin: LineRef;
  /** The product through which it came into this pot ('' when a line of this make put it in). */
  readonly via: string;
  /** The culture whose part it is, if it came in as a culture. */
  readonly culture?: string;
  /** Grams as put in, less the shares taken out. */
  readonly grams: Rational;
  readonly waterLost: Rational;
  readonly alcoholLost: Rational;
  /**
   * For the retention of alcohol, of parts that have any: minutes on the hob or in the oven so far, those of them before
   * anybody stirred it in, and whether anybody has.
   */
  readonly heatedMinutes: Rational;
  readonly unstirredMinutes: Rational;
  readonly stirred: boolean;
}

/** One movement in a pot. */
export interface Entry {
  /** The line that moves it; missing for what the compiler works out itself (alcohol that boils off). */
  readonly ref?: LineRef;
  readonly kind: 'food' | 'draw' | 'lose' | 'bin' | 'save' | 'alcohol';
  /** What moved, as positive parts. For lost water and alcohol see `water` and `alcohol`. */
  readonly parts: readonly Part[];
  /** Grams of water that left as water (from the water of everything in the pot). */
  readonly water: Rational;
  readonly alcohol: Rational;
  /** Grams moved in all; undefined when unknown. */
  readonly grams: Rational | undefined;
  /** What stands in the pot after this line; undefined once something unknown went in. */
  readonly totalAfter: Rational | undefined;
}

/** Why a weight is not known. */
export interface Unknown {
  readonly ref: LineRef;
  readonly why: 'no-weight' | 'bad-line' | 'depends';
  readonly name: string;
}

/** A pot at its end. */
export interface Pot {
  readonly entries: readonly Entry[];
  readonly parts: readonly Part[];
  /** Undefined when something in it is unknown. */
  readonly grams: Rational | undefined;
  readonly unknown: readonly Unknown[];
}

/** A product that can be drawn: a make, a saved thing, or something from another file. */
export interface Product {
  readonly kind: 'make' | 'saved' | 'used';
  readonly name: string;
  /** Where it is named. */
  readonly place: Place;
  /** Index of the make that makes or saves it; -1 for a used one. */
  readonly makeIndex: number;
  /** For a saved thing: index of its item in that make. */
  readonly itemIndex: number;
  readonly parts: readonly Part[];
  readonly grams: Rational | undefined;
  /** Draws of it in order. */
  readonly draws: readonly Draw[];
  /** For `use`: the formula it comes from, and the make of that (and the item in it, for a saved thing; else -1). */
  readonly formula?: Formula;
  readonly origin?: { readonly makeIndex: number; readonly itemIndex: number };
}

export interface Draw {
  readonly makeIndex: number;
  readonly itemIndex: number;
  readonly grams: Rational | undefined;
  /** Of the whole product, 0 to 1 (above 1 for a used product that is scaled up). */
  readonly share: Rational | undefined;
  readonly optional: boolean;
}

/** What an in line means. */
export type Source =
  | { readonly kind: 'food'; readonly food: LedgerFood }
  | { readonly kind: 'product'; readonly product: string }
  | { readonly kind: 'culture'; readonly culture: string }
  | { readonly kind: 'any'; readonly class: string; readonly foods: readonly Food[] };

/** One measure of a line in grams and where the weight comes from. */
export interface Weighed {
  readonly grams: Rational | undefined;
  /** `stated`: a weight is written. `table`: by the food table. `taught`: by another line of the file. `reckoned`: percent or share. `estimate`: an open amount's stated guess. */
  readonly basis: 'stated' | 'table' | 'taught' | 'reckoned' | 'estimate' | 'unknown';
  readonly sources: readonly string[];
}

export interface InItem {
  readonly kind: 'in';
  readonly ref: LineRef;
  readonly content: InLine;
  readonly source: Source;
  readonly weighed: Weighed;
  /** For a draw: share of the product. */
  readonly share?: Rational;
  /** For a percent: what it is reckoned on, as a name to print, and that thing's grams. */
  readonly on?: { readonly name: string; readonly grams: Rational | undefined };
  readonly optional: boolean;
  /** The `or` lines that may stand in for it. */
  readonly alternatives: readonly InItem[];
}

export interface OutItem {
  readonly kind: 'out';
  readonly ref: LineRef;
  readonly content: OutLine;
  readonly grams: Rational | undefined;
  /** Name of what is saved, if it is a new thing or a culture. */
  readonly saved?: string;
  /** How it was taken: evenly, from one food or product, from the liquid, or as water. */
  readonly manner: 'evenly' | 'of' | 'liquid' | 'food';
  /** Composition is an estimate (a drained liquid). */
  readonly estimate: boolean;
}

export interface StepItem {
  readonly kind: 'step';
  readonly ref: LineRef;
  readonly content: StepLine;
  readonly more: readonly { readonly ref: LineRef; readonly content: MoreLine }[];
  readonly every: readonly { readonly ref: LineRef; readonly content: EveryLine }[];
}

export interface CheckItem {
  readonly kind: 'check';
  readonly ref: LineRef;
  readonly content: CheckLine;
  /** undefined when it depends on something unknown. */
  readonly holds: boolean | undefined;
  /** The computed value: grams, or hundredths for a percent. */
  readonly found: Rational | undefined;
}

/** note, tip, warning, serve with: prints under the step above. */
export interface RemarkItem {
  readonly kind: 'remark';
  readonly ref: LineRef;
  readonly content: TextFact;
}

export type Item = InItem | OutItem | StepItem | CheckItem | RemarkItem;

export interface Keeping {
  readonly ref: LineRef;
  readonly content: KeepsFact;
}
export interface Ageing {
  readonly ref: LineRef;
  readonly content: BestFact;
}

export interface Make {
  /** Stable in a recipe: its name, normalised. */
  readonly id: string;
  readonly name: string;
  readonly index: number;
  /** The block line; for a simple dish without `make`, the recipe's line. */
  readonly ref: LineRef;
  readonly implicit: boolean;
  /** The weight asserted after `make NAME =`. */
  readonly asserted?: Measure;
  readonly items: readonly Item[];
  readonly pot: Pot;
  readonly keeps: readonly Keeping[];
  readonly bestAfter: readonly Ageing[];
}

/** Baker's reckoning of a recipe. */
export interface Flour {
  /** Grams of flour that stand together at the fullest line; all percentages are on this. */
  readonly grams: Rational;
  readonly makeIndex: number;
  /** Index of the entry in that make's pot at which the flour is all there. */
  readonly entryIndex: number;
  /** Everything put with that flour, before or after, less what was saved or binned before: food by food. */
  readonly formula: readonly { readonly food: LedgerFood; readonly grams: Rational; readonly percent: Rational }[];
  /** Share of the flour that came in through other makes, 0 to 1. */
  readonly prefermented: Rational;
  /** Food water (foods marked or counted as water) on flour, 0 to 1 and above. */
  readonly hydration: Rational;
  /** The water content of everything in the formula on flour. */
  readonly allWater: Rational | undefined;
}

export interface Culture {
  readonly name: string;
  readonly ref: LineRef;
  readonly parts: readonly { readonly food: LedgerFood; readonly share: Rational }[];
  readonly upkeep: readonly { readonly ref: LineRef; readonly content: EveryLine }[];
}

export interface Kitchen {
  readonly name: string;
  readonly ref: LineRef;
  readonly has: readonly Thing[];
  readonly awake?: { readonly from: ClockTime; readonly to: ClockTime };
  readonly room?: Temperature;
  /** `traces` declared for the whole kitchen. */
  readonly traces: readonly string[];
  /** How long a thing may stand idle between two steps, and a finished product before it is used. */
  readonly stand?: Time;
  readonly hold?: Time;
  /** How far a wait of a single figure may be drawn out, as a share (0.1 for a tenth). */
  readonly stretch?: Rational;
}

/** The facts of a recipe, with the last of each kind; those that may repeat are lists. */
export interface RecipeFacts {
  readonly by: readonly string[];
  readonly source: readonly string[];
  readonly photo: readonly string[];
  readonly keywords: readonly string[];
  readonly language: string;
  readonly notes: readonly string[];
  readonly tips: readonly string[];
  readonly warnings: readonly string[];
  readonly serveWith: readonly string[];
  /** Each promise as written, in small letters. */
  readonly freeOf: readonly { readonly allergen: string; readonly place: Place }[];
  readonly cups: CupSystem;
  readonly gives?: { readonly ref: LineRef; readonly content: GivesFact };
  readonly serves?: { readonly ref: LineRef; readonly content: ServesFact };
  readonly vessel?: { readonly ref: LineRef; readonly content: VesselFact };
  readonly basis?: string;
  readonly baked: readonly { readonly ref: LineRef; readonly content: BakedFact }[];
}

/** How a variant differs, in the order written: for the words on a card and the check of stale edits. */
export interface VariantEdit {
  readonly ref: LineRef;
  readonly kind: 'swap' | 'drop' | 'add' | 'times' | 'fact' | 'make';
  /** Lines of the base that it touched; empty when it selects nothing. */
  readonly touched: readonly number[];
}

/** The file in which a variant of another file's recipe stands, with what it brings along. */
export interface VaryFrom {
  readonly file: string;
  readonly foods: ReadonlyMap<string, LedgerFood>;
  readonly cultures: ReadonlyMap<string, Culture>;
  /** Names of what the file uses, by normalised name. */
  readonly used: ReadonlyMap<string, NamedProduct>;
}

export interface Varied {
  readonly formula: Formula;
  /** Of the file in which the variant stands. */
  readonly diagnostics: readonly Diagnostic[];
}

/** One recipe or one variant of it, compiled. */
export interface Formula {
  /** `path#title` or `path#title@variant`, all normalised. */
  readonly id: string;
  readonly file: string;
  readonly title: string;
  readonly variant?: string;
  readonly variantRef?: LineRef;
  /** Of a variant that stands in another file: the recipe as it stands. */
  readonly base?: Formula;
  readonly edits: readonly VariantEdit[];
  readonly ref: LineRef;
  /** The lines as compiled: of a variant, with its edits made. */
  readonly block: RecipeBlock;
  readonly facts: RecipeFacts;
  readonly makes: readonly Make[];
  /** Products by normalised name. */
  readonly products: ReadonlyMap<string, Product>;
  readonly cultures: ReadonlyMap<string, Culture>;
  readonly flour: Flour | undefined;
  /** Whether a food counts as flour in this recipe. */
  isFlour(food: LedgerFood): boolean;
  /** Weight of the dish after all lines; undefined when unknown. */
  readonly dishGrams: Rational | undefined;
  /** Number of servings, if written. */
  readonly servings: Rational | undefined;
  /** Pieces the recipe gives (2 loaves), if written. */
  readonly pieces: Rational | undefined;
  /** Names of the variants of the recipe (of the base; empty in a variant). */
  readonly variants: readonly string[];
  /** Errors stand in the lines of this formula: figures that depend on them are unknown. */
  readonly broken: boolean;
  /** Of a recipe as it stands: compiles a variant of it that stands in another file. */
  readonly vary?: (variant: VariantBlock, from: VaryFrom) => Varied;
  /** The dish's pot with every range at its low or its high end. Computed when asked, kept after. */
  bounds(): { readonly low: Formula; readonly high: Formula };
}

/** A dish of a menu. */
export interface MenuDish {
  readonly ref: LineRef;
  readonly formula: Formula | undefined;
  readonly name: string;
  /** Times the recipe. */
  readonly factor: Rational | undefined;
}
export interface MenuCourse {
  readonly ref: LineRef;
  readonly clock: ClockTime | undefined;
  readonly name: string;
  readonly dishes: readonly MenuDish[];
}
export interface Menu {
  readonly name: string;
  readonly ref: LineRef;
  readonly date: string | undefined;
  readonly courses: readonly MenuCourse[];
}

/** A file compiled, with what it uses. */
export interface Compiled {
  readonly path: string;
  readonly document: Document;
  /** Every recipe and every variant of it, base first. Made when first asked for; see `formulasAt`. */
  readonly formulas: readonly Formula[];
  /**
   * The formulas of the recipe to which a line belongs (that of the last `recipe` line above it), base first; empty
   * above the first. An editor asks for these alone, so that a keystroke does not cost the other recipes of the file.
   */
  formulasAt(line: number): readonly Formula[];
  readonly kitchens: readonly Kitchen[];
  readonly menus: readonly Menu[];
  readonly foods: ReadonlyMap<string, LedgerFood>;
  /** Files that were read for this one, in order. */
  readonly uses: readonly string[];
  /** All that is wrong with this file (not with the files it uses), in the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
}
