import { gather } from './gather.js';
import { buildNetwork, type Aim } from './network.js';
import { POINT, priceEarly, quotientUp, VISIT } from './prices.js';
import type { Link, Minute, PlanProblem } from './problem.js';
import { search, type Budget, type Found, type SearchResult } from './search.js';

/** How good a plan is known to be. */
export interface Quality {
  /** Proven: no other plan is worth more, and in its order no other way of drawing hands-on work together. */
  readonly optimal: boolean;
  /** Points against the plan, visits to the kitchen among them; without what a dish is done too early. */
  readonly points: number;
  /** At most so many points better could a plan be that was not found, being done too early counted; 0 when optimal. */
  readonly perhapsBetterBy: number;
  /** The same in hundredths of all that this plan costs, rounded up. */
  readonly perhapsBetterPercent: number;
  /** How often somebody comes into the kitchen for hands-on work. */
  readonly visits: number;
  readonly steps: number;
}

export interface Solution {
  readonly problem: PlanProblem;
  readonly plan: Found;
  readonly quality: Quality;
  /** Links whose unwritten limit had to give, and by how much. */
  readonly given: readonly { readonly link: Link; readonly over: Minute }[];
}

interface NoSolution {
  /** Proven: there is no plan. Otherwise the search ended before it found one. */
  readonly proven: boolean;
  readonly steps: number;
}

export type Solved = { readonly solution: Solution } | { readonly none: NoSolution };

/** The best plan of a problem; with unwritten limits of standing stretched where nothing else fits. */
export function solve(problem: PlanProblem, budget: Budget): Solved {
  const fixed = problem.mode === 'start' ? readyAsSoonAsCan(problem, budget) : { problem, steps: 0, proven: true };
  if (!fixed.problem) return { none: { proven: fixed.proven, steps: fixed.steps } };
  const strict = best(fixed.problem, budget, fixed);
  if ('solution' in strict || !strict.none.proven || problem.mode === 'start') return strict;
  const stretched = stretchStanding(problem, budget);
  return stretched.given.length === 0 ? strict : best(stretched.problem, budget, { ...fixed, given: stretched.given });
}

function best(
  problem: PlanProblem,
  budget: Budget,
  before: { readonly steps: number; readonly proven: boolean; readonly given?: Solution['given'] },
): Solved {
  const network = buildNetwork(problem, 'best');
  const result = search(network, budget);
  const steps = before.steps + result.steps;
  if (!result.found) return { none: { proven: result.complete && before.proven, steps } };
  const drawn = gather(network, result.found, budget);
  const gap = result.found.cost - Math.min(result.found.cost, result.bound);
  const unproven = drawn.complete ? 0 : VISIT * Math.max(0, drawn.visits - 1);
  const early = earlyCost(problem, drawn.plan);
  return {
    solution: {
      problem,
      plan: drawn.plan,
      quality: {
        optimal: result.complete && drawn.complete && before.proven,
        points: (drawn.plan.cost - early + VISIT * drawn.visits) / POINT,
        perhapsBetterBy: (gap + unproven) / POINT,
        perhapsBetterPercent: quotientUp((gap + unproven) * 100, Math.max(1, drawn.plan.cost + VISIT * drawn.visits)),
        visits: drawn.visits,
        steps: steps + drawn.steps,
      },
      given: before.given ?? [],
    },
  };
}

/** What of the cost is that dishes are done before their moment; that price is of another order than the others. */
function earlyCost(problem: PlanProblem, plan: Found): number {
  const alone = problem.dishes.map((dish): number => {
    const index = problem.activities.findIndex((activity) => activity.id === dish.last);
    const stood = (dish.ready ?? 0) + plan.service - (plan.ends[index] ?? 0) - dish.stand.preferred;
    return stood > 0 ? stood * priceEarly(dish.stand) : 0;
  });
  return alone.reduce((sum, cost) => sum + cost, 0);
}

interface FixedStart {
  readonly problem: PlanProblem | undefined;
  readonly steps: number;
  readonly proven: boolean;
}

/** Forward from a start: first how early all can be ready, then the best plan that is ready then. */
function readyAsSoonAsCan(problem: PlanProblem, budget: Budget): FixedStart {
  const soonest = searchFor(problem, 'soonest', budget);
  const { found } = soonest;
  if (!found) return { problem: undefined, steps: soonest.steps, proven: soonest.complete };
  const dishes = problem.dishes.map((dish) => ({ ...dish, ready: found.service }));
  return { problem: { ...problem, mode: 'ready', dishes }, steps: soonest.steps, proven: soonest.complete };
}

/** Lets what stands between steps stand longer where nothing is written, by as few minutes as will do. */
function stretchStanding(problem: PlanProblem, budget: Budget): { problem: PlanProblem; given: Solution['given'] } {
  const { found } = searchFor(problem, 'give-standing', budget);
  if (!found) return { problem, given: [] };
  const at = new Map(problem.activities.map((activity, index) => [activity.id, index]));
  const given: { link: Link; over: Minute }[] = [];
  const links = problem.links.map((link) => {
    const stood = (found.starts[at.get(link.to) ?? -1] ?? 0) - (found.ends[at.get(link.from) ?? -1] ?? 0);
    const over = stood - link.gap.most;
    if (over <= 0 || link.written) return link;
    given.push({ link, over });
    return { ...link, gap: { ...link.gap, most: stood } };
  });
  return { problem: { ...problem, links }, given };
}

export function searchFor(problem: PlanProblem, aim: Aim, budget: Budget): SearchResult {
  return search(buildNetwork(problem, aim), budget);
}
