import { diagnose, sentence, type Diagnostic } from '@quern/text';
import type {
  BodyItem,
  FactLine,
  LineContent,
  MakeBlock,
  Outline,
  RecipeBlock,
  Typed,
  VariantBlock,
} from '@quern/syntax';
import type { NamedProduct } from './bind.js';
import { FoodScope } from './foods-in-file.js';
import type { FoodBook } from './food-book.js';
import { compileRecipe, type RecipeContext } from './formula.js';
import type { Culture, Formula, LedgerFood, LineRef, Varied } from './model.js';
import { normaliseName, quoted } from './names.js';
import { linePlace, placeOf } from './places.js';
import { withinLimits } from './limits.js';
import { expandVariant } from './variants.js';

/** What `use` lines bring in, by local name: things to draw, and foods that another file describes. */
export interface Used {
  readonly products: ReadonlyMap<string, NamedProduct>;
  readonly foods: ReadonlyMap<string, LedgerFood>;
}

/** What the recipes of a file share. */
export interface Surroundings {
  readonly file: string;
  readonly head: Outline['head'];
  readonly book: FoodBook;
  /** The file's own foods, and those its head uses, by normalised name. */
  readonly foods: ReadonlyMap<string, LedgerFood>;
  readonly cultures: ReadonlyMap<string, Culture>;
  /** Names of the things that the file's kitchens have. */
  readonly things: ReadonlySet<string>;
  /** What the head of the file uses from other files. */
  readonly used: ReadonlyMap<string, NamedProduct>;
  /** What `use` lines bring in, with what is wrong with them. */
  usesOf(facts: readonly Typed<FactLine>[], report: (d: Diagnostic) => void): Used;
}

/** A recipe with its variants. */
export interface CompiledRecipe {
  readonly formulas: readonly Formula[];
  readonly diagnostics: readonly Diagnostic[];
  /** Names of foods and cultures that were looked for in the file, found or not. */
  readonly looked: ReadonlySet<string>;
}

/** A map that remembers what was looked for in it. */
class Watched<V> extends Map<string, V> {
  constructor(
    entries: ReadonlyMap<string, V>,
    readonly looked: Set<string>,
  ) {
    super(entries);
  }

  override get(name: string): V | undefined {
    this.looked.add(name);
    return super.get(name);
  }

  override has(name: string): boolean {
    this.looked.add(name);
    return super.has(name);
  }
}

/** Compiles a recipe and each variant of it, base first. Depends on the recipe's own lines and on the surroundings only. */
export function compileUnit(written: RecipeBlock, around: Surroundings): CompiledRecipe {
  const said = new Said();
  const recipe = withinLimits(written, around.file, said.report);
  const looked = new Set<string>();
  // What `vary` keeps is taken out of the surroundings here: they hold the whole file as it is at this key.
  const { file, head, book, foods: ownFoods, cultures: ownCultures } = around;
  const cultures = new Watched(ownCultures, looked);
  const own = around.usesOf(recipe.facts, said.report);
  const used = new Map([...around.used, ...own.products]);
  const variants = recipe.variants.map((variant) => variant.heading.content.name?.text ?? '');
  const foods = new FoodScope(book, new Watched(new Map([...ownFoods, ...own.foods]), looked));
  const shared = { file, head, foods, cultures, used, variants, things: around.things };
  const vary: Formula['vary'] = (variant, from) => {
    const scope = new FoodScope(book, new Map([...ownFoods, ...own.foods, ...from.foods]));
    const theirs = {
      foods: scope,
      cultures: new Map([...ownCultures, ...from.cultures]),
      used: new Map([...used, ...from.used]),
    };
    const [base] = formulas;
    return varied(recipe, variant, from.file, { ...shared, ...theirs, ...(base ? { base } : {}) }, said);
  };
  const formulas: Formula[] = [compileRecipe(recipe, { ...shared, vary, report: said.report })];
  const names = new Set<string>();
  for (const variant of recipe.variants) {
    const name = variant.heading.content.name;
    const ref: LineRef = { file, line: variant.heading.line };
    if (name && names.has(normaliseName(name.text))) {
      said.report(diagnose('N03', placeOf(ref, name.span), { name: name.text }));
    }
    if (name) names.add(normaliseName(name.text));
    formulas.push(compileVariant(recipe, variant, ref, shared, said));
  }
  return { formulas, diagnostics: said.diagnostics, looked };
}

