import type { Label, Printed, Statement, StatementItem } from '@quern/views';
import { figureWords, ingredientRuns } from './words.js';

/** A field is never given another meaning under the same version. */
export interface LabelJson {
  readonly format: 'quern-label';
  readonly version: 1;
  readonly [field: string]: unknown;
}

/** The label for other programs: docs/label.md describes the form. */
export function labelJson(label: Label): LabelJson {
  return {
    format: 'quern-label',
    version: 1,
    title: label.title,
    variant: label.variant ?? null,
    market: label.market,
    complete: label.complete,
    alerts: label.alerts,
    weight: label.weight ?? null,
    portions: label.portions,
    ingredients: statement(label.statement),
    allergens: {
      source: label.allergens.source,
      contains: label.allergens.contains,
      mayContain: label.allergens.mayContain,
      cannotSay: label.allergens.cannotSay,
      notes: label.allergens.notes,
    },
    promises: label.promises.map(({ promised, verdict, against }) => ({
      promise: promised.text,
      verdict,
      against,
      place: promised.place,
    })),
    nutrition: {
      heading: label.declaration.heading,
      columns: label.declaration.columns,
      percentOf: label.declaration.percentHeading ?? null,
      rows: label.declaration.rows.map(({ nutrient, name, level, values, percents, missing }) => ({
        nutrient,
        name,
        level,
        values: values.map(printed),
        percents: percents.map((one) => (one ? printed(one) : null)),
        missing,
      })),
      notes: label.declaration.notes,
    },
    cautions: label.cautions.map(({ id, title, weight, text, reason, source, places }) => ({
      id,
      title,
      weight,
      text,
      reason,
      source,
      places,
    })),
    guidance: label.guidance,
    notes: [...label.statement.notes, ...label.notes],
    explanations: label.explanations,
    sources: label.sources,
  };
}

const printed = (one: Printed): Record<string, unknown> => ({
  words: figureWords(one),
  text: one.text ?? null,
  between: one.between ?? null,
  atLeast: one.atLeast,
});

function statement({ items, unweighed, takenOut, ...rest }: Statement): Record<string, unknown> {
  return {
    words: ingredientRuns({ items, unweighed, takenOut, ...rest })
      .map(({ text }) => text)
      .join(''),
    items: items.map(item),
    unweighed: unweighed.map(item),
    takenOut: takenOut.map(item),
  };
}

function item({ name, quantity, inTable, segments, parts }: StatementItem): Record<string, unknown> {
  return {
    name,
    emphasised: segments.filter(({ emphasis }) => emphasis).map(({ text }) => text),
    quantity: quantity ?? null,
    inTable,
    parts: parts.map(item),
  };
}
