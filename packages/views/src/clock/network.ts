import { priceAbove, priceBelow, priceEarly } from './prices.js';
import {
  standingTop,
  topOf,
  type Activity,
  type Allowance,
  type Dish,
  type Link,
  type Minute,
  type PlanProblem,
} from './problem.js';

/** A moment: that of a node and so many minutes more. */
export interface Point {
  readonly node: number;
  readonly offset: Minute;
}

/** `to` comes at least `gap` minutes after `from`, or each minute short costs `price`. */
interface Rule {
  readonly from: Point;
  readonly to: Point;
  readonly gap: Minute;
  readonly price: number;
  /** What the rule stands for, to name it when it cannot hold. */
  readonly source: RuleSource;
}

export type RuleSource =
  | { readonly kind: 'time'; readonly activity: Activity; readonly side: 'least' | 'most' | 'preferred' }
  | { readonly kind: 'gap'; readonly link: Link; readonly side: 'least' | 'most' | 'preferred' }
  | { readonly kind: 'stand'; readonly dish: Dish; readonly side: 'least' | 'most' | 'preferred' }
  | { readonly kind: 'ready' }
  | { readonly kind: 'earliest'; readonly activity: Activity };

/**
 * What is minded: the whole price list; only how soon all is ready; only how far the ready time moves (to later or
 * earlier moments); or only by how many minutes written and unwritten limits have to give.
 */
export type Aim = 'best' | 'soonest' | 'later' | 'earlier' | 'give' | 'give-standing';

/** A problem as moments and rules. Everything that is the same for every choice of order and night. */
export interface Network {
  readonly problem: PlanProblem;
  readonly nodes: number;
  /** Node 0 is the anchor: moment zero. */
  readonly starts: readonly Point[];
  readonly ends: readonly Point[];
  /** First node of each activity's care visits, by activity and care; -1 when it has none. */
  readonly careNodes: readonly (readonly number[])[];
  readonly rules: readonly Rule[];
  /** The moment that all ready times are reckoned from (the anchor itself when they are given). */
  readonly service: Point;
  /** Two things that are tied to the minute contradict each other. */
  readonly contradiction: RuleSource | undefined;
}

/** Ties nodes that are always the same number of minutes apart into one. */
class Ties {
  readonly #parent: number[];
  readonly #offset: number[];

  constructor(nodes: number) {
    this.#parent = Array.from({ length: nodes }, (_, index) => index);
    this.#offset = new Array<number>(nodes).fill(0);
  }

  find(node: number): Point {
    let offset = 0;
    let at = node;
    while (this.#parent[at] !== at) {
      offset += this.#offset[at] ?? 0;
      at = this.#parent[at] ?? at;
    }
    return { node: at, offset };
  }

  /** Says that `b` comes exactly `gap` after `a`. @returns false when it is known to be otherwise. */
  tie(a: Point, b: Point, gap: Minute): boolean {
    const first = this.#resolve(a);
    const second = this.#resolve(b);
    const apart = first.offset + gap - second.offset; // second.node = first.node + apart
    if (first.node === second.node) return apart === 0;
    // The anchor stays its own root.
    if (second.node === 0) {
      this.#parent[first.node] = 0;
      this.#offset[first.node] = -apart;
    } else {
      this.#parent[second.node] = first.node;
      this.#offset[second.node] = apart;
    }
    return true;
  }

  #resolve(point: Point): Point {
    const root = this.find(point.node);
    return { node: root.node, offset: root.offset + point.offset };
  }
}

/**
 * Moments and rules of a problem. With `only`, of the limits that an aim lets give, the ones that it names.
 */
