import { floor, rational, toApproximateNumber, type Rational } from '@quern/quantity';
import { singular, type Kitchen } from '@quern/compiler';
import type { Temperature, Thing } from '@quern/syntax';
import { heatOf } from './heat.js';
import type { Minute, Oven, PlanKitchen } from './problem.js';
import { wholeMinutes } from './step-times.js';

/** The hours in which people may be needed, in minutes after midnight; `to` below `from` runs past midnight. */
export interface AwakeHours {
  readonly from: Minute;
  readonly to: Minute;
}

/** Where nothing is written: one cook, four rings, one oven of two shelves, and people about from 07:00 to 22:30. */
export const USUAL_AWAKE: AwakeHours = { from: 420, to: 1350 };
const USUAL_RINGS = 4;
const USUAL_SHELVES = 2;
/** What a household oven can do (common practice, no source): Celsius. */
const COOLEST = 30;
const HOTTEST = 300;

/** A kitchen as the clock uses it, with what it says of standing and stretching. */
export interface ClockKitchen extends PlanKitchen {
  /** How long a thing may stand between two steps (`stand`), and finished (`hold`), where a recipe says nothing. */
  readonly stand: Minute;
  readonly hold: Minute;
  /** How far a wait of a single figure may be drawn out (`stretch`): a tenth is 1/10. */
  readonly stretch: Rational;
  /** How warm the room is, where a wait does not say. */
  readonly room: Temperature | undefined;
}

/** NOTATION 4.8: an hour, two hours, a tenth. */
const USUAL_STAND: Minute = 60;
const USUAL_HOLD: Minute = 120;
const USUAL_STRETCH = rational(1, 10);

export function awakeHours(kitchen: Kitchen | undefined): AwakeHours {
  return kitchen?.awake ? { from: kitchen.awake.from.minutes, to: kitchen.awake.to.minutes } : USUAL_AWAKE;
}

/** A written kitchen as the clock uses it; whatever it does not mention is as in the usual one. */
export function planKitchen(kitchen: Kitchen | undefined): ClockKitchen {
  const things = kitchen?.has ?? [];
  const countOf = (name: string): number | undefined => {
    const found = things.filter((thing) => thing.name === name);
    return found.length > 0 ? found.reduce((sum, thing) => sum + whole(thing.count), 0) : undefined;
  };
  const ovens = things.filter((thing) => thing.name === 'oven').flatMap(ovensOf);
  const known = new Set(['oven', 'ring', 'hob', 'cook']);
  const tools = things
    .filter((thing) => !known.has(thing.name))
    .map((thing): [string, number] => [thing.name, countOf(thing.name) ?? 1]);
  return {
    name: kitchen?.name,
    cooks: countOf('cook') ?? 1,
    rings: countOf('ring') ?? USUAL_RINGS,
    ovens: named(things.some((thing) => thing.name === 'oven') ? ovens : [usualOven(USUAL_SHELVES)]),
    tools: new Map(tools),
    stand: kitchen?.stand ? wholeMinutes(kitchen.stand.high.minutes) : USUAL_STAND,
    hold: kitchen?.hold ? wholeMinutes(kitchen.hold.high.minutes) : USUAL_HOLD,
    stretch: kitchen?.stretch ?? USUAL_STRETCH,
    room: kitchen?.room,
  };
}

const usualOven = (shelves: number): Oven => ({ name: 'oven', shelves, coolest: COOLEST, hottest: HOTTEST });

/** `1 oven of 2 shelves at 50-250 C`; a single temperature is how hot it goes. */
function ovensOf(thing: Thing): Oven[] {
  const shelves = thing.shelves === undefined ? USUAL_SHELVES : whole(thing.shelves);
  const heat = thing.heat && heatOf(thing.heat);
  const oven = {
    ...usualOven(shelves),
    ...(heat && { hottest: heat.high, ...(heat.low < heat.high && { coolest: heat.low }) }),
  };
  return Array.from({ length: whole(thing.count) }, () => oven);
}

const named = (ovens: readonly Oven[]): Oven[] =>
  ovens.length < 2 ? [...ovens] : ovens.map((oven, index) => ({ ...oven, name: `oven ${index + 1}` }));

/** So many whole things; more than a kitchen could hold is as good as that many. */
function whole(count: Rational): number {
  return toApproximateNumber(rational(floor(count))) <= 100 ? toApproximateNumber(rational(floor(count))) : 100;
}

/** The name of a thing as kitchens list it: singular, lower case. */
export const thingName = (words: string): string => singular(words.trim().toLowerCase());
