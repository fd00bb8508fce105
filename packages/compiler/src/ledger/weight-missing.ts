import { diagnose, singular, type Diagnostic, type Place } from '@quern/text';
import type { Amount } from '@quern/syntax';
import { isPackage } from '../piece-words.js';

/** Q08: an amount that cannot be turned into grams, with what would do. `line` is the text of the line it stands in. */
export function weightMissing(place: Place, name: string, amount: Amount, line: string): Diagnostic {
  if (amount.kind !== 'portion') {
    const way = 'add `= … g` to the line, or a `weighs` line in a `food` block';
    return diagnose('Q08', place, { name, measure: 'this measure', way });
  }
  const figure = line.slice(amount.range.span.start, amount.range.span.end).trim();
  const piece = singular(amount.of.toLowerCase());
  return diagnose('Q08', place, {
    name,
    measure: /^[aeio]/.test(piece) ? `an ${piece}` : `a ${piece}`,
    way: wayOut(piece, `${figure} ${amount.of} of 400 g ${name}`),
  });
}

function wayOut(piece: string, packed: string): string {
  if (isPackage(piece)) return `write what one holds, such as \`${packed}\`, or add \`= … g\` to the line`;
  // Common practice, no source: a dessertspoon is two teaspoons.
  if (piece === 'dessertspoon' || piece === 'dsp') return 'write 2 tsp for each, or add `= … g` to the line';
  return 'add `= … g` to the line';
}
