import { describe, expect, test } from 'vitest';
import { LineCache, parseDocument } from './document.js';

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
    expect(two).toEqual(one);
    expect(two.lines[0]?.parsed).not.toBe(one.lines[0]?.parsed);
  });
});
