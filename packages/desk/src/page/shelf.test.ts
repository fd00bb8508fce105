import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layBack, layOpen, Shelf } from './shelf.js';

describe('a file', () => {
  test('is written as it was read, whichever line ends and mark it has', () => {
    const line = fc.stringMatching(/^[^\r\n\uFEFF]*$/);
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 2 }),
        fc.constantFrom('\n', '\r\n'),
        fc.boolean(),
        (lines, end, marked) => {
          const raw = (marked ? '\uFEFF' : '') + lines.join(end);
          const laid = layOpen(raw);
          expect(laid.text).toBe(lines.join('\n'));
          expect(laid.mixed).toBe(false);
          expect(layBack(laid.text, laid)).toBe(raw);
        },
      ),
    );
  });

  test('with several kinds of line ends says so, and goes by the most', () => {
    expect(layOpen('a\r\nb\r\nc\n')).toEqual({ text: 'a\nb\nc\n', ending: '\r\n', marked: false, mixed: true });
    expect(layOpen('a\rb\nc\n')).toMatchObject({ text: 'a\nb\nc\n', ending: '\n', mixed: true });
  });
});

test('a path that is taken gets a number', () => {
  const shelf = new Shelf();
  const file = { home: { kind: 'new' }, saved: '', ending: '\n', marked: false } as const;
  shelf.put({ ...file, path: 'loaf.quern' });
  expect(shelf.freePath('loaf.quern')).toBe('loaf-2.quern');
  shelf.put({ ...file, path: 'loaf-2.quern' });
  expect(shelf.freePath('loaf.quern')).toBe('loaf-3.quern');
  expect(shelf.freePath('tart.quern')).toBe('tart.quern');
});
