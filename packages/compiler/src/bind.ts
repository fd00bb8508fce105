import { diagnose, nearest, type Diagnostic, type Place } from '@quern/text';
import type {
  BodyItem,
  CheckLine,
  InLine,
  Line,
  MakeBlock,
  Name,
  OutLine,
  StepLine,
  TextFact,
  Typed,
  RecipeBlock,
} from '@quern/syntax';
import type { FoodScope } from './foods-in-file.js';
import type { Culture, LedgerFood, LineRef, Product, Source } from './model.js';
import { normaliseName, quoted, RESERVED } from './names.js';
import { isPieceWord, withPieceApart } from './piece-words.js';
import { linePlace, placeOf, refOf } from './places.js';
import { statesWeight, wayForUnknown } from './unknown-name.js';

/*
 * Binding: what each name of a recipe means, in the order of the lines. No weights yet.
 * Names on in lines: things made or saved above, then `use` names, then cultures and foods of the file, then the table.
 */

export type Target =
  | { readonly kind: 'all' }
  | { readonly kind: 'flour' }
  | { readonly kind: 'liquid' }
  | { readonly kind: 'product'; readonly name: string }
  | { readonly kind: 'culture'; readonly name: string }
  | { readonly kind: 'food'; readonly food: LedgerFood };

export interface BoundIn {
  readonly kind: 'in';
  readonly ref: LineRef;
  readonly content: InLine;
  readonly source: Source;
  /** The food weighed by, when the source is a food. */
  readonly food?: LedgerFood;
  readonly on?: Target;
  readonly alternatives: readonly BoundIn[];
}

export interface BoundOut {
  readonly kind: 'out';
  readonly ref: LineRef;
  readonly content: OutLine;
  readonly of?: Target;
  /** `as` a food of the table or file. */
  readonly asFood?: LedgerFood;
  /** Normalised name of the new thing that `save` names. */
  readonly saved?: string;
  /** What is saved goes back to a culture. */
  readonly culture?: string;
}

export interface BoundStep {
  readonly kind: 'step';
  readonly ref: LineRef;
  readonly content: StepLine;
  readonly item: Extract<BodyItem, { kind: 'step' }>;
}

export interface BoundCheck {
  readonly kind: 'check';
  readonly ref: LineRef;
  readonly content: CheckLine;
  readonly name?: Target | { readonly kind: 'water' | 'all-water' };
  readonly on?: Target;
  readonly from?: string;
}

type BoundItem =
  | BoundIn
  | BoundOut
  | BoundStep
  | BoundCheck
  | { readonly kind: 'remark'; readonly ref: LineRef; readonly content: TextFact }
  | { readonly kind: 'bad'; readonly ref: LineRef };

export interface BoundMake {
  readonly id: string;
  readonly name: string;
  readonly index: number;
  readonly ref: LineRef;
  readonly implicit: boolean;
  readonly block: MakeBlock;
  readonly items: readonly BoundItem[];
}

/** A name that can be drawn, and where it was named. */
export interface NamedProduct {
  readonly kind: 'make' | 'saved' | 'used';
  readonly name: string;
  readonly makeIndex: number;
  readonly itemIndex: number;
  readonly ref: LineRef;
  readonly used?: Product;
}

export interface Bound {
  readonly makes: readonly BoundMake[];
  readonly products: ReadonlyMap<string, NamedProduct>;
  /** Products that a line draws or asks about, for M06 and M13. */
  readonly drawn: ReadonlySet<string>;
  readonly basis?: Target;
}

/** The `swap` line of the variant that changed the food of a line of its recipe. */
export type SwapAt = (ref: LineRef) => LineRef | undefined;

export interface BindContext {
  readonly file: string;
  readonly foods: FoodScope;
  readonly cultures: ReadonlyMap<string, Culture>;
  readonly used: ReadonlyMap<string, NamedProduct>;
  readonly swapAt: SwapAt;
  /** Name of `basis`, if written, with its place. */
  readonly basis?: { readonly name: Name; readonly ref: LineRef };
  report(diagnostic: Diagnostic): void;
}

export function bindRecipe(recipe: RecipeBlock, context: BindContext): Bound {
  return new Binder(context).bind(recipe);
}

class Binder {
  readonly #products = new Map<string, NamedProduct>();
  readonly #drawn = new Set<string>();
  readonly #makes: BoundMake[] = [];
  readonly #problemsSaid = new Set<string>();
  /** Makes that are still to come, and what they save, with the line that names them. */
  readonly #madeBelow = new Map<string, number>();

  constructor(readonly context: BindContext) {
    for (const [name, product] of context.used) this.#products.set(name, product);
  }

