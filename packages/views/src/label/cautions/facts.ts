import type { FoodRole } from '@quern/compiler';
import type { Rational } from '@quern/quantity';
import type { Place } from '@quern/text';

/*
 * What the cautions look at: a plain account of a recipe, made from the ledger and the steps in `facts-of.ts`. A rule
 * sees this and nothing else, so that it can be tested with a few lines and read by whoever wants to check it.
 */

/** Heat that a food goes through after it is put in. */
export interface Heating {
  readonly lane: 'oven' | 'hob';
  /** The longest that is written, and the shortest; undefined when no time is. */
  readonly minutes: Rational | undefined;
  readonly least: Rational | undefined;
  /** Temperature around the food, the lowest that is written, in degrees Celsius. */
  readonly around: Rational | undefined;
  /** Temperature inside the food that the step waits for, the lowest that is written. */
  readonly core: Rational | undefined;
  readonly place: Place;
}

/** Time in which nobody heats the food: a `wait`, or `hands` at the bench. */
export interface Standing {
  readonly minutes: Rational;
  /** 'or more': nothing says when it ends. */
  readonly orMore: boolean;
  /** Temperature around the food; undefined when neither the line nor the kitchen says. */
  readonly celsius: Rational | undefined;
  /** Whether it stands in a leavened dough or bread, or in something dry: not counted as perishable there. */
  readonly breadOrDry: boolean;
  /** Whether the food has been through heat by then. */
  readonly afterHeat: boolean;
  readonly make: string;
  readonly place: Place;
}

/** A stretch of a planned timetable in which nobody heats the food: a step, or standing idle until the next. */
export interface PlannedStretch extends Pick<Standing, 'minutes' | 'celsius' | 'breadOrDry' | 'afterHeat' | 'place'> {
  readonly idle: boolean;
}

/** One food on the way to the dish, with what happens after it goes in. */
export interface CautionFood {
  readonly name: string;
  readonly flags: readonly string[];
  readonly roles: readonly FoodRole[];
  /** The note after the comma, 'minced', 'whole'. */
  readonly note: string;
  /** Grams put in; undefined when not known. */
  readonly grams: Rational | undefined;
  /** Whether any of it stands in the finished dish. */
  readonly inDish: boolean;
  readonly make: string;
  readonly heatings: readonly Heating[];
  readonly standings: readonly Standing[];
  /** By the timetable that was planned, each way from where the food goes in to where it ends; undefined without one. */
  readonly planned?: readonly (readonly PlannedStretch[])[] | undefined;
  readonly place: Place;
}

/** A claim of how long something keeps. */
export interface KeepingClaim {
  /** The shortest life that is claimed and the longest, in minutes. */
  readonly minutes: Rational;
  readonly celsius: Rational | undefined;
  /** 'under its juice', 'wrapped'. */
  readonly note: string;
  readonly make: string;
  /** Whether it is the dish's own life, not that of something on the way. */
  readonly ofDish: boolean;
  readonly place: Place;
}

/** Amounts in 100 g of what a make gives; undefined where they are not known. */
export interface PotFacts {
  readonly make: string;
  readonly grams: Rational | undefined;
  readonly water: Rational | undefined;
  readonly salt: Rational | undefined;
  readonly sugars: Rational | undefined;
  readonly fat: Rational | undefined;
  readonly alcohol: Rational | undefined;
  /** Share of flour, 0 to 1, of what went in. */
  readonly flour: Rational;
  readonly leavened: boolean;
  /** Salt on the vegetables and fruit with which it was put, as a percentage. */
  readonly saltOnProduce: Rational | undefined;
  readonly place: Place;
}

export interface CautionFacts {
  readonly foods: readonly CautionFood[];
  /** Each make on the way to the dish; the last is the dish. */
  readonly pots: readonly PotFacts[];
  readonly keeps: readonly KeepingClaim[];
  /** The most sour that a step waits for, in pH, and where; undefined when none does. */
  readonly acidity: { readonly pH: Rational; readonly place: Place } | undefined;
  /** All waits and bench work of the timetable, in order. */
  readonly standings: readonly Standing[];
  /** Grams of alcohol in 100 g of the dish and in a serving, and per cent by volume if the dish were a drink. */
  readonly alcohol:
    { readonly per100: Rational; readonly perServing: Rational | undefined; readonly byVolume: Rational } | undefined;
  readonly title: string;
  readonly place: Place;
}
