import { findScale, readScale, UNSCALED, type Scale, type ScaleKind } from '@quern/views';
import type { Formula } from '@quern/compiler';
import { listOf } from '../arguments.js';
import { RecipeError, UsageError, type Options } from '../command.js';

/** Options that say how large a sheet is to be; one at a time. */
export const SCALE_OPTIONS = {
  times: { type: 'string', value: 'NUMBER', says: 'so many times the recipe: 2.5, 1/2' },
  makes: { type: 'string', value: '"N THINGS"', says: 'for so many pieces: "6 loaves"' },
  weight: { type: 'string', value: 'WEIGHT', says: 'for so much of the finished dish: 5kg' },
  serves: { type: 'string', value: 'N', says: 'for so many servings: 40' },
  tin: {
    type: 'string',
    value: '"N of SIZE"',
    says: 'for other tins, by volume: "3 of 25x10x8 cm", round "2 of 20x8 cm"',
  },
  have: {
    type: 'string',
    value: '"AMOUNT FOOD"',
    says: 'as much as what there is allows: "350 g sunflower seeds, 4 eggs"',
  },
} as const satisfies Options;

const KINDS = Object.keys(SCALE_OPTIONS) as readonly ScaleKind[];

/**
 * The scale that the options ask for.
 * @throws UsageError when two are given or one cannot be read; RecipeError when the recipe does not say what it takes.
 */
export function scaleOption(
  options: Readonly<Partial<Record<ScaleKind, string | undefined>>>,
  formula: Formula,
): Scale {
  const given = KINDS.filter((kind) => options[kind] !== undefined);
  if (given.length > 1)
    throw new UsageError(
      `${listOf(given.map((kind) => `--${kind}`)).replace(/ or /, ' and ')} cannot be asked for together`,
      'choose one of them',
    );
  const [kind] = given;
  const text = kind && options[kind];
  if (kind === undefined || text === undefined) return UNSCALED;
  const request = readScale(kind, text);
  if (!request.ok) throw new UsageError(`--${kind}: ${request.problem}`, request.help);
  const scale = findScale(request.value, formula);
  if (!scale.ok) throw new RecipeError(scale.problem, scale.help);
  return scale.value;
}
