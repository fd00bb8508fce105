import type { Diagnostic } from '@quern/text';
import { equal, type Rational } from '@quern/quantity';
import type { Amount, FactLine, RecipeBlock, Typed } from '@quern/syntax';
import { checkAgreement } from './agreement.js';
import { bindRecipe, type Bound, type BoundIn, type NamedProduct, type SwapAt } from './bind.js';
import { checkLedger } from './checks/ledger-checks.js';
import { checkPromises } from './checks/promises.js';
import { checkProse } from './checks/prose-checks.js';
import { checkSteps } from './checks/step-checks.js';
import { checkVessel } from './checks/vessel.js';
import { checkCountNames } from './checks/count-names.js';
import { checkNotes } from './checks/notes.js';
import { checkPlausible } from './checks/plausible.js';
import { checkUsing } from './checks/kitchen-things.js';
import { basisOf, countsOf, recipeFacts, yieldGrams } from './facts.js';
import { describeFlour, solveFlour } from './flour.js';
import type { FoodScope } from './foods-in-file.js';
import type { LedgerInput, LedgerRun } from './ledger/state.js';
import { countsAsFlour } from './substances.js';
import type { Culture, Formula, LineRef, Make, Product, RecipeFacts, VariantEdit } from './model.js';
import { normaliseName } from './names.js';
import { linePlace, refOf } from './places.js';
import { pickOf, type Pick, type Taught } from './weighing.js';

/** What a recipe is compiled with, besides its own lines. */
export interface RecipeContext {
  readonly file: string;
  readonly head: readonly Typed<FactLine>[];
  readonly foods: FoodScope;
  readonly cultures: ReadonlyMap<string, Culture>;
  readonly used: ReadonlyMap<string, NamedProduct>;
  readonly variants: readonly string[];
  /** Things that the kitchens of the file have, besides those every kitchen has. */
  readonly things: ReadonlySet<string>;
  readonly variant?: {
    readonly name: string;
    readonly ref: LineRef;
    readonly edits: readonly VariantEdit[];
    readonly factor: Rational | undefined;
  };
  /** Of a recipe as it stands: compiles a variant of it that stands in another file. */
  readonly vary?: Formula['vary'];
  readonly base?: Formula;
  report(diagnostic: Diagnostic): void;
}

/** Compiles one recipe block: facts, names, agreement of measures, flour, ledger, checks. Each step is one function. */
export function compileRecipe(recipe: RecipeBlock, context: RecipeContext): Formula {
  const { file, report } = context;
  const facts = recipeFacts(context.head, recipe.facts, file, report);
  const basis = basisOf([...context.head, ...recipe.facts], file);
  const swapAt = swapsOf(file, context.variant?.edits ?? []);
  const bound = bindRecipe(recipe, {
    file,
    foods: context.foods,
    cultures: context.cultures,
    used: context.used,
    swapAt,
    ...(basis ? { basis } : {}),
    report,
  });
  const counts = countsOf([...context.head, ...recipe.facts], (name) => context.foods.resolve(name).key);
  const taught = agree(bound, facts, context.foods, report);
  const inputs = (pick: Pick, say: (d: Diagnostic) => void): Omit<LedgerInput, 'flour'> => ({
    bound,
    cultures: context.cultures,
    cups: facts.cups,
    pick,
    taught,
    counts,
    checkFactor: context.variant?.factor,
    swapAt,
    report: say,
  });
  const make = (pick: Pick, say: (d: Diagnostic) => void): { formula: Formula; run: LedgerRun } => {
    const { run } = solveFlour(inputs(pick, say), yieldGrams(facts, pick), { file, line: recipe.heading.line });
    return { formula: assemble(recipe, context, facts, bound, run, counts, () => bounds()), run };
  };
  let ends: { low: Formula; high: Formula } | undefined;
  const bounds = (): { low: Formula; high: Formula } =>
    (ends ??= !leavesOpen(bound, facts)
      ? { low: formula, high: formula }
      : { low: make('low', () => undefined).formula, high: make('high', () => undefined).formula });

  const { formula, run } = make('middle', report);
  checkLedger(formula, bound, counts, run.cultureTaken, run.cultureSaved, report);
  checkSteps(formula, report);
  checkVessel(formula, report);
  checkPlausible(formula, report);
  checkCountNames([...context.head, ...recipe.facts], formula, context.foods, file, report);
  checkUsing(formula, context.things, report);
  checkNotes(formula, report);
  checkPromises(formula, report);
  checkProse(formula, context.foods, report);
  return formula;
}

