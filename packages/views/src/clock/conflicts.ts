import { careJob, poolsOf, shareOven, shelvesOf, turnDial, type Job, type Pool } from './jobs.js';
import type { Network, Point } from './network.js';
import type { Minute, Oven, Sleep } from './problem.js';

/** A rule that must hold, added by a choice. */
export interface HardRule {
  readonly from: Point;
  readonly to: Point;
  readonly gap: Minute;
}

/** One way out of a conflict. All ways together lose no plan. */
export interface Choice {
  readonly rules: readonly HardRule[];
  /** Puts a job into an oven. */
  readonly oven?: { readonly job: number; readonly oven: number };
  /** Settles how many visits of care there are. */
  readonly care?: { readonly activity: number; readonly care: number; readonly visits: number };
}

export interface Conflict {
  /** Minutes that must give way at the least, to judge which conflict decides most. */
  readonly size: Minute;
  readonly choices: readonly Choice[];
}

/** The state of the search that the conflicts depend on, besides the moments. */
export interface Arrangement {
  readonly network: Network;
  /** Jobs of activities first, then visits of care as they are settled. */
  readonly jobs: Job[];
  /** Oven of each activity's job, -1 while open. */
  readonly ovenOf: number[];
  /** Settled number of visits by activity and care, -1 while open. */
  readonly visits: number[][];
}

/** Finds what is wrong with moments that keep all rules so far. */
export class ConflictFinder {
  readonly #pools: readonly Pool[];
  readonly #ovens: readonly Oven[];
  readonly #sleep: readonly Sleep[];
  readonly #at: Arrangement;
  #starts: number[] = [];
  #ends: number[] = [];

  constructor(arrangement: Arrangement) {
    this.#at = arrangement;
    this.#pools = poolsOf(arrangement.network.problem);
    this.#ovens = arrangement.network.problem.kitchen.ovens;
    this.#sleep = arrangement.network.problem.sleep;
  }

