/** Every example that names a photograph has it beside it, as its reader would get it. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const named = readdirSync(examples)
  .filter((name) => name.endsWith('.quern'))
  .flatMap((name) =>
    [...readFileSync(join(examples, name), 'utf8').matchAll(/^photo ([^,\n]+)/gm)].map(
      ([, path = '']) => [name, path] as const,
    ),
  );

test('there are some', () => {
  expect(named.length).toBeGreaterThan(1);
});

test.each(named)('%s: %s', (_, path) => {
  const file = join(examples, path.trim());
  expect(existsSync(file)).toBe(true);
  // It goes into the page itself.
  expect(statSync(file).size).toBeLessThan(100_000);
  // JPEG begins with FF D8 FF (ISO/IEC 10918-1, Annex B).
  expect([...readFileSync(file).subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
});
