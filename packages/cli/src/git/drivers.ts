import { resolve } from 'node:path';
import { compile, Session, type Compiled, type Host } from '@quern/compiler';
import { compareInputs, comparisonText } from '@quern/publish';
import { sentence } from '@quern/text';
import { accountOf, compareFiles, fileReport, mergeTexts } from '@quern/views';
import { UsageError, type ExitCode } from '../command.js';
import { readText } from '../files/read-text.js';
import { rootOf, Workspace } from '../files/workspace.js';
import { writeAtomically } from '../files/write-atomically.js';
import { foodBook } from '../recipe/load.js';
import { paintFor, widthOf } from '../system/paint.js';
import { plain } from '../system/plain.js';
import type { System } from '../system/system.js';
import { askGit, repositoryOf, type Repository } from './git.js';

/* What git calls once it has been set up: see docs/git.md. Paths are as git gives them, from the folder it runs in. */

const INPUTS = { market: 'none' } as const;

/** The world of a file that git hands over: what it uses is read from the working tree. */
function hostAt(folder: string): Host {
  const workspace = new Workspace(rootOf(resolve(folder, 'x'), folder));
  return { read: workspace.read, foods: foodBook() };
}

/** A file as an account of what its lines come to, for `textconv`. */
export function textDriver(file: string, system: System): ExitCode {
  const full = resolve(system.folder, file);
  const compiled = compile('text.quern', readText(full, file), hostAt(system.folder));
  const lines = accountOf(compiled, (formula) => {
    const { allergens, nutrition } = compareInputs(formula, compiled, { ...INPUTS, clock: false });
    return { ...(allergens ? { allergens } : {}), ...(nutrition ? { nutrition } : {}) };
  });
  system.out.write(lines.map((line) => `${line}\n`).join(''));
  return 0;
}

const NOTHING = /^(?:\/dev\/null|nul)$/i;

/** The difference of two states of a file, as git asks an external program for it. */
export function diffDriver(args: readonly string[], system: System): ExitCode {
  const [path, before, , , after, , , renamed] = args;
  if (path === undefined)
    throw new UsageError('git gives this command what it needs', 'quern git-setup lets git call it');
  const paint = paintFor({ colour: wantsColour(system) });
  if (before === undefined || after === undefined) {
    system.out.write(`${paint.strong(plain(path))}\nnot merged yet\n`);
    return 0;
  }
  const host = hostAt(system.folder);
  const state = (file: string): Compiled =>
    compile(path, NOTHING.test(file) ? '' : readText(resolve(system.folder, file), path), host);
  const compared = compareFiles(state(before), state(after), (formula, compiled) =>
    compareInputs(formula, compiled, INPUTS),
  );
  const name = renamed === undefined || renamed === path ? path : `${path} -> ${renamed}`;
  const note = NOTHING.test(before) ? ' (new)' : NOTHING.test(after) ? ' (gone)' : '';
  const text = comparisonText([fileReport(compared)], { paint, width: widthOf(system) });
  system.out.write(`${paint.strong(plain(name + note))}\n\n${text}\n`);
  return 0;
}

/** As git colours its own differences; behind a pager the terminal is git's. */
function wantsColour(system: System): boolean {
  const toTerminal = system.out.isTerminal || system.environment['GIT_PAGER_IN_USE'] === '1';
  return askGit(system.folder, ['config', '--get-colorbool', 'color.diff', String(toTerminal)]).out.trim() === 'true';
}

export interface MergeFiles {
  readonly base: string;
  readonly ours: string;
  readonly theirs: string;
  /** Where the file stands in the working tree. */
  readonly path: string;
  readonly markerSize: number;
}

/** Merges two states into the file of ours: 0 when all is settled, 1 when somebody has to look. */
export function mergeDriver(files: MergeFiles, system: System): ExitCode {
  const at = (file: string): string => resolve(system.folder, file);
  const [base, ours, theirs] = [files.base, files.ours, files.theirs].map((file) => readText(at(file), file)) as [
    string,
    string,
    string,
  ];
  const merged = mergeTexts(base, ours, theirs, labelsOf(system), files.markerSize);
  if (!merged) return mergeByText(files, system);
  writeAtomically(at(files.ours), merged.text, files.path);
  if (merged.conflicts > 0) return 1;
  const problems = newProblems(files.path, { ours, theirs, merged: merged.text }, hostAt(system.folder));
  if (problems.length === 0) return 0;
  system.err.write(
    `${plain(files.path)}: every line could be merged, but together they no longer hold:\n` +
      problems.map((problem) => `  ${plain(problem)}\n`).join('') +
      'way out: mend the file, then git add it\n',
  );
  return 1;
}

function labelsOf(system: System): { readonly ours: string; readonly theirs: string; readonly base?: string } {
  const style = askGit(system.folder, ['config', '--get', 'merge.conflictStyle']).out.trim();
  return { ours: 'ours', theirs: 'theirs', ...(/^z?diff3$/.test(style) ? { base: 'before both' } : {}) };
}

/** Where lines alone cannot tell: the merge by text that git would have made. */
function mergeByText({ base, ours, theirs, markerSize }: MergeFiles, system: System): ExitCode {
  const args = [
    'merge-file',
    `--marker-size=${markerSize}`,
    '-L',
    'ours',
    '-L',
    'before both',
    '-L',
    'theirs',
    '--',
    ours,
    base,
    theirs,
  ];
  const { code, err } = askGit(system.folder, args);
  if (code > 127) throw new UsageError(`git does not merge: ${err.trim()}`);
  return code === 0 ? 0 : 1;
}

/** Errors of the merged file that neither side has. */
function newProblems(
  path: string,
  texts: { readonly ours: string; readonly theirs: string; readonly merged: string },
  host: Host,
): readonly string[] {
  const errors = (text: string): readonly string[] => {
    const session = new Session(host);
    session.set(path, text);
    const found = session.compile(path)?.diagnostics.filter(({ severity }) => severity === 'error') ?? [];
    return found.map((one) => `${one.code}: ${sentence(one)}`);
  };
  const known = new Set([...errors(texts.ours), ...errors(texts.theirs)]);
  return errors(texts.merged).filter((problem) => !known.has(problem));
}

/** Checks what is about to be committed, as it stands in the index: 1 when a recipe has errors. */
export function checkDriver(system: System): ExitCode {
  const repository = repositoryOf(system.folder, 'this folder');
  const host: Host = { read: (path) => staged(repository, path), foods: foodBook() };
  const session = new Session(host);
  let failed = false;
  for (const path of stagedFiles(repository)) {
    const errors = session.compile(path)?.diagnostics.filter(({ severity }) => severity === 'error') ?? [];
    failed ||= errors.length > 0;
    for (const error of errors) {
      const line =
        session
          .text(path)
          ?.slice(0, error.place.start)
          .split(/\r\n|\r|\n/).length ?? 1;
      system.err.write(`${plain(`${path}:${line}: error ${error.code}: ${sentence(error)}`)}\n`);
    }
  }
  if (failed)
    system.err.write(
      'Nothing is committed. Mend the lines above; quern check says how. (git commit --no-verify commits all the same.)\n',
    );
  return failed ? 1 : 0;
}

function stagedFiles(repository: Repository): readonly string[] {
  const { out } = repository.git('diff', '--cached', '--no-ext-diff', '--name-only', '--diff-filter=ACMR', '-z');
  return out.split('\u0000').filter((path) => path.endsWith('.quern'));
}

function staged(repository: Repository, path: string): string | undefined {
  const { code, out } = repository.git('cat-file', 'blob', `:${path}`);
  return code === 0 ? out : undefined;
}
