import type { Food } from '@quern/compiler';
import {
  compare,
  divide,
  less,
  multiply,
  rational,
  sign,
  subtract,
  sum,
  ZERO,
  HUNDRED,
  type Rational,
} from '@quern/quantity';
import { allergenTables, classesOfFood, classesOn, surelyHolds } from './allergen-tables.js';
import type { Market } from './nutrient-list.js';
import { printBy, type RoundingRule } from './rounding.js';
import { emphasise, type Segment } from './emphasis.js';

/** What goes into the statement: a food, or a compound with its parts, by what went in and stayed. */
export interface StatementEntry {
  readonly name: string;
  readonly food?: Food;
  /** Grams at the mixing bowl; undefined when the weight is not known. */
  readonly grams: Rational | undefined;
  /** For a compound: its own ingredients. Their grams are those in this dish. */
  readonly parts?: readonly StatementEntry[];
}

export interface StatementInput {
  readonly entries: readonly StatementEntry[];
  /** Put in and taken out again whole: named apart, as allergens may stay behind. */
  readonly takenOut: readonly StatementEntry[];
  /** Finished weight in grams; undefined when not known. */
  readonly finished: Rational | undefined;
  /** Whether water or alcohol left by heat. */
  readonly moistureLost: boolean;
  /** Names and words that the title or a picture stresses. */
  readonly stressed: readonly string[];
}

export interface StatementItem {
  readonly name: string;
  /** The words to print; emphasised stretches are in capitals already, and are to be set apart by more than colour. */
  readonly segments: readonly Segment[];
  /** Quantity of a stressed ingredient: '25 %' or '104 g per 100 g'. */
  readonly quantity?: string;
  readonly grams: Rational | undefined;
  readonly inTable: boolean;
  readonly parts: readonly StatementItem[];
}

export interface Statement {
  readonly market: Market;
  /** Descending by weight. */
  readonly items: readonly StatementItem[];
  /** Weight not known, so their place in the order is not either. */
  readonly unweighed: readonly StatementItem[];
  readonly takenOut: readonly StatementItem[];
  readonly notes: readonly string[];
}

interface WaterRule {
  /** How added water is weighed: what is left of it in the finished food, or as it went in. */
  readonly weighed: 'finished' | 'ingoing';
  /** Left out up to this share of the finished food, or only below it. */
  readonly omit?: { readonly share: Rational; readonly including: boolean };
  readonly note: string;
}

const FIVE_PER_CENT = rational(5, 100);

const finishedWater: WaterRule = {
  weighed: 'finished',
  omit: { share: FIVE_PER_CENT, including: true },
  note: 'Added water is the finished weight less the weight of the other ingredients; up to 5 % of the finished weight it may be left out (Regulation (EU) No 1169/2011, Annex VII, Part A). The leave is not for meat, fish and bivalves.',
};
const ingoingWater: WaterRule = { weighed: 'ingoing', note: 'Added water stands by the weight that went in.' };

const waterRules: Readonly<Record<Market, WaterRule>> = {
  eu: finishedWater,
  uk: finishedWater,
  us: ingoingWater,
  ca: ingoingWater,
  au: {
    weighed: 'finished',
    omit: { share: FIVE_PER_CENT, including: false },
    note: 'Added water stands by its weight less what left; below 5 % of the finished weight it may be left out (Food Standards Code, Standard 1.2.4).',
  },
  jp: ingoingWater,
  codex: ingoingWater,
  none: ingoingWater,
};

/** Added water: water itself, not the water of milk or wine. */
function isWater(entry: StatementEntry): boolean {
  return entry.food !== undefined && (entry.food.id === 'water' || entry.food.classes.includes('water'));
}

const bareMeat = (entry: StatementEntry): boolean =>
  entry.food?.roles.some((role) => role === 'meat' || role === 'fish') ?? false;

/** The statement of ingredients for a market on a day. */
export function statementOf(input: StatementInput, market: Market, day?: string): Statement {
  const rule = waterRules[market];
  const notes: string[] = [];
  const weighed: { readonly entry: StatementEntry; readonly grams: Rational }[] = [];
  const unweighed: StatementEntry[] = [];
  for (const entry of input.entries) {
    if (entry.grams === undefined || sign(entry.grams) <= 0) unweighed.push(entry);
    else weighed.push({ entry, grams: entry.grams });
  }
  const water = weighed.filter(({ entry }) => isWater(entry));
  const others = weighed.filter(({ entry }) => !isWater(entry));
  const ranked = [...others];
  if (water.length > 0) {
    const left = waterLeft(input, rule, water, others);
    notes.push(rule.note);
    if (left !== undefined) ranked.push(left);
    else notes.push('Added water is left out: the finished food holds less of it than has to be stated.');
  }
  ranked.sort((a, b) => compare(b.grams, a.grams));
  const whole = quidWhole(input, sum(weighed.map(({ grams }) => grams)));
  const write = writer(market, day, input.stressed, whole);
  const items = ranked.map(({ entry, grams }) => write(entry, grams));
  if (items.some(({ quantity }) => quantity !== undefined)) {
    notes.push(
      input.moistureLost
        ? 'Percentages: weight that went in, on the finished weight, as moisture was lost (Regulation (EU) No 1169/2011, Annex VIII).'
        : 'Percentages: weight that went in, on the weight of everything that went in (Regulation (EU) No 1169/2011, Annex VIII).',
    );
  }
  if (unweighed.length > 0) notes.push('The weight of some ingredients is not written; they close the list.');
  return {
    market,
    items,
    unweighed: unweighed.map((entry) => write(entry, undefined)),
    takenOut: input.takenOut.map((entry) => write(entry, undefined)),
    notes: [...notes, allergenTables[market].opening].filter((note) => note !== 'Contains:'),
  };
}

