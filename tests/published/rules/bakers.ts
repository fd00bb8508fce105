import type { Rule } from '../proof.js';

export const rules: readonly Rule[] = [];
