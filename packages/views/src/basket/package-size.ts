import {
  divide,
  floor,
  multiply,
  negate,
  rational,
  sign,
  sizeOf,
  subtract,
  units,
  type Interval,
  type Rational,
} from '@quern/quantity';
import { normaliseName, type LedgerFood } from '@quern/compiler';
import { parseLine } from '@quern/syntax';
import { answer, refuse, type Answer } from '../common/answer.js';
import { measureText } from '../common/item-amount.js';

/** A size in which a food is sold: '1.5 kg whole rye flour', '1 l whole milk'. */
export interface PackageSize {
  readonly name: string;
  /** '1.5 kg'. */
  readonly text: string;
  readonly unit: 'g' | 'ml';
  readonly size: Rational;
}

/** Reads a package size as an in line of the notation. */
export function readPackageSize(text: string): Answer<PackageSize> {
  const help = 'write a weight or a volume and the name, such as “1.5 kg whole rye flour”';
  const { content, messages } = parseLine(text.trim());
  if (content.kind !== 'in' || messages.some(({ severity }) => severity === 'error'))
    return refuse(`“${text}” is not a size and a name`, help);
  const { amount, name } = content;
  if (amount.kind !== 'measure' || !amount.range.single || sign(amount.range.low) <= 0)
    return refuse(`“${text}” does not begin with a size`, help);
  const { dimension } = units[amount.unit.id];
  if (dimension !== 'mass' && dimension !== 'volume')
    return refuse(`“${text}” does not begin with a weight or a volume`, help);
  const size = multiply(amount.range.low, sizeOf(amount.unit.id));
  return answer({
    name: name.text,
    text: measureText({ ...amount, about: false }),
    unit: dimension === 'mass' ? 'g' : 'ml',
    size,
  });
}

/** The size said for a food, if any: by the written name or any name of the food. */
export function sizeFor(
  sizes: readonly PackageSize[],
  written: string,
  food: LedgerFood | undefined,
): PackageSize | undefined {
  const names = new Set([written, ...(food?.food ? [food.food.name, ...food.food.synonyms] : [])].map(normaliseName));
  return sizes.find((size) => names.has(normaliseName(size.name)));
}

/** How many packages hold the most that is needed, and what is left of them. */
export function packagesFor(
  needed: Interval,
  size: PackageSize,
): { readonly count: Rational; readonly left: Rational } {
  const count = rational(-floor(negate(divide(needed.high, size.size))));
  return { count, left: subtract(multiply(count, size.size), needed.high) };
}
