import type { CupSystem } from '@quern/quantity';
import type { SheetData } from '@quern/views';
import type { Options } from '../command.js';

type Measures = SheetData['measures'];

const MEASURES = ['metric', 'us', 'both'] as const satisfies readonly Measures[];
const CUPS = ['us', 'metric', 'australian'] as const satisfies readonly CupSystem[];

/** Options that say in which measures figures are told. */
export const MEASURE_OPTIONS = {
  measures: { type: 'string', value: 'WHICH', choices: MEASURES, says: 'metric, us or both (default)' },
  cups: {
    type: 'string',
    value: 'WHICH',
    choices: CUPS,
    says: 'cups and spoons of the second measure: us, metric or australian',
  },
} as const satisfies Options;

/** The values of those options; the choices were checked when they were read. */
export function measureOptions(options: {
  readonly measures?: string | undefined;
  readonly cups?: string | undefined;
}): {
  readonly measures?: Measures;
  readonly cups?: CupSystem;
} {
  const measures = MEASURES.find((one) => one === options.measures);
  const cups = CUPS.find((one) => one === options.cups);
  return { ...(measures ? { measures } : {}), ...(cups ? { cups } : {}) };
}
