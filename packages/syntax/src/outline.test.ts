import { describe, expect, test } from 'vitest';
import type { Document } from './ast.js';
import { LineCache, parseDocument, reparseDocument } from './document.js';
import { outline } from './outline.js';
import type { Outline } from './outline-types.js';
import { OutlineBuilder } from './structure.js';

/** The blocks of a file, its lines put into them one after the other. */
function atOnce({ path, lines }: Document): Outline {
  const builder = new OutlineBuilder(path);
  builder.take(lines);
  return builder.finish();
}

const LINES = [
  ...[
    'recipe Oat loaf',
    'recipe Quay buns',
    'recipe',
    'make dough',
    'make',
    'variant with rye',
    'variant',
    'maek dough',
  ],
  ...['food house flour', 'culture starter', 'kitchen Pennymoss Quay', 'menu Supper', 'course First', 'corse First'],
  ...['use Broth from "broth.quern"', 'cup us', 'cup metric', 'gives 1 loaf', 'serves 4', 'serves 6', 'note Good.'],
  ...[
    '  500 g flour',
    '  all dough',
    '  or 500 g spelt flour',
    '  lose 11 %',
    '  save half as filling',
    '  check 1 kg',
  ],
  ...['  hands 5 min: Mix.', '  alone 1 h: Rest.', '  : Longer words.', '  every 30 min hands 1 min: Fold.', '  ???'],
  ...['  drop 5 g salt', '  per 100 g: energy 350 kcal', '  parts 1 flour, 1 water', '  has oven', 'date 2026-11-28'],
  ...['baked 2026-11-28', '  keeps 3 d', '  best after 1 d', '// a remark', '', '', '', 'recpie Slip', '{oops'],
];

/** Numbers that look random and are the same each time (a linear congruential generator). */
function numbersFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) % below;
}

describe('blocks put together passage by passage', () => {
  test('are those of the lines one after the other, whatever stands where', () => {
    const next = numbersFrom(5);
    let recipes = 0;
    for (let round = 0; round < 3000; round++) {
      const text = Array.from({ length: 1 + next(24) }, () => LINES[next(LINES.length)] ?? '').join('\n');
      const document = parseDocument('a.quern', text);
      const blocks = outline(document);
      expect(blocks, text).toEqual(atOnce(document));
      recipes += blocks.recipes.length;
    }
    expect(recipes).toBeGreaterThan(2000);
  });

  test('are the same after edits, without anything read from the beginning', () => {
    const next = numbersFrom(9);
    const cache = new LineCache();
    let lines = Array.from({ length: 30 }, () => LINES[next(LINES.length)] ?? '');
    let document = parseDocument('a.quern', lines.join('\n'), cache);
    for (let round = 0; round < 3000; round++) {
      const at = next(lines.length);
      lines = lines.toSpliced(at, next(3), ...Array.from({ length: next(3) }, () => LINES[next(LINES.length)] ?? ''));
      if (lines.length > 60) lines = lines.slice(20);
      document = reparseDocument(document, lines.join('\n'), cache);
      // Not looked at each time, so that what has moved several times is looked at too.
      if (next(3) > 0) continue;
      expect(outline(document), document.text).toEqual(atOnce(parseDocument('a.quern', document.text, cache)));
    }
  });
});

describe('a recipe that a key does not fall in', () => {
  const recipe = (name: string): string => `recipe ${name}\ngives 1 loaf\nmake dough\n  500 g flour\n\n`;
  const cache = new LineCache();
  const before = parseDocument('a.quern', recipe('Oat loaf') + recipe('Quay buns') + recipe('Rye'), cache);
  const after = reparseDocument(before, before.text.replace('Quay', 'Quays'), cache);

  test('is the same object above it', () => {
    outline(before);
    expect(outline(after).recipes[0]).toBe(outline(before).recipes[0]);
  });

  test('is only moved below it, with lines that are made when they are looked at', () => {
    expect(after.passages[2]?.passage).toBe(before.passages[2]?.passage);
    expect(after.passages[2]?.start).toBe((before.passages[2]?.start ?? 0) + 1);
    const moved = outline(after).recipes[2];
    expect(moved?.heading.line.start).toBe(after.text.indexOf('recipe Rye'));
    expect(moved?.makes[0]?.items[0]?.main.line.start).toBe(after.text.lastIndexOf('  500 g flour'));
  });

  test('says what it said, where it now stands', () => {
    const wrong = parseDocument('a.quern', `${recipe('A')}recipe B\n  500 g flour\n  : More words.\n`, cache);
    const [first] = outline(wrong).diagnostics;
    const start = (first?.place.start ?? 0) + 2;
    const again = outline(reparseDocument(wrong, wrong.text.replace('recipe A', 'recipe ABC'), cache)).diagnostics;
    expect(first?.code).toBe('L29');
    expect(again).toEqual([{ ...first, place: { ...first?.place, start, end: start + ': More words.'.length } }]);
  });
});