function compileVariant(
  recipe: RecipeBlock,
  variant: RecipeBlock['variants'][number],
  ref: LineRef,
  shared: Omit<RecipeContext, 'report'>,
  said: Said,
): Formula {
  const { recipe: expanded, edits, factor } = expandVariant(recipe, variant, shared.file, said.report);
  const name = variant.heading.content.name?.text ?? '';
  // A message about a variant says so; what the base already says is not said again.
  const report = (diagnostic: Diagnostic): void => {
    if (said.hasSaid(diagnostic)) return;
    said.report({
      ...diagnostic,
      related: [...diagnostic.related, { place: linePlace(ref), note: `in the variant ${quoted(name)}` }],
    });
  };
  const kept = withinLimits(expanded, shared.file, report);
  return compileRecipe(kept, { ...shared, variant: { name, ref, edits, factor }, report });
}

/** A variant that stands in another file than its recipe. What is said of it is said there. */
function varied(
  recipe: RecipeBlock,
  variant: VariantBlock,
  file: string,
  shared: Omit<RecipeContext, 'report'>,
  base: Said,
): Varied {
  const ref: LineRef = { file, line: variant.heading.line };
  const said = new Said(base);
  const formula = compileVariant(recipe, standingIn(variant, file), ref, shared, said);
  return { formula, diagnostics: said.diagnostics.map((diagnostic) => saidAt(ref, diagnostic)) };
}

/** A message about a line of the recipe's own file, told where the variant begins. */
function saidAt(ref: LineRef, diagnostic: Diagnostic): Diagnostic {
  if (diagnostic.place.file === ref.file) return diagnostic;
  const related = [{ place: diagnostic.place, note: 'this line' }, ...diagnostic.related];
  return { ...diagnostic, place: linePlace(ref), related };
}

/** The variant with every line marked as standing in its file. */
function standingIn(variant: VariantBlock, file: string): VariantBlock {
  const marked = <T extends Typed<LineContent>>(typed: T): T => ({ ...typed, line: { ...typed.line, file } });
  const item = (one: BodyItem): BodyItem => {
    if (one.kind === 'in') return { ...one, main: marked(one.main), alternatives: one.alternatives.map(marked) };
    if (one.kind === 'step')
      return { ...one, main: marked(one.main), more: one.more.map(marked), every: one.every.map(marked) };
    return { ...one, main: marked(one.main as Typed<LineContent>) } as BodyItem;
  };
  const make = (one: MakeBlock): MakeBlock => ({
    ...(one.heading ? { heading: marked(one.heading) } : {}),
    ...(one.unnamed ? { unnamed: { ...one.unnamed, file } } : {}),
    items: one.items.map(item),
    facts: one.facts.map(marked),
  });
  return { heading: marked(variant.heading), facts: variant.facts.map(marked), makes: variant.makes.map(make) };
}

/** Messages, each once. */
export class Said {
  readonly diagnostics: Diagnostic[] = [];
  /** What has been said with a code at a place: the sentences are put together only to tell two of them apart. */
  readonly #said = new Map<string, Diagnostic[]>();
  /** Code and place of what a file has said that this one varies. */
  readonly #before: ReadonlySet<string>;

  /** @param before what has been said already, by a file that this one varies. */
  constructor(before?: Said) {
    this.#before = new Set(before ? [...before.#before, ...before.#said.keys()] : []);
  }

  readonly report = (diagnostic: Diagnostic): void => {
    const here = placeKey(diagnostic);
    const before = this.#said.get(here);
    if (before?.some((one) => sentence(one) === sentence(diagnostic))) return;
    if (before === undefined) this.#said.set(here, [diagnostic]);
    else before.push(diagnostic);
    this.diagnostics.push(diagnostic);
  };

  /** Whether this has been said of a place, whatever the figures: a variant does not repeat its base. */
  hasSaid(diagnostic: Diagnostic): boolean {
    const here = placeKey(diagnostic);
    return this.#before.has(here) || this.#said.has(here);
  }
}

const placeKey = ({ code, place }: Diagnostic): string => `${code}:${place.file}:${place.start}:${place.end}`;
