import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { delimiter, dirname, join, relative, resolve } from 'node:path';
import { UsageError } from '../command.js';
import { withSlashes } from '../files/workspace.js';
import { writeAtomically } from '../files/write-atomically.js';
import type { System } from '../system/system.js';
import type { Repository } from './git.js';

/*
 * What `quern git-setup` writes: settings of the repository, a line of its attributes, and a stretch of its hooks between
 * two marks. All of it stays in the clone unless the attributes are to be shared; all of it can be taken away again.
 */

/** Something that is to be written, told before it is done. */
export interface SetupStep {
  readonly says: string;
  do(): void;
}

export interface SetupOptions {
  /** How git is to call this command: 'quern', or node with the file that was started. */
  readonly command: string;
  /** Write the attributes where everybody who clones gets them. */
  readonly shared: boolean;
  readonly hooks: boolean;
}

const BLOCKS = 'recipe|make|variant|food|culture|kitchen|menu|course';

const settings = (command: string): readonly (readonly [key: string, value: string])[] => [
  ['diff.quern.textconv', `${command} git-driver text`],
  ['diff.quern.command', `${command} git-driver diff`],
  ['diff.quern.xfuncname', `^[ \t]*((${BLOCKS})[ \t].*)$`],
  ['merge.quern.name', 'recipes by make and line'],
  ['merge.quern.driver', `${command} git-driver merge %O %A %B --marker-size %L --path %P`],
];

const ATTRIBUTES = '*.quern diff=quern merge=quern';
const BEGIN = '# quern git-setup: begin';
const END = '# quern git-setup: end';
const HOOKS = ['pre-commit', 'pre-merge-commit'] as const;

