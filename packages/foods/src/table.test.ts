import type { AllergenId, Food, NutrientId } from '@quern/compiler';
import { add, compare, exact, multiply, sum, toApproximateNumber, toExactText, type Rational } from '@quern/quantity';
import { describe, expect, test } from 'vitest';
import { createFoodBook, FOOD_FLAGS } from './index.js';

const book = createFoodBook();
const foods: readonly Food[] = book.names().map((name) => {
  const answer = book.find(name);
  if (answer.kind !== 'found') throw new Error(`“${name}” is in the table but not found`);
  return answer.match.food;
});

const foodOf = (id: string): Food => {
  const food = book.get(id);
  if (!food) throw new Error(`no food ${id}`);
  return food;
};

const amount = (food: Food, nutrient: NutrientId): number | undefined => {
  const value = food.nutrients[nutrient];
  return value && toApproximateNumber(value);
};

describe('the table', () => {
  test('holds a thousand foods and more, each found by its own name', () => {
    expect(foods.length).toBeGreaterThanOrEqual(1000);
    foods.forEach((food, index) => expect(food.name).toBe(book.names()[index]));
  });

  test('holds every kind of food a cook writes', () => {
    const least: Readonly<Record<string, number>> = {
      flour: 35,
      cereal: 90,
      sugar: 40,
      fat: 40,
      dairy: 60,
      egg: 10,
      nut: 20,
      seed: 8,
      fruit: 110,
      vegetable: 140,
      spice: 90,
      meat: 110,
      fish: 70,
      pulse: 40,
      leaven: 8,
      liquid: 90,
      spirit: 15,
      salt: 8,
      starch: 8,
      cheese: 40,
      vinegar: 8,
      wine: 10,
      condiment: 25,
      mushroom: 12,
      'fresh herb': 15,
      'dried fruit': 15,
      chocolate: 8,
    };
    for (const [name, count] of Object.entries(least))
      expect(book.ofClass(name).length, name).toBeGreaterThanOrEqual(count);
  });

  test('every synonym leads to its food', () => {
    for (const food of foods) {
      for (const name of food.synonyms) {
        const answer = book.find(name);
        expect(answer.kind === 'found' ? answer.match.food.id : answer.kind, name).toBe(food.id);
      }
    }
  });

  test('names every source it cites', () => {
    for (const food of foods) {
      for (const id of [...food.sources, ...(food.nutrientSources ?? [])])
        expect(book.source(id), `${food.id}: ${id}`).toBeTruthy();
      if (Object.keys(food.nutrients).length > 0) expect(food.nutrientSources?.length, food.id).toBeGreaterThan(0);
    }
    expect(book.source('usda/20481')).toContain('Wheat flour, white, all-purpose, unenriched');
    expect(book.source('usda/20062/stand-in')).toMatch(/^the nearest published row, standing in/);
    expect(book.source('nobody')).toBeUndefined();
  });

  test('uses only flags that are explained, and diets that do not contradict each other', () => {
    for (const { id, flags } of foods) {
      for (const flag of flags) expect(Object.keys(FOOD_FLAGS), `${id}: ${flag}`).toContain(flag);
      if (flags.includes('vegan')) {
        expect(flags, id).toContain('vegetarian');
        expect(flags, id).not.toContain('animal');
      }
      if (flags.includes('meat') || flags.includes('fish')) {
        expect(flags, id).toContain('animal');
        expect(flags, id).not.toContain('vegetarian');
      }
    }
  });

  test('no vegan food holds milk, eggs, fish, crustaceans or molluscs', () => {
    const animal: readonly AllergenId[] = ['milk', 'eggs', 'fish', 'crustaceans', 'molluscs'];
    for (const food of foods.filter(({ flags }) => flags.includes('vegan'))) {
      expect(
        [...(food.allergens ?? []), ...(food.allergensAtLeast ?? [])].filter((id) => animal.includes(id)),
        food.id,
      ).toEqual([]);
    }
  });

  test('never gives known and unknown allergens at once, and no traces of its own', () => {
    for (const food of foods) {
      if (food.allergens) expect(food.allergensAtLeast, food.id).toBeUndefined();
      expect(food.traces).toEqual([]);
    }
  });
});

