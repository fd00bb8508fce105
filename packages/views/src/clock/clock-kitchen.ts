import { floor, rational, toApproximateNumber, type Rational } from '@quern/quantity';
import { singular, type Kitchen } from '@quern/compiler';
import type { Thing } from '@quern/syntax';
import type { Minute, Oven, PlanKitchen } from './problem.js';

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

export function awakeHours(kitchen: Kitchen | undefined): AwakeHours {
  return kitchen?.awake ? { from: kitchen.awake.from.minutes, to: kitchen.awake.to.minutes } : USUAL_AWAKE;
}

/** A written kitchen as the clock uses it; whatever it does not mention is as in the usual one. */
export function planKitchen(kitchen: Kitchen | undefined): PlanKitchen {
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
  };
}

const usualOven = (shelves: number): Oven => ({ name: 'oven', shelves, coolest: COOLEST, hottest: HOTTEST });

function ovensOf(thing: Thing): Oven[] {
  const shelves = thing.shelves === undefined ? USUAL_SHELVES : whole(thing.shelves);
  return Array.from({ length: whole(thing.count) }, () => usualOven(shelves));
}

const named = (ovens: readonly Oven[]): Oven[] =>
  ovens.length < 2 ? [...ovens] : ovens.map((oven, index) => ({ ...oven, name: `oven ${index + 1}` }));

/** So many whole things; more than a kitchen could hold is as good as that many. */
function whole(count: Rational): number {
  return toApproximateNumber(rational(floor(count))) <= 100 ? toApproximateNumber(rational(floor(count))) : 100;
}

/** The name of a thing as kitchens list it: singular, lower case. */
export const thingName = (words: string): string => singular(words.trim().toLowerCase());
