import { normaliseName } from '@quern/compiler';
import { createFoodBook, describeFood, type DescribedWeight, type FoodDescription } from '@quern/foods';
import { jsonText, type Paint } from '@quern/publish';
import { printDecimal, toExactText, multiply, sizeOf, type Rational } from '@quern/quantity';
import { nearest } from '@quern/text';
import { listOf } from '../arguments.js';
import { defineCommand, UsageError, RecipeError } from '../command.js';
import { paintFor } from '../system/paint.js';

const FORMATS = ['text', 'json'] as const;

export const foods = defineCommand({
  usage: ['NAME', '--list [WORD]'],
  about: [
    'Shows what the built-in food table says of a food: its names, weights by volume and by piece, water, nutrients, allergens, and where each figure comes from. The name is matched as it is in a recipe, qualifiers and all.',
  ],
  options: {
    list: { type: 'boolean', says: 'the names of all foods, or of those that hold a word' },
    format: { type: 'string', value: 'FORMAT', choices: FORMATS, says: 'text (default) or json' },
  },
  examples: [
    { line: '"whole rye flour"', says: 'one food' },
    { line: '--list flour', says: 'every food with flour in its name' },
  ],
  async run({ files, options, system }) {
    const book = createFoodBook();
    const name = files.join(' ').trim();
    if (options.list) {
      const wanted = normaliseName(name);
      const names = book.names().filter((known) => name === '' || normaliseName(known).includes(wanted));
      if (names.length === 0) throw new RecipeError(`no food has “${name}” in its name`);
      system.out.write(
        [...names]
          .sort()
          .map((known) => `${known}\n`)
          .join(''),
      );
      return 0;
    }
    if (name === '') throw new UsageError('no food is named', 'quern foods NAME');
    const answer = book.find(name);
    if (answer.kind === 'ambiguous') {
      throw new RecipeError(
        `“${name}” may be several foods`,
        `say which: ${listOf(answer.candidates.map((food) => food.name))}`,
      );
    }
    if (answer.kind === 'unknown') {
      const near = answer.near.length > 0 ? answer.near : nearest(normaliseName(name), book.names());
      throw new RecipeError(
        `“${name}” is not in the food table`,
        near.length > 0 ? `did you mean ${listOf(near)}?` : 'describe it in the file with a block “food NAME”',
      );
    }
    const described = describeFood(answer.match.food, book);
    system.out.write(
      options.format === 'json' ? foodJson(described) : foodText(described, answer.match.form, paintFor(system)),
    );
    return 0;
  },
});

/** Exact numbers as text, as in every JSON of Quern. */
export function foodJson(described: FoodDescription): string {
  const plain = JSON.parse(
    JSON.stringify(described, (_, value: unknown) => (isRational(value) ? toExactText(value) : value)),
  ) as object;
  return jsonText({ format: 'quern-food', version: 1, ...plain });
}

function isRational(value: unknown): value is Rational {
  return typeof value === 'object' && value !== null && 'n' in value && typeof value.n === 'bigint';
}

function foodText(food: FoodDescription, form: string, paint: Paint): string {
  const lines = [paint.strong(food.name) + (form === '' ? '' : `, ${form}`)];
  const fact = (name: string, values: readonly string[]): void => {
    if (values.length > 0) lines.push(`${name}: ${values.join(', ')}`);
  };
  fact('also called', food.synonyms);
  fact('in baking and in the pot it is', food.roles);
  fact('kinds', food.classes);
  lines.push(allergenLine(food));
  if (food.ediblePercent) lines.push(`edible part of what is bought: ${printDecimal(food.ediblePercent, 1)} %`);
  lines.push(...weightLines('a cup (236.6 ml) weighs', food.perMillilitre, sizeOf('cup'), paint));
  lines.push(...weightLines('a piece weighs', food.perPiece, undefined, paint));
  if (food.nutrients.length > 0) {
    lines.push(
      'in 100 g:',
      ...food.nutrients.map(
        ({ nutrient, amount }) => `  ${nutrientName(nutrient)} ${printDecimal(amount, 2)} ${unitOf(nutrient)}`,
      ),
    );
    lines.push(...food.nutrientSources.map(({ text }) => paint.quiet(`  from ${text}`)));
  } else lines.push('nutrients: not known');
  return lines.join('\n') + '\n';
}

function allergenLine({ allergens }: FoodDescription): string {
  if (allergens.kind === 'known')
    return `allergens: ${allergens.contains.length === 0 ? 'none of the declared classes' : allergens.contains.join(', ')}`;
  const surely = allergens.surely.length === 0 ? '' : `; surely ${allergens.surely.join(', ')}`;
  return `allergens: not known${surely}`;
}

/** Grams of a measure, with the published range and its sources. */
function weightLines(
  title: string,
  weights: readonly DescribedWeight[],
  millilitres: Rational | undefined,
  paint: Paint,
): readonly string[] {
  if (weights.length === 0) return [];
  const grams = (value: Rational): string => printDecimal(millilitres ? multiply(value, millilitres) : value, 1);
  return [
    `${title}:`,
    ...weights.flatMap(({ what, low, usual, high, sources }) => [
      `  ${what}: ${grams(usual)} g (${grams(low)} to ${grams(high)})`,
      ...sources.map(({ text }) => paint.quiet(`    from ${text}`)),
    ]),
  ];
}

/** 'saturates', 'carbohydrate by difference'. */
const nutrientName = (id: string): string =>
  id
    .replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`)
    .replace(/ (?:kcal|kj)$/, '')
    .replace(/vitamin d$/, 'vitamin D');

const UNITS: Readonly<Record<string, string>> = {
  energyKcal: 'kcal',
  cholesterol: 'mg',
  sodium: 'mg',
  potassium: 'mg',
  calcium: 'mg',
  iron: 'mg',
  vitaminD: 'µg',
};
const unitOf = (nutrient: string): string => UNITS[nutrient] ?? 'g';
