import type { FoodBook } from '@quern/compiler';
import { openFoodBook } from './book.js';
import { FOOD_TABLE } from './generated/food-table.js';

/** The food book that comes with Quern. */
export const createFoodBook = (): FoodBook => openFoodBook(FOOD_TABLE);
