import type { Diagnostic, Span } from '@quern/text';
import type { CupSystem, Rational, UnitId } from '@quern/quantity';
import type { PlacedPassage } from './passages.js';
import type { Source } from './source.js';

/*
 * The syntax tree. A line is the unit of parsing: each line's tree depends on the text of that line alone, its spans
 * count from the start of the line, and it is never changed, so that it can be kept and reused by the text of the line.
 */

/**
 * A number outside a NumberRange. `fraction` is there when it was written as a fraction, so that the printer writes
 * `1 1/2` again where the writer did; the value is the same either way.
 */
export interface Numeral extends Rational {
  readonly fraction?: true;
  /** Digits after the point, when there are more than the value needs (`1.50`). */
  readonly decimals?: number;
}

/** One number or a range; a single number has `low` and `high` the same value. */
export interface NumberRange {
  readonly span: Span;
  readonly low: Rational;
  readonly high: Rational;
  readonly single: boolean;
  /** Digits after the decimal point of the finer bound, or null when a bound is written as a fraction (then it is exact). */
  readonly decimals: number | null;
}

export interface UnitWord {
  readonly span: Span;
  readonly id: UnitId;
}

/** `60 g`, `340-360 g`, `1 1/2 cups`, `1 lb 4 oz` (`and` holds the 4 oz). */
export interface Measure {
  readonly kind: 'measure';
  readonly span: Span;
  readonly about: boolean;
  readonly range: NumberRange;
  readonly unit: UnitWord;
  readonly and?: { readonly value: Numeral; readonly unit: UnitWord };
}

/** A bare number: so many of the thing. */
export interface Count {
  readonly kind: 'count';
  readonly span: Span;
  readonly about: boolean;
  readonly range: NumberRange;
}

/** `2 tins of 400 g`, `1 bottle of 750 ml`. */
export interface Pack {
  readonly kind: 'pack';
  readonly span: Span;
  readonly about: boolean;
  readonly range: NumberRange;
  /** The container as written, 'tins'. */
  readonly container: string;
  readonly each: Measure;
}

/** `all`, `half of`, `rest of`, `1/3 of`, `40 % of` (`fraction` is 40/100). `all` has fraction 1, `half` 1/2; `rest` has none. */
export interface Share {
  readonly kind: 'share';
  readonly span: Span;
  readonly about: boolean;
  readonly word: 'all' | 'half' | 'rest' | 'fraction' | 'percent';
  readonly low?: Rational;
  readonly high?: Rational;
}

/** `6 servings of cheeks`, `2 loaves of rye`: a share of a dish reckoned in its yield or its servings. */
export interface Portion {
  readonly kind: 'portion';
  readonly span: Span;
  readonly about: boolean;
  readonly range: NumberRange;
  /** The word as written, 'servings'. */
  readonly of: string;
}

/** `2 %`, `1.8-2 %`; reckoned on something. The range is in hundredths as written (2, not 0.02). */
export interface Percent {
  readonly kind: 'percent';
  readonly span: Span;
  readonly about: boolean;
  readonly range: NumberRange;
}

/** `a little`, `enough`. */
export interface Open {
  readonly kind: 'open';
  readonly span: Span;
  readonly about: boolean;
  readonly word: 'a little' | 'enough';
}

export type Amount = Measure | Count | Pack | Share | Portion | Percent | Open;

export interface Name {
  readonly span: Span;
  /** As written, runs of white space made one. */
  readonly text: string;
}

/** `= 1 cup`, `= about 200 g`, `= 50 g each`. */
export interface Equal {
  readonly span: Span;
  readonly amount: Measure | Count;
  readonly each: boolean;
}

/** Free words: a note after a comma, a fact's text. Spans the words without the space around them. */
export interface Words {
  readonly span: Span;
  readonly text: string;
}

export type TimeUnit = 's' | 'min' | 'h' | 'd' | 'week' | 'month';

/** One bound of a time as written, `2 h 30 min`, and in exact minutes (a week is 7 d, a month 30 d). */
export interface Duration {
  readonly minutes: Rational;
  readonly parts: readonly { readonly value: Numeral; readonly unit: TimeUnit }[];
}

