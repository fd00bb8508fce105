/**
 * The house rules that a machine can check: who may import whom, what stays out of the core, and how long a file may be.
 * The table of arrows is the one in DEVELOPERS.md.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import ts from 'typescript';

const root = resolve(import.meta.dirname, '..');

type PackageName = keyof typeof arrows;

/** Which workspace packages a package may import. `type` packages: types only. */
const arrows = {
  text: { may: [] },
  quantity: { may: [] },
  syntax: { may: ['text', 'quantity'] },
  compiler: { may: ['text', 'quantity', 'syntax'] },
  foods: { may: ['text', 'quantity'], types: ['compiler'] },
  views: { may: ['text', 'quantity', 'syntax', 'compiler'] },
  publish: { may: ['text', 'quantity', 'views'], types: ['compiler', 'syntax'] },
  ide: { may: ['text', 'quantity', 'syntax', 'compiler', 'views'] },
  cli: { may: ['text', 'quantity', 'syntax', 'compiler', 'foods', 'views', 'publish', 'ide'] },
  server: { may: ['text', 'compiler', 'foods', 'views', 'publish', 'ide'] },
  vscode: { may: ['server'] },
  'remark-quern': { may: ['text', 'compiler', 'foods', 'views', 'publish'] },
  desk: { may: ['text', 'quantity', 'syntax', 'compiler', 'foods', 'views', 'publish', 'ide'] },
  testkit: { may: ['text', 'compiler'] },
} satisfies Record<string, { may: readonly string[]; types?: readonly string[] }>;

/** Libraries that only some packages may know, and what may speak to the system. */
const reserved: readonly { readonly what: RegExp; readonly in: (file: SourceFile) => boolean; readonly why: string }[] =
  [
    {
      what: /^node:/,
      in: ({ packageName, path }) =>
        ['cli', 'vscode', 'testkit'].includes(packageName) || path === 'packages/server/src/main-node.ts',
      why: 'the core takes text and gives values; only the edges touch the system',
    },
    { what: /^vscode-languageserver/, in: inPackages('server', 'vscode'), why: 'no protocol type below the server' },
    { what: /^vscode(-languageclient.*)?$/, in: inPackages('vscode'), why: 'the editor is one consumer of several' },
    { what: /^chevrotain/, in: inPackages('syntax'), why: 'one parser, in one place' },
    {
      what: /^(unified|mdast|hast|remark|rehype|vfile|unist)/,
      in: inPackages('remark-quern'),
      why: 'Markdown is one consumer of several',
    },
    { what: /^@codemirror\//, in: inPackages('desk'), why: 'the editor of the desk is one consumer of several' },
    { what: /^vitest|^fast-check/, in: inPackages('testkit'), why: 'tests only' },
  ];

/** What would bring floating point, the clock or the locale between the text and the printed figure. */
const inexact = /\bparseFloat\b|\bNumber\(|\bMath\.(?!max\b|min\b)\w+|\.toFixed\b|\bDate\b|\bIntl\b|\.toLocale\w*/;
const exactPackages = ['quantity', 'compiler', 'views'];

/** Lines where something of that list is right, with the reason. */
const exactExceptions: readonly { readonly path: string; readonly holds: RegExp; readonly why: string }[] = [
  {
    path: 'packages/quantity/src/rational.ts',
    holds: /let [xy] = Number\([ab]\)/,
    why: 'whole numbers small enough to be exact, for a faster common divisor',
  },
  {
    path: 'packages/quantity/src/rational.ts',
    holds: /Number\(a\.[nd]/,
    why: 'toNumber, for lengths in drawings; printed figures do not go through it',
  },
];

/** Hand-written files over the soft limit, with the reason. */
const longFiles: Readonly<Record<string, string>> = {};
const softLimit = 600;

interface SourceFile {
  readonly path: string;
  readonly packageName: PackageName;
  readonly text: string;
  readonly imports: readonly Import[];
}

interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
}

function inPackages(...names: PackageName[]): (file: SourceFile) => boolean {
  return ({ packageName }) => names.includes(packageName);
}

const packageNames = readdirSync(join(root, 'packages'));
const files = packageNames.flatMap((name) => sourcesOf(name as PackageName));
const byPath = new Map(files.map((file) => [file.path, file]));
const manifests = new Map(packageNames.map((name) => [name, manifest(name)]));
const packageByScope = new Map([...manifests].map(([name, { name: scoped }]) => [scoped, name as PackageName]));

interface Manifest {
  readonly name: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly exports?: Readonly<Record<string, unknown>>;
}

function manifest(name: string): Manifest {
  return JSON.parse(readFileSync(join(root, 'packages', name, 'package.json'), 'utf8')) as Manifest;
}

function sourcesOf(packageName: PackageName): SourceFile[] {
  const folder = join(root, 'packages', packageName, 'src');
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/\.test\.ts$/.test(name) && !/(^|[\\/])(generated|test)[\\/]/.test(name))
    .map((name) => {
      const path = relative(root, join(folder, name)).replaceAll('\\', '/');
      const text = readFileSync(join(folder, name), 'utf8');
      return { path, packageName, text, imports: importsOf(path, text) };
    });
}

/** Every module a file names: imports, re-exports, `import('x')` and `typeof import('x')`. */
function importsOf(path: string, text: string): Import[] {
  const imports: Import[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      imports.push({ specifier: node.moduleSpecifier.text, typeOnly: isTypeOnly(node.importClause) });
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier)) {
      const named = node.exportClause && ts.isNamedExports(node.exportClause) ? node.exportClause.elements : undefined;
      const typeOnly = node.isTypeOnly || (named !== undefined && named.every((element) => element.isTypeOnly));
      imports.push({ specifier: node.moduleSpecifier.text, typeOnly });
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [specifier] = node.arguments;
      if (specifier && ts.isStringLiteral(specifier)) imports.push({ specifier: specifier.text, typeOnly: false });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      if (ts.isStringLiteral(node.argument.literal))
        imports.push({ specifier: node.argument.literal.text, typeOnly: true });
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true));
  return imports;
}

