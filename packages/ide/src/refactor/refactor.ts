import type { Span } from '@quern/text';
import type { FileEdits } from '../edits.js';
import type { Snapshot } from '../snapshot.js';
import { moveFood } from './move-food.js';
import { addCheck, totalAsCheck } from './checks.js';
import { convertMeasures } from './convert-measures.js';
import { extractMake } from './extract-make.js';
import { secondMeasure } from './second-measure.js';
import { addVariant } from './variants.js';

export type RefactoringKind = 'rewrite' | 'extract' | 'move';

/** A change of the text that keeps what it means, or adds to it what the writer asks for. */
export interface Refactoring {
  readonly title: string;
  readonly kind: RefactoringKind;
  readonly edits: readonly FileEdits[];
}

const all: readonly ((snapshot: Snapshot, span: Span) => readonly Refactoring[])[] = [
  secondMeasure,
  totalAsCheck,
  addCheck,
  extractMake,
  moveFood,
  addVariant,
  convertMeasures,
];

/** What can be changed at a place, or in the lines that are selected. */
export function refactorings(snapshot: Snapshot, span: Span): readonly Refactoring[] {
  return all.flatMap((one) => one(snapshot, span));
}
