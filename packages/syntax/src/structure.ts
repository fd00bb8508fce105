import { byPlace, diagnose, type Diagnostic, type MessageArguments, type MessageCode, slips } from '@quern/text';
import type {
  BadLine,
  BlockLine,
  BlockWord,
  Document,
  EveryLine,
  FactLine,
  InLine,
  Line,
  LineContent,
  MoreLine,
  OutLine,
  CheckLine,
  StepLine,
  TextFact,
} from './ast.js';
import { entryOf, factWord, type Standing } from './classify.js';
import { isEnglish } from './repair.js';
import type {
  BodyItem,
  CourseBlock,
  FoodBlock,
  KitchenBlock,
  MakeBlock,
  MenuBlock,
  Outline,
  RecipeBlock,
  Typed,
} from './outline-types.js';

/*
 * Which line belongs to which block. A block runs to the next block line; makes and variants belong to the recipe above
 * them; foods, cultures and kitchens to the file. Nothing here looks at what lines mean beyond that.
 */

type Open<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

interface OpenRecipe {
  readonly heading: Typed<BlockLine>;
  readonly facts: Typed<FactLine>[];
  readonly makes: Open<MakeBlock>[];
  readonly variants: OpenVariant[];
  /** The product of body lines that stand under no `make`. */
  implicit?: Open<MakeBlock>;
}
interface OpenVariant {
  readonly heading: Typed<BlockLine>;
  readonly facts: Typed<FactLine>[];
  readonly makes: Open<MakeBlock>[];
}

/** Facts of which only one can hold; a second is most likely a line forgotten. */
const SINGLE: ReadonlySet<string> = new Set([
  'gives',
  'serves',
  'basis',
  'language',
  'cup',
  'times',
  'date',
  'awake',
  'room',
  'stand',
  'hold',
  'stretch',
  'parts',
]);
/** Facts that print under the step above when they stand in a make. */
const REMARKS: ReadonlySet<string> = new Set(['note', 'tip', 'warning', 'serve with']);

/**
 * How far the formatter indents each line: body lines and the facts of a make, food, culture, kitchen, variant and
 * course by two. Undefined for lines that it leaves as they are, because they belong nowhere.
 */
export function indents(document: Document): readonly (number | undefined)[] {
  const builder = new OutlineBuilder(document.path);
  builder.take(document.lines);
  return builder.indents;
}

/** The blocks whose lines are indented. */
const INDENTED: ReadonlySet<string> = new Set(['make', 'food', 'culture', 'kitchen', 'variant', 'course']);

/** Puts lines into blocks, one after the other. */
export class OutlineBuilder {
  readonly indents: (number | undefined)[] = [];
  readonly #path: string;
  readonly #diagnostics: Diagnostic[] = [];
  readonly #head: Typed<FactLine>[] = [];
  readonly #recipes: RecipeBlock[] = [];
  readonly #open: OpenRecipe[] = [];
  readonly #variants: OpenVariant[] = [];
  readonly #foods: Open<FoodBlock>[] = [];
  readonly #cultures: Open<FoodBlock>[] = [];
  readonly #kitchens: Open<KitchenBlock>[] = [];
  readonly #menus: Open<MenuBlock>[] = [];

  /** The kind of block that takes lines now; 'nowhere' takes them without a word, because its heading was complained of. */
  #where: Standing | 'nowhere' = 'file';
  #recipe: OpenRecipe | undefined;
  #variant: OpenVariant | undefined;
  #make: Open<MakeBlock> | undefined;
  #food: Open<FoodBlock> | undefined;
  #kitchen: Open<KitchenBlock> | undefined;
  #menu: Open<MenuBlock> | undefined;
  #course: Open<CourseBlock> | undefined;
  /** The line above that is neither blank nor a remark. */
  #above: LineContent | undefined;
  #afterBlank = true;
  #outside = false;
  /** Whether what a line is depended on lines above every recipe or in another one. */
  #looksOut = false;

  constructor(path: string) {
    this.#path = path;
  }

  take(lines: readonly Line[]): void {
    for (const line of lines) this.#take(line);
  }

  /** Takes a recipe whose lines have been put into blocks by themselves, as `alone` allows. */
  takeRecipe(recipe: RecipeBlock, said: readonly Diagnostic[]): void {
    this.#recipes.push(recipe);
    for (const diagnostic of said) this.#diagnostics.push(diagnostic);
  }

