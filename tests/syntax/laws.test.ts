/** Laws that hold for every line and every file, readable or not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LineCache, outline, parseDocument, parseLine, printLine, scanProse, tidy } from '@quern/syntax';
import { anyFile, anyLine, bare, damaged, prose, readableLine } from './lines.js';

// The same cases every time, so that a change is to blame for a failure; others with SEED=7 RUNS=50000.
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20410216) });
const runs = { numRuns: Number(process.env.RUNS ?? 3000) };
const errorsOf = (text: string) => parseLine(text).messages.filter(({ severity }) => severity === 'error');

describe('a line', () => {
  test('that is written as the grammar says is read', () => {
    fc.assert(
      fc.property(readableLine, (text) => {
        expect(
          errorsOf(text).map(({ code }) => code),
          text,
        ).toEqual([]);
      }),
      runs,
    );
  });

  test('printed and read again is the same tree', () => {
    fc.assert(
      fc.property(readableLine, (text) => {
        const { content } = parseLine(text);
        const printed = printLine(content) ?? '';
        const again = parseLine(printed);
        expect(bare(again.content), `${text}\n${printed}`).toEqual(bare(content));
        expect(again.messages, printed).toEqual([]);
        expect(printLine(again.content)).toBe(printed);
      }),
      runs,
    );
  });

  test('of any text is read without an exception, and its places lie in it', () => {
    fc.assert(
      fc.property(anyLine, (text) => {
        const { content, messages } = parseLine(text);
        if (content.kind === 'bad')
          expect(
            messages.some(({ severity }) => severity === 'error'),
            text,
          ).toBe(true);
        for (const { place } of messages) {
          expect(place.start).toBeGreaterThanOrEqual(0);
          expect(place.end).toBeGreaterThanOrEqual(place.start);
          expect(place.end).toBeLessThanOrEqual(text.length);
        }
        for (const { start, end } of spansOf(content)) {
          expect(start, text).toBeLessThanOrEqual(end);
          expect(end, text).toBeLessThanOrEqual(text.length);
        }
      }),
      runs,
    );
  });

  test('gives every name, note and sentence the place where its words stand', () => {
    fc.assert(
      fc.property(readableLine, (text) => {
        for (const { start, end, words } of wordsOf(parseLine(text).content)) {
          expect(text.slice(start, end).replace(/[\s\u2009\u00a0]+/g, ' ')).toBe(
            words.replace(/[\s\u2009\u00a0]+/g, ' '),
          );
        }
      }),
      runs,
    );
  });
});

describe('a file', () => {
  test('put together from its lines is its text', () => {
    fc.assert(
      fc.property(anyFile, (text) => {
        const { lines, byteOrderMark } = parseDocument('f', text);
        expect((byteOrderMark ? '\ufeff' : '') + lines.map((line) => line.text + line.ending).join('')).toBe(text);
        for (const line of lines) expect(text.slice(line.start, line.start + line.text.length)).toBe(line.text);
      }),
    );
  });

  test('has an outline, whatever stands in it, and loses no line that was read', () => {
    fc.assert(
      fc.property(anyFile, (text) => {
        const document = parseDocument('f', text);
        const { diagnostics } = outline(document);
        for (const { place } of diagnostics) expect(place.end).toBeLessThanOrEqual(text.length);
      }),
    );
  });

  test('is tidied once and for all', () => {
    fc.assert(
      fc.property(anyFile, (text) => {
        const once = tidy(text);
        const twice = tidy(once.text);
        expect(twice.text, JSON.stringify(text)).toBe(once.text);
        expect(twice.changed).toBe(false);
        expect(once.changed).toBe(once.text !== text);
      }),
      { numRuns: runs.numRuns / 3 },
    );
  });

  test('means the same after tidying: the same trees, line for line', () => {
    const trees = (text: string): unknown[] =>
      parseDocument('f', text)
        .lines.map(({ parsed }) => bare(parsed.content))
        .filter((tree) => (tree as { kind: string }).kind !== 'blank');
    fc.assert(
      fc.property(anyFile, (text) => {
        expect(trees(tidy(text).text)).toEqual(trees(text));
      }),
      { numRuns: runs.numRuns / 3 },
    );
  });

  test('keeps its line ends, its byte-order mark and the lines that cannot be read', () => {
    fc.assert(
      fc.property(anyFile, (text) => {
        const [before, after] = [parseDocument('f', text), parseDocument('f', tidy(text).text)];
        expect(after.byteOrderMark).toBe(before.byteOrderMark);
        const bad = (document: typeof before): string[] =>
          document.lines.filter(({ parsed }) => parsed.content.kind === 'bad').map((line) => line.text);
        expect(bad(after)).toEqual(bad(before));
        const ended = (document: typeof before): Set<string> =>
          new Set(document.lines.map(({ ending }) => ending).filter((ending) => ending !== ''));
        if (ended(before).size > 0) for (const ending of ended(after)) expect(ended(before)).toContain(ending);
      }),
    );
  });

  test('with a broken line differs in that line only', () => {
    fc.assert(
      fc.property(anyFile, fc.nat(), fc.nat(), fc.nat(), fc.string(), (text, which, at, length, junk) => {
        const cache = new LineCache();
        const before = parseDocument('f', text, cache);
        const line = before.lines[which % before.lines.length];
        if (line === undefined) return;
        const broken = damaged(line.text, at, length, junk.replace(/\ufeff/g, ''));
        const after = parseDocument(
          'f',
          text.slice(0, line.start) + broken + text.slice(line.start + line.text.length),
          cache,
        );
        expect(after.lines.length).toBe(before.lines.length);
        for (const [index, other] of after.lines.entries()) {
          if (index !== line.number) expect(other.parsed).toBe(before.lines[index]?.parsed);
        }
      }),
    );
  });
});

describe('a sentence', () => {
  test('is searched for figures without an exception, and each stands where it says', () => {
    fc.assert(
      fc.property(fc.oneof(prose, fc.string({ unit: 'grapheme' }), fc.string({ unit: 'binary' })), (text) => {
        for (const { span, text: words } of scanProse(text)) expect(text.slice(span.start, span.end)).toBe(words);
      }),
      runs,
    );
  });
});

function* spansOf(value: unknown): Generator<{ start: number; end: number }> {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    if (key === 'span' || key === 'wordSpan' || key === 'laneSpan') yield inner as { start: number; end: number };
    else yield* spansOf(inner);
  }
}

function* wordsOf(value: unknown): Generator<{ start: number; end: number; words: string }> {
  if (typeof value !== 'object' || value === null) return;
  const { span, text } = value as { span?: { start: number; end: number }; text?: unknown };
  if (span !== undefined && typeof text === 'string') yield { ...span, words: text };
  for (const [key, inner] of Object.entries(value)) {
    // The place of a bracket holds its marks too.
    if (key !== 'brackets') yield* wordsOf(inner);
  }
}
