import { diagnose, nearest, sentence, type Diagnostic } from '@quern/text';
import { divide, sum, type CupSystem } from '@quern/quantity';
import type { Document, FactLine, KitchenBlock, MenuBlock, Outline, RecipeBlock, Typed } from '@quern/syntax';
import type { NamedProduct } from './bind.js';
import { usesOf } from './facts.js';
import { foodOfBlock } from './file-foods.js';
import type { FoodBook } from './food-book.js';
import { FoodScope } from './foods-in-file.js';
import { compileRecipe, type RecipeContext } from './formula.js';
import { compileMenu } from './menu.js';
import type { Compiled, Culture, Formula, Kitchen, LedgerFood, LineRef } from './model.js';
import { normaliseName, quoted } from './names.js';
import { linePlace, placeOf } from './places.js';
import { resolvePath } from './paths.js';
import { expandVariant } from './variants.js';

/** How a file reaches another: its compiled form, or why not. */
export type Reach = (path: string) => { readonly kind: 'file'; readonly compiled: Compiled } | { readonly kind: 'missing' } | { readonly kind: 'circle'; readonly through: readonly string[] };

/** Compiles a file that has been read: its foods, what it uses, every recipe and variant, kitchens and menus. */
export function compileFile(document: Document, outline: Outline, book: FoodBook, reach: Reach): Compiled {
  return new FileCompiler(document, outline, book, reach).compile();
}

class FileCompiler {
  readonly #diagnostics: Diagnostic[] = [];
  readonly #uses: string[] = [];
  readonly #said = new Set<string>();
  /** Code and place of what has been said, whatever the figures: a variant does not repeat its base. */
  readonly #saidHere = new Set<string>();
  readonly file: string;

  constructor(
    readonly document: Document,
    readonly outline: Outline,
    readonly book: FoodBook,
    readonly reach: Reach,
  ) {
    this.file = document.path;
  }

  readonly report = (diagnostic: Diagnostic): void => {
    const key = `${diagnostic.code}:${diagnostic.place.start}:${diagnostic.place.end}:${sentence(diagnostic)}`;
    if (this.#said.has(key)) return;
    this.#said.add(key);
    this.#saidHere.add(placeKey(diagnostic));
    this.#diagnostics.push(diagnostic);
  };

  compile(): Compiled {
    this.#lineMessages();
    this.outline.diagnostics.forEach(this.report);
    const foods = this.#ownFoods();
    const scope = new FoodScope(this.book, foods);
    const cultures = this.#cultures(scope);
    const headUses = this.#usesOf(this.outline.head);
    const formulas = this.outline.recipes.flatMap((recipe) => this.#recipe(recipe, scope, cultures, headUses));
    this.#sameTitle();
    const dishes = this.#dishes(formulas, headUses);
    const kitchens = this.outline.kitchens.map((block) => this.#kitchen(block));
    const menus = this.outline.menus.map((block: MenuBlock) => compileMenu(block, this.file, dishes, this.report));
    return {
      path: this.file,
      document: this.document,
      formulas,
      kitchens,
      menus,
      foods,
      uses: this.#uses,
      diagnostics: this.#diagnostics.sort((a, b) => a.place.start - b.place.start || a.place.end - b.place.end),
    };
  }

  #lineMessages(): void {
    for (const line of this.document.lines) {
      for (const message of line.parsed.messages) {
        const place = { file: this.file, start: message.place.start + line.start, end: message.place.end + line.start };
        this.report({ ...message, place });
      }
    }
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
      const food = foodOfBlock(block, this.file, this.#cups(), this.report);
      const match = { food, how: 'name' as const, form: '', size: '' };
      if (foods.has(id)) this.report(diagnose('N03', placeOf({ file: this.file, line: block.heading.line }, name.span), { name: name.text }));
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
          const problem = scope.problem(part.name.text, placeOf({ file: this.file, line }, part.name.span), []);
          if (problem) this.report(problem);
        }
      }
      cultures.set(normaliseName(name.text), {
        name: name.text,
        ref,
        parts: whole.n > 0n ? parts.map((part) => ({ food: scope.resolve(part.name.text), share: divide(part.value, whole) })) : [],
        upkeep: block.every.map(({ line, content }) => ({ ref: { file: this.file, line }, content })),
      });
    }
    return cultures;
  }

  // ---------------------------------------------------------------- recipes and variants

