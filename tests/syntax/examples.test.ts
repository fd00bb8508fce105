/** The examples as the notation sees them: nothing to complain of, nothing to tidy. What they mean is tested elsewhere. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sentence } from '@quern/text';
import { outline, parseDocument, tidy } from '@quern/syntax';

const folder = join(import.meta.dirname, '../../examples');
const names = readdirSync(folder).filter((name) => name.endsWith('.quern'));

describe.each(names)('%s', (name) => {
  const text = readFileSync(join(folder, name), 'utf8');

  test('is read without a word', () => {
    const document = parseDocument(name, text);
    const said = [...document.lines.flatMap(({ parsed }) => parsed.messages), ...outline(document).diagnostics];
    expect(said.map(sentence)).toEqual([]);
  });

  test('is laid out already', () => {
    expect(tidy(text).text).toBe(text);
  });
});
