import type { Diagnostic, Span } from '@quern/text';
import type { FileEdits } from './edits.js';
import { fixesAt, mendAll } from './fixes/mend.js';
import { refactorings, type RefactoringKind } from './refactor/refactor.js';
import type { Snapshot } from './snapshot.js';

export interface CodeAction {
  readonly title: string;
  readonly kind: 'fix' | `refactor-${RefactoringKind}` | 'fix-all';
  readonly edits: readonly FileEdits[];
  /** The message that a fix mends. */
  readonly diagnostic?: Diagnostic;
  /** The likeliest fix of its message. */
  readonly preferred: boolean;
}

/**
 * Everything that can be done at a place or with a selection: fixes of its messages, then refactorings.
 * @param slow messages of the label and the clock, where they have been worked out.
 */
export function codeActions(snapshot: Snapshot, span: Span, slow: readonly Diagnostic[] = []): readonly CodeAction[] {
  const seen = new Set<Diagnostic>();
  const fixes = fixesAt(snapshot, span, slow).map(({ title, edits, diagnostic }): CodeAction => {
    const preferred = !seen.has(diagnostic);
    seen.add(diagnostic);
    return { title, kind: 'fix', edits, diagnostic, preferred };
  });
  const changes = refactorings(snapshot, span).map(({ title, kind, edits }): CodeAction => ({
    title,
    kind: `refactor-${kind}`,
    edits,
    preferred: false,
  }));
  return [...fixes, ...changes];
}

/** Every safe fix of the file at once, as is done on saving; undefined when there is none. */
export function fixAll(snapshot: Snapshot): CodeAction | undefined {
  const { text, mended } = mendAll(snapshot);
  if (mended.length === 0) return undefined;
  const edits = [wholeText(snapshot, text)];
  const title = mended.length === 1 ? 'Make the one safe fix' : `Make all ${mended.length} safe fixes`;
  return { title, kind: 'fix-all', edits: [{ file: snapshot.path, edits }], preferred: false };
}

/** The edit between two texts without what both begin and end with. */
function wholeText({ text: before }: Snapshot, after: string): { readonly span: Span; readonly text: string } {
  const most = Math.min(before.length, after.length);
  let head = 0;
  while (head < most && before[head] === after[head]) head++;
  let tail = 0;
  while (tail < most - head && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  return { span: { start: head, end: before.length - tail }, text: after.slice(head, after.length - tail) };
}
