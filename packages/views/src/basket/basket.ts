import {
  addIntervals,
  exact,
  mapInterval,
  multiply,
  PLAIN,
  printCount,
  printInterval,
  printRange,
  compare,
  ONE,
  withUnit,
  isSingle,
  type CupSystem,
  type Interval,
  type NumberStyle,
  type Rational,
} from '@quern/quantity';
import { normaliseName, type Formula, type LedgerFood } from '@quern/compiler';
import { exactRange, exactText } from '../common/exact-range.js';
import { amountOf, countedOf, foodOf, isDose } from '../common/item-amount.js';
import type { ExactRange, ScalableAmount } from '../common/scalable-amount.js';
import { shortWeight } from '../common/short-weight.js';
import { ouncesRange, scoopedRange } from '../common/us-measure.js';
import type {
  BasketAmount,
  BasketData,
  BasketItem,
  BasketPackages,
  BasketShelf,
  BasketWeight,
  ShelfId,
} from './basket-data.js';
import { needsOf, type Need } from './needs.js';
import { packagesFor, sizeFor, type PackageSize } from './package-size.js';
import { shelfName, shelfOf, shelfOrder } from './shelves.js';

export interface BasketRequest {
  readonly formula: Formula;
  readonly factor: Rational;
}

export interface BasketOptions {
  /** Both unless given. */
  readonly measures?: BasketData['measures'];
  /** Cups and spoons of the second measure; US customary unless given. */
  readonly cups?: CupSystem;
  readonly packages?: readonly PackageSize[];
  readonly style?: NumberStyle;
}

interface Setting {
  readonly measures: BasketData['measures'];
  readonly cups: CupSystem;
  readonly packages: readonly PackageSize[];
  readonly style: NumberStyle;
}

/** So much of a food told in one way, added up exactly. `key` says what may be added to what. */
interface Sum {
  readonly key: string;
  readonly kind: BasketAmount['kind'];
  about: boolean;
  grams: Interval | undefined;
  millilitres: Interval | undefined;
  count: Interval | undefined;
  /** 'about ' before a count that is meant loosely. */
  readonly ahead: string;
  readonly one: string;
  readonly many: string;
}

interface Entry {
  readonly name: string;
  readonly food: LedgerFood | undefined;
  readonly sums: Map<string, Sum>;
  readonly ifUsed: Map<string, Sum>;
  readonly instead: Set<string>;
  readonly recipes: Set<string>;
}

/**
 * The shopping list of several recipes: what all their lines put in, added up food by food. Packs stay packs; products
 * and cultures are not bought; what is optional and what may stand in for something is told apart.
 */
export function basket(requests: readonly BasketRequest[], options: BasketOptions = {}): BasketData {
  const setting: Setting = {
    measures: options.measures ?? 'both',
    cups: options.cups ?? 'us',
    packages: options.packages ?? [],
    style: options.style ?? PLAIN,
  };
  const bought = new Map<string, Entry>();
  const owned = new Map<string, Entry>();
  for (const need of requests.flatMap(({ formula, factor }) => needsOf(formula, factor))) {
    const { source } = need.item;
    if (source.kind === 'culture') put(owned, `culture:${source.culture}`, need, setting);
    else put(bought, keyOf(need), need, setting);
  }
  return {
    format: 'quern-basket',
    version: 1,
    measures: setting.measures,
    cups: setting.cups,
    recipes: requests.map(({ formula, factor }) => ({
      title: formula.title,
      ...(formula.variant ? { variant: formula.variant } : {}),
      factor: exactText(factor),
    })),
    shelves: shelvesOf(bought, setting),
    owned: [...owned.values()].map(({ name, sums, recipes }) => ({
      name,
      weight: weightOf([...sums.values()][0]?.grams, setting),
      recipes: [...recipes],
    })),
    warnings: warningsOf(requests, bought, setting),
  };
}

