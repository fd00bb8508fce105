import { LineTable, sentence, wayOut, type Diagnostic, type MessageCode, type Place, type Severity } from '@quern/text';

/** A position as people and tools count it: lines and columns from one, columns in UTF-16 units. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** A diagnostic as plain data, with its words and its source line: for every output, and to be sent or stored. */
export interface Found {
  readonly file: string;
  readonly start: Position;
  readonly end: Position;
  readonly code: MessageCode;
  readonly severity: Severity;
  readonly message: string;
  readonly help: string;
  /** The line of the file in which it begins. */
  readonly source: string;
  readonly related: readonly { readonly file: string; readonly start: Position; readonly note: string }[];
}

/** Lines and columns of places in files whose texts are given; a place in an unknown file is at its beginning. */
class Places {
  readonly #tables = new Map<string, LineTable | undefined>();

  constructor(readonly textOf: (file: string) => string | undefined) {}

  table(file: string): LineTable | undefined {
    if (!this.#tables.has(file)) {
      const text = this.textOf(file);
      this.#tables.set(file, text === undefined ? undefined : new LineTable(text));
    }
    return this.#tables.get(file);
  }

  position(file: string, offset: number): Position {
    const table = this.table(file);
    if (!table) return { line: 1, column: 1 };
    const { line, column } = table.at(offset);
    // A byte-order mark counts in offsets and is not a column that anybody sees.
    const mark = line === 0 && table.text.startsWith('\uFEFF') ? 1 : 0;
    return { line: line + 1, column: Math.max(1, column + 1 - mark) };
  }

  source({ file, start }: Place): string {
    const table = this.table(file);
    return table ? table.lineText(table.at(start).line).replace(/^\uFEFF/, '') : '';
  }
}

/** What was found, told in words, in the order given. `textOf` gives the text of a file by its path. */
export function tellDiagnostics(
  diagnostics: readonly Diagnostic[],
  textOf: (file: string) => string | undefined,
): readonly Found[] {
  const places = new Places(textOf);
  return diagnostics.map((diagnostic) => {
    const { place, code, severity, related } = diagnostic;
    return {
      file: place.file,
      start: places.position(place.file, place.start),
      end: places.position(place.file, place.end),
      code,
      severity,
      message: sentence(diagnostic),
      help: wayOut(diagnostic),
      source: places.source(place),
      related: related.map(({ place: other, note }) => ({
        file: other.file,
        start: places.position(other.file, other.start),
        note,
      })),
    };
  });
}

export interface Tally {
  readonly errors: number;
  readonly warnings: number;
  readonly hints: number;
}

export function tally(found: readonly Found[]): Tally {
  const count = (severity: Severity): number => found.filter((one) => one.severity === severity).length;
  return { errors: count('error'), warnings: count('warning'), hints: count('hint') };
}

/** '2 errors, 1 warning'; 'nothing to report' when there is nothing. */
export function tallyText({ errors, warnings, hints }: Tally): string {
  const part = (count: number, one: string): string[] =>
    count === 0 ? [] : [`${count} ${one}${count === 1 ? '' : 's'}`];
  const parts = [...part(errors, 'error'), ...part(warnings, 'warning'), ...part(hints, 'hint')];
  return parts.length === 0 ? 'nothing to report' : parts.join(', ');
}
