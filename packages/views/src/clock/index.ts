/** The clock: when to start, what to do when, and when it is at its best. */
export * from './problem.js';
export { buildNetwork, type Aim, type Network } from './network.js';
export { search, type Budget, type Found as FoundPlan, type SearchResult } from './search.js';
export { gather, type Gathered } from './gather.js';
