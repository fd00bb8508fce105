import { diagnose, type Diagnostic, type MessageArguments, type MessageCode, type Place } from '@quern/text';
import { compare, floor, multiply, ONE, rational, toApproximateNumber, type Rational } from '@quern/quantity';
import {
  linePlace,
  normaliseName,
  type Formula,
  type InItem,
  type Make,
  type Product,
  type StepItem,
} from '@quern/compiler';
import { printTemperature, type AtClause, type Thing } from '@quern/syntax';
import { thingName, type ClockKitchen } from './clock-kitchen.js';
import { heatOf } from './heat.js';
import { heatingTime, ovenFits } from './jobs.js';
import { quotientUp } from './prices.js';
import {
  topOf,
  type Activity,
  type Allowance,
  type Care,
  type Dish,
  type Link,
  type LinkReason,
  type Minute,
  type OvenNeed,
} from './problem.js';
import { isCalendarUnit, plainMinutes, stepTime, tenth, wholeMinutes } from './step-times.js';

/** A dish to be planned: a formula, how much of it, and when it has to be ready. */
export interface DishRequest {
  readonly formula: Formula;
  /** Times the recipe; 1 when not given. Vessels and shelves grow with it, times do not. */
  readonly factor?: Rational;
  readonly ready?: Minute;
  readonly course?: string;
}

export interface PlannedParts {
  readonly activities: readonly Activity[];
  readonly links: readonly Link[];
  readonly dishes: readonly Dish[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Most visits of care that one line may ask for, and most activities that are planned together. */
export const MOST_VISITS = 400;
export const MOST_ACTIVITIES = 400;

/** The activities, links and dishes of some recipes in a kitchen. With an error among the messages nothing may be planned. */
export function partsOf(requests: readonly DishRequest[], kitchen: ClockKitchen): PlannedParts {
  const keys = new Set<string>();
  const results = requests.map((request) => {
    const title =
      normaliseName(request.formula.title) +
      (request.formula.variant ? `@${normaliseName(request.formula.variant)}` : '');
    let key = title;
    for (let again = 2; keys.has(key); again++) key = `${title}~${again}`;
    keys.add(key);
    return new DishParts(request, key, kitchen).read();
  });
  return {
    activities: results.flatMap((result) => result.activities),
    links: results.flatMap((result) => result.links),
    dishes: results.flatMap((result) => result.dishes),
    diagnostics: results.flatMap((result) => result.diagnostics),
  };
}

/** What a step or a draw waits for: the end of an activity. */
interface Source {
  readonly id: string;
  readonly lane: Activity['lane'];
}

class DishParts {
  readonly #activities: Activity[] = [];
  readonly #links: Link[] = [];
  readonly #diagnostics: Diagnostic[] = [];
  /** First and last activity of each step of each make that is planned, by make key and item index. */
  readonly #steps = new Map<string, Map<number, { readonly first: string; readonly last: string }>>();
  readonly #lanes = new Map<string, Activity['lane']>();
  readonly #planned = new Set<string>();
  readonly #factor: Rational;

  constructor(
    readonly request: DishRequest,
    readonly key: string,
    readonly kitchen: ClockKitchen,
  ) {
    this.#factor = request.factor ?? ONE;
  }

  read(): PlannedParts {
    const { formula } = this.request;
    const dish = formula.makes.at(-1);
    if (formula.broken) {
      this.#say('T17', linePlace(formula.ref), { title: formula.title });
      return this.#result([]);
    }
    if (!dish) return this.#result([]);
    this.#make(formula, dish, '');
    const last = this.#ends(formula, dish, '', dish.items.length)[0];
    if (!last) {
      this.#say('T18', linePlace(formula.ref), { title: formula.title });
      return this.#result([]);
    }
    const stand = standing(dish, last.lane === 'wait', this.kitchen.hold);
    return this.#result([
      {
        id: this.key,
        title: formula.title + (formula.variant ? ` (${formula.variant})` : ''),
        last: last.id,
        stand: stand.gap,
        standWritten: stand.written,
        byCalendar: stand.byCalendar,
        ready: this.request.ready,
        place: linePlace(dish.ref),
      },
    ]);
  }

