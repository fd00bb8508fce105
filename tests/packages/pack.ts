/** Builds and packs the packages as they would be published, and puts them where a project of a user would have them. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createPackageFromTarballData, type Package } from '@arethetypeswrong/core';
import { bundle } from '../../scripts/bundle.mjs';

export const root = join(import.meta.dirname, '..', '..');

export interface Packed {
  readonly name: string;
  /** The content of the tarball. */
  readonly files: Package;
  /** Folder in which it is unpacked, as npm would. */
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
 * Builds, packs and unpacks every published package into the `node_modules` of a folder of its own, inside this project so
 * that their own dependencies are found in the folder above.
 */
export async function packAll(): Promise<{ readonly consumer: string; readonly packed: readonly Packed[] }> {
  run(process.execPath, [join(root, 'node_modules', 'typescript', 'bin', 'tsc'), '-b']);
  await bundle(['cli', 'server', 'server-browser', 'desk']);
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
  const folder = join(modules, name);
  // What npm has put beside the sources of this package alone belongs beside the unpacked one, too.
  const own = join(published().get(name) ?? '', 'node_modules');
  if (existsSync(own)) symlinkSync(own, join(folder, 'node_modules'), 'junction');
  return { name, files, folder, tarball };
}

export function run(command: string, arguments_: readonly string[], cwd = root): string {
  try {
    return execFileSync(command, arguments_, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    const { stdout = '', stderr = '' } = error as { stdout?: string; stderr?: string };
    throw new Error(`${command} ${arguments_.join(' ')}\n${stdout}${stderr}`);
  }
}
