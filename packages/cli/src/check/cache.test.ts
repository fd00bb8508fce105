import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { CheckCache } from './cache.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'quern-cache-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const ARCHIVE = 2000;
const open = (): CheckCache => new CheckCache(folder, 'tool', ARCHIVE);
const paths = Array.from({ length: 200 }, (_, index) => `shelf/${index}.quern`);
const sameFile = (): string => 'the hash';

function fill(): string[] {
  const cache = open();
  const keys = paths.map((path) => cache.key(path, `recipe ${path}`));
  // Every second file uses another, so that it is not the shortest kind of entry.
  keys.forEach((key, index) => cache.keep(key, [], index % 2 === 0 ? [] : [['other.quern', 'the hash']]));
  cache.save();
  return keys;
}

const inodes = (): string[] => readdirSync(folder).map((name) => `${name} ${statSync(join(folder, name)).ino}`);

test('of a large archive is kept in parts, and every entry is found again', () => {
  const keys = fill();
  expect(readdirSync(folder)).toHaveLength(16);
  const again = open();
  expect(keys.map((key) => again.find(key, sameFile))).toEqual(keys.map(() => []));
  expect(keys.filter((key) => again.find(key, () => 'another') === undefined)).toHaveLength(100);
});

test('one change writes one part anew, and nothing else', () => {
  const keys = fill();
  const before = inodes();
  const cache = open();
  for (const key of keys) cache.find(key, sameFile);
  cache.keep(cache.key('shelf/7.quern', 'another text'), [], []);
  cache.save();
  expect(inodes().filter((file) => !before.includes(file))).toHaveLength(1);
  expect(keys.every((key) => open().find(key, sameFile) !== undefined)).toBe(true);
});

test('what another run wrote in the meantime stays', () => {
  const [here, there] = [open(), open()];
  // Keys that begin alike are of the same part.
  const [one = '', other = ''] = paths
    .map((path) => here.key(path, path))
    .toSorted()
    .filter((key, index, all) => key[0] === all[index + 1]?.[0] || key[0] === all[index - 1]?.[0]);
  here.keep(one, [], []);
  there.keep(other, [], []);
  here.save();
  there.save();
  expect([one, other].map((key) => open().find(key, sameFile))).toEqual([[], []]);
});

test('a part that is broken is made anew, and the others serve', () => {
  const keys = fill();
  const [name = ''] = readdirSync(folder);
  const whole = readFileSync(join(folder, name), 'utf8');
  writeFileSync(join(folder, name), whole.slice(0, whole.length / 2));
  const cache = open();
  const lost = keys.filter((key) => cache.find(key, sameFile) === undefined);
  expect(lost.length).toBe(Object.keys((JSON.parse(whole) as { entries: object }).entries).length);
});
