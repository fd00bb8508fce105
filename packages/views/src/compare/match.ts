import { baseValue, normaliseName } from '@quern/compiler';
import { compare, multiply, rational, units, type CupSystem, type Rational } from '@quern/quantity';
import type { InLine, LineContent } from '@quern/syntax';
import { scaledLine } from './canonical.js';
import {
  alignSequences,
  pairByKey,
  pairByLikeness,
  sameKeys,
  sharedWords,
  wordsOf,
  type Keys,
  type Left,
} from './pairing.js';
import { categoryOf, keyOf, subjectOf } from './parts.js';
import type { TreeNode } from './tree.js';

/*
 * Which line of one tree is which line of the other. Lines are known by make, kind, name and occurrence, steps by their
 * order and words; then come lines that went to another make, and foods that stand where another stood.
 */

/** One of the two files: what its cups are, and which food a line puts in, where that is known. */
export interface Sense {
  readonly cups: CupSystem;
  /** The same for the same food, whatever it is called. */
  foodOf(node: TreeNode): string | undefined;
}

export interface MatchOptions {
  readonly before: Sense;
  readonly after: Sense;
  /** Recipes of the first tree that are compared as so many times themselves. */
  readonly factors: ReadonlyMap<TreeNode, Rational>;
}

/** Pairs of nodes, both ways. */
export interface Matching {
  readonly after: ReadonlyMap<TreeNode, TreeNode>;
  readonly before: ReadonlyMap<TreeNode, TreeNode>;
  /** Names of makes and saved things of the first tree, as the second calls them. */
  readonly renamed: ReadonlyMap<string, string>;
}

const BLOCK_LIKENESS = 0.5;
const STEP_LIKENESS = 0.4;
const MOVED_STEP_LIKENESS = 0.8;
const FACT_LIKENESS = 0.4;
const SWAP_LIKENESS = 2;

/** Facts of which several of one kind are known apart by their words alone. */
const BY_WORDS: ReadonlySet<string> = new Set(['note', 'tip', 'warning', 'serve with', 'more', 'every', 'free of']);
/** Lines that are another line if they are about another thing. */
const BY_SUBJECT: ReadonlySet<string> = new Set([
  'in',
  'out',
  'use',
  'count-as',
  'swap',
  'drop',
  'add',
  'baked',
  'stand',
]);

export function matchTrees(before: TreeNode, after: TreeNode, options: MatchOptions): Matching {
  return new Matcher(options).match(before, after);
}

class Matcher implements Matching {
  readonly after = new Map<TreeNode, TreeNode>();
  readonly before = new Map<TreeNode, TreeNode>();
  readonly renamed = new Map<string, string>();
  readonly #factors = new Map<TreeNode, Rational>();

  constructor(readonly options: MatchOptions) {}

  match(before: TreeNode, after: TreeNode): Matching {
    this.#pairTree(before, after);
    return this;
  }

  #pairTree(a: TreeNode, b: TreeNode): void {
    this.#pair(a, b);
    const factor = this.options.factors.get(a);
    if (factor) spread(a, factor, this.#factors);
    this.#children(a, b);
    if (a.content?.kind !== 'block') return;
    if (a.content.block === 'recipe') this.#across(a, b);
    else if (a.content.block === 'menu') for (const child of a.children) this.#swaps(child);
  }

