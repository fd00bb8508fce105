import type { Severity } from '../diagnostic.js';

/** One kind of message. Codes are stable: a code is never given a new meaning. */
export interface Message {
  /** A name in words, for people who search. */
  readonly name: string;
  readonly severity: Severity;
  /** The sentence; `{word}` stands for an argument. */
  readonly text: string;
  /** The way out, an imperative sentence without a capital; may use the same arguments. */
  readonly help: string;
  /** Why this matters to a cook: the paragraph of its page. */
  readonly why: string;
  /** A whole small file in which the message fires (`other.quern` and so on may follow after a line `=== NAME`). */
  readonly bad: string;
  /** The same file mended; the message does not fire. */
  readonly good: string;
}

type Holes<S extends string> = S extends `${string}{${infer Name}}${infer Rest}` ? Name | Holes<Rest> : never;

/** The arguments that a message's text and help ask for. */
export type ArgumentsOf<M extends { readonly text: string; readonly help: string }> = Readonly<
  Record<Holes<M['text']> | Holes<M['help']>, string>
>;

export function defineMessages<const T extends Readonly<Record<string, Message>>>(table: T): T {
  return table;
}
