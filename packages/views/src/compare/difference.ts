import type { Rational } from '@quern/quantity';
import type { LineContent } from '@quern/syntax';
import { normaliseName } from '@quern/compiler';
import { scaledLine } from './canonical.js';
import type { MatchOptions, Matching, Sense } from './match.js';
import { longestRising } from './pairing.js';
import { keyOf, partsOf, type PartName, type PartValue } from './parts.js';
import { treeText, type TreeNode } from './tree.js';
import { wordRuns, type WordRun } from './word-runs.js';

/*
 * The difference of two trees: which lines came, went, changed or went elsewhere. With it the first tree becomes the
 * second (`applyDifference`), and turned round it is the difference the other way (`mirrored`).
 */

/** A line in its tree; `path` counts children from the root. */
export interface Spot {
  readonly path: readonly number[];
  readonly node: TreeNode;
}

/** A block that both trees have, by its path in each. */
export interface SharedBlock {
  readonly before: readonly number[];
  readonly after: readonly number[];
}

/** A part of a line that is no longer the same. */
export interface PartChange {
  readonly part: PartName;
  /** As written; empty where the line did not have it. */
  readonly before: string;
  readonly after: string;
  readonly values?: { readonly before?: PartValue; readonly after?: PartValue };
  /** For free words: what stayed, went and came. */
  readonly runs?: readonly WordRun[];
}

/**
 * `added`, `removed`: a line with all that belongs to it. `changed`: the same line with other parts. `moved`: a line that
 * went to another block. `reordered`: the steps of a block follow each other otherwise.
 */
export interface LineChange {
  readonly kind: 'added' | 'removed' | 'changed' | 'moved' | 'reordered';
  readonly before?: Spot;
  readonly after?: Spot;
  /** The block it left, and the block it came into, where both trees have them. */
  readonly source?: SharedBlock;
  readonly target?: SharedBlock;
  readonly parts: readonly PartChange[];
  /** It only names a make or a saved thing as it is called now. */
  readonly follows: boolean;
}

/** Lines of a block that stand in another order; pairs of places among its children. */
export interface Arrangement {
  readonly block: SharedBlock;
  readonly kept: readonly (readonly [before: number, after: number])[];
}

/** A recipe that is the other times a number. */
export interface Scaling {
  readonly block: SharedBlock;
  readonly factor: Rational;
}

export interface Difference {
  readonly changes: readonly LineChange[];
  /** Orders that differ although nothing of the formula does. */
  readonly arrangements: readonly Arrangement[];
  readonly scalings: readonly Scaling[];
}

/** One direction alone is ever worked out, so that both tell the same where several pairings would do. */
export function isForward(before: TreeNode, after: TreeNode): boolean {
  return treeText(before) <= treeText(after);
}

/** The difference from the first tree to the second, whose nodes have been matched. */
export function differenceOf(before: TreeNode, after: TreeNode, matching: Matching, options: MatchOptions): Difference {
  return new Differ(before, after, matching, options).read();
}

class Differ {
  readonly #changes: LineChange[] = [];
  readonly #arrangements: Arrangement[] = [];
  readonly #scalings: Scaling[] = [];
  readonly #paths = { before: new Map<TreeNode, readonly number[]>(), after: new Map<TreeNode, readonly number[]>() };
  readonly #parents = { before: new Map<TreeNode, TreeNode>(), after: new Map<TreeNode, TreeNode>() };

  constructor(
    readonly before: TreeNode,
    readonly after: TreeNode,
    readonly matching: Matching,
    readonly options: MatchOptions,
  ) {
    this.#index(before, 'before', []);
    this.#index(after, 'after', []);
  }

