import { diagnose, type Diagnostic, type Outcome, type Place } from '@quern/text';
import type { Formula, Kitchen } from '@quern/compiler';
import { calendarSlip, hourText, type ClockCalendar } from './calendar.js';
import { awakeHours, planKitchen, type AwakeHours } from './clock-kitchen.js';
import type {
  ClockPlan,
  ClockTotals,
  Keeping,
  PlannedActivity,
  PlannedDish,
  PlannedHeating,
  PlannedStanding,
  PlannedUpkeep,
  PlannedVisit,
} from './clock-plan.js';
import { explain, type Change, type NoPlan } from './explain.js';
import { partsOf, type DishRequest, type PlannedParts } from './from-formula.js';
import { turnDial } from './jobs.js';
import { buildNetwork } from './network.js';
import {
  standingTop,
  topOf,
  type Activity,
  type Allowance,
  type Heat,
  type Minute,
  type PlanProblem,
} from './problem.js';
import { reasonsFor } from './reasons.js';
import type { Budget, Found } from './search.js';
import { searchFor, solve, type Solution } from './solve.js';
import { plainMinutes, wholeMinutes } from './step-times.js';
import { allowed, lasting, moment, stepName } from './words.js';

/** What is to be planned together, in one kitchen. */
export interface ClockRequest {
  readonly title: string;
  readonly dishes: readonly DishRequest[];
  readonly kitchen?: Kitchen;
  /** Where messages about the whole plan are put: the menu or the recipe. */
  readonly place: Place;
}

export interface ClockOptions {
  /** `ready`: each dish at its own moment. `start`: from `earliest` on, as soon as can be. `free`: without dates. */
  readonly mode: 'ready' | 'start' | 'free';
  /** Nothing begins before it. Needed for `start`. */
  readonly earliest?: Minute;
  readonly awake?: AwakeHours;
  readonly calendar: ClockCalendar;
  readonly budget?: Budget;
}

/** Steps of the search before the clock is content with what it has found; some seconds. */
export const USUAL_BUDGET: Budget = { steps: 50_000 };
/** An explanation asks several smaller questions. */
const QUESTION: Budget = { steps: 2_000 };

/**
 * The timetable of some recipes: when to start, what to do when. Nothing is planned, and every reason is told, when a
 * recipe cannot be planned whole.
 */
export function planClock(request: ClockRequest, options: ClockOptions): Outcome<ClockPlan | undefined> {
  const { value: problem, diagnostics } = clockProblem(request, options);
  if (!problem) return { value: undefined, diagnostics };
  const awake = options.awake ?? awakeHours(request.kitchen);
  const solved = byCalendar(problem, options.calendar, options.budget ?? USUAL_BUDGET);
  if ('none' in solved) {
    const said = solved.none.proven
      ? noPlanMessage(explain(problem, QUESTION), problem, request, options.calendar, awake)
      : unfinished(request, problem, options.calendar, solved.none.steps);
    return { value: undefined, diagnostics: [...diagnostics, said] };
  }
  const { solution } = solved;
  const standing = solution.given.map(({ link, over }) =>
    diagnose('T04', link.place ?? request.place, {
      product: link.product ?? 'what the step above leaves',
      stands: lasting(link.gap.most + over),
      over: lasting(over),
      limit: lasting(link.gap.most),
    }),
  );
  return { value: assemble(request, options, awake, solution), diagnostics: [...diagnostics, ...standing] };
}

/** What the clock has to solve for a request; undefined when a recipe cannot be planned whole, with the reasons. */
export function clockProblem(request: ClockRequest, options: ClockOptions): Outcome<PlanProblem | undefined> {
  const kitchen = planKitchen(request.kitchen);
  const parts = partsOf(request.dishes, kitchen);
  const whole =
    parts.dishes.length === request.dishes.length && parts.diagnostics.every(({ severity }) => severity !== 'error');
  const awake = options.awake ?? awakeHours(request.kitchen);
  return { value: whole ? problemOf(parts, kitchen, awake, options) : undefined, diagnostics: parts.diagnostics };
}

