/** Every example of the notation's page is compiled: it is clean, or says the one code that its fence names. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compile } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { sentence } from '@quern/text';
import { tidy } from '@quern/syntax';

const page = readFileSync(join(import.meta.dirname, '..', '..', 'docs', 'notation.md'), 'utf8');
const foods = createFoodBook();
const examples = [...page.matchAll(/^```quern(?: says (\w+))?\n([\s\S]*?)^```$/gm)].map((found, index) => ({
  title: `example ${index + 1}${found[1] ? `, ${found[1]}` : ''}`,
  says: found[1],
  text: found[2] ?? '',
}));

test('the page has examples', () => {
  expect(examples.length).toBeGreaterThan(10);
});

describe.each(examples)('$title', ({ says, text }) => {
  test('means what the page says', () => {
    const { diagnostics } = compile('page.quern', text, { read: () => undefined, foods });
    if (says === undefined) expect(diagnostics.map((one) => `${one.code} ${sentence(one)}`)).toEqual([]);
    else expect(diagnostics.map((one) => one.code)).toContain(says);
  });

  test('is written as the formatter writes it', () => {
    expect(tidy(text).text).toBe(text);
  });
});
