/** What is published, as a user would get it: built, packed, looked at by the tools that know the usual mistakes, and used. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPackage, type Problem } from '@arethetypeswrong/core';
import { beforeAll, describe, expect, test } from 'vitest';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { NOTICES } from '../../scripts/notices.mjs';
import { stageExtension } from '../../scripts/stage-extension.mjs';
import { dependencies } from '../../scripts/licences-page.js';
import { packAll, publishedNames, root, run, type Packed } from './pack.js';
import { complaints, measured, pageOf, readPage, ROOM } from './sizes.js';

let packed: readonly Packed[] = [];
let consumer = '';
const stage = join(root, '.cache', 'staged-extension');

beforeAll(async () => {
  ({ packed, consumer } = await packAll());
  await stageExtension(stage);
}, 300_000);

const names = publishedNames();
const one = (name: string): Packed => {
  const found = packed.find((candidate) => candidate.name === name);
  if (!found) throw new Error(`${name} was not packed`);
  return found;
};
const manifestOf = (name: string): Readonly<Record<string, unknown>> =>
  JSON.parse(readFileSync(join(one(name).folder, 'package.json'), 'utf8')) as Record<string, unknown>;

describe.each(names)('%s', (name) => {
  test('has nothing that publint would change', async () => {
    const { folder } = one(name);
    const { messages } = await publint({ pkgDir: folder, pack: false, level: 'warning', strict: true });
    expect(messages.map((message) => formatMessage(message, manifestOf(name)))).toEqual([]);
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
    expect(files.listFiles().filter((file) => /\.test\.|zz-|\.tsbuildinfo$/.test(file))).toEqual([]);
  });

  test('says what it is: licence, page, what it needs and where its types are', () => {
    const { folder } = one(name);
    expect(readFileSync(join(folder, 'LICENSE'), 'utf8')).toBe(readFileSync(join(root, 'LICENSE'), 'utf8'));
    const page = readFileSync(join(folder, 'README.md'), 'utf8');
    expect(page).toMatch(new RegExp(`^# ${name}\n`));
    // Beside an installed package there are no other pages of the project.
    expect(page).not.toMatch(/\]\((?!https?:)/);
    expect(manifestOf(name)).toMatchObject({
      license: 'MIT',
      type: 'module',
      sideEffects: false,
      engines: { node: '>=20.19' },
      types: './dist/index.d.ts',
      description: expect.stringMatching(/.{20}/) as string,
      author: expect.stringMatching(/./) as string,
      keywords: expect.arrayContaining(['quern']) as string[],
      publishConfig: { access: 'public' },
    });
  });
});

describe('what others wrote', () => {
  const notices = (folder: string): string => readFileSync(join(folder, NOTICES), 'utf8');
  const bundles: readonly (readonly [what: string, notices: () => string, holds: readonly string[]])[] = [
    [
      'the command',
      () => notices(join(one('quern').folder, 'dist', 'bundle')),
      ['chevrotain', 'temporal-polyfill', 'diff'],
    ],
    [
      'the desk of the command',
      () => notices(join(one('quern').folder, 'dist', 'bundle', 'desk')),
      ['@codemirror/view', 'chevrotain'],
    ],
    ['the desk', () => notices(join(one('@quern/desk').folder, 'dist', 'site')), ['@codemirror/view', 'chevrotain']],
    ['the extension', () => notices(stage), ['vscode-languageclient', 'vscode-languageserver', 'chevrotain']],
    [
      'the server',
      () => readFileSync(join(one('@quern/server').folder, 'dist', `quern-server.cjs.${NOTICES}`), 'utf8'),
      ['vscode-languageserver', 'chevrotain'],
    ],
  ];

  test.each(bundles)('goes with %s, each with its licence', (_, text, holds) => {
    for (const name of holds) {
      const known = dependencies().find((other) => other.name === name);
      expect(text()).toContain(`\n${name} ${known?.version ?? '?'} (${known?.licence ?? '?'})\n`);
    }
    // Their licences ask that these words go with every copy.
    expect(text()).toMatch(/Permission is hereby granted, free of charge/);
    expect(text()).toMatch(/Apache License\s+Version 2\.0/);
    // Nothing is in a bundle that docs/licences.md does not list.
    const listed = new Set(dependencies().map(({ name, version }) => `${name} ${version}`));
    for (const [, found = ''] of text().matchAll(/^(\S+ \d\S*) \(\S+\)$/gm)) expect(listed).toContain(found);
  });

  test('is packed with the extension', () => {
    const { files } = JSON.parse(readFileSync(join(stage, 'package.json'), 'utf8')) as { files: string[] };
    expect(files).toContain(NOTICES);
  });
});

describe('a project that installs them', () => {
  const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const source = readFileSync(join(import.meta.dirname, 'consumer', 'use.ts'), 'utf8');
  const base = { target: 'es2023', strict: true, skipLibCheck: true, types: ['node'] };
  /** The ways in which projects of today resolve what they import. */
  const ways = {
    nodenext: { module: 'nodenext' },
    node16: { module: 'node16', moduleResolution: 'node16' },
    bundler: { module: 'esnext', moduleResolution: 'bundler' },
  };

  /** The examples of the pages, each as a file of the project. */
  const examples = (): readonly string[] =>
    names.map((name) => {
      const page = readFileSync(join(one(name).folder, 'README.md'), 'utf8');
      const [, , code = ''] = /^(`{3,})ts\n(.*?)^\1$/ms.exec(page) ?? [];
      expect(code).toContain(`from '${name}'`);
      const file = `example-${name.replace(/\W+/g, '-')}.ts`;
      writeFileSync(join(consumer, file), code);
      return file;
    });

  test.each(Object.entries(ways))('compiles against their types: %s', { timeout: 120_000 }, (way, settings) => {
    for (const name of names) expect(source).toContain(`from '${name}'`);
    writeFileSync(join(consumer, 'use.ts'), source);
    const compilerOptions = { ...base, ...settings, ...(way === 'nodenext' ? {} : { noEmit: true }) };
    const project = { compilerOptions, files: ['use.ts', ...examples()] };
    writeFileSync(join(consumer, `tsconfig.${way}.json`), JSON.stringify(project));
    expect(run(process.execPath, [tsc, '-p', `tsconfig.${way}.json`], consumer)).toBe('');
  });

  test('uses each one at run time', { timeout: 120_000 }, () => {
    expect(run(process.execPath, ['use.js'], consumer)).toBe('used every package\n');
  });

  test('runs the examples of their pages', { timeout: 120_000 }, () => {
    for (const file of examples()) {
      const said = run(process.execPath, [file.replace(/ts$/, 'js')], consumer);
      // A server without anybody to speak to ends in silence.
      expect(said === '', file).toBe(file.includes('server'));
    }
  });

  test('starts the programs that they bring', () => {
    writeFileSync(join(consumer, 'toast.quern'), 'recipe Toast\n\n  80 g rye bread\n  hands 2 min: Toast the bread.\n');
    const { bin } = manifestOf('quern') as { bin: { quern: string } };
    const quern = join(one('quern').folder, bin.quern);
    expect(run(process.execPath, [quern, 'sheet', 'toast.quern'], consumer)).toContain('rye bread');
    const server = join(one('@quern/server').folder, 'dist', 'quern-server.cjs');
    expect(run(process.execPath, [server, '--version'], consumer)).toBe(
      `${String(manifestOf('@quern/server')['version'])}\n`,
    );
    expect(readdirSync(join(one('@quern/desk').folder, 'dist', 'site'))).toContain('index.html');
  });
});

describe('sizes', () => {
  const path = join(root, 'docs', 'sizes.md');

  test('are as docs/sizes.md tells them, within a twentieth (npm run sizes)', () => {
    const now = measured(packed, stage);
    if (process.env['UPDATE'] === '1') writeFileSync(path, pageOf(now));
    const page = existsSync(path) ? readFileSync(path, 'utf8') : '';
    expect(complaints(readPage(page), now)).toEqual([]);
  });

  test('that grow by more are told, with what to do', () => {
    const was = [
      { what: 'a', bytes: 100_000, packed: 50_000 },
      { what: 'b', bytes: 100_000, packed: 50_000 },
    ];
    const grown = { what: 'a', bytes: 100_000 * (1 + ROOM.share) + 1, packed: 50_000 };
    expect(complaints(was, was)).toEqual([]);
    expect(complaints(was, [grown, { what: 'c', bytes: 1, packed: 1 }])).toEqual([
      'c is not in docs/sizes.md; if that is meant, make docs/sizes.md anew: npm run sizes',
      'b is in docs/sizes.md and is not made; if that is meant, make docs/sizes.md anew: npm run sizes',
      'a has 105001 bytes, 5.0 % more than 100000; if that is meant, make docs/sizes.md anew: npm run sizes',
    ]);
  });
});

function matters(problem: Problem): boolean {
  if (problem.kind === 'CJSResolvesToESM') return false;
  return !('resolutionKind' in problem && problem.resolutionKind === 'node10');
}
