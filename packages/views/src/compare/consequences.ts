import type { Formula } from '@quern/compiler';
import { equal, multiply, printMinutes, rational, type Rational } from '@quern/quantity';
import { exactText } from '../common/exact-range.js';
import { bakersFlour } from '../common/goes-by-flour.js';
import type {
  AllergenStanding,
  BakersChange,
  BakersName,
  Change,
  ClockChange,
  Figured,
  NutritionChange,
  ProblemChange,
  YieldChange,
  YieldName,
} from './changes.js';
import { bothFigures, counts, grams, more, percents, totals, type Printer } from './figured.js';
import type { AllergenInput, CompareInputs, NutritionInput, ProblemInput } from './inputs.js';
import { eachGrams, hundredths, saltOnFlour } from './ledger-lines.js';

/* What follows from the lines, side by side: for whoever eats, and for whoever bakes. */

export interface Both<T> {
  readonly before: T;
  readonly after: T;
}

/** Everything that other views say of the two formulas and that is no longer the same. */
export function inputChanges({ before, after }: Both<CompareInputs>): readonly Change[] {
  const both = <K extends keyof CompareInputs>(key: K): Both<NonNullable<CompareInputs[K]>> | undefined => {
    const [a, b] = [before[key], after[key]];
    return a === undefined || b === undefined
      ? undefined
      : ({ before: a, after: b } as Both<NonNullable<CompareInputs[K]>>);
  };
  const [allergens, promises, cautions] = [both('allergens'), both('promises'), both('cautions')];
  const [nutrition, clock, problems] = [both('nutrition'), both('clock'), both('problems')];
  return [
    ...(allergens ? allergenChanges(allergens) : []),
    ...(promises
      ? changesByKey(
          promises,
          (one) => one.promise,
          (one) => one.verdict,
          (promise, sides): Change => ({ kind: 'promise', promise, ...sides }),
        )
      : []),
    ...(cautions ? cautionChanges(cautions) : []),
    ...(nutrition ? nutritionChanges(nutrition) : []),
    ...(clock ? clockChanges(clock) : []),
    ...(problems ? problemChanges(problems) : []),
  ];
}

interface Sides {
  readonly before?: string;
  readonly after?: string;
}

/** Things known by a key, each with a text: those whose text is no longer the same, or that only one side has. */
function changesByKey<T, C>(
  { before, after }: Both<readonly T[]>,
  keyOf: (one: T) => string,
  textOf: (one: T) => string,
  change: (key: string, sides: Sides, one: T) => C,
): readonly C[] {
  const was = new Map(before.map((one) => [keyOf(one), one]));
  const is = new Map(after.map((one) => [keyOf(one), one]));
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key): C[] => {
    const [old, now] = [was.get(key), is.get(key)];
    const one = now ?? old;
    if (!one || (old && now && textOf(old) === textOf(now))) return [];
    return [change(key, { ...(old ? { before: textOf(old) } : {}), ...(now ? { after: textOf(now) } : {}) }, one)];
  });
}

function allergenChanges({ before, after }: Both<AllergenInput>): readonly Change[] {
  const standing = (account: AllergenInput, name: string): AllergenStanding =>
    account.contains.includes(name) ? 'contains' : account.mayContain.includes(name) ? 'may contain' : 'not named';
  const names = new Set([before, after].flatMap((one) => [...one.contains, ...one.mayContain]));
  const changes: Change[] = [];
  for (const allergen of names) {
    const [was, is] = [standing(before, allergen), standing(after, allergen)];
    if (was !== is) changes.push({ kind: 'allergen', allergen, before: was, after: is });
  }
  const unsaid = changesByKey(
    { before: before.cannotSay, after: after.cannotSay },
    (food) => food,
    (food) => food,
    (_, sides): Change => ({ kind: 'unsaid', ...sides }),
  );
  return [...changes, ...unsaid];
}

function cautionChanges(both: Both<NonNullable<CompareInputs['cautions']>>): readonly Change[] {
  return changesByKey(
    both,
    ({ id }) => id,
    ({ text }) => text,
    (id, sides, { title }): Change => ({ kind: 'caution', id, title, ...sides }),
  );
}

/** Figures that are printed otherwise than before. */
function nutritionChanges({ before, after }: Both<readonly NutritionInput[]>): readonly NutritionChange[] {
  const key = ({ name, per, text }: NutritionInput): string => `${name}|${per}|${text?.split(' ').at(-1) ?? ''}`;
  const was = new Map(before.map((one) => [key(one), one]));
  const told = new Set<NutritionInput>();
  const changes = after.flatMap((now): NutritionChange[] => {
    const old =
      was.get(key(now)) ??
      before.find(({ name, per, text }) => name === now.name && per === now.per && text === undefined);
    if (!old) return now.text === undefined ? [] : [nutritionChange(undefined, now)];
    told.add(old);
    return old.text === now.text ? [] : [nutritionChange(old, now)];
  });
  const gone = before.filter((old) => !told.has(old) && old.text !== undefined);
  return [...changes, ...gone.map((old) => nutritionChange(old, undefined))];
}

