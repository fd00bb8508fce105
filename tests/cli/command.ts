import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { bundleCommand } from '../../scripts/bundle.mjs';
import { root } from '../sheet/recipes.js';

/*
 * Runs the command as a reader runs it: a process of its own, from the sources bundled as the release is.
 */

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface World {
  /** A folder of its own for each test file, wiped at the end. */
  readonly folder: string;
  /** The file to start. */
  readonly entry: string;
  run(
    args: readonly string[],
    options?: { readonly input?: string; readonly environment?: Record<string, string>; readonly in?: string },
  ): Ran;
  start(args: readonly string[], more?: Record<string, string>): ChildProcess;
  write(path: string, text: string): string;
}

/** The command, bundled once for a test file. */
let bundled: Promise<string> | undefined;
let worlds = 0;

/** Sets up a folder and the command; call it at the top of a `describe`. */
export function useCommand(name: string): World {
  const base = join(root, '.cache', 'cli-tests');
  let folder = '';
  let entry = '';
  worlds++;
  beforeAll(async () => {
    mkdirSync(base, { recursive: true });
    folder = mkdtempSync(join(base, `${name}-`));
    entry = await (bundled ??= bundleCommand(mkdtempSync(join(base, 'bundle-'))));
  });
  afterAll(() => {
    // A process that a test has ended may still put a file there for a moment.
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    // All worlds of a file are asked for before the first test runs: the last one takes the bundle away.
    worlds--;
    if (worlds === 0 && entry !== '') rmSync(dirname(entry), { recursive: true, force: true });
  });

  const environment = { PATH: process.env['PATH'] ?? '', HOME: process.env['HOME'] ?? '' };
  return {
    get folder() {
      return folder;
    },
    get entry() {
      return entry;
    },
    run(args, options = {}) {
      const { status, stdout, stderr, error } = spawnSync(process.execPath, [entry, ...args], {
        cwd: options.in ?? folder,
        env: { ...environment, ...options.environment },
        input: options.input ?? '',
        encoding: 'utf8',
        maxBuffer: 64 * 1024 * 1024,
      });
      if (error) throw error;
      return { code: status, out: stdout, err: stderr };
    },
    start: (args, more = {}) =>
      spawn(process.execPath, [entry, ...args], { cwd: folder, env: { ...environment, ...more } }),
    write(path, text) {
      const full = join(folder, path);
      mkdirSync(dirname(full), { recursive: true });
      writeFileSync(full, text);
      return full;
    },
  };
}

export const GOOD = 'recipe Toast\n\n  80 g rye bread\n  hands 2 min: Toast the bread.\n';
/** One error (L03) on line 4. */
export const BAD = 'recipe Toast\n\n  80 g rye bread\n  hands 2 min Toast the bread.\n';
