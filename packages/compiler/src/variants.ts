import { diagnose, nearest, type Diagnostic, singular } from '@quern/text';
import type {
  AddFact,
  BodyItem,
  DropFact,
  FactLine,
  InLine,
  Line,
  MakeBlock,
  Name,
  Prose,
  RecipeBlock,
  SwapFact,
  TimesFact,
  Typed,
  VariantBlock,
} from '@quern/syntax';
import { multiply, units, type Rational } from '@quern/quantity';
import type { LineRef, VariantEdit } from './model.js';
import { normaliseName, quoted } from './names.js';
import { linePlace, placeOf, refOf } from './places.js';
import { scaleRecipe } from './scale-recipe.js';
import { findName, replaceName } from './find-name.js';

/*
 * A variant becomes a recipe of its own: the base recipe's blocks with the edits made in the order written. Lines keep
 * their place in the file, so that a message about a variant points at the line that causes it.
 */

export interface Expanded {
  readonly recipe: RecipeBlock;
  readonly edits: readonly VariantEdit[];
  /** Product of all `times` of the variant. */
  readonly factor: Rational | undefined;
}

/** Facts of which each line counts, rather than the last. */
const REPEATING = new Set([
  'note',
  'tip',
  'warning',
  'serve with',
  'keeps',
  'check',
  'count-as',
  'use',
  'free of',
  'baked',
  'swap',
  'drop',
  'add',
  'times',
]);

const factWord = (content: FactLine): string =>
  content.kind === 'text-fact' || content.kind === 'list-fact' ? content.word : content.kind;

export function expandVariant(
  base: RecipeBlock,
  variant: VariantBlock,
  file: string,
  report: (d: Diagnostic) => void,
): Expanded {
  return new Expander(base, variant, file, report).expand();
}

class Expander {
  #makes: MakeBlock[];
  #facts: Typed<FactLine>[];
  #factor: Rational | undefined;
  readonly #edits: VariantEdit[] = [];

  constructor(
    readonly base: RecipeBlock,
    readonly variant: VariantBlock,
    readonly file: string,
    readonly report: (d: Diagnostic) => void,
  ) {
    this.#makes = [...base.makes];
    this.#facts = [...base.facts];
  }

  expand(): Expanded {
    // Makes first: an edit may speak of what a replaced make holds.
    for (const make of this.variant.makes) this.#placeMake(make);
    for (const fact of this.variant.facts) this.#apply(fact);
    return {
      recipe: { heading: this.base.heading, facts: this.#facts, makes: this.#makes, variants: [] },
      edits: this.#edits,
      factor: this.#factor,
    };
  }

  #apply(fact: Typed<FactLine>): void {
    const { content } = fact;
    switch (content.kind) {
      case 'swap':
        this.#swap(content, fact.line);
        break;
      case 'drop':
        this.#drop(content, fact.line);
        break;
      case 'add':
        this.#add(content, fact.line);
        break;
      case 'times':
        this.#times(content, fact.line);
        break;
      default:
        this.#fact(fact);
    }
  }

