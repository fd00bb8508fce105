import { normaliseName, type Compiled, type Formula } from '@quern/compiler';
import { compare, type Rational } from '@quern/quantity';
import { printLine, type Line } from '@quern/syntax';
import { bakersFlour } from '../common/goes-by-flour.js';
import { counts, doses, grams, percents, totals } from './figured.js';
import type { CompareInputs } from './inputs.js';
import { eachGrams, hundredths, isSmallDose, ledgerIndex, saltOnFlour, type LedgerIndex } from './ledger-lines.js';
import { treeOfDocument, type TreeNode } from './tree.js';

/*
 * A file told line by line with what its lines come to, so that a difference by lines speaks of more than letters: what
 * goes in with its weight and its share on the flour, what a make weighs, yield, allergens. What goes into a make is told
 * by name, so that a line that only moved is no difference.
 */

const INDENT = '  ';

/**
 * The lines of the account, without line ends.
 * @param inputsOf what the label says of a recipe, if it is to be told
 */
export function accountOf(
  compiled: Compiled,
  inputsOf: (formula: Formula) => CompareInputs = () => ({}),
): readonly string[] {
  const formulas = new Map(
    compiled.formulas
      .filter(({ variant }) => variant === undefined)
      .map((formula) => [formula.ref.line, formula] as const),
  );
  const blocks = treeOfDocument(compiled.document).children.map((node) => blockLines(node, formulas, inputsOf));
  return blocks.flatMap((lines, index) => (index === 0 || lines.length <= 1 ? lines : ['', ...lines]));
}

function blockLines(
  node: TreeNode,
  formulas: ReadonlyMap<Line, Formula>,
  inputsOf: (formula: Formula) => CompareInputs,
): readonly string[] {
  const formula = node.line && formulas.get(node.line);
  if (formula) return recipeLines(node, formula, inputsOf(formula));
  return [lineText(node), ...[...below(node)].map((child) => INDENT + lineText(child))];
}

function recipeLines(node: TreeNode, formula: Formula, inputs: CompareInputs): readonly string[] {
  const ledger = ledgerIndex(formula);
  const blocks = node.children.filter(({ content }) => content?.kind === 'block');
  const own = node.children.filter(({ content }) => content?.kind !== 'block');
  const weights = new Map(formula.makes.map(({ name, pot }) => [normaliseName(name), pot.grams] as const));
  return [
    lineText(node),
    ...figureLines(formula).map((line) => INDENT + line),
    ...labelLines(inputs).map((line) => INDENT + line),
    ...linesOf(own, ledger),
    ...blocks.flatMap((block) => [lineText(block), ...linesOf(block.children, ledger), ...weightLine(block, weights)]),
  ];
}

function figureLines(formula: Formula): readonly string[] {
  const flour = bakersFlour(formula);
  const each = eachGrams(formula);
  const told = (name: string, value: Rational | undefined, print: (value: Rational) => string): string[] =>
    value ? [`${name} ${print(value)}`] : [];
  return [
    ...told('= weighs', formula.dishGrams, totals),
    ...(formula.pieces ? told(`= ${counts(formula.pieces)} of`, each, grams) : []),
    ...told('= flour', flour?.grams, grams),
    ...told('= hydration', flour && hundredths(flour.hydration), percents),
    ...(flour && flour.prefermented.n > 0n
      ? told('= prefermented flour', hundredths(flour.prefermented), percents)
      : []),
    ...told('= salt on flour', saltOnFlour(formula), percents),
  ];
}

function labelLines({ allergens, nutrition }: CompareInputs): readonly string[] {
  return [
    ...(allergens?.contains ?? []).map((name) => `= contains ${name}`),
    ...(allergens?.mayContain ?? []).map((name) => `= may contain ${name}`),
    ...(allergens?.cannotSay ?? []).map((name) => `= nothing is known of the allergens of ${name}`),
    ...(nutrition ?? []).flatMap(({ name, per, text }) => (text === undefined ? [] : [`= ${name} ${text} ${per}`])),
  ];
}

/** What goes in by name, then the rest in order. */
function linesOf(nodes: readonly TreeNode[], ledger: LedgerIndex): readonly string[] {
  const goesIn = nodes.filter(({ content }) => content?.kind === 'in');
  const others = nodes.filter(({ content }) => content?.kind !== 'in');
  const name = ({ content }: TreeNode): string => (content?.kind === 'in' ? normaliseName(content.name.text) : '');
  goesIn.sort((a, b) => (name(a) < name(b) ? -1 : name(a) > name(b) ? 1 : 0));
  return [...goesIn, ...others].flatMap((node) => [
    INDENT + lineText(node) + weightNote(node, ledger),
    ...[...below(node)].map((child) => INDENT + INDENT + lineText(child)),
  ]);
}

/** '   (20.2 g, 2 % on flour)'. */
function weightNote({ line, content }: TreeNode, { lines, shares }: LedgerIndex): string {
  const known = line && lines.get(line);
  if (!known?.grams || (content?.kind !== 'in' && content?.kind !== 'out')) return '';
  const print = isSmallDose(known.food) ? doses : grams;
  const share = known.food && shares.get(known.food.key)?.percent;
  const notes = [print(known.grams), ...(share ? [`${percents(share)} on flour`] : [])];
  const [said, ...rest] = notes;
  // A weight that is written already need not be told again.
  const written =
    content.amount.kind === 'measure' &&
    content.amount.unit.id === 'g' &&
    compare(content.amount.range.low, content.amount.range.high) === 0;
  const told = written ? rest : [said ?? '', ...rest];
  return told.length === 0 ? '' : `   (${told.join(', ')})`;
}

function weightLine({ content }: TreeNode, weights: ReadonlyMap<string, Rational | undefined>): readonly string[] {
  if (content?.kind !== 'block' || content.block !== 'make') return [];
  const weight = weights.get(normaliseName(content.name?.text ?? ''));
  return weight ? [`${INDENT}= weighs ${totals(weight)}`] : [];
}

function* below(node: TreeNode): Iterable<TreeNode> {
  for (const child of node.children) {
    yield child;
    yield* below(child);
  }
}

const lineText = ({ content, line }: TreeNode): string => (content && printLine(content)) ?? line?.text.trim() ?? '';
