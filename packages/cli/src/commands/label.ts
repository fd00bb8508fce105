import {
  isDate,
  jsonText,
  labelJson,
  labelPage,
  labelText,
  planDated,
  TAG_SIZES,
  tagPage,
  tagText,
  type TagSize,
} from '@quern/publish';
import type { Formula } from '@quern/compiler';
import {
  awakeHours,
  formulasRequest,
  label as makeLabel,
  MARKETS,
  type ClockPlan,
  type Label,
  type LabelOptions,
} from '@quern/views';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { chooseFormula, foodBook, loadFile, RECIPE_OPTIONS, tellErrors, type Loaded } from '../recipe/load.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { widthOf } from '../system/paint.js';
import type { System } from '../system/system.js';

const FORMATS = ['text', 'html', 'json'] as const;
const PER = ['serving', 'piece', '100g'] as const satisfies readonly NonNullable<LabelOptions['per']>[];
const SIZES = Object.keys(TAG_SIZES) as readonly TagSize[];

const OPTIONS = {
  market: {
    type: 'string',
    value: 'MARKET',
    choices: MARKETS,
    says: 'whose lists and rounding: eu, uk, us, ca, au, jp, codex or none (default)',
  },
  ...RECIPE_OPTIONS,
  per: { type: 'string', value: 'WHAT', choices: PER, says: 'serving (default), piece, or 100g alone' },
  explain: { type: 'boolean', says: 'where every figure and every allergen comes from' },
  strict: { type: 'boolean', says: 'exit code 1 when anything that goes in is not known' },
  day: { type: 'string', value: 'DATE', says: 'take the lists of allergens as they stood on a day: 2024-06-01' },
  pictured: {
    type: 'string',
    value: '"FOOD, …"',
    says: 'what a picture shows: it gets its percentage, like what the title names',
  },
  tag: { type: 'boolean', says: 'a small label for a gift or a stall' },
  'made-on': { type: 'string', value: 'DATE', says: 'the day it was made, for the dates of the tag' },
  size: {
    type: 'string',
    value: 'SIZE',
    choices: SIZES,
    says: `size of the tag in print: ${SIZES.join(', ')}; a7 unless given`,
  },
  format: { type: 'string', value: 'FORMAT', choices: FORMATS, says: 'text (default), html or json' },
  ...OUTPUT_OPTION,
} as const;

export const label = defineCommand({
  usage: ['FILE [OPTION …]', 'FILE --tag [--made-on DATE] [--size SIZE]'],
  about: [
    'Says what is in a dish, as far as the ledger knows: ingredients in order, allergens, nutrition, promises held against what goes in, and cautions. What is not known is said to be not known; nothing is ever said to be absent.',
    'It is no official form, and no advice: your local food law, a tested recipe and licensed practice come first.',
  ],
  options: OPTIONS,
  examples: [
    { line: 'loaf.quern --market eu', says: 'the statement of the European Union, per 100 g and per serving' },
    { line: 'loaf.quern --market us --explain', says: 'with every figure traced to foods and sources' },
    {
      line: 'lemons.quern --tag --made-on 2041-02-16 --format html -o tag.html',
      says: 'a label to print and stick on a jar',
    },
  ],
  async run({ files, options, system }) {
    const [path, ...more] = files;
    if (path === undefined) throw new UsageError('no file is named', 'quern label FILE');
    if (more.length > 0) throw new UsageError('a label is made of one file', 'name one file');
    const day = dateOption('day', options.day);
    const madeOn = dateOption('made-on', options['made-on']);
    const loaded = loadFile(path, system, options.root);
    const formula = chooseFormula(loaded, options);
    const { value, diagnostics } = makeLabel(formula, {
      ...optional('timetable', timetableOf(formula, loaded)),
      market: MARKETS.find((one) => one === options.market) ?? 'none',
      kitchens: loaded.compiled.kitchens,
      sourceText: (id) => foodBook().source(id),
      pictured: (options.pictured ?? '')
        .split(',')
        .map((one) => one.trim())
        .filter((one) => one !== ''),
      ...optional(
        'per',
        PER.find((one) => one === options.per),
      ),
      ...optional('day', day),
    });
    tellErrors(loaded, system, newTo(loaded, diagnostics));
    const text = options.tag
      ? tagOut(value, options.format, {
          ...optional('madeOn', madeOn),
          ...optional(
            'size',
            SIZES.find((one) => one === options.size),
          ),
        })
      : labelOut(value, options.format, options.explain, system);
    giveOut(text, options.output, system);
    const failed = [...loaded.compiled.diagnostics, ...diagnostics].some(({ severity }) => severity === 'error');
    return (failed || (options.strict && !value.complete) ? 1 : 0) satisfies ExitCode;
  },
});

/** The recipe as the clock plans it by itself, without a date; undefined when it cannot be planned. */
function timetableOf(formula: Formula, { compiled }: Loaded): ClockPlan | undefined {
  const [kitchen] = compiled.kitchens;
  const request = formula.broken ? undefined : formulasRequest([formula], kitchen);
  return request && planDated(request, { kind: 'undated', courses: false }, awakeHours(kitchen)).plan;
}

/** A property that is there only when it has a value. */
function optional<K extends string, V>(name: K, value: V | undefined): { readonly [P in K]?: V } {
  return (value === undefined ? {} : { [name]: value }) as { readonly [P in K]?: V };
}

function dateOption(name: string, text: string | undefined): string | undefined {
  if (text !== undefined && !isDate(text)) {
    throw new UsageError(`--${name}: “${text}” is not a date`, 'write year, month and day: 2041-02-16');
  }
  return text;
}

/** What the label says and the compiler does not. */
function newTo({ compiled }: Loaded, diagnostics: ReturnType<typeof makeLabel>['diagnostics']): typeof diagnostics {
  const told = new Set(compiled.diagnostics.map(({ code, place }) => `${code} ${place.file} ${place.start}`));
  return diagnostics.filter(({ code, place }) => !told.has(`${code} ${place.file} ${place.start}`));
}

function labelOut(value: Label, format: string | undefined, explain: boolean, system: System): string {
  switch (format) {
    case 'json':
      return jsonText(labelJson(value));
    case 'html':
      return labelPage(value, { explain });
    default:
      return labelText(value, { explain, width: widthOf(system) });
  }
}

function tagOut(value: Label, format: string | undefined, options: Parameters<typeof tagPage>[1]): string {
  switch (format) {
    case 'json':
      throw new UsageError('a tag is text or a page', 'leave --tag out for JSON; it holds all that the tag does');
    case 'html':
      return tagPage(value.tag, { language: value.language, ...options });
    default:
      return tagText(value.tag, options);
  }
}
