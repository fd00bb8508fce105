import { multiply, parseRational, rational, FINE_SCALE, type Rational } from '@quern/quantity';
import { jsonText, sheetCsv, sheetHtml, sheetMarkdown, sheetText } from '@quern/publish';
import { readScale, sheet as makeSheet, type SheetData, type SheetOptions } from '@quern/views';
import { defineCommand, UsageError } from '../command.js';
import { chooseFormula, loadFile, RECIPE_OPTIONS, tellErrors } from '../recipe/load.js';
import { MEASURE_OPTIONS, measureOptions } from '../recipe/measure-options.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { SCALE_OPTIONS, scaleOption } from '../recipe/scale-option.js';
import { paintFor, widthOf } from '../system/paint.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'markdown', 'html', 'csv', 'json'] as const;

export const sheet = defineCommand({
  usage: ['FILE [OPTION …]'],
  about: [
    'Prints what to weigh, make by make, with the steps between, at the size you ask for. Weights are rounded to what a scale shows, cups and spoons to what a cook owns, with how far off they are.',
    'What does not scale is told at the end: times in the oven, amounts in words, counts that do not come out whole, more than the tins or the mixer hold.',
  ],
  options: {
    ...SCALE_OPTIONS,
    ...RECIPE_OPTIONS,
    ...MEASURE_OPTIONS,
    percentages: { type: 'boolean', says: "baker's percentages beside the lines and as a table" },
    fine: { type: 'boolean', says: 'for a scale that shows tenths of a gram' },
    within: {
      type: 'string',
      value: 'PERCENT',
      says: 'how far off cups and spoons may be for the sake of fewer scoops; 3 unless given',
    },
    gas: { type: 'boolean', says: 'gas marks beside the heat of an oven' },
    mixer: { type: 'string', value: 'WEIGHT', says: 'the most that goes into the mixer at once: 4kg' },
    format: { type: 'string', value: 'FORMAT', choices: FORMATS, says: 'text (default), markdown, html, csv or json' },
    ...OUTPUT_OPTION,
  },
  examples: [
    { line: 'loaf.quern --makes "6 loaves"', says: 'everything for six loaves' },
    { line: 'loaf.quern --tin "3 of 25x10x8 cm" --measures metric', says: 'for other tins, in grams alone' },
    { line: 'loaf.quern --have "350 g sunflower seeds"', says: 'as much as the seeds allow' },
    { line: 'loaf.quern --percentages --format html -o loaf.html', says: 'a page to print' },
  ],
  async run({ files, options, system }) {
    const [path, ...more] = files;
    if (path === undefined) throw new UsageError('no file is named', 'quern sheet FILE');
    if (more.length > 0) throw new UsageError('a sheet is made of one file', 'quern basket adds several up');
    const loaded = loadFile(path, system, options.root);
    tellErrors(loaded, system);
    const formula = chooseFormula(loaded, options);
    const settings: SheetOptions = {
      scale: scaleOption(options, formula),
      percentages: options.percentages,
      gasMarks: options.gas,
      ...measureOptions(options),
      ...(options.fine ? { rounding: FINE_SCALE } : {}),
      ...(options.within === undefined ? {} : { tolerance: tolerance(options.within) }),
      ...(options.mixer === undefined ? {} : { mixer: weight(options.mixer) }),
    };
    giveOut(render(makeSheet(formula, settings), options.format, system), options.output, system);
    return loaded.compiled.diagnostics.some(({ severity }) => severity === 'error') ? 1 : 0;
  },
});

function render(data: SheetData, format: string | undefined, system: System): string {
  switch (format) {
    case 'json':
      return jsonText(data);
    case 'csv':
      return sheetCsv(data);
    case 'html':
      return sheetHtml(data);
    case 'markdown':
      return sheetMarkdown(data);
    default:
      return sheetText(data, { paint: paintFor(system), width: widthOf(system) });
  }
}

function tolerance(text: string): Rational {
  const percent = parseRational(text.replace(/\s*%$/, ''));
  if (!percent || percent.n < 0n)
    throw new UsageError(`--within: “${text}” is not a percentage`, 'write a number, such as 5');
  return multiply(percent, rational(1, 100));
}

function weight(text: string): Rational {
  const read = readScale('weight', text);
  if (!read.ok) throw new UsageError(`--mixer: ${read.problem}`, read.help);
  return read.value.kind === 'weight' ? read.value.grams : rational(0);
}
