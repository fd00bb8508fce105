import type { Compiled } from '@quern/compiler';
import { comparisonJson, comparisonMarkdown, comparisonPage, comparisonText, jsonText } from '@quern/publish';
import { compareFiles, compareFormulas, fileReport, MARKETS, type FileComparison } from '@quern/views';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { inputsOf, type InputOptions } from '../compare/inputs.js';
import { chooseFormula, loadFile, RECIPE_OPTIONS, type Loaded } from '../recipe/load.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { paintFor, widthOf } from '../system/paint.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'markdown', 'html', 'json'] as const;

const OPTIONS = {
  ...RECIPE_OPTIONS,
  market: { type: 'string', value: 'MARKET', choices: MARKETS, says: 'whose figures and allergens are compared' },
  format: { type: 'string', value: 'FORMAT', choices: FORMATS, says: 'text (default), markdown, html or json' },
  ...OUTPUT_OPTION,
} as const;

type Compared = Omit<FileComparison, 'difference'>;

export const compare = defineCommand({
  usage: ['BEFORE AFTER', 'FILE --variant NAME'],
  about: ['Says what changed from one formula to another.'],
  options: OPTIONS,
  examples: [{ line: 'old.quern new.quern', says: 'what changed' }],
  async run({ files, options, system }) {
    const inputs: InputOptions = { market: MARKETS.find((one) => one === options.market) ?? 'none' };
    const [first, second] = files.map((path) => loadFile(path, system, options.root));
    if (!first) throw new UsageError('no file is named', 'quern compare BEFORE AFTER');
    let compared: Compared;
    if (second)
      compared = compareFiles(first.compiled, second.compiled, (formula, compiled) =>
        inputsOf(formula, compiled, inputs),
      );
    else compared = withVariant(first, options, inputs);
    giveOut(render(compared, options.format, system), options.output, system);
    return 0 satisfies ExitCode;
  },
});

function withVariant(
  loaded: Loaded,
  options: { recipe: string | undefined; variant: string | undefined },
  inputs: InputOptions,
): Compared {
  const base = chooseFormula(loaded, { recipe: options.recipe });
  const variant = chooseFormula(loaded, options);
  const of = (compiled: Compiled, formula: typeof base): ReturnType<typeof inputsOf> =>
    inputsOf(formula, compiled, inputs);
  const comparison = compareFormulas(base, variant, {
    before: of(loaded.compiled, base),
    after: of(loaded.compiled, variant),
  });
  return { before: loaded.shown, after: loaded.shown, same: comparison.same, recipes: [comparison], others: [] };
}

function render(compared: Compared, format: string | undefined, system: System): string {
  switch (format) {
    case 'json':
      return jsonText(comparisonJson(compared));
    case 'markdown':
      return comparisonMarkdown(fileReport(compared));
    case 'html':
      return comparisonPage(fileReport(compared));
    default:
      return comparisonText(fileReport(compared), { paint: paintFor(system), width: widthOf(system) });
  }
}
