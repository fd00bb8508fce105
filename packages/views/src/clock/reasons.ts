import { jobsOf, shareOven, type Job } from './jobs.js';
import type { Network } from './network.js';
import type { Activity, Link, Minute, PlanProblem } from './problem.js';
import type { Found } from './search.js';
import type { Reasons } from './clock-plan.js';
import { hourText, type ClockCalendar } from './calendar.js';
import { allowed, lasting, stepName } from './words.js';

/** The reasons beside a plan, by activity. Each is one rule of docs/clock.md applied to one line. */
export function reasonsFor(network: Network, plan: Found, calendar: ClockCalendar): Reasons[] {
  const { problem } = network;
  const at = new Map(problem.activities.map((activity, index) => [activity.id, index]));
  const jobs = jobsOf(network);
  return problem.activities.map((activity, index) => {
    const mayMove: string[] = [];
    const mayNot: string[] = [];
    timeReason(activity, (plan.ends[index] ?? 0) - (plan.starts[index] ?? 0), mayMove, mayNot);
    for (const link of problem.links) {
      const before = problem.activities[at.get(link.from) ?? -1];
      const after = problem.activities[at.get(link.to) ?? -1];
      if (!before || !after || (link.from !== activity.id && link.to !== activity.id)) continue;
      const stood = (plan.starts[at.get(link.to) ?? -1] ?? 0) - (plan.ends[at.get(link.from) ?? -1] ?? 0);
      if (link.to === activity.id) reasonBefore(link, before, stood, mayMove, mayNot);
      else if (link.gap.most > 0 && stood >= link.gap.most) {
        mayNot.push(
          `not earlier: ${productOf(link, activity)} may stand ${lasting(link.gap.most)} before “${stepName(after.label)}”, and does`,
        );
      }
    }
    for (const dish of problem.dishes) {
      if (dish.last !== activity.id) continue;
      const stood = (dish.ready ?? 0) + plan.service - (plan.ends[index] ?? 0);
      if (stood <= dish.stand.least) mayNot.push('ends when the dish is wanted');
      else
        mayMove.push(
          `ends ${lasting(stood - dish.stand.least)} before the dish is wanted; it may stand ${allowed(dish.stand)}`,
        );
    }
    sleepReason(problem, activity, plan, index, calendar, mayNot);
    mayNot.push(...neighbours(problem, jobs, plan, index));
    return { mayMove, mayNot };
  });
}

function timeReason(activity: Activity, lasts: Minute, mayMove: string[], mayNot: string[]): void {
  const { time, nature, soonest, coversSleep } = activity;
  if (coversSleep) mayMove.push(`may last ${allowed(time)}, and has to cover the hours asleep: overnight`);
  else if (nature === 'doubt')
    mayNot.push(
      `is booked for ${lasting(time.least)}, the top of ${allowed({ ...time, least: soonest })}: a range of ${activity.lane === 'hands' ? 'hands' : `the ${activity.lane}`} is doubt`,
    );
  else if (nature === 'freedom') {
    const middle = time.most === Infinity ? 'least' : 'middle';
    const off = lasts - time.preferred;
    const where =
      off === 0 ? `its ${middle}` : `${lasting(off < 0 ? -off : off)} ${off < 0 ? 'under' : 'over'} its ${middle}`;
    mayMove.push(`may last ${allowed(time)}: the range of a wait is freedom; lasts ${lasting(lasts)}, ${where}`);
  } else if (time.most > time.least)
    mayMove.push(
      `may be drawn out from ${lasting(time.preferred)} to ${lasting(time.most)}, as a single figure may; lasts ${lasting(lasts)}`,
    );
  else if (lasts > 0) mayNot.push(`lasts ${lasting(lasts)}, as written`);
}

const productOf = (link: Link, from: Activity): string => link.product ?? `what “${stepName(from.label)}” leaves`;

function reasonBefore(link: Link, before: Activity, stood: Minute, mayMove: string[], mayNot: string[]): void {
  const name = `“${stepName(before.label)}”`;
  switch (link.reason) {
    case 'in-the-oven':
      mayNot.push(`follows ${name} at once: the dish stays in the oven`);
      break;
    case 'after-wait':
      mayNot.push(`starts the minute ${name} ends: a wait is already waiting, and nothing stands beyond its range`);
      break;
    case 'left-alone':
      mayNot.push(`begins when ${name} ends`);
      break;
    case 'batch':
      mayNot.push(`is another batch, after ${name}`);
      break;
    default: {
      const thing = link.product ? `${link.product} is drawn here` : `it follows ${name}`;
      if (stood <= link.gap.least) mayNot.push(`not earlier: ${thing}, ready only now`);
      if (link.gap.most > link.gap.least) {
        const limit = link.written ? 'it keeps' : 'where nothing is written it may stand';
        mayMove.push(`${thing}, standing ${lasting(stood)} of the ${lasting(link.gap.most)} ${limit}`);
      }
    }
  }
}

function sleepReason(
  problem: PlanProblem,
  activity: Activity,
  plan: Found,
  index: number,
  calendar: ClockCalendar,
  mayNot: string[],
): void {
  if (activity.watch === 'none') return;
  const start = (plan.starts[index] ?? 0) - (activity.oven?.heating ?? 0);
  const end = plan.ends[index] ?? 0;
  for (const sleep of problem.sleep) {
    if (start === sleep.to) mayNot.push(`not earlier: nobody is up before ${hourText(calendar.local(sleep.to).clock)}`);
    if (end === sleep.from) mayNot.push(`not later: nobody is up after ${hourText(calendar.local(sleep.from).clock)}`);
  }
}

/** What stands right before or after it at the same cook, ring or oven. */
function neighbours(problem: PlanProblem, jobs: readonly Job[], plan: Found, index: number): string[] {
  const said: string[] = [];
  const mine = jobs.find((job) => job.activity === index);
  if (!mine) return said;
  const start = plan.starts[index] ?? 0;
  const end = plan.ends[index] ?? 0;
  for (const other of jobs) {
    if (other.activity === index) continue;
    const name = `“${stepName(problem.activities[other.activity]?.label ?? '')}”`;
    const touches =
      plan.ends[other.activity] === start
        ? 'not earlier'
        : plan.starts[other.activity] === end
          ? 'not later'
          : undefined;
    if (!touches || linked(problem, index, other.activity)) continue;
    if (mine.cooks > 0 && other.cooks > 0 && problem.kitchen.cooks < 2)
      said.push(`${touches}: the cook is busy with ${name}`);
    const oven = problem.kitchen.ovens[plan.ovens[index] ?? -1];
    const same = plan.ovens[index] === plan.ovens[other.activity];
    if (oven && same && mine.oven && other.oven && !shareOven(mine.oven, other.oven, oven)) {
      said.push(`${touches}: the oven is taken by ${name}`);
    }
  }
  return said;
}

function linked(problem: PlanProblem, a: number, b: number): boolean {
  const first = problem.activities[a]?.id;
  const second = problem.activities[b]?.id;
  return problem.links.some(({ from, to }) => (from === first && to === second) || (from === second && to === first));
}