function nutritionChange(old: NutritionInput | undefined, now: NutritionInput | undefined): NutritionChange {
  const [a, b] = [old?.amount, now?.amount];
  const percent = a && b && a.n !== 0n && !equal(a, b) ? more(a, b) : undefined;
  const side = (one: NutritionInput | undefined): NutritionChange['before'] =>
    one?.text !== undefined && one.amount ? figuredAs(one.amount, one.text) : undefined;
  const [before, after] = [side(old), side(now)];
  return {
    kind: 'nutrition',
    nutrient: (now ?? old)?.name ?? '',
    per: (now ?? old)?.per ?? '',
    ...(before ? { before } : {}),
    ...(after ? { after } : {}),
    ...(percent ? { percent } : {}),
  };
}

const figuredAs = (value: Rational, text: string): Figured => ({ exact: exactText(value), text });

function clockChanges({ before, after }: Both<NonNullable<CompareInputs['clock']>>): readonly ClockChange[] {
  const minutes = (figure: ClockChange['figure'], a: number, b: number): ClockChange[] => {
    if (a === b) return [];
    const text = (value: number): string => printMinutes(rational(value));
    return [{ kind: 'clock', figure, before: text(a), after: text(b), minutes: b - a }];
  };
  const begin: ClockChange[] =
    before.begin === after.begin || before.begin === undefined || after.begin === undefined
      ? []
      : [{ kind: 'clock', figure: 'begin', before: before.begin, after: after.begin }];
  return [
    ...minutes('time in all', before.total, after.total),
    ...minutes('hands-on time', before.handsOn, after.handsOn),
    ...begin,
  ];
}

/** Messages on one side only; neither their line nor their figures make them another message. */
function problemChanges({ before, after }: Both<readonly ProblemInput[]>): readonly ProblemChange[] {
  const key = ({ code, text }: ProblemInput): string => `${code} ${text.replace(/\d[\d.,/]*/g, '0')}`;
  const counts = new Map<string, number>();
  for (const one of before) counts.set(key(one), (counts.get(key(one)) ?? 0) + 1);
  const gained = after.filter((one) => {
    const left = counts.get(key(one)) ?? 0;
    counts.set(key(one), left - 1);
    return left <= 0;
  });
  const lost = before.filter((one) => {
    const left = counts.get(key(one)) ?? 0;
    counts.set(key(one), left - 1);
    return left > 0;
  });
  return [
    ...gained.map(({ code, severity, text }): ProblemChange => ({ kind: 'problem', code, severity, after: text })),
    ...lost.map(({ code, severity, text }): ProblemChange => ({ kind: 'problem', code, severity, before: text })),
  ];
}

/**
 * Yield and baker's figures. With a factor, what is exactly so many times as much is no news.
 */
export function formulaChanges({ before, after }: Both<Formula>, factor: Rational | undefined): readonly Change[] {
  const scaled = (a: Rational | undefined, b: Rational | undefined): boolean =>
    factor !== undefined && a !== undefined && b !== undefined && equal(multiply(a, factor), b);
  const yielded = (
    figure: YieldName,
    a: Rational | undefined,
    b: Rational | undefined,
    print: Printer,
  ): YieldChange[] => {
    // The size is told with the factor.
    const told = scaled(a, b) || (factor !== undefined && figure === 'weight');
    const both = told && figure !== 'weight of each' ? undefined : bothFigures(a, b, print);
    return both ? [{ kind: 'yield', figure, ...both }] : [];
  };
  const bakers = (
    figure: BakersName,
    a: Rational | undefined,
    b: Rational | undefined,
    print: Printer,
  ): BakersChange[] => {
    const both = figure === 'flour' && scaled(a, b) ? undefined : bothFigures(a, b, print);
    return both ? [{ kind: 'bakers', figure, ...both }] : [];
  };
  const [flourA, flourB] = [bakersFlour(before), bakersFlour(after)];
  const share = (value: Rational | undefined): Rational | undefined => value && hundredths(value);
  return [
    ...yielded('weight', before.dishGrams, after.dishGrams, totals),
    ...yielded('pieces', before.pieces, after.pieces, counts),
    ...yielded('weight of each', eachGrams(before), eachGrams(after), grams),
    ...yielded('servings', before.servings, after.servings, counts),
    ...bakers('flour', flourA?.grams, flourB?.grams, grams),
    ...bakers('hydration', share(flourA?.hydration), share(flourB?.hydration), percents),
    ...bakers('water in all', share(flourA?.allWater), share(flourB?.allWater), percents),
    ...bakers('prefermented flour', share(flourA?.prefermented), share(flourB?.prefermented), percents),
    ...bakers('salt', saltOnFlour(before), saltOnFlour(after), percents),
  ];
}
