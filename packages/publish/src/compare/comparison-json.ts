import type { Change, Comparison, FileComparison, LineFinding, PartChange } from '@quern/views';
import { audienceOf, summaryOf } from '@quern/views';

/** Version of the form below; a field is never given another meaning under the same version. */
export const COMPARISON_JSON_VERSION = 1;

/** Comparisons of files for other programs; docs/compare.md describes the form. Exact figures are texts ('12.5', '2/3'). */
export function comparisonJson(files: readonly Omit<FileComparison, 'difference'>[]): {
  readonly format: string;
  readonly version: number;
} & Record<string, unknown> {
  return {
    format: 'quern-comparison',
    version: COMPARISON_JSON_VERSION,
    files: files.map(({ before, after, same, recipes, others }) => ({
      before: before === '' ? null : before,
      after: after === '' ? null : after,
      same,
      recipes: recipes.map(recipeJson),
      others: others.map(changeJson),
    })),
  };
}

function recipeJson(comparison: Comparison): Record<string, unknown> {
  const { before, after, same, changes } = comparison;
  return { before, after, same, summary: summaryOf(comparison), changes: changes.map(changeJson) };
}

function changeJson(change: Change): Record<string, unknown> {
  const audience = audienceOf(change);
  return change.kind === 'line' ? { ...lineJson(change), audience } : { ...change, audience };
}

function lineJson({ change, ...finding }: LineFinding): Record<string, unknown> {
  return { ...finding, parts: change.parts.map(partJson), follows: change.follows };
}

function partJson({ part, before, after, runs }: PartChange): Record<string, unknown> {
  return { part, before, after, ...(runs ? { runs } : {}) };
}