describe('weights', () => {
  test('are spreads from low to high with a source', () => {
    for (const food of foods) {
      const spreads = [
        ...food.volumes.map((weight) => weight.perMillilitre),
        ...food.pieces.map((weight) => weight.grams),
      ];
      for (const { low, usual, high, sources } of spreads) {
        expect(compare(exact('0'), low), food.id).toBeLessThan(0);
        expect(compare(low, usual), food.id).toBeLessThanOrEqual(0);
        expect(compare(usual, high), food.id).toBeLessThanOrEqual(0);
        expect(sources.length, food.id).toBeGreaterThan(0);
      }
    }
  });

  test('by volume have a weight of the food as it comes, and are those of things on Earth', () => {
    // Popped maize weighs 0.03 g a millilitre, syrup 1.5; table salt 1.44 (from memory).
    for (const food of foods.filter((entry) => entry.volumes.length > 0)) {
      expect(
        food.volumes.map((weight) => weight.form),
        food.id,
      ).toContain('');
      for (const { perMillilitre, form } of food.volumes) {
        expect(toApproximateNumber(perMillilitre.low), `${food.id} ${form}`).toBeGreaterThan(0.01);
        expect(toApproximateNumber(perMillilitre.high), `${food.id} ${form}`).toBeLessThan(1.55);
      }
    }
  });

  test('name each form and each piece once', () => {
    for (const food of foods) {
      const forms = food.volumes.map((weight) => weight.form);
      expect(new Set(forms).size, food.id).toBe(forms.length);
      const pieces = food.pieces.map((weight) => `${weight.piece}/${weight.size}/${weight.basis}`);
      expect(new Set(pieces).size, food.id).toBe(pieces.length);
    }
  });
});

describe('nutrients', () => {
  test.each([
    // USDA SR28 FOOD_DES and NUT_DATA, by number of the row.
    ['salted-butter', 'energyKcal', '717'], // 01001
    ['salted-butter', 'fat', '81.11'], // 01001
    ['plain-flour', 'energyKcal', '364'], // 20481
    ['egg', 'energyKcal', '143'], // 01123
    ['egg', 'cholesterol', '372'], // 01123
    ['fine-salt', 'sodium', '38758'], // 02047
    ['honey', 'water', '17.1'], // 19296
    ['whole-milk', 'calcium', '113'], // 01211
    ['red-wine', 'alcohol', '10.6'], // 14096
    ['lemon-juice', 'water', '92.31'], // 09152
    ['almonds', 'fat', '49.93'], // 12061
  ] as const)('%s has %s %s', (id, nutrient, value) => {
    const found = foodOf(id).nutrients[nutrient];
    expect(found && toExactText(found)).toBe(value);
  });

  test('that the source lacks are missing, not zero', () => {
    expect(foodOf('butter').nutrients).not.toHaveProperty('sodium'); // the name does not say whether it is salted
    expect(foodOf('unsalted-butter').nutrients).toHaveProperty('sodium');
    expect(foodOf('custard-powder').nutrients).toEqual({}); // no row at all
    const withoutSugars = foods.filter((food) => food.nutrients.energyKcal && !food.nutrients.sugars);
    expect(withoutSugars.length).toBeGreaterThan(50);
    const withoutStarch = foods.filter((food) => food.nutrients.energyKcal && !food.nutrients.starch);
    expect(withoutStarch.length).toBeGreaterThan(500);
  });

  // Water, protein, fat, carbohydrate by difference, ash and alcohol are the whole food. Where they are not, the source says
  // so itself: vinegar (acetic acid), soda and salts of baking powder, pepper (its ash is not of its dried sample),
  // mixtures, and rows whose parts were measured on different samples.
  const partsDiffer = new Set(
    `bicarbonate-of-soda cider-vinegar white-vinegar red-wine-vinegar white-wine-vinegar sherry-vinegar rice-vinegar
    malt-vinegar tarragon-vinegar coconut-vinegar balsamic-vinegar white-balsamic-vinegar black-pepper white-pepper
    pink-peppercorns sichuan-pepper mixed-peppercorns poultry-seasoning corned-beef quail smoked-salmon mackerel`.split(
      /\s+/,
    ),
  );

  test('add up to the whole food, within 2 %', () => {
    const whole: readonly NutrientId[] = ['water', 'protein', 'fat', 'carbohydrateByDifference', 'ash'];
    const astray = foods.filter((food) => {
      const parts = whole.map((nutrient) => food.nutrients[nutrient]);
      if (parts.some((part) => part === undefined)) return false;
      const total = toApproximateNumber(sum([...(parts as Rational[]), food.nutrients.alcohol ?? exact('0')]));
      return Math.abs(total - 100) > 2;
    });
    expect(new Set(astray.map((food) => food.id))).toEqual(partsDiffer);
  });

  // General factors of Regulation (EU) No 1169/2011, Annex XIV: protein 4, fat 9, carbohydrate 4, alcohol 7 kcal/g. The
  // USDA uses factors by food and counts fibre as carbohydrate, so its energy is lower where there is much fibre.
  const factorsDiffer = new Set(
    `carob-powder oat-bran baking-powder gluten-free-baking-powder low-sodium-baking-powder spirulina allspice
    quatre-epices juniper-berries taco-seasoning cocoa-powder alkalised-cocoa-powder cacao-powder cider-vinegar
    white-vinegar red-wine-vinegar white-wine-vinegar sherry-vinegar rice-vinegar malt-vinegar tarragon-vinegar
    coconut-vinegar balsamic-vinegar white-balsamic-vinegar`.split(/\s+/),
  );

  test('give the energy, within the difference of the factors', () => {
    const astray = foods.filter((food) => {
      const [energy, protein, fat, carbohydrate] = (
        ['energyKcal', 'protein', 'fat', 'carbohydrateByDifference'] as const
      ).map((nutrient) => amount(food, nutrient));
      if (energy === undefined || protein === undefined || fat === undefined || carbohydrate === undefined)
        return false;
      const general = 4 * protein + 9 * fat + 4 * carbohydrate + 7 * (amount(food, 'alcohol') ?? 0);
      const leastEnergy = (general - 2.4 * (amount(food, 'fibre') ?? 0) - 10) * 0.85 - 8;
      return energy > general * 1.08 + 8 || energy < leastEnergy;
    });
    expect(new Set(astray.map((food) => food.id))).toEqual(factorsDiffer);
  });

  test('no part is more than the whole it is a part of', () => {
    for (const food of foods) {
      const inside = (parts: readonly NutrientId[], whole: NutrientId, slack: string) => {
        const total = food.nutrients[whole];
        const known = parts.map((part) => food.nutrients[part]).filter((part) => part !== undefined);
        if (!total || known.length === 0) return;
        expect(
          compare(sum(known), add(multiply(total, exact('1.05')), exact(slack))),
          `${food.id}: ${parts.join()}`,
        ).toBeLessThanOrEqual(0);
      };
      inside(['saturates', 'monounsaturates', 'polyunsaturates'], 'fat', '0.6');
      // Sugars and starch were measured, carbohydrate is what is left over: the source lets them differ by a few grams.
      inside(['sugars'], 'carbohydrateByDifference', '1');
    }
  });
});

