// Reads the table of published cup weights and gives each row to the food and form that the map names.
import { readFileSync } from 'node:fs';

const OUNCE = '28.349523125';
const CUP_MILLILITRES = '236.5882365';
const METRIC_CUP_MILLILITRES = '250';

const readMap = (path) =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line.trim() && !line.startsWith('#'))
    .map((line) => {
      const [key = '', food = '', form = ''] = line.split('|').map((part) => part.trim());
      return { key, food, form: form === '-' ? '' : form };
    });

const matches = (pattern, key) => (pattern.endsWith('*') ? key.startsWith(pattern.slice(0, -1)) : pattern === key);

/** `2 1/4`, `1/2` or `3`. */
function mixed(text, lib) {
  return text
    .split(' ')
    .map((part) => lib.parseRational(part))
    .reduce((sum, part) => lib.add(sum, part), lib.ZERO);
}

const PER_CUP = { cup: 1, tbsp: 16, tsp: 48 };

/** The weight of one US cup that a row stands for. */
function perCup(row, lib) {
  const given = /^g\/(cup|tbsp|tsp)$/.exec(row.unit);
  if (given) return { unit: given[1], value: lib.multiply(lib.exact(row.tolerance), lib.rational(PER_CUP[given[1]])) };
  const measure = /@([\d/ ]+?) (metric cup|cups?|tbsp|tsp)\b/.exec(row.key);
  if (!measure) throw new Error(`cup weights: cannot read the measure of ${row.key}`);
  const grams = row.unit.startsWith('[oz_av]')
    ? lib.multiply(lib.exact(row.value), lib.exact(OUNCE))
    : lib.exact(row.value);
  const each = lib.divide(grams, mixed(measure[1], lib));
  if (measure[2] === 'metric cup') {
    return {
      unit: 'cup',
      value: lib.divide(lib.multiply(each, lib.exact(CUP_MILLILITRES)), lib.exact(METRIC_CUP_MILLILITRES)),
    };
  }
  const unit = measure[2].replace(/s$/, '');
  return { unit, value: lib.multiply(each, lib.rational(PER_CUP[unit])) };
}

/** By the name of the food: { form, unit, value, source }. */
export function readCupWeights(mapPath, tablePath, foods, lib) {
  const [, ...lines] = readFileSync(tablePath, 'utf8').split('\n').filter(Boolean);
  const rows = lines.map((line) => {
    const [key = '', value = '', unit = '', tolerance = ''] = line.split('\t');
    return { key, value, unit, tolerance };
  });
  const names = new Set(foods.map((food) => food.name));
  const weights = new Map();
  for (const entry of readMap(mapPath)) {
    if (!names.has(entry.food)) throw new Error(`cup-weights-map.txt: no food “${entry.food}”`);
    const found = rows.filter((row) => matches(entry.key, row.key));
    if (found.length === 0) throw new Error(`cup-weights-map.txt: no row “${entry.key}”`);
    for (const row of found) {
      const { unit, value } = perCup(row, lib);
      const source = row.key.slice(0, row.key.indexOf('.'));
      weights.set(entry.food, [...(weights.get(entry.food) ?? []), { form: entry.form, unit, value, source }]);
    }
  }
  return weights;
}
