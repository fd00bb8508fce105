import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyDifference, compareFiles, treeOfDocument, treeText, type Change, type LineAction } from '@quern/views';
import { compiled, inputs, recipeText } from './states.js';

/* Laws of whole comparisons, on recipes with random edits. The laws of the lines alone are beside the code. */

const texts = ['black-tin-loaf', 'harbour-white', 'hook-lane-soup', 'pear-quark-pots', 'lantern-cheeks'].map(
  recipeText,
);

type Edit = readonly [kind: 'figure' | 'cut' | 'food' | 'time', at: number, by: number];

const FOODS = ['honey', 'whole milk', 'butter', 'egg', 'sesame seeds'];

function edited(text: string, edits: readonly Edit[]): string {
  const lines = text.split('\n');
  for (const [kind, at, by] of edits) {
    const body = lines.flatMap((line, index) => (/^ {2}\d/.test(line) ? [index] : []));
    const steps = lines.flatMap((line, index) => (/^ {2}(?:hands|wait|oven|hob) /.test(line) ? [index] : []));
    const index = (kind === 'time' ? steps : body)[Math.floor(at * (kind === 'time' ? steps : body).length)];
    if (index === undefined) continue;
    const line = lines[index] ?? '';
    if (kind === 'cut') lines.splice(index, 1);
    else if (kind === 'food')
      lines.splice(index, 0, `  ${10 + Math.floor(by * 90)} g ${FOODS[Math.floor(by * FOODS.length)] ?? 'honey'}`);
    else lines[index] = line.replace(/\d+/, (figure) => String(Number(figure) + 1 + Math.floor(by * 9)));
  }
  return lines.join('\n');
}

const share = fc.double({ min: 0, max: 0.999, noNaN: true });
const edit = fc.tuple(
  fc.constantFrom('figure' as const, 'cut' as const, 'food' as const, 'time' as const),
  share,
  share,
);
const pairs = fc
  .tuple(fc.constantFrom(...texts), fc.array(edit, { maxLength: 4 }), fc.array(edit, { maxLength: 4 }))
  .map(([text, one, other]) => [edited(text, one), edited(text, other)] as const);

const OTHER_WAY: Partial<Record<LineAction, LineAction>> = {
  added: 'removed',
  removed: 'added',
  split: 'merged',
  merged: 'split',
};

/** What a change says, without what is reckoned from its two sides. */
function said(change: Change, turned: boolean): string {
  const side = (value: { readonly before?: unknown; readonly after?: unknown } | undefined): unknown =>
    turned ? [value?.after ?? null, value?.before ?? null] : [value?.before ?? null, value?.after ?? null];
  if (change.kind === 'line') {
    const { role, action, subject, grams, share: part } = change;
    return JSON.stringify([
      role,
      turned ? (OTHER_WAY[action] ?? action) : action,
      side(change),
      side(subject),
      side(grams),
      side(part),
    ]);
  }
  const about = Object.entries(change).filter(
    ([key]) => !['before', 'after', 'percent', 'minutes', 'factor', 'line', 'where'].includes(key),
  );
  return JSON.stringify([about, side(change)]);
}

describe('laws of comparisons', () => {
  test('the other way round everything is told turned round', () => {
    fc.assert(
      fc.property(pairs, ([one, other]) => {
        const [a, b] = [compiled(one), compiled(other)];
        const there = compareFiles(a, b, (formula, file) => ({
          ...inputs(formula, file),
          clock: { handsOn: 1, total: 2 },
        }));
        const back = compareFiles(b, a, (formula, file) => ({
          ...inputs(formula, file),
          clock: { handsOn: 1, total: 2 },
        }));
        const all = (changes: readonly Change[], turned: boolean): readonly string[] =>
          changes.map((change) => said(change, turned)).sort();
        expect(back.recipes.map(({ changes }) => all(changes, true))).toEqual(
          there.recipes.map(({ changes }) => all(changes, false)),
        );
        expect(all(back.others, true)).toEqual(all(there.others, false));
        expect(back.same).toBe(there.same);
      }),
      { numRuns: 25 },
    );
  });

  test('with the changes made, nothing is left to tell', () => {
    fc.assert(
      fc.property(pairs, ([one, other]) => {
        const { difference } = compareFiles(compiled(one), compiled(other));
        const made = treeText(applyDifference(treeOfDocument(compiled(one).document), difference));
        expect(compareFiles(compiled(made), compiled(other))).toMatchObject({ same: true, others: [] });
      }),
      { numRuns: 25 },
    );
  });
});
