import type { Compiled, Formula } from '@quern/compiler';
import { equal, multiply, type CupSystem, type Rational } from '@quern/quantity';
import type { Line } from '@quern/syntax';
import type { Change, LineFinding, RescaledChange, ShareChange, WeighedChange } from './changes.js';
import { formulaChanges, inputChanges, type Both } from './consequences.js';
import { differenceOf, isForward, mirrored, type Difference } from './difference.js';
import { commonFactor } from './factor.js';
import { bothFigures, doses, factors, figured, grams, percents, totals } from './figured.js';
import type { CompareInputs } from './inputs.js';
import { isSmallDose, ledgerIndex, type LedgerIndex, type LedgerLine } from './ledger-lines.js';
import { lineFindings, type Side } from './line-findings.js';
import { matchTrees, type Matching, type Sense } from './match.js';
import { ordered } from './rank.js';
import { treeOfDocument, treeOfRecipe, type TreeNode } from './tree.js';

/** One of the two formulas, as it is called. */
export interface Compared {
  readonly file: string;
  readonly title: string;
  readonly variant?: string;
}

/** How a formula changed. */
export interface Comparison {
  readonly before: Compared;
  readonly after: Compared;
  /** Nothing changed, whatever the order and the spelling of the lines. */
  readonly same: boolean;
  /** In the order in which they are told. */
  readonly changes: readonly Change[];
}

/** How a file changed: recipe by recipe, and what stands outside them. */
export interface FileComparison {
  readonly before: string;
  readonly after: string;
  readonly same: boolean;
  /** Recipes that both files have, in the order of the second. Those that are the same are listed too. */
  readonly recipes: readonly Comparison[];
  /** Recipes that came or went, foods, cultures, kitchens and menus. */
  readonly others: readonly LineFinding[];
  /** As lines: with it the first file becomes the second. */
  readonly difference: Difference;
}

const NO_INPUTS: CompareInputs = {};

/** Compares two formulas: a recipe with a later state of it, or with a variant of it. */
export function compareFormulas(
  before: Formula,
  after: Formula,
  inputs: Both<CompareInputs> = { before: NO_INPUTS, after: NO_INPUTS },
): Comparison {
  const [a, b] = [formulaSide(before), formulaSide(after)];
  const { difference, matching } = matched(a, b);
  const factor = difference.scalings[0]?.factor;
  const lines = lineFindings(difference, a, b);
  return comparisonOf({ before, after }, inputs, lines, factor, matching, { before: a, after: b });
}

/** Compares two files, or two states of one. What other views say of a formula is asked for by `inputsOf`. */
export function compareFiles(
  before: Compiled,
  after: Compiled,
  inputsOf: (formula: Formula, compiled: Compiled) => CompareInputs = () => NO_INPUTS,
): FileComparison {
  const [a, b] = [fileSide(before), fileSide(after)];
  const { difference, matching } = matched(a, b);
  const lines = lineFindings(difference, a, b);
  const [formulasA, formulasB] = [byHeading(before), byHeading(after)];
  const taken = new Set<LineFinding>();
  const recipes = b.tree.children.flatMap((node, index): Comparison[] => {
    const old = matching.before.get(node);
    const [one, other] = [old?.line && formulasA.get(old.line), node.line && formulasB.get(node.line)];
    if (!old || !one || !other) return [];
    const place = a.tree.children.indexOf(old);
    const own = lines.filter(
      ({ change }) =>
        inBlock(change.before?.path ?? change.source?.before, place) ||
        inBlock(change.after?.path ?? change.target?.after, index),
    );
    for (const finding of own) taken.add(finding);
    const factor = difference.scalings.find(({ block }) => block.after[0] === index)?.factor;
    const inputs = { before: inputsOf(one, before), after: inputsOf(other, after) };
    return [comparisonOf({ before: one, after: other }, inputs, own, factor, matching, { before: a, after: b })];
  });
  const others = ordered(lines.filter((finding) => !taken.has(finding))) as readonly LineFinding[];
  return {
    before: before.path,
    after: after.path,
    same: others.length === 0 && recipes.every(({ same }) => same),
    recipes,
    others,
    difference,
  };
}

const inBlock = (path: readonly number[] | undefined, index: number): boolean => path?.[0] === index;

const byHeading = ({ formulas }: Compiled): ReadonlyMap<Line, Formula> =>
  new Map(formulas.filter(({ variant }) => variant === undefined).map((formula) => [formula.ref.line, formula]));

// ---- sides -----------------------------------------------------------------------------------------------------------

function formulaSide(formula: Formula): Side {
  // Its variants are no part of a formula.
  const tree = { children: [treeOfRecipe({ ...formula.block, variants: [] })] };
  return { tree, cups: formula.facts.cups, ledger: ledgerIndex(formula) };
}

function fileSide(compiled: Compiled): Side {
  const bases = compiled.formulas.filter(({ variant }) => variant === undefined);
  const ledgers = bases.map(ledgerIndex);
  const lines = new Map(ledgers.flatMap((ledger) => [...ledger.lines]));
  const shares = new Map(ledgers.flatMap((ledger) => [...ledger.shares]));
  return { tree: treeOfDocument(compiled.document), cups: cupsOf(bases), ledger: { lines, shares } };
}

const cupsOf = (formulas: readonly Formula[]): CupSystem => formulas[0]?.facts.cups ?? 'us';

const senseOf = ({ cups, ledger }: Side): Sense => ({
  cups,
  foodOf: ({ line }) => line && ledger.lines.get(line)?.food?.key,
});

