// Makes src/generated/food-table.ts from the hand-made catalogue and the published tables.
//
//   node packages/foods/scripts/build-data.mjs FOLDER_OF_TABLES
//
// FOLDER_OF_TABLES holds data/usda-*.tsv, data/fndds-foods.tsv and reference/cup-weights.tsv. The result is committed,
// so that nobody needs those tables to build or to test.
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { readCatalogue } from './catalogue.mjs';
import { readCupWeights } from './cup-weights.mjs';
import { NUTRIENTS, readUsda } from './usda.mjs';
import { measureWeights } from './weights.mjs';
import { checkAllergens } from './source-factors.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..');

/** Our own TypeScript, so that the generator folds names and reckons fractions exactly as the library does. */
async function library() {
  const source = `export { singular } from '@quern/text'; export * from './names.ts'; export * from '../../quantity/src/rational.ts';`;
  const result = await build({
    stdin: { contents: source, resolveDir: join(root, 'src'), loader: 'ts' },
    conditions: ['@quern/source'],
    bundle: true,
    format: 'esm',
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(result.outputFiles[0].contents).toString('base64')}`);
}

function nutrition(food, usda) {
  const reference = /^(~?)(f:)?(\d+)$/.exec(food.reference);
  if (!reference) {
    if (food.reference !== '-') throw new Error(`${food.where}: cannot read the reference “${food.reference}”`);
    return { values: {}, sources: [], row: undefined };
  }
  const [, standIn, survey, number] = reference;
  const row = survey ? usda.survey.get(number) : usda.foods.get(number);
  if (!row) throw new Error(`${food.where}: there is no row ${number}`);
  const id = (survey ? `survey/${number}` : `usda/${number}`) + (standIn ? '/stand-in' : '');
  return { values: usda.nutrientsOf(row), sources: [id], row, number, survey: Boolean(survey) };
}

function nutrientCells(food, values) {
  const own = Object.keys(food.ownNutrients).length > 0;
  const cells = NUTRIENTS.map(([nutrient]) => {
    if (food.without.includes(nutrient)) return '-';
    return food.ownNutrients[nutrient] ?? values[nutrient] ?? '-';
  });
  return { text: cells.every((cell) => cell === '-') ? '' : cells.join(' ').replace(/(?: -)+$/, ''), own };
}

function ediblePercent(food, base) {
  if (food.ownEdible) return food.ownEdible;
  const refuse = base.row?.refuse_percent;
  return refuse === undefined || refuse === '' ? '' : String(100 - Number(refuse));
}

const allergenText = ({ known, complete }) => (complete ? '' : '?') + known.join(',');

/** `vegan` says `vegetarian` too; every flag and class must be a known word, which the tests of the library check. */
const flagText = (flags) =>
  [...new Set(flags.flatMap((flag) => (flag === 'vegan' ? ['vegan', 'vegetarian'] : [flag])))].join(',');

function describeRow(base) {
  if (base.survey) return base.row.description;
  return base.row.description.replace(/ \((?:includes|Includes) (?:foods for )?USDA.*\)$/, '');
}

function foodLine(food, context) {
  const { usda, lib, cups, described } = context;
  const base = nutrition(food, usda);
  if (base.row) described.set(`${base.survey ? 'survey' : 'usda'}/${base.number}`, describeRow(base));
  const portionsNumber = food.portionsFrom === undefined ? (base.survey ? undefined : base.number) : food.portionsFrom;
  const weights = measureWeights(
    food,
    portionsNumber ? (usda.portions.get(portionsNumber) ?? []) : [],
    portionsNumber,
    cups,
    lib,
  );
  if (portionsNumber && weights.sources.has(`usda/${portionsNumber}`) && !described.has(`usda/${portionsNumber}`)) {
    described.set(`usda/${portionsNumber}`, usda.foods.get(portionsNumber).description);
  }
  const nutrients = nutrientCells(food, base.values);
  const sources = [...base.sources, ...(nutrients.own ? ['memory'] : [])];
  return [
    'F',
    food.name,
    food.synonyms.join(';'),
    food.roles.join(','),
    food.classes.join(','),
    allergenText(food.allergens),
    flagText(food.flags),
    ediblePercent(food, base),
    nutrients.text,
    weights.volumes,
    weights.pieces,
    sources.join(','),
  ].join('\t');
}

function checkNames(foods, ambiguous, lib) {
  const preferred = new Map();
  const ids = new Map();
  const problems = [];
  for (const food of foods) {
    const key = lib.nameKey(food.name);
    if (preferred.has(key)) problems.push(`${food.where}: “${food.name}” is also at ${preferred.get(key)}`);
    preferred.set(key, food.where);
    const id = lib.kebab(food.name);
    if (ids.has(id)) problems.push(`${food.where}: the identifier ${id} is also at ${ids.get(id)}`);
    ids.set(id, food.where);
  }
  const reserved = new Set(ambiguous.map((entry) => lib.nameKey(entry.name)));
  const claimed = new Map();
  for (const food of foods) {
    if (reserved.has(lib.nameKey(food.name))) problems.push(`${food.where}: “${food.name}” is also an ambiguous name`);
    const own = new Set([lib.nameKey(food.name)]);
    for (const synonym of food.synonyms) {
      const key = lib.nameKey(synonym.replace(/=.*/, ''));
      if (own.has(key)) continue;
      own.add(key);
      const other = preferred.get(key) ?? claimed.get(key) ?? (reserved.has(key) ? 'the ambiguous names' : undefined);
      if (other) problems.push(`${food.where}: the synonym “${synonym}” is also at ${other}`);
      claimed.set(key, food.where);
    }
  }
  for (const entry of ambiguous) {
    for (const candidate of entry.candidates) {
      if (!ids.has(lib.kebab(candidate))) problems.push(`${entry.where}: no food “${candidate}”`);
    }
  }
  if (problems.length > 0) throw new Error(`the catalogue has ${problems.length} problems:\n${problems.join('\n')}`);
}

/** Synonyms that fold to the same key as the name, or as an earlier synonym, say nothing new. */
function dropEchoes(foods, lib) {
  for (const food of foods) {
    const seen = new Set([lib.nameKey(food.name)]);
    food.synonyms = food.synonyms.filter((synonym) => {
      const key = lib.nameKey(synonym.replace(/=.*/, ''));
      if (seen.has(key) && !synonym.includes('=')) return false;
      seen.add(key);
      return true;
    });
  }
}

const [tables] = process.argv.slice(2);
if (!tables) {
  console.error('usage: node packages/foods/scripts/build-data.mjs FOLDER_OF_TABLES');
  process.exit(2);
}
const lib = await library();
const { foods, ambiguous } = readCatalogue(join(root, 'data', 'catalogue'));
dropEchoes(foods, lib);
checkNames(foods, ambiguous, lib);
const usda = readUsda(join(tables, 'data'));
const cups = readCupWeights(
  join(root, 'data', 'cup-weights-map.txt'),
  join(tables, 'reference', 'cup-weights.tsv'),
  foods,
  lib,
);
const described = new Map();
const context = { usda, lib, cups, described };
const foodLines = foods.map((food) => foodLine(food, context));
const doubts = checkAllergens(foods, usda.sourceFactors);
if (doubts.length > 0) throw new Error(`the source factors contradict the catalogue:\n${doubts.join('\n')}`);

const lines = [
  'quern food table 1',
  `N\t${NUTRIENTS.map(([nutrient]) => nutrient).join(' ')}`,
  ...readFileSync(join(root, 'data', 'sources.txt'), 'utf8')
    .split('\n')
    .filter((line) => line && !line.startsWith('#'))
    .map((line) => `S\t${line.replace(' | ', '\t')}`),
  ...[...described].sort(([a], [b]) => (a < b ? -1 : 1)).map(([id, text]) => `D\t${id}\t${text}`),
  ...ambiguous.map((entry) => `A\t${entry.name}\t${entry.candidates.map(lib.kebab).join(',')}`),
  ...foodLines,
];
const text = lines.join('\n') + '\n';
if (/[`\\]|\$\{/.test(text)) throw new Error('the table holds a mark that a template literal cannot');
writeFileSync(
  join(root, 'src', 'generated', 'food-table.ts'),
  `// Made by packages/foods/scripts/build-data.mjs from the catalogue in packages/foods/data. Do not edit: see docs/foods.md.\n\nexport const FOOD_TABLE = \`${text}\`;\n`,
);
console.log(`${foods.length} foods, ${ambiguous.length} ambiguous names, ${text.length} characters`);
