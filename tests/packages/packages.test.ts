/** What is published, as a user would get it: built, packed, looked at by the tools that know the usual mistakes, and used. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPackage, type Problem } from '@arethetypeswrong/core';
import { beforeAll, describe, expect, test } from 'vitest';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { packAll, publishedNames, root, run, type Packed } from './pack.js';

let packed: readonly Packed[] = [];
let consumer = '';

beforeAll(async () => {
  ({ packed, consumer } = await packAll());
}, 300_000);

const names = publishedNames();
const one = (name: string): Packed => {
  const found = packed.find((candidate) => candidate.name === name);
  if (!found) throw new Error(`${name} was not packed`);
  return found;
};

describe.each(names)('%s', (name) => {
  test('has nothing that publint would change', async () => {
    const { folder } = one(name);
    const manifest: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const { messages } = await publint({ pkgDir: folder, pack: false, level: 'warning', strict: true });
    expect(messages.map((message) => formatMessage(message, manifest as Record<string, unknown>))).toEqual([]);
  });

  test('has types that resolve for whoever imports it', async () => {
    const result = await checkPackage(one(name).files);
    // For old resolution and for `require` there is nothing to resolve: the packages are modules.
    const problems = result.types === false ? ['no types'] : result.problems.filter(matters);
    expect(problems).toEqual([]);
  });

  test('holds what it needs and no tests', () => {
    const { folder, files } = one(name);
    expect(existsSync(join(folder, 'dist', 'index.js'))).toBe(true);
    expect(files.listFiles().filter((file) => /\.test\.|zz-/.test(file))).toEqual([]);
  });
});

describe('a project that installs them', () => {
  test('compiles against their types and runs', { timeout: 120_000 }, () => {
    const source = readFileSync(join(import.meta.dirname, 'consumer', 'use.ts'), 'utf8');
    for (const name of names) expect(source).toContain(`from '${name}'`);
    writeFileSync(join(consumer, 'use.ts'), source);
    writeFileSync(join(consumer, 'package.json'), '{ "type": "module", "private": true }');
    const compilerOptions = { module: 'nodenext', target: 'es2023', strict: true, skipLibCheck: true, types: ['node'] };
    writeFileSync(join(consumer, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['use.ts'] }));
    run(process.execPath, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '-p', 'tsconfig.json'], consumer);
    expect(run(process.execPath, ['use.js'], consumer)).toBe('used every package\n');
  });
});

function matters(problem: Problem): boolean {
  if (problem.kind === 'CJSResolvesToESM') return false;
  return !('resolutionKind' in problem && problem.resolutionKind === 'node10');
}