  #result(dishes: readonly Dish[]): PlannedParts {
    return { activities: this.#activities, links: this.#links, dishes, diagnostics: this.#diagnostics };
  }

  #say<C extends MessageCode>(code: C, place: Place, args: MessageArguments<C>): void {
    this.#diagnostics.push(diagnose(code, place, args));
  }

  /** Plans a make after all that it draws, once. `scope` tells apart recipes that are used in this one. */
  #make(formula: Formula, make: Make, scope: string): void {
    const key = scope + make.id;
    if (this.#planned.has(key)) return;
    this.#planned.add(key);
    const draws = make.items.flatMap((item, index) =>
      item.kind === 'in' && item.source.kind === 'product' ? [{ item, index }] : [],
    );
    for (const { item } of draws) this.#makeOf(formula, item, scope);

    const steps = new Map<number, { first: string; last: string }>();
    this.#steps.set(key, steps);
    const items = make.items.flatMap((item, index) => (item.kind === 'step' ? [{ item, index }] : []));
    const batches = this.#batches(
      formula,
      items.map(({ item }) => item),
    );
    let before: { readonly id: string; readonly lane: Activity['lane'] } | undefined;
    items.forEach(({ item, index }, ordinal) => {
      const made = this.#step(make, item, `${this.key}/${key}/${ordinal + 1}`, batches);
      steps.set(index, { first: made.id, last: made.id });
      if (before) this.#follow(before, made, item);
      before = { id: made.id, lane: made.lane };
      if (ordinal === batches.to && batches.count > 1) {
        before = this.#repeat(
          items.slice(batches.from, batches.to + 1).map((entry) => entry.item),
          make,
          key,
          batches,
          made,
        );
        steps.set(index, { first: made.id, last: before.id });
      }
    });
    for (const { item, index } of draws) this.#draw(formula, make, item, index, scope);
  }

  /** The make that a product comes from, in whatever recipe that is. */
  #makeOf(formula: Formula, item: InItem, scope: string): void {
    const origin = originOf(formula, item, scope);
    if (origin) this.#make(origin.formula, origin.make, origin.scope);
  }

  #step(make: Make, item: StepItem, id: string, batches: Batches, batch = 1): Activity {
    const { content, ref } = item;
    const lane = content.lane;
    const place = linePlace(ref);
    const time = stepTime(lane, content.time, this.kitchen.stretch);
    const things = content.clauses.flatMap((clause) => (clause.kind === 'using' ? clause.things : []));
    const oven = lane === 'oven' ? this.#oven(item, things, batches, place) : undefined;
    const activity: Activity = {
      id: batch > 1 ? `${id}#${batch}` : id,
      dish: this.key,
      make: make.implicit ? this.request.formula.title : make.name,
      lane,
      label: content.prose.text.replace(/\[|\]/g, ''),
      ...time,
      cooks: lane === 'hands' ? 1 : 0,
      rings: ringsOf(lane, things),
      tools: things.map((thing) => thing.name).filter((name) => !OWN_WORDS.has(name)),
      oven,
      watch: lane === 'wait' ? 'none' : lane === 'oven' || time.coversSleep ? 'ends' : 'whole',
      warmth: lane === 'wait' ? this.#warmth(item) : undefined,
      care: this.#care(item, time.time, id),
      place,
    };
    this.#activities.push(activity);
    this.#lanes.set(activity.id, lane);
    if (this.#activities.length === MOST_ACTIVITIES + 1) this.#say('T15', place, { most: String(MOST_ACTIVITIES) });
    return activity;
  }

  /** How warm it is around a thing that is left: as written, else the kitchen's room. */
  #warmth({ content }: StepItem): string | undefined {
    const at = content.clauses.find((clause): clause is AtClause => clause.kind === 'at');
    const room = this.kitchen.room && `${printTemperature(this.kitchen.room)}, the room`;
    return at ? printTemperature(at.temperature) : room;
  }

  /** Care that is due too often to be a plan is an error; care that is never due is the compiler's T05. */
  #care(item: StepItem, time: Allowance, id: string): Care[] {
    return item.every.flatMap(({ content, ref }, index) => {
      const period = plainMinutes(content.period);
      const lasts = Math.max(1, content.duration ? wholeMinutes(content.duration.high.minutes) : 1);
      const most = topOf(time);
      const visits = period > 0 ? quotientUp(most, period) - 1 : Infinity;
      const place = linePlace(ref);
      if (period <= lasts || visits > MOST_VISITS) {
        this.#say('T14', place, {
          count: visits === Infinity ? 'no end of' : String(visits),
          most: String(MOST_VISITS),
        });
        return [];
      }
      const falls = Array.from({ length: Math.max(0, visits) }, (_, visit) => period * (visit + 1));
      const byCalendar = content.period.low.parts.every((part) => isCalendarUnit(part.unit));
      return [
        {
          id: `${id}/every${index + 1}`,
          label: content.prose.text,
          period,
          falls,
          give: tenth(period),
          lasts,
          byCalendar,
          place,
        },
      ];
    });
  }

  #oven(item: StepItem, things: readonly Thing[], batches: Batches, place: Place): OvenNeed {
    const at = item.content.clauses.find((clause): clause is AtClause => clause.kind === 'at');
    const written = things.find((thing) => thing.name === 'shelf');
    const enters = at && heatOf(at.temperature);
    const leaves = at && (at.change ? heatOf(at.change.to) : enters);
    const most = this.kitchen.ovens.reduce((shelves, oven) => Math.max(shelves, oven.shelves), 0);
    const wanted = written ? wholeOf(multiply(written.count, this.#factor)) : undefined;
    const need: OvenNeed = {
      shelves: wanted === undefined ? 'all' : batches.why === 'shelves' ? Math.min(wanted, most) : wanted,
      enters,
      leaves,
      moving: at?.change !== undefined,
      heating: enters ? heatingTime(enters.low) : 0,
    };
    this.#fits(need, place, at);
    return need;
  }

  #fits(need: OvenNeed, place: Place, at: AtClause | undefined): void {
    const { ovens } = this.kitchen;
    if (ovens.length === 0) this.#say('T12', place, { kitchen: this.kitchen.name ?? 'the kitchen' });
    else if (!ovens.some((oven) => ovenFits(need, oven)) && at) {
      const hottest = ovens.reduce((most, oven) => Math.max(most, oven.hottest), 0);
      const coolest = ovens.reduce((least, oven) => Math.min(least, oven.coolest), Infinity);
      const wanted = Math.max(need.enters?.low ?? 0, need.leaves?.low ?? 0);
      this.#say('T13', place, { wanted: `${wanted} C`, range: `${coolest} to ${hottest} C` });
    }
  }

  /** Which steps have to be done in several batches, because the oven or the tins are too few. */
  #batches(formula: Formula, steps: readonly StepItem[]): Batches {
    const ovens = steps.map((step) => step.content.lane === 'oven');
    const first = ovens.indexOf(true);
    if (first < 0) return NO_BATCHES;
    let last = first;
    while (ovens[last + 1]) last++;
    const shelves = steps.slice(first, last + 1).reduce((most, step) => Math.max(most, shelvesWritten(step)), 0);
    const largest = this.kitchen.ovens.reduce((most, oven) => Math.max(most, oven.shelves), 0);
    const byShelves = largest > 0 ? quotientUp(wholeOf(multiply(rational(shelves), this.#factor)), largest) : 1;
    if (byShelves > 1) return { from: first, to: last, count: byShelves, why: 'shelves' };
    const vessel = formula.facts.vessel?.content;
    const tins = vessel && this.kitchen.tools.get(thingName(vessel.thing.text));
    if (!vessel || tins === undefined || tins === 0) return NO_BATCHES;
    const byTins = quotientUp(wholeOf(multiply(vessel.count, this.#factor)), tins);
    const fill = steps.slice(0, first).findLastIndex((step) => step.content.lane === 'hands');
    return byTins > 1 ? { from: Math.max(0, fill), to: last, count: byTins, why: 'tins' } : NO_BATCHES;
  }

  /** The second and later batches of a run of steps, one run after another. */
  #repeat(
    steps: readonly StepItem[],
    make: Make,
    key: string,
    batches: Batches,
    first: Activity,
  ): { id: string; lane: Activity['lane'] } {
    let before = { id: first.id, lane: first.lane };
    for (let batch = 2; batch <= batches.count; batch++) {
      steps.forEach((item, at) => {
        const made = this.#step(make, item, `${this.key}/${key}/${batches.from + at + 1}`, batches, batch);
        if (at > 0) this.#follow(before, made, item);
        else this.#link(before.id, made.id, ownLimit({ ...AT_ONCE, most: this.kitchen.stand }, 'batch'), item);
        before = { id: made.id, lane: made.lane };
      });
      if (this.#activities.length > MOST_ACTIVITIES) break;
    }
    return before;
  }

  #follow(before: { readonly id: string; readonly lane: Activity['lane'] }, next: Activity, item: StepItem): void {
    const at = (gap: Allowance, reason: LinkReason): void =>
      this.#link(before.id, next.id, ownLimit(gap, reason), item);
    if (before.lane === 'oven' && next.lane === 'oven' && next.oven) {
      // The dish stays in the oven, which is hot.
      this.#replace(next.id, { ...next, oven: { ...next.oven, heating: 0 } });
      at(AT_ONCE, 'in-the-oven');
    } else if (before.lane === 'wait') at(AT_ONCE, 'after-wait');
    else if (next.lane === 'wait') at(AT_ONCE, 'left-alone');
    else at({ least: 0, preferred: 0, most: this.kitchen.stand }, 'next-step');
  }

  #replace(id: string, activity: Activity): void {
    const index = this.#activities.findIndex((one) => one.id === id);
    this.#activities[index] = activity;
  }

  #link(from: string, to: string, standing: Standing, item: StepItem | InItem, product?: string): void {
    this.#links.push({ from, to, ...standing, product, place: linePlace(item.ref) });
  }

  /** The next step waits for what a line draws. */
  #draw(formula: Formula, make: Make, item: InItem, index: number, scope: string): void {
    const origin = originOf(formula, item, scope);
    if (!origin) return;
    const waiting = this.#waiting(make, scope, index);
    if (!waiting) return;
    const { product, until } = origin;
    const drawnAt = new Set(
      product.draws.map((draw) => this.#waiting(formula.makes[draw.makeIndex] ?? make, scope, draw.itemIndex)),
    );
    for (const source of this.#ends(origin.formula, origin.make, origin.scope, until)) {
      const stand = standing(origin.make, source.lane === 'wait' && drawnAt.size < 2, this.kitchen.hold);
      this.#link(source.id, waiting, stand, item, product.name);
    }
  }

  /** The first activity that an in line of a make holds up: the step under it, or the last step if none follows. */
  #waiting(make: Make, scope: string, index: number): string | undefined {
    const steps = this.#steps.get(scope + make.id);
    if (!steps) return undefined;
    let after: string | undefined;
    let last: string | undefined;
    for (const [at, step] of steps) {
      if (at > index) after ??= step.first;
      last = step.first;
    }
    return after ?? last;
  }

  /** What has to end before a make is done up to an item; through makes without steps, what those draw. */
  #ends(formula: Formula, make: Make, scope: string, until: number): Source[] {
    let last: string | undefined;
    for (const [at, step] of this.#steps.get(scope + make.id) ?? []) if (at < until) last = step.last;
    if (last !== undefined) return [{ id: last, lane: this.#lanes.get(last) ?? 'hands' }];
    return make.items.slice(0, until).flatMap((item) => {
      const origin = item.kind === 'in' ? originOf(formula, item, scope) : undefined;
      if (!origin) return [];
      return this.#ends(origin.formula, origin.make, origin.scope, origin.until);
    });
  }
}

interface Batches {
  /** Ordinals of the first and last step that are repeated. */
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly why: 'shelves' | 'tins' | 'none';
}

const NO_BATCHES: Batches = { from: -1, to: -1, count: 1, why: 'none' };
const AT_ONCE: Allowance = { least: 0, preferred: 0, most: 0 };
/** Words after `using` that are lanes or parts of an oven, not tools. */
const OWN_WORDS = new Set(['hob', 'ring', 'oven', 'shelf', 'flame']);

function ringsOf(lane: Activity['lane'], things: readonly Thing[]): number {
  const named = things.filter((thing) => thing.name === 'ring' || thing.name === 'hob');
  if (named.length > 0) return named.reduce((sum, thing) => sum + wholeOf(thing.count), 0);
  return lane === 'hob' ? 1 : 0;
}

function shelvesWritten(step: StepItem): number {
  const things = step.content.clauses.flatMap((clause) => (clause.kind === 'using' ? clause.things : []));
  return things.filter((thing) => thing.name === 'shelf').reduce((sum, thing) => sum + wholeOf(thing.count), 0);
}

/** Whole things, a part of one counted as one. */
function wholeOf(value: Rational): number {
  const down = floor(value);
  return toApproximateNumber(rational(compare(rational(down), value) < 0 ? down + 1n : down));
}

/** A limit that nobody wrote. */
const ownLimit = (gap: Allowance, reason: LinkReason): Standing => ({ gap, reason, written: false, byCalendar: false });

/** How long something stands, and what says so. */
type Standing = Pick<Link, 'gap' | 'reason' | 'written' | 'byCalendar'>;

/**
 * How long a thing may stand before it is used, and how long it must (`best after`). The first `keeps` counts: others
 * speak of other places, or of the thing once opened. After a wait nothing stands beyond the wait's own range.
 */
function standing(make: Make, afterWait: boolean, usual: Minute): Standing {
  const best = make.bestAfter[0]?.content.time;
  const keeps = make.keeps[0]?.content.time;
  const least = best ? wholeMinutes(best.low.minutes) : 0;
  const byCalendar = best?.low.parts.every((part) => isCalendarUnit(part.unit)) ?? false;
  if (keeps) {
    const most = Math.max(least, wholeMinutes(keeps.high.minutes));
    return { gap: { least, preferred: least, most }, reason: 'kept', written: true, byCalendar };
  }
  if (best) return { gap: { least, preferred: least, most: Infinity }, reason: 'kept', written: true, byCalendar };
  if (afterWait) return { gap: AT_ONCE, reason: 'after-wait', written: false, byCalendar };
  return { gap: { least: 0, preferred: 0, most: usual }, reason: 'drawn', written: false, byCalendar };
}

interface Origin {
  readonly formula: Formula;
  readonly make: Make;
  readonly scope: string;
  readonly product: Product;
  /** How many items of the make have to be done: all, or those up to where a thing is saved. */
  readonly until: number;
}

/** Where a drawn product is made: in this recipe, or in the one that it is used from. */
function originOf(formula: Formula, item: InItem, scope: string): Origin | undefined {
  if (item.source.kind !== 'product') return undefined;
  const product = formula.products.get(normaliseName(item.source.product));
  if (!product) return undefined;
  const from = product.formula ?? formula;
  const { makeIndex, itemIndex } = product.origin ?? product;
  const make = from.makes[makeIndex];
  if (!make) return undefined;
  const until = itemIndex >= 0 ? itemIndex : make.items.length;
  return {
    formula: from,
    make,
    scope: product.formula ? `${scope}${normaliseName(product.name)}:` : scope,
    product,
    until,
  };
}
