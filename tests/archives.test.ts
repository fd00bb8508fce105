/** docs/archives.md does what it says: its commands are run on a small archive, and its configurations are read. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { recipeText } from '../bench/corpus.js';
import { useCommand } from './cli/command.js';

const page = readFileSync(join(import.meta.dirname, '..', 'docs', 'archives.md'), 'utf8');
const blocks = (language: string) =>
  [...page.matchAll(new RegExp(`^\`\`\`${language}\\n(.*?)^\`\`\``, 'gms'))].map(([, text = '']) => text);

describe('the commands of the page', () => {
  const quern = useCommand('archives');

  beforeAll(() => {
    for (let index = 0; index < 40; index++) {
      quern.write(`recipes/${index % 2 ? 'bread/' : ''}${index}.quern`, recipeText(index));
    }
    quern.write('recipes/broken.quern', 'recipe Broken\n  twelve g salt\n');
  });

  test('keep a cache that changes nothing of what is said', () => {
    const [line = ''] = blocks('sh')[0]?.split('\n') ?? [];
    const args = line.split(' ').slice(1);
    const first = quern.run(args);
    expect(first.code).toBe(1);
    expect(first.out).toContain('broken.quern');
    expect(quern.run(args)).toEqual(first);
  });

  test('split the archive and put the reports together again', () => {
    const lines = blocks('sh')[1]?.trimEnd().split('\n') ?? [];
    expect(lines.length).toBe(4);
    const files: string[] = [];
    for (const line of lines) {
      const [command = '', output = ''] = line.split(' > ');
      const { out, code } = quern.run(command.split(' ').slice(1));
      expect([0, 1]).toContain(code);
      quern.write(output, out);
      files.push(output);
    }
    // Together the parts say what one machine would have said.
    const whole = quern.run(['check', 'recipes', '--format', 'sarif']);
    expect(readFileSync(join(quern.folder, files.at(-1) ?? ''), 'utf8')).toBe(whole.out);
    // No part is empty and none is everything: the work is shared.
    const counts = files
      .slice(0, 3)
      .map((file) => readFileSync(join(quern.folder, file), 'utf8').split('broken.quern').length - 1);
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
