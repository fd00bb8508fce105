export * from './card-data.js';
export { card, type CardViewOptions } from './card.js';
