import { compare, isZero, printMinutes, rational, roundTo, toDecimal, type Rational } from '@quern/quantity';
import type { Place } from '@quern/text';
import type { CautionFood } from './facts.js';

/** A list in a sentence: 'milk, eggs and cream'. */
export function listed(names: readonly string[]): string {
  const unique = [...new Set(names)];
  const last = unique.at(-1) ?? '';
  return unique.length < 2 ? last : `${unique.slice(0, -1).join(', ')} and ${last}`;
}

/** A sentence that begins with a name as somebody wrote it. */
export const sentence = (text: string): string => text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

/** 'stays' of one thing that is named in the singular, 'stay' of others. */
export function agree(foods: readonly CautionFood[], singular: string, plural: string): string {
  const names = [...new Set(foods.map((food) => food.name))];
  const [only = ''] = names;
  return names.length === 1 && !isPlural(only) ? singular : plural;
}
const isPlural = (name: string): boolean => /[^su]s$/.test(name);

export const namesOf = (foods: readonly CautionFood[]): string => listed(foods.map((food) => food.name));
export const placesOf = (foods: readonly CautionFood[]): Place[] => foods.map((food) => food.place);

/** Degrees for a sentence: '74 °C'. */
export function degrees(celsius: Rational): string {
  return `${toDecimal(celsius, 0)} °C`;
}

/** Degrees with the figure the chart gives in the other scale: '74 °C (165 °F)'. */
export function bothDegrees(celsius: Rational): string {
  const fahrenheit = rational(celsius.n * 9n + 160n * celsius.d, celsius.d * 5n);
  return `${toDecimal(celsius, 0)} °C (${toDecimal(fahrenheit, 0)} °F)`;
}

export const time = (minutes: Rational): string => printMinutes(minutes);

/** Days, or hours when there are fewer than two days. */
export function life(days: Rational): string {
  const two = rational(2);
  if (compare(days, two) < 0) return time(rational(days.n * 1440n, days.d));
  if (days.d === 1n && days.n % 30n === 0n) return `${days.n / 30n} month${days.n === 30n ? '' : 's'}`;
  return `${toDecimal(days, 0)} days`;
}

/** An approximate amount of grams: to a tenth below ten, else whole; the least that is printed is 0.1. */
export function about(grams: Rational): string {
  const small = compare(grams, rational(10)) < 0;
  const rounded = roundTo(grams, small ? rational(1, 10) : rational(1));
  return isZero(rounded) ? 'less than 0.1' : toDecimal(rounded, small ? 1 : 0).replace(/\.0$/, '');
}
