import { careRules, momentOf } from './conflicts.js';
import { jobsOf, shareOven, turnDial, type Job } from './jobs.js';
import type { Network, Point } from './network.js';
import { VISIT, VISIT_GAP } from './prices.js';
import type { Minute, Sleep } from './problem.js';
import { readPlan, type Budget, type Found } from './search.js';
import { Tension } from './tension.js';

/** A plan with its hands-on work drawn together. */
export interface Gathered {
  readonly plan: Found;
  /** How often somebody has to come into the kitchen for hands-on work. */
  readonly visits: number;
  /** Whether no other way of drawing work together, in the same order, is worth more. */
  readonly complete: boolean;
  readonly steps: number;
}

/**
 * Draws hands-on work together: each visit to the kitchen costs 30 points, and what was best for the waits may be given
 * up for one visit fewer. The order of the plan is kept: whatever was done in one waking day stays in it, and of two
 * things that need the same cook, ring, tool or oven the first stays the first. So no new conflict can come of it.
 */
export function gather(network: Network, plan: Found, budget: Budget): Gathered {
  return new Gathering(network, plan, budget).run();
}

interface OpenJob {
  readonly job: number;
  readonly joins: readonly { readonly before: number; readonly bound: number }[];
}

interface KeptRule {
  readonly from: Point;
  readonly to: Point;
  readonly gap: Minute;
}

class Gathering {
  readonly #network: Network;
  readonly #plan: Found;
  readonly #budget: Budget;
  readonly #jobs: readonly Job[];
  readonly #kept: readonly KeptRule[];
  readonly #tension: Tension;
  readonly #hands: readonly number[];
  /** For each job of hands, those that may come before it in the same visit. */
  readonly #neighbours: Map<number, readonly number[]>;
  /** Groups of hands no two of which can ever meet in one visit, by job; each is a visit at least. */
  #groupOf = new Map<number, number>();
  /** Jobs settled to begin a visit, by group. */
  #ownIn: number[] = [];
  readonly #settled = new Map<number, 'own' | 'joined'>();
  readonly #path: KeptRule[] = [];
  #best: { readonly plan: Found; readonly visits: number; readonly path: readonly KeptRule[] } | undefined;
  #limit = Infinity;
  #steps = 0;
  #stopped = false;

  constructor(network: Network, plan: Found, budget: Budget) {
    this.#network = network;
    this.#plan = plan;
    this.#budget = budget;
    const care = careJobs(network, plan);
    this.#jobs = [...jobsOf(network), ...care.jobs];
    this.#kept = [...care.rules, ...keptOrder(network, this.#jobs, plan), ...keptDays(network, this.#jobs, plan)];
    this.#tension = this.#build(1, []);
    this.#hands = this.#jobs.flatMap((job, index) => (job.cooks > 0 && !job.care ? [index] : []));
    this.#neighbours = this.#findNeighbours();
  }

  run(): Gathered {
    this.#group();
    const begins = this.#beginnings().length;
    this.#record(this.#tension.cost + VISIT * begins, begins);
    this.#narrow();
    this.#explore();
    const best = this.#best;
    if (!best) throw new RangeError('a plan cannot be gathered from moments that break its own rules');
    return {
      plan: this.#tidied(best.plan, best.path),
      visits: best.visits,
      complete: !this.#stopped,
      steps: this.#steps,
    };
  }

  /** Strikes out neighbours that would cost more than the best plan so far, until none is left to strike out. */
  #narrow(): void {
    for (let again = true; again;) {
      again = false;
      for (const [job, neighbours] of this.#neighbours) {
        const alive = neighbours.filter((before) => this.#join(before, job, () => undefined));
        if (alive.length === neighbours.length) continue;
        again = true;
        this.#neighbours.set(job, alive);
      }
      if (again) this.#group();
    }
  }

