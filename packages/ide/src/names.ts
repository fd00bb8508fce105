import { shift, type Span } from '@quern/text';
import { normaliseName, resolvePath, outlineOf } from '@quern/compiler';
import type {
  BodyItem,
  FactLine,
  InLine,
  Line,
  MakeBlock,
  Name,
  Outline,
  RecipeBlock,
  Typed,
  VariantBlock,
} from '@quern/syntax';
import type { Snapshot } from './snapshot.js';

/*
 * Every name of a file and what it means, read off the outline in the order in which the compiler binds names: things
 * made or saved above, then `use` names, then cultures and foods of the file, then the table. No weights are needed, so
 * that a half-written file has its names too.
 */

export type NameKind =
  | 'make'
  | 'saved'
  | 'recipe'
  | 'variant'
  | 'food'
  | 'culture'
  | 'table-food'
  | 'unknown-food'
  | 'class'
  | 'reserved'
  | 'alias'
  | 'menu'
  | 'kitchen'
  | 'file';

/** What a name means. Two names mean the same thing exactly when their keys are equal. */
export interface Meaning {
  readonly kind: NameKind;
  readonly key: string;
  /** The name without respect to how it is written here. */
  readonly name: string;
  /** The file that declares it; missing for foods of the table and unknown ones. */
  readonly file?: string;
}

export interface Occurrence {
  readonly span: Span;
  /** As written. */
  readonly text: string;
  readonly line: number;
  readonly meaning: Meaning;
  readonly role: 'declared' | 'used';
  /** Line number of the heading of the recipe it stands in; undefined outside recipes. */
  readonly recipe?: number;
}

const RESERVED: ReadonlySet<string> = new Set(['all', 'flour', 'liquid', 'nothing', 'all water']);

const recipeKey = (file: string, title: string): string => `recipe:${file}#${normaliseName(title)}`;
const productKey = (file: string, title: string, name: string): string =>
  `product:${file}#${normaliseName(title)}/${normaliseName(name)}`;

/** Reads the names of a file, recipe by recipe, so that one place costs one recipe. */
export class NameReader {
  #found: Occurrence[] = [];
  readonly #file: string;
  readonly #outline: Outline;
  /** Foods and cultures of the file. */
  readonly #own = new Map<string, Meaning>();
  readonly #headUses = new Map<string, Meaning>();
  readonly #titles = new Map<string, Meaning>();
  readonly #tableFoods = new Map<string, Meaning>();
  /** Names that lines of the recipe can draw, as the walk comes to them. */
  #products = new Map<string, Meaning>();
  #recipe: RecipeBlock | undefined;

  constructor(readonly snapshot: Snapshot) {
    this.#file = snapshot.path;
    this.#outline = snapshot.outline;
    const { recipes, foods, cultures, head } = this.#outline;
    for (const block of foods) this.#declareOwn('food', block.heading.content.name);
    for (const block of cultures) this.#declareOwn('culture', block.heading.content.name);
    for (const recipe of recipes) {
      const title = recipe.heading.content.name?.text ?? '';
      this.#titles.set(normaliseName(title), this.#declared('recipe', recipeKey(this.#file, title), title));
    }
    this.#uses(head, this.#headUses);
    this.#found = [];
  }

  /** The names of a recipe with its variants, in the order of the text. */
  recipe(block: RecipeBlock): readonly Occurrence[] {
    return this.#collected(() => this.#readRecipe(block));
  }