function keyOf({ item }: Need): string {
  const food = foodOf(item);
  if (food) return food.key;
  return `${item.source.kind}:${normaliseName(item.content.name.text)}`;
}

function put(entries: Map<string, Entry>, key: string, need: Need, setting: Setting): void {
  const { item, factor, formula, title } = need;
  let entry = entries.get(key);
  if (!entry) {
    const name = item.content.any ? `any ${item.content.name.text}` : item.content.name.text;
    entry = { name, food: foodOf(item), sums: new Map(), ifUsed: new Map(), instead: new Set(), recipes: new Set() };
    entries.set(key, entry);
  }
  entry.recipes.add(title);
  addTo(item.optional ? entry.ifUsed : entry.sums, sumOf(need, amountOf(item, formula), factor));
  for (const alternative of item.alternatives) {
    const sum = sumOf({ ...need, item: alternative }, amountOf(alternative, formula), factor);
    entry.instead.add(`${amountText(sum, setting)} ${alternative.content.name.text}`);
  }
}

function sumOf({ item }: Need, amount: ScalableAmount | undefined, factor: Rational): Sum {
  const scaled = (range: ExactRange | undefined): Interval | undefined =>
    range && mapInterval({ low: exact(range.low), high: exact(range.high) }, (value) => multiply(value, factor));
  const written = item.content.amount;
  // That a count is meant loosely is said before it, that its weight is, before the weight.
  const about =
    item.content.equals.some((side) => side.amount.about) || (countedOf(written) === undefined && written.about);
  const loosely = written.about ? 'about ' : '';
  const grams = amount?.kind === 'weight' ? scaled(amount.grams) : undefined;
  const millilitres = amount && amount.kind !== 'count' ? scaled(amount.millilitres) : undefined;
  const counted = countedOf(written);
  if (counted) {
    const kind = written.kind === 'pack' ? 'pack' : 'count';
    return {
      key: `${kind}:${loosely}${counted.one}`,
      kind,
      about,
      grams,
      millilitres,
      count: scaled(counted.count),
      ahead: loosely,
      one: counted.one,
      many: counted.many,
    };
  }
  if (written.kind === 'open')
    return {
      key: `open:${written.word}`,
      kind: 'open',
      about,
      grams,
      millilitres,
      count: undefined,
      ahead: '',
      one: written.word,
      many: written.word,
    };
  return {
    key: grams ? 'weight' : 'volume',
    kind: 'weight',
    about,
    grams,
    millilitres,
    count: undefined,
    ahead: '',
    one: '',
    many: '',
  };
}

function addTo(sums: Map<string, Sum>, more: Sum): void {
  const known = sums.get(more.key);
  if (!known) {
    sums.set(more.key, { ...more });
    return;
  }
  const both = (a: Interval | undefined, b: Interval | undefined): Interval | undefined =>
    a && b ? addIntervals(a, b) : undefined;
  known.grams = both(known.grams, more.grams);
  known.millilitres = both(known.millilitres, more.millilitres);
  known.count = both(known.count, more.count);
  known.about ||= more.about;
}

// ---------------------------------------------------------------- telling

function shelvesOf(entries: ReadonlyMap<string, Entry>, setting: Setting): readonly BasketShelf[] {
  const shelves = new Map<ShelfId, BasketItem[]>();
  for (const entry of entries.values()) {
    const id = shelfOf(entry.food);
    shelves.set(id, [...(shelves.get(id) ?? []), itemOf(entry, setting)]);
  }
  return [...shelves]
    .sort(([a], [b]) => shelfOrder(a, b))
    .map(([id, items]) => ({
      id,
      name: shelfName(id),
      items: items.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0)),
    }));
}