/** `10-14 h`, `about 20 min`, `overnight`, `30 min or more`. */
export interface Time {
  readonly span: Span;
  readonly kind: 'fixed' | 'range' | 'at-least' | 'overnight';
  readonly about: boolean;
  /** For `overnight` 8 h and 16 h. For `at-least` both are the least. */
  readonly low: Duration;
  readonly high: Duration;
}

/** `24 C`, `150-160 C`, `-18 C`. As written; the scale is kept. */
export interface Temperature {
  readonly span: Span;
  readonly low: Numeral;
  readonly high: Numeral;
  readonly scale: 'C' | 'F';
}

/** `at 190 C = 375 F fan`, `at 250 C falling to 200 C`. */
export interface AtClause {
  readonly kind: 'at';
  readonly span: Span;
  readonly temperature: Temperature;
  readonly equal?: Temperature;
  readonly change?: { readonly direction: 'falling' | 'rising'; readonly to: Temperature };
  readonly fan: boolean;
}

/** `until 97 C`, `until pH 4.2`, `until pH below 4.6`. */
export interface UntilClause {
  readonly kind: 'until';
  readonly span: Span;
  readonly temperature?: Temperature;
  readonly acidity?: { readonly span: Span; readonly value: Numeral; readonly below: boolean };
}

/** `using hob`, `using 1 shelf, mixer`. */
export interface UsingClause {
  readonly kind: 'using';
  readonly span: Span;
  readonly things: readonly Thing[];
}

/** `4 rings`, `1 oven of 2 shelves at 50-250 C`, `churn`; count is 1 when not written. */
export interface Thing {
  readonly span: Span;
  readonly count: Numeral;
  /** Singular, lower case. */
  readonly name: string;
  /** The name as written, when that is not the singular in lower case. */
  readonly written?: string;
  /** There when no number was written. */
  readonly bare?: true;
  readonly shelves?: Numeral;
  /** How cool and how hot an oven of a kitchen can be set; only after `has`. */
  readonly heat?: Temperature;
}

export type Clause = AtClause | UntilClause | UsingClause;
export type Lane = 'hands' | 'wait' | 'oven' | 'hob';

/** Prose after a colon: as typed, with the places in square brackets that scale. */
export interface Prose {
  readonly span: Span;
  readonly text: string;
  readonly brackets: readonly Bracket[];
}

/** `[14 g]`, `[2]`, `[1/3 of butter]`. The span includes the brackets; `amount` is missing when it cannot be read. */
export interface Bracket {
  readonly span: Span;
  readonly text: string;
  readonly amount?: Measure | Count | Share;
  /** After a share: of what. */
  readonly of?: Name;
}

interface LineBase {
  /** White space before the first word. */
  readonly indent: number;
}

export interface BlankLine extends LineBase {
  readonly kind: 'blank';
}
export interface CommentLine extends LineBase {
  readonly kind: 'comment';
  readonly words: Words;
}
/** A line that cannot be read. Its text is kept; `opening` is its first word. */
export interface BadLine extends LineBase {
  readonly kind: 'bad';
  readonly opening: string;
}
/** A version-control conflict mark left in the file. */
export interface ConflictLine extends LineBase {
  readonly kind: 'conflict';
}

/** What goes in; an `or` line has the same shape and stands in for the line above. */
export interface InLine extends LineBase {
  readonly kind: 'in' | 'or';
  readonly optional: boolean;
  readonly amount: Amount;
  /** `any nut`: `any` is true and the name is the class. */
  readonly any: boolean;
  readonly name: Name;
  /** `on flour`; the name `all` means everything in the pot. */
  readonly on?: Name;
  readonly equals: readonly Equal[];
  readonly note?: Words;
  /** `as NAME` after the name: the food of the table that is meant. */
  readonly as?: Name;
}

/** What comes out. */
export interface OutLine extends LineBase {
  readonly kind: 'out';
  readonly verb: 'lose' | 'bin' | 'save';
  readonly amount: Amount;
  /** From which thing; `liquid` for the liquids. */
  readonly of?: Name;
  readonly as?: Name;
  readonly equals: readonly Equal[];
  readonly note?: Words;
}

