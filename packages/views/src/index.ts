/** What the ledger means to a reader, as plain data: a view a folder. */
export * from './common/scalable-amount.js';
export * from './card/index.js';
export * from './clock/index.js';
export * from './compare/index.js';
export * from './label/index.js';
export * from './sheet/index.js';
export * from './basket/index.js';
export type { Answer } from './common/answer.js';
