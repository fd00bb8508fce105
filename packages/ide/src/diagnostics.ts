import { messages, sentence, wayOut, type Diagnostic, type Place, type Severity, type Span } from '@quern/text';
import type { Snapshot } from './snapshot.js';

/** A message as an editor shows it: the sentence, the way out, and other places that take part. */
export interface EditorDiagnostic {
  readonly code: string;
  readonly severity: Severity;
  readonly span: Span;
  readonly message: string;
  /** The name of the message, for the title of its page. */
  readonly title: string;
  readonly related: readonly { readonly place: Place; readonly message: string }[];
  /** Marks of typography and unused things are shown quietly. */
  readonly quiet: boolean;
  readonly source: Diagnostic;
}

/** Saved or made and never used: editors fade such lines. */
const UNUSED: ReadonlySet<string> = new Set(['M06', 'M13']);

/** What is wrong with a file, in the order of the text. */
export function diagnostics(snapshot: Snapshot): readonly EditorDiagnostic[] {
  return snapshot.compiled.diagnostics.map(editorDiagnostic);
}

export function editorDiagnostic(diagnostic: Diagnostic): EditorDiagnostic {
  const { code, severity, place, related } = diagnostic;
  return {
    code,
    severity,
    span: { start: place.start, end: place.end },
    message: messageOf(diagnostic),
    title: messages[code].name,
    related: related.map((one) => ({ place: one.place, message: one.note })),
    quiet: UNUSED.has(code),
    source: diagnostic,
  };
}

const known = new WeakMap<Diagnostic['args'], { readonly code: Diagnostic['code']; readonly message: string }>();

/** The words of a message, put together once: with each key most messages of a long file only move, and keep what they say. */
function messageOf(diagnostic: Diagnostic): string {
  const { code, args } = diagnostic;
  const before = known.get(args);
  if (before?.code === code) return before.message;
  const message = `${sentence(diagnostic)}\n${capital(wayOut(diagnostic))}`;
  known.set(args, { code, message });
  return message;
}

function capital(text: string): string {
  const first = String.fromCodePoint(text.codePointAt(0) ?? 32);
  return first.toUpperCase() + text.slice(first.length);
}
