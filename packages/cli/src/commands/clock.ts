import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  clockICalendar,
  clockJson,
  clockMarkdown,
  clockPage,
  clockSvg,
  clockText,
  isZone,
  midnightOf,
  momentOfEpoch,
  planDated,
  readMoment,
  type DatedPlan,
  type WhenWanted,
} from '@quern/publish';
import {
  awakeHours,
  formulasRequest,
  menuRequest,
  type AwakeHours,
  type ClockPlan,
  type ClockRequest,
} from '@quern/views';
import type { Kitchen } from '@quern/compiler';
import { defineCommand, RecipeError, UsageError, type ExitCode } from '../command.js';
import { readText } from '../files/read-text.js';
import { chooseFormula, loadFile, RECIPE_OPTIONS, tellErrors, type Loaded } from '../recipe/load.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { presentMilliseconds } from '../system/present.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'html', 'svg', 'ics', 'json', 'markdown'] as const;

const OPTIONS = {
  ready: { type: 'string', value: '"DATE TIME"', says: 'when everything has to be ready: "2027-05-08 16:00"' },
  start: {
    type: 'string',
    value: '"DATE TIME"',
    says: 'when you can begin; everything is then ready as soon as can be',
  },
  awake: {
    type: 'string',
    value: 'FROM-TO',
    says: 'the hours in which people may be needed: 07:00-22:30, unless a kitchen says so',
  },
  zone: { type: 'string', value: 'ZONE', says: 'the time zone: Europe/London; else that of the system' },
  kitchen: { type: 'string', value: 'FILE', says: 'a file whose kitchen is used' },
  ...RECIPE_OPTIONS,
  why: { type: 'boolean', says: 'beside each step, why it may move and why it may not' },
  now: { type: 'string', value: '"DATE TIME"', says: 'the present moment, to plan as from another one' },
  format: {
    type: 'string',
    value: 'FORMAT',
    choices: FORMATS,
    says: 'text (default), html, svg, ics, json or markdown',
  },
  ...OUTPUT_OPTION,
} as const;

export const clock = defineCommand({
  usage: ['FILE … [--ready "DATE TIME" | --start "DATE TIME"] [OPTION …]'],
  about: [
    'Says when to start and what to do when, from the recipe’s own lines, so that everything is ready at the moment asked for: nobody is needed in sleeping hours, no cook has two jobs, no oven two temperatures. Several files share one kitchen; a menu’s courses keep their own times.',
    'Without a moment the plan has no dates: day 1, the evening before. Written over an earlier calendar (-o plan.ics), events keep their identity and their changes are counted.',
  ],
  options: OPTIONS,
  examples: [
    { line: 'loaf.quern --ready "2027-05-08 08:00"', says: 'when to begin a loaf for Saturday breakfast' },
    { line: 'supper.quern --format html -o supper.html', says: 'a menu with its date, as a page with a chart' },
    {
      line: 'cabbage.quern --start "2027-05-08 10:00" --format ics -o cabbage.ics',
      says: 'a month of care, for a calendar',
    },
  ],
  async run({ files, options, system }) {
    if (files.length === 0) throw new UsageError('no file is named', 'quern clock FILE … --ready "2027-05-08 16:00"');
    if (options.ready !== undefined && options.start !== undefined)
      throw new UsageError('--ready and --start cannot be asked for together', 'give one of them');
    const loaded = files.map((path) => loadFile(path, system, options.root));
    const kitchen = kitchenOf(loaded, options.kitchen, options.root, system);
    const { request, menuDate } = requestOf(loaded, options, kitchen);
    const awake = options.awake === undefined ? awakeHours(kitchen) : readAwake(options.awake);
    const when = whenOf(options, menuDate, request, system);
    const planned = planDated(request, when, awake);
    const [first] = loaded;
    if (first) for (const file of loaded) tellErrors(file, system, file === first ? planned.diagnostics : []);
    if (!planned.plan) return 1;
    giveOut(render(planned.plan, planned, options, system), options.output, system);
    return exitCode(loaded);
  },
});

type ClockValues = {
  readonly [K in keyof typeof OPTIONS]: (typeof OPTIONS)[K]['type'] extends 'boolean' ? boolean : string | undefined;
};

const exitCode = (loaded: readonly Loaded[]): ExitCode =>
  loaded.some(({ compiled }) => compiled.diagnostics.some(({ severity }) => severity === 'error')) ? 1 : 0;

/** The kitchen of the file that was named, else the first that any file has. */
function kitchenOf(
  loaded: readonly Loaded[],
  named: string | undefined,
  root: string | undefined,
  system: System,
): Kitchen | undefined {
  if (named === undefined) return loaded.flatMap(({ compiled }) => compiled.kitchens)[0];
  const [kitchen] = loadFile(named, system, root).compiled.kitchens;
  if (!kitchen) throw new RecipeError(`${named} holds no kitchen`, 'begin one with a line “kitchen NAME”');
  return kitchen;
}

