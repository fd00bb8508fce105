/** The food table: names, weights, water, nutrients and allergens, with sources. */
export { openFoodBook } from './book.js';
export { createFoodBook } from './bundled.js';
export { describeFood, type DescribedSource, type DescribedWeight, type FoodDescription } from './describe.js';
export { FOOD_FLAGS, type FoodFlag } from './flags.js';