  readonly #pair = (a: TreeNode, b: TreeNode): void => {
    this.after.set(a, b);
    this.before.set(b, a);
  };

  /** A line and the lines under it. */
  readonly #pairLine = (a: TreeNode, b: TreeNode): void => {
    this.#pair(a, b);
    this.#children(a, b);
  };

  // ---- keys --------------------------------------------------------------------------------------------------------

  /** All that a line says; lines of the first tree as they would stand in the second if nothing else had changed. */
  readonly #whole: Keys<TreeNode> = {
    before: (node) => node.content && keyOf(this.#asAfter(node, node.content), this.options.before.cups),
    after: (node) => node.content && keyOf(node.content, this.options.after.cups),
  };

  readonly #subject: Keys<TreeNode> = {
    before: ({ content }) => {
      const subject = content && subjectOf(content);
      return subject
        ?.split('|')
        .map((name) => this.renamed.get(name) ?? name)
        .join('|');
    },
    after: ({ content }) => content && subjectOf(content),
  };

  /** What a line is about and in which form: `water, hot` and `water, ice cold` are two lines however much of each there is. */
  readonly #form: Keys<TreeNode> = {
    before: (node) => formed(this.#subject.before(node), node),
    after: (node) => formed(this.#subject.after(node), node),
  };

  readonly #food: Keys<TreeNode> = {
    before: (node) => this.options.before.foodOf(node),
    after: (node) => this.options.after.foodOf(node),
  };

  #asAfter(node: TreeNode, content: LineContent): LineContent {
    const factor = this.#factors.get(node);
    return factor ? scaledLine(content, factor) : content;
  }

  // ---- one block ---------------------------------------------------------------------------------------------------

  #children(a: TreeNode, b: TreeNode): void {
    const categories = [...new Set([...a.children, ...b.children].map(categoryOfNode))].sort();
    for (const category of categories) {
      const of = (parent: TreeNode): TreeNode[] =>
        parent.children.filter((child) => categoryOfNode(child) === category);
      const left = { before: of(a), after: of(b) };
      // Blocks come first in the alphabet, as they must: a renamed make changes the names of the lines that draw it.
      if (category.startsWith('block')) this.#blocks(left, category, a);
      else if (category === 'step') this.#steps(left);
      else this.#lines(left, category);
    }
  }

  #blocks(left: Left<TreeNode>, category: string, parent: TreeNode): void {
    const pairs: [TreeNode, TreeNode][] = [];
    const pair = (a: TreeNode, b: TreeNode): void => void pairs.push([a, b]);
    pairByKey(left, this.#subject, pair);
    pairByLikeness(left, (a, b) => sharedWords(gist(a), gist(b)), BLOCK_LIKENESS, pair);
    const [only, other] = [left.before[0], left.after[0]];
    const alone = left.before.length === 1 && left.after.length === 1 && pairs.length === 0;
    if (alone && category === 'block recipe' && only && other) pair(only, other);
    // In the order of the makes, so that what one saves under another name is known to those that draw it.
    pairs.sort(([a], [b]) => parent.children.indexOf(a) - parent.children.indexOf(b));
    for (const [a, b] of pairs) this.#rename(makeName(a), makeName(b));
    for (const [a, b] of pairs) this.#pairTree(a, b);
  }

  #rename(old: string | undefined, fresh: string | undefined): void {
    if (old !== undefined && fresh !== undefined && old !== fresh) this.renamed.set(old, fresh);
  }

  #steps(left: Left<TreeNode>): void {
    pairByKey(left, this.#whole, this.#pairLine);
    for (const [a, b] of alignSequences(left.before, left.after, stepLikeness, STEP_LIKENESS)) {
      this.#pairLine(a, b);
      left.before = left.before.filter((one) => one !== a);
      left.after = left.after.filter((one) => one !== b);
    }
    pairByLikeness(left, stepLikeness, MOVED_STEP_LIKENESS, this.#pairLine);
  }

  #lines(left: Left<TreeNode>, category: string): void {
    pairByKey(left, this.#whole, this.#pairLine);
    pairByKey(left, this.#form, this.#pairLine);
    pairByKey(left, this.#subject, this.#pairLine);
    if (category === 'in' || category === 'or') pairByKey(left, this.#food, this.#pairLine);
    else if (category === 'out') pairByKey(left, sameKeys(savedFrom), (a, b) => this.#pairSaved(a, b));
    else if (BY_WORDS.has(category)) pairByLikeness(left, likeWords, FACT_LIKENESS, this.#pairLine);
    else if (!BY_SUBJECT.has(category))
      pairByKey(
        left,
        sameKeys(() => category),
        this.#pairLine,
      );
  }

  /** The same thing saved under another name. */
  #pairSaved(a: TreeNode, b: TreeNode): void {
    this.#rename(savedName(a), savedName(b));
    this.#pairLine(a, b);
  }

  // ---- a recipe ----------------------------------------------------------------------------------------------------

  /** Lines that went to another make, and foods that took another's place. */
  #across(a: TreeNode, b: TreeNode): void {
    const left: Left<TreeNode> = {
      before: recipeLines(a).filter((node) => !this.after.has(node)),
      after: recipeLines(b).filter((node) => !this.before.has(node)),
    };
    const only = (kinds: readonly string[], keys: Keys<TreeNode>): Keys<TreeNode> => {
      const counts = ({ content }: TreeNode): boolean => content !== undefined && kinds.includes(content.kind);
      return {
        before: (node) => (counts(node) ? keys.before(node) : undefined),
        after: (node) => (counts(node) ? keys.after(node) : undefined),
      };
    };
    pairByKey(left, only(['in', 'out'], this.#whole), this.#pairLine);
    pairByKey(left, only(['in'], this.#subject), this.#pairLine);
    pairByLikeness(left, stepLikeness, MOVED_STEP_LIKENESS, this.#pairLine);
    for (const block of [a, ...a.children, ...a.children.flatMap(({ children }) => children)]) this.#swaps(block);
  }

  /** A food that stands where another stood, or in the same amount. */
  #swaps(a: TreeNode): void {
    const b = this.after.get(a);
    if (!b) return;
    for (const kind of ['in', 'or']) {
      const left: Left<TreeNode> = {
        before: a.children.filter((node) => node.content?.kind === kind && !this.after.has(node)),
        after: b.children.filter((node) => node.content?.kind === kind && !this.before.has(node)),
      };
      pairByLikeness(left, (one, other) => this.#swapLikeness(one, other, a, b), SWAP_LIKENESS, this.#pairLine);
    }
  }

  #swapLikeness(one: TreeNode, other: TreeNode, a: TreeNode, b: TreeNode): number {
    const [x, y] = [one.content && this.#asAfter(one, one.content), other.content];
    if ((x?.kind !== 'in' && x?.kind !== 'or') || (y?.kind !== 'in' && y?.kind !== 'or')) return 0;
    const unnamed = (content: typeof x): LineContent => ({
      ...content,
      name: { ...content.name, text: '' },
      equals: [],
    });
    const sameAmount = keyOf(unnamed(x), this.options.before.cups) === keyOf(unnamed(y), this.options.after.cups);
    const samePlace = sharesNeighbour(this.#neighbours(one, a, this.after), neighboursIn(other, b, this.before));
    const shared = sharedWords(wordsOf(x.name.text), wordsOf(y.name.text));
    const amount = sameAmount ? 2 : isNearly(x, y) ? 1 : 0;
    return amount + (samePlace ? 1.5 : 0) + shared;
  }

  /** The nearest paired lines above and below a line, as the second tree has them. */
  #neighbours(node: TreeNode, parent: TreeNode, paired: ReadonlyMap<TreeNode, TreeNode>): Neighbours {
    const { above, below } = neighboursIn(node, parent, paired);
    return { above: above && this.after.get(above), below: below && this.after.get(below) };
  }
}

const NEARLY = rational(3, 4);

/** Whether two lines put in much the same weight, as one fat for another. */
function isNearly(x: InLine, y: InLine): boolean {
  const [a, b] = [x, y].map(({ amount }) =>
    amount.kind === 'measure' && units[amount.unit.id].dimension === 'mass'
      ? baseValue(amount, 'us', 'middle')
      : undefined,
  );
  if (!a || !b) return false;
  const [small, large] = compare(a, b) < 0 ? [a, b] : [b, a];
  return compare(small, multiply(large, NEARLY)) >= 0;
}

interface Neighbours {
  readonly above: TreeNode | undefined;
  readonly below: TreeNode | undefined;
}

function neighboursIn(node: TreeNode, parent: TreeNode, paired: ReadonlyMap<TreeNode, TreeNode>): Neighbours {
  const at = parent.children.indexOf(node);
  const known = (one: TreeNode): boolean => paired.has(one);
  return { above: parent.children.slice(0, at).findLast(known), below: parent.children.slice(at + 1).find(known) };
}

const sharesNeighbour = (a: Neighbours, b: Neighbours): boolean => a.above === b.above || a.below === b.below;

/** A subject with the note that stands with it; undefined without a note, which tells no two lines apart. */
function formed(subject: string | undefined, { content }: TreeNode): string | undefined {
  const note = content && 'note' in content ? content.note : undefined;
  return subject === undefined || note === undefined ? undefined : `${subject}|${normaliseName(note.text)}`;
}

const categoryOfNode = ({ content }: TreeNode): string => (content ? categoryOf(content) : '');

const makeName = ({ content }: TreeNode): string | undefined =>
  content?.kind === 'block' && content.block === 'make' && content.name ? normaliseName(content.name.text) : undefined;

const savedName = ({ content }: TreeNode): string | undefined =>
  content?.kind === 'out' && content.as ? normaliseName(content.as.text) : undefined;

/** From what a thing is saved. */
const savedFrom = ({ content }: TreeNode): string | undefined =>
  content?.kind === 'out' && content.verb === 'save' ? normaliseName(content.of?.text ?? '') : undefined;

const likeWords = (a: TreeNode, b: TreeNode): number => sharedWords(wordsOf(textOf(a)), wordsOf(textOf(b)));

const textOf = ({ content }: TreeNode): string =>
  content === undefined ? '' : 'prose' in content ? content.prose.text : 'words' in content ? content.words.text : '';

/** The lines of a recipe and of its makes, without its variants. */
function recipeLines(recipe: TreeNode): readonly TreeNode[] {
  const variant = ({ content }: TreeNode): boolean => content?.kind === 'block' && content.block === 'variant';
  return [...linesBelow({ children: recipe.children.filter((child) => !variant(child)) })];
}

/** All lines below a node. */
function* linesBelow(node: TreeNode): Iterable<TreeNode> {
  for (const child of node.children) {
    if (child.content?.kind !== 'block') yield child;
    yield* linesBelow(child);
  }
}

function spread(node: TreeNode, factor: Rational, into: Map<TreeNode, Rational>): void {
  into.set(node, factor);
  for (const child of node.children) spread(child, factor, into);
}

/** What a block is about, as words: the names in it, and its sentences. */
function gist(node: TreeNode): readonly string[] {
  return [...linesBelow(node)].flatMap((line) => {
    const { content } = line;
    if (!content) return [];
    const subject = subjectOf(content);
    return subject === undefined ? wordsOf(textOf(line)) : [subject];
  });
}

function stepLikeness(a: TreeNode, b: TreeNode): number {
  const [x, y] = [a.content, b.content];
  if (x?.kind !== 'step' || y?.kind !== 'step') return 0;
  const words = sharedWords(wordsOf(x.prose.text), wordsOf(y.prose.text));
  return words * 0.8 + (x.lane === y.lane ? 0.2 : 0);
}
