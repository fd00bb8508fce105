import { normaliseName } from '@quern/compiler';
import { equal, multiply, type CupSystem, type Rational } from '@quern/quantity';
import { factWord, printLine, type FactLine, type LineContent } from '@quern/syntax';
import type { BothFigures, LineAction, LineFinding, LineRole, BlockNames } from './changes.js';
import type { Difference, LineChange, Spot } from './difference.js';
import { bothFigures, doses, factors, figured, grams, more, percents } from './figured.js';
import { isSmallDose, type LedgerIndex, type LedgerLine } from './ledger-lines.js';
import type { TreeNode } from './tree.js';

/* Changed lines as a reader is told of them: what they are about, where they stand, what they weigh. */

/** One of the two trees, with what its ledgers say. */
export interface Side {
  readonly tree: TreeNode;
  readonly cups: CupSystem;
  readonly ledger: LedgerIndex;
}

export function lineFindings(difference: Difference, before: Side, after: Side): readonly LineFinding[] {
  return new Finder(difference, before, after).find();
}

class Finder {
  /** Nodes of the second tree that stood elsewhere in the first, and the other way round. */
  readonly #moved: ReadonlySet<TreeNode>;

  constructor(
    readonly difference: Difference,
    readonly before: Side,
    readonly after: Side,
  ) {
    const moves = difference.changes.filter(({ kind }) => kind === 'moved');
    this.#moved = new Set(
      moves.flatMap((change) => [change.before?.node, change.after?.node].filter((node) => node !== undefined)),
    );
  }

  find(): readonly LineFinding[] {
    return this.difference.changes.map((change) => this.#finding(change));
  }

  #finding(change: LineChange): LineFinding {
    const { before, after } = change;
    const content = (after ?? before)?.node.content;
    const where = {
      before: placeOf(this.before.tree, before, change, 'before'),
      after: placeOf(this.after.tree, after, change, 'after'),
    };
    const [a, b] = [before && this.#ledger(before.node, this.before), after && this.#ledger(after.node, this.after)];
    const role = content ? roleOf(content, a ?? b) : 'unreadable';
    const parted = this.#parted(change, role);
    return {
      kind: 'line',
      role,
      action: parted?.action ?? actionOf(change, role, a, b),
      where,
      subject: { before: subjectText(before), after: subjectText(after) },
      ...(before ? { before: textOf(before) } : {}),
      ...(after ? { after: textOf(after) } : {}),
      lines: { ...lineNumber('before', before), ...lineNumber('after', after) },
      ...this.#figures(role, a, b, this.#factorOf(change)),
      inside: this.#inside(change),
      ...(parted ? { other: parted.other } : {}),
      change,
    };
  }

  #ledger({ line }: TreeNode, side: Side): LedgerLine | undefined {
    return line && side.ledger.lines.get(line);
  }

  #figures(
    role: LineRole,
    a: LedgerLine | undefined,
    b: LedgerLine | undefined,
    factor: Rational | undefined,
  ): Pick<LineFinding, 'grams' | 'share' | 'beyond'> {
    if (role !== 'food' && role !== 'product' && role !== 'out') return {};
    const weight = bothFigures(a?.grams, b?.grams, isSmallDose(a?.food ?? b?.food) ? doses : grams);
    // One food's share says nothing of another's.
    const one = a?.food?.key === undefined || b?.food?.key === undefined || a.food.key === b.food.key;
    const share = role === 'food' && one ? this.#share(a, b) : undefined;
    const shared = share ? { share } : {};
    if (!factor || !a?.grams || !b?.grams || !weight) return { ...(weight ? { grams: weight } : {}), ...shared };
    const expected = multiply(a.grams, factor);
    const percent = equal(expected, b.grams) || expected.n === 0n ? undefined : more(expected, b.grams);
    const { before, after } = weight;
    const told = { ...(before ? { before } : {}), ...(after ? { after } : {}), ...(percent ? { percent } : {}) };
    return { grams: told, ...shared, beyond: figured(factor, factors) };
  }

  /** The factor of the recipe in which a line stands. */
  #factorOf({ before }: LineChange): Rational | undefined {
    return this.difference.scalings.find(({ block }) => block.before[0] === before?.path[0])?.factor;
  }

  #share(a: LedgerLine | undefined, b: LedgerLine | undefined): BothFigures | undefined {
    const of = (line: LedgerLine | undefined, side: Side): Rational | undefined =>
      line?.food && side.ledger.shares.get(line.food.key)?.percent;
    return bothFigures(of(a, this.before), of(b, this.after), percents);
  }

  /** The lines of a block that came or went with it. */
  #inside({ kind, before, after }: LineChange): readonly string[] {
    const block = kind === 'added' ? after?.node : kind === 'removed' ? before?.node : undefined;
    if (!block) return [];
    return [...below(block)].filter((node) => !this.#moved.has(node)).map((node) => lineText(node));
  }

  /** A make that is new, and whose lines mostly stood in one other before; or that is gone, and its lines stand in one now. */
  #parted(
    change: LineChange,
    role: LineRole,
  ): { readonly action: 'split' | 'merged'; readonly other: string } | undefined {
    const { kind, before, after } = change;
    const block = kind === 'added' ? after?.node : kind === 'removed' ? before?.node : undefined;
    if (role !== 'make' || !block) return undefined;
    const [mine, theirs] = kind === 'added' ? (['after', 'before'] as const) : (['before', 'after'] as const);
    const own = new Set(block.children);
    const moves = this.difference.changes.filter((one) => {
      const here = one[mine]?.node;
      return one.kind === 'moved' && here !== undefined && own.has(here);
    });
    const ledger = block.children.filter(({ content }) => content?.kind === 'in').length;
    const tree = this[theirs].tree;
    const others = moves.map((one) => placeOf(tree, one[theirs], one, theirs).make ?? '');
    const [other] = others;
    const ins = moves.filter((one) => one[mine]?.node.content?.kind === 'in').length;
    if (other === undefined || others.some((one) => one !== other) || ins * 2 < ledger || ins === 0) return undefined;
    return { action: kind === 'added' ? 'split' : 'merged', other };
  }
}

