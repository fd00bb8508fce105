// Packs the editor extension into out/quern.vsix. The packer is installed on first use into .cache/, by the lock file
// beside scripts/vsce/package.json: it is large and has no place among the dependencies of the project.
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { root } from './run-ts.mjs';
import { stageExtension } from './stage-extension.mjs';

const packer = join(root, '.cache', 'vsce');
const stage = join(root, '.cache', 'vsix');
const output = join(root, 'out', 'quern.vsix');

/** The packer with exactly the packages of its lock file. */
function installPacker() {
  const lock = join(root, 'scripts', 'vsce', 'package-lock.json');
  const stamp = join(packer, 'package-lock.json');
  const isThere = existsSync(join(packer, 'node_modules')) && existsSync(stamp);
  if (isThere && readFileSync(stamp, 'utf8') === readFileSync(lock, 'utf8')) return;
  console.log('Installing the packer of extensions into .cache/ (once) …');
  mkdirSync(packer, { recursive: true });
  for (const name of ['package.json', 'package-lock.json'])
    copyFileSync(join(root, 'scripts', 'vsce', name), join(packer, name));
  const npm = process.env.npm_execpath;
  const args = ['ci', '--ignore-scripts', '--loglevel=error'];
  run(npm === undefined ? 'npm' : process.execPath, npm === undefined ? args : [npm, ...args], packer);
}

function run(command, args, cwd) {
  const { status, error, stdout, stderr } = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    // The same sources give the same file, byte for byte.
    env: { ...process.env, SOURCE_DATE_EPOCH: '1735689600' },
  });
  if (error || status !== 0) {
    console.error(`${stdout ?? ''}${stderr ?? ''}${error?.message ?? ''}`);
    process.exit(1);
  }
}

await stageExtension(stage);
installPacker();
mkdirSync(join(root, 'out'), { recursive: true });
const vsce = join(packer, 'node_modules', '@vscode', 'vsce', 'vsce');
run(process.execPath, [vsce, 'package', '--no-dependencies', '--out', output], stage);
console.log(`${relative(root, output)}: ${Math.round(statSync(output).size / 1024)} kB`);
