import type { Rational } from '@quern/quantity';
import { scaledLine } from './canonical.js';
import type { Arrangement, Difference, LineChange } from './difference.js';
import type { TreeNode } from './tree.js';

/**
 * The first tree with every change made: what it says is what the second says, in the second's order. Lines that did not
 * change keep the first's spelling.
 */
export function applyDifference(before: TreeNode, difference: Difference): TreeNode {
  return new Editor(difference).build(before, [], undefined);
}

const keyOfPath = (path: readonly number[]): string => path.join('.');

interface Arrival {
  readonly at: number;
  readonly node: TreeNode;
}

class Editor {
  readonly #changed = new Map<string, LineChange>();
  readonly #gone = new Set<string>();
  /** What comes into a block, by the block's path in the first tree. */
  readonly #arrivals = new Map<string, Arrival[]>();
  readonly #arrangements = new Map<string, Arrangement>();
  readonly #factors = new Map<string, Rational>();

  constructor({ changes, arrangements, scalings }: Difference) {
    for (const change of changes) this.#take(change);
    for (const arrangement of arrangements) this.#arrangements.set(keyOfPath(arrangement.block.before), arrangement);
    for (const { block, factor } of scalings) this.#factors.set(keyOfPath(block.before), factor);
  }

  #take(change: LineChange): void {
    const { kind, before, after, target } = change;
    if (kind === 'changed' && before) this.#changed.set(keyOfPath(before.path), change);
    if ((kind === 'removed' || kind === 'moved') && before) this.#gone.add(keyOfPath(before.path));
    // What came with a block that is new as a whole stands in it already.
    if ((kind === 'added' || kind === 'moved') && after && target) {
      const into = keyOfPath(target.before);
      const arrival = { at: after.path.at(-1) ?? 0, node: after.node };
      this.#arrivals.set(into, [...(this.#arrivals.get(into) ?? []), arrival]);
    }
  }

  build(node: TreeNode, path: readonly number[], inherited: Rational | undefined): TreeNode {
    const key = keyOfPath(path);
    const factor = this.#factors.get(key) ?? inherited;
    const changed = this.#changed.get(key)?.after?.node;
    const content = changed?.content ?? (node.content && factor ? scaledLine(node.content, factor) : node.content);
    const line = changed?.line ?? node.line;
    return { ...(content ? { content } : {}), ...(line ? { line } : {}), children: this.#children(node, path, factor) };
  }

  #children(node: TreeNode, path: readonly number[], factor: Rational | undefined): readonly TreeNode[] {
    const kept = node.children.flatMap((child, index) => {
      const at = [...path, index];
      return this.#gone.has(keyOfPath(at)) ? [] : [{ index, node: this.build(child, at, factor) }];
    });
    const arrangement = this.#arrangements.get(keyOfPath(path));
    const order = new Map(arrangement?.kept);
    const children = kept
      .sort((a, b) => (order.get(a.index) ?? a.index) - (order.get(b.index) ?? b.index))
      .map((one) => one.node);
    const arrivals = (this.#arrivals.get(keyOfPath(path)) ?? []).toSorted((a, b) => a.at - b.at);
    for (const { at, node: arrived } of arrivals) children.splice(at, 0, arrived);
    return children;
  }
}
