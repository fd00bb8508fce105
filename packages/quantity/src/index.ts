/** Exact quantities: rationals, units, ranges, temperatures, times; how they are rounded and printed. */
export * from './rational.js';
export * from './units.js';