  #fact(fact: Typed<FactLine>): void {
    const word = factWord(fact.content);
    const replaced = this.#facts.filter((old) => factWord(old.content) === word);
    if (fact.content.kind === 'keeps' || fact.content.kind === 'best-after') {
      const last = this.#makes.length - 1;
      const dish = this.#makes[last];
      if (dish) {
        const kept =
          fact.content.kind === 'keeps' ? dish.facts : dish.facts.filter((old) => old.content.kind !== 'best-after');
        this.#makes[last] = { ...dish, facts: [...kept, fact] };
      }
    } else if (REPEATING.has(word)) this.#facts.push(fact);
    else this.#facts = [...this.#facts.filter((old) => factWord(old.content) !== word), fact];
    this.#note('fact', fact.line, REPEATING.has(word) ? [] : replaced.map((old) => old.line.number));
  }

  #placeMake(make: MakeBlock): void {
    const name = normaliseName(make.heading?.content.name?.text ?? '');
    const at = this.#makes.findIndex((old) => normaliseName(old.heading?.content.name?.text ?? '') === name);
    const line = make.heading?.line ?? make.unnamed;
    if (at >= 0) {
      const old = this.#makes[at];
      this.#makes[at] = make;
      if (line) this.#note('make', line, old?.heading ? [old.heading.line.number] : []);
      return;
    }
    this.#makes.splice(Math.max(0, this.#makes.length - 1), 0, make);
    if (line) this.#note('make', line, []);
  }

  #note(kind: VariantEdit['kind'], line: Line, touched: readonly number[]): void {
    this.#edits.push({ ref: this.#ref(line), kind, touched });
  }

  #ref(line: Line): LineRef {
    return refOf(this.file, line);
  }

  // ---------------------------------------------------------------- swap

  #swap(fact: SwapFact, line: Line): void {
    const touched: number[] = [];
    const from = normaliseName(fact.from.text);
    const found = this.#eachMake(fact.in, line, (make) => ({
      ...make,
      items: make.items.map((item) => this.#swapItem(item, from, fact, touched)),
    }));
    if (found && touched.length === 0) this.#nothing(fact.from, line);
    if (!fact.in) this.#facts = this.#facts.map((old) => swapInFact(old, from, fact.to));
    this.#note('swap', line, touched);
  }

  #swapItem(item: BodyItem, from: string, fact: SwapFact, touched: number[]): BodyItem {
    const same = (name: Name | undefined): boolean => name !== undefined && normaliseName(name.text) === from;
    const renamed = (name: Name): Name => ({ span: name.span, text: fact.to.text });
    switch (item.kind) {
      case 'in': {
        let { content } = item.main;
        if (content.on && same(content.on)) content = { ...content, on: renamed(content.on) };
        if (!same(content.name))
          return content === item.main.content ? item : { ...item, main: { ...item.main, content } };
        touched.push(item.main.line.number);
        const stand = item.alternatives.find(
          (other) => normaliseName(other.content.name.text) === normaliseName(fact.to.text),
        );
        const swapped = this.#swapped(content, fact, stand?.content);
        // A swap is a choice: what might have stood in for the old food (a nut, in a variant without nuts) is gone.
        return { ...item, main: { line: item.main.line, content: swapped }, alternatives: [] };
      }
      case 'out': {
        const { content } = item.main;
        if (!content.of || !same(content.of)) return item;
        return { ...item, main: { ...item.main, content: { ...content, of: renamed(content.of) } } };
      }
      case 'check': {
        const { content } = item.main;
        const name = content.name && same(content.name) ? renamed(content.name) : content.name;
        const on = content.on && same(content.on) ? renamed(content.on) : content.on;
        return {
          ...item,
          main: { ...item.main, content: { ...content, ...(name ? { name } : {}), ...(on ? { on } : {}) } },
        };
      }
      case 'step': {
        const swapProse = (prose: Prose): Prose => replaceName(prose, fact.from.text, fact.to.text);
        return {
          ...item,
          main: { ...item.main, content: { ...item.main.content, prose: swapProse(item.main.content.prose) } },
          more: item.more.map((more) => ({
            ...more,
            content: { ...more.content, prose: swapProse(more.content.prose) },
          })),
        };
      }
      default:
        return item;
    }
  }

  /** The in line with the new food: the amount given, or the `or` line's, or the old one without its second measure. */
  #swapped(content: InLine, fact: SwapFact, stand: InLine | undefined): InLine {
    const name: Name = { span: content.name.span, text: fact.to.text };
    const { as: _as, ...rest } = content;
    if (fact.amount) return { ...rest, any: false, name, amount: fact.amount, equals: [] };
    if (stand) return { ...stand, kind: 'in', optional: content.optional };
    const stated = content.equals.find(
      (side) => side.amount.kind === 'measure' && units[side.amount.unit.id].dimension === 'mass',
    );
    const { amount } = content;
    // A weight beside a volume is what the ledger goes by; the volume was the old food's. A counted thing keeps its stated weight.
    if (
      stated &&
      stated.amount.kind === 'measure' &&
      !stated.each &&
      amount.kind === 'measure' &&
      units[amount.unit.id].dimension === 'volume'
    ) {
      return { ...rest, any: false, name, amount: stated.amount, equals: [] };
    }
    const equals =
      stated && (amount.kind === 'count' || amount.kind === 'open' || amount.kind === 'pack') ? [stated] : [];
    return { ...rest, any: false, name, equals };
  }

  // ---------------------------------------------------------------- drop, add, times

  #drop(fact: DropFact, line: Line): void {
    const touched: number[] = [];
    const name = normaliseName(fact.name.text);
    const spoken: BodyItem[] = [];
    const withoutAlternative = (item: BodyItem): BodyItem => {
      if (item.kind !== 'in' || !item.alternatives.some(isNamed)) return item;
      touched.push(...item.alternatives.filter(isNamed).map((other) => other.line.number));
      return { ...item, alternatives: item.alternatives.filter((other) => !isNamed(other)) };
    };
    const isNamed = ({ content }: Typed<InLine>): boolean => normaliseName(content.name.text) === name;
    const found = this.#eachMake(fact.in, line, (make) => ({
      ...make,
      items: make.items.map(withoutAlternative).filter((item) => {
        if (item.kind === 'in' && isNamed(item.main)) {
          touched.push(item.main.line.number);
          return false;
        }
        if (item.kind === 'out' && item.main.content.of && normaliseName(item.main.content.of.text) === name)
          return false;
        if (item.kind === 'step' && findName(item.main.content.prose.text, fact.name.text)) spoken.push(item);
        return true;
      }),
    }));
    if (found && touched.length === 0) this.#nothing(fact.name, line);
    else {
      for (const item of spoken) {
        this.report(
          diagnose(
            'V03',
            placeOf(this.#ref(line), fact.name.span),
            { line: String(item.main.line.number + 1), name: fact.name.text },
            [{ place: linePlace(this.#ref(item.main.line)), note: 'still speaks of it' }],
          ),
        );
      }
    }
    this.#note('drop', line, touched);
  }

  #add(fact: AddFact, line: Line): void {
    const beside = normaliseName(fact.beside.text);
    const places = this.#makes.flatMap((make, makeIndex) =>
      make.items.flatMap((item, itemIndex) =>
        item.kind === 'in' && normaliseName(item.main.content.name.text) === beside ? [{ makeIndex, itemIndex }] : [],
      ),
    );
    const [first] = places;
    if (!first) this.#nothing(fact.beside, line);
    else {
      if (places.length > 1) {
        this.report(
          diagnose('V04', placeOf(this.#ref(line), fact.beside.span), {
            name: fact.beside.text,
            count: String(places.length),
          }),
        );
      }
      const content: InLine = {
        kind: 'in',
        indent: 2,
        optional: false,
        any: false,
        amount: fact.amount,
        name: fact.name,
        equals: [],
      };
      const make = this.#makes[first.makeIndex];
      if (make) {
        const items = [...make.items];
        items.splice(first.itemIndex + 1, 0, { kind: 'in', main: { line, content }, alternatives: [] });
        this.#makes[first.makeIndex] = { ...make, items };
      }
    }
    const touched = first ? [this.#makes[first.makeIndex]?.items[first.itemIndex]?.main.line.number ?? 0] : [];
    this.#note('add', line, touched);
  }

  #times(fact: TimesFact, line: Line): void {
    if (fact.factor.n <= 0n) {
      this.report(diagnose('Q17', linePlace(this.#ref(line)), { what: 'the whole recipe' }));
      return;
    }
    const scaled = scaleRecipe({ ...this.base, makes: this.#makes, facts: this.#facts }, fact.factor);
    this.#makes = [...scaled.makes];
    this.#facts = [...scaled.facts];
    this.#factor = this.#factor ? multiply(this.#factor, fact.factor) : fact.factor;
    this.#note('times', line, []);
  }

  /** Changes the makes, or the one that is named; false when there is none of that name, which is told. */
  #eachMake(only: Name | undefined, line: Line, change: (make: MakeBlock) => MakeBlock): boolean {
    const wanted = only ? normaliseName(only.text) : undefined;
    let found = false;
    this.#makes = this.#makes.map((make) => {
      const name = normaliseName(make.heading?.content.name?.text ?? this.base.heading.content.name?.text ?? '');
      if (wanted !== undefined && name !== wanted) return make;
      found = true;
      return change(make);
    });
    if (!found && only) this.#noMake(only, line);
    return found;
  }

  #noMake(name: Name, line: Line): void {
    const makes = this.#makes.flatMap(({ heading }) => (heading?.content.name ? [heading.content.name.text] : []));
    const near = nearest(normaliseName(name.text), makes.map(normaliseName))[0];
    const help = near
      ? `did you mean ${quoted(near)}? `
      : makes.length > 0
        ? `the recipe makes ${makes.join(', ')}; `
        : '';
    this.report(diagnose('V01', placeOf(this.#ref(line), name.span), { name: name.text, near: help }));
  }

  /** V01, or V04 when the name could be the end of two names that do stand here. */
  #nothing(name: Name, line: Line): void {
    const written = normaliseName(name.text);
    const here = new Set(
      this.#makes.flatMap((make) =>
        make.items.flatMap((item) => (item.kind === 'in' ? [normaliseName(item.main.content.name.text)] : [])),
      ),
    );
    const place = placeOf(this.#ref(line), name.span);
    const ending = [...here].filter((other) => other.split(' ').at(-1) === singular(written.split(' ').at(-1) ?? ''));
    if (ending.length > 1 && !written.includes(' ')) {
      this.report(diagnose('V05', place, { name: name.text, candidates: ending.map(quoted).join(', ') }));
      return;
    }
    const near = ending[0] ?? nearest(written, here)[0];
    const help = here.has(written) ? 'it goes into another make; ' : near ? `did you mean ${quoted(near)}? ` : '';
    this.report(diagnose('V01', place, { name: name.text, near: help }));
  }
}

function swapInFact(fact: Typed<FactLine>, from: string, to: Name): Typed<FactLine> {
  const { content } = fact;
  if ((content.kind === 'basis' || content.kind === 'count-as') && normaliseName(content.name.text) === from) {
    return { ...fact, content: { ...content, name: { span: content.name.span, text: to.text } } };
  }
  return fact;
}