  /** The names of everything else: the head, foods, cultures, kitchens, menus. */
  others(): readonly Occurrence[] {
    return this.#collected(() => {
      this.#recipe = undefined;
      this.#products = this.#headUses;
      const { foods, cultures, kitchens, menus, head } = this.#outline;
      this.#uses(head, new Map());
      for (const { content, line } of head) this.#fact(content, line);
      for (const block of [...foods, ...cultures]) {
        this.#heading(block.heading, (name) => this.#own.get(normaliseName(name)));
        for (const { content, line } of block.facts) this.#fact(content, line);
      }
      for (const { heading } of kitchens) {
        this.#heading(heading, (name) =>
          this.#declared('kitchen', `kitchen:${this.#file}#${normaliseName(name)}`, name),
        );
      }
      for (const block of menus) this.#readMenu(block);
    });
  }

  #collected(read: () => void): readonly Occurrence[] {
    this.#found = [];
    read();
    return this.#found.sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  }

  // ---- recipes -------------------------------------------------------------------------------------------------------

  #readRecipe(recipe: RecipeBlock): void {
    this.#recipe = recipe;
    this.#products = new Map(this.#headUses);
    this.#uses(recipe.facts, this.#products);
    this.#heading(recipe.heading, (name) => this.#titles.get(normaliseName(name)));
    for (const make of recipe.makes) this.#readMake(make);
    for (const { content, line } of recipe.facts) this.#fact(content, line);
    for (const variant of recipe.variants) this.#readVariant(recipe, variant);
  }

  #readVariant(recipe: RecipeBlock, variant: VariantBlock): void {
    const title = recipe.heading.content.name?.text ?? '';
    this.#heading(variant.heading, (name) =>
      this.#declared('variant', `${recipeKey(this.#file, title)}@${normaliseName(name)}`, name),
    );
    for (const make of variant.makes) this.#readMake(make);
    for (const { content, line } of variant.facts) this.#fact(content, line);
  }

  #readMake(make: MakeBlock): void {
    for (const item of make.items) this.#readItem(item);
    const { heading } = make;
    if (heading?.content.name === undefined) return;
    const meaning = this.#product('make', heading.content.name.text);
    this.#note(heading.content.name, heading.line, meaning, 'declared');
    this.#products.set(normaliseName(heading.content.name.text), meaning);
  }

  #product(kind: 'make' | 'saved', name: string): Meaning {
    const id = normaliseName(name);
    if (RESERVED.has(id)) return { kind: 'reserved', key: `reserved:${id}`, name };
    return this.#declared(kind, productKey(this.#file, this.#recipe?.heading.content.name?.text ?? '', name), name);
  }

  #readItem(item: BodyItem): void {
    switch (item.kind) {
      case 'in':
        this.#readIn(item.main);
        for (const alternative of item.alternatives) this.#readIn(alternative);
        break;
      case 'out': {
        const { content, line } = item.main;
        if (content.of) this.#note(content.of, line, this.#resolve(content.of.text), 'used');
        if (!content.as) break;
        const id = normaliseName(content.as.text);
        const own = this.#own.get(id);
        if (content.verb !== 'save' || own?.kind === 'culture') {
          this.#note(
            content.as,
            line,
            own ?? this.#tableFood(content.as.text) ?? this.#labelOnly(content.as.text),
            'used',
          );
          break;
        }
        const meaning = this.#product('saved', content.as.text);
        this.#note(content.as, line, meaning, 'declared');
        this.#products.set(id, meaning);
        break;
      }
      case 'check': {
        const { content, line } = item.main;
        for (const name of [content.name, content.on, content.from]) {
          if (name) this.#note(name, line, this.#resolve(name.text), 'used');
        }
        break;
      }
      case 'step':
        for (const { content, line } of [item.main, ...item.more, ...item.every]) {
          for (const { of } of content.prose.brackets) if (of) this.#note(of, line, this.#resolve(of.text), 'used');
        }
        break;
      default:
        break;
    }
  }

  #readIn({ content, line }: Typed<InLine>): void {
    const { name, as, on, any } = content;
    if (any)
      this.#note(name, line, { kind: 'class', key: `class:${normaliseName(name.text)}`, name: name.text }, 'used');
    else if (as) {
      // The name is the writer's own words; the food is the one after `as`.
      const meant = this.#food(as.text);
      this.#note(name, line, meant, 'used');
      this.#note(as, line, meant, 'used');
    } else this.#note(name, line, this.#products.get(normaliseName(name.text)) ?? this.#food(name.text), 'used');
    if (on) this.#note(on, line, this.#resolve(on.text), 'used');
  }

  #readMenu(block: Outline['menus'][number]): void {
    const dishes = new Map([...this.#titles, ...this.#headUses]);
    this.#uses(block.facts, dishes);
    this.#heading(block.heading, (name) => this.#declared('menu', `menu:${this.#file}#${normaliseName(name)}`, name));
    for (const { content, line } of block.facts) this.#fact(content, line);
    for (const course of block.courses) {
      for (const { main, alternatives } of course.lines) {
        for (const { content, line } of [main, ...alternatives]) {
          const meaning = dishes.get(normaliseName(content.name.text)) ?? this.#unknown(content.name.text);
          this.#note(content.name, line, meaning, 'used');
        }
      }
    }
  }

  // ---- facts ---------------------------------------------------------------------------------------------------------

  #fact(content: FactLine, line: Line): void {
    switch (content.kind) {
      case 'basis':
      case 'count-as':
        this.#note(content.name, line, this.#resolve(content.name.text), 'used');
        break;
      case 'swap':
        for (const name of [content.from, content.in, content.to]) {
          if (name) this.#note(name, line, this.#resolve(name.text), 'used');
        }
        break;
      case 'drop':
        for (const name of [content.name, content.in]) {
          if (name) this.#note(name, line, this.#resolve(name.text), 'used');
        }
        break;
      case 'add':
        for (const name of [content.name, content.beside]) this.#note(name, line, this.#resolve(name.text), 'used');
        break;
      case 'parts':
        for (const { name } of content.parts) this.#note(name, line, this.#food(name.text), 'used');
        break;
      default:
        break;
    }
  }

  /** `use X from FILE as Y`: X and the file are noted, and the local name is put where lines look for it. */
  #uses(facts: readonly Typed<FactLine>[], into: Map<string, Meaning>): void {
    for (const { content, line } of facts) {
      if (content.kind !== 'use') continue;
      const path = resolvePath(this.#file, content.path.text);
      const meant =
        path === undefined ? this.#unknown(content.name.text) : meaningIn(this.snapshot, path, content.name.text);
      this.#note(content.name, line, meant, 'used');
      if (path !== undefined) {
        this.#note(content.path, line, { kind: 'file', key: `file:${path}`, name: path, file: path }, 'used');
      }
      if (content.as === undefined) into.set(normaliseName(content.name.text), meant);
      else {
        const alias = this.#declared('alias', `alias:${this.#file}#${line.number}`, content.as.text);
        this.#note(content.as, line, alias, 'declared');
        into.set(normaliseName(content.as.text), alias);
      }
    }
  }

  // ---- meanings ------------------------------------------------------------------------------------------------------

  #declared(kind: NameKind, key: string, name: string): Meaning {
    return { kind, key, name, file: this.#file };
  }

  #declareOwn(kind: 'food' | 'culture', name: Name | undefined): void {
    if (name === undefined) return;
    const id = normaliseName(name.text);
    if (!this.#own.has(id)) this.#own.set(id, this.#declared(kind, `${kind}:${this.#file}#${id}`, name.text));
  }

  #resolve(name: string): Meaning {
    const id = normaliseName(name);
    if (RESERVED.has(id)) return { kind: 'reserved', key: `reserved:${id}`, name };
    return this.#products.get(id) ?? this.#food(name);
  }

  #food(name: string): Meaning {
    return this.#own.get(normaliseName(name)) ?? this.#tableFood(name) ?? this.#unknown(name);
  }

  #tableFood(name: string): Meaning | undefined {
    const id = normaliseName(name);
    const known = this.#tableFoods.get(id);
    if (known) return known;
    const answer = this.snapshot.foods.find(name);
    if (answer.kind !== 'found') return undefined;
    const { food } = answer.match;
    const meaning: Meaning = { kind: 'table-food', key: `table:${food.id}`, name: food.name };
    this.#tableFoods.set(id, meaning);
    return meaning;
  }

  #unknown(name: string): Meaning {
    return { kind: 'unknown-food', key: `unknown:${normaliseName(name)}`, name };
  }

  /** What is lost or binned may be given any name; it only labels. */
  #labelOnly(name: string): Meaning {
    return { kind: 'unknown-food', key: `label:${normaliseName(name)}`, name };
  }

  #heading(
    heading: { readonly content: { readonly name?: Name }; readonly line: Line },
    meaning: (name: string) => Meaning | undefined,
  ): void {
    const { name } = heading.content;
    const meant = name && meaning(name.text);
    if (name && meant) this.#note(name, heading.line, meant, 'declared');
  }

  #note(
    name: { readonly span: Span; readonly text: string },
    line: Line,
    meaning: Meaning,
    role: Occurrence['role'],
  ): void {
    this.#found.push({
      span: shift(name.span, line.start),
      text: name.text,
      line: line.number,
      meaning,
      role,
      ...(this.#recipe ? { recipe: this.#recipe.heading.line.number } : {}),
    });
  }
}

