import { spawnSync } from 'node:child_process';
import { existsSync, realpathSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { UsageError } from '../command.js';
import { withSlashes } from '../files/workspace.js';

/*
 * Git is asked by running it, never through a shell; what comes from outside is given after `--` or
 * `--end-of-options`, so that nothing is taken for an option.
 */

const MOST_OUTPUT = 256 * 1024 * 1024;

export interface GitAnswer {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs git in a folder and gives what it said, whatever the exit code. */
export function askGit(folder: string, args: readonly string[]): GitAnswer {
  const { status, stdout, stderr, error } = spawnSync('git', args, {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: MOST_OUTPUT,
    windowsHide: true,
    env: { ...process.env, LC_ALL: 'C' },
  });
  if (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT';
    throw new UsageError(
      missing ? 'git is not to be found' : `git does not run: ${error.message}`,
      missing ? 'install git, or compare two files' : undefined,
    );
  }
  return { code: status ?? 1, out: stdout, err: stderr };
}

/** A working tree and what lies in it. */
export interface Repository {
  /** The top folder of the working tree. */
  readonly top: string;
  git(...args: readonly string[]): GitAnswer;
}

/**
 * The repository in which a folder lies.
 * @throws UsageError when there is none.
 */
export function repositoryOf(folder: string, shown: string): Repository {
  const { code, out } = askGit(folder, ['rev-parse', '--show-toplevel']);
  if (code !== 0) {
    throw new UsageError(`${shown} lies in no git repository`, 'compare two files, or run git init there');
  }
  const top = out.replace(/\r?\n$/, '');
  return { top, git: (...args) => askGit(top, args) };
}

/** The path of a file from the top of its repository, as git writes it. The file need not be there any more. */
export function pathInRepository({ top }: Repository, file: string): string {
  const folder = dirname(file);
  const real = existsSync(folder) ? join(realpathSync.native(folder), basename(file)) : resolve(file);
  return withSlashes(relative(realpathSync.native(top), real));
}

/**
 * The full id of a commit.
 * @throws UsageError when the repository has no such commit.
 */
export function commitOf(repository: Repository, revision: string): string {
  const { code, out } = repository.git('rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`);
  if (code !== 0) throw new UsageError(`git knows no commit “${revision}”`, 'git log --oneline lists them');
  return out.trim();
}

/** The text of a file at a commit; undefined when there was none. */
export function textAt(repository: Repository, commit: string, path: string): string | undefined {
  const { code, out } = repository.git('cat-file', 'blob', `${commit}:${path}`);
  return code === 0 ? out : undefined;
}
