/** A line cut out of a file. */
export interface CutLine {
  /** Offset of its first character in the file. */
  readonly start: number;
  /** Without its line end. */
  readonly text: string;
  /** `\n`, `\r\n`, `\r`, or empty for the last line. */
  readonly ending: string;
}

const LF = 10;
const BOM = 0xfeff;

/** Whether a file begins with a byte-order mark. */
export function hasByteOrderMark(text: string): boolean {
  return text.charCodeAt(0) === BOM;
}

/**
 * The lines of a file: `\n`, `\r\n` and a lone `\r` each end one. There is always a last line, empty when the file ends
 * with a line end. A byte-order mark belongs to no line; with it, the lines' texts and endings put together are the file.
 */
export function cutLines(text: string): CutLine[] {
  const lines: CutLine[] = [];
  let start = hasByteOrderMark(text) ? 1 : 0;
  let cr = text.indexOf('\r', start);
  let lf = text.indexOf('\n', start);
  while (lf >= 0 || cr >= 0) {
    const end = cr < 0 || (lf >= 0 && lf < cr) ? lf : cr;
    const ending = end === lf ? '\n' : text.charCodeAt(end + 1) === LF ? '\r\n' : '\r';
    lines.push({ start, text: text.slice(start, end), ending });
    start = end + ending.length;
    if (cr >= 0 && cr < start) cr = text.indexOf('\r', start);
    if (lf >= 0 && lf < start) lf = text.indexOf('\n', start);
  }
  lines.push({ start, text: text.slice(start), ending: '' });
  return lines;
}

/** The line end that most lines of a file have; `\n` when there is none to go by. */
export function usualEnding(lines: readonly { readonly ending: string }[]): string {
  const counts = new Map<string, number>();
  for (const { ending } of lines) if (ending !== '') counts.set(ending, (counts.get(ending) ?? 0) + 1);
  let best = '\n';
  for (const [ending, count] of counts) if (count > (counts.get(best) ?? 0)) best = ending;
  return best;
}
