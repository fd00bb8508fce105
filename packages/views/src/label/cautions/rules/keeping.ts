import { compare, rational, type Rational } from '@quern/quantity';
import type { KeepingClaim } from '../facts.js';
import { nearestRow, type ChartRow } from '../keeping-chart.js';
import type { CautionRule } from '../rule.js';
import { life } from '../words.js';

type Store = 'pantry' | 'fridge' | 'freezer';

function storeOf(claim: KeepingClaim): Store {
  if (!claim.celsius) return 'pantry';
  if (compare(claim.celsius, rational(-5)) <= 0) return 'freezer';
  return compare(claim.celsius, rational(8)) <= 0 ? 'fridge' : 'pantry';
}

const inDays = (minutes: Rational): Rational => rational(minutes.n, minutes.d * 1440n);
const where: Readonly<Record<Store, string>> = {
  pantry: 'at room warmth',
  fridge: 'in the fridge',
  freezer: 'in the freezer',
};

export interface LongClaim {
  readonly claim: KeepingClaim;
  readonly row: ChartRow;
  readonly published: Rational;
  readonly where: string;
}

/** Claims of the dish's own life that go beyond the published chart's longest for the row nearest to it. */
export function longClaims(facts: Parameters<CautionRule['find']>[0]): LongClaim[] {
  const row = nearestRow(facts);
  if (!row) return [];
  return facts.keeps.flatMap((claim) => {
    const store = storeOf(claim);
    const published = row[store];
    if (!claim.ofDish || !published || compare(inDays(claim.minutes), published) <= 0) return [];
    return [{ claim, row, published, where: where[store] }];
  });
}

export const beyondTheChart: CautionRule = {
  id: 'keeps-beyond-the-chart',
  title: 'Said to keep longer than the published chart',
  when: 'a `keeps` line of the dish goes beyond the longest life that the chart gives for the nearest kind of food',
  reason: 'The chart is a guide to quality and safety for ordinary homes; a longer life wants tests of its own.',
  source: 'USDA FSIS FoodKeeper data; which row is nearest is a judgement of this program',
  find(facts) {
    const found = longClaims(facts);
    const first = found[0];
    if (!first) return undefined;
    return {
      weight: 'check',
      text: `Said to keep ${life(inDays(first.claim.minutes))} ${first.where}; the published chart gives ${life(first.published)} for ${first.row.name}. The claim stands as written.`,
      places: found.map(({ claim }) => claim.place),
    };
  },
};
