import type { Compiled, Formula } from '@quern/compiler';
import type { Rational } from '@quern/quantity';
import { LineTable, sentence, wayOut, type Diagnostic, type Outcome } from '@quern/text';
import {
  awakeHours,
  card,
  findScale,
  formulasRequest,
  label,
  marketNames,
  plainCalendar,
  planClock,
  readScale,
  type AllergenMention,
  type AllergenReason,
  type CardAllergens,
  type CardCaution,
  type CardData,
  type CardDiet,
  type CardNutrition,
  type CardProblem,
  type CardTimes,
  type Declaration,
  type Label,
  type Market,
} from '@quern/views';

export interface RecipeCardOptions {
  /** Times the recipe. */
  readonly factor?: Rational;
  /** Whose list of allergens and whose rounding; `none` names everything that is known. */
  readonly market?: Market;
  readonly revision?: string;
  /** ISO 8601. */
  readonly date?: string;
}

/**
 * The card of a recipe of a compiled file, with its label: the views are asked one by one, and what each says is laid
 * side by side. Nothing is reckoned here. The diagnostics are those that the label adds to the file's own.
 */
export function recipeCard(compiled: Compiled, formula: Formula, options: RecipeCardOptions = {}): Outcome<CardData> {
  const { value, diagnostics } = label(formula, { market: options.market ?? 'none', kitchens: compiled.kitchens });
  const nutrition = nutritionOf(value.declaration, value.notes);
  const data = card(formula, {
    ...(options.factor ? { factor: options.factor } : {}),
    times: timesOf(compiled, formula),
    ...(options.revision === undefined ? {} : { revision: options.revision }),
    ...(options.date === undefined ? {} : { date: options.date }),
    ...(nutrition ? { nutrition } : {}),
    allergens: allergensOf(value),
    diets: dietsOf(value),
    cautions: value.cautions.map(({ text, reason, source }): CardCaution => ({ text, reason, source })),
    variants: formula.variant === undefined ? variantsOf(compiled, formula) : [],
    problems: problemsOf(compiled, formula, diagnostics),
  });
  return { value: data, diagnostics };
}

// ---------------------------------------------------------------- clock

/** Steps of the clock's search for the totals of a card: a recipe by itself seldom needs more than a few. */
const BUDGET = { steps: 5000 };

/** What the clock has to say without a date; nothing when the recipe cannot be planned. */
function timesOf(compiled: Compiled, formula: Formula): CardTimes {
  const [kitchen] = compiled.kitchens;
  const request = formulasRequest([formula], kitchen);
  if (!request) return {};
  const calendar = plainCalendar(awakeHours(kitchen));
  const plan = planClock(request, { mode: 'free', calendar, budget: BUDGET }).value;
  if (!plan) return {};
  const { handsOn, total, begin, ready } = plan.totals;
  const days = calendar.local(ready).day - calendar.local(begin).day;
  const minutes = (value: number): { low: string; high: string } => ({ low: String(value), high: String(value) });
  return {
    ...(handsOn > 0 ? { handsOn: minutes(handsOn) } : {}),
    ...(total > 0 ? { total: minutes(total) } : {}),
    ...(days > 0 ? { begin: daysBefore(days) } : {}),
  };
}

/** `the day before`, `3 days before`, `about 9 weeks before`, `about 9 months before`. */
function daysBefore(days: number): string {
  if (days === 1) return 'the day before';
  if (days < 21) return `${days} days before`;
  const [length, unit] = days < 90 ? [7, 'weeks'] : [30, 'months'];
  const whole = Math.round(days / length);
  return `${whole * length === days ? '' : 'about '}${whole} ${unit} before`;
}

const variantsOf = (compiled: Compiled, formula: Formula): readonly Formula[] =>
  compiled.formulas.filter((other) => other.variant !== undefined && other.ref.line === formula.ref.line);

// ---------------------------------------------------------------- label

function allergensOf({ allergens, market }: Label): CardAllergens {
  return {
    contains: allergens.contains.map(nameOf),
    mayContain: allergens.mayContain.map((mention) => ({
      name: nameOf(mention),
      because: [...new Set(mention.because.map(becauseOf))].join('; '),
    })),
    unknown: allergens.cannotSay.map(({ name }) => name),
    market: marketNames[market],
  };
}

const nameOf = ({ name, threshold }: AllergenMention): string =>
  threshold === undefined ? name : `${name} (${threshold})`;

function becauseOf({ food, why }: AllergenReason): string {
  switch (why) {
    case 'ingredient':
      return food;
    case 'optional':
      return `${food}, if used`;
    case 'alternative':
      return `${food}, if it stands in`;
    case 'traces':
      return `traces in ${food}`;
    case 'kitchen':
      return `traces in the kitchen (${food})`;
  }
}