  /** Whether the lines taken are one recipe and no more, and would be the same recipe in every file. */
  get alone(): boolean {
    const others = [this.#head, this.#variants, this.#foods, this.#cultures, this.#kitchens, this.#menus];
    return !this.#looksOut && this.#recipes.length === 1 && others.every((list) => list.length === 0);
  }

  /** The blocks, when all lines have been taken. */
  finish(): Outline {
    for (const recipe of this.#open) this.#finish(recipe);
    return {
      head: this.#head,
      recipes: this.#recipes,
      variants: this.#variants,
      foods: this.#foods,
      cultures: this.#cultures,
      kitchens: this.#kitchens,
      menus: this.#menus,
      diagnostics: this.#diagnostics.sort(byPlace),
    };
  }

  #say<C extends MessageCode>(code: C, line: Line, args: MessageArguments<C>): void {
    const { indent } = line.parsed.content;
    const place = { file: this.#path, start: line.start + indent, end: line.start + line.text.trimEnd().length };
    this.#diagnostics.push(diagnose(code, place, args));
  }

  #take(line: Line): void {
    const { content } = line.parsed;
    if (content.kind === 'blank') this.#afterBlank = true;
    if (content.kind === 'blank' || content.kind === 'comment' || content.kind === 'conflict') return;
    if (content.kind === 'block') this.#openBlock({ line, content });
    else if (content.kind === 'bad') this.#takeBad({ line, content });
    else if (isBody(content)) this.#takeBody(line, content);
    else this.#takeFact({ line, content });
    this.indents[line.number] ??= content.kind === 'block' ? 0 : this.#indentHere();
    this.#above = content;
    this.#afterBlank = false;
  }

  #indentHere(): number | undefined {
    if (this.#where === 'nowhere') return undefined;
    return INDENTED.has(this.#where) ? 2 : 0;
  }

  // ---- block lines -------------------------------------------------------------------------------------------------

  #openBlock(heading: Typed<BlockLine>): void {
    const { block } = heading.content;
    if (block !== 'make') this.#variant = undefined;
    this.#make = undefined;
    this.#course = undefined;
    this.#outside = false;
    this.#where = block;
    switch (block) {
      case 'recipe':
        this.#recipe = { heading, facts: [], makes: [], variants: [] };
        this.#open.push(this.#recipe);
        this.#recipes.push(this.#recipe as RecipeBlock);
        break;
      case 'make':
        this.#openMake({ heading, items: [], facts: [] }, heading.line);
        break;
      case 'variant':
        if (this.#recipe === undefined && !this.#usesAnother()) return this.#nowhere(heading.line, 'recipe');
        this.#variant = { heading, facts: [], makes: [] };
        (this.#recipe?.variants ?? this.#variants).push(this.#variant);
        break;
      case 'food':
      case 'culture':
        this.#food = { heading, facts: [], every: [] };
        (block === 'food' ? this.#foods : this.#cultures).push(this.#food);
        break;
      case 'kitchen':
        this.#kitchen = { heading, facts: [] };
        this.#kitchens.push(this.#kitchen);
        break;
      case 'menu':
        this.#menu = { heading, facts: [], courses: [] };
        this.#menus.push(this.#menu);
        break;
      case 'course':
        this.#looksOut = true;
        if (this.#menu === undefined) return this.#nowhere(heading.line, 'menu');
        this.#course = { heading, lines: [] };
        this.#menu.courses.push(this.#course);
        break;
    }
  }

  /** Whether a variant above every recipe has a recipe to be of. */
  #usesAnother(): boolean {
    return this.#head.some(({ content }) => content.kind === 'use');
  }

  #openMake(make: Open<MakeBlock>, line: Line): void {
    const owner = this.#variant ?? this.#recipe;
    if (owner === undefined) return this.#nowhere(line, 'recipe');
    this.#where = 'make';
    this.#make = make;
    owner.makes.push(make);
  }

  /** A block whose own block is missing: said once, and the lines under it are let be. */
  #nowhere(line: Line, block: string): void {
    this.#say('L02', line, { block });
    this.#where = 'nowhere';
  }

  // ---- lines that cannot be read -----------------------------------------------------------------------------------

  #takeBad(bad: Typed<BadLine>): void {
    const block = this.#blockMeant(bad);
    if (block !== undefined) return this.#openUnnamed(block, bad.line);
    const fact = entryOf(bad.content.opening)?.kind === 'fact';
    if (fact || this.#where === 'nowhere') return;
    const make = this.#where === 'recipe' ? this.#implicitMake() : this.#make;
    make?.items.push({ kind: 'bad', main: bad });
  }

  /**
   * The block that an unreadable line was to open, if it stands after a blank line and is shaped like a block line: it
   * begins with a block word or one slip away from it. A sentence opens nothing.
   */
  #blockMeant({ line, content }: Typed<BadLine>): BlockWord | undefined {
    const prose = line.parsed.messages.some(({ code }) => code === 'L17' || code === 'L22');
    if (prose) return undefined;
    const written = content.opening.toLowerCase();
    if (!this.#afterBlank || isEnglish(written)) return undefined;
    const block = BLOCK_WORDS.find((word) => slips(written, word, 1) <= 1);
    if (block === 'course') this.#looksOut = true;
    // A course is of a menu; elsewhere such a word is coarse salt.
    return block === 'course' && this.#menu === undefined ? undefined : block;
  }

  #openUnnamed(block: BlockWord, line: Line): void {
    this.#make = undefined;
    this.#course = undefined;
    if (block !== 'make') this.#variant = undefined;
    // Makes under an unreadable recipe line belong to no recipe, least of all to the one above it.
    if (block === 'recipe') {
      this.#recipe = undefined;
      this.#looksOut = true;
    }
    this.#where = 'nowhere';
    if (block !== 'make' || this.#recipe === undefined) return;
    this.#openMake({ unnamed: line, items: [], facts: [] }, line);
  }

  // ---- body lines --------------------------------------------------------------------------------------------------

  #takeBody(line: Line, content: BodyContent): void {
    if (this.#where === 'nowhere') return;
    if (this.#where === 'file') return this.#outsideAll(line, 'recipe');
    if (content.kind === 'every' && this.#where === 'culture') {
      this.#food?.every.push({ line, content });
      return;
    }
    if (this.#where === 'course' && (content.kind === 'in' || content.kind === 'or')) {
      return this.#takeCourseLine({ line, content });
    }
    const make = this.#where === 'recipe' ? this.#implicitMake() : this.#where === 'make' ? this.#make : undefined;
    if (this.#where === 'recipe') this.indents[line.number] = 2;
    if (make === undefined)
      return this.#misplaced(line, wordOf(content), content.kind === 'in' ? ['make', 'course'] : ['make']);
    this.#takeItem(make, line, content);
  }

  #outsideAll(line: Line, block: string): void {
    // Lines that stand together outside are outside for one reason.
    if (!this.#outside) this.#say('L02', line, { block });
    this.#outside = true;
  }

  #takeCourseLine(main: Typed<InLine>): void {
    const lines = this.#course?.lines;
    if (lines === undefined) return;
    if (main.content.kind === 'in') lines.push({ main, alternatives: [] });
    else this.#alternative(lines.at(-1), main);
  }

  #alternative(
    item: { readonly main: Typed<InLine>; readonly alternatives: readonly Typed<InLine>[] } | undefined,
    or: Typed<InLine>,
  ): void {
    const above = this.#above?.kind;
    if (above === 'bad') return;
    if (item === undefined || (above !== 'in' && above !== 'or')) this.#say('L08', or.line, {});
    else (item.alternatives as Typed<InLine>[]).push(or);
  }

  #takeItem(make: Open<MakeBlock>, line: Line, content: BodyContent): void {
    const last = make.items.at(-1);
    switch (content.kind) {
      case 'in':
        make.items.push({ kind: 'in', main: { line, content }, alternatives: [] });
        break;
      case 'or':
        this.#alternative(last?.kind === 'in' ? last : undefined, { line, content });
        break;
      case 'out':
        make.items.push({ kind: 'out', main: { line, content } });
        break;
      case 'check':
        make.items.push({ kind: 'check', main: { line, content } });
        break;
      case 'step':
        make.items.push({ kind: 'step', main: { line, content }, more: [], every: [] });
        break;
      case 'every':
        this.#careFor(last, { line, content });
        break;
      case 'more':
        this.#moreWords(last, { line, content });
        break;
    }
  }

  #careFor(last: BodyItem | undefined, every: Typed<EveryLine>): void {
    if (last?.kind === 'bad' && this.#above?.kind === 'bad') return;
    if (last?.kind !== 'step' || last.main.content.lane === 'hands') return this.#say('L07', every.line, {});
    (last.every as Typed<EveryLine>[]).push(every);
  }

  #moreWords(last: BodyItem | undefined, more: Typed<MoreLine>): void {
    const above = this.#above?.kind;
    if (above === 'bad') return;
    if (last?.kind !== 'step' || (above !== 'step' && above !== 'more' && above !== 'every'))
      return this.#say('L29', more.line, {});
    (last.more as Typed<MoreLine>[]).push(more);
  }

