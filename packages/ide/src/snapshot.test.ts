import { Session } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { memoryHost } from '@quern/testkit';
import { expect, test } from 'vitest';
import { snapshotOf } from './snapshot.js';

test.each(['as it lies', 'open'])('a file %s is as it was after edits upon edits were tried', (how) => {
  const text = 'recipe Toast\n  80 g rye bread\n  hands 2 min: Toast the bread.\n';
  const session = new Session(memoryHost([{ path: 'a.quern', text }], createFoodBook()));
  const now = how === 'open' ? text.replace('80', '90') : text;
  if (how === 'open') session.set('a.quern', now);
  const at = now.indexOf('g rye');
  const first = snapshotOf(session, 'a.quern')?.edited([{ span: { start: at, end: at }, text: '1 ' }]);
  const second = first?.edited([{ span: { start: 0, end: 0 }, text: '// once more\n' }]);
  expect(second?.text.startsWith('// once more\nrecipe')).toBe(true);
  expect(session.text('a.quern')).toBe(now);
});
