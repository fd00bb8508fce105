import { byPlace, diagnose, nearest, type Diagnostic } from '@quern/text';
import { divide, HUNDRED, sum, type CupSystem } from '@quern/quantity';
import type {
  Document,
  FactLine,
  KitchenBlock,
  MenuBlock,
  Outline,
  PlacedPassage,
  Typed,
  UseFact,
} from '@quern/syntax';
import type { NamedProduct } from './bind.js';
import { usesOf } from './facts.js';
import { foodOfBlock } from './file-foods.js';
import type { FoodBook } from './food-book.js';
import { FoodScope } from './foods-in-file.js';
import { checkKitchen } from './checks/kitchen-things.js';
import { checkUnusedBlocks, outlineNames } from './checks/unused-blocks.js';
import { MOST_FILES, recipesWithin } from './limits.js';
import { compileMenu, type Dishes } from './menu.js';
import type { Compiled, Culture, Formula, Kitchen, LedgerFood, LineRef, Product, Varied, VaryFrom } from './model.js';
import { normaliseName, quoted } from './names.js';
import { linePlace, placeOf } from './places.js';
import { resolvePath } from './paths.js';
import { surroundingsKey, type RecipeCache, type RecipeUnit } from './recipe-cache.js';
import { Said, type Surroundings, type Used } from './recipe-unit.js';

/** How a file reaches another: its compiled form, or why not. */
export type Reach = (
  path: string,
) =>
  | { readonly kind: 'file'; readonly compiled: Compiled }
  | { readonly kind: 'missing' }
  | { readonly kind: 'too-many' }
  | { readonly kind: 'circle'; readonly through: readonly string[] };

/**
 * Compiles a file that has been read: its foods, what it uses, every recipe and variant, kitchens and menus.
 * @param recipes recipes of the file compiled before; those that are still the same are taken from it.
 */
export function compileFile(
  document: Document,
  outline: Outline,
  book: FoodBook,
  reach: Reach,
  recipes: RecipeCache,
): Compiled {
  return new FileCompiler(document, outline, book, reach, recipes).compile();
}

/** A variant whose recipe stands in another file, and its lines: `from` included, `to` excluded. */
interface OtherVariant extends Varied {
  readonly from: number;
  readonly to: number;
}

/** A file compiled; formulas are made when they are asked for. */
class CompiledFile implements Compiled {
  #formulas: readonly Formula[] | undefined;
  readonly #units: readonly RecipeUnit[];

  readonly path: string;
  readonly document: Document;
  readonly kitchens: readonly Kitchen[];
  readonly menus: Compiled['menus'];
  readonly foods: ReadonlyMap<string, LedgerFood>;
  readonly uses: readonly string[];
  readonly diagnostics: readonly Diagnostic[];

  constructor(
    parts: Omit<Compiled, 'formulas' | 'formulasAt'>,
    units: readonly RecipeUnit[],
    readonly others: readonly OtherVariant[],
  ) {
    this.path = parts.path;
    this.document = parts.document;
    this.kitchens = parts.kitchens;
    this.menus = parts.menus;
    this.foods = parts.foods;
    this.uses = parts.uses;
    this.diagnostics = parts.diagnostics;
    this.#units = units;
  }

  get formulas(): readonly Formula[] {
    return (this.#formulas ??= [
      ...this.others.map(({ formula }) => formula),
      ...this.#units.flatMap((unit) => unit.formulas()),
    ]);
  }

  formulasAt(line: number): readonly Formula[] {
    const other = this.others.find(({ from, to }) => from <= line && line < to);
    if (other) return [other.formula];
    return this.#units.find(({ from, to }) => from <= line && line < to)?.formulas() ?? [];
  }
}

class FileCompiler {
  readonly #uses: string[] = [];
  readonly #said = new Said();
  /** Compiled files that `use` lines of the head reach. */
  readonly #reached: (Compiled | undefined)[] = [];
  readonly file: string;

  constructor(
    readonly document: Document,
    readonly outline: Outline,
    readonly book: FoodBook,
    readonly reach: Reach,
    readonly recipes: RecipeCache,
  ) {
    this.file = document.path;
  }

  readonly report = (diagnostic: Diagnostic): void => this.#said.report(diagnostic);

