import { quotientUp } from './prices.js';
import type { Network, Point } from './network.js';
import type { Activity, Minute, Oven, OvenNeed, PlanProblem, Watch } from './problem.js';

/** What the search arranges: an activity that needs somebody or something, or one visit of care. */
export interface Job {
  /** Index of the activity (for care, of the activity that is cared for). */
  readonly activity: number;
  /** For a visit of care: which care and which visit, from 0. */
  readonly care: { readonly care: number; readonly visit: number } | undefined;
  readonly start: Point;
  readonly end: Point;
  readonly watch: Watch;
  readonly cooks: number;
  readonly rings: number;
  readonly tools: readonly string[];
  readonly oven: OvenNeed | undefined;
  /** The job of the same make that leaves the oven as this one goes in: the dish stays inside. -1 when none. */
  readonly ovenBefore: number;
}

/** The activities that need anything, as jobs, in the order of the problem. */
export function jobsOf(network: Network): Job[] {
  const { problem } = network;
  const jobs: Job[] = [];
  const jobOfActivity = new Map<string, number>();
  const inOven = new Map(
    problem.links.filter((link) => link.reason === 'in-the-oven').map((link) => [link.to, link.from]),
  );
  problem.activities.forEach((activity, index) => {
    if (!needsAnything(activity)) return;
    jobOfActivity.set(activity.id, jobs.length);
    const before = inOven.get(activity.id);
    jobs.push({
      activity: index,
      care: undefined,
      start: network.starts[index] ?? ORIGIN,
      end: network.ends[index] ?? ORIGIN,
      watch: activity.watch,
      cooks: activity.cooks,
      rings: activity.rings,
      tools: activity.tools,
      oven: activity.oven,
      ovenBefore: (before === undefined ? undefined : jobOfActivity.get(before)) ?? -1,
    });
  });
  return jobs;
}

const ORIGIN: Point = { node: 0, offset: 0 };

function needsAnything(activity: Activity): boolean {
  return (
    activity.watch !== 'none' ||
    activity.cooks > 0 ||
    activity.rings > 0 ||
    activity.tools.length > 0 ||
    activity.oven !== undefined
  );
}

/** One visit of care as a job of its own. */
export function careJob(network: Network, activity: number, care: number, visit: number): Job {
  const first = network.careNodes[activity]?.[care] ?? 0;
  const lasts = network.problem.activities[activity]?.care[care]?.lasts ?? 1;
  return {
    activity,
    care: { care, visit },
    start: { node: first + visit, offset: 0 },
    end: { node: first + visit, offset: lasts },
    watch: 'whole',
    cooks: 1,
    rings: 0,
    tools: [],
    oven: undefined,
    ovenBefore: -1,
  };
}

/** Something of which only so much can be in use at once. */
export interface Pool {
  readonly what: 'cook' | 'ring' | 'tool';
  readonly name: string;
  readonly size: number;
  /** How much of it a job takes. */
  takes(job: Job): number;
}

export function poolsOf(problem: PlanProblem): Pool[] {
  const tools = new Set(problem.activities.flatMap((activity) => activity.tools));
  return [
    { what: 'cook', name: 'cook', size: problem.kitchen.cooks, takes: (job) => job.cooks },
    { what: 'ring', name: 'ring', size: problem.kitchen.rings, takes: (job) => job.rings },
    ...[...tools].map((name): Pool => ({
      what: 'tool',
      name,
      size: problem.kitchen.tools.get(name) ?? 1,
      takes: (job) => (job.tools.includes(name) ? 1 : 0),
    })),
  ];
}

/** Whether two dishes may be in one oven at the same time. */
export function shareOven(a: OvenNeed, b: OvenNeed, oven: Oven): boolean {
  if (a.moving || b.moving || !a.enters || !b.enters) return false;
  if (shelvesOf(a, oven) + shelvesOf(b, oven) > oven.shelves) return false;
  return a.enters.low <= b.enters.high && b.enters.low <= a.enters.high;
}

export const shelvesOf = (need: OvenNeed, oven: Oven): number => (need.shelves === 'all' ? oven.shelves : need.shelves);

/** An oven warms by some 10 degrees a minute and cools, with the door ajar, by some 5: common practice, no source. */
const WARMS = 10;
const COOLS = 5;
const ROOM = 20;

/** Minutes to bring an oven from the heat one dish leaves it at to that of the next, in steps of five. */
export function turnDial(from: OvenNeed, to: OvenNeed): Minute {
  const left = from.leaves;
  const wanted = to.enters;
  if (!left || !wanted) return 0;
  if (wanted.low > left.high) return fives(wanted.low - left.high, WARMS);
  if (left.low > wanted.high) return fives(left.low - wanted.high, COOLS);
  return 0;
}

/** Minutes to heat an oven from cold. */
export const heatingTime = (low: number): Minute => (low > ROOM ? fives(low - ROOM, WARMS) : 0);

const fives = (degrees: number, each: number): Minute => quotientUp(degrees, each * 5) * 5;

/** Whether an oven is hot and large enough for a step. */
export function ovenFits(need: OvenNeed, oven: Oven): boolean {
  const heats = [need.enters, need.leaves].filter((heat) => heat !== undefined);
  return (
    shelvesOf(need, oven) <= oven.shelves &&
    heats.every((heat) => heat.low <= oven.hottest && heat.high >= oven.coolest)
  );
}
