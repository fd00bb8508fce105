import {
  compare,
  equal,
  ONE,
  printCount,
  rational,
  temperaturePoint,
  type NumberStyle,
  type Rational,
  type TemperatureUse,
} from '@quern/quantity';
import type { AtClause, Lane, Temperature, Thing } from '@quern/syntax';
import { bothScales, type BothScales } from './heat-text.js';
import { bothNumbers } from './plural.js';

const OVEN_FROM = rational(100);

/** Above boiling an oven's figure is a mark on its dial; anything else is read from a thermometer. */
export function temperatureUse(lane: Lane, value: Rational, scale: 'C' | 'F'): TemperatureUse {
  return lane === 'oven' && compare(temperaturePoint(value, scale).celsius, OVEN_FROM) >= 0 ? 'oven' : 'food';
}

/** The heat around the food, in both scales. */
export interface HeatAround {
  readonly temperature: BothScales;
  readonly change?: { readonly direction: 'falling' | 'rising'; readonly to: BothScales };
  readonly fan: boolean;
}

/** An `at` clause in both scales; a second scale that the writer states is printed as stated. */
export function heatAround(clause: AtClause, lane: Lane, style: NumberStyle): HeatAround {
  const told = (written: Temperature): BothScales =>
    bothScales(written, temperatureUse(lane, written.low, written.scale), style);
  const stated = clause.equal && bothScales(clause.equal, 'oven', style);
  const second = !stated
    ? {}
    : clause.equal?.scale === 'F'
      ? { fahrenheit: stated.fahrenheit }
      : { celsius: stated.celsius };
  return {
    temperature: { ...told(clause.temperature), ...second },
    ...(clause.change ? { change: { direction: clause.change.direction, to: told(clause.change.to) } } : {}),
    fan: clause.fan,
  };
}

/** A thing that a step uses: 'hob', '1 shelf', '2 rings'. */
export function thingText({ count, name }: Thing, style: NumberStyle): string {
  if (equal(count, ONE)) return name === 'shelf' ? '1 shelf' : name;
  return `${printCount(count, style)} ${bothNumbers(name).many}`;
}
