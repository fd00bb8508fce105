import { normaliseName, type Formula, type LedgerFood } from '@quern/compiler';
import { nearest } from '@quern/text';
import { add, compare, divide, HUNDRED, multiply, printMinutes, rational, ZERO, type Rational } from '@quern/quantity';
import { printRange } from '@quern/syntax';
import { answer, refuse, type Answer } from '../common/answer.js';
import { bakersFlour } from '../common/goes-by-flour.js';
import type { Figured } from './changes.js';
import { counts, figured, percents, totals, type Printer } from './figured.js';
import { eachGrams, hundredths, saltOnFlour } from './ledger-lines.js';

/*
 * How chosen figures of a formula moved from revision to revision. Where the revisions come from is no matter here.
 */

/** One state of the formula. */
export interface RevisionInput {
  /** As it is shown: a short commit id, or 'not committed'. */
  readonly name: string;
  /** An ISO 8601 day. */
  readonly day: string;
  /** What its writer said of it. */
  readonly subject: string;
  /** Undefined when the file could not be read or holds no such recipe then. */
  readonly formula: Formula | undefined;
  /** Minutes that somebody works. */
  readonly handsOn?: number;
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
  of(revision: RevisionInput): Rational | undefined;
}

const ofFormula =
  (read: (formula: Formula) => Rational | undefined) =>
  ({ formula }: RevisionInput): Rational | undefined =>
    formula && read(formula);

const percentOf = (read: (flour: NonNullable<Formula['flour']>) => Rational | undefined): FigureKind['of'] =>
  ofFormula((formula) => {
    const flour = bakersFlour(formula);
    const share = flour && read(flour);
    return share && hundredths(share);
  });

const minutes: Printer = (value) => printMinutes(value);

const KINDS: readonly FigureKind[] = [
  { name: 'yield', unit: 'g', print: totals, of: ofFormula(({ dishGrams }) => dishGrams) },
  { name: 'weight of each', unit: 'g', print: totals, of: ofFormula(eachGrams) },
  { name: 'pieces', unit: '', print: counts, of: ofFormula(({ pieces }) => pieces) },
  { name: 'servings', unit: '', print: counts, of: ofFormula(({ servings }) => servings) },
  { name: 'flour', unit: 'g', print: totals, of: ofFormula((formula) => bakersFlour(formula)?.grams) },
  { name: 'hydration', unit: '%', print: percents, of: percentOf(({ hydration }) => hydration) },
  { name: 'water in all', unit: '%', print: percents, of: percentOf(({ allWater }) => allWater) },
  { name: 'prefermented flour', unit: '%', print: percents, of: percentOf(({ prefermented }) => prefermented) },
  {
    name: 'salt',
    unit: '%',
    print: percents,
    of: ofFormula((formula) => saltOnFlour(formula) ?? shareOf(formula, isSalt)),
  },
  {
    name: 'hands-on time',
    unit: 'min',
    print: minutes,
    of: ({ handsOn }) => (handsOn === undefined ? undefined : rational(handsOn)),
  },
];

/** Names of the figures that may be asked for, besides any food. */
export const historyFigures: readonly string[] = KINDS.map(({ name }) => name);

const isSalt = (food: LedgerFood): boolean => food.food?.roles.includes('salt') ?? false;

/** What some foods are of all that goes in, in hundredths; undefined when a weight is not known. */
function shareOf(formula: Formula, counts: (food: LedgerFood) => boolean): Rational | undefined {
  let own = ZERO;
  let all = ZERO;
  for (const make of formula.makes) {
    for (const entry of make.pot.entries) {
      if (entry.kind !== 'food') continue;
      if (!entry.grams) return undefined;
      for (const part of entry.parts) {
        all = add(all, part.grams);
        if (counts(part.food)) own = add(own, part.grams);
      }
    }
  }
  return all.n > 0n ? divide(multiply(own, HUNDRED), all) : undefined;
}

/** A food's share: on the flour where bakers reckon so, else of all that goes in. */
function foodKind(name: string, revisions: readonly RevisionInput[]): FigureKind | undefined {
  const wanted = normaliseName(name);
  const is = (food: LedgerFood): boolean =>
    normaliseName(food.name) === wanted || (food.food !== undefined && normaliseName(food.food.name) === wanted);
  const foods = revisions.flatMap(({ formula }) => (formula ? foodsOf(formula) : []));
  const keys = new Set(foods.filter(is).map(({ key }) => key));
  if (keys.size === 0) return undefined;
  const onFlour = revisions.some(({ formula }) => formula && bakersFlour(formula));
  return {
    name: `${name} ${onFlour ? 'on flour' : 'of all that goes in'}`,
    unit: '%',
    print: percents,
    of: ofFormula((formula) => {
      const flour = bakersFlour(formula);
      if (!flour) return onFlour ? undefined : shareOf(formula, ({ key }) => keys.has(key));
      const own = flour.formula.filter(({ food }) => keys.has(food.key));
      return own.reduce((sum, { percent }) => add(sum, percent), ZERO);
    }),
  };
}

const foodsOf = (formula: Formula): readonly LedgerFood[] =>
  formula.makes.flatMap(({ pot }) => pot.entries.flatMap(({ parts }) => parts.map(({ food }) => food)));

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
    title: last ? last.title + (last.variant === undefined ? '' : `, ${last.variant}`) : '',
    revisions: withBaked(revisions),
    series: known,
  });
}

function unknownFigure(name: string, revisions: readonly RevisionInput[]): Answer<History> {
  const last = revisions.findLast(({ formula }) => formula)?.formula;
  const foods = last ? [...new Set(foodsOf(last).map((food) => food.name))] : [];
  const near = nearest(normaliseName(name), [...historyFigures, ...foods])[0];
  const help =
    near === undefined ? `choose ${historyFigures.join(', ')}, or a food of the recipe` : `did you mean ${near}?`;
  return refuse(`“${name}” is no figure, and no food of this recipe in any revision`, help);
}

function seriesOf({ name, unit, print, of }: FigureKind, revisions: readonly RevisionInput[]): HistorySeries {
  const values = revisions.map(of);
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
  for (const { content } of newest?.facts.baked ?? []) {
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
  const tells = ({ formula }: RevisionInput): boolean =>
    formula?.facts.baked.some(({ content }) => content.date === day) ?? false;
  const told = revisions.findIndex(tells);
  const before = told < 0 ? revisions : revisions.slice(0, told);
  const at = before.findLastIndex((revision) => revision.day <= day);
  return Math.max(0, at < 0 ? told : at);
}
