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

/** The recipe as far as it is within the limits; what is beyond is said once and left out. */
export function withinLimits(recipe: RecipeBlock, file: string, report: (d: Diagnostic) => void): RecipeBlock {
  const makes = makesWithin(recipe.makes);
  const make = recipe.makes[makes];
  const variant = recipe.variants[MOST_VARIANTS];
  if (make) {
    const line = make.heading?.line ?? make.unnamed ?? recipe.heading.line;
    report(diagnose('M16', linePlace({ file, line }), { most: String(MOST_PRODUCTS) }));
  }
  if (variant)
    report(diagnose('V06', linePlace({ file, line: variant.heading.line }), { most: String(MOST_VARIANTS) }));
  if (!make && !variant) return recipe;
  return { ...recipe, makes: recipe.makes.slice(0, makes), variants: recipe.variants.slice(0, MOST_VARIANTS) };
}

/** How many of the makes, from the first, keep within the limit. */
function makesWithin(makes: readonly MakeBlock[]): number {
  let products = 0;
  const over = makes.findIndex(({ items }) => {
    products += 1 + items.filter((item) => item.kind === 'out' && item.main.content.verb === 'save').length;
    return products > MOST_PRODUCTS;
  });
  return over < 0 ? makes.length : over;
}
