// Reads the tables of the United States Department of Agriculture (public domain) that the generator is given.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

// A double quote in these tables is an inch mark, so nothing is unquoted.
const readTable = (path) => {
  const [head = '', ...lines] = readFileSync(path, 'utf8').split('\n');
  const columns = head.split('\t');
  return lines.filter(Boolean).map((line) => {
    const cells = line.split('\t');
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? '']));
  });
};

/** Our nutrients in the order of the packed table, with the columns that hold them. */
export const NUTRIENTS = [
  ['energyKcal', 'energy_kcal'],
  ['protein', 'protein_g'],
  ['fat', 'fat_g'],
  ['saturates', 'saturated_g'],
  ['trans', 'trans_g'],
  ['monounsaturates', 'monounsaturated_g', 'mono_g'],
  ['polyunsaturates', 'polyunsaturated_g', 'poly_g'],
  ['carbohydrateByDifference', 'carbohydrate_by_difference_g', 'carbohydrate_g'],
  ['sugars', 'sugars_g'],
  ['starch', 'starch_g'],
  ['fibre', 'fibre_g'],
  ['alcohol', 'alcohol_g'],
  ['cholesterol', 'cholesterol_mg'],
  ['sodium', 'sodium_mg'],
  ['potassium', 'potassium_mg'],
  ['calcium', 'calcium_mg'],
  ['iron', 'iron_mg'],
  ['vitaminD', 'vitamin_d_ug'],
  ['water', 'water_g'],
  ['ash', 'ash_g'],
];

const nutrientsOf = (row) => {
  const found = {};
  for (const [nutrient, ...columns] of NUTRIENTS) {
    const cell = columns.map((column) => row[column]).find((value) => value !== undefined && value !== '');
    if (cell !== undefined) found[nutrient] = String(cell).replace(/^\./, '0.');
  }
  return found;
};

/** Foods by number, with the cells that the revision of May 2016 changed already put right. */
export function readUsda(folder) {
  const foods = new Map(readTable(join(folder, 'usda-sr28-foods.tsv')).map((row) => [row.ndb_no, row]));
  for (const change of readTable(join(folder, 'usda-sr28-may2016-changes.tsv'))) {
    const row = foods.get(change.id);
    if (row && change.column in row) row[change.column] = change.may_2016;
  }
  const portions = group(readTable(join(folder, 'usda-sr28-portions.tsv')), (row) => row.ndb_no);
  const survey = new Map(readTable(join(folder, 'fndds-foods.tsv')).map((row) => [row.food_code, row]));
  const sourceFactors = group(readTable(join(folder, 'usda-langual.tsv')), (row) => row.id);
  return { foods, portions, survey, sourceFactors, nutrientsOf };
}

function group(rows, keyOf) {
  const groups = new Map();
  for (const row of rows) {
    const key = keyOf(row);
    const rowsOfKey = groups.get(key);
    if (rowsOfKey) rowsOfKey.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}
