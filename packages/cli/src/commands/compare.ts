import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { Compiled } from '@quern/compiler';
import {
  compareInputs,
  comparisonJson,
  comparisonMarkdown,
  comparisonPage,
  comparisonText,
  historyCsv,
  historyJson,
  historyMarkdown,
  historyPage,
  historySvg,
  historyText,
  jsonText,
  type CompareInputOptions,
} from '@quern/publish';
import { compareFiles, compareFormulas, fileReport, historyOf, MARKETS, type FileComparison } from '@quern/views';
import { defineCommand, UsageError, type ExitCode, type Values } from '../command.js';
import { historyOfFile, requireReadable, type HistoryRequest } from '../compare/history.js';
import { statesSince } from '../compare/since.js';
import { repositoryOf, type Repository } from '../git/git.js';
import { chooseFormula, foodBook, loadFile, RECIPE_OPTIONS } from '../recipe/load.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { paintFor, widthOf } from '../system/paint.js';
import { presentMilliseconds } from '../system/present.js';
import { Progress } from '../system/progress.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'markdown', 'html', 'json', 'svg', 'csv'] as const;

const OPTIONS = {
  since: {
    type: 'string',
    value: 'REVISION',
    says: 'compare files as they are with a commit: HEAD, main, v1.2, 3f9a…',
  },
  history: { type: 'boolean', says: 'how figures of a recipe moved from commit to commit' },
  figure: {
    type: 'string',
    multiple: true,
    value: 'NAME',
    says: 'a figure of the history: hydration, salt, yield, hands-on time, …, or any food',
  },
  ...RECIPE_OPTIONS,
  market: {
    type: 'string',
    value: 'MARKET',
    choices: MARKETS,
    says: 'whose figures and lists of allergens are compared: eu, uk, us, ca, au, jp, codex or none (default)',
  },
  ready: {
    type: 'string',
    value: 'TIME',
    says: 'when it is to be ready, 18:00: then the time to begin is compared too',
  },
  format: {
    type: 'string',
    value: 'FORMAT',
    choices: FORMATS,
    says: 'text (default), markdown, html or json; of a history also svg or csv',
  },
  ...OUTPUT_OPTION,
} as const;

type Given = Values<typeof OPTIONS>;
type Compared = Omit<FileComparison, 'difference'>;

export const compare = defineCommand({
  usage: ['BEFORE AFTER', '--since REVISION [FILE …]', 'FILE --variant NAME', '--history FILE [--figure NAME …]'],
  about: [
    'Says what changed from one formula to another by make, food and step, and what follows from it: allergens first, cautions, checks that now fail, nutrition, yield, time, baker’s percentages. A moved line and another spelling are no change; a recipe that is so many times the other is told as that.',
    'Gives exit code 0 whether or not anything changed.',
  ],
  options: OPTIONS,
  examples: [
    { line: 'old.quern new.quern', says: 'what changed between two files' },
    { line: '--since HEAD loaf.quern', says: 'what is not committed yet' },
    { line: 'loaf.quern --variant seedless', says: 'what a variant changes' },
    { line: '--since main --format markdown', says: 'every recipe of a branch, for a pull request' },
    {
      line: '--history loaf.quern --figure hydration --figure salt --format html -o loaf.html',
      says: 'a chart over all commits',
    },
  ],
  async run({ files, options, system }) {
    const text = options.history
      ? await historyOut(files, options, system)
      : render(comparedOf(files, options, system), options.format, system);
    giveOut(text, options.output, system);
    return 0 satisfies ExitCode;
  },
});

// ---- comparisons -----------------------------------------------------------------------------------------------------

function comparedOf(files: readonly string[], options: Given, system: System): readonly Compared[] {
  if (options.figure.length > 0) throw new UsageError('--figure is of a history', 'add --history');
  const ready = readyOf(options.ready);
  const inputs: CompareInputOptions = {
    market: MARKETS.find((one) => one === options.market) ?? 'none',
    ...(ready === undefined ? {} : { ready }),
  };
  if (options.since !== undefined) return comparedSince(files, options.since, inputs, system);
  const [first, second, ...more] = files;
  if (first === undefined) throw new UsageError('no file is named', 'quern compare BEFORE AFTER');
  if (more.length > 0) throw new UsageError('more than two files are named', 'name the one before and the one after');
  const variantsAlone = second === undefined && isOfAnother(loadFile(first, system, options.root).compiled);
  if (options.variant !== undefined || variantsAlone) return [comparedVariant(first, second, options, inputs, system)];
  if (second === undefined) {
    throw new UsageError(
      'only one file is named',
      `name the other, or write --since HEAD ${first} or ${first} --variant NAME`,
    );
  }
  const [before, after] = [loadFile(first, system, options.root), loadFile(second, system, options.root)];
  if (options.recipe !== undefined) {
    const [a, b] = [chooseFormula(before, options), chooseFormula(after, options)];
    const both = { before: compareInputs(a, before.compiled, inputs), after: compareInputs(b, after.compiled, inputs) };
    const comparison = compareFormulas(a, b, both);
    return [{ before: first, after: second, same: comparison.same, recipes: [comparison], others: [] }];
  }
  const compared = compareFiles(before.compiled, after.compiled, (formula, compiled) =>
    compareInputs(formula, compiled, inputs),
  );
  return [{ ...compared, before: first, after: second }];
}