  #index(node: TreeNode, side: 'before' | 'after', path: readonly number[]): void {
    this.#paths[side].set(node, path);
    for (const [index, child] of node.children.entries()) {
      this.#parents[side].set(child, node);
      this.#index(child, side, [...path, index]);
    }
  }

  read(): Difference {
    this.#pair(this.before, this.after, undefined);
    this.#moves();
    return { changes: this.#changes, arrangements: this.#arrangements, scalings: this.#scalings };
  }

  #spot(node: TreeNode, side: 'before' | 'after'): Spot {
    return { path: this.#paths[side].get(node) ?? [], node };
  }

  #shared(a: TreeNode, b: TreeNode): SharedBlock {
    return { before: this.#spot(a, 'before').path, after: this.#spot(b, 'after').path };
  }

  /** Whether a pair still stands in the same block. */
  #stays(a: TreeNode, b: TreeNode): boolean {
    const [from, to] = [this.#parents.before.get(a), this.#parents.after.get(b)];
    return from !== undefined && to !== undefined && this.matching.after.get(from) === to;
  }

  #pair(a: TreeNode, b: TreeNode, factor: Rational | undefined): void {
    const own = this.options.factors.get(a);
    if (own) this.#scalings.push({ block: this.#shared(a, b), factor: own });
    const scale = own ?? factor;
    const change = this.#changed(a, b, scale);
    if (change) this.#changes.push(change);
    const shared = this.#shared(a, b);
    for (const child of a.children) {
      if (this.matching.after.has(child)) continue;
      this.#changes.push({ ...PLAIN, kind: 'removed', before: this.#spot(child, 'before'), source: shared });
    }
    for (const child of b.children) {
      const before = this.matching.before.get(child);
      if (before === undefined) {
        this.#changes.push({ ...PLAIN, kind: 'added', after: this.#spot(child, 'after'), target: shared });
      } else if (this.#stays(before, child)) this.#pair(before, child, scale);
    }
    this.#order(a, b, shared);
  }

  #changed(a: TreeNode, b: TreeNode, factor: Rational | undefined): LineChange | undefined {
    const parts = this.#parts(a, b, factor);
    if (parts.length === 0) return undefined;
    const follows = this.#follows(a, b, factor);
    return { kind: 'changed', before: this.#spot(a, 'before'), after: this.#spot(b, 'after'), parts, follows };
  }

  #parts(a: TreeNode, b: TreeNode, factor: Rational | undefined): readonly PartChange[] {
    if (!a.content || !b.content) return [];
    const { before, after } = this.options;
    const expected = factor ? scaledLine(a.content, factor) : a.content;
    return partChanges(a.content, expected, b.content, before, after);
  }

  /** Whether nothing but the names of renamed things differs. */
  #follows(a: TreeNode, b: TreeNode, factor: Rational | undefined): boolean {
    const { renamed } = this.matching;
    if (renamed.size === 0 || !a.content || !b.content || a.content.kind === 'block') return false;
    if (a.content.kind === 'out' && a.content.verb === 'save') return false;
    const content = factor ? scaledLine(a.content, factor) : a.content;
    return keyOf(renamedLine(content, renamed), this.options.before.cups) === keyOf(b.content, this.options.after.cups);
  }

  #order(a: TreeNode, b: TreeNode, block: SharedBlock): void {
    const kept = a.children.flatMap((child, index): [number, number][] => {
      const other = this.matching.after.get(child);
      return other && this.#stays(child, other) ? [[index, b.children.indexOf(other)]] : [];
    });
    if (kept.every(([, at], index) => index === 0 || (kept[index - 1]?.[1] ?? 0) < at)) return;
    this.#arrangements.push({ block, kept });
    const steps = kept.filter(([index]) => a.children[index]?.content?.kind === 'step');
    const inPlace = longestRising(steps.map(([, at]) => at));
    for (const [index, [from, to]] of steps.entries()) {
      const [step, now] = [a.children[from], b.children[to]];
      if (inPlace.has(index) || !step || !now) continue;
      this.#changes.push({
        ...PLAIN,
        kind: 'reordered',
        before: this.#spot(step, 'before'),
        after: this.#spot(now, 'after'),
      });
    }
  }

  #moves(): void {
    for (const [a, b] of this.matching.after) {
      const [from, to] = [this.#parents.before.get(a), this.#parents.after.get(b)];
      // What belongs to a line moves with it.
      if (!from || !to || this.#stays(a, b)) continue;
      const source = this.matching.after.get(from);
      const target = this.matching.before.get(to);
      this.#changes.push({
        kind: 'moved',
        before: this.#spot(a, 'before'),
        after: this.#spot(b, 'after'),
        ...(source ? { source: this.#shared(from, source) } : {}),
        ...(target ? { target: this.#shared(target, to) } : {}),
        parts: this.#parts(a, b, this.#factorOf(a)),
        follows: false,
      });
    }
  }

  #factorOf(node: TreeNode): Rational | undefined {
    const own = this.options.factors.get(node);
    const parent = this.#parents.before.get(node);
    return own ?? (parent && this.#factorOf(parent));
  }
}

const PLAIN = { parts: [], follows: false } as const;

/** Where two lines differ: the first as written, and as it would have to be to count as the same. */
function partChanges(
  written: LineContent,
  expected: LineContent,
  now: LineContent,
  before: Sense,
  after: Sense,
): readonly PartChange[] {
  const [was, should, is] = [partsOf(written, before.cups), partsOf(expected, before.cups), partsOf(now, after.cups)];
  return is.flatMap((part, index): PartChange[] => {
    const [old, wanted] = [was[index], should[index]];
    if (!old || wanted?.key === part.key) return [];
    const values = { ...(old.value ? { before: old.value } : {}), ...(part.value ? { after: part.value } : {}) };
    return [
      {
        part: part.name,
        before: old.text,
        after: part.text,
        ...(old.value || part.value ? { values } : {}),
        ...(part.wording ? { runs: wordRuns(old.text, part.text) } : {}),
      },
    ];
  });
}

/** A line with the names of makes and saved things as they are called now. */
function renamedLine(content: LineContent, renamed: ReadonlyMap<string, string>): LineContent {
  const fresh = <N extends { readonly text: string } | undefined>(name: N): N =>
    name ? { ...name, text: renamed.get(normaliseName(name.text)) ?? name.text } : name;
  switch (content.kind) {
    case 'in':
    case 'or':
      return { ...content, name: fresh(content.name), ...(content.on ? { on: fresh(content.on) } : {}) };
    case 'out':
      return content.of ? { ...content, of: fresh(content.of) } : content;
    case 'check':
      return {
        ...content,
        ...(content.name ? { name: fresh(content.name) } : {}),
        ...(content.on ? { on: fresh(content.on) } : {}),
        ...(content.from ? { from: fresh(content.from) } : {}),
      };
    default:
      return content;
  }
}

/** The difference the other way round. */
export function mirrored({ changes, arrangements, scalings }: Difference): Difference {
  return {
    changes: changes.map(mirroredLine),
    arrangements: arrangements.map(({ block, kept }) => ({
      block: mirroredBlock(block),
      kept: kept.map(([a, b]) => [b, a] as const).sort(([a], [b]) => a - b),
    })),
    scalings: scalings.map(({ block, factor }) => ({
      block: mirroredBlock(block),
      factor: { n: factor.d, d: factor.n },
    })),
  };
}

const mirroredBlock = ({ before, after }: SharedBlock): SharedBlock => ({ before: after, after: before });

const OTHER_WAY = {
  added: 'removed',
  removed: 'added',
  changed: 'changed',
  moved: 'moved',
  reordered: 'reordered',
} as const;

function mirroredLine({ kind, before, after, source, target, parts, follows }: LineChange): LineChange {
  return {
    kind: OTHER_WAY[kind],
    ...(after ? { before: after } : {}),
    ...(before ? { after: before } : {}),
    ...(target ? { source: mirroredBlock(target) } : {}),
    ...(source ? { target: mirroredBlock(source) } : {}),
    parts: parts.map(mirroredPart),
    follows,
  };
}

function mirroredPart({ part, before, after, values, runs }: PartChange): PartChange {
  const turned = values && {
    ...(values.after ? { before: values.after } : {}),
    ...(values.before ? { after: values.before } : {}),
  };
  return {
    part,
    before: after,
    after: before,
    ...(turned ? { values: turned } : {}),
    ...(runs ? { runs: wordRuns(after, before) } : {}),
  };
}