function problemOf(
  parts: PlannedParts,
  kitchen: PlanProblem['kitchen'],
  awake: AwakeHours,
  options: ClockOptions,
): PlanProblem {
  const reach = reachOf(parts);
  const latest = parts.dishes.reduce((most, dish) => Math.max(most, dish.ready ?? 0), 0);
  const from = options.mode === 'start' ? (options.earliest ?? 0) - 1440 : -reach - ROUND_ABOUT;
  const to = (options.mode === 'start' ? (options.earliest ?? 0) + reach : latest) + ROUND_ABOUT;
  return {
    activities: parts.activities,
    links: parts.links,
    dishes: parts.dishes,
    kitchen,
    sleep: options.calendar.sleep(from, to),
    earliest: options.earliest,
    mode: options.mode,
    readyBetween:
      options.mode === 'free' ? { from: awake.from, to: awake.to > awake.from ? awake.to : 1440 } : undefined,
  };
}

/** Days on either side of the longest plan in which nights are known: for other ready times, and for waiting one's turn. */
const ROUND_ABOUT: Minute = 10 * 1440;

/** The longest that it can be from the first step of a dish to its serving. */
function reachOf({ activities, links, dishes }: PlannedParts): Minute {
  const into = new Map<string, { from: string; most: Minute }[]>();
  for (const link of links)
    into.set(link.to, [...(into.get(link.to) ?? []), { from: link.from, most: standingTop(link.gap) }]);
  const times = new Map(activities.map((activity) => [activity.id, topOf(activity.time)]));
  const known = new Map<string, Minute>();
  const longest = (id: string): Minute => {
    const seen = known.get(id);
    if (seen !== undefined) return seen;
    const before = (into.get(id) ?? []).reduce((most, { from, most: gap }) => Math.max(most, longest(from) + gap), 0);
    const length = before + (times.get(id) ?? 0);
    known.set(id, length);
    return length;
  };
  return dishes.reduce((most, dish) => Math.max(most, longest(dish.last) + standingTop(dish.stand)), 0);
}

/**
 * Waits and care counted in days keep the wall clock when the clocks change: what lies across a change is an hour
 * shorter or longer. Which ones do is only known from a plan, so the plan is made again until it agrees with itself.
 */
function byCalendar(problem: PlanProblem, calendar: ClockCalendar, budget: Budget): ReturnType<typeof solve> {
  let slipped = problem;
  let solved = solve(slipped, budget);
  for (let round = 0; round < 4 && 'solution' in solved; round++) {
    const next = slipDays(problem, solved.solution.plan, calendar);
    if (next.key === keyOf(slipped)) return solved;
    slipped = next.problem;
    const again = solve(slipped, budget);
    if ('none' in again) return solved;
    solved = again;
  }
  return solved;
}

function slipDays(problem: PlanProblem, plan: Found, calendar: ClockCalendar): { problem: PlanProblem; key: string } {
  const ends = new Map(problem.activities.map((activity, index) => [activity.id, plan.ends[index] ?? 0]));
  const later = (allowance: Allowance, by: Minute): Allowance => ({
    least: allowance.least + by,
    preferred: allowance.preferred + by,
    most: allowance.most + by,
  });
  const aged = <T extends { readonly byCalendar: boolean }>(one: T, gap: Allowance, from: string): Allowance =>
    one.byCalendar ? later(gap, calendarSlip(calendar, ends.get(from) ?? 0, gap.least)) : gap;
  const activities = problem.activities.map((activity, index) => {
    const start = plan.starts[index] ?? 0;
    const slip = activity.byCalendar ? calendarSlip(calendar, start, (plan.ends[index] ?? 0) - start) : 0;
    const care = activity.care.map((one) =>
      one.byCalendar ? { ...one, falls: one.falls.map((fall) => fall + calendarSlip(calendar, start, fall)) } : one,
    );
    return { ...activity, time: later(activity.time, slip), care };
  });
  const links = problem.links.map((link) => ({ ...link, gap: aged(link, link.gap, link.from) }));
  const dishes = problem.dishes.map((dish) => ({ ...dish, stand: aged(dish, dish.stand, dish.last) }));
  const slipped = { ...problem, activities, links, dishes };
  return { problem: slipped, key: keyOf(slipped) };
}

const keyOf = ({ activities, links, dishes }: PlanProblem): string =>
  [
    ...activities.map(({ time, care }) => `${time.least};${care.map(({ falls }) => falls.join()).join('/')}`),
    ...links.map(({ gap }) => gap.least),
    ...dishes.map(({ stand }) => stand.least),
  ].join('|');

// ---- what is said when there is no plan ------------------------------------------------------------------------------

