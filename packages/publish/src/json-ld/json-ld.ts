import { add, exact, toIsoDuration, type Rational } from '@quern/quantity';
import type { CardAmount, CardData, CardIngredient, CardMake, CardRun, CardStep, ExactRange } from '@quern/views';
import { pictureAddress, safeAddress, isolateDirections } from '../escape.js';

/** JSON without functions or gaps. */
export type Json = string | number | boolean | readonly Json[] | { readonly [name: string]: Json };
type JsonObject = { readonly [name: string]: Json };

export interface JsonLdOptions {
  /** Address of the page that shows the card; the recipe is known by it. */
  readonly address?: string;
  /** Absolute address of the photograph; by default the path as written, which a reader takes from the page's address. */
  readonly image?: string;
}

/** schema.org has more diets; only those that a label can confirm from what went in are ever stated. */
const DIETS = { vegan: 'https://schema.org/VeganDiet', vegetarian: 'https://schema.org/VegetarianDiet' } as const;

/** The property of schema.org's NutritionInformation for a row of the label, where it has one, and the unit it takes. */
const NUTRIENTS: Readonly<Record<string, string>> = {
  energyKcal: 'calories',
  fat: 'fatContent',
  saturates: 'saturatedFatContent',
  trans: 'transFatContent',
  carbohydrate: 'carbohydrateContent',
  carbohydrateTotal: 'carbohydrateContent',
  sugars: 'sugarContent',
  fibre: 'fiberContent',
  protein: 'proteinContent',
  sodium: 'sodiumContent',
  cholesterol: 'cholesterolContent',
};

/** The card as schema.org `Recipe` (https://schema.org/Recipe), for JSON-LD. What is not known is left out. */
export function cardJsonLd(card: CardData, options: JsonLdOptions = {}): JsonObject {
  const { address } = options;
  const title = card.variant === undefined ? card.title : `${card.title} (${card.variant})`;
  return clean({
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    ...(address === undefined ? {} : { '@id': address, url: address }),
    name: title,
    inLanguage: card.language,
    author: card.by.map((name) => ({ '@type': 'Person', name })),
    description: card.introduction.join(' '),
    keywords: card.keywords.join(', '),
    image: image(card, options),
    datePublished: card.date,
    version: card.revision,
    isBasedOn: card.source.map((name) => ({ '@type': 'CreativeWork', name })),
    recipeYield: yieldTexts(card),
    totalTime: longest(card.times.total),
    ...times(card),
    recipeIngredient: card.makes.flatMap((make) => make.ingredients.flatMap(ingredientTexts)),
    recipeInstructions: instructions(card),
    suitableForDiet: card.diets.map((diet) => DIETS[diet]),
    nutrition: nutrition(card),
  });
}

type Draft = { readonly [name: string]: Json | undefined };

/** Leaves out what is missing, empty or an empty list. */
function clean(draft: Draft): JsonObject {
  const kept = Object.entries(draft).filter((entry): entry is [string, Json] => {
    const value = entry[1];
    return value !== undefined && value !== '' && !(Array.isArray(value) && value.length === 0);
  });
  return Object.fromEntries(
    kept.map(([name, value]) => [name, typeof value === 'string' ? isolateDirections(value) : value]),
  );
}

/** A range is told by its longer end: who plans with it is not let down. */
function longest(minutes: ExactRange | undefined): string | undefined {
  return minutes && toIsoDuration(exact(minutes.high));
}

/** Hands-on time is what schema.org calls preparation; heat is cooking: the sum of oven and hob lines. */
function times(card: CardData): Draft {
  const heat = card.makes
    .flatMap((make) => make.steps)
    .filter((step) => step.clock.lane === 'oven' || step.clock.lane === 'hob');
  const known = heat.every((step) => step.clock.time !== undefined && !step.clock.time.open);
  return {
    prepTime: longest(card.times.handsOn),
    cookTime: heat.length > 0 && known ? toIsoDuration(heatMinutes(heat)) : undefined,
  };
}

function heatMinutes(heat: readonly CardStep[]): Rational {
  return heat.map((step) => exact(step.clock.time?.minutes.high ?? '0')).reduce(add);
}

function image(card: CardData, options: JsonLdOptions): Json | undefined {
  const url = options.image ?? (card.photo && pictureAddress(card.photo.path));
  if (url === undefined || safeAddress(url) === undefined) return undefined;
  return clean({ '@type': 'ImageObject', contentUrl: url, caption: card.photo?.alternative });
}

/** `2 loaves`, and `40 slices` where the recipe says both. */
function yieldTexts(card: CardData): Json | undefined {
  const { thing, count, serves } = card.yield;
  const texts = [...(thing === 'batches' ? [] : [`${count} ${thing}`]), ...(serves ? [serves.metric] : [])];
  return texts.length === 1 ? texts[0] : texts;
}

function both({ words, metric, us }: CardAmount): string {
  if (words !== undefined) return metric === us ? `${words} (${metric})` : `${words} (${metric}; ${us})`;
  return metric === us ? metric : `${metric} (${us})`;
}

/** One text an ingredient; what is made in the recipe itself is not bought and not listed. */
function ingredientTexts(item: CardIngredient): string[] {
  if (item.make !== undefined) return [];
  const one = (part: CardIngredient): string =>
    `${both(part.amount)} ${part.name}${part.note === undefined ? '' : `, ${part.note}`}`;
  const text = [item, ...item.alternatives].map(one).join(', or ');
  return [isolateDirections(item.optional ? `${text} (optional)` : text)];
}

function instructions(card: CardData): Json {
  const [only] = card.makes;
  if (card.makes.length === 1 && only) return only.steps.map(step);
  return card.makes.filter((make) => make.steps.length > 0).map(section);
}

function section(make: CardMake): JsonObject {
  return clean({ '@type': 'HowToSection', name: make.name, itemListElement: make.steps.map(step) });
}

/** A step in the writer's words. Its time is told as a property, and tools by name. */
function step(item: CardStep): JsonObject {
  const sentences = [item.sentence, ...item.more].map((runs) => runs.map((run: CardRun) => run.text).join(''));
  const tips = item.remarks.map((remark) => ({ '@type': 'HowToTip', text: isolateDirections(remark.text) }));
  const { time } = item.clock;
  const duration = time && !time.open ? toIsoDuration(exact(time.minutes.high)) : undefined;
  return clean({
    '@type': 'HowToStep',
    text: sentences.join(' '),
    timeRequired: duration,
    itemListElement: tips,
  });
}

function nutrition(card: CardData): Json | undefined {
  const found = card.nutrition;
  if (!found) return undefined;
  const rows = found.rows.flatMap((row): [string, Json][] => {
    const property = NUTRIENTS[row.id];
    // 'At least' cannot be said here, and a figure that may be low would be taken for the whole.
    if (property === undefined || row.atLeast || row.text === undefined) return [];
    return [[property, row.text]];
  });
  if (rows.length === 0) return undefined;
  return clean({ '@type': 'NutritionInformation', servingSize: found.portion, ...Object.fromEntries(rows) });
}