  /** All kinds of conflict in these moments, the weightiest first; empty when they are a plan. */
  find(times: Float64Array): Conflict[] {
    const { jobs } = this.#at;
    const anchor = times[0] ?? 0;
    this.#starts = jobs.map((job) => momentOf(job.start, times) - anchor);
    this.#ends = jobs.map((job) => momentOf(job.end, times) - anchor);
    const found: Conflict[] = [];
    jobs.forEach((job, index) => this.#asleep(job, index, found));
    this.#overnight(times, found);
    const order = jobs.map((_, index) => index).sort((a, b) => this.#start(a) - this.#start(b) || a - b);
    this.#inOvens(order, found);
    for (const pool of this.#pools) this.#overdrawn(pool, order, found);
    this.#unsettledCare(times, order, found);
    return found.sort((a, b) => b.size - a.size);
  }

  #start(job: number): number {
    return this.#starts[job] ?? 0;
  }

  #end(job: number): number {
    return this.#ends[job] ?? 0;
  }

  #sleepAt(from: number, to: number): Sleep | undefined {
    return sleepAt(this.#sleep, from, to);
  }

  #asleep(job: Job, index: number, found: Conflict[]): void {
    if (job.watch === 'none') return;
    const heating = job.oven?.heating ?? 0;
    const watched: readonly { from: Point; to: Point; at: [number, number] }[] =
      job.watch === 'whole'
        ? [{ from: job.start, to: job.end, at: [this.#start(index), this.#end(index)] }]
        : [
            ...(heating > 0 ? [moment(later(job.start, -heating), this.#start(index) - heating)] : []),
            moment(job.start, this.#start(index)),
            moment(job.end, this.#end(index)),
          ];
    for (const { from, to, at } of watched) {
      const sleep = this.#sleepAt(at[0], at[1]);
      if (!sleep) continue;
      found.push({
        size: Math.min(at[1] - sleep.from, sleep.to - at[0]),
        choices: [{ rules: [notAfter(to, sleep.from)] }, { rules: [notBefore(from, sleep.to)] }],
      });
    }
  }

  #overnight(times: Float64Array, found: Conflict[]): void {
    const { network } = this.#at;
    if (this.#sleep.length === 0) return;
    const anchor = times[0] ?? 0;
    network.problem.activities.forEach((activity, index) => {
      if (!activity.coversSleep) return;
      const from = network.starts[index] ?? ORIGIN;
      const to = network.ends[index] ?? ORIGIN;
      const start = momentOf(from, times) - anchor;
      const end = momentOf(to, times) - anchor;
      let nearest = -1;
      let least = Infinity;
      this.#sleep.forEach((sleep, night) => {
        const missing = Math.max(0, start - sleep.from) + Math.max(0, sleep.to - end);
        if (missing < least) {
          least = missing;
          nearest = night;
        }
      });
      const sleep = this.#sleep[nearest];
      if (!sleep || least === 0) return;
      // This night, an earlier one or a later one.
      const before = this.#sleep[nearest - 1];
      const after = this.#sleep[nearest + 1];
      found.push({
        size: least,
        choices: [
          { rules: [notAfter(from, sleep.from), notBefore(to, sleep.to)] },
          ...(before ? [{ rules: [notAfter(from, before.from)] }] : []),
          ...(after ? [{ rules: [notBefore(to, after.to)] }] : []),
        ],
      });
    });
  }

  /** Whether two jobs are in each other's way in one oven, and by how little one could make room. */
  #clash(a: number, b: number, oven: Oven): Conflict | undefined {
    const { jobs } = this.#at;
    const first = jobs[a];
    const second = jobs[b];
    if (!first?.oven || !second?.oven) return undefined;
    if (first.ovenBefore === b || second.ovenBefore === a) return undefined;
    if (shareOven(first.oven, second.oven, oven)) return undefined;
    const forward = turnDial(first.oven, second.oven);
    const backward = turnDial(second.oven, first.oven);
    const shortForward = this.#end(a) + forward - this.#start(b);
    const shortBackward = this.#end(b) + backward - this.#start(a);
    if (shortForward <= 0 || shortBackward <= 0) return undefined;
    return {
      size: Math.min(shortForward, shortBackward),
      choices: [
        { rules: [{ from: first.end, to: second.start, gap: forward }] },
        { rules: [{ from: second.end, to: first.start, gap: backward }] },
      ],
    };
  }

  #inOvens(order: readonly number[], found: Conflict[]): void {
    const { jobs, ovenOf } = this.#at;
    const baking = order.filter((job) => jobs[job]?.oven);
    const open = baking.filter((job) => (ovenOf[job] ?? -1) < 0);
    if (open.length > 0) {
      const unplaced = this.#unplaceable(baking, open);
      if (unplaced !== undefined) found.push(this.#placing(unplaced, ovenOf));
      return;
    }
    this.#ovens.forEach((oven, index) => {
      const inside = baking.filter((job) => ovenOf[job] === index);
      inside.forEach((a, at) => {
        for (const b of inside.slice(at + 1)) {
          const clash = this.#clash(a, b, oven);
          if (clash) found.push(clash);
        }
      });
      const takes = (job: number): number => {
        const need = jobs[job]?.oven;
        return need ? shelvesOf(need, oven) : 0;
      };
      this.#crowded(inside, takes, oven.shelves, found);
    });
  }

  /** The first open job for which no oven is left when the open ones are put, in turn, where they disturb nobody. */
  #unplaceable(baking: readonly number[], open: readonly number[]): number | undefined {
    const { jobs, ovenOf } = this.#at;
    const placed = new Map<number, number>(baking.map((job) => [job, ovenOf[job] ?? -1]));
    for (const job of open) {
      const before = jobs[job]?.ovenBefore ?? -1;
      const only = before >= 0 ? (placed.get(before) ?? -1) : -1;
      const free = this.#ovens.findIndex((oven, index) => {
        if (only >= 0 && only !== index) return false;
        const inside = baking.filter((other) => other !== job && placed.get(other) === index);
        if (inside.some((other) => this.#clash(job, other, oven))) return false;
        const crowd: Conflict[] = [];
        const takes = (other: number): number => {
          const need = jobs[other]?.oven;
          return need ? shelvesOf(need, oven) : 0;
        };
        const all = [...inside, job].sort((a, b) => this.#start(a) - this.#start(b) || a - b);
        this.#crowded(all, takes, oven.shelves, crowd);
        return crowd.length === 0;
      });
      if (free < 0) return job;
      placed.set(job, free);
    }
    // Everything finds room: remember where, so that the plan can say so.
    this.lastPlacing = placed;
    return undefined;
  }

  /** Where the ovens' open jobs went when last asked. */
  lastPlacing = new Map<number, number>();

  #placing(job: number, ovenOf: readonly number[]): Conflict {
    const seen = new Set<string>();
    const choices: Choice[] = [];
    this.#ovens.forEach((oven, index) => {
      // Ovens that are alike and still empty are one choice.
      const empty = !ovenOf.includes(index);
      const kind = `${oven.shelves} ${oven.coolest} ${oven.hottest}`;
      if (empty && seen.has(kind)) return;
      if (empty) seen.add(kind);
      choices.push({ rules: [], oven: { job, oven: index } });
    });
    return { size: Infinity, choices };
  }