  compile(): Compiled {
    this.#lineMessages();
    this.outline.diagnostics.forEach(this.report);
    const used = this.#usesOf(this.outline.head, this.report);
    const foods = new Map([...used.foods, ...this.#ownFoods()]);
    const cultures = this.#cultures(new FoodScope(this.book, foods));
    const units = this.#recipeUnits({ foods, cultures, used: used.products });
    this.#sameTitle();
    checkUnusedBlocks(() => outlineNames(this.outline), this.outline, this.file, this.report);
    const others = this.#otherVariants({ foods, cultures, used: used.products });
    const dishes = new LazyDishes(units, used.products, others);
    const kitchens = this.outline.kitchens.map((block) => this.#kitchen(block));
    const menus = this.outline.menus.map((block: MenuBlock) => compileMenu(block, this.file, dishes, this.report));
    const diagnostics = [...this.#said.diagnostics, ...[...units, ...others].flatMap((unit) => unit.diagnostics)];
    diagnostics.sort(byPlace);
    return new CompiledFile(
      { path: this.file, document: this.document, kitchens, menus, foods, uses: this.#uses, diagnostics },
      units,
      others,
    );
  }

  /** Variants above every recipe: each is of the recipe that the last `use` line of the head brings in. */
  #otherVariants(brought: Omit<VaryFrom, 'file'>): readonly OtherVariant[] {
    const { variants, recipes } = this.outline;
    const use = usesOf(this.outline.head).at(-1)?.content;
    if (!use || variants.length === 0) return [];
    const named = brought.used.get(normaliseName((use.as ?? use.name).text));
    const ends = [...variants.slice(1), ...recipes.slice(0, 1)].map(({ heading }) => heading.line.number);
    const names = new Set<string>();
    return variants.flatMap((variant, index): OtherVariant[] => {
      const { line, content } = variant.heading;
      const ref: LineRef = { file: this.file, line };
      const base = named?.used && wholeRecipe(named.used);
      if (!base?.vary) {
        // What could not be had at all has been told at its own line.
        if (!named || named.used) this.report(diagnose('V07', linePlace(ref), { name: use.name.text }));
        return [];
      }
      const name = normaliseName(content.name?.text ?? '');
      if (names.has(name)) this.report(diagnose('N03', linePlace(ref), { name: content.name?.text ?? '' }));
      names.add(name);
      const { formula, diagnostics } = base.vary(variant, { file: this.file, ...brought });
      return [{ from: line.number, to: ends[index] ?? this.document.lineCount, formula, diagnostics }];
    });
  }

  #recipeUnits(shared: Pick<Surroundings, 'foods' | 'cultures' | 'used'>): readonly RecipeUnit[] {
    const { book, file } = this;
    const outline = { ...this.outline, recipes: recipesWithin(this.outline.recipes, file, this.report) };
    const key = surroundingsKey(outline, book.version, [...this.#reached]);
    const usesOf: Surroundings['usesOf'] = (facts, report) => this.#usesOf(facts, report);
    const things = new Set(
      outline.kitchens.flatMap((block) =>
        block.facts.flatMap(({ content }) => (content.kind === 'has' ? content.things.map((thing) => thing.name) : [])),
      ),
    );
    return this.recipes.units(
      this.document,
      outline,
      { file, head: outline.head, book, ...shared, things, usesOf },
      key,
    );
  }

  #lineMessages(): void {
    let typographic: Diagnostic | undefined;
    let more = 0;
    for (const passage of this.document.passages) {
      for (const message of passage.once(lineMessages)) {
        // A page from a phone is full of such marks, and they are as good as plain ones: one message is enough.
        if (message.code !== 'L04') this.report(message);
        else if (typographic) more++;
        else typographic = message;
      }
    }
    if (!typographic) return;
    const also = more === 0 ? '' : `, and such marks in ${more} more ${more === 1 ? 'line' : 'lines'}`;
    this.report({ ...typographic, args: { ...typographic.args, also } });
  }

  #cups(): CupSystem {
    const found = this.outline.head.findLast((fact) => fact.content.kind === 'cup');
    return found?.content.kind === 'cup' ? found.content.system : 'us';
  }

  #ownFoods(): ReadonlyMap<string, LedgerFood> {
    const foods = new Map<string, LedgerFood>();
    for (const block of this.outline.foods) {
      const name = block.heading.content.name;
      if (!name) continue;
      const id = normaliseName(name.text);
      const food = foodOfBlock(block, this.file, this.#cups(), this.book, this.report);
      const match = { food, how: 'name' as const, form: '', size: '' };
      if (foods.has(id))
        this.report(
          diagnose('N03', placeOf({ file: this.file, line: block.heading.line }, name.span), { name: name.text }),
        );
      foods.set(id, { key: food.id, name: name.text, food, match, from: 'file' });
    }
    return foods;
  }

  #cultures(scope: FoodScope): ReadonlyMap<string, Culture> {
    const cultures = new Map<string, Culture>();
    for (const block of this.outline.cultures) {
      const name = block.heading.content.name;
      if (!name) continue;
      const ref: LineRef = { file: this.file, line: block.heading.line };
      const parts = block.facts.flatMap(({ content }) => (content.kind === 'parts' ? content.parts : []));
      const whole = sum(parts.map((part) => part.value));
      if (parts.length === 0 || whole.n <= 0n) {
        this.report(diagnose('N15', placeOf(ref, name.span), { name: name.text }));
      }
      for (const { content, line } of block.facts) {
        if (content.kind !== 'parts') continue;
        for (const part of content.parts) {
          const problem = scope.problem(part.name.text, placeOf({ file: this.file, line }, part.name.span));
          if (problem) this.report(problem);
        }
      }
      cultures.set(normaliseName(name.text), {
        name: name.text,
        ref,
        parts:
          whole.n > 0n
            ? parts.map((part) => ({ food: scope.resolve(part.name.text), share: divide(part.value, whole) }))
            : [],
        upkeep: block.every.map(({ line, content }) => ({ ref: { file: this.file, line }, content })),
      });
    }
    return cultures;
  }

  #sameTitle(): void {
    const titles = new Map<string, LineRef>();
    for (const recipe of this.outline.recipes) {
      const name = recipe.heading.content.name;
      if (!name) continue;
      const ref: LineRef = { file: this.file, line: recipe.heading.line };
      const before = titles.get(normaliseName(name.text));
      if (before)
        this.report(
          diagnose('N03', placeOf(ref, name.span), { name: name.text }, [
            { place: linePlace(before), note: 'first here' },
          ]),
        );
      else titles.set(normaliseName(name.text), ref);
    }
  }

  // ---------------------------------------------------------------- use … from

  #usesOf(facts: readonly Typed<FactLine>[], report: (d: Diagnostic) => void): Used {
    const products = new Map<string, NamedProduct>();
    const foods = new Map<string, LedgerFood>();
    for (const { content, line } of usesOf(facts)) {
      const ref: LineRef = { file: this.file, line };
      const name = content.as?.text ?? content.name.text;
      const { product, food } = this.#reachUsed(content, ref, report);
      if (food) foods.set(normaliseName(name), { ...food, name });
      // What could not be had is still a name of this file: the line that draws it is not a second mistake.
      else {
        products.set(normaliseName(name), {
          kind: 'used',
          name,
          makeIndex: -1,
          itemIndex: -1,
          ref,
          ...(product ? { used: product } : {}),
        });
      }
    }
    return { products, foods };
  }