  #recipe(recipe: RecipeBlock, scope: FoodScope, cultures: ReadonlyMap<string, Culture>, headUses: ReadonlyMap<string, NamedProduct>): Formula[] {
    const used = new Map([...headUses, ...this.#usesOf(recipe.facts)]);
    const variants = recipe.variants.map((variant) => variant.heading.content.name?.text ?? '');
    const shared = { file: this.file, head: this.outline.head, foods: scope, cultures, used, variants };
    const base = compileRecipe(recipe, { ...shared, report: this.report });
    const formulas = [base];
    const names = new Set<string>();
    for (const variant of recipe.variants) {
      const name = variant.heading.content.name;
      const ref: LineRef = { file: this.file, line: variant.heading.line };
      if (name && names.has(normaliseName(name.text))) {
        this.report(diagnose('N03', placeOf(ref, name.span), { name: name.text }));
      }
      if (name) names.add(normaliseName(name.text));
      formulas.push(this.#variant(recipe, variant, ref, shared));
    }
    return formulas;
  }

  #variant(recipe: RecipeBlock, variant: RecipeBlock['variants'][number], ref: LineRef, shared: Omit<RecipeContext, 'report'>): Formula {
    const { recipe: expanded, edits, factor } = expandVariant(recipe, variant, this.file, this.report);
    const name = variant.heading.content.name?.text ?? '';
    // A message about a variant says so; what the base already says is not said again.
    const report = (diagnostic: Diagnostic): void => {
      if (this.#saidHere.has(placeKey(diagnostic))) return;
      this.report({ ...diagnostic, related: [...diagnostic.related, { place: linePlace(ref), note: `in the variant ${quoted(name)}` }] });
    };
    return compileRecipe(expanded, { ...shared, variant: { name, ref, edits, factor }, report });
  }

  #sameTitle(): void {
    const titles = new Map<string, LineRef>();
    for (const recipe of this.outline.recipes) {
      const name = recipe.heading.content.name;
      if (!name) continue;
      const ref: LineRef = { file: this.file, line: recipe.heading.line };
      const before = titles.get(normaliseName(name.text));
      if (before) this.report(diagnose('N03', placeOf(ref, name.span), { name: name.text }, [{ place: linePlace(before), note: 'first here' }]));
      else titles.set(normaliseName(name.text), ref);
    }
  }

  // ---------------------------------------------------------------- use … from

  #usesOf(facts: readonly Typed<FactLine>[]): ReadonlyMap<string, NamedProduct> {
    const used = new Map<string, NamedProduct>();
    for (const { content, line } of usesOf(facts)) {
      const ref: LineRef = { file: this.file, line };
      const path = resolvePath(this.file, content.path.text);
      if (path === undefined) {
        this.report(diagnose('N14', placeOf(ref, content.path.span), { path: content.path.text }));
        continue;
      }
      if (!this.#uses.includes(path)) this.#uses.push(path);
      const found = this.reach(path);
      if (found.kind === 'missing') {
        this.report(diagnose('N09', placeOf(ref, content.path.span), { path: content.path.text }));
        continue;
      }
      if (found.kind === 'circle') {
        this.report(diagnose('N08', placeOf(ref, content.path.span), { files: found.through.join(' uses ') }));
        continue;
      }
      const product = productNamed(found.compiled, content.name.text);
      const local = content.as?.text ?? content.name.text;
      if (!product) {
        const near = nearest(normaliseName(content.name.text), drawable(found.compiled))[0];
        this.report(diagnose('N16', placeOf(ref, content.name.span), { name: content.name.text, path: content.path.text, near: near ? `did you mean ${quoted(near)}? ` : '' }));
        continue;
      }
      used.set(normaliseName(local), { kind: 'used', name: local, makeIndex: -1, itemIndex: -1, ref, used: product });
    }
    return used;
  }

  #dishes(formulas: readonly Formula[], used: ReadonlyMap<string, NamedProduct>): ReadonlyMap<string, Formula> {
    const dishes = new Map<string, Formula>();
    for (const [name, product] of used) if (product.used?.formula) dishes.set(name, product.used.formula);
    for (const formula of formulas) {
      const id = normaliseName(formula.title);
      if (formula.variant) dishes.set(`${id} ${normaliseName(formula.variant)}`, formula);
      else dishes.set(id, formula);
    }
    return dishes;
  }

  #kitchen(block: KitchenBlock): Kitchen {
    const kitchen: { -readonly [K in keyof Kitchen]: Kitchen[K] } = {
      name: block.heading.content.name?.text ?? '',
      ref: { file: this.file, line: block.heading.line },
      has: block.facts.flatMap(({ content }) => (content.kind === 'has' ? content.things : [])),
      traces: block.facts.flatMap(({ content }) => (content.kind === 'list-fact' && content.word === 'traces' ? content.items.map((item) => item.text) : [])),
    };
    for (const { content } of block.facts) {
      if (content.kind === 'awake') kitchen.awake = { from: content.from, to: content.to };
      if (content.kind === 'room') kitchen.room = content.temperature;
    }
    return kitchen;
  }
}

const placeKey = (diagnostic: Diagnostic): string => `${diagnostic.code}:${diagnostic.place.start}:${diagnostic.place.end}`;

/** A recipe's dish, or a thing made or saved in a file, as something another file can draw. */
export function productNamed(compiled: Compiled, name: string): NonNullable<NamedProduct['used']> | undefined {
  const id = normaliseName(name);
  for (const formula of compiled.formulas) {
    const title = normaliseName(formula.title);
    if (title !== id && `${title} ${normaliseName(formula.variant ?? '')}` !== id) continue;
    if (formula.variant && title === id) continue;
    const dish = formula.makes.at(-1);
    if (!dish) continue;
    return {
      kind: 'used', name: formula.title, place: linePlace(formula.ref), makeIndex: dish.index, itemIndex: -1, parts: dish.pot.parts, grams: dish.pot.grams, draws: [], formula,
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
  return compiled.formulas.flatMap((formula) => [normaliseName(formula.title), ...formula.products.keys()]);
}
