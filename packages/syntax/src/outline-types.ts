import type { Diagnostic } from '@quern/text';
import type {
  AwakeFact,
  BadLine,
  BlockLine,
  CheckLine,
  DateFact,
  EveryLine,
  FactLine,
  HasFact,
  InLine,
  Line,
  LineContent,
  MoreLine,
  OutLine,
  RoomFact,
  StepLine,
  TextFact,
} from './ast.js';

/** A line with its content known to be of one kind. */
export interface Typed<C extends LineContent> {
  readonly line: Line;
  readonly content: C;
}

/** One thing in the body of a make, in the order written. */
export type BodyItem =
  | { readonly kind: 'in'; readonly main: Typed<InLine>; readonly alternatives: readonly Typed<InLine>[] }
  | { readonly kind: 'out'; readonly main: Typed<OutLine> }
  | {
      readonly kind: 'step';
      readonly main: Typed<StepLine>;
      readonly more: readonly Typed<MoreLine>[];
      readonly every: readonly Typed<EveryLine>[];
    }
  | { readonly kind: 'check'; readonly main: Typed<CheckLine> }
  /** note, tip, warning, serve with inside a make */
  | { readonly kind: 'remark'; readonly main: Typed<TextFact> }
  /** A line that cannot be read: the pot is inexact from here. */
  | { readonly kind: 'bad'; readonly main: Typed<BadLine> };

export interface MakeBlock {
  /** Missing for the unnamed product of a recipe without `make`. */
  readonly heading?: Typed<BlockLine>;
  /** Opened by an unreadable line after a blank line (section 8). */
  readonly unnamed?: Line;
  readonly items: readonly BodyItem[];
  /** keeps, best after. */
  readonly facts: readonly Typed<FactLine>[];
}

export interface VariantBlock {
  readonly heading: Typed<BlockLine>;
  /** swap, drop, add, times and replacing facts, in the order written. */
  readonly facts: readonly Typed<FactLine>[];
  readonly makes: readonly MakeBlock[];
}

export interface RecipeBlock {
  readonly heading: Typed<BlockLine>;
  readonly facts: readonly Typed<FactLine>[];
  readonly makes: readonly MakeBlock[];
  readonly variants: readonly VariantBlock[];
}

/** food, culture: facts; a culture also has `every` lines. */
export interface FoodBlock {
  readonly heading: Typed<BlockLine>;
  readonly facts: readonly Typed<FactLine>[];
  readonly every: readonly Typed<EveryLine>[];
}

export interface KitchenBlock {
  readonly heading: Typed<BlockLine>;
  readonly facts: readonly Typed<HasFact | AwakeFact | RoomFact | FactLine>[];
}

export interface CourseBlock {
  readonly heading: Typed<BlockLine>;
  readonly lines: readonly { readonly main: Typed<InLine>; readonly alternatives: readonly Typed<InLine>[] }[];
}

export interface MenuBlock {
  readonly heading: Typed<BlockLine>;
  readonly facts: readonly Typed<DateFact | FactLine>[];
  readonly courses: readonly CourseBlock[];
}

/** A file as blocks. */
export interface Outline {
  /** `use`, `cup`, `language` before the first block. */
  readonly head: readonly Typed<FactLine>[];
  readonly recipes: readonly RecipeBlock[];
  /** Variants above every recipe: of the recipe that the last `use` line of the head brings in. */
  readonly variants: readonly VariantBlock[];
  readonly foods: readonly FoodBlock[];
  readonly cultures: readonly FoodBlock[];
  readonly kitchens: readonly KitchenBlock[];
  readonly menus: readonly MenuBlock[];
  /** Messages about which line stands where; places carry the file and count from its start. */
  readonly diagnostics: readonly Diagnostic[];
}
