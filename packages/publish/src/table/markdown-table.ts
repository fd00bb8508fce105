import { markdownText } from '../escape.js';

export interface MarkdownColumn {
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** A table of GitHub's Markdown; every cell is escaped. */
export function markdownTable(columns: readonly MarkdownColumn[], rows: readonly (readonly string[])[]): string {
  return markdownCells(
    columns,
    rows.map((row) => row.map(markdownText)),
  );
}

/** A table whose cells are Markdown already, each on one line and escaped by whoever made it. */
export function markdownCells(columns: readonly MarkdownColumn[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    line(columns.map(({ title }) => markdownText(title))),
    line(columns.map(({ align }) => (align === 'right' ? '---:' : ':---'))),
    ...rows.map(line),
  ].join('\n');
}
