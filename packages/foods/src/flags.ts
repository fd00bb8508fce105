/**
 * The flags of the table and what they say. Cautions and diets are judged from them. A diet flag is set only when every
 * ordinary make of the food is so; where it is missing the answer is `cannot confirm`, never no.
 */
export const FOOD_FLAGS = {
  vegan: 'made without anything from an animal',
  vegetarian: 'made without the flesh or parts of an animal',
  animal: 'comes from an animal, or has something from one in it',
  meat: 'flesh, fat, bone or skin of a land animal, or made from it',
  fish: 'fish or shellfish, or made from it',
  'raw-egg': 'egg that has not been heated or pasteurised',
  'raw-flour': 'flour or meal that has not been heated',
  'raw-meat': 'meat that must be cooked',
  'raw-fish': 'fish or shellfish that has not been cooked',
  'ready-to-eat-fish': 'cold-smoked or cured fish that is eaten without cooking',
  shellfish: 'crustacean or mollusc',
  'minced-meat': 'minced meat or poultry, in which what was outside is now inside',
  poultry: 'chicken, turkey, duck, goose or feathered game',
  pork: 'comes from a pig',
  liver: 'liver or made from it: much vitamin A',
  curing: 'cured meat',
  'curing-salt': 'salt with nitrite or nitrate: weighed exactly, by a tested recipe only',
  unpasteurised: 'milk, or cheese of milk, that has not been pasteurised',
  'soft-ripened-cheese': 'soft cheese ripened by mould or blue veins',
  honey: 'honey: not for infants under one year',
  alcohol: 'holds alcohol',
  caffeine: 'holds caffeine',
  'whole-nut': 'nut large enough to choke a small child',
  'kidney-bean': 'dried bean with a lectin that only hard boiling destroys',
  'dried-pulse': 'dried pulse: soaked and cooked before it is eaten',
  fava: 'broad bean: dangerous to people with favism',
  cassava: 'must be peeled and cooked through: holds a poison when raw',
  'cook-before-eating': 'makes people ill when eaten raw',
  sprouts: 'sprouted seed, a risk when eaten raw',
  'cooked-rice': 'rice, which must be cooled fast once cooked',
  garlic: 'garlic: a danger under oil',
  'fresh-herb': 'fresh herb: a danger under oil',
  rennet: 'set with animal rennet',
  caustic: 'burns skin and eyes',
} as const satisfies Record<string, string>;

/** A flag of the table. */
export type FoodFlag = keyof typeof FOOD_FLAGS;
