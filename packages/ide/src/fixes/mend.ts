import type { Diagnostic, Span, TextEdit } from '@quern/text';
import type { FileEdits } from '../edits.js';
import type { Snapshot } from '../snapshot.js';
import { Mending, type Fix } from './fix.js';
import { fixers } from './index.js';

export interface CodedFix extends Fix {
  readonly diagnostic: Diagnostic;
}

/** How a message can be mended, the likeliest way first. */
export function fixesFor(snapshot: Snapshot, diagnostic: Diagnostic): readonly CodedFix[] {
  const fixer = fixers[diagnostic.code];
  if (fixer === undefined || diagnostic.place.file !== snapshot.path) return [];
  const fixes = fixer(new Mending(snapshot, diagnostic)).filter(({ edits }) =>
    edits.some((one) => one.edits.length > 0),
  );
  return fixes.map((fix) => ({ ...fix, diagnostic }));
}

/** The fixes of every message that touches a span, those of the slow checks included where there are some. */
export function fixesAt(snapshot: Snapshot, span: Span, slow: readonly Diagnostic[] = []): readonly CodedFix[] {
  return [...snapshot.compiled.diagnostics, ...slow]
    .filter(({ place }) => place.start <= span.end && place.end >= span.start)
    .flatMap((diagnostic) => fixesFor(snapshot, diagnostic));
}

/** Every edit that may be made to the file without asking; of two that overlap the first is made. */
export function safeEdits(
  snapshot: Snapshot,
  only?: (diagnostic: Diagnostic) => boolean,
): { readonly edits: readonly TextEdit[]; readonly mended: readonly Diagnostic[] } {
  const edits: TextEdit[] = [];
  const mended: Diagnostic[] = [];
  for (const diagnostic of snapshot.compiled.diagnostics) {
    if (only && !only(diagnostic)) continue;
    const fix = fixesFor(snapshot, diagnostic).find(({ safe }) => safe);
    const mine = ownEdits(fix?.edits ?? [], snapshot.path);
    if (mine.length === 0 || mine.some((edit) => edits.some((other) => overlap(edit.span, other.span)))) continue;
    edits.push(...mine);
    mended.push(diagnostic);
  }
  return { edits, mended };
}

const ownEdits = (all: readonly FileEdits[], file: string): readonly TextEdit[] =>
  all.every((one) => one.file === file) ? all.flatMap((one) => one.edits) : [];

const overlap = (a: Span, b: Span): boolean =>
  (a.start < b.end && b.start < a.end) || (a.start === b.start && a.end === b.end);

/** The file with every safe fix made, again and again until none is left: one fix can make another possible. */
export function mendAll(
  snapshot: Snapshot,
  most = 10,
): { readonly text: string; readonly mended: readonly Diagnostic[] } {
  const mended: Diagnostic[] = [];
  let now = snapshot;
  for (let round = 0; round < most; round++) {
    const { edits, mended: these } = safeEdits(now);
    if (edits.length === 0) break;
    mended.push(...these);
    now = now.edited(edits);
  }
  return { text: now.text, mended };
}
