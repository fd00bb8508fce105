import type { Table } from './proof.js';
import { rules as allergens } from './rules/allergens.js';
import { rules as bakers } from './rules/bakers.js';
import { rules as cupWeights } from './rules/cup-weights.js';
import { rules as nutritionConstants } from './rules/nutrition-constants.js';
import { rules as nutritionRounding } from './rules/nutrition-rounding.js';
import { rules as safety } from './rules/safety.js';
import { rules as units } from './rules/units.js';

/** Every table of published figures, in the order of the report. */
export const tables: readonly Table[] = [
  { name: 'allergens', rules: allergens },
  { name: 'bakers', rules: bakers },
  { name: 'cup-weights', rules: cupWeights },
  { name: 'nutrition-constants', rules: nutritionConstants },
  { name: 'nutrition-rounding', rules: nutritionRounding },
  { name: 'safety', rules: safety },
  { name: 'units', rules: units },
];
