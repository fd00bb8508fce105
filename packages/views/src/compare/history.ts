import { normaliseName, type Flour, type Formula, type LedgerFood } from '@quern/compiler';
import { nearest } from '@quern/text';
import { add, compare, divide, HUNDRED, multiply, printMinutes, rational, sum, type Rational } from '@quern/quantity';
import { printRange, type BakedFact } from '@quern/syntax';
import { answer, refuse, type Answer } from '../common/answer.js';
import { bakersFlour } from '../common/goes-by-flour.js';
import type { Figured } from './changes.js';
import { counts, figured, percents, totals, type Printer } from './figured.js';
import { eachGrams, hundredths, saltOnFlour } from './ledger-lines.js';

/*
 * How chosen figures of a formula moved from revision to revision. Where the revisions come from is no matter here.
 */

/** What the history tells of a formula; small, so that a thousand states can be held. */
export interface FormulaFigures {
  readonly title: string;
  /** By name; what is not known is missing. */
  readonly figures: ReadonlyMap<string, Rational>;
  /** Each food's share in hundredths, on the flour where bakers reckon so, else of all that goes in; by the food's key. */
  readonly shares: ReadonlyMap<string, FoodShare>;
  readonly onFlour: boolean;
  readonly baked: readonly BakedFact[];
}

interface FoodShare {
  readonly names: readonly string[];
  /** Undefined when a weight is not known. */
  readonly percent: Rational | undefined;
}

/** One state of the formula. */
export interface RevisionInput {
  /** As it is shown: a short commit id, or 'not committed'. */
  readonly name: string;
  /** An ISO 8601 day. */
  readonly day: string;
  /** What its writer said of it. */
  readonly subject: string;
  /** Undefined when the file could not be read or holds no such recipe then. */
  readonly formula: FormulaFigures | undefined;
}

/** A batch that was baked by some revision. */
export interface BakedRecord {
  readonly day: string;
  /** '2 loaves'. */
  readonly yield?: string;
  /** '11.4 %'. */
  readonly lost?: string;
  readonly remark?: string;
}

export interface Revision {
  readonly name: string;
  readonly day: string;
  readonly subject: string;
  /** The formula could be worked out. */
  readonly readable: boolean;
  readonly baked: readonly BakedRecord[];
}

export interface HistorySeries {
  /** 'hydration', 'hands-on time', 'rye starter on flour'. */
  readonly name: string;
  readonly unit: string;
  /** One a revision; null where it is not known. */
  readonly points: readonly (Figured | null)[];
  /** Indexes of the revisions at which it is no longer what it was. */
  readonly moved: readonly number[];
}

export interface History {
  readonly title: string;
  /** Oldest first. */
  readonly revisions: readonly Revision[];
  readonly series: readonly HistorySeries[];
}

interface FigureKind {
  readonly name: string;
  readonly unit: string;
  readonly print: Printer;
  of(formula: FormulaFigures): Rational | undefined;
}

const minutes: Printer = (value) => printMinutes(value);

const figureKind = (name: string, unit: string, print: Printer): FigureKind => ({
  name,
  unit,
  print,
  of: ({ figures }) => figures.get(name),
});

const KINDS: readonly FigureKind[] = [
  figureKind('yield', 'g', totals),
  figureKind('weight of each', 'g', totals),
  figureKind('pieces', '', counts),
  figureKind('servings', '', counts),
  figureKind('flour', 'g', totals),
  figureKind('hydration', '%', percents),
  figureKind('water in all', '%', percents),
  figureKind('prefermented flour', '%', percents),
  figureKind('salt', '%', percents),
  figureKind('hands-on time', 'min', minutes),
];

/** Names of the figures that may be asked for, besides any food. */
export const historyFigures: readonly string[] = KINDS.map(({ name }) => name);

/**
 * The figures of a formula that a history can show.
 * @param handsOn minutes that somebody works, where they are known
 */
export function figuresOf(formula: Formula, handsOn?: number): FormulaFigures {
  const flour = bakersFlour(formula);
  const shares = sharesOf(formula, flour);
  const percent = (share: Rational | undefined): Rational | undefined => share && hundredths(share);
  const all: readonly (readonly [string, Rational | undefined])[] = [
    ['yield', formula.dishGrams],
    ['weight of each', eachGrams(formula)],
    ['pieces', formula.pieces],
    ['servings', formula.servings],
    ['flour', flour?.grams],
    ['hydration', percent(flour?.hydration)],
    ['water in all', percent(flour?.allWater)],
    ['prefermented flour', percent(flour?.prefermented)],
    ['salt', saltOnFlour(formula) ?? saltIn(formula, shares)],
    ['hands-on time', handsOn === undefined ? undefined : rational(handsOn)],
  ];
  return {
    title: formula.title + (formula.variant === undefined ? '' : `, ${formula.variant}`),
    figures: new Map(all.filter((one): one is readonly [string, Rational] => one[1] !== undefined)),
    shares,
    onFlour: flour !== undefined,
    baked: formula.facts.baked.map(({ content }) => content),
  };
}

function sharesOf(formula: Formula, flour: Flour | undefined): ReadonlyMap<string, FoodShare> {
  const names = ({ name, food }: LedgerFood): string[] => [
    normaliseName(name),
    ...(food ? [normaliseName(food.name)] : []),
  ];
  if (flour) return new Map(flour.formula.map(({ food, percent }) => [food.key, { names: names(food), percent }]));
  const parts = formula.makes.flatMap(({ pot }) =>
    pot.entries.filter(({ kind }) => kind === 'food').flatMap((entry) => entry.parts),
  );
  const all = sum(parts.map(({ grams }) => grams));
  const known = all.n > 0n && formula.makes.every(({ pot }) => pot.unknown.length === 0);
  const shares = new Map<string, FoodShare>();
  for (const { food, grams } of parts) {
    const share = known ? divide(multiply(grams, HUNDRED), all) : undefined;
    const before = shares.get(food.key)?.percent;
    shares.set(food.key, { names: names(food), percent: share && before ? add(share, before) : share });
  }
  return shares;
}

