import { LineTable, sentence, wayOut, type Diagnostic } from '@quern/text';
import type { VFile } from 'vfile';
import type { Position } from 'unist';

/** A stretch of the Markdown file. */
export interface Where {
  readonly position: Position;
}

/**
 * Says at a place of the Markdown file what is wrong there. Errors are marked fatal, as linters of Markdown expect; the
 * pipeline goes on.
 */
export function report(
  file: VFile,
  where: Where,
  said: {
    readonly reason: string;
    readonly help: string;
    readonly code: string;
    readonly severity: Diagnostic['severity'];
  },
): void {
  const message = file.message(said.reason, { place: where.position, ruleId: said.code, source: 'quern' });
  message.note = said.help;
  message.fatal = said.severity === 'error' ? true : said.severity === 'warning' ? false : undefined;
}

/**
 * Where the lines of a code block stand in the Markdown file: a block may be indented or quoted, so each line is found
 * at the end of the file's own line.
 */
export class BlockPlace {
  readonly #block: LineTable;
  readonly #outer: LineTable;

  constructor(
    block: string,
    markdown: string,
    /** Line of the file, from zero, on which the block's first line stands. */
    readonly firstLine: number,
  ) {
    this.#block = new LineTable(block);
    this.#outer = new LineTable(markdown);
  }

  at(start: number, end: number): Where {
    return { position: { start: this.#point(start), end: this.#point(Math.max(start, end)) } };
  }

  #point(offset: number): Position['start'] {
    const { line, column } = this.#block.at(offset);
    const outer = this.firstLine + line;
    const text = this.#outer.lineText(outer);
    const own = this.#block.lineText(line);
    const ahead = text.endsWith(own) ? text.length - own.length : 0;
    return { line: outer + 1, column: ahead + column + 1, offset: this.#outer.startOf(outer) + ahead + column };
  }
}

/** Everything that was found in a block, at its lines of the Markdown file. */
export function reportBlock(
  file: VFile,
  diagnostics: readonly Diagnostic[],
  path: string,
  place: BlockPlace,
  whole: Where,
): void {
  for (const diagnostic of diagnostics) {
    const { code, severity } = diagnostic;
    const where = diagnostic.place.file === path ? place.at(diagnostic.place.start, diagnostic.place.end) : whole;
    report(file, where, { reason: sentence(diagnostic), help: wayOut(diagnostic), code, severity });
  }
}

/** What was found in another file, at the line of the Markdown that names it, with the place in that file. */
export function reportFile(
  file: VFile,
  diagnostics: readonly Diagnostic[],
  path: string,
  text: string,
  whole: Where,
): void {
  const table = new LineTable(text);
  for (const diagnostic of diagnostics) {
    const { code, severity, place } = diagnostic;
    const { line, column } = table.at(place.start);
    const there = place.file === path ? `${path}:${line + 1}:${column + 1}` : place.file;
    report(file, whole, { reason: `${there}: ${sentence(diagnostic)}`, help: wayOut(diagnostic), code, severity });
  }
}
