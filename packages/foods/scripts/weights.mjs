// Joins the published weights of a food by form and by piece into spreads: lowest, usual (the median) and highest.
import { pieceOf, volumeOf } from './portions.mjs';

const CUP_MILLILITRES = '236.5882365';
const PARTS_OF_CUP = { cup: '1', tbsp: '16', tsp: '48', ml: CUP_MILLILITRES };

// Forms that are another thing than the food as it comes, when a name says no form.
const NOT_AS_IT_COMES = new Set(['sifted', 'melted', 'whipped', 'puréed', 'mashed', 'ground', 'miniature']);

// A spoon of a food published beside a cup of it may be rounded so hard that it is of no use.
const SPOON_RATIO = 1.5;

/** Weights in grams per US cup as fractions: { form, unit, grams, source }. */
function published(food, portions, number, cups, lib) {
  const found = [];
  for (const portion of portions) {
    const volume = volumeOf(portion);
    if (!volume) continue;
    const { grams, amount, perCup } = volume.gramsPerCup;
    const value = lib.multiply(lib.divide(decimal(grams, lib), decimal(amount, lib)), lib.rational(perCup));
    for (const form of volume.forms) found.push({ form, unit: volume.unit, value, source: `usda/${number}` });
  }
  for (const entry of cups.get(food.name) ?? []) found.push(entry);
  for (const own of food.ownVolumes) {
    for (const figure of new Set([own.low, own.high])) {
      const value = lib.multiply(decimal(figure, lib), decimal(PARTS_OF_CUP[own.unit], lib));
      found.push({ form: own.form, unit: own.unit, value, source: 'practice' });
    }
  }
  return found;
}

export const decimal = (text, lib) => lib.exact(String(text).replace(/^\./, '0.').replace(/\.$/, ''));

/** Spoons are kept beside cups only when they agree roughly: a cup is the better measure. */
function trustCups(entries, lib) {
  const cups = entries.filter((entry) => entry.unit === 'cup' || entry.unit === 'fl oz' || entry.source === 'practice');
  if (cups.length === 0) return entries;
  const values = cups.map((entry) => lib.toApproximateNumber(entry.value));
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return entries.filter((entry) => {
    const value = lib.toApproximateNumber(entry.value);
    return cups.includes(entry) || (value * SPOON_RATIO >= low && value <= high * SPOON_RATIO);
  });
}

function spread(entries, lib) {
  const values = entries.map((entry) => entry.value).sort(lib.compare);
  const half = values.length >> 1;
  const usual = values.length % 2 === 1 ? values[half] : lib.middle(values[half - 1], values[half]);
  return { low: values[0], usual, high: values.at(-1), sources: [...new Set(entries.map((entry) => entry.source))] };
}

const figure = (value, lib) => lib.toExactText(value);

function spreadText({ low, usual, high, sources }, lib) {
  const same = lib.equal(low, high);
  const numbers = same ? figure(low, lib) : [low, usual, high].map((value) => figure(value, lib)).join(' ');
  return `${numbers} ${sources.join(',')}`;
}

function groupBy(entries, keyOf) {
  const groups = new Map();
  for (const entry of entries) {
    const key = keyOf(entry);
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return groups;
}

function volumeText(entries, lib) {
  const byForm = new Map([...groupBy(entries, (entry) => entry.form)].map(([form, list]) => [form, trustCups(list, lib)]));
  if (!byForm.has('') && byForm.size > 0) {
    const ordinary = [...byForm].filter(([form]) => !NOT_AS_IT_COMES.has(form)).flatMap(([, list]) => list);
    const all = ordinary.length > 0 ? ordinary : [...byForm.values()].flat();
    byForm.set('', trustCups(all, lib));
  }
  const forms = [...byForm].sort(([a], [b]) => (a < b ? -1 : 1));
  return { text: forms.map(([form, list]) => `${form || '-'} ${spreadText(spread(list, lib), lib)}`).join(';'), forms };
}

function pieces(food, portions, number, lib) {
  const found = [];
  for (const portion of portions) {
    const piece = pieceOf(portion);
    if (!piece) continue;
    const value = lib.divide(decimal(piece.grams, lib), decimal(piece.amount, lib));
    found.push({ piece: piece.piece, size: piece.size, basis: 'edible', value, source: `usda/${number}` });
  }
  for (const own of food.ownPieces) {
    for (const grams of new Set([own.low, own.high])) {
      found.push({ ...own, value: decimal(grams, lib), source: 'practice' });
    }
  }
  return found;
}

const ORDINARY_SIZES = ['small', 'medium', 'large'];

/** A piece whose size is not said lies between the smallest and the largest of the ordinary sizes; its usual size is medium. */
function addUnsized(groups, lib) {
  for (const basis of ['edible', 'as-bought']) {
    const names = new Set([...groups.keys()].filter((key) => key.endsWith(`|${basis}`)).map((key) => key.split('|')[0]));
    for (const piece of names) {
      if (groups.has(`${piece}||${basis}`)) continue;
      const of = (size) => groups.get(`${piece}|${size}|${basis}`) ?? [];
      const sized = ORDINARY_SIZES.flatMap(of);
      if (sized.length === 0) continue;
      const whole = spread(sized, lib);
      const usual = of('medium').length > 0 ? spread(of('medium'), lib).usual : whole.usual;
      groups.set(`${piece}||${basis}`, { ready: { ...whole, usual } });
    }
  }
}

function pieceText(entries, lib) {
  const groups = groupBy(entries, (entry) => `${entry.piece}|${entry.size}|${entry.basis}`);
  addUnsized(groups, lib);
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, list]) => {
      const [piece, size, basis] = key.split('|');
      const values = list.ready ?? spread(list, lib);
      return `${piece || '-'}/${(size || '-').replace(' ', '_')}${basis === 'as-bought' ? '@' : ''} ${spreadText(values, lib)}`;
    })
    .join(';');
}

/** The packed volume and piece weights of a food. */
export function measureWeights(food, portions, number, cups, lib) {
  const volumeEntries = published(food, portions, number, cups, lib);
  const pieceEntries = pieces(food, portions, number, lib);
  const sources = new Set([...volumeEntries, ...pieceEntries].map((entry) => entry.source));
  return { volumes: volumeText(volumeEntries, lib).text, pieces: pieceText(pieceEntries, lib), sources };
}
