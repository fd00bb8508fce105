import { lasting, type ClockPlan } from '@quern/views';
import type { Moments } from './moments.js';

/** The totals of a card, as name and value. */
export function totalsText(plan: ClockPlan, moments: Moments): [string, string][] {
  const { handsOn, total, shortest, begin, ready, goodUntil } = plan.totals;
  return [
    ['Hands-on time', lasting(handsOn)],
    ['Total time', lasting(total)],
    ['Begin', moments.at(begin)],
    ['Ready', moments.at(ready)],
    ...(shortest === undefined
      ? []
      : [['Earliest finish', `${lasting(shortest)} after beginning, nights left out`] as [string, string]]),
    ...(goodUntil === undefined ? [] : [['Good until', moments.date(goodUntil)] as [string, string]]),
  ];
}

/** What is known of how good the plan is. */
export function qualityText(plan: ClockPlan): string {
  const { optimal, perhapsBetterPercent, visits } = plan.quality;
  const often = visits === 1 ? 'one visit to the kitchen' : `${visits} visits to the kitchen`;
  if (optimal) return `Optimal, with ${often}: no plan is better by the rules of the clock.`;
  return `With ${often}. The search ended before it had seen everything: a plan that costs up to ${perhapsBetterPercent} % less by the rules of the clock is not ruled out.`;
}
