/**
 * A hundred ordinary cookbook sentences pasted in, each between two lines of an example, at a place that changes from
 * sentence to sentence: each is told on its own line, or is a fact that says what it says, and no other line changes its
 * kind, its block or its meaning.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { outline, parseDocument, type Line, type Outline } from '@quern/syntax';

const root = join(import.meta.dirname, '..', '..');
const sentences = readFileSync(join(root, 'tests', 'fixtures', 'cookbook-sentences.txt'), 'utf8')
  .trim()
  .split('\n');
const examples = readdirSync(join(root, 'examples'))
  .filter((name) => name.endsWith('.quern'))
  .map((name) => ({ name, lines: readFileSync(join(root, 'examples', name), 'utf8').split('\n') }));

/**
 * Every line that is reckoned with, and the heading of the block it stands under. A `note` is left out: after a line that
 * cannot be read it may count as said of the make below instead of the recipe, which changes no sum.
 */
function filed({ recipes, foods, cultures, kitchens, menus }: Outline): string[] {
  const found: string[] = [];
  const line = (where: string, { text, parsed }: Line): void => {
    if (parsed.content.kind !== 'text-fact') found.push(`${where} > ${text.trim()}`);
  };
  for (const recipe of recipes) {
    const title = recipe.heading.line.text;
    for (const fact of recipe.facts) line(title, fact.line);
    for (const make of recipe.makes) {
      const where = `${title} > ${make.heading?.line.text ?? ''}`;
      for (const fact of make.facts) line(where, fact.line);
      for (const item of make.items) if (item.kind !== 'bad') line(where, item.main.line);
    }
    for (const variant of recipe.variants) for (const fact of variant.facts) line(variant.heading.line.text, fact.line);
  }
  for (const block of [...foods, ...cultures, ...kitchens])
    for (const fact of block.facts) line(block.heading.line.text, fact.line);
  for (const menu of menus)
    for (const course of menu.courses) for (const dish of course.lines) line(course.heading.line.text, dish.main.line);
  return found;
}

test.each(examples)('a hundred sentences in $name', ({ name, lines }) => {
  const before = filed(outline(parseDocument(name, lines.join('\n'))));
  sentences.forEach((sentence, index) => {
    const at = 1 + ((index * 37 + name.length * 11) % (lines.length - 1));
    const document = parseDocument(name, [...lines.slice(0, at), sentence, ...lines.slice(at)].join('\n'));
    const pasted = document.lines[at];
    const after = filed(outline(document)).filter((entry) => !entry.endsWith(`> ${sentence.trim()}`));
    expect(after, `${sentence} (line ${at + 1})`).toEqual(before);
    const isTold = pasted?.parsed.messages.some(({ severity }) => severity === 'error') ?? false;
    expect(isTold || pasted?.parsed.content.kind === 'text-fact', sentence).toBe(true);
  });
});
