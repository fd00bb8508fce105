import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergeTexts } from './merge.js';

const BASE = `// the quay loaf
recipe Quay Bread
gives 1 loaf of 830 g

make dough
  500 g strong wheat flour
  350 g water
  10 g fine salt
  hands 10 min: Mix and knead.
  wait 2 h at 24 C: Leave to rise.

make loaf
  all dough
  oven 40 min at 230 C: Bake until brown.
  lose 32 g as water
`;
const LABELS = { ours: 'ours', theirs: 'theirs' };

function merged(ours: string, theirs: string, base = BASE): string {
  return mergeTexts(base, ours, theirs, LABELS)?.text ?? 'not by lines';
}
const conflicts = (ours: string, theirs: string): number | undefined =>
  mergeTexts(BASE, ours, theirs, LABELS)?.conflicts;

const folder = join(import.meta.dirname, '../../../../examples');
const texts = readdirSync(folder)
  .filter((name) => name.endsWith('.quern'))
  .map((name) => readFileSync(join(folder, name), 'utf8'));

/** Lines whose first figure may be another without their being another line. */
const isFigure = (line: string): boolean => /^ {2}\d/.test(line);
const raised = (line: string): string => line.replace(/\d+/, (figure) => `${figure}7`);

/** A line without its figures. */
const formOf = (line: string): string => line.replace(/\d+/g, '');

