import type { Table } from './proof.js';
import { rules as bakers } from './rules/bakers.js';
import { rules as cupWeights } from './rules/cup-weights.js';
import { rules as units } from './rules/units.js';

/** Every table of published figures, in the order of the report. */
export const tables: readonly Table[] = [
  { name: 'bakers', rules: bakers },
  { name: 'cup-weights', rules: cupWeights },
  { name: 'units', rules: units },
];
