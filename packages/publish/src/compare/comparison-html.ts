import type { ComparisonGroup, ComparisonReport, ComparisonRow, FileReport, WordRun } from '@quern/views';
import { htmlPage } from '../card/card-page.js';
import { typesetFigure } from '../card/typeset.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { comparisonStyle } from './comparison-style.js';
import { namesOf } from './names.js';

export interface ComparisonPageOptions {
  /** Of the names, a language tag; `en` unless given. */
  readonly language?: string;
}

/** Comparisons as a page of their own, both sides beside each other: one file, no script, no request to anybody. */
export function comparisonPage(reports: readonly FileReport[], options: ComparisonPageOptions = {}): string {
  const [first] = reports.flatMap(({ recipes }) => recipes);
  return htmlPage({
    title: first ? `What changed in ${first.title}` : 'What changed',
    language: options.language ?? 'en',
    style: comparisonStyle,
    scriptHashes: [],
    body: [
      element(
        'main',
        {},
        ...reports.flatMap((report) => [
          reports.length > 1 && element('p', { className: 'quern-file' }, namesOf(report)),
          comparisonTree(report),
        ]),
      ),
    ],
  });
}

/** The comparison as a tree, to stand in another page. */
export function comparisonTree(report: FileReport): ElementNode {
  const sides = { before: 'before', after: 'after' };
  return element(
    'article',
    { className: 'quern-compare' },
    ...report.recipes.map(recipeTree),
    report.others.length > 0 &&
      element(
        'section',
        {},
        element('h2', {}, 'Beside the recipes'),
        ...report.others.map((group) => groupTree(group, sides)),
      ),
    report.same && element('p', { className: 'quern-summary' }, 'Nothing has changed.'),
    !report.same &&
      report.unchanged.length > 0 &&
      element('p', { className: 'quern-quiet' }, `The same as before: ${report.unchanged.join(', ')}.`),
  );
}

function recipeTree(report: ComparisonReport): ElementNode {
  return element(
    'section',
    { className: 'quern-recipe' },
    element('h1', {}, report.title),
    element('p', { className: 'quern-summary' }, typesetFigure(report.summary)),
    ...report.sections.map((section) =>
      element(
        'section',
        { className: `quern-for-${section.audience}` },
        element('h2', {}, section.title),
        ...section.groups.map((group) => groupTree(group, report.sides)),
      ),
    ),
  );
}

function groupTree({ title, rows }: ComparisonGroup, { before, after }: ComparisonReport['sides']): ElementNode {
  const heads = [title, before, after, ''];
  return element(
    'table',
    {},
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        ...heads.map((head, index) =>
          element(index === 0 || head !== '' ? 'th' : 'td', { scope: head === '' ? undefined : 'col' }, head),
        ),
      ),
    ),
    element('tbody', {}, ...rows.map(rowTree)),
  );
}

function rowTree(row: ComparisonRow): ElementNode {
  return element(
    'tr',
    { className: row.tone === 'plain' ? undefined : `quern-${row.tone}` },
    element('th', { scope: 'row' }, row.label),
    element('td', {}, ...side(row, 'before')),
    element('td', {}, ...side(row, 'after')),
    element('td', { className: 'quern-note' }, typesetFigure(row.note)),
  );
}

/** What one side says; nothing is said with a dash, so that an empty cell is not taken for a fault. */
function side(row: ComparisonRow, which: 'before' | 'after'): readonly Child[] {
  if (row.runs) return words(row.runs, which);
  const text = row[which];
  if (text === '') return [element('span', { className: 'quern-none' }, '–')];
  const mark = which === 'before' ? 'del' : 'ins';
  const alone = (which === 'before' ? row.after : row.before) === '';
  const lines = text
    .split('\n')
    .flatMap((line, index): Child[] => [index > 0 && element('br', {}), typesetFigure(line)]);
  return alone ? [element(mark, {}, ...lines)] : lines;
}

function words(runs: readonly WordRun[], which: 'before' | 'after'): readonly Child[] {
  const gone = which === 'before' ? 'added' : 'removed';
  const mark = which === 'before' ? 'del' : 'ins';
  return runs
    .filter(({ kind }) => kind !== gone)
    .flatMap(({ kind, text }): Child[] => (kind === 'same' ? [text] : marked(mark, text)));
}

/** The space around words that differ is not marked with them. */
function marked(mark: 'del' | 'ins', text: string): Child[] {
  const words = text.trim();
  if (words === '') return [text];
  const [before = '', after = ''] = text.split(words);
  return [before, element(mark, {}, words), after];
}
