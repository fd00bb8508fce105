import {
  mapInterval,
  PLAIN,
  printDegrees,
  shownDegrees,
  temperaturePoint,
  type Interval,
  type NumberStyle,
  type TemperatureScale,
  type TemperatureUse,
} from '@quern/quantity';
import type { Temperature } from '@quern/syntax';

/** A temperature in both scales, rounded as dials and thermometers are marked: '250 C', '475 F'. */
export interface BothScales {
  readonly celsius: string;
  readonly fahrenheit: string;
}

/** A written temperature in both scales; the scale it is written in is printed as written. */
export function bothScales(
  written: Pick<Temperature, 'low' | 'high' | 'scale'>,
  use: TemperatureUse,
  style: NumberStyle = PLAIN,
): BothScales {
  const range: Interval = { low: written.low, high: written.high };
  const told = (scale: TemperatureScale): string =>
    printDegrees(
      mapInterval(range, (value) => shownDegrees(temperaturePoint(value, written.scale), scale, use, written.scale)),
      scale,
      style,
    );
  return { celsius: told('C'), fahrenheit: told('F') };
}
