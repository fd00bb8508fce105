import highsLoader from 'highs';
import type { Activity, Allowance, FoundPlan, PlanProblem } from '@quern/views';

/*
 * The same problem as a mixed-integer program in the words of docs/clock.md, solved by HiGHS: an order variable for each
 * pair that could be in each other's way, one for each night, one for each oven and cook. Nothing is shared with the
 * clock's own search.
 */

const solver = await highsLoader();
const BIG = 12_000;

interface Term {
  readonly by: number;
  readonly name: string;
}

class Program {
  readonly rows: string[] = [];
  readonly binaries = new Set<string>();
  readonly free = new Set<string>();
  readonly priced: Term[] = [];
  #count = 0;

  name(prefix: string): string {
    return `${prefix}${this.#count++}`;
  }

  binary(prefix = 'b'): string {
    const name = this.name(prefix);
    this.binaries.add(name);
    return name;
  }

  moment(prefix: string): string {
    const name = this.name(prefix);
    this.free.add(name);
    return name;
  }

  /** Sum of terms >= right. */
  atLeast(terms: readonly Term[], right: number): void {
    const joined = new Map<string, number>();
    for (const { by, name } of terms) joined.set(name, (joined.get(name) ?? 0) + by);
    const parts = [...joined]
      .filter(([, by]) => by !== 0)
      .map(([name, by]) => `${by < 0 ? '-' : '+'} ${Math.abs(by)} ${name}`);
    if (parts.length === 0) {
      if (right <= 0) return;
      parts.push(`+ 0 ${[...this.free][0] ?? 'nothing'}`);
    }
    this.rows.push(`r${this.rows.length}: ${parts.join(' ')} >= ${right}`);
  }

  /** later - earlier >= gap, unless one of the switches is off (a switch is on at 1; `not` on at 0). */
  after(earlier: Time, later: Time, gap: number, on: readonly string[] = [], off: readonly string[] = []): void {
    const terms: Term[] = [];
    if (later.name) terms.push({ by: 1, name: later.name });
    if (earlier.name) terms.push({ by: -1, name: earlier.name });
    for (const name of on) terms.push({ by: -BIG, name });
    for (const name of off) terms.push({ by: BIG, name });
    this.atLeast(terms, gap + earlier.offset - later.offset - BIG * on.length);
  }

  text(): string {
    const cost = this.priced.map(({ by, name }) => `+ ${by} ${name}`).join(' ');
    return [
      'Minimize',
      ` obj: ${cost === '' ? '0 nothing' : cost}`,
      'Subject To',
      ...this.rows.map((row) => ` ${row}`),
      'Bounds',
      ...[...this.free].map((name) => ` -${BIG / 2} <= ${name} <= ${BIG / 2}`),
      'Binary',
      ...[...this.binaries].map((name) => ` ${name}`),
      'End',
    ].join('\n');
  }
}

interface Time {
  readonly name: string;
  readonly offset: number;
}

const fixed = (offset: number): Time => ({ name: '', offset });
const shifted = (time: Time, by: number): Time => ({ name: time.name, offset: time.offset + by });

interface Running {
  readonly activity: Activity | undefined;
  readonly start: Time;
  readonly end: Time;
  /** For a visit of care that may not be due: on when it is. */
  readonly due: readonly string[];
  /** Activity and care, for a visit. */
  readonly careOf?: string;
}

/**
 * The best plan by HiGHS, or undefined when it says that there is none. With `kept`, the plan in the order of that one,
 * its hands-on work drawn together.
 */
