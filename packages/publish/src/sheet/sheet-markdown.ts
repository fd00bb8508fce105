import type { SheetData, SheetMake, SheetStep } from '@quern/views';
import { markdownText } from '../escape.js';
import { markdownTable } from '../table/markdown-table.js';
import {
  columnsOf,
  inCells,
  outCells,
  remarkText,
  stepHead,
  titleOf,
  totalCells,
  yieldLines,
  formulaFacts,
  type WeighRow,
} from './cells.js';

/** The sheet as Markdown (CommonMark with tables): a table for what is weighed, paragraphs for what is done. */
export function sheetMarkdown(data: SheetData): string {
  const blocks = [
    `# ${markdownText(titleOf(data))}`,
    yieldLines(data)
      .map((line) => `- ${markdownText(line)}`)
      .join('\n'),
    ...data.makes.flatMap((make) => makeBlocks(make, data)),
    ...(data.formula ? formulaBlocks(data.formula) : []),
    ...(data.warnings.length > 0
      ? ['## What to watch', data.warnings.map(({ text }) => `- ${markdownText(text)}`).join('\n')]
      : []),
  ];
  return blocks.join('\n\n') + '\n';
}

function makeBlocks(make: SheetMake, data: SheetData): readonly string[] {
  const blocks: string[] = make.implicit ? [] : [`## ${markdownText(make.name)}`];
  let waiting: WeighRow[] = [];
  const table = (): void => {
    if (waiting.length > 0) blocks.push(weighTable(waiting, data));
    waiting = [];
  };
  for (const row of make.rows) {
    if (row.kind === 'in') waiting.push(...inCells(row, data));
    else if (row.kind === 'out') waiting.push(outCells(row, data));
    else {
      table();
      blocks.push(row.kind === 'step' ? stepBlock(row) : `> ${markdownText(remarkText(row.kind, row.text))}`);
    }
  }
  waiting.push(totalCells(make, data));
  table();
  return blocks;
}

function weighTable(rows: readonly WeighRow[], data: SheetData): string {
  const columns = columnsOf(data);
  const what = (row: WeighRow): string => (row.note === '' ? row.what : `${row.what}, ${row.note}`);
  return markdownTable(
    columns.map(({ title, align }) => ({ title, align })),
    rows.map((row) => columns.map(({ key }) => (key === 'what' ? what(row) : row[key]))),
  );
}

function stepBlock(step: SheetStep): string {
  const care = step.care.map(
    ({ every, takes, sentence }) => `every ${every}${takes === undefined ? '' : `, ${takes}`}: ${sentence}`,
  );
  const lines = [...step.sentences, ...care].map(markdownText);
  return `**${markdownText(stepHead(step))}**: ${lines.join('  \n')}`;
}

function formulaBlocks(formula: NonNullable<SheetData['formula']>): readonly string[] {
  const table = markdownTable(
    [
      { title: 'on flour', align: 'right' },
      { title: 'weight', align: 'right' },
      { title: 'food', align: 'left' },
    ],
    formula.rows.map((row) => [row.percent.text, row.weight.text, row.name]),
  );
  const facts = formulaFacts(formula).map(({ name, value }) => `- ${markdownText(`${name}: ${value}`)}`);
  return ["## Baker's percentages", table, facts.join('\n')];
}
