import { markdownText } from '../escape.js';

export interface MarkdownColumn {
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** A table of GitHub's Markdown; every cell is escaped. */
export function markdownTable(columns: readonly MarkdownColumn[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [
    line(columns.map(({ title }) => markdownText(title))),
    line(columns.map(({ align }) => (align === 'right' ? '---:' : ':---'))),
    ...rows.map((row) => line(row.map(markdownText))),
  ].join('\n');
}
