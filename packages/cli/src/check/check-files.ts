import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { sep } from 'node:path';
import { readBytes } from '../files/read-text.js';
import { rootOf, seenFrom, Workspace } from '../files/workspace.js';
import { Progress } from '../system/progress.js';
import type { System } from '../system/system.js';
import { VERSION } from '../version.js';
import { CheckCache, hashOf } from './cache.js';
import type { FileReport, Target } from './check-file.js';

export interface CheckSettings {
  /** Folder of the cache; nothing is kept without one. */
  readonly cache?: string | undefined;
  readonly root?: string | undefined;
  /** Threads; as many as the machine has cores unless given. */
  readonly jobs?: number | undefined;
}

/** Fewer files than this are checked before threads would have started. */
const ENOUGH_FOR_THREADS = 200;
const MOST_THREADS = 8;

/** What was found in one file, as it is told to the reader: paths are those from the folder the command runs in. */
export interface ToldReport extends FileReport {
  readonly shown: string;
}

/** Checks files, each with what it uses; reports come in the order of the files. */
export async function checkFiles(
  files: readonly string[],
  settings: CheckSettings,
  system: System,
): Promise<readonly ToldReport[]> {
  const targets = files.map((file): Target => ({
    file,
    shown: seenFrom(system.folder, file),
    root: rootOf(file, system.folder, settings.root),
  }));
  const check = (some: readonly Target[]): Promise<readonly FileReport[]> => checkAll(some, settings, system);
  const reports =
    settings.cache === undefined
      ? await check(targets)
      : await new CachedCheck(new CheckCache(settings.cache, toolHash(system), files.length)).run(targets, check);
  return reports.map((report, index) => told(report, targets[index], system.folder));
}

function told(report: FileReport, target: Target | undefined, folder: string): ToldReport {
  if (!target) throw new Error('a report of a file that nobody asked for');
  // Paths from the root are in their shortest form, so that nothing but the root has to be put before them.
  const seen = (path: string): string => seenFrom(folder, `${target.root}${sep}${path}`);
  // Nearly all is said of the file itself.
  const [first] = report.found;
  const own = first && seen(first.file);
  const found = report.found.map((one) => {
    const file = own !== undefined && one.file === first?.file ? own : seen(one.file);
    if (file === one.file && one.related.length === 0) return one;
    return { ...one, file, related: one.related.map((other) => ({ ...other, file: seen(other.file) })) };
  });
  return { ...report, shown: target.shown, found };
}

/** The build that checks: its version and, where it is one file, that file's content. */
function toolHash({ entry }: System): string {
  return hashOf(`${VERSION}\0${entry === undefined ? '' : hashOf(readFileSync(entry))}`);
}

async function checkAll(
  targets: readonly Target[],
  settings: CheckSettings,
  system: System,
): Promise<readonly FileReport[]> {
  if (targets.length === 0) return [];
  const progress = new Progress(system.err, 'checked', targets.length);
  try {
    const threads = Math.min(settings.jobs ?? availableParallelism(), MOST_THREADS);
    if (
      system.entry !== undefined &&
      threads > 1 &&
      (targets.length >= ENOUGH_FOR_THREADS || settings.jobs !== undefined)
    ) {
      const { checkInThreads } = await import('./pool.js');
      return await checkInThreads(targets, {
        entry: system.entry,
        threads,
        progress: (done) => progress.update(done),
      });
    }
    const { checkFile } = await import('./check-file.js');
    return targets.map((target, index) => {
      progress.update(index);
      return checkFile(target);
    });
  } finally {
    progress.end();
  }
}

/** A check that asks the cache first and keeps what it had to find out. */
class CachedCheck {
  readonly #room = Buffer.allocUnsafe(256 * 1024);
  readonly #hashes = new Map<string, string>();
  readonly #workspaces = new Map<string, Workspace>();

  constructor(readonly cache: CheckCache) {}

  async run(
    targets: readonly Target[],
    check: (missing: readonly Target[]) => Promise<readonly FileReport[]>,
  ): Promise<readonly FileReport[]> {
    const known = new Map<string, FileReport>();
    const missing: { readonly target: Target; readonly key: string | undefined }[] = [];
    for (const target of targets) {
      const key = this.#keyOf(target);
      const found = key && this.cache.find(key, (path) => this.#hashOfUsed(target.root, path));
      if (found) known.set(target.file, { file: target.file, found, uses: [], refused: [] });
      else missing.push({ target, key });
    }
    const reports = await check(missing.map(({ target }) => target));
    for (const [index, report] of reports.entries()) {
      const asked = missing[index];
      known.set(report.file, report);
      if (asked?.key !== undefined) this.#keep(report, asked.key, asked.target.root);
    }
    this.cache.save();
    return targets.flatMap(({ file }) => known.get(file) ?? []);
  }

  /** Undefined when the file cannot be read: then the check says why. */
  #keyOf({ file, root }: Target): string | undefined {
    try {
      const bytes = readBytes(file, this.#room);
      return 'tooLarge' in bytes ? undefined : this.cache.key(seenFrom(root, file), bytes);
    } catch {
      return undefined;
    }
  }

  #keep({ found, uses, problem, refused }: FileReport, key: string, root: string): void {
    if (problem !== undefined || refused.length > 0) return;
    const hashed = uses.map((path) => [path, this.#hashOfUsed(root, path)] as const);
    this.cache.keep(key, found, hashed);
  }

  /** Hash of a used file; of one that is not there, the hash of nothing. */
  #hashOfUsed(root: string, path: string): string {
    const place = `${root}\0${path}`;
    const known = this.#hashes.get(place);
    if (known !== undefined) return known;
    let workspace = this.#workspaces.get(root);
    if (!workspace) this.#workspaces.set(root, (workspace = new Workspace(root)));
    const text = workspace.read(path);
    const found = text === undefined ? 'none' : hashOf(text);
    this.#hashes.set(place, found);
    return found;
  }
}
