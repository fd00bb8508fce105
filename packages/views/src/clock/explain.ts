import { shareOven } from './jobs.js';
import type { Activity, Allowance, Minute, PlanProblem } from './problem.js';
import { buildNetwork } from './network.js';
import { search, type Budget, type Found } from './search.js';
import { searchFor } from './solve.js';
import { sleepAt } from './conflicts.js';

/** Why there is no plan, and what would help. */
export interface NoPlan {
  readonly why: Reason;
  /** The nearest ready times that work, in minutes after (or before, negative) the one asked for. */
  readonly later: Minute | undefined;
  readonly earlier: Minute | undefined;
  /** The fewest minutes by which limits would have to change for the time asked for. */
  readonly changes: readonly Change[];
  /** When limits contradict each other: each limit that would mend it by itself, and by how much. */
  readonly members: readonly Change[];
}

type Reason =
  /** Would have to begin before now. */
  | { readonly kind: 'past'; readonly activity: Activity; readonly at: Minute }
  /** Needs somebody who is asleep. */
  | { readonly kind: 'asleep'; readonly activity: Activity; readonly at: Minute }
  | { readonly kind: 'oven'; readonly first: Activity; readonly second: Activity; readonly at: Minute }
  | {
      readonly kind: 'busy';
      readonly thing: string;
      readonly first: Activity;
      readonly second: Activity;
      readonly at: Minute;
    }
  /** The limits written (or unwritten) contradict each other at any hour; `changes` names them. */
  | { readonly kind: 'limits' };

export interface Change {
  readonly what: 'wait' | 'standing' | 'keeping';
  readonly activity: Activity;
  /** For standing: what it stands before. */
  readonly before: Activity | undefined;
  readonly product: string | undefined;
  readonly allowed: Allowance;
  readonly needed: Minute;
  readonly written: boolean;
}

/** Looks for the reason by leaving out, one at a time, what may be in the way. */
export function explain(problem: PlanProblem, budget: Budget): NoPlan {
  const why = reasonOf(problem, budget);
  return {
    why,
    later: otherTime(problem, 'later', budget),
    earlier: otherTime(problem, 'earlier', budget),
    changes: sensible(changesFor(problem, budget)),
    members: why.kind === 'limits' ? membersOf(problem, budget) : [],
  };
}

/** Changes by more than half a day and half of what is allowed are no help to anybody. */
function sensible(changes: readonly Change[]): readonly Change[] {
  const far = ({ allowed: { least, most }, needed }: Change): boolean => {
    const off = needed > most ? needed - most : least - needed;
    return off > 720 && off * 2 > (needed > most ? most : least);
  };
  return changes.some(far) ? [] : changes;
}

/** The nearest other ready time at which somebody is up to eat. */
function otherTime(problem: PlanProblem, aim: 'later' | 'earlier', budget: Budget): Minute | undefined {
  if (problem.mode !== 'ready') return undefined;
  const shift = searchFor(problem, aim, budget).found?.service;
  const [first] = problem.dishes;
  if (shift === undefined || !first) return shift;
  const at = (first.ready ?? 0) + shift;
  const sleep = sleepAt(problem.sleep, at, at);
  if (!sleep) return shift;
  const awake = shift + (aim === 'later' ? sleep.to : sleep.from) - at;
  const dishes = problem.dishes.map((dish) => ({ ...dish, ready: (dish.ready ?? 0) + awake }));
  return awake !== 0 && searchFor({ ...problem, dishes }, 'best', budget).found ? awake : undefined;
}

/** More limits than this are not tried one by one. */
const MOST_TRIED = 80;

function membersOf(problem: PlanProblem, budget: Budget): Change[] {
  const limits = [
    ...problem.activities.filter(({ lane }) => lane === 'wait'),
    ...problem.links.filter(({ gap }) => gap.most < Infinity),
    ...problem.dishes,
  ];
  if (limits.length > MOST_TRIED) return [];
  return limits.flatMap((limit) => changesFor(problem, budget, (source) => source === limit));
}

function reasonOf(problem: PlanProblem, budget: Budget): Reason {
  const without = (parts: Partial<PlanProblem>): Found | undefined =>
    searchFor({ ...problem, ...parts }, 'best', budget).found;
  if (problem.mode === 'ready' && problem.earliest !== undefined) {
    const plan = without({ earliest: undefined });
    if (plan) return firstOf(problem, plan);
  }
  const awake = without({ sleep: [] });
  if (awake) return asleepIn(problem, awake) ?? { kind: 'limits' };
  const roomy = without({ activities: problem.activities.map((activity) => ({ ...activity, oven: undefined })) });
  if (roomy) return ovenClash(problem, roomy) ?? { kind: 'limits' };
  const crowd = {
    ...problem.kitchen,
    cooks: MANY,
    rings: MANY,
    tools: new Map(
      [...problem.kitchen.tools.keys(), ...problem.activities.flatMap(({ tools }) => tools)].map((name) => [
        name,
        MANY,
      ]),
    ),
  };
  const helped = without({ kitchen: crowd });
  if (helped) return overworked(problem, helped) ?? { kind: 'limits' };
  const free = without({
    sleep: [],
    earliest: problem.mode === 'start' ? problem.earliest : undefined,
    kitchen: crowd,
    activities: problem.activities.map((activity) => ({ ...activity, oven: undefined })),
  });
  return (
    (free && (asleepIn(problem, free) ?? ovenClash(problem, free) ?? overworked(problem, free))) ?? { kind: 'limits' }
  );
}

