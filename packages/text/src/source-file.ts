/** Zero-based line and UTF-16 column, as editors count. Printed positions add one. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** Where each line begins; `\n`, `\r\n` and a lone `\r` each end a line. */
export class LineTable {
  readonly #starts: readonly number[];

  constructor(readonly text: string) {
    const starts = [0];
    for (let index = 0; index < text.length; index++) {
      const code = text.charCodeAt(index);
      if (code === 13) {
        if (text.charCodeAt(index + 1) === 10) index++;
        starts.push(index + 1);
      } else if (code === 10) starts.push(index + 1);
    }
    this.#starts = starts;
  }

  get lineCount(): number {
    return this.#starts.length;
  }

  /** Offset at which a line begins; lines past the end begin at the end of the text. */
  startOf(line: number): number {
    return this.#starts[line] ?? this.text.length;
  }

  /** The text of a line without its line end. */
  lineText(line: number): string {
    return this.text.slice(this.startOf(line), this.startOf(line + 1)).replace(/[\r\n]+$/, '');
  }

  at(offset: number): LineColumn {
    let low = 0;
    let high = this.#starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.#starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low, column: offset - (this.#starts[low] ?? 0) };
  }

  /** The offset of a line and column, kept inside the line. */
  offsetAt(position: LineColumn): number {
    if (position.line < 0) return 0;
    if (position.line >= this.#starts.length) return this.text.length;
    const start = this.startOf(position.line);
    const end = start + this.lineText(position.line).length;
    return Math.max(start, Math.min(start + position.column, end));
  }
}
