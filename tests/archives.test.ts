/** docs/archives.md does what it says: its commands are run on a small archive, and its configurations are read. */
import { spawnSync } from 'node:child_process';
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

describe('the commands of build systems', () => {
  const quern = useCommand('build-systems');
  const run = (script: string) =>
    spawnSync('sh', ['-ec', script], { cwd: quern.folder, encoding: 'utf8', env: { PATH: process.env['PATH'] ?? '' } });
  const command = () => `${process.execPath} ${quern.entry}`;
  const found = (path: string): number =>
    (JSON.parse(readFileSync(join(quern.folder, path), 'utf8')) as { summary: { errors: number } }).summary.errors;

  beforeAll(() => {
    for (let index = 0; index < 4; index++) quern.write(`recipes/bread/${index}.quern`, recipeText(index));
    quern.write('dist/keep', '');
  });

  test('Nx: a target writes the outputs that it names, and fails when there is an error', () => {
    const { targets } = JSON.parse(blocks('json')[0] ?? '') as {
      targets: { check: { command: string; outputs: string[] } };
    };
    const { command: line, outputs } = targets.check;
    const script = line.replace(/^quern\b/, command());
    const report = (outputs[0] ?? '').replace('{workspaceRoot}/', '');
    expect(run(script).status).toBe(0);
    expect(found(report)).toBe(0);
    quern.write('recipes/bread/broken.quern', 'recipe Broken\n  twelve g salt\n');
    expect(run(script).status).toBe(1);
    expect(found(report)).toBeGreaterThan(0);
  });

  test('Bazel: a rule makes its report of its sources alone, also when there is an error in them', () => {
    const [, cmd = ''] = /cmd = "(.*)",/.exec(blocks('python')[0] ?? '') ?? [];
    // What Bazel puts in place of its variables.
    const script = (sources: string) =>
      cmd
        .replace('$(location //tools:quern)', command())
        .replace('$(SRCS)', sources)
        .replace('$@', 'bread.json')
        .replaceAll('$$', '$');
    quern.write('recipes/bread/broken.quern', 'recipe Broken\n  twelve g salt\n');
    expect(run(script('recipes/bread/0.quern recipes/bread/1.quern'))).toMatchObject({ status: 0 });
    expect(found('bread.json')).toBe(0);
    expect(run(script('recipes/bread/0.quern recipes/bread/broken.quern'))).toMatchObject({ status: 0 });
    expect(found('bread.json')).toBeGreaterThan(0);
    // A file that is not there is no report: the rule fails.
    expect(run(script('recipes/bread/gone.quern')).status).not.toBe(0);
  });

  test('the matrix: sixteen parts, the third of them as the page of the command writes it, are the whole', () => {
    for (let index = 0; index < 40; index++) quern.write(`recipes/${index}.quern`, recipeText(index));
    const parts = Array.from({ length: 16 }, (_, index) => index + 1);
    for (const part of parts) {
      const { out, code } = quern.run(['check', 'recipes', '--shard', `${part}/16`, '--format', 'json']);
      // A part may be empty: that is no mistake.
      expect([0, 1]).toContain(code);
      quern.write(`part-${part}.json`, out);
    }
    const reports = parts.map((part) => `part-${part}.json`);
    for (const format of ['json', 'sarif', 'github'])
      expect(quern.run(['check', '--merge', ...reports, '--format', format]).out).toBe(
        quern.run(['check', 'recipes', '--format', format]).out,
      );
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