// ---- the difference, with factors ------------------------------------------------------------------------------------

interface Matched {
  readonly difference: Difference;
  readonly matching: Pick<Matching, 'after' | 'before'>;
}

/** Worked out in one direction, and turned round for the other. */
function matched(a: Side, b: Side): Matched {
  if (isForward(a.tree, b.tree)) return forward(a, b);
  const { difference, matching } = forward(b, a);
  return { difference: mirrored(difference), matching: { after: matching.before, before: matching.after } };
}

function forward(a: Side, b: Side): Matched {
  const options = { before: senseOf(a), after: senseOf(b) };
  const plain = matchTrees(a.tree, b.tree, { ...options, factors: new Map() });
  const factors = new Map<TreeNode, Rational>();
  for (const node of a.tree.children) {
    const isRecipe = node.content?.kind === 'block' && node.content.block === 'recipe';
    const factor =
      isRecipe && plain.after.has(node) ? commonFactor(node, plain, { before: a.cups, after: b.cups }) : undefined;
    if (factor) factors.set(node, factor);
  }
  const matching = factors.size === 0 ? plain : matchTrees(a.tree, b.tree, { ...options, factors });
  return { difference: differenceOf(a.tree, b.tree, matching, { ...options, factors }), matching };
}

// ---- one recipe ------------------------------------------------------------------------------------------------------

function comparisonOf(
  formulas: Both<Formula>,
  inputs: Both<CompareInputs>,
  lines: readonly LineFinding[],
  factor: Rational | undefined,
  matching: Pick<Matching, 'after'>,
  sides: Both<Side>,
): Comparison {
  const changes: Change[] = [
    ...(factor ? [rescaled(formulas, factor)] : []),
    ...formulaChanges(formulas, factor),
    ...inputChanges(inputs),
    ...lines,
  ];
  const ledgers = { before: ledgerIndex(formulas.before), after: ledgerIndex(formulas.after) };
  changes.push(...weighedChanges(lines, ledgers, factor, matching, sides.before.tree), ...shareChanges(lines, ledgers));
  const named = ({ file, title, variant }: Formula): Compared => ({
    file,
    title,
    ...(variant === undefined ? {} : { variant }),
  });
  return {
    before: named(formulas.before),
    after: named(formulas.after),
    same: changes.length === 0,
    changes: ordered(changes),
  };
}

function rescaled({ before, after }: Both<Formula>, factor: Rational): RescaledChange {
  return {
    kind: 'rescaled',
    factor: figured(factor, factors),
    ...(before.dishGrams ? { before: figured(before.dishGrams, totals) } : {}),
    ...(after.dishGrams ? { after: figured(after.dishGrams, totals) } : {}),
  };
}

/** Lines in percent that say what they said and weigh otherwise. */
function weighedChanges(
  lines: readonly LineFinding[],
  ledgers: Both<LedgerIndex>,
  factor: Rational | undefined,
  matching: Pick<Matching, 'after'>,
  tree: TreeNode,
): readonly WeighedChange[] {
  const told = new Set(lines.flatMap(({ change }) => (change.before ? [change.before.node] : [])));
  const changes: WeighedChange[] = [];
  const visit = (node: TreeNode): void => {
    const other = matching.after.get(node);
    const [a, b] = [ledgerOf(node, ledgers.before), other && ledgerOf(other, ledgers.after)];
    if (node.content?.kind === 'in' && node.content.amount.kind === 'percent' && a?.food && b && !told.has(node)) {
      const change = weighed(node, a, b, factor);
      if (change) changes.push(change);
    }
    for (const child of node.children) visit(child);
  };
  visit(tree);
  return changes;
}

const ledgerOf = ({ line }: TreeNode, index: LedgerIndex): LedgerLine | undefined => line && index.lines.get(line);

function weighed(
  node: TreeNode,
  a: LedgerLine,
  b: LedgerLine,
  factor: Rational | undefined,
): WeighedChange | undefined {
  const expected = factor && a.grams ? multiply(a.grams, factor) : a.grams;
  if (expected && b.grams && equal(expected, b.grams)) return undefined;
  const both = bothFigures(a.grams, b.grams, isSmallDose(a.food) ? doses : grams);
  if (!both) return undefined;
  return {
    kind: 'weighed',
    where: { before: { make: a.make }, after: { make: b.make } },
    food: b.food?.name ?? '',
    line: node.line?.text.trim() ?? '',
    ...both,
  };
}

/** Foods whose share on the flour moved, though no line of theirs did. */
function shareChanges(lines: readonly LineFinding[], { before, after }: Both<LedgerIndex>): readonly ShareChange[] {
  const told = new Set(
    lines
      .flatMap(({ change }) => [change.before, change.after].map((spot) => spot?.node.line))
      .flatMap((line) => {
        const keys = line ? [before.lines.get(line)?.food?.key, after.lines.get(line)?.food?.key] : [];
        return keys.filter((key) => key !== undefined);
      }),
  );
  const keys = new Set([...before.shares.keys(), ...after.shares.keys()]);
  return [...keys].flatMap((key): ShareChange[] => {
    if (told.has(key)) return [];
    const [a, b] = [before.shares.get(key), after.shares.get(key)];
    const both = bothFigures(a?.percent, b?.percent, percents);
    return both ? [{ kind: 'share', food: (b ?? a)?.food.name ?? '', ...both }] : [];
  });
}
