import { linePlace, type Make, type StepItem } from '@quern/compiler';
import { rational, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import type { Timetable } from '../../common/timetable.js';
import type { PlannedStretch, PotFacts } from './facts.js';
import type { Step } from './routes.js';
import { around, celsius, heatLane, isBreadOrDry } from './steps.js';

/*
 * Time as somebody planned it: each step at its planned length, and what stands idle between two steps, because a cook
 * sleeps or an oven is full. Idle, it stands in the room, unless the make that it comes from says at what warmth it keeps.
 */

const keyOf = ({ file, start }: Place): string => `${file}:${start}`;

export type PlannedTimes = ReadonlyMap<string, { readonly start: number; readonly end: number }>;

/** When each line's step runs; one that is done in batches, from its first to its last. */
export function plannedTimes({ activities }: Timetable): PlannedTimes {
  const times = new Map<string, { start: number; end: number }>();
  for (const { place, start, end } of activities) {
    if (!place) continue;
    const old = times.get(keyOf(place));
    times.set(keyOf(place), {
      start: Math.min(start, old?.start ?? start),
      end: Math.max(end, old?.end ?? end),
    });
  }
  return times;
}

/** The unheated stretches of every way that a food takes through its steps. */
export const plannedWays = (
  ways: readonly (readonly Step[])[],
  plan: PlannedTimes,
  pots: ReadonlyMap<Make, PotFacts>,
  room: Rational | undefined,
): PlannedStretch[][] => ways.map((way) => stretches(way, plan, pots, room));

function stretches(
  way: readonly Step[],
  plan: PlannedTimes,
  pots: ReadonlyMap<Make, PotFacts>,
  room: Rational | undefined,
): PlannedStretch[] {
  const found: PlannedStretch[] = [];
  const dry = (make: Make): boolean => {
    const pot = pots.get(make);
    return pot !== undefined && isBreadOrDry(pot);
  };
  let afterHeat = false;
  for (const [index, { make, item }] of way.entries()) {
    const before = way[index - 1];
    const time = plan.get(keyOf(linePlace(item.ref)));
    const previous = before && plan.get(keyOf(linePlace(before.item.ref)));
    if (time && before && previous && time.start > previous.end) {
      found.push({
        minutes: rational(time.start - previous.end),
        celsius: before.make === make ? room : (keptAt(before.make) ?? room),
        breadOrDry: dry(before.make),
        afterHeat,
        idle: true,
        place: linePlace(before.item.ref),
      });
    }
    afterHeat ||= heatLane(item) !== undefined;
    if (time && isUnheated(item)) {
      found.push({
        minutes: rational(time.end - time.start),
        celsius: around(item) ?? room,
        breadOrDry: dry(make),
        afterHeat,
        idle: false,
        place: linePlace(item.ref),
      });
    }
  }
  return found;
}

const isUnheated = (item: StepItem): boolean =>
  !heatLane(item) && (item.content.lane === 'wait' || item.content.lane === 'hands');

/** The warmth at which a make says that it keeps, as the planner takes it: by its first `keeps`. */
function keptAt(make: Make): Rational | undefined {
  const at = make.keeps[0]?.content.at;
  return at && celsius(at.high, at.scale);
}
