import { factWord, lineWords, type LineContent, type LineWord } from '@quern/syntax';

const longestFirst = lineWords.toSorted((a, b) => b.word.length - a.word.length);

/** The entry of the list that a half-typed line begins with, once a space stands after its word. */
export function entryTyped(text: string): LineWord | undefined {
  const lower = text.toLowerCase();
  return longestFirst.find(({ word }) => lower.startsWith(`${word} `));
}

/** The first word of a line that has one in the list. */
export function openingWord(content: LineContent): string | undefined {
  switch (content.kind) {
    case 'step':
      return content.lane;
    case 'out':
      return content.verb;
    case 'block':
      return content.block;
    case 'every':
    case 'check':
    case 'or':
      return content.kind;
    case 'in':
      return content.optional ? 'optional' : content.amount.kind === 'open' ? content.amount.word : undefined;
    case 'bad':
      return content.opening.toLowerCase();
    case 'blank':
    case 'comment':
    case 'conflict':
    case 'more':
      return undefined;
    default:
      return factWord(content);
  }
}
