import { diagnose, type Diagnostic } from '@quern/text';
import { allergensPromised } from '../allergen-names.js';
import type { AllergenId, Food } from '../food-book.js';
import type { Formula, InItem } from '../model.js';
import { normaliseName } from '../names.js';
import { linePlace } from '../places.js';

/** A01: `free of X` broken by something that goes in. What might break it (optional, `or`, unknown) is the label's to say. */
export function checkPromises(formula: Formula, report: (diagnostic: Diagnostic) => void): void {
  for (const promise of formula.facts.freeOf) {
    const classes = allergensPromised(normaliseName(promise.allergen)) ?? [];
    for (const item of formula.makes.flatMap((make) => make.items)) {
      if (item.kind !== 'in') continue;
      const found = breaks(item, classes, formula);
      if (!found) continue;
      report(
        diagnose('A01', promise.place, { promise: promise.allergen, name: item.content.name.text }, [
          { place: linePlace(item.ref), note: `${item.content.name.text} goes in here` },
        ]),
      );
      break;
    }
  }
}

function breaks(item: InItem, classes: readonly AllergenId[], formula: Formula): boolean {
  const { source } = item;
  const has = (food: Food | undefined): boolean =>
    food?.allergens?.some((allergen) => classes.includes(allergen)) ?? false;
  switch (source.kind) {
    case 'food':
      return has(source.food.food);
    case 'any':
      return source.foods.some(has);
    case 'culture':
      return formula.cultures.get(source.culture)?.parts.some((part) => has(part.food.food)) ?? false;
    case 'product': {
      const used = formula.products.get(source.product);
      // A product of this recipe is judged by its own in lines; one from another file by what it is made of.
      return used?.kind === 'used' && used.parts.some((part) => has(part.food.food));
    }
  }
}
