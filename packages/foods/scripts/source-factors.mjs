// Holds the allergen classes of the catalogue against the food-source factors of the USDA: what a row was made from.

const CLASSES = [
  [/^(?:HARD |SOFT |DURUM |COMMON )?WHEAT\b/, ['wheat', 'spelt']],
  [/^RYE\b/, ['rye']],
  [/^BARLEY\b/, ['barley']],
  [/^OATS?\b/, ['oats']],
  [/^SPELT\b/, ['spelt']],
  [/^TRITICALE\b/, ['triticale']],
  [/^BUCKWHEAT\b/, ['buckwheat']],
  [/^(?:COW|GOAT|SHEEP) MILK|^MILK ADDED|^COW \(MILK/, ['milk']],
  [/^(?:CHICKEN|DUCK|GOOSE|QUAIL|TURKEY) EGG|^EGG\b/, ['eggs']],
  [/^PEANUT\b/, ['peanuts']],
  [/^SOYBEAN\b/, ['soybeans']],
  [/^ALMOND\b/, ['almond']],
  [/^(?:FILBERT|HAZELNUT)\b/, ['hazelnut']],
  [/^(?:ENGLISH |BLACK )?WALNUT\b/, ['walnut']],
  [/^CASHEW\b/, ['cashew']],
  [/^PECAN\b/, ['pecan']],
  [/^BRAZIL NUT\b/, ['brazil-nut']],
  [/^PISTACHIO\b/, ['pistachio']],
  [/^MACADAMIA\b/, ['macadamia']],
  [/^PINE ?NUT\b|^PINYON/, ['pine-nut']],
  [/^CHESTNUT\b|^EUROPEAN CHESTNUT/, ['chestnut']],
  [/^COCONUT\b/, ['coconut']],
  [/^(?:CELERY|CELERIAC)\b/, ['celery']],
  [/^(?:WHITE |BLACK |BROWN )?MUSTARD\b/, ['mustard']],
  [/^SESAME\b/, ['sesame']],
  [/^LUPINE?\b/, ['lupin']],
];

/** Foods whose row names a source that the catalogue does not: a mistake in the one or the other. */
export function checkAllergens(foods, sourceFactors) {
  const doubts = [];
  for (const food of foods) {
    const number = /^~?(\d+)$/.exec(food.reference)?.[1];
    if (!number) continue;
    for (const { factor } of sourceFactors.get(number) ?? []) {
      const found = CLASSES.find(([pattern]) => pattern.test(factor));
      if (found && !found[1].some((name) => food.allergens.known.includes(name))) {
        doubts.push(`${food.where}: “${food.name}” is made from ${factor}, but does not name ${found[1].join(' or ')}`);
      }
    }
  }
  return doubts;
}
