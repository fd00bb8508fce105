import { expect, test } from 'vitest';
import { proseNode } from './prose.js';

test.each([
  ['Add [20 g] of butter and [2] eggs.', ['20 g', '2']],
  ['Nothing in brackets.', []],
  ['Empty [] too.', ['']],
  ['Inner [of [two] is] cut.', ['two']],
  ['Loose ] then [3].', ['3']],
  ['Open [4 and no more.', []],
])('brackets of “%s”', (text, inside) => {
  const { brackets } = proseNode({ span: { start: 7, end: 7 + text.length }, text });
  expect(brackets.map((one) => one.text)).toEqual(inside);
  // Places count from the beginning of the line, in which the sentence begins at 7.
  for (const { span, text: words } of brackets) expect(text.slice(span.start - 7, span.end - 7)).toBe(`[${words}]`);
});
