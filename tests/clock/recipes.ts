import { compile, type Compiled } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { memoryHost, splitExample } from '@quern/testkit';
import type { Diagnostic } from '@quern/text';
import {
  awakeHours,
  formulasRequest,
  menuRequest,
  planClock,
  plainCalendar,
  type AwakeHours,
  type ClockPlan,
  type ClockRequest,
} from '@quern/views';
import { planDated, readMoment, type DatedPlan } from '@quern/publish';

const foods = createFoodBook();

/** A line `=== NAME` begins another file that the first may use. */
export function compiled(text: string): Compiled {
  const files = splitExample(text);
  return compile('main.quern', files[0]?.text ?? '', memoryHost(files, foods));
}

/** All recipes of a text, wanted together; or its menu. */
export function request(text: string): ClockRequest {
  const file = compiled(text);
  const [menu] = file.menus;
  const kitchen = file.kitchens[0];
  const found = menu
    ? menuRequest(menu, kitchen)
    : formulasRequest(
        file.formulas.filter(({ variant }) => variant === undefined),
        kitchen,
      );
  if (!found) throw new Error('no recipe');
  return found;
}

/** The plan of a text by days of 24 hours, wanted so many minutes after midnight. */
export function planAt(
  text: string,
  ready: number,
  awake?: AwakeHours,
): { plan: ClockPlan | undefined; diagnostics: readonly Diagnostic[] } {
  const asked = request(text);
  const hours = awake ?? awakeHours(asked.kitchen);
  const dishes = asked.dishes.map((dish) => ({ ...dish, ready: (dish.ready ?? 0) + ready }));
  const { value, diagnostics } = planClock(
    { ...asked, dishes },
    { mode: 'ready', calendar: plainCalendar(hours), awake: hours },
  );
  return { plan: value, diagnostics };
}

/** The plan of a text in a zone; `now` is long before. */
export function planIn(zone: string, text: string, moment: string, kind: 'ready' | 'start' = 'ready'): DatedPlan {
  const read = readMoment(moment, zone);
  if (read.kind === 'unreadable') throw new Error(read.why);
  const asked = request(text);
  const when =
    kind === 'ready'
      ? ({ kind, at: read.at, now: read.at.subtract({ days: 500 }) } as const)
      : ({ kind, at: read.at } as const);
  return planDated(asked, when, awakeHours(asked.kitchen));
}

/** Minutes after midnight of day 0 as 'day clock', for tables in tests: '-1 21:30'. */
export function told(minute: number): string {
  const clock = ((minute % 1440) + 1440) % 1440;
  const hour = Math.floor(clock / 60);
  return `${(minute - clock) / 1440} ${String(hour).padStart(2, '0')}:${String(clock % 60).padStart(2, '0')}`;
}

/** The plan as rows of lane, beginning, end and sentence. */
export function rows(plan: ClockPlan | undefined): string[] {
  return (plan?.activities ?? []).map(
    ({ lane, start, end, label }) => `${lane} ${told(start)} to ${told(end)}: ${label}`,
  );
}
