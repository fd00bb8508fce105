import { divide, equal, ONE, type CupSystem, type Interval, type Rational } from '@quern/quantity';
import type { LineContent, Measure, NumberRange } from '@quern/syntax';
import { canonical } from './canonical.js';
import type { Matching } from './match.js';
import { mostCommon } from './pairing.js';
import type { TreeNode } from './tree.js';

/**
 * So many times the first recipe is the second, if more than half of all the figures that would scale, in either of them,
 * did so by the same factor. Undefined when there is no such factor, or it is one.
 */
export function commonFactor(
  recipe: TreeNode,
  matching: Matching,
  cups: { readonly before: CupSystem; readonly after: CupSystem },
): Rational | undefined {
  const ratios = [...nodesBelow(recipe)].flatMap((node): Rational[] => {
    const other = matching.after.get(node);
    const [a, b] = [
      node.content && figureOf(node.content, cups.before),
      other?.content && figureOf(other.content, cups.after),
    ];
    if (!a || !b || a.low.n <= 0n || a.high.n <= 0n || b.low.n <= 0n) return [];
    const [low, high] = [divide(b.low, a.low), divide(b.high, a.high)];
    return equal(low, high) ? [low] : [];
  });
  const common = mostCommon(ratios);
  const other = matching.after.get(recipe);
  const figures = Math.max(figuresIn(recipe, cups.before), other ? figuresIn(other, cups.after) : 0);
  const enough = common !== undefined && common.count > 1 && common.count * 2 > figures;
  return enough && !equal(common.value, ONE) ? common.value : undefined;
}

function* nodesBelow(node: TreeNode): Iterable<TreeNode> {
  yield node;
  for (const child of node.children) {
    if (child.content?.kind !== 'block' || child.content.block !== 'variant') yield* nodesBelow(child);
  }
}

const figuresIn = (recipe: TreeNode, cups: CupSystem): number =>
  [...nodesBelow(recipe)].filter(({ content }) => content && figureOf(content, cups)).length;

/** The figure of a line that would scale, in grams, millilitres or pieces. */
function figureOf(content: LineContent, cups: CupSystem): Interval | undefined {
  const plain = canonical(content, cups);
  const whole = (measure: Measure | undefined): Interval | undefined => measure?.range;
  switch (plain.kind) {
    case 'in':
    case 'out':
      return 'range' in plain.amount && plain.amount.kind !== 'percent' ? ends(plain.amount.range) : undefined;
    case 'block':
      return whole(plain.equal);
    case 'gives':
      return plain.count ? ends(plain.count) : whole(plain.total);
    case 'serves':
      return ends(plain.range);
    case 'vessel':
      return { low: plain.count, high: plain.count };
    default:
      return undefined;
  }
}

const ends = ({ low, high }: NumberRange): Interval => ({ low, high });