function noPlanMessage(
  no: NoPlan,
  problem: PlanProblem,
  request: ClockRequest,
  calendar: ClockCalendar,
  awake: AwakeHours,
): Diagnostic {
  const asked = problem.mode === 'ready' ? lastReady(problem) : 0;
  const ready = readyText(problem, calendar);
  const way = wayOut(no, calendar, asked);
  const related = no.changes.flatMap(({ activity }) =>
    activity.place ? [{ place: activity.place, note: 'this line' }] : [],
  );
  const { why } = no;
  switch (why.kind) {
    case 'past':
      return diagnose(
        'T02',
        request.place,
        {
          ready,
          why: `“${stepName(why.activity.label)}” would have to begin at ${moment(calendar, why.at, asked)}, which is past`,
          way,
        },
        related,
      );
    case 'asleep': {
      const hours = `${hourText(awake.from)}-${hourText(awake.to)}`;
      return diagnose(
        'T02',
        request.place,
        {
          ready,
          why: `“${stepName(why.activity.label)}” would fall at ${moment(calendar, why.at, asked)}, outside ${hours}`,
          way,
        },
        related,
      );
    }
    case 'oven':
      return diagnose(
        'T03',
        request.place,
        {
          ready,
          first: stepName(why.first.label),
          second: stepName(why.second.label),
          when: moment(calendar, why.at, asked),
          way,
        },
        related,
      );
    case 'busy':
      return diagnose(
        'T07',
        request.place,
        {
          ready,
          first: stepName(why.first.label),
          second: stepName(why.second.label),
          thing: why.thing,
          when: moment(calendar, why.at, asked),
          way,
        },
        related,
      );
    case 'limits': {
      const members = no.members.length > 0 ? no.members : no.changes;
      const lines = members.map(limitText).join(' and ');
      return diagnose(
        'T11',
        request.place,
        {
          title: request.title,
          lines: lines === '' ? 'its times' : lines,
          way: members.length > 0 ? members.map(changeText).join(', or ') : way,
        },
        members.flatMap(({ activity }) => (activity.place ? [{ place: activity.place, note: 'this line' }] : [])),
      );
    }
  }
}

function wayOut(no: NoPlan, calendar: ClockCalendar, asked: Minute): string {
  const times = [no.earlier, no.later].flatMap((shift) =>
    shift === undefined ? [] : [moment(calendar, asked + shift, asked)],
  );
  const ways = [
    ...(times.length > 0 ? [`be ready by ${times.join(' or by ')}`] : []),
    ...(no.changes.length > 0 ? [no.changes.map(changeText).join(' and ')] : []),
  ];
  return ways.length > 0 ? ways.join(', or ') : 'give it another day, other waking hours or another kitchen';
}

/** A limit as it stands. */
function limitText({ what, activity, before, product, allowed: range }: Change): string {
  const name = `“${stepName(activity.label)}”`;
  if (what === 'wait') return `${name} (${allowed(range)})`;
  const thing = product ?? `what ${name} leaves`;
  return `${thing} standing ${allowed(range)}${before ? ` before “${stepName(before.label)}”` : ''}`;
}

function changeText({ what, activity, before, product, allowed: range, needed }: Change): string {
  const longer = needed > range.most;
  switch (what) {
    case 'wait':
      return `allow ${lasting(needed)} where “${stepName(activity.label)}” has ${allowed(range)}`;
    case 'standing':
      return `let ${product ?? `what “${stepName(activity.label)}” leaves`} stand ${lasting(needed)} before “${stepName(before?.label ?? '')}” (it may ${allowed(range)})`;
    case 'keeping':
      return longer
        ? `let ${product ?? 'the dish'} keep ${lasting(needed)} before it is served (it may ${allowed(range)})`
        : `serve ${product ?? 'the dish'} after ${lasting(needed)}`;
  }
}

function unfinished(request: ClockRequest, problem: PlanProblem, calendar: ClockCalendar, steps: number): Diagnostic {
  return diagnose('T02', request.place, {
    ready: readyText(problem, calendar),
    why: `none was found in ${steps} steps of the search, and none was ruled out`,
    way: 'give the search longer, or plan fewer recipes at once',
  });
}

/** The moment asked for. */
function readyText(problem: PlanProblem, calendar: ClockCalendar): string {
  const asked = lastReady(problem);
  return problem.mode === 'ready' ? moment(calendar, asked, asked) : 'any time';
}