function isTypeOnly(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.isTypeOnly) return true;
  if (clause.name !== undefined) return false;
  const bindings = clause.namedBindings;
  return (
    bindings !== undefined && ts.isNamedImports(bindings) && bindings.elements.every((element) => element.isTypeOnly)
  );
}

/** The workspace package a specifier names, and the entry point of it ('.' or './x'). */
function workspaceImport(specifier: string): { readonly target: PackageName; readonly entry: string } | undefined {
  for (const [scoped, target] of packageByScope) {
    if (specifier === scoped) return { target, entry: '.' };
    if (specifier.startsWith(`${scoped}/`)) return { target, entry: `.${specifier.slice(scoped.length)}` };
  }
  return undefined;
}

/** The source file that a relative import means. */
function resolved(from: SourceFile, specifier: string): string {
  return relative(root, resolve(root, dirname(from.path), specifier.replace(/\.js$/, '.ts'))).replaceAll('\\', '/');
}

/** A line for each offence, so that a failure says where and why. */
function offences(of: (file: SourceFile) => readonly string[]): string[] {
  return files.flatMap((file) => of(file).map((what) => `${file.path}: ${what}`));
}

describe('packages', () => {
  test('are those of the table', () => {
    expect([...packageNames].sort()).toEqual(Object.keys(arrows).sort());
  });

  test('have sources to look at, and their imports are seen', () => {
    for (const name of packageNames) expect(files.some((file) => file.packageName === name)).toBe(true);
    expect(importsOf('x.ts', "import { type A } from 'a';\nexport * from 'b';\nconst c = import('c');")).toEqual([
      { specifier: 'a', typeOnly: true },
      { specifier: 'b', typeOnly: false },
      { specifier: 'c', typeOnly: false },
    ]);
  });

  test('import each other only along the arrows', () => {
    const found = offences((file) =>
      file.imports.flatMap(({ specifier, typeOnly }) => {
        const target = workspaceImport(specifier)?.target;
        if (target === undefined || target === file.packageName) return [];
        const rule: { may: readonly string[]; types?: readonly string[] } = arrows[file.packageName];
        if (rule.may.includes(target) || (typeOnly && rule.types?.includes(target))) return [];
        return [
          `${file.packageName} may not import ${specifier}${rule.types?.includes(target) ? ' but for types' : ''}`,
        ];
      }),
    );
    expect(found).toEqual([]);
  });

  test('name what they import in their package.json', () => {
    const found = offences(({ packageName, imports }) =>
      imports.flatMap(({ specifier, typeOnly }) => {
        if (specifier.startsWith('.') || specifier.startsWith('node:') || specifier === 'vscode') return [];
        const parts = specifier.split('/');
        const name = specifier.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] ?? '');
        if (name === manifests.get(packageName)?.name) return [`imports itself by name: ${specifier}`];
        if (packageName === 'testkit' && name === 'vitest') return [];
        if (manifests.get(packageName)?.dependencies?.[name] !== undefined) return [];
        return typeOnly && /^(mdast|hast|unist)$/.test(name) ? [] : [`${name} is not in its package.json`];
      }),
    );
    expect(found).toEqual([]);
  });

  test('enter each other only through exports', () => {
    const found = offences((file) =>
      file.imports.flatMap(({ specifier }) => {
        if (specifier.startsWith('.')) {
          const inside = resolved(file, specifier).startsWith(`packages/${file.packageName}/`);
          return inside ? [] : [`reaches out of its package: ${specifier}`];
        }
        const workspace = workspaceImport(specifier);
        if (workspace === undefined) return [];
        const exported = Object.keys(manifests.get(workspace.target)?.exports ?? {});
        return exported.includes(workspace.entry) ? [] : [`${specifier} is not exported`];
      }),
    );
    expect(found).toEqual([]);
  });

  test('have no cycle of value imports', () => {
    expect(cycles()).toEqual([]);
  });
});

