import { diagnose, type Diagnostic } from '@quern/text';
import { allergensPromised } from '../allergen-names.js';
import type { AllergenId, Food } from '../food-book.js';
import type { Formula, InItem } from '../model.js';
import { normaliseName } from '../names.js';
import { linePlace } from '../places.js';

/**
 * A01: `free of X` broken by something that goes in, or that a line allows to (optional, `or`, a choice): whoever takes the
 * line at its word breaks the promise. What is not known is the label's to say.
 */
export function checkPromises(formula: Formula, report: (diagnostic: Diagnostic) => void): void {
  for (const promise of formula.facts.freeOf) {
    const classes = allergensPromised(normaliseName(promise.allergen)) ?? [];
    const breaking = formula.makes
      .flatMap((make) => make.items)
      .filter((item): item is InItem => item.kind === 'in')
      .flatMap(waysIn)
      .filter(({ item }) => breaks(item, classes, formula));
    // What goes in for certain is told before what may.
    const broken = breaking.find(({ how }) => how === 'goes in') ?? breaking[0];
    if (!broken) continue;
    const { content } = broken.item;
    const name = `${content.any ? 'any ' : ''}${content.name.text}`;
    report(
      diagnose('A01', promise.place, { promise: promise.allergen, name, how: broken.how }, [
        { place: linePlace(broken.item.ref), note: `${name} ${broken.how} here` },
      ]),
    );
  }
}

interface WayIn {
  readonly item: InItem;
  readonly how: 'goes in' | 'may go in';
}

function waysIn(item: InItem): WayIn[] {
  const sure = !item.optional && item.source.kind !== 'any';
  const others = item.alternatives.map((other): WayIn => ({ item: other, how: 'may go in' }));
  return [{ item, how: sure ? 'goes in' : 'may go in' }, ...others];
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
