// Reads the hand-made catalogue in data/catalogue. Its layout is explained in docs/foods.md.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const list = (text) =>
  text
    .split(',')
    .map((part) => part.trim())
    .filter(Boolean);

/** `(ripe )pear` and `{red,green} pear` stand for several spellings. */
export function spellings(text) {
  const optional = /^(.*?)\(([^()]*)\)(.*)$/.exec(text);
  if (optional) return [...spellings(optional[1] + optional[3]), ...spellings(optional[1] + optional[2] + optional[3])];
  const choice = /^(.*?)\{([^{}]*)\}(.*)$/.exec(text);
  if (choice) return choice[2].split(',').flatMap((word) => spellings(choice[1] + word + choice[3]));
  return [text.replace(/\s+/g, ' ').trim()];
}

/** `95` or `95-120` as decimal texts, with a source in square brackets when there is one: `53-63 [egg-grades]`. */
function figures(text, where) {
  const found = /^(\d+(?:\.\d+)?)(?:-(\d+(?:\.\d+)?))?(?: \[([\w-]+)\])?$/.exec(text.trim());
  if (!found) throw new Error(`${where}: “${text}” is not a figure or a range`);
  return { low: found[1], high: found[2] ?? found[1], source: found[3] ?? 'practice' };
}

/** A set written as `=` (replace), `+=` (add) or `-=` (take away). */
function changeList(before, sign, text) {
  if (sign === '=') return list(text);
  if (sign === '+=') return [...new Set([...before, ...list(text)])];
  return before.filter((entry) => !list(text).includes(entry));
}

/** `a=`: classes; a question mark says that the rest is unknown. */
function allergens(text) {
  return { known: list(text.replace(/\?/g, '')), complete: !text.includes('?') };
}

const VOLUMES = new Set(['cup', 'tbsp', 'tsp', 'ml']);

/** ` 95-120` or `chopped 95-120`. */
function ownVolume(unit, value, where) {
  const found = /^(\S*)\s+(\S.*)$/.exec(value);
  if (!found) throw new Error(`${where}: cannot read ${unit}=${value}`);
  return { unit, form: found[1], ...figures(found[2], where) };
}

function applyChange(food, key, sign, value, where) {
  if (key === 'r') food.roles = changeList(food.roles, sign, value);
  else if (key === 'c') food.classes = changeList(food.classes, sign, value);
  else if (key === 'f') food.flags = changeList(food.flags, sign, value);
  else if (key === 'a') food.allergens = allergens(value);
  else if (key === 'no') food.without = list(value);
  else if (key === 'cups') food.portionsFrom = value.trim() === '' || value === 'none' ? null : value.trim();
  else if (key === 'n') {
    food.ownNutrients = Object.fromEntries(list(value).map((entry) => entry.split(/\s+/)));
  } else if (VOLUMES.has(key)) {
    food.ownVolumes.push(ownVolume(key, value, where));
  } else if (key === 'piece') {
    const found = /^([^\s/@]*)(?:\/(\S+?))?(@bought)?\s+(\S.*)$/.exec(value);
    if (!found) throw new Error(`${where}: cannot read piece=${value}`);
    food.ownPieces.push({
      piece: found[1],
      size: found[2] ?? '',
      basis: found[3] ? 'as-bought' : 'edible',
      ...figures(found[4], where),
    });
  } else if (key === 'edible') food.ownEdible = value.trim();
  else if (key === 'else') food.ifUnpublished = value.trim();
  else if (key === 'usual') food.usualSize = value.trim();
  else if (key === 'as') food.asItComes = value.trim();
  else throw new Error(`${where}: unknown field ${key}`);
}

const noDefaults = () => ({ roles: [], classes: [], flags: [], allergens: { known: [], complete: true } });

function readSection(line, where) {
  const section = noDefaults();
  for (const part of line
    .slice(1)
    .split(';')
    .map((text) => text.trim())
    .filter(Boolean)) {
    const [key, value] = part.split('=');
    applyChange(section, key.trim(), '=', value ?? '', where);
  }
  return section;
}

function readFood(line, section, where) {
  const [name = '', synonyms = '', rest = ''] = line.split('|');
  const [reference = '-', ...changes] = rest.split(';');
  const food = {
    where,
    name: name.trim(),
    synonyms: synonyms
      .split(';')
      .map((text) => text.trim())
      .filter(Boolean)
      .flatMap(spellings),
    reference: reference.trim(),
    portionsFrom: undefined,
    without: [],
    ownNutrients: {},
    ownVolumes: [],
    ownPieces: [],
    ...structuredClone(section),
  };
  for (const change of changes.filter((text) => text.trim() !== '')) {
    const found = /^\s*([a-z]+)(\+=|-=|=)(.*)$/.exec(change);
    if (!found) throw new Error(`${where}: cannot read “${change.trim()}”`);
    applyChange(food, found[1], found[2], found[3].trimEnd(), where);
  }
  const otherwise = /^(cup|tbsp|tsp|ml)(?: (\w+))? (\S+)$/.exec(food.ifUnpublished ?? '');
  food.volumeIfUnpublished = otherwise
    ? ownVolume(otherwise[1], `${otherwise[2] ?? ''} ${otherwise[3]}`, where)
    : undefined;
  return food;
}

/** Every food and every ambiguous name, in the order of the files. */
export function readCatalogue(folder) {
  const foods = [];
  const ambiguous = [];
  for (const file of readdirSync(folder)
    .filter((name) => name.endsWith('.txt'))
    .sort()) {
    let section = noDefaults();
    readFileSync(join(folder, file), 'utf8')
      .split('\n')
      .forEach((line, index) => {
        const where = `${file}:${index + 1}`;
        if (line.trim() === '' || line.startsWith('#')) return;
        if (line.startsWith('@')) section = readSection(line, where);
        else if (line.startsWith('?')) {
          const [names, candidates] = line.slice(1).split('|');
          for (const name of spellings(names))
            ambiguous.push({ where, name, candidates: candidates.split(';').map((text) => text.trim()) });
        } else foods.push(readFood(line, section, where));
      });
  }
  return { foods, ambiguous };
}