const lastReady = (problem: PlanProblem): Minute =>
  problem.dishes.reduce((latest, dish) => Math.max(latest, dish.ready ?? -Infinity), -Infinity);

// ---- the plan as data ------------------------------------------------------------------------------------------------

function assemble(request: ClockRequest, options: ClockOptions, awake: AwakeHours, solution: Solution): ClockPlan {
  const { problem, plan } = solution;
  const reasons = reasonsFor(buildNetwork(problem, 'best'), plan, options.calendar);
  const activities = problem.activities.map((activity, index): PlannedActivity => {
    const start = plan.starts[index] ?? 0;
    const end = plan.ends[index] ?? 0;
    const oven = activity.oven && problem.kitchen.ovens[plan.ovens[index] ?? 0];
    return {
      id: activity.id,
      dish: activity.dish,
      make: activity.make,
      lane: activity.lane,
      label: activity.label,
      short: stepName(activity.label),
      start,
      end,
      soonestEnd: activity.nature === 'doubt' ? start + activity.soonest : end,
      time: activity.time,
      hands: activity.cooks > 0,
      rings: activity.rings,
      oven: oven && { name: oven.name, heat: activity.oven && ovenHeat(activity) },
      warmth: activity.warmth,
      reasons: reasons[index] ?? { mayMove: [], mayNot: [] },
      place: activity.place,
    };
  });
  const visits = visitsOf(problem, plan);
  const heating = heatingOf(problem, plan);
  const dishes = dishesOf(request, problem, plan);
  return {
    title: request.title,
    mode: options.mode,
    dishes,
    activities: activities.sort((a, b) => a.start - b.start || a.end - b.end || (a.id < b.id ? -1 : 1)),
    visits,
    heating,
    standing: standingOf(problem, plan),
    upkeep: upkeepOf(request.dishes, activities, dishes),
    totals: totalsOf(problem, activities, visits, heating, dishes),
    quality: solution.quality,
    kitchen: { name: problem.kitchen.name, cooks: problem.kitchen.cooks, awake },
    calendar: options.calendar,
  };
}

const heatText = ({ low, high }: Heat): string => (low === high ? `${low} C` : `${low}-${high} C`);

function ovenHeat({ oven }: Activity): string | undefined {
  if (!oven?.enters || !oven.leaves) return undefined;
  if (!oven.moving) return heatText(oven.enters);
  const falling = oven.leaves.low < oven.enters.low;
  return `${heatText(oven.enters)} ${falling ? 'falling' : 'rising'} to ${heatText(oven.leaves)}`;
}

function visitsOf(problem: PlanProblem, plan: Found): PlannedVisit[] {
  const visits = problem.activities.flatMap((activity, index) =>
    activity.care.flatMap((care, which) => {
      const times = plan.care[index]?.[which] ?? [];
      return times.map((start, nth): PlannedVisit => ({
        id: `${care.id}/${nth + 1}`,
        series: care.id,
        number: nth + 1,
        of: times.length,
        dish: activity.dish,
        make: activity.make,
        label: care.label,
        start,
        end: start + care.lasts,
        moved: start - (plan.starts[index] ?? 0) - (care.falls[nth] ?? 0),
        during: activity.id,
        place: care.place,
      }));
    }),
  );
  return visits.sort((a, b) => a.start - b.start);
}

/** An oven that has stood empty longer than this was turned off in between. */
const STAYS_ON: Minute = 60;

function heatingOf(problem: PlanProblem, plan: Found): PlannedHeating[] {
  const found: PlannedHeating[] = [];
  problem.kitchen.ovens.forEach((oven, which) => {
    const baking = problem.activities
      .map((activity, index) => ({
        activity,
        start: plan.starts[index] ?? 0,
        end: plan.ends[index] ?? 0,
        oven: plan.ovens[index] ?? -1,
      }))
      .filter(({ activity, oven: used }) => used === which && activity.oven)
      .sort((a, b) => a.start - b.start);
    let before: (typeof baking)[number] | undefined;
    for (const next of baking) {
      const need = next.activity.oven;
      if (need?.enters && need.heating > 0) {
        const hot = before !== undefined && next.start - before.end <= STAYS_ON;
        const minutes = hot && before?.activity.oven ? turnDial(before.activity.oven, need) : need.heating;
        if (minutes > 0) {
          found.push({
            oven: oven.name,
            start: next.start - minutes,
            end: next.start,
            heat: heatText(need.enters),
            before: next.activity.id,
          });
        }
      }
      if (!before || next.end > before.end) before = next;
    }
  });
  return found.sort((a, b) => a.start - b.start);
}