export interface StepLine extends LineBase {
  readonly kind: 'step';
  readonly lane: Lane;
  readonly laneSpan: Span;
  readonly time?: Time;
  readonly clauses: readonly Clause[];
  readonly prose: Prose;
}

export interface EveryLine extends LineBase {
  readonly kind: 'every';
  readonly period: Time;
  readonly duration?: Time;
  readonly prose: Prose;
}

export interface MoreLine extends LineBase {
  readonly kind: 'more';
  readonly prose: Prose;
}

/** `check 1804 g`, `check 78 % water on flour`, `check 40 % flour from biga`. */
export interface CheckLine extends LineBase {
  readonly kind: 'check';
  readonly amount: Measure | Percent | Count;
  readonly name?: Name;
  readonly on?: Name;
  readonly from?: Name;
}

export type BlockWord = 'recipe' | 'make' | 'variant' | 'food' | 'culture' | 'kitchen' | 'menu' | 'course';

export interface BlockLine extends LineBase {
  readonly kind: 'block';
  readonly block: BlockWord;
  readonly wordSpan: Span;
  /** Missing only for a course. */
  readonly name?: Name;
  /** `make dough = 2335 g`. */
  readonly equal?: Measure;
  /** `course 19:30`: minutes after midnight. */
  readonly clock?: ClockTime;
}

export interface ClockTime {
  readonly span: Span;
  readonly minutes: number;
}

/** Facts whose value is free words. */
export interface TextFact extends LineBase {
  readonly kind: 'text-fact';
  readonly word: 'by' | 'source' | 'photo' | 'note' | 'tip' | 'warning' | 'serve with' | 'language';
  readonly words: Words;
}
/** Facts whose value is a list of words. */
export interface ListFact extends LineBase {
  readonly kind: 'list-fact';
  readonly word: 'keywords' | 'free of' | 'contains' | 'traces';
  readonly items: readonly Words[];
}
export interface CupFact extends LineBase {
  readonly kind: 'cup';
  readonly system: CupSystem;
}
/** `gives 2 loaves of 1040 g`, `gives 1.2 kg`, `gives 16 crescents`. `of` is the thing counted. */
export interface GivesFact extends LineBase {
  readonly kind: 'gives';
  readonly about?: boolean;
  readonly count?: NumberRange;
  readonly thing?: Words;
  readonly each?: Measure;
  readonly total?: Measure;
}
export interface ServesFact extends LineBase {
  readonly kind: 'serves';
  readonly range: NumberRange;
  readonly thing?: Words;
}
/** `vessel 2 loaf tins of 23 x 11 x 8 cm`; with two lengths a round one (across, deep), with three a box, or a volume. */
export interface VesselFact extends LineBase {
  readonly kind: 'vessel';
  readonly count: Numeral;
  readonly thing: Words;
  readonly volume?: Measure;
  readonly lengths?: readonly Numeral[];
  readonly lengthUnit?: UnitId;
}
export interface BasisFact extends LineBase {
  readonly kind: 'basis';
  readonly name: Name;
}
export interface CountFact extends LineBase {
  readonly kind: 'count-as';
  readonly name: Name;
  readonly as: 'flour' | 'water' | 'other';
}
export interface UseFact extends LineBase {
  readonly kind: 'use';
  readonly name: Name;
  readonly path: Words;
  readonly as?: Name;
}
export interface KeepsFact extends LineBase {
  readonly kind: 'keeps';
  readonly time: Time;
  readonly at?: Temperature;
  readonly note?: Words;
}
export interface BestFact extends LineBase {
  readonly kind: 'best-after';
  readonly time: Time;
  readonly note?: Words;
}
export interface PerFact extends LineBase {
  readonly kind: 'per';
  readonly basis: '100 g' | '100 ml';
  readonly values: readonly {
    readonly span: Span;
    readonly nutrient: string;
    readonly value: Numeral;
    readonly unit: string;
  }[];
}
export interface PartsFact extends LineBase {
  readonly kind: 'parts';
  readonly parts: readonly { readonly value: Numeral; readonly name: Name }[];
}
export interface WeighsFact extends LineBase {
  readonly kind: 'weighs';
  readonly amount: Measure | Count;
  readonly equal: Measure;
}
export interface SwapFact extends LineBase {
  readonly kind: 'swap';
  readonly from: Name;
  readonly in?: Name;
  readonly amount?: Amount;
  readonly to: Name;
}
export interface DropFact extends LineBase {
  readonly kind: 'drop';
  readonly name: Name;
  readonly in?: Name;
}
export interface AddFact extends LineBase {
  readonly kind: 'add';
  readonly amount: Amount;
  readonly name: Name;
  readonly beside: Name;
}
export interface TimesFact extends LineBase {
  readonly kind: 'times';
  readonly factor: Numeral;
}
export interface HasFact extends LineBase {
  readonly kind: 'has';
  readonly things: readonly Thing[];
}
export interface AwakeFact extends LineBase {
  readonly kind: 'awake';
  readonly from: ClockTime;
  readonly to: ClockTime;
}
export interface RoomFact extends LineBase {
  readonly kind: 'room';
  readonly temperature: Temperature;
}
/** How long things may stand in a kitchen: `stand 1 h` between two steps, `hold 2 h` a finished product. */
export interface StandFact extends LineBase {
  readonly kind: 'stand';
  readonly word: 'stand' | 'hold';
  readonly time: Time;
}
/** `stretch 10 %`: how far a wait of a single figure may be drawn out in a kitchen. */
export interface StretchFact extends LineBase {
  readonly kind: 'stretch';
  readonly percent: NumberRange;
}
/** `date 2041-02-16`; the text is a valid ISO 8601 date. */
export interface DateFact extends LineBase {
  readonly kind: 'date';
  readonly date: string;
  readonly span: Span;
}
/** `baked 2041-02-16, 2 loaves, lost 11.4 %: crumb tighter than last week`. */
export interface BakedFact extends LineBase {
  readonly kind: 'baked';
  readonly date: string;
  readonly yield?: Words;
  readonly lost?: NumberRange;
  readonly remark?: Words;
}

