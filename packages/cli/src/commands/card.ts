import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  cardHtml,
  cardJsonLd,
  cardMarkdown,
  cardText,
  isDate,
  jsonDocument,
  jsonText,
  recipeCard,
} from '@quern/publish';
import { MARKETS, type CardData } from '@quern/views';
import { photoAddress, readPhoto } from '../card/photo.js';
import { newTo, writeSite } from '../card/write-site.js';
import { defineCommand, UsageError, type ExitCode } from '../command.js';
import { readText } from '../files/read-text.js';
import { chooseFormula, loadFile, RECIPE_OPTIONS, tellErrors, type Loaded } from '../recipe/load.js';
import { giveOut, OUTPUT_OPTION } from '../recipe/output-option.js';
import { SCALE_OPTIONS, scaleOption } from '../recipe/scale-option.js';
import { widthOf } from '../system/paint.js';
import { plain } from '../system/plain.js';
import { presentMilliseconds } from '../system/present.js';
import type { System } from '../system/system.js';

const FORMATS = ['html', 'markdown', 'text', 'json-ld', 'json'] as const;
const MEASURES = ['both', 'metric', 'us'] as const;

const OPTIONS = {
  format: {
    type: 'string',
    value: 'FORMAT',
    choices: FORMATS,
    says: 'html (default), markdown, text, json-ld (schema.org) or json',
  },
  measures: { type: 'string', value: 'WHICH', choices: MEASURES, says: 'metric, us or both (default)' },
  market: {
    type: 'string',
    value: 'MARKET',
    choices: MARKETS,
    says: 'whose allergens and rounding: eu, uk, us, ca, au, jp, codex or none (default)',
  },
  ...RECIPE_OPTIONS,
  ...SCALE_OPTIONS,
  theme: { type: 'string', value: 'FILE', says: 'a style sheet that follows the card’s own' },
  revision: { type: 'string', value: 'WORDS', says: 'a revision to print on the card' },
  date: { type: 'string', value: 'DATE', says: 'a date to print on the card: 2041-02-16' },
  ...OUTPUT_OPTION,
  out: { type: 'string', value: 'FOLDER', says: 'for a folder: where its site goes' },
  title: { type: 'string', value: 'WORDS', says: 'for a site: its title; the folder’s name unless given' },
  author: {
    type: 'string',
    value: 'NAME',
    says: 'for a site: who its feed is by; the first recipe’s writer unless given',
  },
  address: { type: 'string', value: 'ADDRESS', says: 'for a site: where it will stand, for the feed and the site map' },
} as const;

export const card = defineCommand({
  usage: ['FILE [OPTION …]', 'FOLDER --out FOLDER [--title WORDS] [--address ADDRESS]'],
  about: [
    'Makes a card of a recipe: a page that is one file, asks nobody for anything, rescales with the compiler’s own arithmetic, and prints. Metric and US measures stand side by side, the clock beside the sentences, the label below. Also as Markdown, plain text and linked data.',
    'A folder becomes a site: a page for each recipe and variant, an index with search, a print book, and with --address a feed and a site map. Only what has changed is written again; what is not ours in the folder is never touched.',
  ],
  options: OPTIONS,
  examples: [
    { line: 'loaf.quern -o loaf.html', says: 'a page' },
    { line: 'loaf.quern --makes "6 loaves" --format text', says: 'on the screen, for six loaves' },
    { line: 'recipes --out site --address https://quay.example/', says: 'a site with its feed' },
  ],
  async run({ files, options, system }) {
    const [path, ...more] = files;
    if (path === undefined)
      throw new UsageError('no file is named', 'quern card FILE, or quern card FOLDER --out FOLDER');
    if (more.length > 0) throw new UsageError('a card is made of one file, a site of one folder', 'name one');
    if (options.date !== undefined && !isDate(options.date)) {
      throw new UsageError(`--date: “${options.date}” is not a date`, 'write year, month and day: 2041-02-16');
    }
    const theme = options.theme === undefined ? undefined : themeText(options.theme, system);
    const isFolder = statSync(resolve(system.folder, path), { throwIfNoEntry: false })?.isDirectory() === true;
    return isFolder ? siteOf(path, options, theme, system) : cardOf(path, options, theme, system);
  },
});

