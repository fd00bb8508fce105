import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { rational } from '@quern/quantity';
import {
  basketCsv,
  basketHtml,
  basketMarkdown,
  basketText,
  jsonText,
  sheetCsv,
  sheetHtml,
  sheetMarkdown,
  sheetText,
} from '@quern/publish';
import { basket, findScale, readPackageSize, readScale, sheet, type ScaleKind } from '@quern/views';
import { corpus } from '../fuzz/corpus.js';
import { damaged } from '../fuzz/mutations.js';

/* Whatever was typed, a sheet and a list can be made of it, at any size that can be asked for: with gaps, never with an exception. */

const foods = createFoodBook();
const formulasOf = (text: string): readonly Formula[] =>
  compile('main.quern', text, { read: () => undefined, foods }).formulas;

const REQUESTS: readonly (readonly [ScaleKind, string])[] = [
  ['times', '7/3'],
  ['times', '999999999999999'],
  ['makes', '5'],
  ['serves', '7'],
  ['weight', '5kg'],
  ['tin', '3 of 25x10x8 cm'],
  ['tin', '2 of 20x8 cm'],
  ['have', '350 g water'],
  ['have', '2 eggs'],
];

const FIGURES_OF_NOTHING = /\bundefined\b|\bNaN\b|\bInfinity\b|\[object Object\]/;

describe('damaged recipes', () => {
  test('give a sheet at every size, in every form', () => {
    fc.assert(
      fc.property(damaged(corpus), fc.constantFrom(...REQUESTS), (text, [kind, asked]) => {
        const [formula] = formulasOf(text);
        if (!formula) return;
        const request = readScale(kind, asked);
        if (!request.ok) throw new Error(request.problem);
        const found = findScale(request.value, formula);
        if (!found.ok) {
          expect(found.help).not.toBe('');
          return;
        }
        const data = sheet(formula, { scale: found.value, percentages: true, gasMarks: true, mixer: rational(3000) });
        for (const shown of [sheetText(data), sheetMarkdown(data), sheetHtml(data), sheetCsv(data), jsonText(data)]) {
          if (!FIGURES_OF_NOTHING.test(text)) expect(shown).not.toMatch(FIGURES_OF_NOTHING);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('give a shopping list in every form', () => {
    const size = readPackageSize('1 kg water');
    if (!size.ok) throw new Error(size.problem);
    fc.assert(
      fc.property(damaged(corpus), (text) => {
        const requests = formulasOf(text).map((formula) => ({ formula, factor: rational(5, 3) }));
        const data = basket(requests, { packages: [size.value] });
        for (const shown of [
          basketText(data),
          basketMarkdown(data),
          basketHtml(data),
          basketCsv(data),
          jsonText(data),
        ]) {
          if (!FIGURES_OF_NOTHING.test(text)) expect(shown).not.toMatch(FIGURES_OF_NOTHING);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('what is asked of a sheet', () => {
  test('is read or refused with a way out, whatever it is', () => {
    const words = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.string({
        unit: fc.constantFrom('1', '2', '/', 'x', ' ', 'of', ' g', 'kg', ',', '.', '-', '½', 'cm', 'l', 'a'),
      }),
    );
    fc.assert(
      fc.property(
        fc.constantFrom<ScaleKind>('times', 'makes', 'weight', 'serves', 'tin', 'have'),
        words,
        (kind, text) => {
          for (const read of [readScale(kind, text), readPackageSize(text)])
            if (!read.ok) expect(read.help).not.toBe('');
        },
      ),
      { numRuns: 500 },
    );
  });
});