  bind(recipe: RecipeBlock): Bound {
    const title = recipe.heading.content.name?.text ?? '';
    for (const { heading, items } of recipe.makes) {
      this.#expect(heading?.content.name, heading?.line);
      for (const { kind, main } of items)
        if (kind === 'out' && main.content.verb === 'save') this.#expect(main.content.as, main.line);
    }
    for (const block of recipe.makes) this.#bindMake(block, recipe, title);
    const basis = this.context.basis;
    return {
      makes: this.#makes,
      products: this.#products,
      drawn: this.#drawn,
      ...(basis ? { basis: this.#target(basis.name, basis.ref) } : {}),
    };
  }

  #bindMake(block: MakeBlock, recipe: RecipeBlock, title: string): void {
    const index = this.#makes.length;
    const heading = block.heading ?? (block.unnamed ? undefined : recipe.heading);
    const line = heading?.line ?? block.unnamed ?? recipe.heading.line;
    const ref = refOf(this.context.file, line);
    const name = block.heading?.content.name?.text ?? (block.unnamed ? '' : title);
    const id = block.unnamed ? `unnamed:${line.number}` : normaliseName(name);
    const items: BoundItem[] = [];
    this.#makes.push({ id, name, index, ref, implicit: !block.heading, block, items });
    block.items.forEach((item, itemIndex) => items.push(this.#bindItem(item, index, itemIndex)));
    if (block.heading)
      this.#nameProduct({ kind: 'make', name, makeIndex: index, itemIndex: -1, ref }, block.heading.content.name);
  }

  #expect(name: Name | undefined, line: Line | undefined): void {
    if (name && line) this.#madeBelow.set(normaliseName(name.text), line.number);
  }

  #nameProduct(product: NamedProduct, at: Name | undefined): void {
    const id = normaliseName(product.name);
    const place = at ? placeOf(product.ref, at.span) : linePlace(product.ref);
    if (RESERVED.has(id)) {
      this.context.report(diagnose('N12', place, { name: product.name }));
      return;
    }
    const before = this.#products.get(id);
    if (before && before.kind !== 'used') {
      this.context.report(
        diagnose('N03', place, { name: product.name }, [{ place: linePlace(before.ref), note: 'first made here' }]),
      );
      return;
    }
    this.#products.set(id, product);
  }

  #bindItem(item: BodyItem, makeIndex: number, itemIndex: number): BoundItem {
    const ref = refOf(this.context.file, item.main.line);
    switch (item.kind) {
      case 'in':
        return this.#bindIn(item.main, item.alternatives);
      case 'out':
        return this.#bindOut(item.main, makeIndex, itemIndex);
      case 'step':
        return { kind: 'step', ref, content: item.main.content, item };
      case 'check':
        return this.#bindCheck(item.main.content, ref);
      case 'remark':
        return { kind: 'remark', ref, content: item.main.content };
      case 'bad':
        return { kind: 'bad', ref };
    }
  }