export type FactLine =
  | TextFact
  | ListFact
  | CupFact
  | GivesFact
  | ServesFact
  | VesselFact
  | BasisFact
  | CountFact
  | UseFact
  | KeepsFact
  | BestFact
  | PerFact
  | PartsFact
  | WeighsFact
  | SwapFact
  | DropFact
  | AddFact
  | TimesFact
  | HasFact
  | AwakeFact
  | RoomFact
  | StandFact
  | StretchFact
  | DateFact
  | BakedFact;

export type LineContent =
  | BlankLine
  | CommentLine
  | BadLine
  | ConflictLine
  | InLine
  | OutLine
  | StepLine
  | EveryLine
  | MoreLine
  | CheckLine
  | BlockLine
  | FactLine;

/** What parsing one line's text gives: kept by the text of the line, spans from the line's start. */
export interface ParsedLine {
  readonly content: LineContent;
  /** Messages of this line; their places have an empty file and count from the start of the line. */
  readonly messages: readonly Diagnostic[];
}

/** A line in its file. */
export interface Line {
  /** Zero-based. */
  readonly number: number;
  /** Offset of its first character in the file. */
  readonly start: number;
  /** Without its line end. */
  readonly text: string;
  /** The line end as it stands in the file: `\n`, `\r\n`, `\r`, or empty for the last. */
  readonly ending: string;
  readonly parsed: ParsedLine;
  /** Only on a line of a variant that stands in another file than its recipe: that file. */
  readonly file?: string;
}

/** A file read: every line has a node, and the lines' texts and endings put together are the file. */
export interface Document extends Source {
  readonly path: string;
  readonly text: string;
  /** Whether the file began with a byte-order mark (it is not part of the first line's text but counts in offsets). */
  readonly byteOrderMark: boolean;
  readonly lines: readonly Line[];
  /** The same lines from recipe heading to recipe heading; whoever asks for one of them makes no other. */
  readonly passages: readonly PlacedPassage[];
  readonly lineCount: number;
}
