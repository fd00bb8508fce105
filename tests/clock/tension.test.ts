import { describe, expect, test } from 'vitest';
import highsLoader from 'highs';
import { Tension } from '@quern/views';
import { Dice } from './kitchens.js';

/*
 * The least cost of priced rules between moments, against a linear program of the same rules solved by HiGHS.
 */
const solver = await highsLoader();

interface Rule {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
  readonly price: number;
}

function randomRules(seed: number): { nodes: number; rules: Rule[] } {
  const dice = new Dice(seed);
  const nodes = dice.roll(2, 8);
  const rules = Array.from({ length: dice.roll(1, 24) }, (): Rule => {
    const hard = dice.chance(35);
    return {
      from: dice.roll(0, nodes - 1),
      to: dice.roll(0, nodes - 1),
      gap: dice.roll(-60, hard ? 20 : 60),
      price: hard ? Infinity : dice.roll(1, 9),
    };
  });
  return { nodes, rules: rules.filter(({ from, to }) => from !== to) };
}

function byLinearProgram(nodes: number, rules: readonly Rule[]): number | undefined {
  if (rules.length === 0) return 0;
  const rows = rules.map(
    ({ from, to, gap, price }, index) =>
      `r${index}: t${to} - t${from}${price < Infinity ? ` + x${index}` : ''} >= ${gap}`,
  );
  const cost = rules.flatMap(({ price }, index) => (price < Infinity ? [`${price} x${index}`] : [])).join(' + ');
  const bounds = Array.from({ length: nodes }, (_, node) => `-100000 <= t${node} <= 100000`);
  const solution = solver.solve(
    `Minimize\n obj: ${cost || '0 t0'}\nSubject To\n ${rows.join('\n ')}\nBounds\n ${bounds.join('\n ')}\nEnd`,
  );
  return solution.Status === 'Infeasible' ? undefined : Math.round(solution.ObjectiveValue);
}

const costOf = (times: Float64Array, rules: readonly Rule[]): number =>
  rules.reduce((sum, { from, to, gap, price }) => {
    const short = Math.max(0, gap - ((times[to] ?? 0) - (times[from] ?? 0)));
    return sum + (short === 0 ? 0 : short * price);
  }, 0);

describe('moments tied by priced rules', () => {
  test('cost as little as a linear program says, and the moments cost that', () => {
    let impossible = 0;
    let priced = 0;
    for (let seed = 0; seed < 400; seed++) {
      const { nodes, rules } = randomRules(seed);
      const expected = byLinearProgram(nodes, rules);
      const tension = new Tension(nodes);
      const holds = rules.every(({ from, to, gap, price }) => tension.add(from, to, gap, price));
      expect(holds, `rules ${seed}`).toBe(expected !== undefined);
      if (expected === undefined) {
        impossible++;
        continue;
      }
      expect(tension.cost, `rules ${seed}`).toBe(expected);
      expect(costOf(tension.times, rules), `moments ${seed}`).toBe(expected);
      if (expected > 0) priced++;
    }
    expect(impossible).toBeGreaterThan(20);
    expect(priced).toBeGreaterThan(100);
  });

  test('come back exactly when rules are taken away again', () => {
    for (let seed = 0; seed < 100; seed++) {
      const { nodes, rules } = randomRules(seed);
      const half = Math.floor(rules.length / 2);
      const tension = new Tension(nodes);
      const first = rules.slice(0, half);
      if (!first.every(({ from, to, gap, price }) => tension.add(from, to, gap, price))) continue;
      const before = { cost: tension.cost, times: [...tension.times] };
      tension.save();
      for (const { from, to, gap, price } of rules.slice(half)) if (!tension.add(from, to, gap, price)) break;
      tension.restore();
      expect({ cost: tension.cost, times: [...tension.times] }).toEqual(before);
      // And go on as if nothing had been.
      const fresh = new Tension(nodes);
      const again = first.every(({ from, to, gap, price }) => fresh.add(from, to, gap, price));
      expect(again).toBe(true);
      const rest = (one: Tension): number | undefined =>
        rules.slice(half).every(({ from, to, gap, price }) => one.add(from, to, gap, price)) ? one.cost : undefined;
      expect(rest(tension)).toBe(rest(fresh));
    }
  });

  test('stop early only when the cost is sure to reach the limit', () => {
    const tension = new Tension(2);
    expect(tension.add(0, 1, 10, Infinity)).toBe(true);
    tension.save();
    // Ten minutes short at 3 a minute: 30.
    expect(tension.add(1, 0, 0, 3, 30)).toBe(false);
    tension.restore();
    expect(tension.add(1, 0, 0, 3, 31)).toBe(true);
    expect(tension.cost).toBe(30);
  });
});
