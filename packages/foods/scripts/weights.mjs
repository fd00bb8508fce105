// Joins the published weights of a food by form and by piece into spreads: lowest, usual (the median) and highest.
import { pieceOf, volumeOf } from './portions.mjs';

const CUP_MILLILITRES = '236.5882365';
const PARTS_OF_CUP = { cup: '1', tbsp: '16', tsp: '48', ml: CUP_MILLILITRES };

// Forms that are another thing than the food as it comes, when a name says no form.
const NOT_AS_IT_COMES = new Set(['sifted', 'melted', 'whipped', 'puréed', 'mashed', 'ground', 'miniature']);

// Ways of filling a cup. Who writes a cup of flour or of brown sugar may mean any of them.
const FILLINGS = new Set(['loose', 'packed', 'spooned', 'dipped']);

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
    // `as=penne`: the portions of a shared row that speak of this shape are the food as it comes.
    const forms = food.asItComes ? volume.forms.flatMap((form) => (form === food.asItComes ? [''] : [])) : volume.forms;
    for (const form of forms) found.push({ form, unit: volume.unit, value, source: `usda/${number}` });
  }
  for (const entry of cups.get(food.name) ?? []) found.push(entry);
  const ownVolumes = [...food.ownVolumes];
  if (found.length === 0 && ownVolumes.length === 0 && food.volumeIfUnpublished) {
    // A customary density of a liquid is none for the leaves or the powder in the same section.
    const { volumeIfUnpublished: own } = food;
    if (own.unit !== 'ml' || food.roles.includes('liquid')) ownVolumes.push(own);
  }
  for (const own of ownVolumes) {
    for (const figure of new Set([own.low, own.high])) {
      const value = lib.multiply(decimal(figure, lib), decimal(PARTS_OF_CUP[own.unit], lib));
      found.push({ form: own.form, unit: own.unit, value, source: own.source });
    }
  }
  return found;
}

export const decimal = (text, lib) => lib.exact(String(text).replace(/^\./, '0.').replace(/\.$/, ''));

const isCup = (entry) => entry.unit === 'cup' || entry.unit === 'fl oz' || entry.source === 'practice';

/** Spoons are kept beside cups only when they agree roughly: a cup is the better measure. */
function trustCups(entries, lib) {
  const cups = entries.filter(isCup);
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
  const usual = median(values, lib);
  return { low: values[0], usual, high: values.at(-1), sources: [...new Set(entries.map((entry) => entry.source))] };
}

/** Of sorted values. */
function median(values, lib) {
  const half = values.length >> 1;
  return values.length % 2 === 1 ? values[half] : lib.middle(values[half - 1], values[half]);
}

/**
 * What a liquid usually weighs is what it was weighed at: charts round a cup of milk or water to eight ounces, which
 * would take up to 4 % from a litre. Their figures stay in the spread.
 */
function spreadOfLiquid(entries, lib) {
  const all = spread(entries, lib);
  const weighed = entries.filter(({ source, unit }) => /^usda\/\d+$/.test(source) && unit !== 'tsp' && unit !== 'tbsp');
  return weighed.length === 0
    ? all
    : { ...all, usual: median(weighed.map(({ value }) => value).sort(lib.compare), lib) };
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

/** The weights of the food as it comes: what is published so, and the ways of filling the cup that nobody states. */
function asItComes(byForm, isSpice) {
  const filled = [...byForm].filter(([form]) => form === '' || FILLINGS.has(form)).flatMap(([, list]) => list);
  const all = [...byForm.values()].flat();
  if (filled.some(isCup) || (filled.length > 0 && !all.some(isCup))) return filled;
  const ordinary = [...byForm]
    .filter(([form]) => !NOT_AS_IT_COMES.has(form) || (isSpice && form === 'ground'))
    .flatMap(([, list]) => list);
  return ordinary.length > 0 ? ordinary : all;
}

function volumeText(entries, roles, lib) {
  if (entries.length === 0) return '';
  const isSpice = roles.includes('spice');
  const spreadOf = roles.includes('liquid') ? spreadOfLiquid : spread;
  const byForm = groupBy(entries, (entry) => entry.form);
  byForm.set('', asItComes(byForm, isSpice));
  return [...byForm]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([form, list]) => `${form || '-'} ${spreadText(spreadOf(trustCups(list, lib), lib), lib)}`)
    .join(';');
}

function pieces(food, portions, number, lib) {
  const found = [];
  const words = new Set(
    [food.name, ...food.synonyms].flatMap((name) => lib.tidyName(name).split(' ')).map(lib.singular),
  );
  for (const portion of portions) {
    const piece = pieceOf(portion, words);
    if (!piece) continue;
    const value = lib.divide(decimal(piece.grams, lib), decimal(piece.amount, lib));
    found.push({ piece: piece.piece, size: piece.size, basis: 'edible', value, source: `usda/${number}` });
  }
  for (const own of food.ownPieces) {
    for (const grams of new Set([own.low, own.high])) {
      found.push({ ...own, value: decimal(grams, lib) });
    }
  }
  return found;
}

const ORDINARY_SIZES = ['small', 'medium', 'large'];

/**
 * A piece whose size is not said lies between the smallest and the largest of the ordinary sizes and of what is published
 * without a size. Its usual weight is that published without a size, else that of the usual size: medium, if no other.
 */
function addUnsized(groups, usualSize, lib) {
  const pieces = new Set([...groups.keys()].map((key) => key.replace(/\|.*\|/, '|')));
  for (const [piece, basis] of [...pieces].map((key) => key.split('|'))) {
    const of = (size) => groups.get(`${piece}|${size}|${basis}`) ?? [];
    const all = ['', ...ORDINARY_SIZES].flatMap(of);
    if (all.length === 0) continue;
    const whole = spread(all, lib);
    const preferred = [of(usualSize ?? ''), of('medium')].find((list) => list.length > 0);
    groups.set(`${piece}||${basis}`, {
      ready: { ...whole, usual: preferred ? spread(preferred, lib).usual : whole.usual },
    });
  }
}

/** What a bare count of a food counts, when no weight of the thing itself is published. */
const COUNTED_AS = ['head', 'bulb', 'fillet', 'rasher'];

function addItself(groups) {
  if ([...groups.keys()].some((key) => key.startsWith('|'))) return;
  const part = COUNTED_AS.find((name) => groups.has(`${name}||edible`));
  if (!part) return;
  for (const [key, list] of [...groups]) {
    if (key.startsWith(`${part}|`)) groups.set(key.slice(part.length), list);
  }
}

function pieceText(entries, usualSize, lib) {
  const groups = groupBy(entries, (entry) => `${entry.piece}|${entry.size}|${entry.basis}`);
  addUnsized(groups, usualSize, lib);
  addItself(groups);
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
  return {
    volumes: volumeText(volumeEntries, food.roles, lib),
    pieces: pieceText(pieceEntries, food.usualSize, lib),
    sources,
  };
}
