import type { Activity, Dish, Link, PlanProblem } from '@quern/views';
import { activity, at, between, care, dish, exactly, kitchen, link, nights, problem } from './kitchens.js';

interface Step {
  readonly lane: Activity['lane'];
  readonly time: Activity['time'];
  readonly oven?: Activity['oven'];
  readonly coversSleep?: boolean;
}

const hands = (minutes: number): Step => ({ lane: 'hands', time: exactly(minutes) });
const wait = (least: number, most: number): Step => ({ lane: 'wait', time: between(least, most) });
const overnight: Step = { lane: 'wait', time: between(480, 960), coversSleep: true };
const hob = (minutes: number): Step => ({ lane: 'hob', time: exactly(minutes) });
const oven = (minutes: number, low: number, high: number, shelves: number | 'all' = 1): Step => ({
  lane: 'oven',
  time: exactly(minutes),
  oven: at(low, high, shelves, 20),
});

/** Eight recipes of a market day: two loaves with leavens, a laminated dough, a tart, a roast, a stew, a cake, biscuits. */
export function bakeDay(): PlanProblem {
  const activities: Activity[] = [];
  const links: Link[] = [];
  const dishes: Dish[] = [];
  const chain = (name: string, make: string, steps: readonly Step[]): { first: string; last: string } => {
    let before: Activity | undefined;
    let first = '';
    steps.forEach((step, index) => {
      const next = activity(`${name}/${make}/${index}`, { ...step, make, dish: name });
      activities.push(next);
      if (before) {
        const tight = before.lane === 'wait' || next.lane === 'wait';
        links.push(link(before.id, next.id, tight ? exactly(0) : { least: 0, preferred: 0, most: 60 }));
      } else first = next.id;
      before = next;
    });
    return { first, last: before?.id ?? '' };
  };
  const draw = (from: string, to: string, most: number, wasWait = false): void => {
    links.push(link(from, to, wasWait ? exactly(0) : { least: 0, preferred: 0, most }));
  };
  const served = (name: string, last: string, keeps: number): void => {
    dishes.push(dish(name, last, { least: 0, preferred: 0, most: keeps }, 0));
  };

  const leaven = chain('rye', 'leaven', [hands(3), wait(600, 840)]);
  const soaker = chain('rye', 'soaker', [hands(5), wait(600, 1080)]);
  const rye = chain('rye', 'loaf', [
    hands(8),
    wait(45, 60),
    hands(10),
    wait(90, 120),
    oven(60, 250, 250, 'all'),
    wait(120, 240),
  ]);
  draw(leaven.last, rye.first, 0, true);
  draw(soaker.last, rye.first, 0, true);
  served('rye', rye.last, 7 * 1440);

  const biga = chain('white', 'biga', [hands(5), wait(720, 960)]);
  const white = chain('white', 'loaf', [
    hands(15),
    wait(60, 90),
    hands(10),
    wait(45, 75),
    oven(35, 230, 240, 'all'),
    wait(60, 120),
  ]);
  draw(biga.last, white.first, 0, true);
  served('white', white.last, 2 * 1440);

  const base = chain('crescents', 'base', [hands(8), wait(50, 70), hands(5), overnight]);
  const block = chain('crescents', 'block', [hands(10), wait(30, 180)]);
  const folded = chain('crescents', 'folded', [hands(15), wait(45, 90), hands(10), wait(45, 90), hands(10), overnight]);
  const crescents = chain('crescents', 'crescents', [
    hands(25),
    wait(120, 150),
    hands(5),
    oven(20, 190, 200, 'all'),
    wait(20, 60),
  ]);
  draw(base.last, folded.first, 0, true);
  draw(block.last, folded.first, 2 * 1440);
  draw(folded.last, crescents.first, 3 * 1440);
  served('crescents', crescents.last, 1440);

  const pastry = chain('tart', 'pastry', [hands(10), wait(60, 240)]);
  const filling = chain('tart', 'filling', [hands(10), hob(12)]);
  const tart = chain('tart', 'tart', [hands(15), oven(20, 180, 190), hands(5), oven(30, 150, 160), wait(60, 180)]);
  draw(pastry.last, tart.first, 2 * 1440);
  draw(filling.last, `tart/tart/2`, 1440);
  served('tart', tart.last, 1440);

  const roast = chain('roast', 'roast', [hands(15), wait(30, 60), oven(75, 170, 180), wait(15, 30), hands(10)]);
  served('roast', roast.last, 60);

  const stew = chain('stew', 'stew', [hands(25), hob(20), oven(150, 150, 160), hands(5)]);
  served('stew', stew.last, 3 * 1440);

  const cake = chain('cake', 'cake', [hands(20), oven(90, 165, 165), wait(120, 180), hands(15)]);
  served('cake', cake.last, 5 * 1440);

  const biscuits = chain('biscuits', 'biscuits', [
    hands(15),
    wait(30, 120),
    hands(10),
    oven(15, 170, 180, 2),
    wait(20, 60),
  ]);
  served('biscuits', biscuits.last, 7 * 1440);

  return problem({
    activities,
    links,
    dishes,
    kitchen: kitchen({ cooks: 2, rings: 4, ovens: [{ name: 'oven', shelves: 2, coolest: 50, hottest: 270 }] }),
    sleep: nights(16 * 60, 7, 1),
  });
}

void care;