  #bindIn(main: Typed<InLine>, alternatives: readonly Typed<InLine>[]): BoundIn {
    const { line } = main;
    const ref = refOf(this.context.file, line);
    const content = this.#pieceApart(main.content);
    const source = this.#source(content, ref);
    return {
      kind: 'in',
      ref,
      content,
      source,
      ...(source.kind === 'food' ? { food: source.food } : {}),
      ...(content.on ? { on: this.#target(content.on, ref) } : {}),
      alternatives: alternatives.map((alternative) => this.#bindIn(alternative, [])),
    };
  }

  /** `2 rashers bacon` is read as `2 rashers of bacon`, unless something goes by the whole name. */
  #pieceApart(content: InLine): InLine {
    const apart = content.any || content.as ? undefined : withPieceApart(content);
    if (!apart) return content;
    const id = normaliseName(content.name.text);
    const isName = this.#products.has(id) || this.context.cultures.has(id) || this.context.foods.isNamed(id);
    return isName || !this.context.foods.isNamed(apart.name.text) ? content : apart;
  }

  #source(content: InLine, ref: LineRef): Source {
    const { name, amount } = content;
    const id = normaliseName(name.text);
    if (content.any) {
      const foods = this.context.foods.book.ofClass(id);
      if (foods.length > 0) return { kind: 'any', class: id, foods };
      this.context.report(diagnose('N13', placeOf(ref, name.span), { name: name.text }));
      return { kind: 'food', food: this.context.foods.resolve(name.text) };
    }
    if (!content.as) {
      const product = this.#products.get(id);
      if (product) {
        this.#drawn.add(id);
        if (amount.kind === 'measure' && product.kind !== 'used' && this.context.foods.knows(name.text)) {
          this.context.report(
            diagnose('N06', placeOf(ref, name.span), { name: name.text }, [
              { place: linePlace(product.ref), note: 'made here' },
            ]),
          );
        }
        return { kind: 'product', product: id };
      }
      if (this.context.cultures.has(id)) return { kind: 'culture', culture: id };
      const isPortion = amount.kind === 'portion' && !isPieceWord(amount.of);
      const meansProduct = (isPortion || this.#madeBelow.has(id)) && !this.context.foods.isNamed(name.text);
      if (amount.kind === 'share' || meansProduct) {
        this.#noProduct(name, ref);
        return { kind: 'food', food: { key: `unknown:${id}`, name: name.text, from: 'unknown' } };
      }
    }
    return { kind: 'food', food: this.#food(content.as ?? name, ref, content) };
  }

  #noProduct(name: Name, ref: LineRef): void {
    const id = normaliseName(name.text);
    const below = this.#madeBelow.get(id);
    const near = nearest(id, this.#products.keys())[0];
    const hint =
      below === undefined
        ? near && `did you mean ${quoted(near)}? If not, `
        : below < ref.line.number
          ? 'a product cannot be put into itself. If another is meant, '
          : `it is made below, at line ${below + 1}: move that make above this line. If another is meant, `;
    this.context.report(diagnose('N02', placeOf(ref, name.span), { name: name.text, near: hint ?? '' }));
  }

  #food(name: Name, ref: LineRef, content: InLine): LedgerFood {
    const food = this.context.foods.resolve(name.text);
    if (food.from === 'unknown' && !this.#problemsSaid.has(food.key)) {
      // One cause, one message: the first line that uses an unknown name says so.
      this.#problemsSaid.add(food.key);
      const near = nearest(normaliseName(name.text), [...this.#products.keys(), ...this.context.foods.own.keys()]);
      const problem = this.context.foods.problem(name.text, this.#placeOfName(name, ref), {
        near,
        way: wayForUnknown(content, ref.line.text, this.context.foods),
        weighed: statesWeight(content),
      });
      if (problem) this.context.report(problem);
    }
    return food;
  }

  /** Where a name is written: on its line, or on the `swap` line that put it there. */
  #placeOfName(name: Name, ref: LineRef): Place {
    const swap = this.context.swapAt(ref);
    const content = swap?.line.parsed.content;
    return swap && content?.kind === 'swap' && content.to.text === name.text
      ? placeOf(swap, content.to.span)
      : placeOf(ref, name.span);
  }

  /** After `on`, `of`, and in a check: a reserved word, a product, a culture, or a food. */
  #target(name: Name, ref: LineRef): Target {
    const id = normaliseName(name.text);
    if (id === 'all') return { kind: 'all' };
    if (id === 'flour') return { kind: 'flour' };
    if (id === 'liquid') return { kind: 'liquid' };
    if (this.#products.has(id)) {
      this.#drawn.add(id);
      return { kind: 'product', name: id };
    }
    if (this.context.cultures.has(id)) return { kind: 'culture', name: id };
    void ref;
    return { kind: 'food', food: this.context.foods.resolve(name.text) };
  }

  #bindOut(main: Typed<OutLine>, makeIndex: number, itemIndex: number): BoundOut {
    const { content, line } = main;
    const ref = refOf(this.context.file, line);
    const of = content.of ? this.#target(content.of, ref) : undefined;
    const as = content.as;
    if (!as) return { kind: 'out', ref, content, ...(of ? { of } : {}) };
    const id = normaliseName(as.text);
    const foodKnown = this.context.foods.knows(as.text);
    const culture = content.verb === 'save' && this.context.cultures.has(id) ? id : undefined;
    if (content.verb === 'save' && !culture) {
      this.#nameProduct({ kind: 'saved', name: as.text, makeIndex, itemIndex, ref }, as);
    }
    return {
      kind: 'out',
      ref,
      content,
      ...(of ? { of } : {}),
      ...(foodKnown ? { asFood: this.context.foods.resolve(as.text) } : {}),
      ...(content.verb === 'save' && !culture ? { saved: id } : {}),
      ...(culture ? { culture } : {}),
    };
  }

  #bindCheck(content: CheckLine, ref: LineRef): BoundCheck {
    const id = content.name ? normaliseName(content.name.text) : undefined;
    const name =
      id === 'water'
        ? { kind: 'water' as const }
        : id === 'all water'
          ? { kind: 'all-water' as const }
          : content.name
            ? this.#target(content.name, ref)
            : undefined;
    let from: string | undefined;
    if (content.from) {
      from = normaliseName(content.from.text);
      if (!this.#products.has(from)) {
        this.#noProduct(content.from, ref);
        from = undefined;
      } else this.#drawn.add(from);
    }
    return {
      kind: 'check',
      ref,
      content,
      ...(name ? { name } : {}),
      ...(content.on ? { on: this.#target(content.on, ref) } : {}),
      ...(from ? { from } : {}),
    };
  }
}
