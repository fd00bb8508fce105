import { showGrams, TOTALS, type Dose, type NumberStyle, type Rational } from '@quern/quantity';

// `2.400 kg` of cabbage is not weighed to the gram.
const ENDLESS_ZEROS = /(?:[.,]0+|(?<=[.,]\d*[1-9])0+)(?=\D*$)/;

export interface ShortOptions {
  readonly style: NumberStyle;
  readonly dose?: Dose;
  readonly measure?: 'mass' | 'volume';
}

/** A weight or volume in all, of a batch or for a shopping list, without zeros that say nothing: `2.4 kg`, `750 g`. */
export function shortWeight(grams: Rational, { style, dose, measure }: ShortOptions): string {
  const shown = showGrams(grams, TOTALS, { style, ...(dose ? { dose } : {}), ...(measure ? { measure } : {}) });
  return shown.text.replace(ENDLESS_ZEROS, '');
}
