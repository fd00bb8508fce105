import type { Span } from '@quern/text';
import { entryTyped } from './opening.js';
import type { Snapshot } from './snapshot.js';

/** How the line is written, with the part that is being typed. */
export interface SignatureHelp {
  readonly form: string;
  readonly says: string;
  readonly example: string;
  /** Parts of `form`. */
  readonly parameters: readonly Span[];
  readonly active: number;
}

const IN_LINE = {
  form: 'AMOUNT NAME on NAME = MEASURE, note',
  says: 'what goes in',
  example: '240 g whipping cream = 1 cup, cold',
};
/** Small words and marks that begin a new part. */
const SEPARATORS = /(?:^|\s)(of|as|on|at|until|using|for|in|beside|from|lost)(?=\s|$)|([=,:])/gi;

const AMOUNT_THEN_NAME = /\b(?:AMOUNT|COUNT|NUMBER) (?=[A-Z])/;
/** An amount with the space that ends it. */
const WHOLE_AMOUNT = /^(?:about\s)?[\d¼½¾⅓⅔⅛⅜⅝⅞][\d.,/ -]*(?:%|\p{L}+)\s|^(?:all|half|rest|enough|a little)\s/iu;

/** Help with the line that the cursor stands in; undefined on empty lines and remarks. */
export function signatureHelp(snapshot: Snapshot, offset: number): SignatureHelp | undefined {
  const line = snapshot.lineAt(offset);
  const before = line.text.slice(0, offset - line.start).trimStart();
  const entry = entryTyped(before);
  const help =
    entry?.kind === 'in'
      ? { ...entry, form: IN_LINE.form }
      : (entry ?? (/^[\d¼½¾⅓⅔⅛⅜⅝⅞]/.test(before) ? IN_LINE : undefined));
  if (help === undefined) return undefined;
  const word = entry !== undefined && entry.kind !== 'in' ? entry.word : '';
  const parameters = parametersOf(help.form, word);
  return {
    form: help.form,
    says: help.says,
    example: help.example,
    parameters,
    active: activeOf(help.form, parameters, before.slice(word.length)),
  };
}

/** The stretches of a form between its opening word, small words and marks. */
function parametersOf(form: string, word: string): readonly Span[] {
  const spans: Span[] = [];
  let start = word.length;
  const close = (end: number): void => {
    const text = form.slice(start, end);
    const trimmed = text.trim();
    if (trimmed === '') return;
    const at = start + text.indexOf(trimmed);
    // An amount and the name behind it are two things to type.
    const [amount = '', name] = /^(?:AMOUNT|COUNT|NUMBER) [A-Z]/.test(trimmed) ? trimmed.split(' ', 2) : [trimmed];
    spans.push({ start: at, end: at + (name === undefined ? trimmed.length : amount.length) });
    if (name !== undefined) spans.push({ start: at + amount.length + 1, end: at + trimmed.length });
  };
  for (const found of form.matchAll(SEPARATORS)) {
    if (found.index < word.length) continue;
    close(found.index);
    start = found.index;
  }
  close(form.length);
  return spans;
}

/** The part that begins with the last separator typed; before any, the amount, or the name once the amount is ended. */
function activeOf(form: string, parameters: readonly Span[], typed: string): number {
  const separators = [...typed.matchAll(SEPARATORS)].map((found) => (found[1] ?? found[2] ?? '').toLowerCase());
  const last = separators.at(-1);
  if (last === undefined) return AMOUNT_THEN_NAME.test(form) && WHOLE_AMOUNT.test(typed.trimStart()) ? 1 : 0;
  const index = parameters.findLastIndex(({ start, end }) => form.slice(start, end).toLowerCase().startsWith(last));
  return Math.max(index, 0);
}