/** A diet that the writer claims, that no food speaks against, and for which every food is known. */
function dietsOf({ promises, complete }: Label): CardDiet[] {
  if (!complete) return [];
  return promises.flatMap(({ promised, verdict }) => {
    const { kind, word } = promised.test;
    const confirmed = kind === 'diet' && verdict === 'not contradicted';
    return confirmed && (word === 'vegan' || word === 'vegetarian') ? [word] : [];
  });
}

/** The last column: the portion where there is one, else 100 g. */
function nutritionOf(declaration: Declaration, notes: readonly string[]): CardNutrition | undefined {
  const column = declaration.columns.length - 1;
  const heading = declaration.columns[column];
  const rows = declaration.rows.flatMap(({ nutrient, name, level, values }) => {
    const printed = values[column];
    if (!printed) return [];
    const { text, between, atLeast } = printed;
    const told = { ...(text === undefined ? {} : { text }), ...(between ? { between } : {}) };
    return [{ id: nutrient, name, level, ...told, atLeast }];
  });
  if (heading === undefined || rows.every((row) => row.text === undefined)) return undefined;
  return { column: heading, portion: heading.replace(/^per /, ''), rows, notes };
}

// ---------------------------------------------------------------- problems

/** What is wrong with the recipe: its own lines, and those of the file that belong to no recipe. */
function problemsOf(compiled: Compiled, formula: Formula, more: readonly Diagnostic[]): CardProblem[] {
  const table = new LineTable(compiled.document.text);
  const starts = [...new Set(compiled.formulas.map(({ ref }) => ref.line.number))].sort((a, b) => a - b);
  const recipeAt = (line: number): number | undefined => starts.findLast((start) => start <= line);
  const own = formula.ref.line.number;
  const here = [...compiled.diagnostics, ...more].filter(({ place }) => place.file === compiled.path);
  const problems = here.map((diagnostic): CardProblem => {
    const { code, severity } = diagnostic;
    const line = table.at(diagnostic.place.start).line;
    return { code, severity, text: sentence(diagnostic), help: wayOut(diagnostic), line: line + 1 };
  });
  return problems.filter(({ line }) => (recipeAt(line - 1) ?? own) === own);
}

// ---------------------------------------------------------------- what was asked for

/** What was asked, or why it cannot be had and what to write instead. */
export type Asked<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string; readonly help: string };

export interface RecipeChoice {
  /** Title of the recipe, in any case; without it every recipe of the file. */
  readonly recipe?: string | undefined;
  /** Name of a variant; without it the recipe as it is written. */
  readonly variant?: string | undefined;
}

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();
const listed = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(', ');

/** The formulas of a file that are meant. */
export function chooseFormulas(compiled: Compiled, { recipe, variant }: RecipeChoice): Asked<readonly Formula[]> {
  const bases = compiled.formulas.filter((formula) => formula.variant === undefined);
  if (bases.length === 0) {
    return {
      ok: false,
      problem: 'there is no recipe here',
      help: 'begin one with a line such as “recipe Pennymoss Black Tin Loaf”',
    };
  }
  const meant = recipe === undefined ? bases : bases.filter(({ title }) => same(title, recipe));
  if (meant.length === 0) {
    return {
      ok: false,
      problem: `there is no recipe “${recipe}” here`,
      help: `write one of ${listed(bases.map(({ title }) => title))}`,
    };
  }
  if (variant === undefined) return { ok: true, value: meant };
  const titles = new Set(meant.map(({ title }) => title));
  const variants = compiled.formulas.filter((formula) => formula.variant !== undefined && titles.has(formula.title));
  const found = variants.filter((formula) => same(formula.variant ?? '', variant));
  if (found.length > 0) return { ok: true, value: found };
  const names = variants.map((formula) => formula.variant ?? '');
  const help = names.length === 0 ? 'leave it out: the recipe has no variants' : `write one of ${listed(names)}`;
  return { ok: false, problem: `there is no variant “${variant}” here`, help };
}

/** The factor that `3`, `1/2`, `6 loaves`, `12 servings` or `5 kg` means for a recipe. */
export function cardScale(text: string, formula: Formula): Asked<Rational> {
  for (const kind of ['times', 'weight', 'makes'] as const) {
    const request = readScale(kind, text);
    if (!request.ok) continue;
    const scale = findScale(request.value, formula);
    return scale.ok ? { ok: true, value: scale.value.factor } : scale;
  }
  return {
    ok: false,
    problem: `“${text}” is not a size`,
    help: 'write a number such as 2 or 1/2, or what it should make, such as “6 loaves” or “5 kg”',
  };
}
