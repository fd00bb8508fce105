/** The bundled command, as a user has it, for tests that start it as a process. */
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { bundleCommand } from '../scripts/bundle.mjs';

const cache = join(import.meta.dirname, '..', '.cache');

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface BuiltCommand {
  /** The file that Node starts. */
  readonly entry: string;
  /** Runs the command in a folder. */
  run(folder: string, ...args: string[]): Promise<Ended>;
  /** Takes the bundle away again. */
  remove(): void;
}

/** Bundles the command into a folder of its own, so that test files do not disturb each other. */
export async function builtCommand(): Promise<BuiltCommand> {
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'command-'));
  const entry = await bundleCommand(folder);
  return {
    entry,
    run: (cwd, ...args) => start(entry, cwd, args),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

function start(entry: string, cwd: string, args: readonly string[]): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const env = { ...process.env, NO_COLOR: '1' };
    const child = spawn(process.execPath, [entry, ...args], { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (part: string) => (out += part));
    child.stderr.setEncoding('utf8').on('data', (part: string) => (err += part));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
}
