import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { awakeHours, menuRequest, type ClockPlan } from '@quern/views';
import { midnightOf, planDated, type ZonedCalendar } from '@quern/publish';

/*
 * The situations in examples/clock-*.quern, each a menu with a date and a kitchen, planned in London.
 */
const folder = join(import.meta.dirname, '..', '..', 'examples');
const foods = createFoodBook();
const names = readdirSync(folder).filter((name) => /^clock-.*\.quern$/.test(name));

function planned(name: string): { plan: ClockPlan; dates: ZonedCalendar } {
  const read = (path: string): string => readFileSync(join(folder, path), 'utf8');
  const file = compile(name, read(name), { read, foods });
  expect(file.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  const [menu] = file.menus;
  if (!menu?.date) throw new Error(`${name} has no menu with a date`);
  const [kitchen] = file.kitchens;
  const midnight = midnightOf(menu.date, 'Europe/London');
  const when = { kind: 'day', midnight, now: midnight.subtract({ years: 1 }) } as const;
  const { plan, dates, diagnostics } = planDated(menuRequest(menu, kitchen), when, awakeHours(kitchen));
  expect(diagnostics).toEqual([]);
  if (!plan || !dates) throw new Error(`${name} has no plan`);
  return { plan, dates };
}

/** When each starts on the wall clock: '2041-03-02 08:30'. */
const wall = (dates: ZonedCalendar, minute: number): string =>
  dates.at(minute).toPlainDateTime().toString({ smallestUnit: 'minute' }).replace('T', ' ');

/** Where each begins and why, reckoned back by hand from its course. */
const begins: Readonly<Record<string, { readonly at: string; readonly because: string }>> = {
  'clock-ten-minutes.quern': { at: '2041-07-20 14:53', because: '4 and 3 minutes before 15:00' },
  'clock-small-oven.quern': {
    at: '2041-09-15 13:51',
    because: '12 min, 30 min in the cold, 15 min, four batches of 13 min and 20 min to cool: 129 min before 16:00',
  },
  'clock-season.quern': {
    at: '2041-03-26 17:25',
    because:
      'best six months (180 d) after 24 June, strained from 17:45 for 15 min, left three months (90 d) from 26 March by the calendar, made in 20 min',
  },
  'clock-night-bakers.quern': {
    at: '2041-09-13 10:02',
    because:
      'before 06:30: 2 h to cool, 46 min of oven, 60 min of proof, 15, 105, 6, 25 and 6 min of dough, 14 h of biga and 5 min: 20 h 28 min, every wait at its middle and everybody up',
  },
};

describe.each(names)('%s', (name) => {
  const { plan, dates } = planned(name);

  test('is planned to the proven best', () => {
    expect(plan.quality).toMatchObject({ optimal: true, perhapsBetterBy: 0 });
  });

  test('has everything ready at its course, and done not long before', () => {
    for (const { done, ready, bestFrom } of plan.dishes) {
      expect(done).toBeLessThanOrEqual(ready);
      expect(bestFrom).toBeLessThanOrEqual(ready);
    }
  });

  test('needs nobody who sleeps, by the wall clock', () => {
    const { from, to } = plan.kitchen.awake;
    const isUp = (minute: number): boolean => {
      const { hour, minute: past } = dates.at(minute);
      const clock = hour * 60 + past;
      return from < to ? clock >= from && clock <= to : clock >= from || clock <= to;
    };
    for (const { lane, start, end, label } of plan.activities) {
      if (lane !== 'wait') expect([isUp(start), isUp(end)], label).toEqual([true, true]);
    }
    for (const { start, end, label } of [...plan.visits, ...plan.heating.map((one) => ({ ...one, label: one.heat }))]) {
      expect([isUp(start), isUp(end)], label).toEqual([true, true]);
    }
  });

  test('gives no cook two jobs', () => {
    const busy = [...plan.activities.filter(({ hands }) => hands), ...plan.visits];
    for (const { start, label } of busy) {
      const at = busy.filter((other) => other.start <= start && start < other.end).length;
      expect(at, label).toBeLessThanOrEqual(plan.kitchen.cooks);
    }
  });

  const hand = begins[name];
  if (hand) {
    test(`begins at ${hand.at}: ${hand.because}`, () => {
      expect(wall(dates, plan.activities[0]?.start ?? NaN)).toBe(hand.at);
    });
  }
});

test('there are ten situations, and those reckoned by hand are among them', () => {
  expect(names.length).toBeGreaterThanOrEqual(10);
  for (const name of Object.keys(begins)) expect(names).toContain(name);
});