/** Whether a line leaves anything open, so that the ledger has ends apart from its middle. */
function leavesOpen({ makes }: Bound, { gives }: RecipeFacts): boolean {
  const open = (range: { readonly low?: Rational; readonly high?: Rational } | undefined): boolean =>
    range?.low !== undefined && range.high !== undefined && !equal(range.low, range.high);
  const ofAmount = (amount: Amount): boolean => {
    if (amount.kind === 'open') return true;
    if (amount.kind === 'share') return open(amount);
    return open(amount.range) || (amount.kind === 'pack' && open(amount.each.range));
  };
  const yields = gives ? [gives.content.count, gives.content.each?.range, gives.content.total?.range] : [];
  return (
    yields.some(open) ||
    makes.some(({ items }) =>
      items.some((item) => {
        if (item.kind === 'step') {
          const { time } = item.content;
          return time !== undefined && !equal(time.low.minutes, time.high.minutes);
        }
        if (item.kind !== 'in' && item.kind !== 'out') return false;
        return ofAmount(item.content.amount) || item.content.equals.some(({ amount }) => ofAmount(amount));
      }),
    )
  );
}

/** A line is known by its number and its file: what a variant in a file of its own adds has numbers of that file. */
function swapsOf(file: string, edits: readonly VariantEdit[]): SwapAt {
  const swaps = new Map(
    edits
      .filter((edit) => edit.kind === 'swap')
      .flatMap((edit) => edit.touched.map((line): [number, LineRef] => [line, edit.ref])),
  );
  return (ref) => (ref.file === file ? swaps.get(ref.line.number) : undefined);
}

/** Runs the agreement check over all lines first, since a line may teach a weight that a line above it needs. */
function agree(
  bound: Bound,
  facts: RecipeFacts,
  foods: FoodScope,
  report: (d: Diagnostic) => void,
): ReadonlyMap<string, readonly Taught[]> {
  const taught = new Map<string, Taught[]>();
  const visit = (item: BoundIn): void => {
    if (item.food) {
      const learned = checkAgreement(item.content, item.ref, item.food, {
        cups: facts.cups,
        source: (id) => foods.book.source(id),
        report,
      });
      if (learned.length > 0) taught.set(item.food.key, [...(taught.get(item.food.key) ?? []), ...learned]);
    }
    item.alternatives.forEach(visit);
  };
  for (const make of bound.makes) for (const item of make.items) if (item.kind === 'in') visit(item);
  return taught;
}

function assemble(
  recipe: RecipeBlock,
  context: RecipeContext,
  facts: RecipeFacts,
  bound: Bound,
  run: LedgerRun,
  counts: LedgerInput['counts'],
  bounds: Formula['bounds'],
): Formula {
  const title = recipe.heading.content.name?.text ?? '';
  const makes = bound.makes.map((make, index): Make => {
    const asserted = make.block.heading?.content.equal;
    const { items, pot } = run.makes[index] ?? EMPTY;
    return {
      id: make.id,
      name: make.name,
      index,
      ref: make.ref,
      implicit: make.implicit,
      ...(asserted ? { asserted } : {}),
      items,
      pot,
      keeps: make.block.facts.flatMap(({ content, line }) =>
        content.kind === 'keeps' ? [{ ref: refOf(context.file, line), content }] : [],
      ),
      bestAfter: make.block.facts.flatMap(({ content, line }) =>
        content.kind === 'best-after' ? [{ ref: refOf(context.file, line), content }] : [],
      ),
    };
  });
  const dish = makes.at(-1);
  const variantName = context.variant?.name;
  const own = context.variant?.ref.file ?? context.file;
  const id = `${own}#${normaliseName(title)}${variantName ? `@${normaliseName(variantName)}` : ''}`;
  const flour = describeFlour(run, counts);
  return {
    id,
    file: own,
    title,
    ...(context.variant ? { variant: context.variant.name, variantRef: context.variant.ref } : {}),
    edits: context.variant?.edits ?? [],
    ref: { file: context.file, line: recipe.heading.line },
    block: recipe,
    facts,
    makes,
    products: products(bound, run),
    cultures: context.cultures,
    flour,
    isFlour: (food) => countsAsFlour(food, counts),
    dishGrams: dish?.pot.grams,
    servings: facts.serves ? pickOf(facts.serves.content.range, 'middle') : undefined,
    pieces: facts.gives?.content.count ? pickOf(facts.gives.content.count, 'middle') : undefined,
    variants: context.variant ? [] : context.variants,
    ...(context.vary ? { vary: context.vary } : {}),
    ...(context.base ? { base: context.base } : {}),
    broken: makes.some((make) => make.pot.unknown.some((entry) => entry.why === 'bad-line')),
    bounds,
  };
}

const EMPTY: LedgerRun['makes'][number] = { items: [], pot: { entries: [], parts: [], grams: undefined, unknown: [] } };

function products(bound: Bound, run: LedgerRun): ReadonlyMap<string, Product> {
  const result = new Map<string, Product>();
  for (const [name, named] of bound.products) {
    const made = run.products.get(name);
    result.set(name, {
      kind: named.kind,
      name: named.name,
      place: linePlace(named.ref),
      makeIndex: named.makeIndex,
      itemIndex: named.itemIndex,
      parts: made?.parts ?? [],
      grams: made?.grams,
      draws: made?.draws ?? [],
      ...(named.used?.formula
        ? {
            formula: named.used.formula,
            origin: { makeIndex: named.used.makeIndex, itemIndex: named.used.itemIndex },
          }
        : {}),
    });
  }
  return result;
}
