import type { Diagnostic } from '@quern/text';
import type { FoodScope } from '../foods-in-file.js';
import type { Formula } from '../model.js';

export function checkProse(formula: Formula, foods: FoodScope, report: (d: Diagnostic) => void): void {
  void formula; void foods; void report;
}