/** How git can call this command again. */
export function commandFor({ entry, environment }: System): string {
  const folders = (environment['PATH'] ?? '').split(delimiter);
  const onPath = folders.some(
    (folder) => folder !== '' && ['quern', 'quern.cmd'].some((name) => existsSync(join(folder, name))),
  );
  if (onPath || entry === undefined) return 'quern';
  const quoted = (path: string): string => `'${withSlashes(path).replaceAll("'", `'\\''`)}'`;
  return `${quoted(process.execPath)} ${quoted(entry)}`;
}

/** What is to be written; nothing where all of it stands already. */
export function setUpSteps(repository: Repository, options: SetupOptions): readonly SetupStep[] {
  return [
    ...settings(options.command).flatMap(([key, value]) => settingStep(repository, key, value)),
    ...attributeSteps(repository, options.shared),
    ...(options.hooks ? HOOKS.flatMap((name) => hookSteps(repository, name, options.command)) : []),
  ];
}

/** What is to be taken away again. */
export function undoSteps(repository: Repository): readonly SetupStep[] {
  const sections = ['diff.quern', 'merge.quern'].filter(
    (section) => repository.git('config', '--local', '--get-regexp', `^${section.replace('.', '\\.')}\\.`).code === 0,
  );
  const files = [attributesFile(repository, true), attributesFile(repository, false)].filter((file) =>
    linesOf(file).includes(ATTRIBUTES),
  );
  const hooks = HOOKS.map((name) => hookFile(repository, name)).filter((file) => readIfThere(file)?.includes(BEGIN));
  return [
    ...sections.map((section) => ({
      says: `take the section ${section} out of the settings of this repository`,
      do: () => void repository.git('config', '--local', '--remove-section', section),
    })),
    ...files.map((file) => ({
      says: `take “${ATTRIBUTES}” out of ${shown(repository, file)}`,
      do: () =>
        rewrite(
          file,
          linesOf(file).filter((line) => line !== ATTRIBUTES),
        ),
    })),
    ...hooks.map((file) => ({
      says: `take the check out of ${shown(repository, file)}`,
      do: () => takeOutOfHook(file),
    })),
  ];
}

const shown = ({ top }: Repository, file: string): string => withSlashes(relative(top, file));

// ---- settings --------------------------------------------------------------------------------------------------------

function settingStep(repository: Repository, key: string, value: string): readonly SetupStep[] {
  const { code, out } = repository.git('config', '--local', '--get', key);
  const old = code === 0 ? out.replace(/\n$/, '') : undefined;
  if (old === value) return [];
  const instead = old === undefined ? '' : `, instead of “${old}”`;
  return [{ says: `set ${key} to “${value}”${instead}`, do: () => set(repository, key, value) }];
}

function set(repository: Repository, key: string, value: string): void {
  const { code, err } = repository.git('config', '--local', key, value);
  if (code !== 0) throw new UsageError(`git does not set ${key}: ${err.trim()}`);
}

// ---- attributes ------------------------------------------------------------------------------------------------------

function attributesFile(repository: Repository, shared: boolean): string {
  return shared ? join(repository.top, '.gitattributes') : gitPath(repository, 'info/attributes');
}

/** A path inside the repository's own folder, wherever that lies. */
function gitPath(repository: Repository, path: string): string {
  const { code, out, err } = repository.git('rev-parse', '--git-path', path);
  if (code !== 0) throw new UsageError(`git does not tell where its files are: ${err.trim()}`);
  return resolve(repository.top, out.replace(/\r?\n$/, ''));
}

function attributeSteps(repository: Repository, shared: boolean): readonly SetupStep[] {
  const file = attributesFile(repository, shared);
  const lines = linesOf(file);
  if (lines.includes(ATTRIBUTES)) return [];
  return [
    { says: `add “${ATTRIBUTES}” to ${shown(repository, file)}`, do: () => rewrite(file, [...lines, ATTRIBUTES]) },
  ];
}

function readIfThere(file: string): string | undefined {
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined;
}

function linesOf(file: string): readonly string[] {
  const text = readIfThere(file) ?? '';
  return text === '' ? [] : text.replace(/\r?\n$/, '').split(/\r?\n/);
}

/** Writes lines; a file without any is taken away. */
function rewrite(file: string, lines: readonly string[]): void {
  if (lines.length === 0) {
    rmSync(file, { force: true });
    return;
  }
  mkdirSync(dirname(file), { recursive: true });
  writeAtomically(file, lines.map((line) => `${line}\n`).join(''), file);
}

// ---- hooks -----------------------------------------------------------------------------------------------------------

const hookFile = (repository: Repository, name: string): string => gitPath(repository, `hooks/${name}`);

function hookSteps(repository: Repository, name: string, command: string): readonly SetupStep[] {
  const file = hookFile(repository, name);
  const old = readIfThere(file);
  const stretch = [BEGIN, `${command} git-driver check || exit 1`, END];
  if (old?.includes(stretch.join('\n'))) return [];
  if (old !== undefined && !/^#!.*\b(?:ba|da|z|k)?sh\b/.test(old)) {
    throw new UsageError(
      `${shown(repository, file)} is no shell script, so nothing can be added to it`,
      `let it run “${command} git-driver check”, or leave the hooks out with --no-hooks`,
    );
  }
  const rest = old === undefined ? ['#!/bin/sh'] : withoutStretch(old);
  // First, before a hook of the reader's own can end with success.
  const [shebang = '#!/bin/sh', ...own] = rest;
  return [
    {
      says: `let ${shown(repository, file)} check what is about to be committed`,
      do: () => {
        rewrite(file, [shebang, ...stretch, ...own]);
        chmodSync(file, 0o755);
      },
    },
  ];
}

function withoutStretch(text: string): readonly string[] {
  const lines = text.replace(/\r?\n$/, '').split(/\r?\n/);
  const [from, to] = [lines.indexOf(BEGIN), lines.indexOf(END)];
  return from < 0 || to < from ? lines : [...lines.slice(0, from), ...lines.slice(to + 1)];
}

/** A hook in which nothing else stands goes as a whole. */
function takeOutOfHook(file: string): void {
  const rest = withoutStretch(readIfThere(file) ?? '');
  if (rest.every((line, index) => index === 0 || line.trim() === '')) rmSync(file, { force: true });
  else {
    rewrite(file, rest);
    chmodSync(file, 0o755);
  }
}
