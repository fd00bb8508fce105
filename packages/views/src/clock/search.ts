import { ConflictFinder, momentOf, type Arrangement, type Choice, type Conflict, type HardRule } from './conflicts.js';
import { jobsOf } from './jobs.js';
import type { Network, RuleSource } from './network.js';
import { VISIT, VISIT_GAP } from './prices.js';
import type { Minute } from './problem.js';
import { Tension } from './tension.js';
import { possibleNeighbours } from './visits.js';

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
  readonly service: Minute;
  readonly visits: number;
  /** In the units of prices.ts. */
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

/** Finds the cheapest plan of a network: branch and bound over orders, nights, ovens, care and visits. */
export function search(network: Network, budget: Budget, options: { readonly visits: boolean }): SearchResult {
  if (network.contradiction) return nothing(network.contradiction);
  const tension = new Tension(network.nodes);
  for (const rule of network.rules) {
    const { from, to, gap, price } = rule;
    if (!tension.add(from.node, to.node, gap + from.offset - to.offset, price)) return nothing(rule.source);
  }
  return new Search(network, tension, budget, options.visits).run();
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
  readonly #network: Network;
  readonly #tension: Tension;
  readonly #budget: Budget;
  readonly #arrangement: Arrangement;
  readonly #finder: ConflictFinder;
  /** Jobs of hands, and for each the jobs that may come within an hour before it. */
  readonly #hands: readonly number[];
  readonly #neighbours: ReadonlyMap<number, readonly number[]>;
  /** What is settled about visits: 'own' (paid for) or 'joined'. */
  readonly #visit = new Map<number, 'own' | 'joined'>();
  #own = 0;

  #best: Found | undefined;
  #bestPath: Choice[] = [];
  readonly #path: Choice[] = [];
  #limit = Infinity;
  #steps = 0;
  #stopped = false;
  #open = Infinity;

  constructor(network: Network, tension: Tension, budget: Budget, visits: boolean) {
    this.#network = network;
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
    this.#hands = visits ? jobs.flatMap((job, index) => (job.cooks > 0 ? [index] : [])) : [];
    this.#neighbours = visits ? possibleNeighbours(network, jobs, this.#hands) : new Map();
  }

  run(): SearchResult {
    for (const job of this.#hands) {
      if (this.#neighbours.get(job)?.length === 0) {
        this.#visit.set(job, 'own');
        this.#own++;
      }
    }
    const lowest = this.#bound();
    this.#explore();
    if (this.#best) this.#tidy();
    return {
      found: this.#best,
      bound: this.#stopped ? Math.max(lowest, Math.min(this.#open, this.#limit)) : (this.#best?.cost ?? Infinity),
      complete: !this.#stopped,
      steps: this.#steps,
      contradiction: undefined,
    };
  }

  /** No plan below this point of the search costs less. */
  #bound(): number {
    return this.#tension.cost + (this.#hands.length > 0 ? VISIT * Math.max(1, this.#own) : 0);
  }

  #explore(): void {
    this.#steps++;
    if (this.#steps > this.#budget.steps || ((this.#steps & 63) === 0 && this.#budget.expired?.() === true)) {
      this.#stopped = true;
    }
    if (this.#stopped) {
      this.#open = Math.min(this.#open, this.#bound());
      return;
    }
    const conflicts = this.#finder.find(this.#tension.times);
    const branches = conflicts.length > 0 ? this.#choose(conflicts) : this.#finish();
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
      bound = this.#bound();
    });
    return bound;
  }

  /** Runs `then` with the choice made, unless it cannot be made below the limit; leaves no trace. */
  #with(choice: Choice, then: () => void): void {
    const { jobs, ovenOf, visits } = this.#arrangement;
    this.#tension.save();
    const count = jobs.length;
    if (choice.oven) this.#place(choice.oven.job, choice.oven.oven, ovenOf);
    if (choice.visit) this.#setVisit(choice.visit.job, choice.visit.own);
    this.#path.push(choice);
    let holds = this.#addAll(choice.rules);
    if (holds && choice.care) {
      const { activity, care, visits: number } = choice.care;
      (visits[activity] ?? [])[care] = number;
      holds = this.#addCare(activity, care, number);
    }
    if (holds && this.#bound() < this.#limit) then();
    this.#path.pop();
    if (choice.care) (visits[choice.care.activity] ?? [])[choice.care.care] = -1;
    if (choice.visit) this.#unsetVisit(choice.visit.job);
    if (choice.oven) ovenOf[choice.oven.job] = -1;
    jobs.length = count;
    this.#tension.restore();
  }

  #place(job: number, oven: number, ovenOf: number[]): void {
    ovenOf[job] = oven;
  }

  #setVisit(job: number, own: boolean): void {
    this.#visit.set(job, own ? 'own' : 'joined');
    if (own) this.#own++;
  }

  #unsetVisit(job: number): void {
    if (this.#visit.get(job) === 'own') this.#own--;
    this.#visit.delete(job);
  }

  #addAll(rules: readonly HardRule[]): boolean {
    return rules.every(({ from, to, gap }) =>
      this.#tension.add(from.node, to.node, gap + from.offset - to.offset, Infinity, this.#limit),
    );
  }

  #addCare(activity: number, care: number, number: number): boolean {
    const { network, jobs } = this.#arrangement;
    const times = this.#tension.times;
    for (const { job, rules } of ConflictFinder.careRules(network, activity, care, number)) {
      // The node is tied to nothing yet, so it may be put where it falls due.
      const fall = network.problem.activities[activity]?.care[care]?.falls[job.care?.visit ?? 0] ?? 0;
      const start = network.starts[activity];
      times[job.start.node] = (start ? momentOf(start, times) : 0) + fall;
      if (!this.#addAll(rules)) return false;
      jobs.push(job);
    }
    return true;
  }

  /** No conflict is left: a plan. What remains is whether fewer visits to the kitchen would make it cheaper. */
  #finish(): Branch[] {
    const { jobs } = this.#arrangement;
    const times = this.#tension.times;
    const start = (job: number): number => momentOf(jobs[job]?.start ?? ORIGIN, times);
    const end = (job: number): number => momentOf(jobs[job]?.end ?? ORIGIN, times);
    const order = [...this.#hands].sort(
      (a, b) => start(a) - start(b) || joined(this.#visit.get(a)) - joined(this.#visit.get(b)) || a - b,
    );
    let until = -Infinity;
    const begins: number[] = [];
    for (const job of order) {
      if (start(job) - until > VISIT_GAP) begins.push(job);
      until = Math.max(until, end(job));
    }
    const cost = this.#tension.cost + VISIT * begins.length;
    if (cost < this.#limit) this.#record(cost, begins.length);
    if (this.#bound() >= this.#limit) return [];
    const open = begins.filter((job) => !this.#visit.has(job));
    let fewest: number | undefined;
    for (const job of open) {
      const count = this.#neighbours.get(job)?.length ?? 0;
      if (fewest === undefined || count < (this.#neighbours.get(fewest)?.length ?? 0)) fewest = job;
    }
    if (fewest === undefined) return this.#split(order);
    return this.#visitBranches(fewest);
  }

  #visitBranches(job: number): Branch[] {
    const { jobs } = this.#arrangement;
    const choices: Choice[] = [{ rules: [], visit: { job, own: true } }];
    for (const before of this.#neighbours.get(job) ?? []) {
      const a = jobs[before];
      const b = jobs[job];
      if (!a || !b) continue;
      choices.push({
        rules: [
          { from: a.start, to: b.start, gap: 0 },
          { from: b.start, to: a.end, gap: -VISIT_GAP },
        ],
        visit: { job, own: false },
      });
    }
    return choices
      .map((choice): Branch => ({ choice, bound: this.#try(choice) }))
      .filter((branch) => branch.bound < this.#limit)
      .sort((a, b) => a.bound - b.bound);
  }

  /** Every beginning is settled, yet the bound counts fewer: settle any job that is still open. */
  #split(order: readonly number[]): Branch[] {
    const open = order.find((job) => !this.#visit.has(job));
    return open === undefined ? [] : this.#visitBranches(open);
  }

  #record(cost: number, visits: number): void {
    this.#limit = cost;
    this.#bestPath = [...this.#path];
    this.#best = this.#read(this.#tension.times, cost, visits);
  }

  #read(times: Float64Array, cost: number, visits: number): Found {
    const { network, jobs, ovenOf } = this.#arrangement;
    const anchor = times[0] ?? 0;
    const ovens = network.problem.activities.map(() => -1);
    jobs.forEach((job, index) => {
      if (!job.oven) return;
      const settled = ovenOf[index] ?? -1;
      ovens[job.activity] = settled >= 0 ? settled : (this.#finder.lastPlacing.get(index) ?? 0);
    });
    const starts = network.starts.map((point) => momentOf(point, times) - anchor);
    const ends = network.ends.map((point) => momentOf(point, times) - anchor);
    const care = network.problem.activities.map((activity, index) =>
      activity.care.map((one, which) => {
        const length = (ends[index] ?? 0) - (starts[index] ?? 0);
        const falls = one.falls.filter((fall) => fall < length).map((fall) => (starts[index] ?? 0) + fall);
        for (const job of jobs) {
          if (job.activity === index && job.care?.care === which) {
            falls[job.care.visit] = momentOf(job.start, times) - anchor;
          }
        }
        return falls;
      }),
    );
    return { starts, ends, care, ovens, service: momentOf(network.service, times) - anchor, visits, cost };
  }

  /**
   * Among the plans that cost the same and keep the same order, brings care nearest to where it falls due. Nothing is
   * gained in points, but a jar that is turned every day is turned at the same hour.
   */
  #tidy(): void {
    const best = this.#best;
    const settled = this.#bestPath.some((choice) => choice.care);
    if (!best || !settled) return;
    const network = this.#network;
    this.#limit = Infinity;
    const tidy = new Tension(network.nodes);
    const scale = 1_000_000;
    for (const { from, to, gap, price } of network.rules) {
      tidy.add(from.node, to.node, gap + from.offset - to.offset, price * scale);
    }
    const { jobs } = this.#arrangement;
    const count = jobs.length;
    let holds = true;
    const add = ({ from, to, gap }: HardRule, price: number): void => {
      holds &&= tidy.add(from.node, to.node, gap + from.offset - to.offset, price);
    };
    for (const choice of this.#bestPath) {
      for (const rule of choice.rules) add(rule, Infinity);
      if (!choice.care) continue;
      const { activity, care, visits } = choice.care;
      const from = network.starts[activity] ?? ORIGIN;
      for (const { job, rules } of ConflictFinder.careRules(network, activity, care, visits)) {
        const fall = network.problem.activities[activity]?.care[care]?.falls[job.care?.visit ?? 0] ?? 0;
        for (const rule of rules) add(rule, Infinity);
        add({ from, to: job.start, gap: fall }, 1);
        add({ from: job.start, to: from, gap: -fall }, 1);
        jobs.push(job);
      }
    }
    // The small prices may never buy a dearer plan.
    const extra = tidy.cost - (best.cost - VISIT * (this.#hands.length > 0 ? best.visits : 0)) * scale;
    if (holds && extra >= 0 && extra < scale && this.#finder.find(tidy.times).length === 0) {
      this.#best = this.#read(tidy.times, best.cost, best.visits);
    }
    jobs.length = count;
  }
}

const ORIGIN = { node: 0, offset: 0 };
const joined = (state: 'own' | 'joined' | undefined): number => (state === 'joined' ? 1 : 0);
