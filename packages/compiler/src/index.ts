/** Names, ledger, flour, checks and variants: text in, formulas out. */
export * from './food-book.js';
export * from './model.js';
export { Session, compile, type SessionOptions } from './session.js';
export { outlineOf } from './outline-of.js';
export { normaliseName } from './names.js';
export { singular } from '@quern/text';
export { allergensDeclared, allergensPromised, allergenWords, GLUTEN_CEREALS, TREE_NUTS } from './allergen-names.js';
export { alcoholRetained } from './ledger/alcohol.js';
export { alcoholIn, isDissolved, isLiquid, massOf, totalMass, waterIn } from './ledger/parts.js';
export { foodWater, isHeating, isWater } from './substances.js';
export { linePlace, placeOf } from './places.js';
export {
  baseValue,
  isSpelledCount,
  pickOf,
  pieceSpread,
  volumeOf,
  volumeSpread,
  weigh,
  type FormWords,
  type Pick,
} from './weighing.js';
export { findAll, findName, replaceName, type Found } from './find-name.js';
export { yieldGrams } from './facts.js';
export { factorOf, portionsOf } from './portions.js';
export { resolvePath } from './paths.js';
export { scaleAmount } from './scale-recipe.js';
export { lacksDepth, vesselVolume } from './checks/vessel.js';
