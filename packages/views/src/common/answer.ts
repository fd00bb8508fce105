/** What was asked, or why it cannot be read and what to write instead: for words that stand in no file. */
export type Answer<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string; readonly help: string };

export const answer = <T>(value: T): Answer<T> => ({ ok: true, value });
export const refuse = (problem: string, help: string): Answer<never> => ({ ok: false, problem, help });
