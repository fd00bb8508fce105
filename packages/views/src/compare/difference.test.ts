import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '@quern/syntax';
import { applyDifference } from './apply.js';
import { differenceOf, isForward, mirrored, type Difference } from './difference.js';
import { matchTrees, type Sense } from './match.js';
import { treeOfDocument, treeText, type TreeNode } from './tree.js';

const examples = join(import.meta.dirname, '../../../../examples');
const texts = readdirSync(examples)
  .filter((name) => name.endsWith('.quern'))
  .map((name) => readFileSync(join(examples, name), 'utf8'));
const sense: Sense = { cups: 'us', foodOf: () => undefined };
const read = (text: string): TreeNode => treeOfDocument(parseDocument('a.quern', text));

function difference(a: TreeNode, b: TreeNode): Difference {
  const options = { before: sense, after: sense, factors: new Map<TreeNode, never>() };
  const forward = (one: TreeNode, other: TreeNode): Difference =>
    differenceOf(one, other, matchTrees(one, other, options), options);
  return isForward(a, b) ? forward(a, b) : mirrored(forward(b, a));
}

/** Edits as people make them: a line struck out, doubled, carried elsewhere, a figure or a word altered, a line new. */
type Edit = readonly [kind: 'cut' | 'double' | 'carry' | 'figure' | 'word' | 'new' | 'rename', at: number, to: number];
const NEW = [
  '  100 g butter',
  '  hands 5 min: Stir well.',
  'make icing',
  '  lose 2 % as water',
  'note Good.',
  '  or 5 g salt',
  'variant sweet',
  '  keeps 2 d',
];

function edited(text: string, edits: readonly Edit[]): string {
  let lines = text.split('\n');
  for (const [kind, at, to] of edits) {
    const index = Math.floor(at * (lines.length - 1));
    const line = lines[index] ?? '';
    const target = Math.floor(to * (lines.length - 1));
    switch (kind) {
      case 'cut':
        lines.splice(index, 1);
        break;
      case 'double':
        lines.splice(index, 0, line);
        break;
      case 'carry':
        lines.splice(index, 1);
        lines.splice(target, 0, line);
        break;
      case 'figure':
        lines[index] = line.replace(/\d+/, (figure) => String(Number(figure) + 1 + Math.floor(to * 9)));
        break;
      case 'word':
        lines[index] = line.replace(/\w+\.$/, 'until it sings.');
        break;
      case 'new':
        lines.splice(index, 0, NEW[Math.floor(to * (NEW.length - 1))] ?? '');
        break;
      case 'rename': {
        const named = lines.flatMap((one) => /^make (\w+)/.exec(one)?.[1] ?? []);
        const old = named[Math.floor(to * named.length)];
        if (old) lines = lines.map((one) => one.replace(new RegExp(`^(make|  all) ${old}$`), `$1 ${old}stuff`));
      }
    }
  }
  return lines.join('\n');
}

const share = fc.double({ min: 0, max: 1, noNaN: true });
const edit: fc.Arbitrary<Edit> = fc.tuple(
  fc.constantFrom('cut', 'double', 'carry', 'figure', 'word', 'new', 'rename'),
  share,
  share,
);
const pairs = fc
  .tuple(fc.constantFrom(...texts), fc.array(edit, { maxLength: 6 }), fc.array(edit, { maxLength: 6 }))
  .map(([text, one, other]) => [edited(text, one), edited(text, other)] as const);

describe('laws of the difference', () => {
  test('a file does not differ from itself', () => {
    for (const text of texts)
      expect(difference(read(text), read(text))).toEqual({ changes: [], arrangements: [], scalings: [] });
  });

  test('with the changes made, the first file says what the second says, in its order', () => {
    fc.assert(
      fc.property(pairs, ([one, other]) => {
        const [a, b] = [read(one), read(other)];
        const made = applyDifference(a, difference(a, b));
        expect(treeText(made)).toBe(treeText(b));
        expect(difference(read(treeText(made)), b)).toEqual({ changes: [], arrangements: [], scalings: [] });
      }),
      { numRuns: 300 },
    );
  });

  test('the other way round it is the same difference turned round', () => {
    fc.assert(
      fc.property(pairs, ([one, other]) => {
        const [a, b] = [read(one), read(other)];
        expect(difference(b, a)).toEqual(mirrored(difference(a, b)));
      }),
      { numRuns: 200 },
    );
  });
});
