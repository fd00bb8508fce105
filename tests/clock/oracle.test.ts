import { describe, expect, test } from 'vitest';
import { buildNetwork, search } from '@quern/views';
import { judge } from './judge.js';
import { smallKitchen } from './kitchens.js';
import { solveByHighs } from './mixed-integer.js';

/*
 * The clock against a mixed-integer solver on small kitchens drawn at random: both must find a plan or none, and the
 * plans must be worth the same. The judge counts the worth of both.
 */
const KITCHENS = 240;
const GROUPS = 12;

describe.each(Array.from({ length: GROUPS }, (_, group) => group))('small kitchens, group %i', (group) => {
  test('are planned as well as by a mixed-integer program', { timeout: 120_000 }, () => {
    let planned = 0;
    for (let seed = group; seed < KITCHENS; seed += GROUPS) {
      const problem = smallKitchen(seed);
      const ours = search(buildNetwork(problem, 'best'), { steps: 200_000 }, { visits: true });
      const theirs = solveByHighs(problem);
      expect(ours.complete, `kitchen ${seed}`).toBe(true);
      expect(ours.found === undefined, `kitchen ${seed}`).toBe(theirs.plan === undefined);
      if (!ours.found || !theirs.plan) continue;
      planned++;
      const mine = judge(problem, ours.found);
      const other = judge(problem, theirs.plan);
      expect(mine.faults, `kitchen ${seed}`).toEqual([]);
      expect(other.faults, `kitchen ${seed} by HiGHS`).toEqual([]);
      expect(mine.cost, `kitchen ${seed}`).toBe(ours.found.cost);
      expect(mine.cost, `kitchen ${seed}`).toBe(other.cost);
    }
    expect(planned).toBeGreaterThan(KITCHENS / GROUPS / 2);
  });
});
