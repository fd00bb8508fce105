import type { Diagnostic } from '@quern/text';
import { linePlace, type Compiled, type Formula, type Kitchen, type Menu } from '@quern/compiler';
import { plainCalendar } from './calendar.js';
import { awakeHours } from './clock-kitchen.js';
import type { DishRequest } from './from-formula.js';
import { planClock, type ClockRequest } from './plan-clock.js';
import type { Minute } from './problem.js';

/** A menu as a request: each dish is wanted at its course's time, in minutes after midnight of the menu's day. */
export function menuRequest(menu: Menu, kitchen: Kitchen | undefined): ClockRequest {
  const dishes: DishRequest[] = [];
  let day = 0;
  let before = 0;
  for (const course of menu.courses) {
    const clock: Minute | undefined = course.clock?.minutes;
    // A course that is earlier on the dial than the one before it comes after midnight.
    if (clock !== undefined && clock < before) day += 1440;
    before = clock ?? before;
    for (const { formula, factor } of course.dishes) {
      if (!formula) continue;
      dishes.push({ formula, ready: day + before, course: course.name, ...(factor && { factor }) });
    }
  }
  return { title: menu.name, dishes, place: linePlace(menu.ref), ...(kitchen && { kitchen }) };
}

/** Some recipes, all wanted at the anchor. */
export function formulasRequest(formulas: readonly Formula[], kitchen: Kitchen | undefined): ClockRequest | undefined {
  const [first] = formulas;
  if (!first) return undefined;
  const title = formulas.map((formula) => formula.title + (formula.variant ? ` (${formula.variant})` : '')).join(', ');
  const dishes = formulas.map((formula): DishRequest => ({ formula, ready: 0 }));
  return { title, dishes, place: linePlace(first.ref), ...(kitchen && { kitchen }) };
}

/**
 * What the clock has to say of a file by itself, without a date: each menu at the times of its courses, and each recipe
 * at whatever hour suits it.
 */
export function checkClock(compiled: Compiled): Diagnostic[] {
  const kitchen = compiled.kitchens[0];
  const calendar = plainCalendar(awakeHours(kitchen));
  const said: Diagnostic[] = [];
  for (const formula of compiled.formulas) {
    const request = formula.variant ? undefined : formulasRequest([formula], kitchen);
    if (request) said.push(...planClock(request, { mode: 'free', calendar }).diagnostics);
  }
  for (const menu of compiled.menus) {
    const request = menuRequest(menu, kitchen);
    if (request.dishes.length > 0) said.push(...planClock(request, { mode: 'ready', calendar }).diagnostics);
  }
  // The same line may be planned by itself and in a menu.
  const keys = new Set<string>();
  return said.filter(({ code, place, args }) => {
    const key = `${code} ${place.file} ${place.start} ${JSON.stringify(args)}`;
    return keys.has(key) ? false : keys.add(key) !== undefined;
  });
}