  /** The product or the food that a `use` line means; neither when it cannot be had, which is reported. */
  #reachUsed(
    content: UseFact,
    ref: LineRef,
    report: (d: Diagnostic) => void,
  ): { readonly product?: Product; readonly food?: LedgerFood } {
    const written = content.path.text;
    const place = placeOf(ref, content.path.span);
    const path = resolvePath(this.file, written);
    if (path === undefined) {
      report(diagnose('N14', place, { path: written }));
      return {};
    }
    if (!this.#uses.includes(path)) this.#uses.push(path);
    const found = this.reach(path);
    this.#reached.push(found.kind === 'file' ? found.compiled : undefined);
    if (found.kind === 'missing') report(diagnose('N09', place, { path: written }));
    if (found.kind === 'too-many') report(diagnose('N21', place, { path: written, most: String(MOST_FILES) }));
    if (found.kind === 'circle') report(diagnose('N08', place, { files: found.through.join(' uses ') }));
    if (found.kind !== 'file') return {};
    const product = productNamed(found.compiled, content.name.text);
    const food = product ? undefined : found.compiled.foods.get(normaliseName(content.name.text));
    if (!product && !food) {
      const near = nearest(normaliseName(content.name.text), drawable(found.compiled))[0];
      const help = near ? `did you mean ${quoted(near)}? ` : '';
      report(diagnose('N16', placeOf(ref, content.name.span), { name: content.name.text, path: written, near: help }));
    }
    return { ...(product ? { product } : {}), ...(food ? { food } : {}) };
  }

  #kitchen(block: KitchenBlock): Kitchen {
    checkKitchen(block, this.file, this.report);
    const kitchen: { -readonly [K in keyof Kitchen]: Kitchen[K] } = {
      name: block.heading.content.name?.text ?? '',
      ref: { file: this.file, line: block.heading.line },
      has: block.facts.flatMap(({ content }) => (content.kind === 'has' ? content.things : [])),
      traces: block.facts.flatMap(({ content }) =>
        content.kind === 'list-fact' && content.word === 'traces' ? content.items.map((item) => item.text) : [],
      ),
    };
    for (const { content } of block.facts) {
      if (content.kind === 'awake') kitchen.awake = { from: content.from, to: content.to };
      if (content.kind === 'room') kitchen.room = content.temperature;
      if (content.kind === 'stand') kitchen[content.word] = content.time;
      if (content.kind === 'stretch') kitchen.stretch = divide(content.percent.low, HUNDRED);
    }
    return kitchen;
  }
}

