/** docs/archives.md does what it says: its commands are run on a small archive, and its configurations are read. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { recipeText } from '../bench/corpus.js';
import { builtCommand, type BuiltCommand } from './command.js';

const page = readFileSync(join(import.meta.dirname, '..', 'docs', 'archives.md'), 'utf8');
const blocks = (language: string) =>
  [...page.matchAll(new RegExp(`^\`\`\`${language}\\n(.*?)^\`\`\``, 'gms'))].map(([, text = '']) => text);

describe('the commands of the page', () => {
  let quern: BuiltCommand;
  const folder = mkdtempSync(join(tmpdir(), 'quern-archive-'));

  beforeAll(async () => {
    quern = await builtCommand();
    mkdirSync(join(folder, 'recipes', 'bread'), { recursive: true });
    for (let index = 0; index < 40; index++) {
      writeFileSync(join(folder, 'recipes', ...(index % 2 ? ['bread'] : []), `${index}.quern`), recipeText(index));
    }
    writeFileSync(join(folder, 'recipes', 'broken.quern'), 'recipe Broken\n  twelve g salt\n');
  });
  afterAll(() => {
    quern.remove();
    rmSync(folder, { recursive: true });
  });

  test('keep a cache that changes nothing of what is said', async () => {
    const [line = ''] = blocks('sh')[0]?.split('\n') ?? [];
    const args = line.split(' ').slice(1);
    const first = await quern.run(folder, ...args);
    expect(first.code).toBe(1);
    expect(first.out).toContain('broken.quern');
    expect(await quern.run(folder, ...args)).toEqual(first);
  });

  test('split the archive and put the reports together again', async () => {
    const lines = blocks('sh')[1]?.trimEnd().split('\n') ?? [];
    expect(lines.length).toBe(4);
    const files: string[] = [];
    for (const line of lines) {
      const [command = '', output = ''] = line.split(' > ');
      const { out, code } = await quern.run(folder, ...command.split(' ').slice(1));
      expect([0, 1]).toContain(code);
      writeFileSync(join(folder, output), out);
      files.push(output);
    }
    // Together the parts say what one machine would have said.
    const whole = await quern.run(folder, 'check', 'recipes', '--format', 'sarif');
    expect(readFileSync(join(folder, files.at(-1) ?? ''), 'utf8')).toBe(whole.out);
    // No part is empty and none is everything: the work is shared.
    const counts = files
      .slice(0, 3)
      .map((file) => readFileSync(join(folder, file), 'utf8').split('broken.quern').length - 1);
    expect(counts.filter((count) => count > 0).length).toBe(1);
  });
});

describe('the configurations of the page', () => {
  test('name every part of the matrix once', () => {
    const { jobs } = parseYaml(blocks('yaml')[0] ?? '') as {
      jobs: { part: { strategy: { matrix: { part: number[] } }; steps: { run?: string }[] } };
    };
    const parts = jobs.part.strategy.matrix.part;
    const command = jobs.part.steps.find(({ run }) => run !== undefined)?.run ?? '';
    expect(command).toContain(`}}/${parts.length} `);
    expect(parts).toEqual(Array.from({ length: parts.length }, (_, index) => index + 1));
  });

  test('are JSON where they say so', () => {
    const { targets } = JSON.parse(blocks('json')[0] ?? '') as { targets: { check: { cache: boolean } } };
    expect(targets.check.cache).toBe(true);
  });
});
