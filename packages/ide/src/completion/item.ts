import type { Span } from '@quern/text';

export type CompletionKind =
  | 'word'
  | 'food'
  | 'product'
  | 'culture'
  | 'recipe'
  | 'unit'
  | 'value'
  | 'note'
  | 'file'
  | 'tag'
  | 'allergen'
  | 'nutrient'
  | 'thing';

export interface CompletionItem {
  readonly label: string;
  readonly kind: CompletionKind;
  /** What is replaced. */
  readonly span: Span;
  readonly insert: string;
  /** `insert` has places to fill in. */
  readonly snippet: boolean;
  readonly detail?: string;
  /** Markdown. */
  readonly documentation?: string;
  /** Lower comes first. */
  readonly rank: number;
}

export interface CompletionList {
  readonly items: readonly CompletionItem[];
  /** There is more than is given: ask again after the next letter. */
  readonly incomplete: boolean;
}

/** What can stand at a place, before anything is known of how it is replaced. */
export interface Candidate {
  readonly label: string;
  readonly kind: CompletionKind;
  readonly insert?: string;
  readonly snippet?: boolean;
  readonly detail?: string;
  readonly documentation?: string;
  readonly rank?: number;
}

const MOST = 100;

/** The candidates that fit what is typed, best first: those that begin with it before those that hold it. */
export function listOf(candidates: Iterable<Candidate>, typed: string, span: Span): CompletionList {
  const wanted = typed.toLowerCase().trimStart();
  const items: CompletionItem[] = [];
  const seen = new Set<string>();
  for (const candidate of candidates) {
    const fit = fitOf(candidate.label.toLowerCase(), wanted);
    if (fit === undefined || seen.has(`${candidate.kind} ${candidate.label}`)) continue;
    seen.add(`${candidate.kind} ${candidate.label}`);
    items.push({
      label: candidate.label,
      kind: candidate.kind,
      span,
      insert: candidate.insert ?? candidate.label,
      snippet: candidate.snippet ?? false,
      ...(candidate.detail === undefined ? {} : { detail: candidate.detail }),
      ...(candidate.documentation === undefined ? {} : { documentation: candidate.documentation }),
      rank: (candidate.rank ?? 500) + fit * 1000,
    });
  }
  items.sort((a, b) => a.rank - b.rank || a.label.length - b.label.length || (a.label < b.label ? -1 : 1));
  return { items: items.slice(0, MOST), incomplete: items.length > MOST };
}

/** 0 when it begins with what is typed, 1 when a word of it does, 2 when every word typed begins one of its words. */
function fitOf(label: string, wanted: string): number | undefined {
  if (label.startsWith(wanted)) return 0;
  if (label.includes(` ${wanted}`)) return 1;
  // One word, as it mostly is: nothing has to be taken apart for the thousands of names that do not fit.
  if (!/\s/.test(wanted)) return label.includes(`-${wanted}`) ? 2 : undefined;
  const words = label.split(/[\s-]+/);
  return wanted.split(/\s+/).every((typed) => words.some((word) => word.startsWith(typed))) ? 2 : undefined;
}