describe('merging by make and line', () => {
  test('of two lines of one food the note tells which was cut', () => {
    const base = 'recipe Cooler\n  200 g water, hot\n  910 g water, ice cold\n  hands 3 min: Stir.\n';
    const ours = base.replace('  200 g water, hot\n', '').replace('910', '920');
    const theirs = base.replace('910', '920');
    expect(mergeTexts(base, ours, theirs, LABELS)).toEqual({ text: ours, conflicts: 0 });
    expect(mergeTexts(base, theirs, ours, LABELS)).toEqual({ text: ours, conflicts: 0 });
  });

  test('what the sides changed in different lines is all there, whoever changed it', () => {
    const sides = fc.tuple(
      fc.constantFrom(...texts),
      fc.array(fc.constantFrom('none', 'ours', 'theirs', 'cut by ours', 'both'), { minLength: 60, maxLength: 60 }),
    );
    fc.assert(
      fc.property(sides, ([text, choices]) => {
        let nth = 0;
        const lines = text.split('\n');
        const plan = lines.map((line) => {
          const who = isFigure(line) ? choices[nth++ % choices.length] : 'none';
          // Of two lines that differ by their figures alone, of which one is cut and one changed, nobody can tell which is which.
          const isTold = lines.filter((other) => isFigure(other) && formOf(other) === formOf(line)).length === 1;
          return { line, who: who === 'cut by ours' && !isTold ? 'none' : who };
        });
        const side = (own: string, cut: boolean): string =>
          plan
            .filter(({ who }) => !(cut && who === 'cut by ours'))
            .map(({ line, who }) => (who === own || who === 'both' ? raised(line) : line))
            .join('\n');
        const wanted = plan
          .filter(({ who }) => who !== 'cut by ours')
          .map(({ line, who }) => (who === 'none' ? line : raised(line)))
          .join('\n');
        expect(mergeTexts(text, side('ours', true), side('theirs', false), LABELS)).toEqual({
          text: wanted,
          conflicts: 0,
        });
        expect(mergeTexts(text, side('theirs', false), side('ours', true), LABELS)).toEqual({
          text: wanted,
          conflicts: 0,
        });
      }),
      { numRuns: 60 },
    );
  });

  test('a side that changed nothing leaves the other as it is, to the letter', () => {
    for (const [index, text] of texts.entries()) {
      const other = texts[(index + 1) % texts.length] ?? '';
      expect(mergeTexts(text, text, other, LABELS)).toEqual({ text: other, conflicts: 0 });
      expect(mergeTexts(text, other, text, LABELS)).toEqual({ text: other, conflicts: 0 });
      expect(mergeTexts(text, other, other, LABELS)).toEqual({ text: other, conflicts: 0 });
    }
  });

  test('lines next to each other are no conflict', () => {
    const ours = BASE.replace('350 g water', '360 g water');
    const theirs = BASE.replace('10 g fine salt', '11 g fine salt').replace('500 g', '510 g');
    expect(merged(ours, theirs)).toBe(theirs.replace('350 g water', '360 g water'));
  });

  test('a line that one side moved takes the figure that the other gave it', () => {
    const ours = BASE.replace('  10 g fine salt\n', '').replace(
      'Mix and knead.\n',
      'Mix and knead.\n  10 g fine salt\n',
    );
    const theirs = BASE.replace('10 g fine salt', '11 g fine salt');
    const wanted = ours.replace('10 g fine salt', '11 g fine salt');
    expect(merged(ours, theirs)).toBe(wanted);
    expect(merged(theirs, ours)).toBe(wanted);
  });

  test('both add another line at the same place', () => {
    const ours = BASE.replace('350 g water\n', '350 g water\n  5 g honey\n');
    const theirs = BASE.replace('350 g water\n', '350 g water\n  20 g olive oil\n');
    expect(merged(ours, theirs)).toBe(BASE.replace('350 g water\n', '350 g water\n  5 g honey\n  20 g olive oil\n'));
  });

  test('both add the same line', () => {
    const ours = BASE.replace('350 g water\n', '350 g water\n  5 g honey\n');
    const theirs = BASE.replace('350 g water\n', '350 g water\n  5.0 g honey\n');
    expect(merged(ours, theirs)).toBe(ours);
  });

  test('a line added at the end of a make does not fall into a make that the other added below it', () => {
    const ours = BASE.replace('\nmake loaf', '\nmake glaze\n  20 g egg\n  hands 1 min: Beat.\n\nmake loaf').replace(
      '  all dough\n',
      '  all dough\n  all glaze\n',
    );
    const theirs = BASE.replace('Leave to rise.\n', 'Leave to rise.\n  5 g honey\n');
    const wanted = ours.replace('Leave to rise.\n', 'Leave to rise.\n  5 g honey\n');
    expect(merged(ours, theirs)).toBe(wanted);
    expect(merged(theirs, ours)).toBe(wanted);
  });

  test('a conflict holds the one line that both changed', () => {
    const ours = BASE.replace('350 g water', '360 g water').replace('40 min', '42 min');
    const theirs = BASE.replace('350 g water', '340 g water').replace('10 g fine', '11 g fine');
    const conflict = '<<<<<<< ours\n  360 g water\n=======\n  340 g water\n>>>>>>> theirs\n';
    expect(merged(ours, theirs)).toBe(
      BASE.replace('  350 g water\n', conflict).replace('40 min', '42 min').replace('10 g fine', '11 g fine'),
    );
    expect(mergeTexts(BASE, ours, theirs, { ...LABELS, base: 'before' }, 9)?.text).toContain(
      '<<<<<<<<< ours\n  360 g water\n||||||||| before\n  350 g water\n=========\n  340 g water\n>>>>>>>>> theirs\n',
    );
  });

  test('a line gone on one side and changed on the other is a conflict', () => {
    const ours = BASE.replace('  10 g fine salt\n', '');
    const theirs = BASE.replace('10 g fine', '12 g fine');
    expect(merged(ours, theirs)).toContain('<<<<<<< ours\n=======\n  12 g fine salt\n>>>>>>> theirs\n');
    expect(merged(theirs, ours)).toContain('<<<<<<< ours\n  12 g fine salt\n=======\n>>>>>>> theirs\n');
    expect(conflicts(ours, ours)).toBe(0);
  });

  test('a respelled line takes the other side’s change', () => {
    const ours = BASE.replace('500 g strong', '0.5 kg strong');
    const theirs = BASE.replace('500 g strong', '510 g strong');
    expect(merged(ours, theirs)).toBe(theirs);
    expect(merged(ours, BASE)).toBe(ours);
  });

  test('batch records of both sides are kept', () => {
    const ours = BASE.replace('830 g\n', '830 g\nbaked 2041-02-16, 1 loaf: good\n');
    const theirs = BASE.replace('830 g\n', '830 g\nbaked 2041-02-16, 2 loaves: tight\n');
    expect(merged(ours, theirs)).toBe(
      BASE.replace('830 g\n', '830 g\nbaked 2041-02-16, 1 loaf: good\nbaked 2041-02-16, 2 loaves: tight\n'),
    );
  });

  test('remarks of both sides are kept', () => {
    const ours = BASE.replace('make loaf', '// hot oven\nmake loaf');
    const theirs = BASE.replace('make loaf', '// steam\nmake loaf').replace('40 min', '42 min');
    const text = merged(ours, theirs);
    expect(text).toContain('// hot oven\n// steam\nmake loaf');
    expect(text).toContain('oven 42 min');
  });

  test('line ends and a last line without one are kept', () => {
    const windows = (text: string): string => text.replaceAll('\n', '\r\n');
    const [ours, theirs] = [BASE.replace('350 g', '360 g'), BASE.replace('10 g fine', '11 g fine')];
    expect(merged(windows(ours), windows(theirs), windows(BASE))).toBe(windows(ours.replace('10 g fine', '11 g fine')));
    const cut = (text: string): string => text.slice(0, -1);
    expect(merged(cut(ours), cut(theirs), cut(BASE))).toBe(cut(ours.replace('10 g fine', '11 g fine')));
  });

  test.each([
    [
      'into a make that the other took away',
      BASE.replace(/make dough[^]*rise\.\n\n/, ''),
      BASE.replace('350 g water\n', '350 g water\n  5 g honey\n'),
    ],
    [
      'two steps at one place',
      BASE.replace('Leave to rise.\n', 'Leave to rise.\n  hands 2 min: Fold.\n'),
      BASE.replace('Leave to rise.\n', 'Leave to rise.\n  hands 4 min: Shape well.\n'),
    ],
    [
      'conflict marks left in a file',
      BASE.replace('  350 g water\n', '<<<<<<< a\n  350 g water\n=======\n  1 g water\n>>>>>>> b\n'),
      BASE.replace('40 min', '41 min'),
    ],
  ])('lines cannot tell: %s', (_, ours, theirs) => {
    expect(mergeTexts(BASE, ours, theirs, LABELS)).toBeUndefined();
    expect(mergeTexts(BASE, theirs, ours, LABELS)).toBeUndefined();
  });
});
