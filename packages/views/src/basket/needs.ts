import { add, compare, multiply, ONE, ZERO, sign, type Rational } from '@quern/quantity';
import type { Formula, InItem, Make, Product } from '@quern/compiler';

/** A line that something has to be bought for, and by how much it is multiplied. */
export interface Need {
  readonly item: InItem;
  readonly factor: Rational;
  readonly formula: Formula;
  /** Title of the recipe that the list is made for, not of the one it draws from. */
  readonly title: string;
}

/** Every line of a recipe and of what it uses from other files. Products of its own are left out: their lines are there. */
export function needsOf(formula: Formula, factor: Rational, title = formula.title): readonly Need[] {
  return formula.makes.flatMap((make) => needsOfMake(make, formula, factor, title));
}

function needsOfMake(make: Make, formula: Formula, factor: Rational, title: string): readonly Need[] {
  return make.items.flatMap((item): readonly Need[] => {
    if (item.kind !== 'in') return [];
    if (item.source.kind !== 'product') return [{ item, factor, formula, title }];
    const product = formula.products.get(item.source.product);
    if (product?.kind !== 'used' || !product.formula || !item.share) return [];
    return needsOfUsed(product, product.formula, multiply(factor, item.share), title);
  });
}

/** A used dish is the whole of its recipe; a used product only the makes that lead to it. */
function needsOfUsed(product: Product, formula: Formula, share: Rational, title: string): readonly Need[] {
  const last = formula.makes.at(-1);
  if (product.itemIndex < 0 && product.makeIndex === last?.index) return needsOf(formula, share, title);
  const shares = sharesOfMakes(product, formula, share);
  return formula.makes.flatMap((make) => {
    const wanted = shares.get(make.index);
    return wanted && sign(wanted) > 0 ? needsOfMake(make, formula, wanted, title) : [];
  });
}

/**
 * How much of each make goes into so much of a product. A make that gives two things (what stands in the pot, and what
 * was saved of it) is made as often as the more wanted of them asks.
 */
function sharesOfMakes(product: Product, formula: Formula, share: Rational): ReadonlyMap<number, Rational> {
  const drawn = new Map<string, Rational>();
  const made = new Map<number, Rational>([[product.makeIndex, share]]);
  for (const make of formula.makes.slice(0, product.makeIndex + 1).reverse()) {
    const own = [...formula.products].filter(([, other]) => other.kind !== 'used' && other.makeIndex === make.index);
    const wanted = own.reduce(
      (most, [name]) => {
        const asked = drawn.get(name) ?? ZERO;
        return compare(asked, most) > 0 ? asked : most;
      },
      made.get(make.index) ?? ZERO,
    );
    made.set(make.index, wanted);
    for (const item of make.items) {
      if (item.kind !== 'in' || item.source.kind !== 'product') continue;
      const name = item.source.product;
      drawn.set(name, add(drawn.get(name) ?? ZERO, multiply(wanted, item.share ?? ONE)));
    }
  }
  return made;
}