function itemOf(entry: Entry, setting: Setting): BasketItem {
  const packages = packagesOf(entry, setting);
  const amounts = (sums: ReadonlyMap<string, Sum>): readonly BasketAmount[] =>
    [...sums.values()].map((sum) => tellSum(sum, entry, setting));
  return {
    name: entry.name,
    ...(entry.food?.food ? { food: entry.food.food.id } : {}),
    amounts: amounts(entry.sums),
    ifUsed: amounts(entry.ifUsed),
    instead: [...entry.instead],
    ...(packages ? { packages } : {}),
    recipes: [...entry.recipes],
  };
}

function tellSum(sum: Sum, entry: Entry, setting: Setting): BasketAmount {
  const dose = entry.food !== undefined && isDose(entry.food);
  const us = setting.measures === 'metric' || sum.kind !== 'weight' ? undefined : usText(sum, setting);
  return {
    kind: sum.kind,
    text: amountText(sum, setting, dose),
    about: sum.about,
    weight: weightOf(sum.grams, setting, dose),
    ...(us ? { us } : {}),
  };
}

function amountText(sum: Sum, setting: Setting, dose = false): string {
  const { style, cups } = setting;
  if (sum.kind === 'open') return sum.one;
  if (sum.count) {
    const number = printInterval(sum.count, printCount, style);
    const word = compare(sum.count.high, ONE) <= 0 ? sum.one : sum.many;
    return sum.ahead + (word === '' ? number : withUnit(number, word, style));
  }
  if (sum.grams) return weightOf(sum.grams, setting, dose)?.text ?? '';
  return sum.millilitres ? scoopedRange(sum.millilitres, { cups, style }).text : 'an amount that is not known';
}

function usText({ millilitres, grams }: Sum, { cups, style }: Setting): string | undefined {
  if (millilitres) return scoopedRange(millilitres, { cups, style }).text;
  return grams && ouncesRange(grams, style)?.text;
}

function weightOf(grams: Interval | undefined, { style }: Setting, dose = false): BasketWeight | null {
  if (!grams) return null;
  const show = (value: Rational): string => shortWeight(value, { style, dose: dose ? 'small' : 'ordinary' });
  const text = isSingle(grams) ? show(grams.low) : printRange(show(grams.low), show(grams.high), style);
  return { grams: exactRange(grams), text };
}

function packagesOf(entry: Entry, setting: Setting): BasketPackages | undefined {
  const size = sizeFor(setting.packages, entry.name, entry.food);
  if (!size) return undefined;
  let needed: Interval | undefined;
  for (const sum of entry.sums.values()) {
    if (sum.kind === 'pack') continue;
    const amount = size.unit === 'g' ? sum.grams : sum.millilitres;
    if (!amount) return undefined;
    needed = needed ? addIntervals(needed, amount) : amount;
  }
  if (!needed) return undefined;
  const { count, left } = packagesFor(needed, size);
  const text = shortWeight(left, { measure: size.unit === 'g' ? 'mass' : 'volume', style: setting.style });
  return {
    count: exactText(count),
    text: `${printCount(count, setting.style)} ${compare(count, ONE) === 0 ? 'package' : 'packages'} of ${size.text}`,
    left: { amount: exactText(left), text },
  };
}

function warningsOf(
  requests: readonly BasketRequest[],
  entries: ReadonlyMap<string, Entry>,
  setting: Setting,
): readonly string[] {
  const warnings = requests
    .filter(({ formula }) => formula.broken)
    .map(({ formula }) => `A line of “${formula.title}” cannot be read: what it puts in is not on this list.`);
  for (const entry of entries.values()) {
    if (entry.food?.from === 'unknown')
      warnings.push(`“${entry.name}” is not in the food table: it is listed as it is written.`);
  }
  const used = new Set(
    [...entries.values()].flatMap((entry) => sizeFor(setting.packages, entry.name, entry.food)?.name ?? []),
  );
  for (const { name } of setting.packages)
    if (!used.has(name)) warnings.push(`None of these recipes asks for ${name}, for which a package size is given.`);
  return warnings;
}
