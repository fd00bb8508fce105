import type { Compiled } from '@quern/compiler';
import { clockPage, isZone, midnightOf, momentOfEpoch, planDated, readMoment, type WhenWanted } from '@quern/publish';
import { sentence, wayOut } from '@quern/text';
import { awakeHours, formulasRequest, menuRequest, type ClockRequest } from '@quern/views';
import type { Rendered, Settings } from '../protocol.js';
import { BUDGET } from './budget.js';
import { choose } from './choices.js';

const refused = (...reasons: readonly string[]): Rendered => ({ ok: false, reasons });

/** The clock of a menu or a recipe, for a moment or without one. */
export function renderClock(compiled: Compiled, settings: Settings): Rendered {
  const chosen = choose(compiled, settings.choice);
  if (!chosen) return refused('There is no recipe here yet.', 'Begin one with a line “recipe NAME”.');
  const [kitchen] = compiled.kitchens;
  if (chosen.kind === 'formula') {
    const request = formulasRequest([chosen.formula], kitchen);
    return request
      ? plan(request, when(settings, undefined), awakeHours(kitchen))
      : refused('There is nothing to plan here.');
  }
  const { menu } = chosen;
  const unknown = menu.courses.flatMap(({ dishes }) => dishes).find(({ formula }) => !formula);
  if (unknown) return refused(`The menu has a dish that is not known: ${unknown.name}`, 'The messages say why.');
  if (menu.courses.some(({ clock }) => !clock))
    return refused('A course of the menu has no time.', 'Write “course 19:30”.');
  return plan(menuRequest(menu, kitchen), when(settings, menu.date), awakeHours(kitchen));
}

interface Wanted {
  readonly when: WhenWanted | undefined;
  readonly problem?: string;
  readonly note: string;
}

function when({ ready, zone, now }: Settings, menuDate: string | undefined): Wanted {
  const undated: WhenWanted = { kind: 'undated', courses: menuDate !== undefined };
  if (!isZone(zone)) {
    return { when: undated, note: 'This system names no time zone, so the plan has no dates.' };
  }
  const present = momentOfEpoch(now, zone);
  if (ready !== '') {
    const read = readMoment(ready, zone);
    if (read.kind === 'unreadable') return { when: undefined, problem: read.why, note: '' };
    if (read.at.epochMilliseconds <= present.epochMilliseconds)
      return { when: undefined, problem: 'That moment is past: give one that is to come.', note: '' };
    return { when: { kind: 'ready', at: read.at, now: present }, note: '' };
  }
  if (menuDate === undefined) return { when: undated, note: '' };
  const midnight = midnightOf(menuDate, zone);
  if (midnight.add({ days: 1 }).epochMilliseconds <= present.epochMilliseconds)
    return { when: undated, note: `The menu’s date ${menuDate} is past, so the plan has no dates.` };
  return { when: { kind: 'day', midnight, now: present }, note: '' };
}

function plan(request: ClockRequest, wanted: Wanted, awake: ReturnType<typeof awakeHours>): Rendered {
  if (!wanted.when) return refused(wanted.problem ?? '');
  const asked = wanted.when.kind === 'ready' ? earlierCourses(request, wanted.when) : wanted.when;
  const { plan: made, diagnostics, moments, now } = planDated(request, asked, awake, BUDGET);
  if (!made) return refused(...diagnostics.flatMap((one) => [sentence(one), wayOut(one)]));
  const html = clockPage(made, { moments, why: false, ...(now === undefined ? {} : { now }) });
  return { ok: true, html, note: wanted.note };
}

/** Of a menu the last course is ready at the moment, the others as long before as the menu says. */
function earlierCourses(request: ClockRequest, wanted: Extract<WhenWanted, { kind: 'ready' }>): WhenWanted {
  const last = request.dishes.reduce((latest, { ready }) => Math.max(latest, ready ?? 0), 0);
  return { ...wanted, at: wanted.at.subtract({ minutes: last }) };
}