type CardValues = { readonly [K in keyof typeof OPTIONS]: string | undefined };

const FOR_A_SITE = ['out', 'title', 'author', 'address'] as const;
const FOR_A_CARD = [
  'output',
  'format',
  'recipe',
  'variant',
  ...(Object.keys(SCALE_OPTIONS) as (keyof typeof SCALE_OPTIONS)[]),
] as const;

function refuseOptions(options: CardValues, names: readonly (keyof CardValues)[], why: string): void {
  const given = names.find((name) => options[name] !== undefined);
  if (given !== undefined) throw new UsageError(`--${given} ${why}`, 'leave it out');
}

const marketOf = (options: CardValues): (typeof MARKETS)[number] | undefined =>
  MARKETS.find((one) => one === options.market);
const measuresOf = (options: CardValues): (typeof MEASURES)[number] | undefined =>
  MEASURES.find((one) => one === options.measures);

function siteOf(path: string, options: CardValues, theme: string | undefined, system: System): ExitCode {
  refuseOptions(options, FOR_A_CARD, 'is for a single card, and a folder is named');
  if (options.out === undefined)
    throw new UsageError(`${path} is a folder, and nothing says where its site goes`, `quern card ${path} --out site`);
  const { address } = options;
  if (address !== undefined && !/^https?:\/\/[^\s/]+/.test(address)) {
    throw new UsageError(
      `--address: “${address}” is not the address of a site`,
      'write it whole, such as https://quay.example/recipes/',
    );
  }
  return writeSite(
    {
      from: path,
      to: options.out,
      root: options.root,
      measures: measuresOf(options),
      market: marketOf(options),
      title: options.title,
      author: options.author,
      address,
      theme,
      revision: options.revision,
      date: options.date,
      now: new Date(presentMilliseconds(system)).toISOString().replace(/\.\d+Z$/, 'Z'),
    },
    system,
  );
}

function cardOf(path: string, options: CardValues, theme: string | undefined, system: System): ExitCode {
  refuseOptions(options, FOR_A_SITE, 'is for a site, and a file is named');
  const loaded = loadFile(path, system, options.root);
  const formula = chooseFormula(loaded, options);
  const { factor } = scaleOption(options, formula);
  const market = marketOf(options);
  const { value, diagnostics } = recipeCard(loaded.compiled, formula, {
    factor,
    ...(market ? { market } : {}),
    ...(options.revision === undefined ? {} : { revision: options.revision }),
    ...(options.date === undefined ? {} : { date: options.date }),
  });
  tellErrors(
    loaded,
    system,
    newTo(
      loaded,
      diagnostics.filter(({ severity }) => severity === 'error'),
    ),
  );
  giveOut(render(value, options, theme, loaded, system), options.output, system);
  return [...loaded.compiled.diagnostics, ...diagnostics].some(({ severity }) => severity === 'error') ? 1 : 0;
}

function render(
  value: CardData,
  options: CardValues,
  theme: string | undefined,
  loaded: Loaded,
  system: System,
): string {
  const measures = measuresOf(options);
  const common = measures ? { measures } : {};
  switch (options.format) {
    case 'json':
      return jsonText(value);
    case 'json-ld':
      return jsonDocument(cardJsonLd(value));
    case 'markdown':
      return cardMarkdown(value, common);
    case 'text':
      return cardText(value, { ...common, width: widthOf(system) });
    default:
      return cardHtml(value, {
        ...common,
        ...(theme === undefined ? {} : { theme }),
        photo: (path) => photoOf(path, loaded, system),
      });
  }
}

/** The photograph in the page itself; one at another site stays a link. */
function photoOf(path: string, loaded: Loaded, system: System): string | undefined {
  if (/^https?:/i.test(path)) return path;
  const answer = readPhoto(path, loaded);
  if ('photo' in answer) return photoAddress(answer.photo);
  system.err.write(`quern: ${plain(answer.problem)}\n`);
  return undefined;
}

function themeText(file: string, system: System): string {
  const text = readText(resolve(system.folder, file), file);
  if (/<\/?style|<!--/i.test(text))
    throw new UsageError(`${file} is no style sheet: it holds a style tag or an HTML comment`);
  return text;
}
