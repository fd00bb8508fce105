import { applyEdits, messages, type MessageCode } from '@quern/text';
import { Session } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { memoryHost, splitExample, type SourceText } from '@quern/testkit';
import { describe, expect, test } from 'vitest';
import { snapshotOf, type Snapshot } from '../snapshot.js';
import { fixers, withoutFix } from './index.js';
import { slowDiagnostics } from '../slow-diagnostics.js';
import { fixesFor, mendAll, safeEdits } from './mend.js';

const foods = createFoodBook();
const codes = Object.keys(messages) as MessageCode[];

function open(files: readonly SourceText[]): Snapshot {
  const session = new Session(memoryHost(files, foods));
  const snapshot = snapshotOf(
    session,
    files[0]?.path ?? '',
    files.map(({ path }) => path),
  );
  if (snapshot === undefined) throw new Error('no file');
  return snapshot;
}

/** Examples for messages whose fix needs another file of the workspace than their own example has. */
const withOthers: Partial<Record<MessageCode, string>> = {
  L18: 'use plain paste\n\nrecipe Tart\n  200 g plain paste\n  hands 2 min: Roll the paste.\n=== paste.quern\nrecipe plain paste\n  200 g plain flour\n  100 g butter\n  hands 5 min: Rub the butter into the flour.\n',
  N09: 'use Puff from puf.quern\n\nrecipe Tart\n  200 g Puff\n  hands 1 min: Roll.\n=== puff.quern\nrecipe Puff\n  200 g strong wheat flour\n  hands 1 min: Fold.\n',
  N14: 'use Puff from ../../puff.quern\n\nrecipe Tart\n  200 g Puff\n  hands 1 min: Roll.\n=== puff.quern\nrecipe Puff\n  200 g strong wheat flour\n  hands 1 min: Fold.\n',
};
/** Their fix opens the place for what only the packet says, so the message stays until that is written. */
const writtenByHand: ReadonlySet<string> = new Set(['A02', 'A07']);

/** Where the example of a message gives it. */
const placesOf = (snapshot: Snapshot, code: MessageCode) =>
  [...snapshot.compiled.diagnostics, ...[...slowDiagnostics(snapshot)].flat()].filter((one) => one.code === code);

test('every message is in one of the two tables', () => {
  const listed = [...Object.keys(fixers), ...Object.keys(withoutFix)].sort();
  expect(listed).toEqual([...codes].sort());
});

describe('the first fix of a message mends its example', () => {
  const mendable = codes.filter((code) => fixers[code] !== undefined && !writtenByHand.has(code));
  test.each(mendable)('%s', (code) => {
    const files = splitExample(withOthers[code] ?? messages[code].bad);
    const snapshot = open(files);
    const before = placesOf(snapshot, code);
    expect(before.length).toBeGreaterThan(0);
    const [first] = before;
    const [fix] = first ? fixesFor(snapshot, first) : [];
    expect(fix?.edits.map(({ file }) => file)).toEqual([snapshot.path]);
    const after = snapshot.edited(fix?.edits[0]?.edits ?? []);
    expect({ text: after.text, still: placesOf(after, code).map(({ args }) => args) }).toEqual({
      text: after.text,
      still: [],
    });
  });
});

test.each(['L18', 'N09', 'N14'] as const)('%s has a way out where no other file has the name', (code) => {
  const snapshot = open(splitExample(messages[code].bad));
  const [first] = placesOf(snapshot, code);
  const [fix] = first ? fixesFor(snapshot, first) : [];
  expect(fix?.title).toBe('Keep the line as a remark');
  const after = snapshot.edited(fix?.edits[0]?.edits ?? []);
  expect(after.text).toBe(snapshot.text.replace(/^use/, '// use'));
  expect(placesOf(after, code)).toEqual([]);
});

test.each(['/srv/puff.quern', 'C:\\recipes\\puff.quern', 'https://example.org/puff.quern', '..\\..\\puff.quern'])(
  'the path %s is refused, and the file of its name is offered',
  (path) => {
    const text = `use Puff from ${path} as base\n\nrecipe Tart\n  200 g base\n  hands 1 min: Roll.\n`;
    const puff = 'recipe Puff\n  200 g strong wheat flour\n  hands 1 min: Fold.\n';
    const snapshot = open([
      { path: 'main.quern', text },
      { path: 'store/puff.quern', text: puff },
    ]);
    const [refused] = placesOf(snapshot, 'N14');
    expect(refused && text.slice(refused.place.start, refused.place.end)).toBe(path);
    expect(placesOf(snapshot, 'L18')).toEqual([]);
    const [fix] = refused ? fixesFor(snapshot, refused) : [];
    const after = snapshot.edited(fix?.edits[0]?.edits ?? []);
    expect(after.text).toBe(text.replace(path, 'store/puff.quern'));
    expect(placesOf(after, 'N14')).toEqual([]);
  },
);

describe('a safe fix', () => {
  test.each(codes.filter((code) => fixers[code] !== undefined))(
    'of %s changes no sum and no error elsewhere',
    (code) => {
      const snapshot = open(splitExample(withOthers[code] ?? messages[code].bad));
      for (const diagnostic of placesOf(snapshot, code)) {
        for (const fix of fixesFor(snapshot, diagnostic).filter(({ safe }) => safe)) {
          const after = snapshot.edited(fix.edits[0]?.edits ?? []);
          const errors = (one: Snapshot): number =>
            one.compiled.diagnostics.filter(({ severity }) => severity === 'error').length;
          expect(errors(after)).toBeLessThanOrEqual(errors(snapshot));
          for (const formula of snapshot.compiled.formulas) {
            if (formula.broken) continue;
            const same = after.compiled.formulas.find(({ id }) => id === formula.id);
            expect(same?.dishGrams).toEqual(formula.dishGrams);
          }
        }
      }
    },
  );
});

test('every fix of every example can be made: its edits do not overlap and lie in the file', () => {
  for (const code of codes) {
    const snapshot = open(splitExample(withOthers[code] ?? messages[code].bad));
    for (const diagnostic of snapshot.compiled.diagnostics) {
      for (const fix of fixesFor(snapshot, diagnostic)) {
        for (const { edits } of fix.edits) {
          expect(applyEdits(snapshot.text, edits)).not.toBe(snapshot.text);
          for (const { span } of edits) expect(span.start >= 0 && span.end <= snapshot.text.length).toBe(true);
        }
        expect(fix.title).toMatch(/^[A-Z].*[^.]$/);
      }
    }
  }
});

test('all safe fixes of a file are made at once, and again until none is left', () => {
  const text =
    'recipe Toast\n\n  2 slices rye bread = 80 g\n  30 g butter = cold\n  hnads 2–3 min: Toast the bread [well] with the butter.\n';
  const { text: mended, mended: messagesMended } = mendAll(open([{ path: 'main.quern', text }]));
  expect(mended).toBe(
    'recipe Toast\n\n  2 slices rye bread = 80 g\n  30 g butter, cold\n  hands 2-3 min: Toast the bread (well) with the butter.\n',
  );
  expect(messagesMended.map(({ code }) => code).sort()).toEqual(['L01', 'L04', 'L13', 'L20']);
});

test('nothing that changes an amount is made without asking', () => {
  const text =
    'recipe Porridge\n\n  1-1/2 cups water\n  1 T sugar\n  80 g rolled oats\n  hob 5 min: Boil the oats with the sugar in the water.\n';
  expect(safeEdits(open([{ path: 'main.quern', text }])).edits).toEqual([]);
});
