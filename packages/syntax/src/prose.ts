import type { Bracket, Prose, Words } from './ast.js';

/** Cuts the square brackets out of a sentence. What stands in them is read later, by the parser, one bracket at a time. */
export function proseNode(words: Words): Prose {
  const { span, text } = words;
  if (!text.includes('[')) return { span, text, brackets: [] };
  const brackets: Bracket[] = [];
  for (let close = text.indexOf(']'); close >= 0; close = text.indexOf(']', close + 1)) {
    const open = text.lastIndexOf('[', close);
    if (open < 0 || text.lastIndexOf(']', close - 1) > open) continue;
    brackets.push({
      span: { start: span.start + open, end: span.start + close + 1 },
      text: text.slice(open + 1, close),
    });
  }
  return { span, text, brackets };
}