  /** Puts hands that may meet, by way of others if need be, into one group. */
  #group(): void {
    const groupOf = new Map(this.#hands.map((job) => [job, job]));
    const rootOf = (job: number): number => {
      let at = job;
      for (let up = groupOf.get(at); up !== undefined && up !== at; up = groupOf.get(at)) at = up;
      return at;
    };
    for (const [job, neighbours] of this.#neighbours) {
      for (const before of neighbours) groupOf.set(rootOf(before), rootOf(job));
    }
    const roots = [...new Set(this.#hands.map(rootOf))];
    this.#groupOf = new Map(this.#hands.map((job) => [job, roots.indexOf(rootOf(job))]));
    this.#ownIn = roots.map(() => 0);
  }

  /** The rules of the network and those that keep the order, with prices so many times as high. */
  #build(scale: number, more: readonly KeptRule[]): Tension {
    const tension = new Tension(this.#network.nodes);
    for (const job of this.#jobs) {
      if (job.care) tension.times[job.start.node] = startIn(this.#plan, job);
    }
    for (const { from, to, gap, price } of this.#network.rules) addRule(tension, { from, to, gap }, price * scale);
    for (const rule of [...this.#kept, ...more]) addRule(tension, rule, Infinity);
    return tension;
  }

  /**
   * For each job of hands, those that may come before it in the same visit; not one that must be followed by another
   * of them, for then that other is nearer.
   */
  #findNeighbours(): Map<number, number[]> {
    const start = (index: number): number => startIn(this.#plan, this.#jobs[index]);
    const end = (index: number): number => endIn(this.#plan, this.#jobs[index]);
    const sameDay = (a: number, b: number): boolean =>
      !this.#network.problem.sleep.some((sleep) => end(a) <= sleep.from && start(b) >= sleep.to);
    return new Map(
      this.#hands.map((job) => {
        const before = this.#hands.filter(
          (other) =>
            other !== job &&
            sameDay(other, job) &&
            (end(other) <= start(job) || overlap(this.#plan, this.#jobs, other, job)),
        );
        const nearest = before.filter(
          (other) =>
            !before.some((nearer) => nearer !== other && end(other) <= start(nearer) && end(nearer) <= start(job)),
        );
        return [job, nearest];
      }),
    );
  }

  #bound(): number {
    let visits = 0;
    for (const own of this.#ownIn) visits += Math.max(1, own);
    return this.#tension.cost + VISIT * visits;
  }

  #explore(): void {
    this.#steps++;
    if (this.#steps > this.#budget.steps || ((this.#steps & 63) === 0 && this.#budget.expired?.() === true)) {
      this.#stopped = true;
    }
    const begins = this.#beginnings();
    const cost = this.#tension.cost + VISIT * begins.length;
    if (cost < this.#limit) this.#record(cost, begins.length);
    if (this.#stopped || this.#bound() >= this.#limit) return;
    const forced: number[] = [];
    const open = this.#mostTelling(begins, forced);
    if (open !== undefined && this.#bound() < this.#limit) {
      for (const { before } of open.joins) this.#join(before, open.job, () => this.#explore());
      this.#settle(open.job, 'own');
      if (this.#bound() < this.#limit) this.#explore();
      this.#unsettle(open.job);
    }
    for (const job of forced) this.#unsettle(job);
  }

  /**
   * Of the jobs that begin a visit and are not settled, the one that is dearest to join to another; those that cannot be
   * joined to any are settled on the way, and listed in `forced`.
   */
  #mostTelling(begins: readonly number[], forced: number[]): OpenJob | undefined {
    let most: OpenJob | undefined;
    for (const job of begins) {
      if (this.#settled.has(job)) continue;
      const joins: { before: number; bound: number }[] = [];
      for (const before of this.#neighbours.get(job) ?? []) {
        this.#join(before, job, () => joins.push({ before, bound: this.#bound() }));
      }
      if (joins.length === 0) {
        this.#settle(job, 'own');
        forced.push(job);
        if (this.#bound() >= this.#limit) return undefined;
        continue;
      }
      joins.sort((x, y) => x.bound - y.bound);
      if (!most || (joins[0]?.bound ?? 0) > (most.joins[0]?.bound ?? 0)) most = { job, joins };
    }
    return most;
  }

  /** Does something with `job` in the same visit as `before`, leaving no trace. @returns whether that may be worth it. */
  #join(before: number, job: number, then: () => void): boolean {
    const a = this.#jobs[before];
    const b = this.#jobs[job];
    if (!a || !b || this.#stopped) return false;
    const rules: KeptRule[] = [
      // Of two that start together, the one that is listed first counts as the first.
      { from: a.start, to: b.start, gap: before < job ? 0 : 1 },
      { from: b.start, to: a.end, gap: -VISIT_GAP },
    ];
    this.#tension.save();
    this.#settle(job, 'joined');
    this.#path.push(...rules);
    const worth =
      rules.every((rule) => addRule(this.#tension, rule, Infinity, this.#limit)) && this.#bound() < this.#limit;
    if (worth) then();
    this.#path.length -= rules.length;
    this.#unsettle(job);
    this.#tension.restore();
    return worth;
  }

  #settle(job: number, as: 'own' | 'joined'): void {
    this.#settled.set(job, as);
    if (as === 'own') this.#count(job, 1);
  }

  #unsettle(job: number): void {
    if (this.#settled.get(job) === 'own') this.#count(job, -1);
    this.#settled.delete(job);
  }

  #count(job: number, by: number): void {
    const group = this.#groupOf.get(job) ?? 0;
    this.#ownIn[group] = (this.#ownIn[group] ?? 0) + by;
  }

  /** The jobs that begin a visit, in order. */
  #beginnings(): number[] {
    const times = this.#tension.times;
    const moment = (point: Point | undefined): number => (point ? momentOf(point, times) : 0);
    const start = (job: number): number => moment(this.#jobs[job]?.start);
    const order = [...this.#hands].sort((a, b) => start(a) - start(b) || a - b);
    const begins: number[] = [];
    let until = -Infinity;
    for (const job of order) {
      if (start(job) - until > VISIT_GAP) begins.push(job);
      until = Math.max(until, moment(this.#jobs[job]?.end));
    }
    return begins;
  }

  #record(cost: number, visits: number): void {
    this.#limit = cost;
    const plan = readPlan(this.#network, this.#tension.times, this.#jobs, this.#plan.ovens, this.#tension.cost);
    this.#best = { plan, visits, path: [...this.#path] };
  }

  /**
   * Among the plans that are worth the same, the one whose care is nearest to where it falls due: a jar that is turned
   * every day is turned at the same hour. The small prices are a millionth of the others, and a dearer plan is refused.
   */
  #tidied(plan: Found, path: readonly KeptRule[]): Found {
    const care = this.#jobs.filter((job) => job.care);
    if (care.length === 0) return plan;
    const scale = 1_000_000;
    const tension = this.#build(scale, path);
    for (const job of care) {
      const from = this.#network.starts[job.activity] ?? ORIGIN;
      const due = dueOf(this.#network, job);
      addRule(tension, { from, to: job.start, gap: due }, 1);
      addRule(tension, { from: job.start, to: from, gap: -due }, 1);
    }
    const extra = tension.cost - plan.cost * scale;
    if (extra < 0 || extra >= scale) return plan;
    return readPlan(this.#network, tension.times, this.#jobs, this.#plan.ovens, plan.cost);
  }
}

const ORIGIN: Point = { node: 0, offset: 0 };

function addRule(tension: Tension, { from, to, gap }: KeptRule, price: number, limit = Infinity): boolean {
  return tension.add(from.node, to.node, gap + from.offset - to.offset, price, limit);
}

function dueOf(network: Network, job: Job): Minute {
  const care = network.problem.activities[job.activity]?.care[job.care?.care ?? 0];
  return care?.falls[job.care?.visit ?? 0] ?? 0;
}

function startIn(plan: Found, job: Job | undefined): Minute {
  if (!job) return 0;
  const { activity, care } = job;
  return (care ? plan.care[activity]?.[care.care]?.[care.visit] : plan.starts[activity]) ?? 0;
}

const endIn = (plan: Found, job: Job | undefined): Minute =>
  job ? startIn(plan, job) + (job.care ? job.end.offset - job.start.offset : length(plan, job.activity)) : 0;

const length = (plan: Found, activity: number): Minute => (plan.ends[activity] ?? 0) - (plan.starts[activity] ?? 0);

function overlap(plan: Found, jobs: readonly Job[], a: number, b: number): boolean {
  return startIn(plan, jobs[a]) < endIn(plan, jobs[b]) && startIn(plan, jobs[b]) < endIn(plan, jobs[a]);
}

/** The visits of care of a plan as jobs, as many as there are, and the rules that tie them. */
function careJobs(network: Network, plan: Found): { jobs: Job[]; rules: KeptRule[] } {
  const jobs: Job[] = [];
  const rules: KeptRule[] = [];
  network.problem.activities.forEach((activity, index) => {
    activity.care.forEach((care, which) => {
      const count = plan.care[index]?.[which]?.length ?? 0;
      const from = network.starts[index] ?? ORIGIN;
      const to = network.ends[index] ?? ORIGIN;
      const last = care.falls[count - 1];
      const next = care.falls[count];
      if (last !== undefined) rules.push({ from, to, gap: last + 1 });
      if (next !== undefined) rules.push({ from: to, to: from, gap: -next });
      for (const visit of careRules(network, index, which, count)) {
        jobs.push(visit.job);
        rules.push(...visit.rules);
      }
    });
  });
  return { jobs, rules };
}

/** Of two jobs that need the same thing, the one that ended before the other began goes on doing so. */
function keptOrder(network: Network, jobs: readonly Job[], plan: Found): KeptRule[] {
  const rules: KeptRule[] = [];
  jobs.forEach((a, i) => {
    jobs.forEach((b, j) => {
      if (i === j || endIn(plan, a) > startIn(plan, b)) return;
      const turn = turnBetween(network, plan, a, b);
      const shares =
        (a.cooks > 0 && b.cooks > 0) || (a.rings > 0 && b.rings > 0) || a.tools.some((tool) => b.tools.includes(tool));
      if (turn !== undefined || shares) rules.push({ from: a.end, to: b.start, gap: turn ?? 0 });
    });
  });
  return rules;
}

/** Minutes to turn the dial between two jobs in one oven; undefined when they are not in one. */
function turnBetween(network: Network, plan: Found, a: Job, b: Job): Minute | undefined {
  const index = plan.ovens[a.activity] ?? -1;
  const oven = network.problem.kitchen.ovens[index];
  if (!oven || !a.oven || !b.oven || plan.ovens[b.activity] !== index) return undefined;
  const stays = network.problem.activities[a.activity]?.id === stayedFrom(network, b);
  return stays || shareOven(a.oven, b.oven, oven) ? 0 : turnDial(a.oven, b.oven);
}

function stayedFrom(network: Network, job: Job): string | undefined {
  const id = network.problem.activities[job.activity]?.id;
  return network.problem.links.find((link) => link.reason === 'in-the-oven' && link.to === id)?.from;
}

/** Whatever is watched stays in its waking day; what was left overnight is left over the same night. */
function keptDays(network: Network, jobs: readonly Job[], plan: Found): KeptRule[] {
  const { sleep, activities } = network.problem;
  const rules: KeptRule[] = [];
  const awake = (point: Point, at: Minute): void => {
    const before = sleep.findLast((stretch) => stretch.to <= at);
    const after = sleep.find((stretch) => stretch.from >= at);
    if (before) rules.push({ from: ORIGIN, to: point, gap: before.to });
    if (after) rules.push({ from: point, to: ORIGIN, gap: -after.from });
  };
  for (const job of jobs) {
    if (job.watch === 'none') continue;
    const heating = job.oven?.heating ?? 0;
    if (heating > 0) awake({ node: job.start.node, offset: job.start.offset - heating }, startIn(plan, job) - heating);
    awake(job.start, startIn(plan, job));
    awake(job.end, endIn(plan, job));
  }
  activities.forEach((activity, index) => {
    const night = activity.coversSleep ? coveredBy(sleep, plan.starts[index] ?? 0, plan.ends[index] ?? 0) : undefined;
    if (!night) return;
    rules.push({ from: network.starts[index] ?? ORIGIN, to: ORIGIN, gap: -night.from });
    rules.push({ from: ORIGIN, to: network.ends[index] ?? ORIGIN, gap: night.to });
  });
  return rules;
}

function coveredBy(sleep: readonly Sleep[], from: Minute, to: Minute): Sleep | undefined {
  return sleep.find((stretch) => from <= stretch.from && to >= stretch.to);
}