export function solveByHighs(
  problem: PlanProblem,
  kept?: FoundPlan,
  seconds = 60,
): { plan: FoundPlan | undefined; milliseconds: number; finished: boolean } {
  const program = new Program();
  const starts = problem.activities.map(() => ({ name: program.moment('s'), offset: 0 }));
  const ends = problem.activities.map((activity, index): Time => {
    if (activity.time.least === activity.time.most) return shifted(starts[index] ?? fixed(0), activity.time.least);
    return { name: program.moment('e'), offset: 0 };
  });
  const at = new Map(problem.activities.map((activity, index) => [activity.id, index]));
  const startOf = (id: string): Time => starts[at.get(id) ?? -1] ?? fixed(NaN);
  const endOf = (id: string): Time => ends[at.get(id) ?? -1] ?? fixed(NaN);

  const service: Time = problem.mode === 'ready' ? fixed(0) : { name: program.moment('z'), offset: 0 };
  const price = (from: Time, to: Time, beyond: number, sign: 1 | -1, by: number): void => {
    // extra >= sign * ((to - from) - beyond)
    const extra = program.name('x');
    program.priced.push({ by, name: extra });
    const terms: Term[] = [{ by: 1, name: extra }];
    if (to.name) terms.push({ by: -sign, name: to.name });
    if (from.name) terms.push({ by: sign, name: from.name });
    program.atLeast(terms, sign * (to.offset - from.offset - beyond));
  };
  const allow = (from: Time, to: Time, allowed: Allowance, early?: number): void => {
    program.after(from, to, allowed.least);
    if (allowed.most < Infinity) program.after(to, from, -allowed.most);
    const reach = allowed.most === Infinity ? Math.max(allowed.preferred, 720) : allowed.most - allowed.preferred;
    if (early !== undefined) price(from, to, allowed.preferred, 1, early);
    else if (reach > 0) price(from, to, allowed.preferred, 1, Math.ceil(100_000 / reach));
    const below = allowed.preferred - allowed.least;
    if (below > 0) price(from, to, allowed.preferred, -1, Math.ceil(100_000 / below));
  };
  problem.activities.forEach((activity, index) => {
    const start = starts[index] ?? fixed(0);
    if (activity.time.least !== activity.time.most) allow(start, ends[index] ?? fixed(0), activity.time);
    if (problem.earliest !== undefined)
      program.after(fixed(problem.earliest + (activity.oven?.heating ?? 0)), start, 0);
  });
  for (const { from, to, gap } of problem.links) allow(endOf(from), startOf(to), gap);
  for (const { last, stand, ready } of problem.dishes) {
    const served = ready === undefined ? service : fixed(ready);
    const reach = Math.max(1, Math.min(stand.most - stand.least, 7 * 1440));
    allow(endOf(last), served, stand, Math.ceil(1_000_000_000 / reach));
  }

  const awake = (from: Time, to: Time, due: readonly string[]): void => {
    for (const sleep of problem.sleep) {
      const after = program.binary();
      program.after(to, fixed(sleep.from), 0, due, [after]);
      program.after(fixed(sleep.to), from, 0, [after, ...due]);
    }
  };
  const running: Running[] = [];
  const careTimes: { index: number; which: number; visits: Time[] }[] = [];
  problem.activities.forEach((activity, index) => {
    const start = starts[index] ?? fixed(0);
    const end = ends[index] ?? fixed(0);
    running.push({ activity, start, end, due: [] });
    if (activity.watch === 'whole') awake(start, end, []);
    if (activity.watch === 'ends') {
      for (const moment of [shifted(start, -(activity.oven?.heating ?? 0)), start, end]) awake(moment, moment, []);
    }
    if (activity.coversSleep) {
      const nights = problem.sleep.map((sleep) => {
        const over = program.binary();
        program.after(start, fixed(sleep.from), 0, [over]);
        program.after(fixed(sleep.to), end, 0, [over]);
        return { by: 1, name: over };
      });
      program.atLeast(nights, 1);
    }
    activity.care.forEach((care, which) => {
      const visits = care.falls.map((fall) => {
        // due exactly when the activity lasts longer than the fall
        const due = program.binary();
        program.after(start, end, fall + 1, [due]);
        program.after(end, start, -fall, [], [due]);
        const visit: Time = { name: program.moment('v'), offset: 0 };
        program.after(start, visit, fall - care.give, [due]);
        program.after(visit, start, -(fall + care.give), [due]);
        program.after(shifted(visit, care.lasts), end, 0, [due]);
        awake(visit, shifted(visit, care.lasts), [due]);
        running.push({
          activity: undefined,
          start: visit,
          end: shifted(visit, care.lasts),
          due: [due],
          careOf: `${index}:${which}`,
        });
        return visit;
      });
      careTimes.push({ index, which, visits });
    });
  });

  const order = new Map<string, [string, string]>();
  /** Two switches: first ends before second starts, or the other way about, by such setting-up times. */
  const apart = (a: Running, b: Running, forward = 0, backward = 0): [string, string] => {
    const key = `${a.start.name}:${b.start.name}:${forward}:${backward}`;
    const known = order.get(key);
    if (known) return known;
    const first = program.binary();
    const second = program.binary();
    program.after(a.end, b.start, forward, [first]);
    program.after(b.end, a.start, backward, [second]);
    order.set(key, [first, second]);
    return [first, second];
  };
  const oneEach = (jobs: readonly Running[], size: number): void => {
    if (jobs.length <= size) return;
    const places = jobs.map(() => Array.from({ length: size }, () => program.binary('p')));
    places.forEach((row) =>
      program.atLeast(
        row.map((name) => ({ by: 1, name })),
        1,
      ),
    );
    jobs.forEach((a, i) => {
      jobs.slice(i + 1).forEach((b, offset) => {
        const j = i + 1 + offset;
        const [first, second] = apart(a, b);
        for (let place = 0; place < size; place++) {
          // both at this place (and both due): one of the two orders
          const terms = [
            { by: 1, name: first },
            { by: 1, name: second },
            { by: -1, name: places[i]?.[place] ?? '' },
            { by: -1, name: places[j]?.[place] ?? '' },
            ...[...a.due, ...b.due].map((name) => ({ by: -1, name })),
          ];
          program.atLeast(terms, -1 - a.due.length - b.due.length);
        }
      });
    });
  };
  oneEach(
    running.filter(({ activity }) => (activity ? activity.cooks > 0 : true)),
    problem.kitchen.cooks,
  );
  oneEach(
    running.filter(({ activity }) => (activity?.rings ?? 0) > 0),
    problem.kitchen.rings,
  );

  const baking = running.filter(({ activity }) => activity?.oven);
  const inOven = baking.map(() => problem.kitchen.ovens.map(() => program.binary('o')));
  inOven.forEach((row) =>
    program.atLeast(
      row.map((name) => ({ by: 1, name })),
      1,
    ),
  );
  const stays = new Map(problem.links.filter((l) => l.reason === 'in-the-oven').map((l) => [l.to, l.from]));
  problem.kitchen.ovens.forEach((oven, k) => {
    const shelves = (job: Running): number => {
      const need = job.activity?.oven?.shelves ?? 0;
      return need === 'all' ? oven.shelves : need;
    };
    baking.forEach((a, i) => {
      baking.slice(i + 1).forEach((b, offset) => {
        const j = i + 1 + offset;
        const x = a.activity?.oven;
        const y = b.activity?.oven;
        if (!x || !y) return;
        if (stays.get(b.activity?.id ?? '') === a.activity?.id || stays.get(a.activity?.id ?? '') === b.activity?.id)
          return;
        const share =
          !x.moving &&
          !y.moving &&
          x.enters !== undefined &&
          y.enters !== undefined &&
          shelves(a) + shelves(b) <= oven.shelves &&
          x.enters.low <= y.enters.high &&
          y.enters.low <= x.enters.high;
        if (share) return;
        const turn = (from: typeof x, to: typeof x): number => {
          if (!from.leaves || !to.enters) return 0;
          if (to.enters.low > from.leaves.high) return Math.ceil((to.enters.low - from.leaves.high) / 50) * 5;
          if (from.leaves.low > to.enters.high) return Math.ceil((from.leaves.low - to.enters.high) / 25) * 5;
          return 0;
        };
        const [first, second] = apart(a, b, turn(x, y), turn(y, x));
        program.atLeast(
          [
            { by: 1, name: first },
            { by: 1, name: second },
            { by: -1, name: inOven[i]?.[k] ?? '' },
            { by: -1, name: inOven[j]?.[k] ?? '' },
          ],
          -1,
        );
      });
    });
    // The generator makes ovens of one or two shelves: three that could share two by two never fit.
    for (let i = 0; i < baking.length; i++) {
      for (let j = i + 1; j < baking.length; j++) {
        for (let l = j + 1; l < baking.length; l++) {
          const three = [i, j, l].flatMap((index) => baking[index] ?? []);
          const [a, b, c] = three;
          if (!a || !b || !c || shelves(a) + shelves(b) + shelves(c) <= oven.shelves) continue;
          const orders = [...apart(a, b), ...apart(a, c), ...apart(b, c)];
          program.atLeast(
            [
              ...orders.map((name) => ({ by: 1, name })),
              ...[i, j, l].map((index) => ({ by: -1, name: inOven[index]?.[k] ?? '' })),
            ],
            -2,
          );
        }
      }
    }
  });

  if (kept) {
    keepOrder(program, problem, running, kept);
    priceVisits(program, running);
  }

  const began = performance.now();
  const solution = solver.solve(program.text(), {
    mip_rel_gap: 0,
    mip_abs_gap: 0.5,
    mip_feasibility_tolerance: 1e-9,
    primal_feasibility_tolerance: 1e-9,
    time_limit: seconds,
  });
  const milliseconds = performance.now() - began;
  if (solution.Status !== 'Optimal') {
    return { plan: undefined, milliseconds, finished: solution.Status === 'Infeasible' };
  }
  const value = (time: Time): number =>
    time.offset + (time.name ? Math.round((solution.Columns[time.name] as { Primal: number }).Primal) : 0);
  const primal = (name: string): number => (solution.Columns[name] as { Primal: number }).Primal;
  const plan: FoundPlan = {
    starts: starts.map(value),
    ends: ends.map(value),
    care: problem.activities.map((activity, index) =>
      activity.care.map((care, which) => {
        const length = value(ends[index] ?? fixed(0)) - value(starts[index] ?? fixed(0));
        const times = careTimes.find((entry) => entry.index === index && entry.which === which)?.visits ?? [];
        return times.filter((_, visit) => (care.falls[visit] ?? 0) < length).map(value);
      }),
    ),
    ovens: problem.activities.map((activity) => {
      const index = baking.findIndex((job) => job.activity === activity);
      return index < 0 ? -1 : (inOven[index] ?? []).findIndex((name) => primal(name) > 0.5);
    }),
    service: value(service),
    cost: 0,
  };
  return { plan, milliseconds, finished: true };
}

