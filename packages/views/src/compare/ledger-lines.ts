import type { Formula, InItem, LedgerFood } from '@quern/compiler';
import { add, divide, HUNDRED, multiply, ZERO, type Rational } from '@quern/quantity';
import type { Line } from '@quern/syntax';
import { bakersFlour } from '../common/goes-by-flour.js';
import { isDose } from '../common/item-amount.js';

/** What the ledger says of a line. */
export interface LedgerLine {
  readonly grams: Rational | undefined;
  /** The food it puts in, when it is one. */
  readonly food?: LedgerFood;
  /** It puts in something made here. */
  readonly product: boolean;
  readonly make: string;
}

/** A formula's lines and foods, for looking things up. */
export interface LedgerIndex {
  readonly lines: ReadonlyMap<Line, LedgerLine>;
  /** Each food's share on the flour in hundredths, by the food's key; empty where nobody reckons on flour. */
  readonly shares: ReadonlyMap<string, { readonly food: LedgerFood; readonly percent: Rational }>;
}

export function ledgerIndex(formula: Formula): LedgerIndex {
  const lines = new Map<Line, LedgerLine>();
  const take = (item: InItem, make: string): void => {
    const { source } = item;
    lines.set(item.ref.line, {
      grams: item.weighed.grams,
      ...(source.kind === 'food' ? { food: source.food } : {}),
      product: source.kind === 'product',
      make,
    });
    for (const other of item.alternatives) take(other, make);
  };
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind === 'in') take(item, make.name);
      else if (item.kind === 'out') lines.set(item.ref.line, { grams: item.grams, product: false, make: make.name });
    }
  }
  const flour = bakersFlour(formula);
  const shares = new Map((flour?.formula ?? []).map(({ food, percent }) => [food.key, { food, percent }] as const));
  return { lines, shares };
}

/** Salt on the flour in hundredths: every food that is a salt. */
export function saltOnFlour(formula: Formula): Rational | undefined {
  const flour = bakersFlour(formula);
  if (!flour) return undefined;
  const salts = flour.formula.filter(({ food }) => food.food?.roles.includes('salt'));
  return salts.reduce((sum, { percent }) => add(sum, percent), ZERO);
}

/** A share of one as hundredths. */
export const hundredths = (share: Rational): Rational => multiply(share, HUNDRED);

/** Weight of each piece that the recipe gives, by the ledger. */
export function eachGrams({ dishGrams, pieces }: Formula): Rational | undefined {
  return dishGrams && pieces && pieces.n > 0n ? divide(dishGrams, pieces) : undefined;
}

export const isSmallDose = (food: LedgerFood | undefined): boolean => food !== undefined && isDose(food);
