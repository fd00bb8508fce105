import { describe, expect, test } from 'vitest';
import { LineCache, parseDocument, reparseDocument } from './document.js';
import { passageAt, passageOfLine } from './passages.js';

const text = 'cup us\n\nrecipe A\n  1 g salt\n\nrecipe B\n  2 g salt\n';

describe('passages', () => {
  const document = parseDocument('a.quern', text);

  test('go from recipe heading to recipe heading, and hold every line once', () => {
    expect(document.passages.map(({ lines }) => lines.map((line) => line.text))).toEqual([
      ['cup us', ''],
      ['recipe A', '  1 g salt', ''],
      ['recipe B', '  2 g salt', ''],
    ]);
    expect(document.passages.flatMap(({ lines }) => lines)).toEqual(document.lines);
    expect(document.lineCount).toBe(8);
  });

  test('hold their offsets: the first of a heading is in its own', () => {
    const at = text.indexOf('recipe B');
    expect(passageAt(document.passages, at).number).toBe(5);
    expect(passageAt(document.passages, at - 1).number).toBe(2);
    expect(passageAt(document.passages, -5).number).toBe(0);
    expect(passageAt(document.passages, text.length + 5).number).toBe(5);
  });

  test('hold their lines by number', () => {
    expect([0, 1, 2, 4, 5, 7, 99].map((line) => passageOfLine(document.passages, line).number)).toEqual([
      0, 0, 2, 2, 5, 5, 5,
    ]);
  });

  test('know which of them name other files', () => {
    const { passages } = parseDocument('a.quern', 'use Broth from "broth.quern"\nrecipe A\n');
    expect(passages.map(({ passage }) => passage.namesFiles)).toEqual([true, false]);
  });
});

describe('an edit at both ends of a file', () => {
  test('leaves the recipes between as they were, though they may have moved', () => {
    const cache = new LineCache();
    const before = parseDocument('a.quern', text.repeat(3), cache);
    const after = reparseDocument(before, `// first\n${text.repeat(3)}// last\n`, cache);
    const same = after.passages.filter(({ passage }) => before.passages.some((one) => one.passage === passage));
    expect(after.passages).toHaveLength(before.passages.length);
    expect(same).toHaveLength(before.passages.length - 2);
    expect(after.lines).toEqual(parseDocument('a.quern', after.text, cache).lines);
  });
});
