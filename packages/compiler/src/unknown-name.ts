import { units } from '@quern/quantity';
import type { InLine } from '@quern/syntax';
import type { FoodScope } from './foods-in-file.js';
import { quoted } from './names.js';
import { isPackage } from './piece-words.js';

/*
 * What to do about a name that is no food: mostly a block for it, but a name may also be two foods, or hold a package.
 */

const BOTH = /\s+(?:and|&|\+)\s+|\s*\/\s*/i;
const EITHER = /\s+or\s+/i;

/** The way out for an unknown food on an in line; undefined for the usual one. */
export function wayForUnknown(content: InLine, line: string, foods: FoodScope): string | undefined {
  const { name, amount } = content;
  const written = line.slice(amount.span.start, amount.span.end).trim();
  const either = name.text.split(EITHER);
  if (either.length === 2 && either.every((one) => foods.isNamed(one)))
    return `write “${written} ${either[0] ?? ''}”, and under it “or ${written} ${either[1] ?? ''}”`;
  const both = name.text.split(BOTH);
  if (both.length > 1 && both.every((one) => foods.isNamed(one)))
    return `write a line for each: ${both.map((one) => quoted(`${amount.kind === 'open' ? written : '…'} ${one}`)).join(', ')}`;
  const [first = '', ...rest] = name.text.split(' ');
  if (amount.kind === 'measure' && units[amount.unit.id].dimension !== 'count' && rest.length > 0 && isPackage(first))
    return `write “1 ${first} of ${written} ${rest.join(' ')}”`;
  return undefined;
}

/** Whether a line states a weight by itself, without the food table. */
export function statesWeight({ amount, equals }: InLine): boolean {
  const isMass = (one: InLine['amount'] | InLine['equals'][number]['amount']): boolean =>
    (one.kind === 'measure' && units[one.unit.id].dimension === 'mass') ||
    (one.kind === 'pack' && units[one.each.unit.id].dimension === 'mass');
  return (
    amount.kind === 'open' || amount.kind === 'percent' || isMass(amount) || equals.some((side) => isMass(side.amount))
  );
}
