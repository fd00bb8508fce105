import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { isPlainPath, MOST_LETTERS, packFiles, unpackFiles, type SharedFile } from './share.js';

const loaf: SharedFile = {
  path: 'harbour-white.quern',
  text: 'recipe Harbour White\ngives 3 loaves of 800 g\n  30 % crème – “½ tsp” 🥖\r\n',
};

const link = (version: number, bytes: Uint8Array): string =>
  `#quern=${version}.${Buffer.from(bytes).toString('base64url')}`;

afterEach(() => vi.unstubAllGlobals());

describe('a link', () => {
  test('gives back the files that it holds, in their order', async () => {
    const files = [loaf, { path: 'fen/pastry.quern', text: '' }];
    const fragment = await packFiles(files);
    expect(await unpackFiles(`#${fragment}`)).toEqual({ kind: 'files', files });
    expect(await unpackFiles(fragment ?? '')).toEqual({ kind: 'files', files });
  });

  test('is deflate in base64url, as another program reads it', async () => {
    const fragment = (await packFiles([loaf])) ?? '';
    expect(fragment).toMatch(/^quern=1\.[A-Za-z0-9_-]+$/);
    const bytes = inflateRawSync(Buffer.from(fragment.slice('quern=1.'.length), 'base64url'));
    expect(JSON.parse(bytes.toString('utf8'))).toEqual([[loaf.path, loaf.text]]);
  });

  test('is read when another program packed it', async () => {
    const json = Buffer.from(JSON.stringify([[loaf.path, loaf.text]]), 'utf8');
    expect(await unpackFiles(link(1, deflateRawSync(json)))).toEqual({ kind: 'files', files: [loaf] });
  });

  test('holds the text as it is where the browser cannot pack', async () => {
    vi.stubGlobal('CompressionStream', undefined);
    const fragment = (await packFiles([loaf])) ?? '';
    expect(fragment).toMatch(/^quern=0\./);
    expect(await unpackFiles(fragment)).toEqual({ kind: 'files', files: [loaf] });
  });

  test('is not made for more than it can hold', async () => {
    // Letters that no packing makes shorter.
    const noise = Array.from({ length: 60_000 }, (_, index) => ((index * 2654435761) >>> 7).toString(36)).join('');
    expect(await packFiles([{ path: 'a.quern', text: noise }])).toBeUndefined();
    expect(await packFiles([{ path: 'a.quern', text: 'a'.repeat(600_000) }])).toBeUndefined();
  });

  test('that is none of ours is none', async () => {
    expect(await unpackFiles('')).toEqual({ kind: 'none' });
    expect(await unpackFiles('#method')).toEqual({ kind: 'none' });
  });
});

describe('a broken link', () => {
  const broken = async (fragment: string): Promise<string> => {
    const answer = await unpackFiles(fragment);
    return answer.kind === 'broken' ? answer.why : `not broken: ${JSON.stringify(answer)}`;
  };

  test('says so when it was cut, changed or written by nobody', async () => {
    const whole = `#${await packFiles([loaf])}`;
    const changed = 'it was cut or changed on its way';
    expect(await broken(whole.slice(0, -9))).toBe(changed);
    expect(await broken(`${whole.slice(0, 20)}~${whole.slice(20)}`)).toBe(changed);
    expect(await broken('#quern=2.AAAA')).toBe(changed);
    expect(await broken('#quern=0.e30')).toBe('it holds no recipe of the desk');
    expect(await broken(`#quern=0.${'A'.repeat(MOST_LETTERS)}`)).toBe('it is longer than a link of the desk can be');
  });

  test('does not swell without end', async () => {
    const swollen = deflateRawSync(Buffer.from(JSON.stringify([['a.quern', ' '.repeat(10_000_000)]])));
    expect(swollen.length).toBeLessThan(MOST_LETTERS / 2);
    expect(await broken(link(1, swollen))).toBe('it was cut or changed on its way');
  });

  test('names no file outside', async () => {
    const named = (path: unknown): string => link(0, Buffer.from(JSON.stringify([[path, 'recipe X']])));
    for (const path of [
      '../a.quern',
      '/a.quern',
      'a/../b.quern',
      'c:\\a.quern',
      'a\u0000.quern',
      'a.html',
      '',
      7,
      null,
    ])
      expect(await broken(named(path))).toBe('it holds no recipe of the desk');
  });
});

test('a plain path is relative, goes nowhere else and ends in .quern', () => {
  for (const path of ['a.quern', 'fen/a b.quern', 'äpfel.QUERN', '.a.quern']) expect(isPlainPath(path)).toBe(true);
  for (const path of ['..quern/../a.quern', 'a//b.quern', './a.quern', 'a.quern/', 'http://x/a.quern', 'a?.quern'])
    expect(isPlainPath(path)).toBe(false);
});