/** Each visit to the kitchen is paid for, unless its first job follows another within the hour. */
function priceVisits(program: Program, running: readonly Running[]): void {
  const hands = running.filter(({ activity }) => (activity?.cooks ?? 0) > 0);
  hands.forEach((b, j) => {
    const own = program.binary('n');
    program.priced.push({ by: 30_000, name: own });
    const joins = hands.flatMap((a, i) => {
      if (i === j) return [];
      const joins = program.binary('j');
      program.after(a.start, b.start, i > j ? 1 : 0, [joins]);
      program.after(b.start, a.end, -60, [joins]);
      return [joins];
    });
    program.atLeast(
      [own, ...joins].map((name) => ({ by: 1, name })),
      1,
    );
  });
}

/** Waking days, nights, care and the order at each cook, ring and oven stay as they are in a plan. */
function keepOrder(program: Program, problem: PlanProblem, running: readonly Running[], plan: FoundPlan): void {
  const times = new Map<Running, { from: number; to: number; oven: number }>();
  const seen = new Map<string, number>();
  for (const job of running) {
    if (job.activity) {
      const index = problem.activities.indexOf(job.activity);
      times.set(job, { from: plan.starts[index] ?? 0, to: plan.ends[index] ?? 0, oven: plan.ovens[index] ?? -1 });
      continue;
    }
    // Visits stand in the order of activities, cares and visits.
    const key = job.careOf ?? '';
    const visit = seen.get(key) ?? 0;
    seen.set(key, visit + 1);
    const [index = 0, which = 0] = key.split(':').map(Number);
    const from = plan.care[index]?.[which]?.[visit];
    const [due = ''] = job.due;
    program.atLeast([{ by: from === undefined ? -1 : 1, name: due }], from === undefined ? 0 : 1);
    if (from !== undefined) times.set(job, { from, to: from + job.end.offset - job.start.offset, oven: -1 });
  }
  const awake = (time: Time, at: number): void => {
    for (const sleep of problem.sleep) {
      if (at <= sleep.from) program.after(time, fixed(sleep.from), 0);
      if (at >= sleep.to) program.after(fixed(sleep.to), time, 0);
    }
  };
  for (const [a, x] of times) {
    if (a.activity?.watch !== 'none') {
      const heating = a.activity?.oven?.heating ?? 0;
      awake(shifted(a.start, -heating), x.from - heating);
      awake(a.start, x.from);
      awake(a.end, x.to);
    }
    if (a.activity?.coversSleep) {
      const night = problem.sleep.find((sleep) => x.from <= sleep.from && x.to >= sleep.to);
      if (night) {
        program.after(a.start, fixed(night.from), 0);
        program.after(fixed(night.to), a.end, 0);
      }
    }
    for (const [b, y] of times) {
      if (a === b || x.to > y.from) continue;
      const both = (takes: (job: Running) => boolean): boolean => takes(a) && takes(b);
      const shared =
        both(({ activity }) => (activity ? activity.cooks > 0 : true)) ||
        both(({ activity }) => (activity?.rings ?? 0) > 0) ||
        (x.oven >= 0 && x.oven === y.oven);
      if (shared) program.after(a.end, b.start, 0);
    }
  }
}
