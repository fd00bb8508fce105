import type { Diagnostic } from '@quern/text';
import type { FoodScope } from '../foods-in-file.js';
import type { Formula } from '../model.js';
import { checkNamedFoods } from './named-foods.js';
import { checkProseFigures } from './prose-figures.js';
import { checkUnnamedFoods } from './unnamed-foods.js';

/** Everything that is asked of the sentences of a formula. */
export function checkProse(formula: Formula, foods: FoodScope, report: (diagnostic: Diagnostic) => void): void {
  // A variant's sentences are its base's: a food that it drops or swaps there is spoken of by V03.
  if (!formula.variant) checkNamedFoods(formula, foods, report);
  checkProseFigures(formula, foods, report);
  if (!formula.variant) checkUnnamedFoods(formula, report);
}
