import { ownValue } from '@quern/text';
import { compare, divide, printDecimal, sum, type Rational } from '@quern/quantity';
import {
  normaliseName,
  isWater,
  massOf,
  type Food,
  type Formula,
  type LedgerFood,
  type NutrientId,
  type Part,
  type Product,
} from '@quern/compiler';
import { escapeMarkdown, gramsText, minutesText, percentOf, piecesText, shareText } from '../figures.js';
import type { Meaning } from '../names.js';
import { readinessOf } from '../readiness.js';
import type { Snapshot } from '../snapshot.js';
import { describeAllergen } from './allergen-words.js';
import { cupWeight } from './amounts.js';
import { sourceList } from './sources.js';

interface Where {
  readonly line: number;
  readonly text: string;
}

/** What a name means: a food, a make or saved thing, a culture, a recipe, a variant. */
export function hoverName(snapshot: Snapshot, meaning: Meaning, where: Where): string | undefined {
  switch (meaning.kind) {
    case 'make':
    case 'saved':
      return hoverProduct(snapshot, meaning, where);
    case 'alias':
      return hoverUsed(snapshot, where);
    case 'recipe':
    case 'variant':
      return hoverRecipe(snapshot, meaning, where);
    case 'food':
    case 'table-food':
      return hoverFood(snapshot, where.text, meaning);
    case 'unknown-food':
      return unknownFood(snapshot, meaning);
    case 'culture':
      return hoverCulture(snapshot, meaning);
    case 'class':
      return hoverClass(snapshot, meaning);
    case 'reserved':
      return ownValue(RESERVED, normaliseName(meaning.name));
    case 'file':
      return `File \`${meaning.name}\``;
    default:
      return undefined;
  }
}

const RESERVED: Readonly<Record<string, string>> = {
  all: 'Everything in the pot.',
  flour: 'The flour of the recipe: the most that stands together in one pot at any line.',
  liquid: 'Every component of the pot that the table marks as liquid, and what is dissolved in it.',
  nothing: 'No allergen.',
  'all water': 'The water content of everything in the pot.',
};

// ---- products --------------------------------------------------------------------------------------------------------

function hoverProduct(snapshot: Snapshot, meaning: Meaning, where: Where): string | undefined {
  const formula = formulaOf(snapshot, meaning, where);
  const product = formula?.products.get(normaliseName(meaning.name));
  if (formula === undefined || product === undefined) return `**${escapeMarkdown(meaning.name)}**`;
  return productCard(formula, product, meaning.kind === 'make' ? 'made' : 'saved');
}

/** The formula that a product belongs to: the one at hand, or the one of the file that makes it. */
function formulaOf(snapshot: Snapshot, meaning: Meaning, where: Where): Formula | undefined {
  if (meaning.file === undefined || meaning.file === snapshot.path) return snapshot.formulaAt(where.line);
  const compiled = snapshot.session.compile(meaning.file);
  return compiled?.formulas.find(({ products }) => products.has(normaliseName(meaning.name)));
}

function productCard(formula: Formula, product: Product, how: string): string {
  const head = `**${escapeMarkdown(product.name)}** (${how}${product.grams ? `, ${gramsText(product.grams)}` : ', weight not known'})`;
  const ready = readinessOf(formula).products.get(normaliseName(product.name));
  return [
    head,
    composition(product.parts),
    ...hydrationOf(formula, product.parts),
    ...(ready && ready.high.n > 0n
      ? [`Ready ${minutesText(ready)} after the first line begins, if nothing waits for a cook.`]
      : []),
    ...drawnBy(product),
  ].join('\n\n');
}

/** Its heaviest foods, with their share of the weight. */
function composition(parts: readonly Part[]): string {
  const byFood = new Map<string, { readonly name: string; grams: Rational }>();
  for (const part of parts) {
    const before = byFood.get(part.food.key);
    byFood.set(part.food.key, {
      name: part.food.name,
      grams: before ? sum([before.grams, massOf(part)]) : massOf(part),
    });
  }
  const whole = sum([...byFood.values()].map(({ grams }) => grams));
  if (whole.n <= 0n) return 'Holds nothing.';
  const sorted = [...byFood.values()].sort((a, b) => compare(b.grams, a.grams));
  const shown = sorted
    .slice(0, 8)
    .map(({ name, grams }) => `| ${escapeMarkdown(name)} | ${gramsText(grams)} | ${percentOf(grams, whole)} |`);
  const more = sorted.length > 8 ? [`| and ${sorted.length - 8} more | | |`] : [];
  return ['| holds | weight | share |', '|---|--:|--:|', ...shown, ...more].join('\n');
}

