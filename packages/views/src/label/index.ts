/** The label: nutrition, ingredients, allergens, promises, cautions and the small tag, as plain data. */
export { label, because, checkLabel, type Label, type LabelOptions } from './label.js';
export { MARKETS, marketNames, type LabelNutrient, type Market } from './nutrient-list.js';
export type { AllergenAccount, AllergenMention, AllergenReason } from './allergens.js';
export { allergenTables, classesOn, type AllergenClass, type AllergenTable } from './allergen-tables.js';
export type { Against, Promised, Verdict } from './promises.js';
export type { Declaration, DeclarationRow, Printed } from './declaration.js';
export type { Explanation } from './explain.js';
export type { Statement, StatementItem } from './ingredients.js';
export type { Segment } from './emphasis.js';
export type { Lasting, Tag } from './tag.js';
export { cautionRules, GUIDANCE } from './cautions/registry.js';
export type { Caution, CautionRule, Weight as CautionWeight } from './cautions/rule.js';
export { compositionOf } from './composition.js';
export { nutritionOf, type Figure, type Nutrition } from './nutrition.js';
