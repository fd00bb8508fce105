import type { Bracket, Prose, Words } from './ast.js';

/** Cuts the square brackets out of a sentence. What stands in them is read later, by the parser, one bracket at a time. */
export function proseNode(words: Words): Prose {
  if (!words.text.includes('[')) return { ...words, brackets: [] };
  const brackets: Bracket[] = [];
  for (const found of words.text.matchAll(/\[([^[\]]*)\]/g)) {
    const start = words.span.start + found.index;
    brackets.push({ span: { start, end: start + found[0].length }, text: found[1] ?? '' });
  }
  return { ...words, brackets };
}
