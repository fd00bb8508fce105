import { multiply, ONE, parseRational, type Rational } from '@quern/quantity';
import { basketCsv, basketHtml, basketMarkdown, basketText, jsonText } from '@quern/publish';
import {
  basket as makeBasket,
  readPackageSize,
  type BasketData,
  type BasketRequest,
  type PackageSize,
} from '@quern/views';
import { defineCommand, RecipeError, UsageError } from '../command.js';
import { chooseFormula, loadFile, RECIPE_OPTIONS, tellErrors, type Loaded } from '../recipe/load.js';
import { MEASURE_OPTIONS, measureOptions } from '../recipe/measure-options.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { paintFor, widthOf } from '../system/paint.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'markdown', 'html', 'csv', 'json'] as const;

export const basket = defineCommand({
  usage: ['FILE[*TIMES][@VARIANT] … [OPTION …]'],
  about: [
    'Adds up what recipes and menus need into one shopping list, by the shelves of a shop. Packs stay packs; cultures and things made in the recipe are not bought; water comes from the tap.',
    'After a file stands how many times it is made (loaf.quern*3, loaf.quern*1/2) and which variant (pots.quern@half). A file that holds a menu is shopped for as the menu says; a file with several recipes is shopped for whole, unless --recipe names one.',
  ],
  options: {
    recipe: RECIPE_OPTIONS.recipe,
    root: RECIPE_OPTIONS.root,
    ...MEASURE_OPTIONS,
    package: {
      type: 'string',
      multiple: true,
      value: '"SIZE FOOD"',
      says: 'a size in which a food is sold, to say how many to buy: "1.5 kg whole rye flour"',
    },
    format: { type: 'string', value: 'FORMAT', choices: FORMATS, says: 'text (default), markdown, html, csv or json' },
    ...OUTPUT_OPTION,
  },
  examples: [
    { line: 'loaf.quern*3 cheeks.quern', says: 'three batches of the loaf and one of the cheeks' },
    { line: 'supper.quern --measures us', says: 'a menu, in cups and pounds' },
    { line: 'loaf.quern*3 --package "1.5 kg whole rye flour"', says: 'how many bags of flour that is' },
  ],
  async run({ files, options, system }) {
    if (files.length === 0) throw new UsageError('no file is named', 'quern basket FILE …');
    const packages = options.package.map(packageSize);
    const asked = files.map(readFileArgument);
    const loaded = new Map<string, Loaded>();
    for (const { path } of asked) if (!loaded.has(path)) loaded.set(path, loadFile(path, system, options.root));
    for (const file of loaded.values()) tellErrors(file, system);
    const requests = asked.flatMap((one) => requestsOf(one, loaded, options.recipe));
    const data = makeBasket(requests, { ...measureOptions(options), packages });
    giveOut(render(data, options.format, system), options.output, system);
    const errors = [...loaded.values()].some(({ compiled }) =>
      compiled.diagnostics.some(({ severity }) => severity === 'error'),
    );
    return errors ? 1 : 0;
  },
});

interface FileArgument {
  readonly path: string;
  readonly times: Rational;
  readonly variant: string | undefined;
}

/** `loaf.quern*3`, `loaf.quern*1/2@seedless`: a path ends at `.quern`, so that it may hold a star or an at sign itself. */
export function readFileArgument(text: string): FileArgument {
  const [, path = text, stars, name] = /^(.*\.quern)(?:\*([^@]*))?(?:@(.*))?$/s.exec(text) ?? [];
  const times = stars === undefined ? ONE : parseRational(stars.trim());
  if (!times || times.n <= 0n)
    throw new UsageError(
      `“${stars}” after ${path}* is not a number above zero`,
      'write it like loaf.quern*3 or loaf.quern*1/2',
    );
  return { path, times, variant: name };
}

function requestsOf(
  { path, times, variant }: FileArgument,
  files: ReadonlyMap<string, Loaded>,
  recipe: string | undefined,
): readonly BasketRequest[] {
  const loaded = files.get(path);
  if (!loaded) return [];
  const { compiled } = loaded;
  if (recipe === undefined && variant === undefined && compiled.menus.length > 0) {
    return compiled.menus.flatMap((menu) =>
      menu.courses.flatMap((course) =>
        course.dishes.map(({ formula, factor, name }) => {
          if (!formula || !factor)
            throw new RecipeError(
              `how much of ${name} the menu “${menu.name}” takes is not known`,
              `quern check ${path} says why`,
            );
          return { formula, factor: multiply(factor, times) };
        }),
      ),
    );
  }
  if (recipe !== undefined || variant !== undefined)
    return [{ formula: chooseFormula(loaded, { recipe, variant }), factor: times }];
  const bases = compiled.formulas.filter((formula) => formula.variant === undefined);
  if (bases.length === 0) throw new RecipeError(`${path} holds no recipe`, 'begin one with a line “recipe NAME”');
  return bases.map((formula) => ({ formula, factor: times }));
}

function packageSize(text: string): PackageSize {
  const size = readPackageSize(text);
  if (!size.ok) throw new UsageError(`--package: ${size.problem}`, size.help);
  return size.value;
}

function render(data: BasketData, format: string | undefined, system: System): string {
  switch (format) {
    case 'json':
      return jsonText(data);
    case 'csv':
      return basketCsv(data);
    case 'html':
      return basketHtml(data);
    case 'markdown':
      return basketMarkdown(data);
    default:
      return basketText(data, { paint: paintFor(system), width: widthOf(system) });
  }
}
