// Makes the machine ready: checks Node, and installs the dependencies when the lock, Node or the platform has changed.
// Plain Node, no dependency, so that it works on a fresh clone.
import { createHash } from 'node:crypto';
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const needed = [20, 19];

/** Whether a version such as '20.19.0' is at least the one needed. */
export function isNewEnough(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major > needed[0] || (major === needed[0] && minor >= needed[1]);
}

/** What an installation depends on; a different value means that it may be out of date. */
export function fingerprint(lock, manifest, version, platform) {
  const hash = createHash('sha256');
  for (const part of [lock, manifest, version, platform]) hash.update(part).update('\0');
  return hash.digest('hex');
}

/**
 * Whether what npm says it installed (its own record in node_modules) is what the lock asks for, so that an
 * `npm install` made by hand is not made again. Packages for other platforms may be missing.
 */
export function isInstalled(lock, record) {
  return Object.entries(lock.packages).every(([path, wanted]) => {
    if (path === '' || !path.startsWith('node_modules/')) return true;
    const found = record.packages[path];
    return found === undefined ? wanted.optional === true : found.version === wanted.version;
  });
}

function main() {
  const { node } = process.versions;
  if (!isNewEnough(node)) {
    fail(`Quern needs Node ${needed.join('.')} or later; this is Node ${node}. Install a newer one and try again.`);
  }
  const lockPath = join(root, 'package-lock.json');
  if (!existsSync(lockPath))
    fail('package-lock.json is missing; this does not look like a whole clone of the project.');
  const lock = readFileSync(lockPath, 'utf8');
  const stampPath = join(root, 'node_modules', '.quern-set-up');
  const manifest = readFileSync(join(root, 'package.json'), 'utf8');
  const wanted = fingerprint(lock, manifest, node, `${process.platform} ${process.arch}`);
  if (existsSync(stampPath)) {
    if (readFileSync(stampPath, 'utf8') === wanted) return;
    console.log('The lock file, Node or the platform has changed since the last set-up.');
  }

  const recordPath = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(recordPath) || !isInstalled(JSON.parse(lock), JSON.parse(readFileSync(recordPath, 'utf8'))))
    install();
  writeFileSync(stampPath, wanted);
}

function install() {
  console.log('Setting up: installing what package-lock.json names (about half a minute) …');
  const started = Date.now();
  // Through the npm that runs this script when there is one: a bare name cannot be started on every system.
  const npm = process.env.npm_execpath;
  const options = { cwd: root, stdio: 'inherit' };
  const command = ['ci', '--loglevel=error'];
  const result =
    npm === undefined
      ? spawnSync('npm', command, { ...options, shell: process.platform === 'win32' })
      : spawnSync(process.execPath, [npm, ...command], options);
  if (result.error) fail(`npm could not be started: ${result.error.message}`);
  if (result.status !== 0) fail('npm ci did not finish; its messages above say why. Nothing else was done.');
  console.log(`Set up in ${Math.round((Date.now() - started) / 1000)} s.\n`);
}

function fail(message) {
  console.error(message);
  process.exit(1);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