/** Each cycle once, as the path of files around it. */
function cycles(): string[] {
  const found: string[] = [];
  const state = new Map<string, 'open' | 'done'>();
  const stack: string[] = [];
  const visit = (path: string): void => {
    if (state.get(path) === 'done') return;
    if (state.get(path) === 'open') {
      found.push([...stack.slice(stack.indexOf(path)), path].join(' -> '));
      return;
    }
    const file = byPath.get(path);
    if (file === undefined) return;
    state.set(path, 'open');
    stack.push(path);
    for (const { specifier, typeOnly } of file.imports) {
      if (!typeOnly && specifier.startsWith('.')) visit(resolved(file, specifier));
    }
    stack.pop();
    state.set(path, 'done');
  };
  for (const { path } of files) visit(path);
  return found;
}

describe('the core', () => {
  test('leaves libraries and the system to those who may know them', () => {
    const builtin = new Set(builtinModules);
    const found = offences((file) =>
      file.imports.flatMap(({ specifier }) => {
        if (builtin.has(specifier)) return [`write node:${specifier}`];
        const rule = reserved.find(({ what }) => what.test(specifier));
        return rule === undefined || rule.in(file) ? [] : [`may not import ${specifier}: ${rule.why}`];
      }),
    );
    expect(found).toEqual([]);
  });

  test('stays exact until it prints', () => {
    const unused = new Set(exactExceptions);
    const found = offences(({ path, packageName, text }) => {
      if (!exactPackages.includes(packageName)) return [];
      return withoutComments(path, text)
        .split('\n')
        .flatMap((line, index) => {
          if (!inexact.test(line)) return [];
          const exception = exactExceptions.find((one) => one.path === path && one.holds.test(line));
          if (exception === undefined) return [`line ${index + 1}: ${line.trim()}`];
          unused.delete(exception);
          return [];
        });
    });
    expect(found).toEqual([]);
    expect([...unused]).toEqual([]);
  });

  test('keeps its views apart', () => {
    // A view is a file or a folder right under views/src; what several need is in common/.
    const viewOf = (path: string) => path.split('/')[3]?.replace(/\.ts$/, '') ?? '';
    const found = offences((file) => {
      if (file.packageName !== 'views' || viewOf(file.path) === 'index') return [];
      return file.imports
        .filter(({ specifier }) => specifier.startsWith('.'))
        .map(({ specifier }) => viewOf(resolved(file, specifier)))
        .filter((view) => view !== viewOf(file.path) && view !== 'common')
        .map((view) => `imports the view ${view}`);
    });
    expect(found).toEqual([]);
  });
});

/** The text with its comments and string literals blanked, line by line. */
function withoutComments(path: string, text: string): string {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const blank: [number, number][] = [];
  const visit = (node: ts.Node): void => {
    for (const range of ts.getLeadingCommentRanges(text, node.getFullStart()) ?? []) blank.push([range.pos, range.end]);
    for (const range of ts.getTrailingCommentRanges(text, node.getEnd()) ?? []) blank.push([range.pos, range.end]);
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node))
      blank.push([node.getStart(), node.getEnd()]);
    node.getChildren(source).forEach(visit);
  };
  visit(source);
  const characters = text.split('');
  for (const [start, end] of blank) {
    for (let at = start; at < end; at++) if (characters[at] !== '\n') characters[at] = ' ';
  }
  return characters.join('');
}

describe('files', () => {
  test('stay short enough to be read', () => {
    const long = files.filter(({ text }) => text.split('\n').length > softLimit).map(({ path }) => path);
    expect(long.sort()).toEqual(Object.keys(longFiles).sort());
  });
});
