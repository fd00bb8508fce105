import { shift, type Place } from './span.js';
import { messages, type MessageCode, type MessageArguments } from './messages/index.js';

export type Severity = 'error' | 'warning' | 'hint';

/** Something said about a place. A fact: the sentence is rendered from the registry, so that a fix or a test never parses prose. */
export interface Diagnostic {
  readonly code: MessageCode;
  readonly severity: Severity;
  readonly place: Place;
  readonly args: Readonly<Record<string, string>>;
  /** Other places that take part, each with a few words ('made here'). */
  readonly related: readonly { readonly place: Place; readonly note: string }[];
}

/** Makes a diagnostic; the arguments are checked against the message's own text by the type. */
export function diagnose<C extends MessageCode>(
  code: C,
  place: Place,
  args: MessageArguments<C>,
  related: Diagnostic['related'] = [],
): Diagnostic {
  return { code, severity: messages[code].severity, place, args: args as Record<string, string>, related };
}

/** The same message about a text that has moved in its file by so many characters; its places are all of that file. */
export function movedBy(diagnostic: Diagnostic, characters: number): Diagnostic {
  const { code, severity, args, related } = diagnostic;
  return {
    code,
    severity,
    place: placeMovedBy(diagnostic.place, characters),
    args,
    related:
      related.length === 0
        ? related
        : related.map(({ place, note }) => ({ place: placeMovedBy(place, characters), note })),
  };
}

const placeMovedBy = (place: Place, characters: number): Place => ({ file: place.file, ...shift(place, characters) });

/** What every pass gives back: a value, whatever was wrong, and never an exception. */
export interface Outcome<T> {
  readonly value: T;
  readonly diagnostics: readonly Diagnostic[];
}

/** The sentence of a diagnostic, in words a cook understands. */
export function sentence(diagnostic: Diagnostic): string {
  return fill(messages[diagnostic.code].text, diagnostic.args);
}

/** The way out that goes with it. */
export function wayOut(diagnostic: Diagnostic): string {
  return fill(messages[diagnostic.code].help, diagnostic.args);
}

function fill(template: string, args: Readonly<Record<string, string>>): string {
  return template.replace(/\{(\w+)\}/g, (whole, name: string) => args[name] ?? whole);
}

/** Order of the text: by where a message begins, then by where it ends. */
export function byPlace(a: Diagnostic, b: Diagnostic): number {
  return a.place.start - b.place.start || a.place.end - b.place.end;
}