  #overdrawn(pool: Pool, order: readonly number[], found: Conflict[]): void {
    const { jobs } = this.#at;
    const takes = (index: number): number => {
      const job = jobs[index];
      return job ? pool.takes(job) : 0;
    };
    this.#crowded(
      order.filter((job) => takes(job) > 0),
      takes,
      pool.size,
      found,
    );
  }

  /** Sets of jobs, least first, that run at once and together take more than there is. `order` is by start. */
  #crowded(order: readonly number[], takes: (job: number) => number, size: number, found: Conflict[]): void {
    let running: number[] = [];
    for (const job of order) {
      const now = this.#start(job);
      running = running.filter((other) => this.#end(other) > now);
      running.push(job);
      let total = 0;
      for (const other of running) total += takes(other);
      if (total > size) found.push(this.#apart(this.#leastCrowd(running, takes, size)));
    }
  }

  #leastCrowd(running: readonly number[], takes: (job: number) => number, size: number): number[] {
    const latest = running[running.length - 1] ?? 0;
    const others = running.slice(0, -1).sort((a, b) => takes(b) - takes(a) || this.#end(b) - this.#end(a));
    const crowd = [latest];
    let total = takes(latest);
    for (const job of others) {
      if (total > size) break;
      crowd.push(job);
      total += takes(job);
    }
    return crowd;
  }

  /** One of these jobs must end before another starts; each later choice leaves out what the earlier ones cover. */
  #apart(crowd: readonly number[]): Conflict {
    const { jobs } = this.#at;
    const pairs: { a: Job; b: Job; short: number }[] = [];
    for (const first of crowd) {
      for (const second of crowd) {
        const a = jobs[first];
        const b = jobs[second];
        if (first !== second && a && b) pairs.push({ a, b, short: this.#end(first) - this.#start(second) });
      }
    }
    pairs.sort((x, y) => x.short - y.short);
    const choices = pairs.map(({ a, b }, index): Choice => {
      const others = pairs.slice(0, index).map((pair): HardRule => ({ from: pair.b.start, to: pair.a.end, gap: 1 }));
      const apart: HardRule = { from: a.end, to: b.start, gap: 0 };
      return { rules: crowd.length > 2 ? [apart, ...others] : [apart] };
    });
    return { size: pairs[0]?.short ?? 0, choices };
  }

  /** Visits whose number is still open fall at their multiples; if one cannot, their number has to be settled. */
  #unsettledCare(times: Float64Array, order: readonly number[], found: Conflict[]): void {
    const { network, jobs, visits } = this.#at;
    const anchor = times[0] ?? 0;
    const cooks = this.#pools[0]?.size ?? 1;
    const busy = order.filter((job) => (jobs[job]?.cooks ?? 0) > 0);
    network.problem.activities.forEach((activity, index) => {
      activity.care.forEach((care, which) => {
        if ((visits[index]?.[which] ?? 0) >= 0) return;
        const start = momentOf(network.starts[index] ?? ORIGIN, times) - anchor;
        const length = momentOf(network.ends[index] ?? ORIGIN, times) - anchor - start;
        const due = care.falls.filter((fall) => fall < length);
        const disturbed = due.some((fall) => {
          const from = start + fall;
          const to = from + care.lasts;
          if (fall + care.lasts > length || this.#sleepAt(from, to)) return true;
          return busy.filter((job) => this.#start(job) < to && this.#end(job) > from).length >= cooks;
        });
        if (disturbed) found.push(this.#settle(index, which, due.length));
      });
    });
    this.#careAmongItself(times, found);
  }

  /** Visits to different jars whose number is still open may fall together as well. */
  #careAmongItself(times: Float64Array, found: Conflict[]): void {
    const { network, visits } = this.#at;
    const anchor = times[0] ?? 0;
    const cooks = this.#pools[0]?.size ?? 1;
    const open: { from: number; to: number; activity: number; care: number; due: number }[] = [];
    network.problem.activities.forEach((activity, index) => {
      activity.care.forEach((care, which) => {
        if ((visits[index]?.[which] ?? 0) >= 0) return;
        const start = momentOf(network.starts[index] ?? ORIGIN, times) - anchor;
        const length = momentOf(network.ends[index] ?? ORIGIN, times) - anchor - start;
        const due = care.falls.filter((fall) => fall < length);
        for (const fall of due) {
          open.push({
            from: start + fall,
            to: start + fall + care.lasts,
            activity: index,
            care: which,
            due: due.length,
          });
        }
      });
    });
    open.sort((a, b) => a.from - b.from);
    let running: typeof open = [];
    for (const visit of open) {
      running = running.filter((other) => other.to > visit.from);
      running.push(visit);
      if (running.length > cooks) {
        found.push(this.#settle(visit.activity, visit.care, visit.due));
        return;
      }
    }
  }

  #settle(activity: number, which: number, due: number): Conflict {
    const { network } = this.#at;
    const care = network.problem.activities[activity]?.care[which];
    const from = network.starts[activity] ?? ORIGIN;
    const to = network.ends[activity] ?? ORIGIN;
    const falls = care?.falls ?? [];
    const last = falls[due - 1];
    const next = falls[due];
    const atLeast: HardRule[] = last === undefined ? [] : [{ from, to, gap: last + 1 }];
    const atMost: HardRule[] = next === undefined ? [] : [{ from: to, to: from, gap: -next }];
    const choices: Choice[] = [{ rules: [...atLeast, ...atMost], care: { activity, care: which, visits: due } }];
    if (last !== undefined) choices.push({ rules: [{ from: to, to: from, gap: -last }] });
    if (next !== undefined) choices.push({ rules: [{ from, to, gap: next + 1 }] });
    return { size: Infinity, choices };
  }
}

/** The rules that tie settled visits to what they care for. */
export function careRules(
  network: Network,
  activity: number,
  which: number,
  count: number,
): { job: Job; rules: HardRule[] }[] {
  const care = network.problem.activities[activity]?.care[which];
  if (!care) return [];
  const from = network.starts[activity] ?? ORIGIN;
  const to = network.ends[activity] ?? ORIGIN;
  return care.falls.slice(0, count).map((fall, visit) => {
    const job = careJob(network, activity, which, visit);
    return {
      job,
      rules: [
        { from, to: job.start, gap: fall - care.give },
        { from: job.start, to: from, gap: -(fall + care.give) },
        { from: job.end, to, gap: 0 },
      ],
    };
  });
}

const ORIGIN: Point = { node: 0, offset: 0 };

export const momentOf = (point: Point, times: Float64Array): number => (times[point.node] ?? 0) + point.offset;
const later = (point: Point, by: Minute): Point => ({ node: point.node, offset: point.offset + by });
const notAfter = (point: Point, at: Minute): HardRule => ({ from: point, to: ORIGIN, gap: -at });
const notBefore = (point: Point, at: Minute): HardRule => ({ from: ORIGIN, to: point, gap: at });
const moment = (point: Point, at: number): { from: Point; to: Point; at: [number, number] } => ({
  from: point,
  to: point,
  at: [at, at],
});

/** The stretch of sleep that a stretch of time runs into; a moment at its very edge is awake. */
export function sleepAt(sleep: readonly Sleep[], from: number, to: number): Sleep | undefined {
  let low = 0;
  let high = sleep.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sleep[middle]?.to ?? 0) > from) high = middle;
    else low = middle + 1;
  }
  const next = sleep[low];
  return next && next.from < to ? next : undefined;
}