const MANY = 1000;

function firstOf(problem: PlanProblem, plan: Found): Reason {
  let first = 0;
  plan.starts.forEach((start, index) => {
    if (start < (plan.starts[first] ?? 0)) first = index;
  });
  const activity = problem.activities[first];
  return activity ? { kind: 'past', activity, at: plan.starts[first] ?? 0 } : { kind: 'limits' };
}

function asleepIn(problem: PlanProblem, plan: Found): Reason | undefined {
  let found: { activity: Activity; at: Minute } | undefined;
  const note = (activity: Activity, from: Minute, to: Minute): void => {
    const sleep = sleepAt(problem.sleep, from, to);
    if (sleep && (!found || from < found.at)) found = { activity, at: Math.max(from, sleep.from) };
  };
  problem.activities.forEach((activity, index) => {
    const start = plan.starts[index] ?? 0;
    const end = plan.ends[index] ?? 0;
    if (activity.watch === 'whole') note(activity, start, end);
    if (activity.watch === 'ends')
      for (const at of [start - (activity.oven?.heating ?? 0), start, end]) note(activity, at, at);
    activity.care.forEach((care, which) => {
      for (const visit of plan.care[index]?.[which] ?? [])
        note({ ...activity, label: care.label }, visit, visit + care.lasts);
    });
  });
  return found && { kind: 'asleep', ...found };
}

function pairs(
  problem: PlanProblem,
  plan: Found,
  clash: (a: Activity, b: Activity) => boolean,
): { first: Activity; second: Activity; at: Minute } | undefined {
  let found: { first: Activity; second: Activity; at: Minute } | undefined;
  problem.activities.forEach((first, i) => {
    problem.activities.forEach((second, j) => {
      if (i === j || !clash(first, second)) return;
      const at = plan.starts[j] ?? 0;
      if ((plan.starts[i] ?? 0) <= at && at < (plan.ends[i] ?? 0) && (!found || at < found.at))
        found = { first, second, at };
    });
  });
  return found;
}

function ovenClash(problem: PlanProblem, plan: Found): Reason | undefined {
  const [oven] = problem.kitchen.ovens;
  const found = pairs(
    problem,
    plan,
    (a, b) => a.oven !== undefined && b.oven !== undefined && (!oven || !shareOven(a.oven, b.oven, oven)),
  );
  return found && { kind: 'oven', ...found };
}

function overworked(problem: PlanProblem, plan: Found): Reason | undefined {
  const things: [string, (activity: Activity) => number, number][] = [
    ['cook', (activity) => activity.cooks, problem.kitchen.cooks],
    ['ring', (activity) => activity.rings, problem.kitchen.rings],
    ...problem.activities
      .flatMap(({ tools }) => tools)
      .map((name): [string, (activity: Activity) => number, number] => [
        name,
        (activity) => (activity.tools.includes(name) ? 1 : 0),
        problem.kitchen.tools.get(name) ?? 1,
      ]),
  ];
  for (const [thing, takes, size] of things) {
    const found = pairs(
      problem,
      plan,
      (a, b) => takes(a) > 0 && takes(b) > 0 && (size < 2 || takes(a) + takes(b) > size),
    );
    if (found) return { kind: 'busy', thing, ...found };
  }
  return undefined;
}

function changesFor(problem: PlanProblem, budget: Budget, only?: (source: unknown) => boolean): Change[] {
  const { found } = search(buildNetwork(problem, 'give', only), budget);
  if (!found) return [];
  const at = new Map(problem.activities.map((activity, index) => [activity.id, index]));
  const activityOf = (id: string): Activity | undefined => problem.activities[at.get(id) ?? -1];
  const outside = (length: Minute, allowed: Allowance): boolean => length < allowed.least || length > allowed.most;
  const changes: Change[] = [];
  problem.activities.forEach((activity, index) => {
    const needed = (found.ends[index] ?? 0) - (found.starts[index] ?? 0);
    if (!outside(needed, activity.time)) return;
    changes.push({
      what: 'wait',
      activity,
      before: undefined,
      product: undefined,
      allowed: activity.time,
      needed,
      written: true,
    });
  });
  for (const link of problem.links) {
    const activity = activityOf(link.from);
    const needed = (found.starts[at.get(link.to) ?? -1] ?? 0) - (found.ends[at.get(link.from) ?? -1] ?? 0);
    if (!activity || !outside(needed, link.gap)) continue;
    changes.push({
      what: 'standing',
      activity,
      before: activityOf(link.to),
      product: link.product,
      allowed: link.gap,
      needed,
      written: link.written,
    });
  }
  for (const dish of problem.dishes) {
    const activity = activityOf(dish.last);
    const needed = (dish.ready ?? 0) + found.service - (found.ends[at.get(dish.last) ?? -1] ?? 0);
    if (!activity || !outside(needed, dish.stand)) continue;
    changes.push({
      what: 'keeping',
      activity,
      before: undefined,
      product: dish.title,
      allowed: dish.stand,
      needed,
      written: dish.standWritten,
    });
  }
  return changes;
}
