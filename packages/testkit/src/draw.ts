import { LineTable, sentence, wayOut, type Diagnostic, type Place } from '@quern/text';
import type { SourceText } from './world.js';

/**
 * Diagnostics as a reader sees them, in the order of their places: the line, what is meant underlined, the sentence, and the
 * way out when `help` is asked for. Lines of other files are named.
 */
export function draw(diagnostics: readonly Diagnostic[], files: readonly SourceText[], help = false): string {
  const tables = new Map(files.map((file) => [file.path, new LineTable(file.text)]));
  const order = new Map(files.map((file, index) => [file.path, index]));
  const sorted = diagnostics.toSorted(
    (a, b) =>
      (order.get(a.place.file) ?? order.size) - (order.get(b.place.file) ?? order.size) ||
      a.place.start - b.place.start ||
      a.place.end - b.place.end ||
      (a.code < b.code ? -1 : 1),
  );
  const main = files[0]?.path;
  return sorted.map((diagnostic) => drawOne(diagnostic, tables, main, help)).join('\n');
}

function drawOne(
  diagnostic: Diagnostic,
  tables: ReadonlyMap<string, LineTable>,
  main: string | undefined,
  help: boolean,
): string {
  const { code, severity, place } = diagnostic;
  const where = place.file === main ? '' : `in ${place.file}\n`;
  const text = [`${where}${underlined(place, tables)} ${severity} ${code}: ${sentence(diagnostic)}`];
  for (const related of diagnostic.related) text.push(`${underlined(related.place, tables)} ${related.note}`);
  if (help) text.push(`Help: ${wayOut(diagnostic)}`);
  return text.join('\n');
}

/** The line of a place and, under it, carets; a place of several lines is underlined on its first. */
function underlined(place: Place, tables: ReadonlyMap<string, LineTable>): string {
  const table = tables.get(place.file);
  if (table === undefined) return `(${place.file})`;
  const { line, column } = table.at(place.start);
  const text = table.lineText(line);
  const width = Math.max(1, Math.min(place.end, table.startOf(line) + text.length) - place.start);
  return `${text}\n${text.slice(0, column).replace(/[^\t]/g, ' ')}${'^'.repeat(width)}`;
}
