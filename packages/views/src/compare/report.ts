import type { Change, LineFinding, BlockNames } from './changes.js';
import type { Comparison, FileComparison } from './comparison.js';
import { audienceOf, type Audience } from './rank.js';
import { rowsOf, type ComparisonRow } from './rows.js';
import { summaryOf } from './summary.js';

/*
 * A comparison laid out for reading: sections for whoever eats, whoever makes and for the words, in groups of rows with
 * both sides beside each other. Renderers set it; they decide nothing.
 */

export interface ComparisonGroup {
  /** 'Allergens', or the make that the lines belong to; empty for lines of the recipe itself. */
  readonly title: string;
  readonly rows: readonly ComparisonRow[];
}

export interface ComparisonSection {
  readonly audience: Audience;
  readonly title: string;
  readonly groups: readonly ComparisonGroup[];
}

export interface ComparisonReport {
  readonly title: string;
  /** The two sides as they are called: 'before' and 'after' unless the recipe or the variant has another name. */
  readonly sides: { readonly before: string; readonly after: string };
  /** One sentence. */
  readonly summary: string;
  readonly sections: readonly ComparisonSection[];
}

const TITLES: Readonly<Record<Audience, string>> = {
  eater: 'For whoever eats it',
  baker: 'For whoever makes it',
  reader: 'In the words',
};

export function comparisonReport(comparison: Comparison): ComparisonReport {
  const { before, after, changes } = comparison;
  const sections = (['eater', 'baker', 'reader'] as const).flatMap((audience): ComparisonSection[] => {
    const own = changes.filter((change) => audienceOf(change) === audience && !isQuiet(change));
    return own.length === 0 ? [] : [{ audience, title: TITLES[audience], groups: groupsOf(own) }];
  });
  const differently = before.title !== after.title;
  const named = ({ title, variant }: Comparison['before'], side: string): string =>
    variant ?? (differently ? title : before.variant !== after.variant ? 'as it stands' : side);
  return {
    title: after.title + (after.variant === undefined || after.variant !== before.variant ? '' : `, ${after.variant}`),
    sides: { before: named(before, 'before'), after: named(after, 'after') },
    summary: summaryOf(comparison),
    sections,
  };
}

/** A file's comparison for reading. */
export interface FileReport {
  readonly before: string;
  readonly after: string;
  readonly same: boolean;
  /** Recipes that changed; `unchanged` names those that did not. */
  readonly recipes: readonly ComparisonReport[];
  readonly unchanged: readonly string[];
  /** What stands outside the recipes. */
  readonly others: readonly ComparisonGroup[];
}

export function fileReport({ before, after, same, recipes, others }: Omit<FileComparison, 'difference'>): FileReport {
  return {
    before,
    after,
    same,
    recipes: recipes.filter((one) => !one.same).map(comparisonReport),
    unchanged: recipes.filter((one) => one.same).map((one) => one.after.title),
    others: groupsOf(others),
  };
}

/** A line that only calls a renamed make by its new name is told with the make. */
const isQuiet = (change: Change): boolean => change.kind === 'line' && change.change.follows;

function groupsOf(changes: readonly Change[]): readonly ComparisonGroup[] {
  const groups = new Map<string, ComparisonRow[]>();
  for (const change of changes) {
    const title = groupTitle(change);
    groups.set(title, [...(groups.get(title) ?? []), ...rowsOf(change)]);
  }
  return [...groups].flatMap(([title, rows]) => (rows.length === 0 ? [] : [{ title, rows }]));
}

function groupTitle(change: Change): string {
  switch (change.kind) {
    case 'allergen':
    case 'unsaid':
      return 'Allergens';
    case 'promise':
      return 'Promises';
    case 'caution':
      return 'Cautions';
    case 'problem':
      return 'Checks';
    case 'nutrition':
      return 'Nutrition';
    case 'yield':
      return 'Yield';
    case 'clock':
      return 'Time';
    case 'rescaled':
      return 'Size';
    case 'bakers':
      return 'On the flour';
    case 'share':
      return 'Follows on the flour';
    case 'weighed':
      return 'Follows on the scale';
    case 'line':
      return lineGroup(change);
  }
}

function lineGroup(finding: LineFinding): string {
  const { role, where } = finding;
  const names: BlockNames = { ...where.before, ...where.after };
  if (role === 'recipe') return 'Recipes';
  if (role === 'block') return 'Beside the recipes';
  if (names.block !== undefined) return names.block;
  if (role === 'promise' && names.variant === undefined) return 'Promises';
  if (role === 'keeping' && names.variant === undefined) return 'Keeping';
  const variant = names.variant === undefined ? '' : `variant ${names.variant}`;
  if (role === 'make') return variant === '' ? 'Makes' : variant;
  const place = [variant, names.make ?? ''].filter((part) => part !== '').join(', ');
  if (audienceOf(finding) === 'eater') return place === '' ? 'What goes in' : `What goes into ${place}`;
  return place === '' ? 'The recipe' : place;
}
