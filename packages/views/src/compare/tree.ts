import { outline, printLine, tidy, type Line, type LineContent, type MakeBlock, type RecipeBlock } from '@quern/syntax';
import type { BodyItem, Document, FoodBlock, MenuBlock, Typed, VariantBlock } from '@quern/syntax';

/*
 * What is compared: a file or a recipe as a tree of lines. Blocks hold their lines and the blocks that belong to them;
 * a line holds the lines that only speak of it (`or`, `:`, `every`). Remarks and empty lines are no part of a formula.
 */

/** A line, and what belongs to it. Only the root of a file has no line of its own. */
export interface TreeNode {
  readonly content?: LineContent;
  /** The line as it stands in its file. */
  readonly line?: Line;
  readonly children: readonly TreeNode[];
}

const leaf = ({ line, content }: Typed<LineContent>): TreeNode => ({ line, content, children: [] });

function node({ line, content }: Typed<LineContent>, children: readonly TreeNode[]): TreeNode {
  return { line, content, children };
}

/** The file as it stands. Lines that belong nowhere are left out. */
export function treeOfDocument(document: Document): TreeNode {
  const blocks = outline(document);
  const children = [
    ...blocks.head.map(leaf),
    ...blocks.variants.map(treeOfVariant),
    ...blocks.recipes.map(treeOfRecipe),
    ...blocks.foods.map(treeOfFood),
    ...blocks.cultures.map(treeOfFood),
    ...blocks.kitchens.map(({ heading, facts }) => node(heading, facts.map(leaf))),
    ...blocks.menus.map(treeOfMenu),
  ];
  return { children: inOrder(children) };
}

/** A recipe with its makes and variants. */
export function treeOfRecipe(recipe: RecipeBlock): TreeNode {
  const simple = recipe.makes.find((make) => !make.heading && !make.unnamed);
  const own = [...recipe.facts.map(leaf), ...(simple ? linesOf(simple) : [])];
  const makes = recipe.makes.filter((make) => make !== simple).map(treeOfMake);
  return node(recipe.heading, [...inOrder(own), ...makes, ...recipe.variants.map(treeOfVariant)]);
}

function treeOfMake(make: MakeBlock): TreeNode {
  const children = inOrder(linesOf(make));
  if (make.heading) return node(make.heading, children);
  return make.unnamed ? { line: make.unnamed, content: make.unnamed.parsed.content, children } : { children };
}

const linesOf = (make: MakeBlock): TreeNode[] => [...make.items.map(treeOfItem), ...make.facts.map(leaf)];

function treeOfVariant({ heading, facts, makes }: VariantBlock): TreeNode {
  return node(heading, [...facts.map(leaf), ...makes.map(treeOfMake)]);
}

function treeOfItem(item: BodyItem): TreeNode {
  switch (item.kind) {
    case 'in':
      return node(item.main, item.alternatives.map(leaf));
    case 'step':
      return node(item.main, inOrder([...item.more.map(leaf), ...item.every.map(leaf)]));
    default:
      return leaf(item.main);
  }
}

function treeOfFood({ heading, facts, every }: FoodBlock): TreeNode {
  return node(heading, inOrder([...facts.map(leaf), ...every.map(leaf)]));
}

function treeOfMenu({ heading, facts, courses }: MenuBlock): TreeNode {
  const served = courses.map((course) =>
    node(
      course.heading,
      course.lines.map((line) => node(line.main, line.alternatives.map(leaf))),
    ),
  );
  return node(heading, [...facts.map(leaf), ...served]);
}

/** Lines as they stand in the file. What a variant adds stands below its make; where it goes in is no matter here. */
function inOrder(nodes: readonly TreeNode[]): readonly TreeNode[] {
  const at = ({ line }: TreeNode): number => line?.number ?? 0;
  return nodes.toSorted((a, b) => at(a) - at(b));
}

/** The tree as a file in the usual layout, without remarks. */
export function treeText(root: TreeNode): string {
  return tidy([...linesOfTree(root)].join('\n') + '\n').text;
}

function* linesOfTree({ content, line, children }: TreeNode): Iterable<string> {
  if (content) yield printLine(content) ?? line?.text.trim() ?? '';
  for (const child of children) yield* linesOfTree(child);
}