/** The flour in it, and the water on that flour. */
function hydrationOf(formula: Formula, parts: readonly Part[]): string[] {
  const flour = sum(parts.filter((part) => formula.isFlour(part.food)).map(massOf));
  if (flour.n <= 0n) return [];
  const water = sum(parts.filter((part) => isWater(part.food)).map(massOf));
  return [`Flour ${gramsText(flour)}, water on flour ${shareText(divide(water, flour))}.`];
}

function drawnBy(product: Product): string[] {
  if (product.draws.length === 0) return [];
  const shares = product.draws.map(
    ({ share, optional }) => `${share ? shareText(share) : 'some'}${optional ? ' if used' : ''}`,
  );
  return [`Drawn ${product.draws.length === 1 ? 'once' : `${product.draws.length} times`}: ${shares.join(', ')}.`];
}

function hoverUsed(snapshot: Snapshot, where: Where): string | undefined {
  const product = snapshot.formulaAt(where.line)?.products.get(normaliseName(where.text));
  if (product?.formula === undefined) return `**${escapeMarkdown(where.text)}** (from another file)`;
  return `From ${escapeMarkdown(product.formula.title)} in \`${product.formula.file}\`.\n\n${composition(product.parts)}`;
}

function hoverRecipe(snapshot: Snapshot, meaning: Meaning, where: Where): string | undefined {
  const file = meaning.file ?? snapshot.path;
  const title = meaning.key.slice(meaning.key.indexOf('#') + 1).split('@')[0];
  const here = file === snapshot.path && meaning.kind === 'variant' ? snapshot.formulasAt(where.line) : undefined;
  const formulas =
    here ??
    (file === snapshot.path && meaning.kind === 'recipe'
      ? snapshot.compiled.formulas
      : snapshot.session.compile(file)?.formulas) ??
    [];
  const formula = formulas.find((one) =>
    meaning.kind === 'variant'
      ? normaliseName(one.variant ?? '') === normaliseName(meaning.name)
      : one.variant === undefined && normaliseName(one.title) === title,
  );
  return formula && recipeCard(formula);
}

function recipeCard(formula: Formula): string {
  const { title, variant, dishGrams, servings, flour } = formula;
  const readiness = readinessOf(formula);
  const figures = [
    dishGrams ? gramsText(dishGrams) : 'weight not known',
    ...(piecesText(formula) === undefined ? [] : [piecesText(formula)]),
    ...(servings ? [`${printDecimal(servings, 0)} servings`] : []),
  ];
  return [
    `**${escapeMarkdown(title)}**${variant === undefined ? '' : `, ${escapeMarkdown(variant)}`}: ${figures.join(', ')}.`,
    ...(flour
      ? [
          `Flour ${gramsText(flour.grams)}, hydration ${shareText(flour.hydration)}, prefermented ${shareText(flour.prefermented)}.`,
        ]
      : []),
    `Ready ${minutesText(readiness.dish)} after the first line begins at the soonest; hands busy ${minutesText(readiness.hands)}.`,
  ].join('\n\n');
}

// ---- foods -----------------------------------------------------------------------------------------------------------

function hoverFood(snapshot: Snapshot, written: string, meaning: Meaning): string | undefined {
  const own = meaning.kind === 'food' ? snapshot.compiled.foods.get(normaliseName(meaning.name)) : undefined;
  const answer = own ? undefined : snapshot.foods.find(written);
  const food =
    own?.food ??
    (answer?.kind === 'found' ? answer.match.food : snapshot.foods.get(meaning.key.replace(/^table:/, '')));
  if (food === undefined) return undefined;
  return foodCard(snapshot, food, own);
}

function foodCard(snapshot: Snapshot, food: Food, own: LedgerFood | undefined): string {
  const roles = food.roles.length > 0 ? ` (${food.roles.join(', ')})` : '';
  return [
    `**${escapeMarkdown(food.name)}**${roles}${own ? ', as this file states it' : ''}`,
    allergenLine(food),
    nutrientLine(food),
    ...cupLines(food),
    sourceList(snapshot, sourcesOf(food)).replace(/^\. /, ''),
  ]
    .filter((line) => line !== '' && line !== '.')
    .join('\n\n');
}