function standingOf(problem: PlanProblem, plan: Found): PlannedStanding[] {
  const at = new Map(problem.activities.map((activity, index) => [activity.id, index]));
  return problem.links.flatMap((link): PlannedStanding[] => {
    const from = plan.ends[at.get(link.from) ?? -1] ?? 0;
    const to = plan.starts[at.get(link.to) ?? -1] ?? 0;
    const source = problem.activities[at.get(link.from) ?? -1];
    if (to <= from || !link.product || !source) return [];
    const until = link.gap.most === Infinity ? undefined : from + link.gap.most;
    return [{ product: link.product, dish: source.dish, from, to, until }];
  });
}

function dishesOf(request: ClockRequest, problem: PlanProblem, plan: Found): PlannedDish[] {
  return problem.dishes.map((dish, index): PlannedDish => {
    const asked = request.dishes[index];
    const last = problem.activities.findIndex((activity) => activity.id === dish.last);
    const done = plan.ends[last] ?? 0;
    return {
      id: dish.id,
      title: dish.title,
      course: asked?.course,
      done,
      ready: (dish.ready ?? 0) + plan.service,
      bestFrom: done + dish.stand.least,
      keeps: asked ? keepingsOf(asked.formula, done) : [],
      place: dish.place,
    };
  });
}

function keepingsOf(formula: Formula, done: Minute): Keeping[] {
  return (formula.makes.at(-1)?.keeps ?? []).map(({ content, ref }) => ({
    written: ref.line.text.trim().replace(/^keeps\s+/i, ''),
    until: done + wholeMinutes(content.time.low.minutes),
    note: content.note?.text,
  }));
}

function upkeepOf(
  requests: readonly DishRequest[],
  activities: readonly PlannedActivity[],
  dishes: readonly PlannedDish[],
): PlannedUpkeep[] {
  const seen = new Map<string, PlannedUpkeep>();
  requests.forEach(({ formula }, index) => {
    for (const [name, culture] of formula.cultures) {
      const uses = formula.makes.filter((make) =>
        make.items.some((item) => item.kind === 'in' && item.source.kind === 'culture' && item.source.culture === name),
      );
      const used = activities.filter(
        ({ dish, make }) => dish === dishes[index]?.id && uses.some((one) => one.name === make),
      );
      if (used.length === 0) continue;
      const last = used.reduce((latest, { end }) => Math.max(latest, end), -Infinity);
      culture.upkeep.forEach(({ content }, nth) => {
        const period = plainMinutes(content.period);
        if (period < 1440) return;
        const id = `culture/${name}/every${nth + 1}`;
        seen.set(id, {
          id,
          culture: culture.name,
          label: content.prose.text,
          period,
          lasts: content.duration ? Math.max(1, wholeMinutes(content.duration.high.minutes)) : 1,
          first: last + period,
        });
      });
    }
  });
  return [...seen.values()];
}

function totalsOf(
  problem: PlanProblem,
  activities: readonly PlannedActivity[],
  visits: readonly PlannedVisit[],
  heating: readonly PlannedHeating[],
  dishes: readonly PlannedDish[],
): ClockTotals {
  const begin = [...activities, ...heating].reduce((first, { start }) => Math.min(first, start), Infinity);
  const ready = dishes.reduce((latest, dish) => Math.max(latest, dish.ready), -Infinity);
  const handsOn = [...activities.filter(({ hands }) => hands), ...visits].reduce(
    (sum, { start, end }) => sum + end - start,
    0,
  );
  const limits = dishes.map(({ keeps }) => keeps[0]?.until);
  return {
    handsOn,
    total: ready - begin,
    shortest: shortestOf(problem),
    begin,
    ready,
    goodUntil: limits.every((until) => until !== undefined)
      ? limits.reduce((least, until) => Math.min(least, until ?? least), Infinity)
      : undefined,
  };
}

function shortestOf(problem: PlanProblem): Minute | undefined {
  const dishes = problem.dishes.map((dish) => ({ ...dish, ready: 0 }));
  return searchFor({ ...problem, dishes, sleep: [], mode: 'start', earliest: 0 }, 'soonest', QUESTION).found?.service;
}
