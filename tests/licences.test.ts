import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { dependencies, licencesPage } from '../scripts/licences-page.js';

/** Licences that ask for no more than their text to be kept (SPDX identifiers). */
const permissive = [
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'ISC',
  'MIT',
  'Unlicense',
];

test('what is installed beside us has a permissive licence', () => {
  expect(dependencies().map(({ name }) => name)).toContain('chevrotain');
  const others = dependencies().filter(({ licence }) => !permissive.includes(licence));
  expect(others).toEqual([]);
});

test('docs/licences.md is up to date (npm run docs)', () => {
  expect(readFileSync(join(import.meta.dirname, '..', 'docs', 'licences.md'), 'utf8')).toBe(licencesPage());
});