function comparedSince(
  files: readonly string[],
  revision: string,
  inputs: CompareInputOptions,
  system: System,
): readonly Compared[] {
  const repository = repositoryAt(files[0], system);
  const paths = files.map((file) => resolve(system.folder, file));
  return statesSince(repository, revision, paths, foodBook()).map(({ before, after, names }) => ({
    ...compareFiles(before, after, (formula, compiled) => compareInputs(formula, compiled, inputs)),
    ...names,
  }));
}

/** Whether a file holds nothing but variants of a recipe of another file. */
const isOfAnother = ({ formulas }: Compiled): boolean => formulas.length > 0 && formulas.every(({ base }) => base);

/** A recipe with a variant of it. */
function comparedVariant(
  file: string,
  second: string | undefined,
  options: Given,
  inputs: CompareInputOptions,
  system: System,
): Compared {
  if (second !== undefined) throw new UsageError('--variant compares a recipe with its own variant', 'name one file');
  const loaded = loadFile(file, system, options.root);
  const variant = chooseFormula(loaded, options);
  const base = variant.base ?? chooseFormula(loaded, { recipe: options.recipe ?? variant.title });
  // The recipe of a variant may stand in another file.
  const home = loaded.session.compile(base.file) ?? loaded.compiled;
  const both = { before: compareInputs(base, home, inputs), after: compareInputs(variant, loaded.compiled, inputs) };
  const comparison = compareFormulas(base, variant, both);
  return { before: file, after: file, same: comparison.same, recipes: [comparison], others: [] };
}

function readyOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const [, hours, minutes] = /^(\d{1,2}):(\d{2})$/.exec(text.trim()) ?? [];
  const clock = Number(hours) * 60 + Number(minutes);
  if (hours === undefined || clock >= 1440 || Number(minutes) > 59) {
    throw new UsageError(`--ready: “${text}” is not a time of the day`, 'write it like --ready 18:00');
  }
  return clock;
}

function render(compared: readonly Compared[], format: string | undefined, system: System): string {
  if (format === 'json') return jsonText(comparisonJson(compared));
  if (format === 'svg' || format === 'csv')
    throw new UsageError(`${format} is a form of a history`, 'add --history, or choose text, markdown, html or json');
  const reports = compared.map(fileReport);
  if (reports.length === 0) return 'No recipe has changed.\n';
  if (format === 'markdown') return comparisonMarkdown(reports);
  if (format === 'html') return comparisonPage(reports);
  return comparisonText(reports, { paint: paintFor(system), width: widthOf(system) });
}

/** The repository of a file, or of the folder one stands in. */
function repositoryAt(file: string | undefined, { folder }: System): Repository {
  const own = file === undefined ? folder : dirname(resolve(folder, file));
  return existsSync(own) ? repositoryOf(own, file ?? 'this folder') : repositoryOf(folder, 'this folder');
}

// ---- history ---------------------------------------------------------------------------------------------------------

async function historyOut(files: readonly string[], options: Given, system: System): Promise<string> {
  const [shown, ...more] = files;
  if (shown === undefined || more.length > 0)
    throw new UsageError('a history is of one file', 'quern compare --history FILE');
  if (options.since !== undefined)
    throw new UsageError('--since and --history cannot be asked for together', 'give one of them');
  const file = resolve(system.folder, shown);
  const repository = repositoryAt(shown, system);
  let progress: Progress | undefined;
  const request: HistoryRequest = {
    file,
    shown,
    recipe: options.recipe,
    variant: options.variant,
    today: new Date(presentMilliseconds(system)).toISOString().slice(0, 10),
    progress: (done, of) => (progress ??= new Progress(system.err, 'revisions', of)).update(done),
  };
  const revisions = await historyOfFile(repository, foodBook(), request);
  progress?.end();
  requireReadable(revisions, request);
  const history = historyOf(revisions, options.figure);
  if (!history.ok) throw new UsageError(history.problem, history.help);
  switch (options.format) {
    case 'html':
      return historyPage(history.value);
    case 'svg':
      return historySvg(history.value);
    case 'csv':
      return historyCsv(history.value);
    case 'json':
      return historyJson(history.value);
    case 'markdown':
      return historyMarkdown(history.value);
    default:
      return historyText(history.value, { paint: paintFor(system) });
  }
}
