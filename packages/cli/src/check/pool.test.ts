import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkInThreads } from './pool.js';

/** A thread that answers each file with its name, and holds sixty megabytes for the one called "large". */
const THREAD = `
import { parentPort, resourceLimits } from 'node:worker_threads';
parentPort.on('message', ({ id, targets }) => {
  const reports = targets.map(({ file }) => {
    const held = file === 'large' ? Array.from({ length: 60 }, (_, at) => Array.from({ length: 131072 }, () => at + 0.5)) : [];
    return { file, found: [], refused: [], uses: [String(held.length), String(resourceLimits.maxOldGenerationSizeMb)] };
  });
  parentPort.postMessage({ id, reports });
});
`;

let folder: string;
let entry: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'quern-pool-'));
  entry = join(folder, 'thread.mjs');
  writeFileSync(entry, THREAD);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const targets = (names: readonly string[]) => names.map((file) => ({ file, shown: file, root: '/' }));
const many = Array.from({ length: 100 }, (_, index) => (index === 40 ? 'large' : `${index}`));

test('reports come in the order of the files, from threads with a bound on their memory', async () => {
  const steps: number[] = [];
  const reports = await checkInThreads(targets(many.filter((name) => name !== 'large')), {
    entry,
    threads: 2,
    megabytes: 32,
    progress: (done) => steps.push(done),
  });
  expect(reports.map(({ file }) => file)).toEqual(many.filter((name) => name !== 'large'));
  expect(new Set(reports.flatMap(({ uses }) => uses[1]))).toEqual(new Set(['32']));
  expect(steps.at(-1)).toBe(99);
});

test('a batch that does not fit in the bound is checked in a thread without one, and no report is lost', async () => {
  const reports = await checkInThreads(targets(many), { entry, threads: 2, megabytes: 32, progress: () => undefined });
  expect(reports.map(({ file }) => file)).toEqual(many);
  const large = reports[40];
  expect(large?.uses[0]).toBe('60');
  expect(large?.uses[1]).not.toBe('32');
});

test('another fault of a thread is not hidden', async () => {
  const broken = join(folder, 'broken.mjs');
  writeFileSync(broken, "throw new Error('the thread broke');");
  const options = { entry: broken, threads: 2, progress: () => undefined };
  await expect(checkInThreads(targets(['a']), options)).rejects.toThrow('the thread broke');
});