function* below(node: TreeNode): Iterable<TreeNode> {
  for (const child of node.children) {
    yield child;
    yield* below(child);
  }
}

const lineNumber = <K extends string>(key: K, spot: Spot | undefined): { readonly [P in K]?: number } =>
  (spot?.node.line ? { [key]: spot.node.line.number + 1 } : {}) as { readonly [P in K]?: number };

const textOf = ({ node }: Spot): string => lineText(node);
const lineText = ({ content, line }: TreeNode): string => (content && printLine(content)) ?? line?.text.trim() ?? '';

/** Recipe, variant and make of a line; for a line that only the other side has, those of its block. */
function placeOf(root: TreeNode, spot: Spot | undefined, change: LineChange, side: 'before' | 'after'): BlockNames {
  const path = spot?.path.slice(0, -1) ?? change.target?.[side] ?? change.source?.[side] ?? [];
  const blocks: TreeNode[] = [];
  let node: TreeNode | undefined = root;
  for (const index of path) {
    node = node?.children[index];
    if (node) blocks.push(node);
  }
  const own = spot?.node;
  if (own?.content?.kind === 'block' && own.content.block !== 'make') blocks.push(own);
  let place: BlockNames = {};
  for (const { content } of blocks) {
    if (content?.kind !== 'block') continue;
    const name = content.name?.text ?? '';
    if (content.block === 'recipe' || content.block === 'variant' || content.block === 'make')
      place = { ...place, [content.block]: name };
    else place = { ...place, block: `${content.block} ${name}`.trim() };
  }
  return place;
}

function roleOf(content: LineContent, ledger: LedgerLine | undefined): LineRole {
  switch (content.kind) {
    case 'in':
      return ledger?.product === true || content.amount.kind === 'share' ? 'product' : 'food';
    case 'or':
      return 'alternative';
    case 'out':
    case 'step':
    case 'check':
      return content.kind;
    case 'every':
      return 'care';
    case 'more':
      return 'words';
    case 'block':
      return content.block === 'make' || content.block === 'variant' || content.block === 'recipe'
        ? content.block
        : 'block';
    case 'keeps':
    case 'best-after':
      return 'keeping';
    case 'gives':
    case 'serves':
    case 'vessel':
      return 'yield';
    case 'swap':
    case 'drop':
    case 'add':
    case 'times':
      return 'edit';
    case 'text-fact':
      return CREDITS.has(content.word) ? 'credit' : 'remark';
    case 'list-fact':
      return content.word === 'keywords' ? 'credit' : content.word === 'free of' ? 'promise' : 'fact';
    case 'baked':
      return 'credit';
    case 'bad':
      return 'unreadable';
    default:
      return 'fact';
  }
}

const CREDITS: ReadonlySet<string> = new Set(['by', 'source', 'photo', 'language']);

function actionOf(
  change: LineChange,
  role: LineRole,
  a: LedgerLine | undefined,
  b: LedgerLine | undefined,
): LineAction {
  if (change.kind !== 'changed') return change.kind;
  const named = change.parts.find(({ part }) => part === 'name' || part === 'as');
  if (!named) return 'changed';
  if (
    role === 'make' ||
    role === 'recipe' ||
    role === 'variant' ||
    role === 'block' ||
    role === 'product' ||
    role === 'out'
  )
    return 'renamed';
  if (role !== 'food' && role !== 'alternative') return 'changed';
  return a?.food && b?.food && a.food.key === b.food.key ? 'renamed' : 'swapped';
}

/** What a line is about, in the words of the file. */
function subjectText(spot: Spot | undefined): string {
  const content = spot?.node.content;
  if (!content) return '';
  switch (content.kind) {
    case 'in':
    case 'or':
      return content.name.text;
    case 'out':
      return [content.verb, content.as?.text ?? content.of?.text ?? ''].join(' ').trim();
    case 'block':
      return content.name?.text ?? '';
    case 'step':
      return content.lane;
    case 'every':
      return 'every';
    case 'more':
      return ':';
    case 'check':
      return 'check';
    case 'swap':
      return `swap ${normaliseName(content.from.text)}`;
    case 'bad':
    case 'blank':
    case 'comment':
    case 'conflict':
      return content.kind;
    default:
      return factWord(content satisfies FactLine);
  }
}
