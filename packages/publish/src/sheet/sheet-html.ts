import type { SheetData, SheetMake, SheetRow, SheetStep } from '@quern/views';
import { htmlPage } from '../card/card-page.js';
import { typesetFigure } from '../card/typeset.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import {
  columnsOf,
  formulaFacts,
  inCells,
  outCells,
  remarkText,
  stepHead,
  titleOf,
  totalCells,
  yieldLines,
  type WeighColumn,
  type WeighRow,
} from './cells.js';
import { sheetStyle } from './sheet-style.js';

/** The sheet as a page of its own, to be printed or shown beside the scale: one file, no script, no request to anybody. */
export function sheetHtml(data: SheetData): string {
  return htmlPage({
    title: titleOf(data),
    language: data.language,
    style: sheetStyle,
    scriptHashes: [],
    body: [element('main', {}, sheetTree(data))],
  });
}

/** The sheet as a tree, to stand in another page. */
export function sheetTree(data: SheetData): ElementNode {
  return element(
    'article',
    { className: 'quern-sheet' },
    element('h1', {}, titleOf(data)),
    element(
      'ul',
      { className: 'quern-sheet-yield' },
      ...yieldLines(data).map((line) => element('li', {}, typesetFigure(line))),
    ),
    ...data.makes.map((make) => makeTree(make, data)),
    data.formula && formulaTree(data.formula),
    data.warnings.length > 0 && warningTree(data),
  );
}

function makeTree(make: SheetMake, data: SheetData): ElementNode {
  const columns = columnsOf(data);
  return element(
    'section',
    {},
    !make.implicit && element('h2', {}, make.name),
    element(
      'table',
      {},
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          ...columns.map((column) => element('th', { scope: 'col', className: `quern-${column.key}` }, column.title)),
        ),
      ),
      element('tbody', {}, ...make.rows.flatMap((row) => rowTrees(row, data, columns))),
      element('tfoot', {}, weighTree(totalCells(make, data), columns)),
    ),
  );
}

function rowTrees(row: SheetRow, data: SheetData, columns: readonly WeighColumn[]): readonly ElementNode[] {
  if (row.kind === 'in') return inCells(row, data).map((cells) => weighTree(cells, columns));
  if (row.kind === 'out') return [weighTree(outCells(row, data), columns, 'quern-out')];
  const words =
    row.kind === 'step'
      ? stepWords(row)
      : [element('p', { className: 'quern-remark' }, remarkText(row.kind, row.text))];
  return [element('tr', { className: 'quern-step' }, element('td', { colSpan: columns.length }, ...words))];
}

function weighTree(row: WeighRow, columns: readonly WeighColumn[], className?: string): ElementNode {
  const cells = columns.map(({ key }): Child => {
    if (key !== 'what') return element('td', { className: `quern-${key}` }, typesetFigure(row[key]));
    const note = row.note !== '' && element('span', { className: 'quern-note' }, `, ${row.note}`);
    return element('th', { scope: 'row', className: 'quern-what' }, row.what, note);
  });
  return element('tr', { className }, ...cells);
}

function stepWords(step: SheetStep): readonly Child[] {
  return [
    element('p', { className: 'quern-clock' }, typesetFigure(stepHead(step))),
    ...step.sentences.map((sentence) => element('p', {}, sentence)),
    ...step.care.map(({ every, takes, sentence }) =>
      element(
        'p',
        {},
        element(
          'span',
          { className: 'quern-clock' },
          typesetFigure(`every ${every}${takes === undefined ? '' : `, ${takes}`}`),
        ),
        ` ${sentence}`,
      ),
    ),
  ];
}

function formulaTree(formula: NonNullable<SheetData['formula']>): ElementNode {
  return element(
    'section',
    {},
    element('h2', {}, "Baker's percentages"),
    element(
      'table',
      {},
      element(
        'thead',
        {},
        element('tr', {}, ...['on flour', 'weight', 'food'].map((title) => element('th', { scope: 'col' }, title))),
      ),
      element(
        'tbody',
        {},
        ...formula.rows.map((row) =>
          element(
            'tr',
            {},
            element('td', { className: 'quern-percent' }, typesetFigure(row.percent.text)),
            element('td', { className: 'quern-weight' }, typesetFigure(row.weight.text)),
            element('th', { scope: 'row', className: 'quern-what' }, row.name),
          ),
        ),
      ),
    ),
    element(
      'ul',
      {},
      ...formulaFacts(formula).map(({ name, value }) => element('li', {}, `${name}: ${typesetFigure(value)}`)),
    ),
  );
}

function warningTree(data: SheetData): ElementNode {
  return element(
    'section',
    { className: 'quern-watch' },
    element('h2', {}, 'What to watch'),
    element('ul', {}, ...data.warnings.map(({ text }) => element('li', {}, text))),
  );
}