describe('allergens come from the nature of the food', () => {
  test.each([
    ['plain-flour', ['wheat']],
    ['whole-rye-flour', ['rye']],
    ['spelt-flour', ['spelt', 'wheat']],
    ['oat-drink', ['oats']],
    ['almonds', ['almond']],
    ['tahini', ['sesame']],
    ['butter', ['milk']],
    ['egg', ['eggs']],
    ['celeriac', ['celery']],
    ['prawn', ['crustaceans']],
    ['mussel', ['molluscs']],
    ['red-wine', ['sulphites']],
    ['dried-apricots', ['sulphites']],
    ['soy-sauce', ['wheat', 'soybeans']],
    ['mustard-powder', ['mustard']],
    ['carrot', []],
    ['fine-salt', []],
  ])('%s: %j', (id, expected) => {
    expect(foodOf(id).allergens).toEqual(expected);
  });

  test.each(['vegetable-oil', 'beef-stock', 'pork-sausage', 'margarine', 'dark-chocolate', 'curry-powder', 'granola'])(
    '%s: unknown, since the recipe varies',
    (id) => {
      expect(foodOf(id).allergens).toBeUndefined();
    },
  );

  test('what is surely in a food whose recipe varies is said', () => {
    expect(foodOf('breadcrumbs').allergensAtLeast).toEqual(['wheat']);
    expect(foodOf('milk-chocolate').allergensAtLeast).toEqual(['milk']);
    expect(foodOf('worcestershire-sauce').allergensAtLeast).toEqual(['fish']);
  });
});

describe('roles in baker’s arithmetic', () => {
  test('meals and flours of cereals, buckwheat, amaranth and quinoa are flour', () => {
    for (const id of [
      'plain-flour',
      'whole-rye-flour',
      'rice-flour',
      'cornmeal',
      'buckwheat-flour',
      'amaranth-flour',
      'quinoa-flour',
    ]) {
      expect(foodOf(id).roles, id).toContain('flour');
    }
  });

  test('starches, nut flours, pulse flours, flakes and cracked grain are not', () => {
    for (const id of [
      'cornflour',
      'potato-starch',
      'ground-almonds',
      'chestnut-flour',
      'chickpea-flour',
      'rolled-oats',
      'cracked-rye',
      'rye-flakes',
    ]) {
      expect(foodOf(id).roles, id).not.toContain('flour');
    }
  });
});

test('the foods of the sketched recipes are there', () => {
  const names = `red wine; carrots; onion; garlic; bay leaves; thyme; beef cheeks; sugar; olive oil; tomato paste; beef stock;
    water; butter; fine salt; red grape juice; red wine vinegar; white cabbages; red cabbages; caraway seeds; strong wheat flour;
    whole milk; instant yeast; egg; oat drink; pears; honey; lemon juice; ground cinnamon; quark; whipping cream;
    whole rye flour; brown sugar; hazelnuts; walnuts; sunflower seeds; cocoa nibs; lemons; coarse salt; waxy potatoes;
    leeks; cracked rye; beet syrup`;
  for (const name of names.split(';').map((part) => part.trim())) expect(book.find(name).kind, name).toBe('found');
});
