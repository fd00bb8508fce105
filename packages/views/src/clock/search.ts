import {
  careRules,
  ConflictFinder,
  momentOf,
  type Arrangement,
  type Choice,
  type Conflict,
  type HardRule,
} from './conflicts.js';
import { jobsOf, type Job } from './jobs.js';
import type { Network, RuleSource } from './network.js';
import type { Minute } from './problem.js';
import { Tension } from './tension.js';

/** When to give up looking for something better. */
export interface Budget {
  /** Most steps of the search. */
  readonly steps: number;
  /** Asked every so often; true ends the search. The core has no clock of its own. */
  readonly expired?: () => boolean;
}

/** The cheapest plan found, and what is known about how cheap any plan can be. */
export interface Found {
  /** Moments from the anchor. */
  readonly starts: readonly Minute[];
  readonly ends: readonly Minute[];
  /** Starts of the care visits, by activity and care. */
  readonly care: readonly (readonly (readonly Minute[])[])[];
  /** Oven by activity; -1 where none is needed. */
  readonly ovens: readonly number[];
  /** The moment that ready times are reckoned from; 0 when they are given. */
  readonly service: Minute;
  /** In the units of prices.ts, without the visits to the kitchen. */
  readonly cost: number;
}

export interface SearchResult {
  readonly found: Found | undefined;
  /** No plan costs less than this. */
  readonly bound: number;
  /** Whether the search was carried to its end: then `found` is the best, or there is no plan at all. */
  readonly complete: boolean;
  readonly steps: number;
  /** The first rule that could not hold with those before it, when even the rules alone contradict each other. */
  readonly contradiction: RuleSource | undefined;
}

/** Finds the cheapest plan of a network: branch and bound over orders, nights, ovens and care. */
export function search(network: Network, budget: Budget): SearchResult {
  if (network.contradiction) return nothing(network.contradiction);
  const tension = new Tension(network.nodes);
  for (const rule of network.rules) {
    const { from, to, gap, price } = rule;
    if (!tension.add(from.node, to.node, gap + from.offset - to.offset, price)) return nothing(rule.source);
  }
  return new Search(network, tension, budget).run();
}

function nothing(contradiction: RuleSource): SearchResult {
  return { found: undefined, bound: Infinity, complete: true, steps: 0, contradiction };
}

/** How many conflicts are tried out before one is chosen to branch on. */
const TRIED = 3;

interface Branch {
  readonly choice: Choice;
  readonly bound: number;
}

class Search {
  readonly #tension: Tension;
  readonly #budget: Budget;
  readonly #arrangement: Arrangement;
  readonly #finder: ConflictFinder;

  #best: Found | undefined;
  #limit = Infinity;
  #steps = 0;
  #stopped = false;
  #open = Infinity;

