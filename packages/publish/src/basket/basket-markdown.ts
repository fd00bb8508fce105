import type { BasketData } from '@quern/views';
import { markdownText } from '../escape.js';
import { listLine, ownedLines, recipeLines } from './said.js';

/** The shopping list as Markdown: task items, so that it can be ticked off where it is shown. */
export function basketMarkdown(data: BasketData): string {
  const blocks = [
    '# Shopping list',
    recipeLines(data)
      .map((line) => `- for ${markdownText(line)}`)
      .join('\n'),
    ...data.shelves.flatMap(({ name, items }) => [
      `## ${markdownText(name)}`,
      items
        .map((item) => {
          const { amount, us, name: what, more } = listLine(item, data);
          const told = us === '' ? amount : `${amount} (${us})`;
          return `- [ ] ${markdownText([`${told} ${what}`.trim(), ...more].join('; '))}`;
        })
        .join('\n'),
    ]),
    ...(data.owned.length > 0
      ? [
          '## At hand',
          ownedLines(data)
            .map((line) => `- ${markdownText(line)}`)
            .join('\n'),
        ]
      : []),
    ...(data.warnings.length > 0
      ? ['## What to watch', data.warnings.map((text) => `- ${markdownText(text)}`).join('\n')]
      : []),
  ];
  return blocks.join('\n\n') + '\n';
}
