import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { relative } from 'node:path';
import { readBytes } from '../files/read-text.js';
import { rootOf, withSlashes, Workspace } from '../files/workspace.js';
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

/** Checks files, each with what it uses; reports come in the order of the files. */
export async function checkFiles(
  files: readonly string[],
  settings: CheckSettings,
  system: System,
): Promise<readonly FileReport[]> {
  const targets = files.map((file): Target => ({
    file,
    shown: withSlashes(relative(system.folder, file)) || file,
    root: rootOf(file, system.folder, settings.root),
  }));
  if (settings.cache === undefined) return checkAll(targets, settings, system);
  const cache = new CheckCache(settings.cache, toolHash(system));
  return new CachedCheck(cache).run(targets, (missing) => checkAll(missing, settings, system));
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
      return await checkInThreads(targets, system.folder, {
        entry: system.entry,
        threads,
        progress: (done) => progress.update(done),
      });
    }
    const { checkFile } = await import('./check-file.js');
    return targets.map((target, index) => {
      progress.update(index);
      return checkFile(target, system.folder);
    });
  } finally {
    progress.end();
  }
}

/** A check that asks the cache first and keeps what it had to find out. */
class CachedCheck {
  readonly #hashes = new Map<string, string>();
  readonly #workspaces = new Map<string, Workspace>();

  constructor(readonly cache: CheckCache) {}

  async run(
    targets: readonly Target[],
    check: (missing: readonly Target[]) => Promise<readonly FileReport[]>,
  ): Promise<readonly FileReport[]> {
    const known = new Map<string, FileReport>();
    const keys = new Map<string, string>();
    const missing = targets.filter((target) => {
      const key = this.#keyOf(target);
      if (key === undefined) return true;
      keys.set(target.shown, key);
      const found = this.cache.find(key, (path) => this.#hashOfUsed(target.root, path));
      if (found) known.set(target.shown, { shown: target.shown, found, uses: [], refused: [] });
      return !found;
    });
    const roots = new Map(missing.map(({ shown, root }) => [shown, root]));
    for (const report of await check(missing)) {
      known.set(report.shown, report);
      this.#keep(report, keys.get(report.shown), roots.get(report.shown) ?? '');
    }
    this.cache.save();
    return targets.flatMap(({ shown }) => known.get(shown) ?? []);
  }

  /** Undefined when the file cannot be read: then the check says why. */
  #keyOf({ file, shown }: Target): string | undefined {
    try {
      const bytes = readBytes(file);
      return 'tooLarge' in bytes ? undefined : this.cache.key(shown, bytes);
    } catch {
      return undefined;
    }
  }

  #keep({ found, uses, problem, refused }: FileReport, key: string | undefined, root: string): void {
    if (key === undefined || problem !== undefined || refused.length > 0) return;
    this.cache.keep(
      key,
      found,
      uses.map((path) => [path, this.#hashOfUsed(root, path)]),
    );
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
