/** Builds and packs the packages as they would be published, and puts them where a project of a user would have them. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createPackageFromTarballData, type Package } from '@arethetypeswrong/core';

const root = join(import.meta.dirname, '..', '..');

export interface Packed {
  readonly name: string;
  /** The content of the tarball. */
  readonly files: Package;
  /** Folder in which it is unpacked, as npm would. */
  readonly folder: string;
}

interface Manifest {
  readonly name: string;
  readonly private?: boolean;
}

/** The packages that are published: all that are not private. */
export function publishedNames(): string[] {
  return readdirSync(join(root, 'packages'))
    .map((folder) => JSON.parse(readFileSync(join(root, 'packages', folder, 'package.json'), 'utf8')) as Manifest)
    .filter((manifest) => manifest.private !== true)
    .map((manifest) => manifest.name)
    .sort();
}

/**
 * Builds, packs and unpacks every published package into the `node_modules` of a folder of its own, inside this project so
 * that their own dependencies are found in the folder above.
 */
export function packAll(): { readonly consumer: string; readonly packed: readonly Packed[] } {
  run(process.execPath, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '-b']);
  const consumer = join(root, '.cache', 'consumer');
  rmSync(consumer, { recursive: true, force: true });
  mkdirSync(consumer, { recursive: true });
  const names = publishedNames();
  const npm = process.env['npm_execpath'];
  const arguments_ = [
    'pack',
    '--silent',
    '--ignore-scripts',
    '--pack-destination',
    consumer,
    ...names.flatMap((name) => ['-w', name]),
  ];
  if (npm === undefined) run('npm', arguments_);
  else run(process.execPath, [npm, ...arguments_]);
  const packed = readdirSync(consumer)
    .filter((file) => file.endsWith('.tgz'))
    .map((file) => unpack(join(consumer, file), join(consumer, 'node_modules')));
  return { consumer, packed };
}

function unpack(tarball: string, modules: string): Packed {
  const files = createPackageFromTarballData(new Uint8Array(readFileSync(tarball)));
  const name = files.packageName;
  for (const path of files.listFiles(`/node_modules/${name}`)) {
    const target = join(modules, path.replace('/node_modules/', ''));
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, files.readFile(path));
  }
  return { name, files, folder: join(modules, name) };
}

export function run(command: string, arguments_: readonly string[], cwd = root): string {
  try {
    return execFileSync(command, arguments_, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    const { stdout = '', stderr = '' } = error as { stdout?: string; stderr?: string };
    throw new Error(`${command} ${arguments_.join(' ')}\n${stdout}${stderr}`);
  }
}
