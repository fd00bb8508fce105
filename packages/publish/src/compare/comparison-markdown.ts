import type { ComparisonGroup, ComparisonReport, ComparisonRow, FileReport } from '@quern/views';
import { markdownText } from '../escape.js';
import { namesOf } from './names.js';
import { markdownCells, type MarkdownColumn } from '../table/markdown-table.js';

/** Comparisons of files as Markdown with tables, for a pull request. */
export function comparisonMarkdown(reports: readonly FileReport[]): string {
  const blocks = reports.flatMap((report) => [
    ...(reports.length > 1 ? [`# ${markdownText(namesOf(report))}`] : []),
    ...fileBlocks(report),
  ]);
  return blocks.join('\n\n') + '\n';
}

function fileBlocks(report: FileReport): readonly string[] {
  const unchanged = !report.same && report.unchanged.length > 0;
  return [
    ...report.recipes.flatMap(recipeBlocks),
    ...groupBlocks(report.others, { before: 'before', after: 'after' }),
    ...(report.same ? ['Nothing has changed.'] : []),
    ...(unchanged ? [`The same as before: ${report.unchanged.map(markdownText).join(', ')}.`] : []),
  ];
}

function recipeBlocks(report: ComparisonReport): readonly string[] {
  return [
    `## ${markdownText(report.title)}`,
    `**${markdownText(report.summary)}**`,
    ...report.sections.flatMap((section) => [
      `### ${markdownText(section.title)}`,
      ...groupBlocks(section.groups, report.sides),
    ]),
  ];
}

function groupBlocks(groups: readonly ComparisonGroup[], sides: ComparisonReport['sides']): readonly string[] {
  return groups.map((group) => table(group, sides));
}

function table({ title, rows }: ComparisonGroup, { before, after }: ComparisonReport['sides']): string {
  const noted = rows.some(({ note }) => note !== '');
  const columns: MarkdownColumn[] = [title, before, after, ...(noted ? [''] : [])].map((name) => ({
    title: name,
    align: 'left',
  }));
  return markdownCells(
    columns,
    rows.map((row) => cells(row, noted)),
  );
}

/** Cells as Markdown. What is alarming is bold, words that went are struck out, words that came are bold. */
function cells(row: ComparisonRow, noted: boolean): readonly string[] {
  const label = row.tone === 'alarm' ? `**${markdownText(row.label)}**` : markdownText(row.label);
  const note = noted ? [markdownText(row.note)] : [];
  if (!row.runs) return [label, lines(row.before), lines(row.after), ...note];
  const side = (gone: 'added' | 'removed', mark: string): string =>
    (row.runs ?? [])
      .filter(({ kind }) => kind !== gone)
      .map(({ kind, text }) => around(text, kind === 'same' ? '' : mark))
      .join('');
  return [label, side('added', '~~'), side('removed', '**'), ...note];
}

/** Words in their marks. Marks hold only against the words themselves, so the space around these stays outside. */
function around(text: string, mark: string): string {
  const words = text.trim();
  if (words === '') return text;
  const [before = '', after = ''] = text.split(words);
  return `${before}${mark}${markdownText(words)}${mark}${after}`;
}

const lines = (text: string): string => text.split('\n').map(markdownText).join('<br>');
