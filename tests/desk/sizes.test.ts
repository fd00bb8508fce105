/** What a newcomer has to load before the desk is there. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { NOTICES } from '../../scripts/notices.mjs';
import { builtSite } from './desk.js';

/** Bytes of a transfer, gzip (RFC 1952), of everything: scripts, worker, food table, examples, styles. */
const MOST = 600_000;

test('the whole desk is small', async () => {
  const site = await builtSite();
  // The notices of what others wrote go with the site; a reader's browser does not load them.
  const names = readdirSync(site.folder);
  expect(names).toContain(NOTICES);
  const loaded = names.filter((name) => name !== NOTICES);
  const sizes = loaded.map((name) => {
    const packed = gzipSync(readFileSync(join(site.folder, name)), { level: 6 });
    return [name, packed.length] as const;
  });
  site.remove();
  expect(sizes.map(([name]) => name).sort()).toEqual([
    'desk.css',
    'desk.js',
    'examples.js',
    'foods.js',
    'index.html',
    'worker.js',
  ]);
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0);
  console.log(`desk, gzip: ${sizes.map(([name, size]) => `${name} ${size}`).join(', ')}, in all ${whole} bytes`);
  expect(whole).toBeLessThan(MOST);
  // A build that lost its contents would be small too.
  expect(whole).toBeGreaterThan(200_000);
});