/** One menu alone as a menu; else the recipes of all files, one of each unless --recipe says which. */
function requestOf(
  loaded: readonly Loaded[],
  options: ClockValues,
  kitchen: Kitchen | undefined,
): { request: ClockRequest; menuDate?: string | undefined } {
  const [only] = loaded;
  const menus = loaded.flatMap(({ compiled }) => compiled.menus);
  const [menu] = menus;
  if (options.recipe === undefined && options.variant === undefined && menu && loaded.length === 1) {
    if (menus.length > 1)
      throw new RecipeError(`${only?.shown ?? ''} holds ${menus.length} menus`, 'keep one menu in a file');
    const unknown = menu.courses.flatMap(({ dishes }) => dishes).find(({ formula }) => !formula);
    if (unknown)
      throw new RecipeError(
        `the menu “${menu.name}” has a dish that is not known: ${unknown.name}`,
        `quern check ${only?.shown ?? ''} says why`,
      );
    if (menu.courses.some(({ clock: time }) => !time))
      throw new RecipeError(`a course of the menu “${menu.name}” has no time`, 'write “course 19:30”');
    return { request: menuRequest(menu, kitchen), menuDate: menu.date };
  }
  const formulas = loaded.map((file) => chooseFormula(file, options));
  const request = formulasRequest(formulas, kitchen);
  if (!request) throw new UsageError('no file is named');
  return { request };
}

function whenOf(options: ClockValues, menuDate: string | undefined, request: ClockRequest, system: System): WhenWanted {
  const zone = options.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (!isZone(zone)) throw new UsageError(`--zone: “${zone}” is not a time zone`, 'write one such as Europe/London');
  const read = (name: string, text: string): ReturnType<typeof midnightOf> => {
    const found = readMoment(text, zone);
    if (found.kind === 'unreadable')
      throw new UsageError(`--${name}: ${found.why}`, `write it like --${name} "2027-05-08 16:00"`);
    return found.at;
  };
  const now = options.now === undefined ? momentOfEpoch(presentMilliseconds(system), zone) : read('now', options.now);
  if (options.start !== undefined) {
    const at = read('start', options.start);
    if (at.epochMilliseconds < now.epochMilliseconds - 60_000)
      throw new UsageError(`--start: ${options.start} is past`, 'give a moment that is to come');
    return { kind: 'start', at };
  }
  if (options.ready !== undefined) {
    const at = read('ready', options.ready);
    if (at.epochMilliseconds <= now.epochMilliseconds)
      throw new UsageError(`--ready: ${options.ready} is past`, 'give a moment that is to come');
    // A menu: its last course is ready then, the others as long before as the menu says.
    return { kind: 'ready', at: shiftToLast(at, request), now };
  }
  if (menuDate !== undefined) {
    const midnight = midnightOf(menuDate, zone);
    if (midnight.add({ days: 1 }).epochMilliseconds <= now.epochMilliseconds)
      throw new UsageError(`the menu’s date ${menuDate} is past`, 'give another with --ready "2027-05-08 19:30"');
    return { kind: 'day', midnight, now };
  }
  return { kind: 'undated', courses: request.dishes.some(({ ready }) => (ready ?? 0) !== 0) };
}

function shiftToLast(at: ReturnType<typeof midnightOf>, request: ClockRequest): ReturnType<typeof midnightOf> {
  const last = request.dishes.reduce((latest, { ready }) => Math.max(latest, ready ?? 0), 0);
  return at.subtract({ minutes: last });
}

function readAwake(text: string): AwakeHours {
  const found = /^(\d{1,2}):(\d{2})\s*-\s*(\d{1,2}):(\d{2})$/.exec(text.trim());
  const [, fromHour, fromMinute, toHour, toMinute] = found ?? [];
  const from = Number(fromHour) * 60 + Number(fromMinute);
  const to = Number(toHour) * 60 + Number(toMinute);
  const inDay = from < 1440 && to <= 1440 && Number(fromMinute) < 60 && Number(toMinute) < 60;
  if (!found || !inDay || from === to)
    throw new UsageError(`--awake: “${text}” is not a stretch of a day`, 'write it like --awake 07:00-22:30');
  return { from, to };
}

function render(plan: ClockPlan, { dates, moments, now }: DatedPlan, options: ClockValues, system: System): string {
  const told = { moments, why: options.why, ...(now !== undefined && { now }) };
  switch (options.format) {
    case 'html':
      return clockPage(plan, told);
    case 'svg':
      return clockSvg(plan, { moments });
    case 'json':
      return clockJson(plan, dates);
    case 'markdown':
      return clockMarkdown(plan, told);
    case 'ics': {
      if (!dates)
        throw new UsageError(
          'a calendar needs a date',
          'give --ready "2027-05-08 16:00" or --start "2027-05-08 16:00"',
        );
      const file = options.output === undefined ? undefined : resolve(system.folder, options.output);
      const previous = file !== undefined && existsSync(file) ? readText(file, options.output ?? file) : undefined;
      return clockICalendar(plan, {
        calendar: dates,
        stamp: presentMilliseconds(system),
        ...(previous !== undefined && { previous }),
      });
    }
    default:
      return clockText(plan, told);
  }
}
