/** The registry of messages and its pages: every example does what it says, and every page is the generated one. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { messages } from '@quern/text';
import { splitExample } from '@quern/testkit';
import { areaOf, codes } from '../scripts/diagnostic-pages.js';
import { check, pages } from '../scripts/docs-pages.js';

const folder = join(import.meta.dirname, '..', 'docs', 'diagnostics');
const said = (example: string) => check(splitExample(example)).map(({ code }) => code);

describe.each(codes)('%s', (code) => {
  const message = messages[code];

  test('is said of its bad example', () => {
    expect(said(message.bad)).toContain(code);
  });

  test('is not said of its good example, and nothing worse is', () => {
    const diagnostics = check(splitExample(message.good));
    expect(diagnostics.map((one) => one.code)).not.toContain(code);
    expect(diagnostics.filter(({ severity }) => severity === 'error').map((one) => one.code)).toEqual([]);
  });

  test('has words for everything', () => {
    for (const words of [message.name, message.text, message.help, message.why]) expect(words.trim()).not.toBe('');
    expect(areaOf(code)).not.toBe('');
  });
});

describe('the pages of the messages', () => {
  test('are those of the registry, no more and no fewer (npm run docs)', () => {
    expect(readdirSync(folder).sort()).toEqual([...pages().keys()].sort());
  });

  test.each([...pages()])('%s is up to date (npm run docs)', (name, text) => {
    expect(readFileSync(join(folder, name), 'utf8')).toBe(text);
  });
});