  constructor(network: Network, tension: Tension, budget: Budget) {
    this.#tension = tension;
    this.#budget = budget;
    const jobs = jobsOf(network);
    const ovens = network.problem.kitchen.ovens;
    this.#arrangement = {
      network,
      jobs,
      ovenOf: jobs.map((job) => (job.oven && ovens.length === 1 ? 0 : -1)),
      visits: network.problem.activities.map((activity) => activity.care.map(() => -1)),
    };
    this.#finder = new ConflictFinder(this.#arrangement);
  }

  run(): SearchResult {
    const lowest = this.#tension.cost;
    this.#explore();
    return {
      found: this.#best,
      bound: this.#stopped ? Math.max(lowest, Math.min(this.#open, this.#limit)) : (this.#best?.cost ?? Infinity),
      complete: !this.#stopped,
      steps: this.#steps,
      contradiction: undefined,
    };
  }

  #explore(): void {
    this.#steps++;
    if (this.#steps > this.#budget.steps || ((this.#steps & 63) === 0 && this.#budget.expired?.() === true)) {
      this.#stopped = true;
    }
    if (this.#stopped) {
      this.#open = Math.min(this.#open, this.#tension.cost);
      return;
    }
    const conflicts = this.#finder.find(this.#tension.times);
    if (conflicts.length === 0) {
      this.#record();
      return;
    }
    const branches = this.#choose(conflicts);
    for (const branch of branches) {
      if (branch.bound >= this.#limit) continue;
      if (this.#stopped) {
        this.#open = Math.min(this.#open, branch.bound);
        continue;
      }
      this.#with(branch.choice, () => this.#explore());
    }
  }

  /** Tries out the weightiest conflicts and takes the one whose cheapest way out costs most. */
  #choose(conflicts: readonly Conflict[]): Branch[] {
    let chosen: Branch[] = [];
    let worst = -1;
    for (const conflict of conflicts.slice(0, TRIED)) {
      const branches = conflict.choices
        .map((choice): Branch => ({ choice, bound: this.#try(choice) }))
        .filter((branch) => branch.bound < this.#limit)
        .sort((a, b) => a.bound - b.bound);
      if (branches.length === 0) return [];
      // One way out only: take it at once.
      if (branches.length === 1) return branches;
      const least = branches[0]?.bound ?? 0;
      if (least > worst) {
        worst = least;
        chosen = branches;
      }
    }
    return chosen;
  }

  #try(choice: Choice): number {
    let bound = Infinity;
    this.#with(choice, () => {
      bound = this.#tension.cost;
    });
    return bound;
  }

  /** Runs `then` with the choice made, unless it cannot be made below the limit; leaves no trace. */
  #with(choice: Choice, then: () => void): void {
    const { jobs, ovenOf, visits } = this.#arrangement;
    this.#tension.save();
    const count = jobs.length;
    if (choice.oven) ovenOf[choice.oven.job] = choice.oven.oven;
    let holds = this.#addAll(choice.rules);
    if (holds && choice.care) {
      const { activity, care, visits: number } = choice.care;
      (visits[activity] ?? [])[care] = number;
      holds = this.#addCare(activity, care, number);
    }
    if (holds && this.#tension.cost < this.#limit) then();
    if (choice.care) (visits[choice.care.activity] ?? [])[choice.care.care] = -1;
    if (choice.oven) ovenOf[choice.oven.job] = -1;
    jobs.length = count;
    this.#tension.restore();
  }

  #addAll(rules: readonly HardRule[]): boolean {
    return rules.every(({ from, to, gap }) =>
      this.#tension.add(from.node, to.node, gap + from.offset - to.offset, Infinity, this.#limit),
    );
  }

  #addCare(activity: number, care: number, number: number): boolean {
    const { network, jobs } = this.#arrangement;
    const times = this.#tension.times;
    for (const { job, rules } of careRules(network, activity, care, number)) {
      // The node is tied to nothing yet, so it may be put where it falls due.
      const fall = network.problem.activities[activity]?.care[care]?.falls[job.care?.visit ?? 0] ?? 0;
      const start = network.starts[activity];
      times[job.start.node] = (start ? momentOf(start, times) : 0) + fall;
      if (!this.#addAll(rules)) return false;
      jobs.push(job);
    }
    return true;
  }

  /** No conflict is left: a plan, cheaper than any before. */
  #record(): void {
    const { network, jobs, ovenOf } = this.#arrangement;
    this.#limit = this.#tension.cost;
    const ovens = network.problem.activities.map(() => -1);
    jobs.forEach((job, index) => {
      if (!job.oven) return;
      const settled = ovenOf[index] ?? -1;
      ovens[job.activity] = settled >= 0 ? settled : (this.#finder.lastPlacing.get(index) ?? 0);
    });
    this.#best = readPlan(network, this.#tension.times, jobs, ovens, this.#limit);
  }
}

/** The plan that the moments make. Visits of care that are no jobs of their own fall where they are due. */
export function readPlan(
  network: Network,
  times: Float64Array,
  jobs: readonly Job[],
  ovens: readonly number[],
  cost: number,
): Found {
  const anchor = times[0] ?? 0;
  const starts = network.starts.map((point) => momentOf(point, times) - anchor);
  const ends = network.ends.map((point) => momentOf(point, times) - anchor);
  const care = network.problem.activities.map((activity, index) => {
    const start = starts[index] ?? 0;
    const length = (ends[index] ?? 0) - start;
    return activity.care.map((one) => one.falls.filter((fall) => fall < length).map((fall) => start + fall));
  });
  for (const job of jobs) {
    const visits = job.care && care[job.activity]?.[job.care.care];
    if (job.care && visits) visits[job.care.visit] = momentOf(job.start, times) - anchor;
  }
  return { starts, ends, care, ovens, service: momentOf(network.service, times) - anchor, cost };
}