/** Added water as the market weighs it; undefined when it is left out. */
function waterLeft(
  input: StatementInput,
  rule: WaterRule,
  water: readonly { readonly entry: StatementEntry; readonly grams: Rational }[],
  others: readonly { readonly entry: StatementEntry; readonly grams: Rational }[],
): { readonly entry: StatementEntry; readonly grams: Rational } | undefined {
  const first = water[0];
  if (!first) return undefined;
  const ingoing = sum(water.map(({ grams }) => grams));
  const entry: StatementEntry = { ...first.entry, grams: ingoing };
  if (rule.weighed === 'ingoing' || input.finished === undefined) return { entry, grams: ingoing };
  const rest = subtract(input.finished, sum(others.map(({ grams }) => grams)));
  const left = less(rest, ingoing) ? rest : ingoing;
  if (sign(left) <= 0) return undefined;
  if (rule.omit && !others.some(({ entry: one }) => bareMeat(one))) {
    const side = compare(left, multiply(input.finished, rule.omit.share));
    if (side < 0 || (side === 0 && rule.omit.including)) return undefined;
  }
  return { entry, grams: left };
}

/** What percentages are reckoned on: the finished weight if moisture was lost, else all that went in. */
function quidWhole(input: StatementInput, ingoing: Rational): Rational | undefined {
  const whole = input.moistureLost ? input.finished : ingoing;
  return whole && sign(whole) > 0 ? whole : undefined;
}

/** Whole per cents, as the Food Safety Authority of Ireland prints its examples; below 5 % halves, from memory. */
const quidRule: RoundingRule = {
  unit: '%',
  bands: [
    { to: rational(5), including: false, manner: { kind: 'nearest', step: rational(1, 2), places: 1, trim: true } },
    { including: false, manner: { kind: 'nearest', step: rational(1), places: 0, trim: true } },
  ],
  source: 'whole: FSAI, answers on QUID (ham 10 %, mushrooms 6 %, minced beef 30 %); halves below 5 %: from memory',
};

/**
 * The quantity of a stressed ingredient: grams that went in on grams of the whole, as a percentage; above 100 % as grams
 * per 100 g of product (Annex VIII, point 4).
 */
export function quantityOf(ingoing: Rational, whole: Rational): string {
  const percent = divide(multiply(ingoing, HUNDRED), whole);
  const text = printBy(quidRule, percent);
  return compare(percent, HUNDRED) > 0 ? `${text} g per 100 g` : `${text} %`;
}

function writer(
  market: Market,
  day: string | undefined,
  stressed: readonly string[],
  whole: Rational | undefined,
): (entry: StatementEntry, grams: Rational | undefined) => StatementItem {
  const classes = classesOn(market, day).filter((one) => !one.summaryOnly);
  const write = (entry: StatementEntry, grams: Rational | undefined): StatementItem => {
    const named = classesOfFood(classes, surelyHolds(entry.food), entry.food?.name ?? entry.name).map(
      (one) => one.name,
    );
    const parts = [...(entry.parts ?? [])].sort((a, b) => compare(b.grams ?? ZERO, a.grams ?? ZERO));
    return {
      name: entry.name,
      segments: emphasise(entry.name, [...new Set(named)]),
      ...(whole && entry.grams && isStressed(entry.name, stressed) && { quantity: quantityOf(entry.grams, whole) }),
      grams,
      inTable: entry.food !== undefined || parts.length > 0,
      parts: parts.map((part) => write(part, part.grams)),
    };
  };
  return write;
}

/*
 * Words of a food's name that say how it is, not what it is: they do not make an ingredient characteristic. A list of
 * our own.
 */
const PLAIN_WORDS = new Set(
  (
    'white black brown red green yellow dark light whole plain strong fine coarse fresh dried dry ground raw cooked large small medium ' +
    'flour water salt oil of in with and the a for to sweet hot cold soft hard double single'
  ).split(' '),
);

const wordsOf = (text: string): string[] => (text.toLowerCase().match(/\p{L}+/gu) ?? []).map(stem);
const stem = (word: string): string =>
  word
    .replace(/(?:ies)$/, 'y')
    .replace(/(?:oes)$/, 'o')
    .replace(/s$/, '');

/** Whether a name shares a telling word with what is stressed. */
export function isStressed(name: string, stressed: readonly string[]): boolean {
  const told = new Set(stressed.flatMap(wordsOf));
  return wordsOf(name).some((word) => told.has(word) && !PLAIN_WORDS.has(word));
}
