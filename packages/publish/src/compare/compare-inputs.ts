import type { Compiled, Formula } from '@quern/compiler';
import { ONE } from '@quern/quantity';
import { LineTable, sentence, type Span } from '@quern/text';
import {
  awakeHours,
  compositionOf,
  formulasRequest,
  label,
  moment,
  nutritionOf,
  plainCalendar,
  planClock,
  type Budget,
  type CompareInputs,
  type Label,
  type Market,
  type NutritionInput,
  type ProblemInput,
} from '@quern/views';

export interface CompareInputOptions {
  readonly market: Market;
  /** Minutes after midnight at which the dish is to be ready; without it the plan has no hour. */
  readonly ready?: number;
  /** Steps of the clock's search; as many as the clock usually takes unless given. */
  readonly budget?: Budget;
  /** Whether the clock plans at all, which takes its time; yes unless given. */
  readonly clock?: boolean;
}

/** What the label and the clock say of a formula, for comparing. */
export function compareInputs(formula: Formula, compiled: Compiled, options: CompareInputOptions): CompareInputs {
  const { value } = label(formula, { market: options.market, kitchens: compiled.kitchens });
  const clock = options.clock === false ? undefined : clockOf(formula, compiled, options);
  return {
    allergens: {
      contains: value.allergens.contains.map(({ name }) => name),
      mayContain: value.allergens.mayContain.map(({ name }) => name),
      cannotSay: value.allergens.cannotSay.map(({ name }) => name),
    },
    promises: value.promises.map(({ promised, verdict }) => ({ promise: promised.text, verdict })),
    cautions: value.cautions.map(({ id, title, text }) => ({ id, title, text })),
    nutrition: nutritionInputs(formula, value),
    ...(clock ? { clock } : {}),
    problems: problemsOf(formula, compiled),
  };
}

/** The figures of the label's first column, with what they were rounded from. */
function nutritionInputs(formula: Formula, { declaration, portions }: Label): readonly NutritionInput[] {
  const nutrition = nutritionOf(compositionOf(formula));
  const [per = ''] = declaration.columns;
  const whole = per.startsWith('per 100');
  return declaration.rows.map(({ nutrient, name, values }): NutritionInput => {
    // The declaration's portion count is printed; the exact one stands in the formula.
    const parts = formula.servings ?? formula.pieces ?? ONE;
    const figure = whole ? nutrition.per100(nutrient) : nutrition.perPart(nutrient, parts);
    const unit = whole ? per : `per ${portions[0]?.name ?? 'portion'}`;
    return { name: name.toLowerCase(), per: unit, text: values[0]?.text, amount: figure?.amount.usual };
  });
}

function clockOf(
  formula: Formula,
  { kitchens }: Compiled,
  { ready, budget }: CompareInputOptions,
): CompareInputs['clock'] {
  const [kitchen] = kitchens;
  const request = formulasRequest([formula], kitchen);
  if (!request) return undefined;
  const calendar = plainCalendar(awakeHours(kitchen), ready ?? 0);
  const { value } = planClock(request, {
    mode: ready === undefined ? 'free' : 'ready',
    calendar,
    ...(budget && { budget }),
  });
  if (!value) return undefined;
  const { handsOn, total } = value.totals;
  return {
    handsOn,
    total,
    ...(ready === undefined ? {} : { begin: moment(calendar, value.totals.begin, value.totals.ready) }),
  };
}

/** Errors and warnings that stand in the lines of the recipe. */
function problemsOf(formula: Formula, compiled: Compiled): readonly ProblemInput[] {
  const own = stretchOf(formula, compiled);
  const table = new LineTable(compiled.document.text);
  return compiled.diagnostics
    .filter(({ severity, place }) => severity !== 'hint' && place.start >= own.start && place.start < own.end)
    .map((one) => ({
      code: one.code,
      severity: one.severity,
      text: sentence(one),
      line: table.at(one.place.start).line + 1,
    }));
}

/** From the recipe's heading to the next recipe's. */
function stretchOf({ ref }: Formula, { formulas, document }: Compiled): Span {
  const { start } = ref.line;
  const next = formulas.map((other) => other.ref.line.start).filter((at) => at > start);
  return { start, end: Math.min(document.text.length + 1, ...next) };
}
