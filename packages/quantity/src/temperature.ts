import { isSingle, type Interval } from './interval.js';
import { PLAIN, printDecimal, printInterval, withUnit, type NumberStyle } from './print.js';
import {
  absolute,
  add,
  compare,
  divide,
  equal,
  exact,
  multiply,
  rational,
  roundTo,
  subtract,
  type Rational,
} from './rational.js';

export type TemperatureScale = 'C' | 'F';

/** How warm something is. Two points are never added; their difference is a `TemperatureDifference`. */
export interface TemperaturePoint {
  readonly kind: 'temperature-point';
  readonly celsius: Rational;
}

/** How much warmer one thing is than another, in Celsius degrees: 18 F warmer is 10 C warmer, never -7.8 C. */
export interface TemperatureDifference {
  readonly kind: 'temperature-difference';
  readonly celsius: Rational;
}

const FIVE_NINTHS = rational(5, 9);
const NINE_FIFTHS = rational(9, 5);
const FREEZING_F = rational(32);
const ABSOLUTE_ZERO = exact('-273.15');

const toCelsius = (value: Rational, scale: TemperatureScale): Rational =>
  scale === 'C' ? value : multiply(subtract(value, FREEZING_F), FIVE_NINTHS);
const fromCelsius = (celsius: Rational, scale: TemperatureScale): Rational =>
  scale === 'C' ? celsius : add(multiply(celsius, NINE_FIFTHS), FREEZING_F);

export function temperaturePoint(value: Rational, scale: TemperatureScale): TemperaturePoint {
  return { kind: 'temperature-point', celsius: toCelsius(value, scale) };
}

export function temperatureDifference(degrees: Rational, scale: TemperatureScale): TemperatureDifference {
  const celsius = scale === 'C' ? degrees : multiply(degrees, FIVE_NINTHS);
  return { kind: 'temperature-difference', celsius };
}

/** The point or the difference in degrees of a scale, exactly. */
export function degrees(of: TemperaturePoint | TemperatureDifference, scale: TemperatureScale): Rational {
  if (of.kind === 'temperature-point') return fromCelsius(of.celsius, scale);
  return scale === 'C' ? of.celsius : multiply(of.celsius, NINE_FIFTHS);
}

/** Whether a thing can be as cold as this: nothing is below absolute zero. */
export const isPossible = (point: TemperaturePoint): boolean => compare(point.celsius, ABSOLUTE_ZERO) >= 0;

/** The point so much warmer (or, for a negative difference, cooler). */
export function warmer(point: TemperaturePoint, by: TemperatureDifference): TemperaturePoint {
  return { kind: 'temperature-point', celsius: add(point.celsius, by.celsius) };
}

/** From the first point to the second: positive when the second is warmer. */
export function differenceBetween(from: TemperaturePoint, to: TemperaturePoint): TemperatureDifference {
  return { kind: 'temperature-difference', celsius: subtract(to.celsius, from.celsius) };
}

/** An oven is set by its dial; a food, a room and a freezer are read from a thermometer. */
export type TemperatureUse = 'oven' | 'food';

const DIAL_STEP: Readonly<Record<TemperatureScale, Rational>> = { C: rational(5), F: rational(25) };
// Below this an oven is proving or drying, where its marks are too coarse.
const LOWEST_DIAL = rational(80);
const AGREE_ON_DIAL = rational(8);

/**
 * The mark on an oven's dial nearest to the point: every 5 C, every 25 F (common practice, no source); below 80 C the
 * nearest degree.
 */
export function dial(point: TemperaturePoint, scale: TemperatureScale): Rational {
  if (compare(point.celsius, LOWEST_DIAL) < 0) return thermometer(point, scale);
  return roundTo(degrees(point, scale), DIAL_STEP[scale]);
}

/** The point as a thermometer shows it, to one degree: core temperatures, ferments, rooms, freezers. */
export function thermometer(point: TemperaturePoint, scale: TemperatureScale): Rational {
  return roundTo(degrees(point, scale), rational(1));
}

/**
 * Whether a Celsius and a Fahrenheit figure name the same position of an oven's dial: at most 8 C apart (NOTATION 4.3),
 * a little more than half a step of 25 F.
 */
export function agreeOnDial(celsius: Rational, fahrenheit: Rational): boolean {
  const apart = absolute(subtract(celsius, toCelsius(fahrenheit, 'F')));
  return compare(apart, AGREE_ON_DIAL) <= 0;
}