/** What a name means to a file that uses it from another: a recipe's title there, a thing made or saved in it, or a food. */
function meaningIn(snapshot: Snapshot, path: string, name: string): Meaning {
  const id = normaliseName(name);
  const document = snapshot.session.document(path);
  const other = document && outlineOf(document);
  for (const recipe of other?.recipes ?? []) {
    const title = recipe.heading.content.name?.text ?? '';
    if (normaliseName(title) === id) return { kind: 'recipe', key: recipeKey(path, title), name: title, file: path };
  }
  for (const recipe of other?.recipes ?? []) {
    const title = recipe.heading.content.name?.text ?? '';
    for (const variant of recipe.variants) {
      const label = variant.heading.content.name?.text ?? '';
      if (`${normaliseName(title)} ${normaliseName(label)}` !== id) continue;
      return { kind: 'variant', key: `${recipeKey(path, title)}@${normaliseName(label)}`, name: label, file: path };
    }
    for (const make of recipe.makes) {
      const heading = make.heading?.content.name?.text;
      if (heading !== undefined && normaliseName(heading) === id) {
        return { kind: 'make', key: productKey(path, title, heading), name: heading, file: path };
      }
      for (const item of make.items) {
        if (item.kind !== 'out' || item.main.content.verb !== 'save') continue;
        const saved = item.main.content.as?.text;
        if (saved !== undefined && normaliseName(saved) === id) {
          return { kind: 'saved', key: productKey(path, title, saved), name: saved, file: path };
        }
      }
    }
  }
  for (const { heading } of other?.foods ?? []) {
    const own = heading.content.name?.text;
    if (own !== undefined && normaliseName(own) === id) {
      return { kind: 'food', key: `food:${path}#${id}`, name: own, file: path };
    }
  }
  return { kind: 'unknown-food', key: `unknown:${path}#${id}`, name };
}
