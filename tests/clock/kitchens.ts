import type { Activity, Allowance, Care, Dish, Link, OvenNeed, PlanKitchen, PlanProblem, Sleep } from '@quern/views';

/** A generator of numbers that is the same on every machine (Lehmer; Park and Miller 1988). */
export class Dice {
  #state: number;

  constructor(seed: number) {
    this.#state = (seed % 2147483646) + 1;
    this.roll(1, 6);
  }

  /** A whole number from `low` to `high`, both included. */
  roll(low: number, high: number): number {
    this.#state = (this.#state * 48271) % 2147483647;
    return low + (this.#state % (high - low + 1));
  }

  oneOf<T>(values: readonly T[]): T {
    const value = values[this.roll(0, values.length - 1)];
    if (value === undefined) throw new RangeError('nothing to choose from');
    return value;
  }

  chance(percent: number): boolean {
    return this.roll(1, 100) <= percent;
  }
}

export const exactly = (minutes: number): Allowance => ({ least: minutes, preferred: minutes, most: minutes });
export const between = (least: number, most: number): Allowance => ({
  least,
  preferred: Math.floor((least + most) / 2),
  most,
});

export function activity(id: string, parts: Partial<Activity> & Pick<Activity, 'lane' | 'time'>): Activity {
  const { lane } = parts;
  return {
    id,
    dish: id.split('/')[0] ?? id,
    make: 'make',
    label: id,
    nature: 'figure',
    soonest: parts.time.least,
    cooks: lane === 'hands' ? 1 : 0,
    rings: lane === 'hob' ? 1 : 0,
    tools: [],
    oven: undefined,
    watch: lane === 'wait' ? 'none' : lane === 'oven' ? 'ends' : 'whole',
    warmth: undefined,
    coversSleep: false,
    care: [],
    byCalendar: false,
    place: undefined,
    ...parts,
  };
}

export function link(from: string, to: string, gap: Allowance, reason: Link['reason'] = 'next-step'): Link {
  return { from, to, gap, reason, product: undefined, written: false, byCalendar: false, place: undefined };
}

export function dish(id: string, last: string, stand: Allowance, ready: number | undefined): Dish {
  return { id, title: id, last, stand, standWritten: true, byCalendar: false, ready, place: undefined };
}

export const at = (low: number, high: number, shelves: number | 'all' = 1, heating = 0): OvenNeed => ({
  shelves,
  enters: { low, high },
  leaves: { low, high },
  moving: false,
  heating,
});

export function care(id: string, period: number, lasts: number, most: number): Care {
  const falls: number[] = [];
  for (let fall = period; fall < most; fall += period) falls.push(fall);
  return { id, label: id, period, falls, give: Math.floor(period / 10), lasts, byCalendar: false, place: undefined };
}

export const kitchen = (parts: Partial<PlanKitchen> = {}): PlanKitchen => ({
  name: undefined,
  cooks: 1,
  rings: 4,
  ovens: [{ name: 'oven', shelves: 2, coolest: 50, hottest: 250 }],
  tools: new Map(),
  ...parts,
});

/** Nights from 22:30 to 07:00 around the anchor, which stands at `clock` minutes after midnight. */
export function nights(clock: number, before: number, after: number, from = 1350, to = 420): Sleep[] {
  const sleep: Sleep[] = [];
  for (let day = -before; day <= after; day++) {
    sleep.push({ from: day * 1440 + from - clock, to: (day + 1) * 1440 + to - clock });
  }
  return sleep;
}

export function problem(
  parts: Partial<PlanProblem> & Pick<PlanProblem, 'activities' | 'links' | 'dishes'>,
): PlanProblem {
  return {
    kitchen: kitchen(),
    sleep: [],
    earliest: undefined,
    mode: 'ready',
    readyBetween: undefined,
    ...parts,
  };
}

/**
 * A small kitchen of one to four dishes, each a chain of two to four steps with waits between them, sometimes a part
 * made beforehand; one or two cooks, one or two ovens; sometimes a night in the way, sometimes a jar to be turned.
 */
export function smallKitchen(seed: number): PlanProblem {
  const dice = new Dice(seed);
  const activities: Activity[] = [];
  const links: Link[] = [];
  const dishes: Dish[] = [];
  const night = dice.chance(60);
  const count = dice.roll(1, night ? 3 : 4);
  for (let number = 0; number < count; number++) {
    const name = `d${number}`;
    let before: Activity | undefined;
    const steps = dice.roll(2, 4);
    for (let step = 0; step < steps; step++) {
      const next = randomStep(dice, `${name}/${step}`, before, night);
      activities.push(next);
      if (before) links.push(randomLink(dice, before, next));
      else if (dice.chance(30)) {
        const part = activity(`${name}/part`, { lane: 'hands', time: exactly(dice.roll(5, 40)) });
        activities.push(part);
        links.push(link(part.id, next.id, { least: 0, preferred: 0, most: dice.roll(1, 12) * 60 }, 'kept'));
      }
      before = next;
    }
    if (before)
      dishes.push(
        dish(
          name,
          before.id,
          { least: 0, preferred: 0, most: dice.oneOf([60, 120, 480]) },
          dice.oneOf([0, 0, 0, 30, -45]),
        ),
      );
  }
  return problem({
    activities,
    links,
    dishes,
    kitchen: kitchen({
      cooks: dice.oneOf([1, 1, 2]),
      rings: dice.oneOf([1, 2, 4]),
      ovens: Array.from({ length: dice.oneOf([1, 1, 1, 2]) }, (_, index) => ({
        name: `oven ${index + 1}`,
        shelves: dice.roll(1, 2),
        coolest: 50,
        hottest: 260,
      })),
    }),
    sleep: night ? nights(dice.oneOf([480, 720, 1140]), 4, 1) : [],
  });
}

function randomStep(dice: Dice, id: string, before: Activity | undefined, night: boolean): Activity {
  const lanes = ['hands', 'hands', 'oven', 'hob', 'wait', 'wait'] as const;
  const lane = before === undefined ? 'hands' : dice.oneOf(lanes);
  if (lane === 'wait') {
    if (night && dice.chance(20)) {
      return activity(id, { lane, time: between(480, 960), nature: 'freedom', coversSleep: true });
    }
    const least = dice.roll(2, night ? 60 : 18) * 10;
    const most = least + dice.roll(0, 20) * 10;
    const turned = least > 120 && dice.chance(35);
    return activity(id, {
      lane,
      time: between(least, most),
      nature: 'freedom',
      care: turned ? [care(`${id}/turn`, dice.oneOf([100, 150, 200]), 3, most)] : [],
    });
  }
  if (lane === 'oven') {
    const low = dice.oneOf([150, 180, 220]);
    return activity(id, {
      lane,
      time: exactly(dice.roll(2, 9) * 10),
      oven: at(low, low + dice.oneOf([0, 10, 30]), dice.oneOf([1, 1, 2, 'all' as const]) === 1 ? 1 : 'all', 20),
    });
  }
  return activity(id, { lane, time: exactly(dice.roll(1, 12) * 5) });
}

function randomLink(dice: Dice, before: Activity, next: Activity): Link {
  if (before.lane === 'wait' || next.lane === 'wait') return link(before.id, next.id, exactly(0), 'after-wait');
  return link(before.id, next.id, { least: 0, preferred: 0, most: dice.oneOf([0, 30, 60]) });
}