/** Salt of all that goes in, where nobody reckons on flour. */
function saltIn(formula: Formula, shares: ReadonlyMap<string, FoodShare>): Rational | undefined {
  const salts = new Set(
    formula.makes
      .flatMap(({ pot }) => pot.entries.flatMap(({ parts }) => parts))
      .filter(({ food }) => food.food?.roles.includes('salt'))
      .map(({ food }) => food.key),
  );
  const own = [...shares].filter(([key]) => salts.has(key)).map(([, { percent }]) => percent);
  return own.every((percent) => percent !== undefined) ? sum(own) : undefined;
}

/** A food's share, whatever it was called in any revision. */
function foodKind(name: string, revisions: readonly RevisionInput[]): FigureKind | undefined {
  const wanted = normaliseName(name);
  const formulas = revisions.flatMap(({ formula }) => (formula ? [formula] : []));
  const keys = new Set(
    formulas.flatMap(({ shares }) => [...shares].filter(([, { names }]) => names.includes(wanted)).map(([key]) => key)),
  );
  if (keys.size === 0) return undefined;
  const onFlour = formulas.some((formula) => formula.onFlour);
  return {
    name: `${name} ${onFlour ? 'on flour' : 'of all that goes in'}`,
    unit: '%',
    print: percents,
    of: (formula) => {
      if (onFlour && !formula.onFlour) return undefined;
      const own = [...formula.shares].filter(([key]) => keys.has(key)).map(([, { percent }]) => percent);
      return own.every((percent) => percent !== undefined) ? sum(own) : undefined;
    },
  };
}

/** What is drawn unless something is asked for, where it is known at all. */
const USUAL = ['yield', 'hydration', 'salt', 'hands-on time'];

/**
 * The history of some figures; those a baker would ask for unless they are named.
 * @param wanted names of figures, or of foods
 */
export function historyOf(revisions: readonly RevisionInput[], wanted: readonly string[]): Answer<History> {
  const kinds: FigureKind[] = [];
  for (const name of wanted.length > 0 ? wanted : USUAL) {
    const kind = KINDS.find((one) => one.name === normaliseName(name)) ?? foodKind(name.trim(), revisions);
    if (!kind) return unknownFigure(name, revisions);
    kinds.push(kind);
  }
  const series = kinds.map((kind) => seriesOf(kind, revisions));
  const known = wanted.length > 0 ? series : series.filter(({ points }) => points.some((point) => point !== null));
  const last = revisions.findLast(({ formula }) => formula)?.formula;
  return answer({
    title: last?.title ?? '',
    revisions: withBaked(revisions),
    series: known,
  });
}

function unknownFigure(name: string, revisions: readonly RevisionInput[]): Answer<History> {
  const last = revisions.findLast(({ formula }) => formula)?.formula;
  const foods = [...(last?.shares.values() ?? [])].flatMap(({ names }) => names);
  const near = nearest(normaliseName(name), [...historyFigures, ...foods])[0];
  const help =
    near === undefined ? `choose ${historyFigures.join(', ')}, or a food of the recipe` : `did you mean ${near}?`;
  return refuse(`“${name}” is no figure, and no food of this recipe in any revision`, help);
}

function seriesOf({ name, unit, print, of }: FigureKind, revisions: readonly RevisionInput[]): HistorySeries {
  const values = revisions.map(({ formula }) => formula && of(formula));
  const moved: number[] = [];
  let before: Rational | undefined;
  for (const [index, value] of values.entries()) {
    const same = before && value ? compare(before, value) === 0 : before === value;
    if (index > 0 && !same) moved.push(index);
    before = value;
  }
  return { name, unit, points: values.map((value) => (value ? figured(value, print) : null)), moved };
}

// ---- batch records ---------------------------------------------------------------------------------------------------

/**
 * The batches of the newest state, each with the revision it was baked by: the last of that day or before it. A revision
 * that first tells of a batch may come with the very change it speaks for, so it counts only if none is older.
 */
function withBaked(revisions: readonly RevisionInput[]): readonly Revision[] {
  const newest = revisions.findLast(({ formula }) => formula)?.formula;
  const records = new Map<number, BakedRecord[]>();
  for (const content of newest?.baked ?? []) {
    const at = revisionBaked(revisions, content.date);
    const record: BakedRecord = {
      day: content.date,
      ...(content.yield ? { yield: content.yield.text } : {}),
      ...(content.lost ? { lost: `${printRange(content.lost)} %` } : {}),
      ...(content.remark ? { remark: content.remark.text } : {}),
    };
    records.set(at, [...(records.get(at) ?? []), record]);
  }
  return revisions.map(({ name, day, subject, formula }, index) => ({
    name,
    day,
    subject,
    readable: formula !== undefined,
    baked: records.get(index) ?? [],
  }));
}

/** Index of the revision by which something was baked on a day: the last one up to that day, and before it was told of. */
function revisionBaked(revisions: readonly RevisionInput[], day: string): number {
  const tells = ({ formula }: RevisionInput): boolean => formula?.baked.some(({ date }) => date === day) ?? false;
  const told = revisions.findIndex(tells);
  const before = told < 0 ? revisions : revisions.slice(0, told);
  const at = before.findLastIndex((revision) => revision.day <= day);
  return Math.max(0, at < 0 ? told : at);
}
