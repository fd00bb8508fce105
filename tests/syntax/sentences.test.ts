/** Sentences of cookbooks, pasted where lines should be. Written by hand for this test; many begin with a word of ours. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { messages } from '@quern/text';
import { outline, parseDocument, parseLine } from '@quern/syntax';

const sentences = readFileSync(join(import.meta.dirname, '../fixtures/cookbook-sentences.txt'), 'utf8')
  .trim()
  .split('\n');

/** Facts whose value is a sentence: "Note that …" is a note, and that is what it says. */
const rightlyFacts = new Set(['note', 'warning', 'serve with']);

function rightly(text: string): boolean {
  const { content } = parseLine(text);
  return (
    content.kind === 'text-fact' &&
    rightlyFacts.has(content.word) &&
    text.toLowerCase().startsWith(content.word) &&
    text.endsWith(content.words.text)
  );
}

const refused = (text: string): boolean => parseLine(text).messages.some(({ severity }) => severity === 'error');

/** A recipe with the sentence pasted in at some place; after an empty line or not. */
const around = (pasted: string, gap: string): string => `recipe Soup

make stock
  500 g water
  hob 10 min: Boil the water.
${gap}${pasted}
  20 g butter
  hands 1 min: Stir in the butter.

make soup
  all stock
  hands 1 min: Serve.
`;

describe('a hundred sentences', () => {
  test('are a hundred different ones, and most begin with a word that opens a line', () => {
    expect(new Set(sentences).size).toBe(100);
    const opening = sentences.filter(
      (text) => parseLine(text.replace(/[.]$/, '')).content.kind !== 'bad' || /^[A-Z][a-z]+/.test(text),
    );
    expect(opening.length).toBeGreaterThan(50);
  });

  test.each(sentences)('%s', (text) => {
    expect(refused(text) || rightly(text)).toBe(true);
    if (refused(text)) expect(parseLine(text).content.kind).toBe('bad');
  });

  test('all but three are refused on their own line, and those three are facts that say what they say', () => {
    expect(sentences.filter(refused).length).toBe(97);
    expect(sentences.filter(rightly)).toEqual([
      'Note that the dough will be very soft at this stage.',
      'Serve with a spoonful of soured cream.',
      'Warning: the caramel is very hot.',
    ]);
  });

  test.each(['', '\n'])('open no block and change no other line (after %j)', (gap) => {
    const blocks = (text: string): string[] => {
      const { recipes } = outline(parseDocument('f', text));
      return recipes.flatMap(({ makes }) =>
        makes.map(
          ({ heading, items }) =>
            `${heading?.content.name?.text ?? 'unnamed'}: ${items
              .filter(({ kind }) => kind !== 'bad' && kind !== 'remark')
              .map(({ kind }) => kind)
              .join(' ')}`,
        ),
      );
    };
    for (const text of sentences)
      expect(blocks(around(text, gap)), text).toEqual(['stock: in step in step', 'soup: in step']);
  });

  test('those with a time are offered as a step with that time', () => {
    const offered = (text: string) => parseLine(text).messages[0]?.args.step;
    expect(offered('Bake for 35 to 40 minutes until golden and firm.')).toBe('oven 35-40 min:');
    expect(offered('Simmer gently for 2 hours, stirring now and then.')).toBe('hob 2 h:');
    expect(offered('Leave overnight in the cold.')).toBe('wait overnight:');
    expect(messages.L22.help).toContain('{step}');
  });
});
