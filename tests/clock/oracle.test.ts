import { describe, expect, test } from 'vitest';
import { buildNetwork, gather, search } from '@quern/views';
import { judge, type Verdict } from './judge.js';
import { smallKitchen } from './kitchens.js';
import { solveByHighs } from './mixed-integer.js';

/*
 * The clock against a mixed-integer solver on small kitchens drawn at random. First the times: both must find a plan or
 * none, and the plans must be worth the same. Then the visits to the kitchen, with the order of the first plan kept. The
 * judge counts the worth of both.
 */
const KITCHENS = 240;
const GROUPS = 4;

describe.each(Array.from({ length: GROUPS }, (_, group) => group))('small kitchens, group %i', (group) => {
  test('are planned as well as by a mixed-integer program', { timeout: 120_000 }, () => {
    let planned = 0;
    let saved = 0;
    for (let seed = group; seed < KITCHENS; seed += GROUPS) {
      const problem = smallKitchen(seed);
      const network = buildNetwork(problem, 'best');
      const ours = search(network, { steps: 200_000 });
      const theirs = solveByHighs(problem);
      expect(ours.complete, `kitchen ${seed}`).toBe(true);
      expect(theirs.finished, `kitchen ${seed}`).toBe(true);
      expect(ours.found === undefined, `kitchen ${seed}`).toBe(theirs.plan === undefined);
      if (!ours.found || !theirs.plan) continue;
      planned++;
      const mine = judge(problem, ours.found);
      const other = judge(problem, theirs.plan);
      expect(mine.faults, `kitchen ${seed}`).toEqual([]);
      expect(other.faults, `kitchen ${seed} by HiGHS`).toEqual([]);
      expect(mine.cost, `kitchen ${seed}`).toBe(ours.found.cost);
      expect(mine.cost, `kitchen ${seed}`).toBe(other.cost);

      const drawn = gather(network, ours.found, { steps: 200_000 });
      const mineDrawn = judge(problem, drawn.plan);
      const theirsDrawn = solveByHighs(problem, ours.found);
      expect(theirsDrawn.finished, `kitchen ${seed}, order kept`).toBe(true);
      expect(theirsDrawn.plan, `kitchen ${seed}, order kept`).toBeDefined();
      if (!theirsDrawn.plan) continue;
      const otherDrawn = judge(problem, theirsDrawn.plan);
      expect(drawn.complete).toBe(true);
      expect(mineDrawn.faults, `kitchen ${seed}, drawn together`).toEqual([]);
      expect(otherDrawn.faults, `kitchen ${seed}, drawn together by HiGHS`).toEqual([]);
      expect(mineDrawn.visits).toBe(drawn.visits);
      const worth = (verdict: Verdict): number => verdict.cost + 30_000 * verdict.visits;
      expect(worth(mineDrawn), `kitchen ${seed}, drawn together`).toBe(worth(otherDrawn));
      if (drawn.visits < mine.visits) saved++;
    }
    expect(planned).toBeGreaterThan(KITCHENS / GROUPS / 3);
    expect(saved).toBeGreaterThan(0);
  });
});
