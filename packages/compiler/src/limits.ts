import { diagnose, type Diagnostic } from '@quern/text';
import type { MakeBlock, RecipeBlock } from '@quern/syntax';
import { linePlace } from './places.js';

/*
 * How large things may be. No kitchen comes near these figures; without them a few kilobytes of ill will could keep a
 * machine busy for hours, since the exact fractions of a long chain of shares grow with every link. A file's size, a
 * line's length and a number's digits have limits of their own (the command, `MOST_CHARACTERS`, the numerals).
 */

/** Things that one recipe makes or saves. */
const MOST_PRODUCTS = 64;

/** Variants of one recipe: each is the whole recipe compiled anew. */
const MOST_VARIANTS = 64;

/** Files that one `use` may lead to, through the files that it names. */
export const MOST_FILES = 64;

/** Lines in the makes of one recipe. */
const MOST_LINES = 1000;

/**
 * Lines of one recipe that take a share of what is in the pot, or add to it by one: with each the fractions of everything
 * in the pot grow.
 */
const MOST_SHARES = 100;

/** Lines of a recipe and all its variants together. */
const MOST_VARIED_LINES = 3000;

/** Recipes of one file. */
const MOST_RECIPES = 1000;

/** The recipes of a file as far as they are within the limit. */
export function recipesWithin(
  recipes: readonly RecipeBlock[],
  file: string,
  report: (d: Diagnostic) => void,
): readonly RecipeBlock[] {
  const recipe = recipes[MOST_RECIPES];
  if (!recipe) return recipes;
  const args = { whole: 'a file', most: String(MOST_RECIPES), what: 'recipes', it: 'the file' };
  report(diagnose('M18', linePlace({ file, line: recipe.heading.line }), args));
  return recipes.slice(0, MOST_RECIPES);
}

/** The recipe as far as it is within the limits; what is beyond is said once and left out. */
export function withinLimits(recipe: RecipeBlock, file: string, report: (d: Diagnostic) => void): RecipeBlock {
  const makes = linesWithin(productsWithin(recipe.makes, recipe, file, report), file, report);
  const lines = makes.reduce((total, { items }) => total + items.length, 0);
  const most = variantsWithin(lines);
  const variant = recipe.variants[most];
  if (variant) report(diagnose('V06', linePlace({ file, line: variant.heading.line }), { most: String(most) }));
  if (makes === recipe.makes && !variant) return recipe;
  return { ...recipe, makes, variants: recipe.variants.slice(0, most) };
}

/** How many variants a recipe of so many lines may have: at least one. */
function variantsWithin(lines: number): number {
  let most = 1;
  while (most < MOST_VARIANTS && (most + 1) * lines <= MOST_VARIED_LINES) most++;
  return most;
}

/** The makes, from the first, that keep within the limit of products. */
function productsWithin(
  makes: readonly MakeBlock[],
  recipe: RecipeBlock,
  file: string,
  report: (d: Diagnostic) => void,
): readonly MakeBlock[] {
  let products = 0;
  const over = makes.findIndex(({ items }) => {
    products += 1 + items.filter((item) => item.kind === 'out' && item.main.content.verb === 'save').length;
    return products > MOST_PRODUCTS;
  });
  const make = makes[over];
  if (!make) return makes;
  const line = make.heading?.line ?? make.unnamed ?? recipe.heading.line;
  report(diagnose('M16', linePlace({ file, line }), { most: String(MOST_PRODUCTS) }));
  return makes.slice(0, over);
}

/** The makes with the lines, from the first, that keep within the limits of lines and of shares. */
function linesWithin(makes: readonly MakeBlock[], file: string, report: (d: Diagnostic) => void): readonly MakeBlock[] {
  let lines = 0;
  let shares = 0;
  for (const [index, make] of makes.entries()) {
    const over = make.items.findIndex((item) => {
      if (takesShare(item)) shares++;
      return ++lines > MOST_LINES || shares > MOST_SHARES;
    });
    const item = make.items[over];
    if (!item) continue;
    const [most, what] = shares > MOST_SHARES ? [MOST_SHARES, 'lines that reckon by a share'] : [MOST_LINES, 'lines'];
    report(
      diagnose('M18', linePlace({ file, line: item.main.line }), {
        whole: 'a recipe',
        most: String(most),
        what,
        it: 'the recipe',
      }),
    );
    return [...makes.slice(0, index), { ...make, items: make.items.slice(0, over) }];
  }
  return makes;
}

/** Whether a line works with a share of something: `lose 11 % …`, `half of cream`, `2 % fine salt on all`. */
function takesShare(item: MakeBlock['items'][number]): boolean {
  if (item.kind !== 'in' && item.kind !== 'out') return false;
  const { amount } = item.main.content;
  if (amount.kind === 'percent') return true;
  return amount.kind === 'share' && amount.word !== 'all' && amount.word !== 'rest';
}