  #implicitMake(): Open<MakeBlock> {
    const recipe = this.#recipe as OpenRecipe;
    if (recipe.implicit === undefined) {
      recipe.implicit = { items: [], facts: [] };
      recipe.makes.unshift(recipe.implicit);
    }
    return recipe.implicit;
  }

  // ---- facts -------------------------------------------------------------------------------------------------------

  #takeFact(fact: Typed<FactLine>): void {
    const word = factWord(fact.content);
    const where = this.#where;
    if (where === 'nowhere') return;
    const stands = entryOf(word)?.standsIn ?? [];
    if (where === 'file') {
      if (stands.includes('file')) this.#add(this.#head, fact, word);
      else this.#outsideAll(fact.line, stands[0] ?? 'recipe');
      return;
    }
    const target = this.#targetOf(fact, word, where, stands);
    if (target === undefined) this.#misplaced(fact.line, `“${word}”`, stands);
    else this.#add(target, fact, word);
  }

  /** The list that takes a fact where it stands; undefined when it does not belong there. */
  #targetOf(
    fact: Typed<FactLine>,
    word: string,
    where: Standing,
    stands: readonly Standing[],
  ): Typed<FactLine>[] | undefined {
    // A line that cannot be read begins no product: a fact below it is still the recipe's.
    const begun = this.#recipe?.implicit?.items.some(({ kind }) => kind !== 'bad') ?? false;
    const making = where === 'make' || (where === 'recipe' && begun);
    if (making && REMARKS.has(word)) {
      const make = where === 'make' ? this.#make : this.#recipe?.implicit;
      this.indents[fact.line.number] = 2;
      make?.items.push({ kind: 'remark', main: fact as Typed<TextFact> });
      return [];
    }
    if (word === 'baked' && this.#recipe !== undefined && stands.includes(where)) return this.#recipe.facts;
    if (where === 'recipe' && stands.includes('make') && !stands.includes('recipe')) {
      this.indents[fact.line.number] = 2;
      return this.#implicitMake().facts;
    }
    if (where === 'course') return stands.includes('menu') ? this.#menu?.facts : undefined;
    if (!stands.includes(where)) return undefined;
    switch (where) {
      case 'recipe':
        return this.#recipe?.facts;
      case 'make':
        return this.#make?.facts;
      case 'variant':
        return this.#variant?.facts;
      case 'food':
      case 'culture':
        return this.#food?.facts;
      case 'kitchen':
        return this.#kitchen?.facts;
      case 'menu':
        return this.#menu?.facts;
      case 'file':
        return this.#head;
    }
  }

  #add(facts: Typed<FactLine>[], fact: Typed<FactLine>, word: string): void {
    const before = SINGLE.has(word) ? facts.find(({ content }) => factWord(content) === word) : undefined;
    if (before !== undefined) this.#say('L30', fact.line, { word });
    facts.push(fact);
  }

  #misplaced(line: Line, what: string, belongs: readonly Standing[]): void {
    const where = said(this.#where as Standing);
    this.#say('L28', line, { what, where, belongs: belongs.map(said).join(' or ') });
  }

  // ---- at the end --------------------------------------------------------------------------------------------------

  /** A product without a `make` of its own stands only if something is in it. */
  #finish(recipe: OpenRecipe): void {
    const { implicit, makes } = recipe;
    delete recipe.implicit;
    if (implicit === undefined || makes.length === 1) return;
    if (implicit.items.some(({ kind }) => kind !== 'bad' && kind !== 'remark')) return;
    makes.shift();
    for (const { line, content } of implicit.facts)
      this.#say('L28', line, { what: `“${factWord(content)}”`, where: 'a recipe of several makes', belongs: 'a make' });
    // What cannot be read before the first make could belong there: its pot is not known.
    makes[0]?.items.unshift(...implicit.items);
  }
}

type BodyContent = InLine | OutLine | StepLine | EveryLine | MoreLine | CheckLine;
const BODY: ReadonlySet<LineContent['kind']> = new Set(['in', 'or', 'out', 'step', 'every', 'more', 'check']);
const BLOCK_WORDS: readonly BlockWord[] = ['recipe', 'make', 'variant', 'food', 'culture', 'kitchen', 'menu', 'course'];

function isBody(content: LineContent): content is BodyContent {
  return BODY.has(content.kind);
}

/** How a body line is called in a message. */
function wordOf(content: BodyContent): string {
  switch (content.kind) {
    case 'in':
      return 'what goes in';
    case 'out':
      return `“${content.verb}”`;
    case 'step':
      return `“${content.lane}”`;
    case 'more':
      return '“:”';
    default:
      return `“${content.kind}”`;
  }
}

function said(where: Standing): string {
  return where === 'file' ? 'the head of the file' : `a ${where}`;
}
