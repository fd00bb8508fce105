import type { Allowance, FoundPlan, PlanProblem } from '@quern/views';

/*
 * Judges a plan by the words of docs/clock.md alone, minute by minute where the clock uses something cleverer.
 */

export interface Verdict {
  readonly faults: readonly string[];
  /** Thousandths of a point, without the visits to the kitchen. */
  readonly cost: number;
  readonly visits: number;
}

const up = (a: number, b: number): number => Math.ceil(a / b);

/** 100 points at a limit, nothing at the best; a whole number of thousandths a minute. */
function away(length: number, allowed: Allowance): number {
  if (length > allowed.preferred) {
    const reach = allowed.most === Infinity ? Math.max(allowed.preferred, 720) : allowed.most - allowed.preferred;
    return (length - allowed.preferred) * up(100_000, reach);
  }
  if (length < allowed.preferred) return (allowed.preferred - length) * up(100_000, allowed.preferred - allowed.least);
  return 0;
}

export function judge(problem: PlanProblem, plan: FoundPlan): Verdict {
  const faults: string[] = [];
  let cost = 0;
  const start = new Map(problem.activities.map((activity, index) => [activity.id, plan.starts[index] ?? NaN]));
  const end = new Map(problem.activities.map((activity, index) => [activity.id, plan.ends[index] ?? NaN]));
  const within = (what: string, length: number, allowed: Allowance): void => {
    if (!Number.isInteger(length)) faults.push(`${what}: not whole minutes`);
    if (length < allowed.least || length > allowed.most)
      faults.push(`${what}: ${length} outside ${allowed.least}-${allowed.most}`);
  };
  for (const activity of problem.activities) {
    const length = (end.get(activity.id) ?? NaN) - (start.get(activity.id) ?? NaN);
    within(activity.id, length, activity.time);
    cost += away(length, activity.time);
  }
  for (const { from, to, gap } of problem.links) {
    const length = (start.get(to) ?? NaN) - (end.get(from) ?? NaN);
    within(`${from} to ${to}`, length, gap);
    cost += away(length, gap);
  }
  for (const { id, last, stand, ready } of problem.dishes) {
    const served = ready ?? plan.service;
    const length = served - (end.get(last) ?? NaN);
    within(`${id} standing`, length, stand);
    cost +=
      Math.max(0, length - stand.preferred) *
      up(1_000_000_000, Math.max(1, Math.min(stand.most - stand.least, 7 * 1440)));
  }
  const people: { from: number; to: number; what: string }[] = [];
  problem.activities.forEach((activity, index) => {
    const from = plan.starts[index] ?? NaN;
    const to = plan.ends[index] ?? NaN;
    for (let n = 0; n < activity.cooks; n++) people.push({ from, to, what: activity.id });
    activity.care.forEach((care, which) => {
      const visits = plan.care[index]?.[which] ?? [];
      const due = care.falls.filter((fall) => fall < to - from);
      if (visits.length !== due.length) faults.push(`${care.id}: ${visits.length} visits, ${due.length} due`);
      visits.forEach((visit, nth) => {
        if (Math.abs(visit - from - (due[nth] ?? NaN)) > care.give)
          faults.push(`${care.id}: visit ${nth} moved too far`);
        if (visit + care.lasts > to) faults.push(`${care.id}: visit ${nth} after the end`);
        people.push({ from: visit, to: visit + care.lasts, what: care.id });
        if (problem.sleep.some((sleep) => visit < sleep.to && visit + care.lasts > sleep.from)) {
          faults.push(`${care.id}: asleep`);
        }
      });
    });
    const asleep = (a: number, b: number): boolean => problem.sleep.some((sleep) => a < sleep.to && b > sleep.from);
    if (activity.watch === 'whole' && asleep(from, to)) faults.push(`${activity.id}: asleep`);
    if (activity.watch === 'ends') {
      for (const moment of [from - (activity.oven?.heating ?? 0), from, to]) {
        if (asleep(moment, moment)) faults.push(`${activity.id}: asleep at ${moment}`);
      }
    }
    if (activity.coversSleep && !problem.sleep.some((sleep) => from <= sleep.from && to >= sleep.to)) {
      faults.push(`${activity.id}: no night in it`);
    }
    if (problem.earliest !== undefined && from - (activity.oven?.heating ?? 0) < problem.earliest) {
      faults.push(`${activity.id}: begins too early`);
    }
  });
  const busiest = (spans: readonly { from: number; to: number }[]): number =>
    Math.max(0, ...spans.map(({ from }) => spans.filter((other) => other.from <= from && other.to > from).length));
  if (busiest(people) > problem.kitchen.cooks) faults.push('a cook has two jobs');
  const rings = problem.activities.flatMap((activity, index) =>
    Array.from({ length: activity.rings }, () => ({ from: plan.starts[index] ?? 0, to: plan.ends[index] ?? 0 })),
  );
  if (busiest(rings) > problem.kitchen.rings) faults.push('too few rings');
  problem.kitchen.ovens.forEach((oven, index) => faults.push(...judgeOven(problem, plan, index, oven.shelves)));
  const visits = countVisits(problem, plan);
  return { faults, cost, visits };
}

/** Every minute of an oven: the shelves taken, and one temperature that suits all that is inside. */
function judgeOven(problem: PlanProblem, plan: FoundPlan, oven: number, shelves: number): string[] {
  const faults: string[] = [];
  const inside = problem.activities.flatMap((activity, index) =>
    activity.oven && plan.ovens[index] === oven
      ? [{ id: activity.id, need: activity.oven, from: plan.starts[index] ?? 0, to: plan.ends[index] ?? 0 }]
      : [],
  );
  const stays = new Set(problem.links.filter((l) => l.reason === 'in-the-oven').map((l) => `${l.from}>${l.to}`));
  for (const { from } of inside) {
    const now = inside.filter((other) => other.from <= from && other.to > from);
    const taken = now.reduce((sum, { need }) => sum + (need.shelves === 'all' ? shelves : need.shelves), 0);
    if (taken > shelves) faults.push(`oven ${oven}: ${taken} shelves at ${from}`);
    if (now.length > 1) {
      const low = Math.max(...now.map(({ need }) => need.enters?.low ?? Infinity));
      const high = Math.min(...now.map(({ need }) => need.enters?.high ?? -Infinity));
      if (low > high || now.some(({ need }) => need.moving)) faults.push(`oven ${oven}: two temperatures at ${from}`);
    }
  }
  for (const a of inside) {
    for (const b of inside) {
      if (a === b || b.from < a.to || stays.has(`${a.id}>${b.id}`)) continue;
      const apart = b.from - a.to;
      const left = a.need.leaves;
      const wanted = b.need.enters;
      if (!left || !wanted) continue;
      if (wanted.low > left.high && apart < Math.ceil((wanted.low - left.high) / 50) * 5)
        faults.push(`${b.id}: oven not hot yet`);
      if (left.low > wanted.high && apart < Math.ceil((left.low - wanted.high) / 25) * 5)
        faults.push(`${b.id}: oven not cool yet`);
    }
  }
  return faults;
}

function countVisits(problem: PlanProblem, plan: FoundPlan): number {
  const hands = problem.activities
    .map((activity, index) => ({ activity, from: plan.starts[index] ?? 0, to: plan.ends[index] ?? 0 }))
    .filter(({ activity }) => activity.cooks > 0)
    .sort((a, b) => a.from - b.from);
  let visits = 0;
  let until = -Infinity;
  for (const { from, to } of hands) {
    if (from - until > 60) visits++;
    until = Math.max(until, to);
  }
  return visits;
}
