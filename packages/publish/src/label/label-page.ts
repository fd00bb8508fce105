import { marketNames, type Declaration, type Explanation, type Label, type Printed } from '@quern/views';
import { htmlPage } from '../card/card-page.js';
import { element, type Child, type ElementNode } from '../html/tree.js';
import { labelStyle } from './label-style.js';
import {
  allergenReasons,
  allergenWords,
  explanationCells,
  figureParts,
  ingredientRuns,
  NO_CAUTION,
  portionWords,
  takenOutRuns,
  titleWords,
  verdictWords,
  weightWord,
  weightWords,
  type Run,
} from './words.js';

export interface LabelPageOptions {
  /** Adds why each allergen is named, and where every figure comes from. */
  readonly explain?: boolean;
}

/** Runs as nodes: allergens are strong, underlined by the style and in capitals already. */
export const runNodes = (runs: readonly Run[]): Child[] =>
  runs.map(({ text, strong }) => (strong ? element('strong', {}, text) : text));

const paragraph = (...children: readonly Child[]): ElementNode => element('p', {}, ...children);
const section = (title: string, ...children: readonly Child[]): ElementNode =>
  element('section', {}, element('h2', {}, title), ...children);

/** The label as a tree, for a page or for a place in one. */
export function labelTree(label: Label, options: LabelPageOptions = {}): ElementNode {
  const takenOut = takenOutRuns(label.statement);
  const notes = [...label.declaration.notes, ...label.statement.notes, ...label.notes];
  return element(
    'article',
    { className: ['quern-label'], lang: label.language },
    element('h1', {}, titleWords(label)),
    label.alerts.length > 0 &&
      element(
        'ul',
        { className: ['quern-alerts'], role: 'list' },
        ...label.alerts.map((one) => element('li', {}, one)),
      ),
    paragraph(weightWords(label)),
    ...label.portions.map((one) => paragraph(portionWords(one))),
    section(
      'Ingredients',
      paragraph(runNodes(ingredientRuns(label.statement))),
      takenOut && paragraph(runNodes(takenOut)),
    ),
    section(
      `Allergens (${marketNames[label.market]})`,
      ...allergenWords(label).map((line) => paragraph(line)),
      options.explain &&
        element('ul', { className: ['quern-notes'] }, ...allergenReasons(label).map((one) => element('li', {}, one))),
    ),
    label.promises.length > 0 && section('Promises', ...label.promises.map((one) => paragraph(verdictWords(one)))),
    section(label.declaration.heading, declarationTable(label.declaration)),
    element('ul', { className: ['quern-notes'] }, ...notes.map((note) => element('li', {}, note))),
    section('Cautions', cautions(label, options), element('p', { className: ['quern-quiet'] }, label.guidance)),
    options.explain &&
      section(
        'Where the figures come from',
        ...label.explanations.map(explanationTable),
        label.sources.length > 0 &&
          element(
            'ul',
            { className: ['quern-notes'] },
            ...label.sources.map(({ id, text }) => element('li', {}, `${id}: ${text}`)),
          ),
      ),
  );
}

function cautions(label: Label, options: LabelPageOptions): Child {
  if (label.cautions.length === 0) return paragraph(NO_CAUTION);
  return element(
    'ul',
    { className: ['quern-cautions'] },
    ...label.cautions.map(({ weight, title, text, reason, source }) =>
      element(
        'li',
        { className: [`quern-${weight}`] },
        element('b', {}, `${weightWord(weight)}: ${title}.`),
        ` ${text}`,
        options.explain && element('p', { className: ['quern-quiet'] }, `Why: ${reason} Source: ${source}.`),
      ),
    ),
  );
}

/** A figure and its ends, each unbroken; a line may end between the two. */
function figureNodes(printed: Printed): Child[] {
  const { figure, range } = figureParts(printed);
  const whole = (text: string): ElementNode =>
    element('span', {}, text.replace(/(\d) (?=\p{L}|%)(?!to )/gu, '$1\u00a0'));
  return range === '' ? [whole(figure)] : [whole(figure), ' ', whole(range)];
}

function declarationTable({ heading, columns, percentHeading, rows }: Declaration): ElementNode {
  const head = element(
    'tr',
    {},
    element('th', { scope: 'col' }, 'Nutrient'),
    ...columns.map((column) => element('th', { scope: 'col' }, column)),
    percentHeading !== undefined && element('th', { scope: 'col' }, '%'),
  );
  const body = rows.map(({ name, level, values, percents }) =>
    element(
      'tr',
      { className: [`quern-level-${level}`] },
      element('th', { scope: 'row' }, name),
      ...values.map((value) => element('td', {}, figureNodes(value))),
      percentHeading !== undefined && element('td', {}, ...percents.map((one) => one && figureNodes(one))),
    ),
  );
  // A table that can be scrolled must be reachable by keyboard.
  return element(
    'div',
    { className: ['quern-scroll'], role: 'region', ariaLabel: heading, tabIndex: 0 },
    element('table', {}, element('thead', {}, head), element('tbody', {}, ...body)),
    percentHeading !== undefined && element('p', { className: ['quern-quiet'] }, `%: ${percentHeading}`),
  );
}

function explanationTable({ name, unit, total, atLeast, rows }: Explanation): ElementNode {
  const cells = (texts: readonly string[]): ElementNode =>
    element(
      'tr',
      {},
      ...texts.map((text, index) => element(index === 0 ? 'th' : 'td', index === 0 ? { scope: 'row' } : {}, text)),
    );
  const title = `${name}: ${atLeast ? 'at least ' : ''}${total} ${unit} in all`;
  return element(
    'div',
    { className: ['quern-scroll'], role: 'region', ariaLabel: title, tabIndex: 0 },
    element(
      'table',
      {},
      element('caption', {}, title),
      element('tbody', {}, ...rows.map((row) => cells(explanationCells(row, unit)))),
    ),
  );
}

/** The label as a page of its own. */
export function labelPage(label: Label, options: LabelPageOptions = {}): string {
  return htmlPage({
    title: `${titleWords(label)}: label`,
    language: label.language,
    style: `body{margin:0}${labelStyle}`,
    scriptHashes: [],
    body: [element('main', {}, labelTree(label, options))],
  });
}
