import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { compile, type Compiled, type FoodBook } from '@quern/compiler';
import { UsageError } from '../command.js';
import { commitOf, pathInRepository, textAt, type Repository } from '../git/git.js';
import { sessionOf } from '../recipe/load.js';
import { readText } from '../files/read-text.js';

/** A file as it was and as it is; a missing side is a file without lines. */
export interface BothStates {
  readonly before: Compiled;
  readonly after: Compiled;
  /** Paths from the top of the repository, empty where there is no file. */
  readonly names: { readonly before: string; readonly after: string };
}

/** A file that is other than it was, by its names then and now. */
interface Touched {
  readonly before: string | undefined;
  readonly after: string | undefined;
}

/**
 * The recipes of a repository that are other than at a commit: the files named, or all that git knows of.
 * @throws UsageError when a file named was not there then and is not there now.
 */
export function statesSince(
  repository: Repository,
  revision: string,
  files: readonly string[],
  foods: FoodBook,
): readonly BothStates[] {
  const commit = commitOf(repository, revision);
  const touched = touchedSince(repository, commit);
  const wanted = files.length === 0 ? touched : files.map((file) => touchedFile(repository, commit, file, touched));
  return wanted.map(({ before, after }) => ({
    before: before === undefined ? empty(foods) : compiledAt(repository, commit, before, foods),
    after: after === undefined ? empty(foods) : compiledNow(repository, after),
    names: { before: before ?? '', after: after ?? '' },
  }));
}

const empty = (foods: FoodBook): Compiled => compile('', '', { read: () => undefined, foods });

function touchedFile(repository: Repository, commit: string, file: string, touched: readonly Touched[]): Touched {
  const path = pathInRepository(repository, file);
  const found = touched.find(({ before, after }) => after === path || (after === undefined && before === path));
  if (found) return found;
  const [was, is] = [textAt(repository, commit, path) !== undefined, existsSync(file)];
  if (!was && !is)
    throw new UsageError(`there is no ${path}, and there was none then`, 'check the spelling of the path');
  return { before: was ? path : undefined, after: is ? path : undefined };
}

/** Files of recipes that differ between a commit and the working tree, with those that were renamed. */
function touchedSince(repository: Repository, commit: string): readonly Touched[] {
  const { code, out, err } = repository.git(
    'diff',
    '--no-ext-diff',
    '--find-renames',
    '--name-status',
    '-z',
    commit,
    '--',
  );
  if (code !== 0) throw new UsageError(`git does not tell what changed: ${err.trim()}`);
  const fields = out.split('\u0000');
  const touched: Touched[] = [];
  for (let at = 0; at < fields.length - 1;) {
    const kind = fields[at]?.[0];
    const [first, second] = [fields[at + 1], fields[at + 2]];
    const two = kind === 'R' || kind === 'C';
    touched.push({
      before: kind === 'A' || kind === 'C' ? undefined : first,
      after: kind === 'D' ? undefined : two ? second : first,
    });
    at += two ? 3 : 2;
  }
  return touched.filter(({ before, after }) => (after ?? before ?? '').endsWith('.quern'));
}

/** A file of a commit, with what it used then. */
function compiledAt(repository: Repository, commit: string, path: string, foods: FoodBook): Compiled {
  const read = (other: string): string | undefined => textAt(repository, commit, other);
  return compile(path, read(path) ?? '', { read, foods });
}

function compiledNow({ top }: Repository, path: string): Compiled {
  const { session } = sessionOf(top);
  session.set(path, readText(resolve(top, path), path));
  const compiled = session.compile(path);
  if (!compiled) throw new UsageError(`cannot read ${path}`);
  return compiled;
}
