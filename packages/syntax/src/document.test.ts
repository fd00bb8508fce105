import { describe, expect, test } from 'vitest';
import type { Document } from './ast.js';
import { LineCache, parseDocument, reparseDocument } from './document.js';

/** All that is read of a file, whichever way it came to it. */
const read = ({ path, text, byteOrderMark, lines, lineCount, passages }: Document) => ({
  ...{ path, text, byteOrderMark, lines, lineCount },
  passages: passages.map(({ lines, start, end, number, endNumber }) => ({ lines, start, end, number, endNumber })),
});

const text = 'recipe Toast\n\n  80 g rye bread\n  hands 2 min: Toast the bread.\n';

describe('a document', () => {
  test('has a node for every line, with places that count from the start of the file', () => {
    const { lines, byteOrderMark } = parseDocument('toast.quern', `\ufeff${text}`);
    expect(byteOrderMark).toBe(true);
    expect(lines.map(({ number, parsed }) => [number, parsed.content.kind])).toEqual([
      [0, 'block'],
      [1, 'blank'],
      [2, 'in'],
      [3, 'step'],
      [4, 'blank'],
    ]);
    expect(lines.map(({ start }) => start)).toEqual([1, 14, 15, 32, 64]);
  });

  test('a keystroke costs its line: every other line is the same object again', () => {
    const cache = new LineCache();
    const before = parseDocument('a', text, cache);
    const after = parseDocument('a', text.replace('80 g', '90 g'), cache);
    const same = after.lines.map((line, index) => line.parsed === before.lines[index]?.parsed);
    expect(same).toEqual([true, true, false, true, true]);
  });

  test('the same line in another file, and twice in one, is parsed once', () => {
    const cache = new LineCache();
    const [first] = parseDocument('a', text, cache).lines;
    expect(parseDocument('b', `// moved down\n${text}`, cache).lines[1]?.parsed).toBe(first?.parsed);
    const twice = parseDocument('c', '80 g rye bread\r\n80 g rye bread', cache).lines;
    expect(twice[0]?.parsed).toBe(twice[1]?.parsed);
  });

  test('the cache keeps to its limit and forgets what was not asked for', () => {
    const cache = new LineCache(10);
    for (let round = 0; round < 100; round++) parseDocument('a', `${round} g rye bread`, cache);
    expect(cache.size).toBeLessThanOrEqual(20);
    const kept = parseDocument('a', '99 g rye bread', cache).lines[0]?.parsed;
    expect(parseDocument('a', '99 g rye bread', cache).lines[0]?.parsed).toBe(kept);
  });

  test('without a cache nothing is shared and the trees are equal', () => {
    const [one, two] = [parseDocument('a', text), parseDocument('a', text)];
    expect(read(two)).toEqual(read(one));
    expect(two.lines[0]?.parsed).not.toBe(one.lines[0]?.parsed);
  });
});

describe('a file read again after an edit', () => {
  const cache = new LineCache();
  const again = (before: string, after: string) => {
    const first = parseDocument('a.quern', before, cache);
    const document = reparseDocument(first, after, cache);
    expect(read(document)).toEqual(read(parseDocument('a.quern', after, cache)));
    return { first, document };
  };

  test('keeps the lines above and moves the lines below', () => {
    const { first, document } = again(text, text.replace('80 g', '100 g'));
    expect(document.lines[0]).toBe(first.lines[0]);
    expect(document.lines[3]?.parsed).toBe(first.lines[3]?.parsed);
    expect(document.lines[3]?.start).toBe((first.lines[3]?.start ?? 0) + 1);
  });

  test.each([
    ['nothing', text, text],
    ['everything', text, 'food x\n'],
    ['to nothing', text, ''],
    ['from nothing', '', text],
    ['a line end made longer', 'a\rb\rc', 'a\r\nb\rc'],
    ['a line end made shorter', 'a\r\nb', 'a\nb'],
    ['two lines made one', 'a\nb\nc\n', 'ab\nc\n'],
    ['one line made two', 'ab\nc', 'a\nb\nc'],
    ['a mark at the beginning', text, `\ufeff${text}`],
    ['no mark at the beginning', `\ufeff${text}`, text],
    ['something before the mark', `\ufeff${text}`, `x\ufeff${text}`],
    ['a heading that is one no longer', `${text}recipe B\n  1 g salt\n`, `${text}ecipe B\n  1 g salt\n`],
    ['a mark inside', 'a\nb\nc\n', 'a\n\ufeffb\nc\n'],
    ['the last line end', 'a\nb', 'a\nb\n'],
    ['the same line again', 'a\na\na\n', 'a\na\n'],
  ])('is what a fresh reading gives: %s', (_, before, after) => {
    again(before, after);
    again(after, before);
  });

  test('is what a fresh reading gives after many edits of many kinds', () => {
    const parts = ['recipe A', '\n', '\r', '\r\n', '  80 g rye bread', '', ' ', '\ufeff', 'x', 'hands 1 min: a'];
    let seed = 11;
    const next = (below: number): number => (seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0) % below;
    let now = text;
    let document = parseDocument('a.quern', now, cache);
    for (let round = 0; round < 9000; round++) {
      const from = next(now.length + 1);
      const to = Math.min(now.length, from + next(4));
      now = now.slice(0, from) + (parts[next(parts.length)] ?? '') + now.slice(to);
      if (now.length > 400) now = now.slice(0, 60);
      document = reparseDocument(document, now, cache);
      // Not looked at each time, so that what has moved several times is looked at too.
      if (next(3) > 0) continue;
      expect(read(document)).toEqual(read(parseDocument('a.quern', now, cache)));
    }
  });
});
