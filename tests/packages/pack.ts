/** Builds and packs the packages as they would be published, and installs them as a project of a user would. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createPackageFromTarballData, type Package } from '@arethetypeswrong/core';
import { bundle } from '../../scripts/bundle.mjs';

export const root = join(import.meta.dirname, '..', '..');

export interface Packed {
  readonly name: string;
  /** The content of the tarball. */
  readonly files: Package;
  /** Folder in which npm has installed it. */
  readonly folder: string;
  /** Path of the tarball. */
  readonly tarball: string;
}

interface Manifest {
  readonly name: string;
  readonly private?: boolean;
}

/** The packages that are published, with their folders: all that are not private. */
function published(): ReadonlyMap<string, string> {
  const folders = readdirSync(join(root, 'packages')).map((name) => join(root, 'packages', name));
  const manifests = folders.map((folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest);
  return new Map(
    manifests.flatMap(({ name, private: kept }, index) => (kept ? [] : [[name, folders[index] ?? ''] as const])),
  );
}

export const publishedNames = (): string[] => [...published().keys()].sort();

/**
 * Builds and packs every published package, and has npm install the tarballs into a project of their own. What they need
 * from others npm takes from its cache, where the set-up of this project has put most of it, and else from the registry.
 */
export async function packAll(): Promise<{ readonly consumer: string; readonly packed: readonly Packed[] }> {
  run(process.execPath, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '-b']);
  await bundle(['cli', 'server', 'server-browser', 'desk']);
  const consumer = join(root, '.cache', 'consumer');
  rmSync(consumer, { recursive: true, force: true });
  mkdirSync(consumer, { recursive: true });
  const workspaces = publishedNames().flatMap((name) => ['-w', name]);
  npm(['pack', '--silent', '--ignore-scripts', '--pack-destination', consumer, ...workspaces], root);
  const tarballs = readdirSync(consumer).filter((file) => file.endsWith('.tgz'));
  writeFileSync(join(consumer, 'package.json'), '{ "type": "module", "private": true }\n');
  const quietly = ['--silent', '--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline'];
  npm(['install', ...quietly, ...tarballs.map((file) => `./${file}`)], consumer);
  return { consumer, packed: tarballs.map((file) => read(join(consumer, file), join(consumer, 'node_modules'))) };
}

function read(tarball: string, modules: string): Packed {
  const files = createPackageFromTarballData(new Uint8Array(readFileSync(tarball)));
  const name = files.packageName;
  return { name, files, folder: join(modules, name), tarball };
}

/** Runs the npm that runs the tests, or the one that is there. */
function npm(arguments_: readonly string[], folder: string): void {
  const path = process.env['npm_execpath'];
  if (path === undefined) run('npm', arguments_, folder);
  else run(process.execPath, [path, ...arguments_], folder);
}

export function run(command: string, arguments_: readonly string[], cwd = root): string {
  try {
    return execFileSync(command, arguments_, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    const { stdout = '', stderr = '' } = error as { stdout?: string; stderr?: string };
    throw new Error(`${command} ${arguments_.join(' ')}\n${stdout}${stderr}`);
  }
}
