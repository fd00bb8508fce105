import type { BasketData } from '@quern/views';
import { plainText } from '../escape.js';
import { displayWidth, pad, wrapWords } from '../terminal/columns.js';
import { NO_PAINT, type Paint } from '../terminal/paint.js';
import { listLine, ownedLines, recipeLines, type ListLine } from './said.js';

export interface BasketTextOptions {
  readonly paint?: Paint;
  /** Columns of a line; 80 unless given. */
  readonly width?: number;
}

/** The shopping list as aligned text. */
export function basketText(data: BasketData, options: BasketTextOptions = {}): string {
  const paint = options.paint ?? NO_PAINT;
  const width = options.width ?? 80;
  const shelves = data.shelves.map(({ name, items }) => ({ name, lines: items.map((item) => listLine(item, data)) }));
  const all = shelves.flatMap(({ lines }) => lines);
  const widest = (key: 'amount' | 'us'): number =>
    all.reduce((most, line) => Math.max(most, displayWidth(plainText(line[key]))), 0);
  const columns = { amount: widest('amount'), us: widest('us') };
  const blocks = [
    [paint.strong('shopping list'), ...recipeLines(data).map((line) => `for ${plainText(line)}`)],
    ...shelves.map(({ name, lines }) => [
      paint.strong(name),
      ...lines.flatMap((line) => itemLines(line, columns, width)),
    ]),
    ...(data.owned.length > 0
      ? [[paint.strong('at hand'), ...ownedLines(data).map((line) => `  ${plainText(line)}`)]]
      : []),
    ...(data.warnings.length > 0
      ? [[paint.warning('what to watch'), ...data.warnings.flatMap((text) => bullet(text, width))]]
      : []),
  ];
  return blocks.map((lines) => lines.map((line) => line.trimEnd()).join('\n')).join('\n\n') + '\n';
}

function itemLines(
  line: ListLine,
  columns: { readonly amount: number; readonly us: number },
  width: number,
): readonly string[] {
  const cell = (text: string, size: number, align: 'left' | 'right'): string =>
    size === 0 ? '' : pad(plainText(text), size, align) + '  ';
  const left = '  ' + cell(line.amount, columns.amount, 'right') + cell(line.us, columns.us, 'left');
  const blank = ' '.repeat(displayWidth(left));
  const words = [line.name, ...line.more].join('; ');
  return wrapWords(words, Math.max(24, width - displayWidth(left))).map(
    (part, index) => (index === 0 ? left : blank) + part,
  );
}

const bullet = (text: string, width: number): readonly string[] =>
  wrapWords(text, width - 4).map((part, index) => (index === 0 ? `  - ${part}` : `    ${part}`));