function allergenLine(food: Food): string {
  const traces = food.traces.length > 0 ? ` May hold traces of ${food.traces.map(describeAllergen).join(', ')}.` : '';
  if (food.allergens === undefined) {
    const surely = food.allergensAtLeast ?? [];
    const known = surely.length > 0 ? ` It surely contains ${surely.map(describeAllergen).join(', ')}.` : '';
    return `Allergens are not known: read the packet.${known}${traces}`;
  }
  if (food.allergens.length === 0)
    return `No allergen of the lists is known in it; read the packet of what you use.${traces}`;
  return `Contains **${food.allergens.map(describeAllergen).join(', ')}**.${traces}`;
}

const SHOWN: readonly { readonly id: NutrientId; readonly label: string; readonly unit: string }[] = [
  { id: 'energyKcal', label: 'energy', unit: 'kcal' },
  { id: 'fat', label: 'fat', unit: 'g' },
  { id: 'saturates', label: 'of which saturates', unit: 'g' },
  { id: 'carbohydrateAvailable', label: 'carbohydrate', unit: 'g' },
  { id: 'carbohydrateByDifference', label: 'carbohydrate by difference', unit: 'g' },
  { id: 'sugars', label: 'sugars', unit: 'g' },
  { id: 'fibre', label: 'fibre', unit: 'g' },
  { id: 'protein', label: 'protein', unit: 'g' },
  { id: 'sodium', label: 'sodium', unit: 'mg' },
  { id: 'water', label: 'water', unit: 'g' },
  { id: 'alcohol', label: 'alcohol', unit: 'g' },
];

function nutrientLine(food: Food): string {
  const shown = SHOWN.flatMap(({ id, label, unit }) => {
    const value = food.nutrients[id];
    if (value === undefined || (id === 'alcohol' && value.n === 0n)) return [];
    return [`${label} ${printDecimal(value, unit === 'g' ? 1 : 0)} ${unit}`];
  });
  return shown.length === 0 ? 'No nutrition is known.' : `Per 100 g: ${shown.join(', ')}.`;
}

/** The weight of a cup in each form, and of a piece. */
function cupLines(food: Food): string[] {
  const volumes = food.volumes.slice(0, 4).map(({ form, perMillilitre }) => {
    const line = `${cupWeight(perMillilitre, 'us')}.`;
    return form === '' ? line : line.replace(/^A cup/, `A cup, ${form},`);
  });
  const pieces = food.pieces.slice(0, 4).map(({ piece, size, grams }) => {
    const what = [size, piece].filter((word) => word !== '').join(' ') || 'piece';
    return `1 ${what} weighs ${gramsText(grams.usual)}.`;
  });
  return [...volumes, ...pieces];
}

/** Every source of what the card shows. */
function sourcesOf(food: Food): readonly string[] {
  const weights = [...food.volumes.map(({ perMillilitre }) => perMillilitre), ...food.pieces.map(({ grams }) => grams)];
  return [...(food.nutrientSources ?? food.sources), ...weights.flatMap(({ sources }) => sources)];
}

function unknownFood(snapshot: Snapshot, meaning: Meaning): string {
  const answer = snapshot.foods.find(meaning.name);
  const name = escapeMarkdown(meaning.name);
  if (answer.kind === 'ambiguous') {
    return `**${name}** could be ${answer.candidates
      .slice(0, 6)
      .map((food) => escapeMarkdown(food.name))
      .join(', ')}.`;
  }
  return `**${name}** is not in the food table: nothing can be said of its nutrition or its allergens.`;
}

function hoverCulture(snapshot: Snapshot, meaning: Meaning): string | undefined {
  const block = snapshot.outline.cultures.find(
    ({ heading }) => normaliseName(heading.content.name?.text ?? '') === normaliseName(meaning.name),
  );
  if (block === undefined) return undefined;
  const parts = block.facts.flatMap(({ content }) => (content.kind === 'parts' ? content.parts : []));
  const whole = sum(parts.map((part) => part.value));
  const told =
    whole.n > 0n
      ? parts.map((part) => `${percentOf(part.value, whole)} ${escapeMarkdown(part.name.text)}`).join(', ')
      : 'parts not stated';
  return `**${escapeMarkdown(meaning.name)}**: a culture, owned and fed, never bought.\n\n${told}.`;
}

function hoverClass(snapshot: Snapshot, meaning: Meaning): string {
  const foods = snapshot.foods.ofClass(meaning.name);
  if (foods.length === 0) return `The food table has no class “${escapeMarkdown(meaning.name)}”.`;
  const names = foods.slice(0, 12).map((food) => escapeMarkdown(food.name));
  return `Any of ${foods.length}: ${names.join(', ')}${foods.length > 12 ? ' …' : ''}. Allergens are those of all of them together.`;
}