/** What the lines of a passage have to say, each for itself. */
function lineMessages({ passage, moved }: PlacedPassage): readonly Diagnostic[] {
  const { file, linesWithMessages } = passage;
  return linesWithMessages.flatMap(({ start, parsed }) =>
    parsed.messages.map((message): Diagnostic => {
      const from = start + moved;
      const place = { file, start: message.place.start + from, end: message.place.end + from };
      return { ...message, place };
    }),
  );
}

/** The recipe, if what is used is all of it as it stands. */
function wholeRecipe({ formula, makeIndex, itemIndex }: Product): Formula | undefined {
  const dish = formula?.makes.at(-1)?.index;
  return itemIndex < 0 && makeIndex === dish ? formula : undefined;
}

/** Recipes of the file by title, variants by title and name, and what it uses: each compiled when a menu asks for it. */
class LazyDishes implements Dishes {
  #dishes: ReadonlyMap<string, () => Formula | undefined> | undefined;

  constructor(
    readonly units: readonly RecipeUnit[],
    readonly used: ReadonlyMap<string, NamedProduct>,
    readonly others: readonly OtherVariant[],
  ) {}

  /** Named when a menu first asks: most files have none, and every recipe would have to be looked into. */
  get #named(): ReadonlyMap<string, () => Formula | undefined> {
    return (this.#dishes ??= this.#names());
  }

  #names(): ReadonlyMap<string, () => Formula | undefined> {
    const dishes = new Map<string, () => Formula | undefined>();
    for (const { formula } of this.others) {
      dishes.set(`${normaliseName(formula.title)} ${normaliseName(formula.variant ?? '')}`, () => formula);
    }
    for (const [name, { used: product }] of this.used) {
      if (product?.formula) dishes.set(name, () => product.formula);
    }
    for (const unit of this.units) {
      const title = normaliseName(unit.block.heading.content.name?.text ?? '');
      dishes.set(title, () => unit.formulas()[0]);
      unit.block.variants.forEach(({ heading }, index) => {
        const name = heading.content.name?.text;
        if (name) dishes.set(`${title} ${normaliseName(name)}`, () => unit.formulas()[index + 1]);
      });
    }
    return dishes;
  }

  get(name: string): Formula | undefined {
    return this.#named.get(name)?.();
  }

  keys(): MapIterator<string> {
    return this.#named.keys();
  }
}

/** A recipe's dish, or a thing made or saved in a file, as something another file can draw. */
function productNamed(compiled: Compiled, name: string): Product | undefined {
  const id = normaliseName(name);
  for (const formula of compiled.formulas) {
    const title = normaliseName(formula.title);
    if (title !== id && `${title} ${normaliseName(formula.variant ?? '')}` !== id) continue;
    if (formula.variant && title === id) continue;
    const dish = formula.makes.at(-1);
    if (!dish) continue;
    return {
      kind: 'used',
      name: formula.title,
      place: linePlace(formula.ref),
      makeIndex: dish.index,
      itemIndex: -1,
      parts: dish.pot.parts,
      grams: dish.pot.grams,
      draws: [],
      formula,
    };
  }
  for (const formula of compiled.formulas) {
    if (formula.variant) continue;
    const product = formula.products.get(id);
    if (product && product.kind !== 'used') return { ...product, kind: 'used', draws: [], formula };
  }
  return undefined;
}

function drawable(compiled: Compiled): string[] {
  const made = compiled.formulas.flatMap((formula) => [normaliseName(formula.title), ...formula.products.keys()]);
  return [...made, ...compiled.foods.keys()];
}
