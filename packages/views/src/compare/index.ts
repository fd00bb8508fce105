/** The comparison: what changed from one formula to another, and what follows from it. */
export { compareFiles, compareFormulas, type Compared, type Comparison, type FileComparison } from './comparison.js';
export { applyDifference } from './apply.js';
export {
  mirrored,
  type Arrangement,
  type Difference,
  type LineChange,
  type PartChange,
  type Scaling,
  type SharedBlock,
  type Spot,
} from './difference.js';
export { treeOfDocument, treeOfRecipe, treeText, type TreeNode } from './tree.js';
export { audienceOf, type Audience } from './rank.js';
export type * from './changes.js';
export type * from './inputs.js';
export type { PartName, PartValue } from './parts.js';
export type { WordRun } from './word-runs.js';
export {
  comparisonReport,
  fileReport,
  type ComparisonGroup,
  type ComparisonReport,
  type ComparisonSection,
  type FileReport,
} from './report.js';
export type { ComparisonRow, Tone } from './rows.js';
export { summaryOf } from './summary.js';
export {
  figuresOf,
  historyFigures,
  historyOf,
  type BakedRecord,
  type FormulaFigures,
  type History,
  type HistorySeries,
  type Revision,
  type RevisionInput,
} from './history.js';
export { mergeTexts, type Merged, type MergeLabels } from './merge.js';
export { accountOf } from './account.js';
