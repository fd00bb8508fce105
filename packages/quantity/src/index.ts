/** Exact quantities: rationals, units, ranges, temperatures, times; how they are rounded and printed. */
export * from './rational.js';
export * from './units.js';
export * from './interval.js';
export * from './convert.js';
export * from './temperature.js';
export * from './duration.js';
export * from './print.js';
export * from './grams.js';
export * from './scoops.js';