export function buildNetwork(
  problem: PlanProblem,
  aim: Aim,
  only: (source: Activity | Link | Dish) => boolean = () => true,
): Network {
  const { activities, links, dishes } = problem;
  const index = new Map(activities.map((activity, at) => [activity.id, at]));
  let count = 1 + activities.length * 2 + 1;
  const serviceNode = count - 1;
  const startNode = (at: number): Point => ({ node: 1 + at * 2, offset: 0 });
  const endNode = (at: number): Point => ({ node: 2 + at * 2, offset: 0 });
  const at = (id: string): number => {
    const found = index.get(id);
    if (found === undefined) throw new RangeError(`a link names ${id}, which is not planned`);
    return found;
  };
  const elastic = (source: Link | Dish, written: boolean): boolean =>
    (aim === 'give' || (aim === 'give-standing' && !written)) && only(source);
  const stretches = (activity: Activity): boolean => aim === 'give' && activity.lane === 'wait' && only(activity);

  const ties = new Ties(count);
  let contradiction: RuleSource | undefined;
  const tie = (a: Point, b: Point, gap: Minute, source: RuleSource): void => {
    if (!ties.tie(a, b, gap)) contradiction ??= source;
  };
  const exact = (allowance: Allowance): boolean => allowance.least === allowance.most;
  activities.forEach((activity, i) => {
    if (exact(activity.time) && !stretches(activity)) {
      tie(startNode(i), endNode(i), activity.time.least, { kind: 'time', activity, side: 'least' });
    }
  });
  for (const link of links) {
    if (exact(link.gap) && !(loosens(link) && elastic(link, link.written))) {
      tie(endNode(at(link.from)), startNode(at(link.to)), link.gap.least, { kind: 'gap', link, side: 'least' });
    }
  }
  if (problem.mode === 'ready' && aim !== 'later' && aim !== 'earlier') {
    tie({ node: 0, offset: 0 }, { node: serviceNode, offset: 0 }, 0, { kind: 'ready' });
  }

  const settle = (point: Point): Point => {
    const root = ties.find(point.node);
    return { node: root.node, offset: root.offset + point.offset };
  };
  const anchor: Point = { node: 0, offset: 0 };
  const service = settle({ node: serviceNode, offset: 0 });
  const starts = activities.map((_, i) => settle(startNode(i)));
  const ends = activities.map((_, i) => settle(endNode(i)));
  const rules: Rule[] = [];
  const hard = (from: Point, to: Point, gap: Minute, source: RuleSource, gives: boolean): void => {
    rules.push({ from, to, gap, price: gives ? 1 : Infinity, source });
  };
  const soft = (from: Point, to: Point, gap: Minute, price: number, source: RuleSource): void => {
    if (aim === 'best' && price > 0) rules.push({ from, to, gap, price, source });
  };
  const allow = (
    from: Point,
    to: Point,
    allowance: Allowance,
    gives: boolean,
    above: number,
    source: (side: 'least' | 'most' | 'preferred') => RuleSource,
  ): void => {
    const least = source('least');
    const most = least.kind === 'time' ? topOf(allowance) : standingTop(allowance);
    // Only a wait can be cut short; nothing ever starts before what it needs.
    const cuts = gives && least.kind === 'time';
    hard(from, to, allowance.least, least, cuts);
    if (cuts) hard(from, to, 0, least, false);
    hard(to, from, -most, source('most'), gives);
    if (aim === 'give-standing' && gives) hard(to, from, -(most + GIVE_STANDING), source('most'), false);
    soft(from, to, allowance.preferred, priceBelow(allowance), source('preferred'));
    soft(to, from, -allowance.preferred, above, source('preferred'));
  };

  activities.forEach((activity, i) => {
    const from = starts[i] ?? anchor;
    const to = ends[i] ?? anchor;
    if (from.node !== to.node) {
      allow(from, to, activity.time, stretches(activity), priceAbove(activity.time), (side) => ({
        kind: 'time',
        activity,
        side,
      }));
    }
    if (problem.earliest !== undefined) {
      const before = activity.oven?.heating ?? 0;
      hard(anchor, from, problem.earliest + before, { kind: 'earliest', activity }, false);
    }
  });
  for (const link of links) {
    const from = ends[at(link.from)] ?? anchor;
    const to = starts[at(link.to)] ?? anchor;
    if (from.node === to.node && exact(link.gap)) continue;
    allow(from, to, link.gap, loosens(link) && elastic(link, link.written), priceAbove(link.gap), (side) => ({
      kind: 'gap',
      link,
      side,
    }));
  }
  for (const dish of dishes) {
    const done = ends[at(dish.last)] ?? anchor;
    const served: Point = { node: service.node, offset: service.offset + (dish.ready ?? 0) };
    allow(done, served, dish.stand, elastic(dish, dish.standWritten), priceEarly(dish.stand), (side) => ({
      kind: 'stand',
      dish,
      side,
    }));
  }
  rules.push(...serviceRules(problem, aim, service));

  const careNodes = activities.map((activity) =>
    activity.care.map((care) => {
      const first = count;
      count += care.falls.length;
      return first;
    }),
  );
  return { problem, nodes: count, starts, ends, careNodes, rules, service, contradiction };
}

/** Whether a limit between two steps is one that could be set otherwise; after a wait it is the wait's own range. */
function loosens({ reason }: Link): boolean {
  return reason === 'drawn' || reason === 'kept' || reason === 'next-step';
}

function serviceRules(problem: PlanProblem, aim: Aim, service: Point): Rule[] {
  const anchor: Point = { node: 0, offset: 0 };
  const source: RuleSource = { kind: 'ready' };
  const after = (gap: Minute, price: number): Rule => ({ from: anchor, to: service, gap, price, source });
  const before = (gap: Minute, price: number): Rule => ({ from: service, to: anchor, gap: -gap, price, source });
  if (aim === 'later') return [after(1, Infinity), before(1, 1), before(SEARCH_REACH, Infinity)];
  if (aim === 'earlier') return [before(-1, Infinity), after(-1, 1), after(-SEARCH_REACH, Infinity)];
  if (problem.mode === 'start') {
    const from = problem.earliest ?? 0;
    return [after(from, Infinity), ...(aim === 'soonest' ? [before(from, 1)] : [])];
  }
  if (problem.mode === 'free') {
    const between = problem.readyBetween ?? { from: 0, to: 1440 };
    const middle = between.from + (between.to - between.from - ((between.to - between.from) % 2)) / 2;
    // So little that nothing else gives way for it: it only decides between plans that are as good.
    const hint = aim === 'best' ? 1 : 0;
    const rules = [after(between.from, Infinity), before(between.to, Infinity)];
    return hint > 0 ? [...rules, after(middle, hint), before(middle, hint)] : rules;
  }
  return [];
}

/** How much longer than unwritten limits a thing may be left standing, with a warning, before there is no plan. */
const GIVE_STANDING: Minute = 120;

/** How far other ready times are looked for when the one asked for does not work. */
const SEARCH_REACH: Minute = 7 * 1440;
