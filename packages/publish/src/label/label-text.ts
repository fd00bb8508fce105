import { marketNames, type Declaration, type Explanation, type Label } from '@quern/views';
import { plainText } from '../escape.js';
import {
  allergenReasons,
  allergenWords,
  explanationCells,
  figureWords,
  ingredientRuns,
  NO_CAUTION,
  portionWords,
  takenOutRuns,
  titleWords,
  verdictWords,
  weightWord,
  weightWords,
} from './words.js';

export interface LabelTextOptions {
  /** Adds why each allergen is named, and where every figure comes from. */
  readonly explain?: boolean;
  /** Characters in a line, 80 by default. */
  readonly width?: number;
}

/** The label as plain text. */
export function labelText(label: Label, options: LabelTextOptions = {}): string {
  const width = options.width ?? 80;
  const fold = (text: string, indent = ''): string => wrap(plainText(text), width, indent);
  const title = plainText(titleWords(label));
  const blocks: (string | undefined)[] = [
    [title, '='.repeat([...title].length)].join('\n'),
    label.alerts.length > 0 ? label.alerts.map((alert) => fold(`! ${alert}`, '  ')).join('\n') : undefined,
    [weightWords(label), ...label.portions.map(portionWords)].map((line) => fold(line)).join('\n'),
    fold(`Ingredients: ${runText(ingredientRuns(label.statement))}`),
    takenOut(label, fold),
    heading(
      `Allergens (${marketNames[label.market]})`,
      allergenWords(label).map((line) => fold(line)),
    ),
    options.explain
      ? allergenReasons(label)
          .map((line) => fold(`- ${line}`, '  '))
          .join('\n')
      : undefined,
    label.promises.length > 0
      ? heading(
          'Promises',
          label.promises.map((one) => fold(verdictWords(one))),
        )
      : undefined,
    declarationText(label.declaration, fold),
    [...label.declaration.notes, ...label.statement.notes, ...label.notes]
      .map((note) => fold(`- ${note}`, '  '))
      .join('\n'),
    heading('Cautions', cautionLines(label, fold, options.explain ?? false)),
    options.explain ? label.explanations.map((one) => explanationText(one)).join('\n\n') : undefined,
    options.explain && label.sources.length > 0
      ? heading(
          'Sources',
          label.sources.map(({ id, text }) => fold(`${id}: ${text}`, '  ')),
        )
      : undefined,
  ];
  return blocks.filter((block) => block !== undefined && block !== '').join('\n\n') + '\n';
}

const runText = (runs: readonly { readonly text: string }[]): string => runs.map(({ text }) => text).join('');

function takenOut(label: Label, fold: (text: string) => string): string | undefined {
  const runs = takenOutRuns(label.statement);
  return runs && fold(runText(runs));
}

const heading = (title: string, lines: readonly string[]): string =>
  [title, '-'.repeat(title.length), ...lines].join('\n');

function cautionLines(label: Label, fold: (text: string, indent?: string) => string, explain: boolean): string[] {
  const lines = label.cautions.flatMap(({ weight, title, text, reason, source }) => [
    fold(`${weightWord(weight)}: ${title}. ${text}`, '  '),
    ...(explain ? [fold(`  Why: ${reason} Source: ${source}.`, '  ')] : []),
  ]);
  return [...(lines.length > 0 ? lines : [NO_CAUTION]), fold(label.guidance)];
}

/** The declaration as a table of aligned columns. */
function declarationText(
  { heading: title, columns, percentHeading, rows }: Declaration,
  fold: (text: string, indent?: string) => string,
): string {
  const body = rows.map(({ name, level, values, percents }) => [
    '  '.repeat(level) + name,
    ...values.map(figureWords),
    ...(percentHeading === undefined ? [] : [percents.map((one) => (one ? figureWords(one) : '')).join('')]),
  ]);
  const head = ['', ...columns, ...(percentHeading === undefined ? [] : ['%'])];
  const key = percentHeading === undefined ? [] : [fold(`%: ${percentHeading}`, '   ')];
  return [title, '-'.repeat(title.length), ...table([head, ...body]), ...key].join('\n');
}

function explanationText({ name, unit, total, atLeast, rows }: Explanation): string {
  const body = rows.map((row) => {
    const [food = '', ...figures] = explanationCells(row, unit).map(plainText);
    return [`  ${food}`, ...figures];
  });
  return [`${name}: ${atLeast ? 'at least ' : ''}${total} ${unit} in all`, ...table(body)].join('\n');
}

/** Rows as lines: the first column to the left, the others to the right. */
function table(rows: readonly (readonly string[])[]): string[] {
  const widths: number[] = [];
  for (const row of rows)
    for (const [index, cell] of row.entries()) widths[index] = Math.max(widths[index] ?? 0, [...cell].length);
  const pad = (cell: string, index: number): string => {
    const gap = ' '.repeat(Math.max((widths[index] ?? 0) - [...cell].length, 0));
    return index === 0 ? cell + gap : gap + cell;
  };
  return rows.map((row) => row.map(pad).join('  ').trimEnd());
}

/** Folds a text at spaces; further lines begin with the indent. */
function wrap(text: string, width: number, indent: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && [...line].length + 1 + [...word].length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line].join('\n');
}
