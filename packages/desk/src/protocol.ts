/*
 * What the page and its worker say to each other. A question has a kind and a body; its answer has the number of the
 * question. Everything is plain data; places are UTF-16 offsets into the text that the worker was last given.
 */

/** The ways to look at a recipe. */
export const VIEWS = ['sheet', 'clock', 'label', 'card', 'compare'] as const;
export type View = (typeof VIEWS)[number];

export const MEASURES = ['both', 'metric', 'us'] as const;
export const MARKETS = ['none', 'eu', 'uk', 'us', 'ca', 'au', 'jp', 'codex'] as const;

/** What a person has chosen beside the result. */
export interface Settings {
  /** Which entry of `Look.choices`; the first when it is not there. */
  readonly choice: string;
  /** `6 loaves`, `1/2`, `5 kg`; empty for as written. */
  readonly size: string;
  readonly measures: (typeof MEASURES)[number];
  readonly market: (typeof MARKETS)[number];
  /** Local date and time as ISO 8601 writes them, `2041-02-16T18:00`; empty for a plan without dates. */
  readonly ready: string;
  readonly zone: string;
  /** The present, in milliseconds since 1970. */
  readonly now: number;
}

/** A recipe, variant or menu of a file. */
export interface Choice {
  readonly id: string;
  readonly title: string;
  readonly kind: 'recipe' | 'variant' | 'menu';
}

export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export interface FileEdit {
  readonly file: string;
  readonly edits: readonly Edit[];
}

/** A change that is offered: a fix of a message, or a refactoring. */
export interface Offer {
  readonly title: string;
  readonly changes: readonly FileEdit[];
}

/** A message of the check, as it is shown. */
export interface Said {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'hint';
  readonly from: number;
  readonly to: number;
  readonly sentence: string;
  readonly wayOut: string;
  /** Something that is not used is shown quietly. */
  readonly quiet: boolean;
  readonly related: readonly { readonly file: string; readonly from: number; readonly text: string }[];
}

export interface Look {
  readonly said: readonly Said[];
  /** Three numbers a token: from, to, place in `TOKEN_TYPES` of ide. */
  readonly tokens: readonly number[];
  readonly choices: readonly Choice[];
  /** Files that were asked for and are not here. */
  readonly missing: readonly string[];
}

export interface Completions {
  readonly from: number;
  readonly incomplete: boolean;
  readonly items: readonly {
    readonly label: string;
    readonly kind: string;
    readonly insert: string;
    readonly snippet: boolean;
    readonly detail: string;
    readonly documentation: string;
  }[];
}

/** A view as a whole page of HTML, or why there is none. */
export type Rendered =
  | { readonly ok: true; readonly html: string; readonly note: string }
  | { readonly ok: false; readonly reasons: readonly string[] };

export interface ViewAnswer {
  readonly now: Rendered;
  /** The same of the text as it was opened or last saved; missing while that is the same text. */
  readonly before?: Rendered;
}

/** Questions by kind, each with its body and its answer. */
export interface Questions {
  /** Gives texts; undefined takes a file away. With `opened` they are also what later texts are compared with. */
  put: {
    readonly body: {
      readonly files: readonly { readonly path: string; readonly text: string | undefined }[];
      readonly opened: boolean;
    };
    readonly answer: null;
  };
  look: { readonly body: { readonly path: string }; readonly answer: Look };
  /** For a quiet moment: the messages of `look` with those of the label and the clock, and the fixes of each. */
  fixes: {
    readonly body: { readonly path: string };
    readonly answer: { readonly said: readonly Said[]; readonly fixes: readonly (readonly Offer[])[] };
  };
  /** What can be done at a place or with a selection. */
  offers: {
    readonly body: { readonly path: string; readonly from: number; readonly to: number };
    readonly answer: readonly Offer[];
  };
  hover: {
    readonly body: { readonly path: string; readonly at: number };
    readonly answer: { readonly from: number; readonly to: number; readonly markdown: string } | null;
  };
  complete: { readonly body: { readonly path: string; readonly at: number }; readonly answer: Completions };
  /** The files that a file uses, and those that they use, as far as they are here. */
  uses: {
    readonly body: { readonly path: string };
    readonly answer: readonly { readonly path: string; readonly text: string }[];
  };
  /** Edits that lay the file out. */
  tidy: { readonly body: { readonly path: string }; readonly answer: readonly Edit[] };
  view: {
    readonly body: { readonly path: string; readonly view: View; readonly settings: Settings };
    readonly answer: ViewAnswer;
  };
  /** The view as a file of its own; a card can then be scaled. */
  page: {
    readonly body: { readonly path: string; readonly view: View; readonly settings: Settings };
    readonly answer: Rendered;
  };
}

export type Kind = keyof Questions;

export interface Question<K extends Kind = Kind> {
  readonly number: number;
  readonly kind: K;
  readonly body: Questions[K]['body'];
}

export type Answer =
  | { readonly number: number; readonly answer: Questions[Kind]['answer'] }
  /** The service could not answer: a fault of ours. */
  | { readonly number: number; readonly fault: string };
