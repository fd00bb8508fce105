import type { Compiled, Formula } from '@quern/compiler';
import type { Rational } from '@quern/quantity';
import { LineTable, sentence, wayOut, type Diagnostic } from '@quern/text';
import {
  card,
  label,
  marketNames,
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
  /** Totals of the clock, if it has been asked. */
  readonly times?: CardTimes;
  readonly revision?: string;
  /** ISO 8601. */
  readonly date?: string;
}

/**
 * The card of a recipe of a compiled file, with its label: the views are asked one by one, and what each says is laid
 * side by side. Nothing is reckoned here.
 */
export function recipeCard(compiled: Compiled, formula: Formula, options: RecipeCardOptions = {}): CardData {
  const { value, diagnostics } = label(formula, { market: options.market ?? 'none', kitchens: compiled.kitchens });
  const nutrition = nutritionOf(value.declaration, value.notes);
  return card(formula, {
    ...(options.factor ? { factor: options.factor } : {}),
    ...(options.times ? { times: options.times } : {}),
    ...(options.revision === undefined ? {} : { revision: options.revision }),
    ...(options.date === undefined ? {} : { date: options.date }),
    ...(nutrition ? { nutrition } : {}),
    allergens: allergensOf(value),
    diets: dietsOf(value),
    cautions: value.cautions.map(({ text, reason, source }): CardCaution => ({ text, reason, source })),
    variants: formula.variant === undefined ? variantsOf(compiled, formula) : [],
    problems: problemsOf(compiled, formula, diagnostics),
  });
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
    const text = printed.between ? printed.between.join(' to ') : printed.text;
    return [{ id: nutrient, name, level, ...(text === undefined ? {} : { text }), atLeast: printed.atLeast }];
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