/** Whether one of the figures is the other to the nearest degree, as thermometers and food codes print them (74 C, 165 F). */
export function agreeOnThermometer(celsius: Rational, fahrenheit: Rational): boolean {
  const fromC = temperaturePoint(celsius, 'C');
  const fromF = temperaturePoint(fahrenheit, 'F');
  return equal(thermometer(fromC, 'F'), fahrenheit) || equal(thermometer(fromF, 'C'), celsius);
}

/**
 * The figure to print. A point written in the asked scale is printed as written; otherwise it is rounded as its use
 * demands.
 */
export function shownDegrees(
  point: TemperaturePoint,
  scale: TemperatureScale,
  use: TemperatureUse,
  written?: TemperatureScale,
): Rational {
  if (written === scale) return degrees(point, scale);
  return use === 'oven' ? dial(point, scale) : thermometer(point, scale);
}

/** `24 C`, `150-160 C`, `375 F`; typographic `24 °C`. The interval is already in degrees of the scale. */
export function printDegrees(range: Interval, scale: TemperatureScale, style: NumberStyle = PLAIN): string {
  const word = style.typographic ? `°${scale}` : scale;
  const number = (value: Rational): string => printDecimal(value, 1, style);
  if (!isSingle(range) && range.low.n < 0n) {
    // A hyphen after a minus sign would be read as another minus.
    return withUnit(`${number(range.low)} to ${number(range.high)}`, word, style);
  }
  return withUnit(printInterval(range, number, style), word, style);
}

/** A mark on the dial of a British gas oven. */
export type GasMark = '1/4' | '1/2' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9' | '10';

// Printed conventions: the two columns of published conversion tables, which are not conversions of each other (mark 3
// stands beside 325 F and beside 160 C or 170 C). The tests name the tables.
const GAS_MARKS: readonly { mark: GasMark; fahrenheit: number; celsius: readonly [number, number] }[] = [
  { mark: '1/4', fahrenheit: 225, celsius: [110, 110] },
  { mark: '1/2', fahrenheit: 250, celsius: [120, 130] },
  { mark: '1', fahrenheit: 275, celsius: [140, 140] },
  { mark: '2', fahrenheit: 300, celsius: [150, 150] },
  { mark: '3', fahrenheit: 325, celsius: [160, 170] },
  { mark: '4', fahrenheit: 350, celsius: [180, 180] },
  { mark: '5', fahrenheit: 375, celsius: [190, 190] },
  { mark: '6', fahrenheit: 400, celsius: [200, 200] },
  { mark: '7', fahrenheit: 425, celsius: [220, 220] },
  { mark: '8', fahrenheit: 450, celsius: [230, 230] },
  { mark: '9', fahrenheit: 475, celsius: [240, 240] },
  { mark: '10', fahrenheit: 500, celsius: [250, 250] },
];

const distance = (value: Rational, low: number, high: number): Rational => {
  if (compare(value, rational(low)) < 0) return subtract(rational(low), value);
  if (compare(value, rational(high)) > 0) return subtract(value, rational(high));
  return rational(0);
};

/**
 * The gas mark that published tables print beside an oven temperature, in the scale it was written in; the nearest one,
 * the cooler of two as near.
 * @returns undefined when the temperature is further outside the marks than half the widest step (12.5 F, 10 C).
 */
export function gasMark(value: Rational, scale: TemperatureScale): GasMark | undefined {
  let best: { mark: GasMark; away: Rational } | undefined;
  for (const { mark, fahrenheit, celsius } of GAS_MARKS) {
    const [low, high] = scale === 'F' ? [fahrenheit, fahrenheit] : celsius;
    const away = distance(value, low, high);
    if (!best || compare(away, best.away) < 0) best = { mark, away };
  }
  const reach = scale === 'F' ? divide(DIAL_STEP.F, rational(2)) : rational(10);
  return best && compare(best.away, reach) <= 0 ? best.mark : undefined;
}

/** Acidity on the pH scale. Not a number to be added or scaled: halving a recipe does not halve its pH. */
export interface Acidity {
  readonly kind: 'ph';
  readonly value: Rational;
}

/** @returns undefined outside 0 to 14, where no food is. */
export function acidity(value: Rational): Acidity | undefined {
  return value.n < 0n || compare(value, rational(14)) > 0 ? undefined : { kind: 'ph', value };
}

/** `pH 4.2`; a comma in the languages that write one. At most two decimals, as meters show. */
export function printAcidity(of: Acidity, style: NumberStyle = PLAIN): string {
  return withUnit('pH', printDecimal(of.value, 2, style), style);
}
