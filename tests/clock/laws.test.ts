import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildNetwork, gather, search, type FoundPlan, type PlanProblem } from '@quern/views';
import { judge } from './judge.js';
import { smallKitchen } from './kitchens.js';
import { planAt, told } from './recipes.js';

/*
 * What holds of every plan. The kitchens are those of the oracle, further on in the row of seeds; the judge goes by the
 * words of docs/clock.md.
 */
const budget = { steps: 100_000 };
const kitchens = fc.integer({ min: 10_000, max: 2_000_000 }).map((seed) => smallKitchen(seed));

function best(problem: PlanProblem): FoundPlan | undefined {
  return search(buildNetwork(problem, 'best'), budget).found;
}

describe('every plan', () => {
  test('does nothing before what it needs, has no cook with two jobs, no oven with two heats, and wakes nobody', () => {
    let planned = 0;
    fc.assert(
      fc.property(kitchens, (problem) => {
        const network = buildNetwork(problem, 'best');
        const found = search(network, budget).found;
        if (!found) return;
        planned++;
        const drawn = gather(network, found, budget);
        expect(judge(problem, found).faults).toEqual([]);
        expect(judge(problem, drawn.plan).faults).toEqual([]);
        // Drawing together never makes it worth less, visits counted.
        const worth = (plan: FoundPlan): number => judge(problem, plan).cost + 30_000 * judge(problem, plan).visits;
        expect(worth(drawn.plan)).toBeLessThanOrEqual(worth(found));
      }),
      { numRuns: 150, seed: 7 },
    );
    expect(planned).toBeGreaterThan(50);
  });

  test('is ready exactly on time when it has a kitchen and the day to itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 2_000_000 }), (seed) => {
        const whole = smallKitchen(seed);
        const [dish] = whole.dishes;
        if (!dish) return;
        const mine = (id: string): boolean => id.startsWith(`${dish.id}/`);
        const problem: PlanProblem = {
          ...whole,
          dishes: [dish],
          activities: whole.activities.filter(({ id }) => mine(id)),
          links: whole.links.filter(({ from, to }) => mine(from) && mine(to)),
          sleep: [],
        };
        const plan = best(problem);
        expect(plan).toBeDefined();
        const last = problem.activities.findIndex(({ id }) => id === dish.last);
        expect(plan?.ends[last]).toBe(dish.ready);
      }),
      { numRuns: 100, seed: 11 },
    );
  });

  test('is never worse for a range that is wider about the same best', () => {
    fc.assert(
      fc.property(kitchens, fc.nat(), fc.integer({ min: 1, max: 90 }), (problem, pick, more) => {
        const waits = problem.activities.filter(({ time }) => time.least < time.most);
        const chosen = waits[pick % Math.max(1, waits.length)];
        // Care is due at each multiple, so a longer wait may need more of it: another problem, not a wider one.
        if (!chosen || chosen.care.length > 0) return;
        const { least, preferred, most } = chosen.time;
        const wider = { least: Math.max(0, least - more), preferred, most: most + more };
        const before = best(problem);
        const after = best({
          ...problem,
          activities: problem.activities.map((one) => (one === chosen ? { ...one, time: wider } : one)),
        });
        if (!before) return;
        expect(after).toBeDefined();
        expect(after?.cost).toBeLessThanOrEqual(before.cost);
      }),
      { numRuns: 150, seed: 13 },
    );
  });

  test('moves by a day when it is wanted a day later', () => {
    fc.assert(
      fc.property(fc.integer({ min: 7 * 60, max: 22 * 60 }), fc.integer({ min: 1, max: 5 }), (ready, days) => {
        const text = [
          'recipe Rye',
          '',
          'make leaven',
          '  150 g whole rye flour',
          '  150 g water',
          '  hands 3 min: Stir.',
          '  wait 10-14 h: Leave.',
          '  every 5 h, 2 min: Look.',
          '',
          'make loaf',
          '  all leaven',
          '  hands 10 min: Mix.',
          '  wait 45-90 min: Prove.',
          '  oven 50 min at 220 C: Bake.',
          '  keeps 2 d at 20 C',
        ].join('\n');
        const moments = (wanted: number): string[] | undefined => {
          const { plan } = planAt(text, wanted);
          return (
            plan &&
            [...plan.activities, ...plan.visits].map(({ id, start, end }) => `${id} ${start - wanted} ${end - wanted}`)
          );
        };
        expect(moments(ready + days * 1440)).toEqual(moments(ready));
        expect(told(ready + days * 1440)).toBe(`${days} ${told(ready).slice(2)}`);
      }),
      { numRuns: 40, seed: 17 },
    );
  });

  test('is found again the same', () => {
    for (const seed of [3, 14, 15, 92, 65]) expect(best(smallKitchen(seed))).toEqual(best(smallKitchen(seed)));
  });

  test('of a search that was stopped says how far it may be from the best', () => {
    let stopped = 0;
    for (let seed = 0; seed < 700; seed++) {
      const problem = smallKitchen(seed);
      const whole = search(buildNetwork(problem, 'best'), budget);
      if (!whole.found || whole.steps < 8) continue;
      const short = search(buildNetwork(problem, 'best'), { steps: Math.floor(whole.steps / 2) });
      if (short.complete) continue;
      stopped++;
      expect(short.bound).toBeLessThanOrEqual(whole.found.cost);
      if (short.found) {
        expect(judge(problem, short.found).faults).toEqual([]);
        expect(short.found.cost).toBeGreaterThanOrEqual(whole.found.cost);
      }
      const asked: number[] = [];
      search(buildNetwork(problem, 'best'), { steps: 1e9, expired: () => asked.push(1) > 0 });
      if (whole.steps >= 64) expect(asked.length).toBeGreaterThan(0);
    }
    expect(stopped).toBeGreaterThan(10);
  });
});
