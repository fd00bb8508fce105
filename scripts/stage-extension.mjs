// The editor extension as it is packed: what its package.json lists, without what only the workspace needs.
import { copyFileSync, cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { assemble } from '../packages/vscode/scripts/assemble.mjs';
import { bundle } from './bundle.mjs';
import { joinNotices, NOTICES } from './notices.mjs';
import { root } from './run-ts.mjs';

const extension = join(root, 'packages', 'vscode');
const bundles = [
  'vscode/dist/extension.cjs',
  'vscode/dist/extension-browser.cjs',
  'server/dist/quern-server.cjs',
  'server/dist/quern-server.browser.js',
];

/** Makes everything that the extension holds and puts it into a folder, which is emptied first. */
export async function stageExtension(stage) {
  await bundle(['extension', 'extension-browser', 'server', 'server-browser']);
  await assemble();
  rmSync(stage, { recursive: true, force: true });
  mkdirSync(stage, { recursive: true });
  const manifest = JSON.parse(readFileSync(join(extension, 'package.json'), 'utf8'));
  for (const key of ['dependencies', 'devDependencies', 'exports', 'private', 'sideEffects']) delete manifest[key];
  const { files = [] } = manifest;
  const packed = { ...manifest, files: [...files, NOTICES] };
  writeFileSync(join(stage, 'package.json'), `${JSON.stringify(packed, null, 2)}\n`);
  for (const name of files) cpSync(join(extension, name), join(stage, name), { recursive: true });
  copyFileSync(join(root, 'LICENSE'), join(stage, 'LICENSE'));
  copyFileSync(join(root, 'CHANGELOG.md'), join(stage, 'CHANGELOG.md'));
  copyFileSync(join(extension, 'README.md'), join(stage, 'README.md'));
  const notices = bundles.map((path) => join(root, 'packages', `${path}.${NOTICES}`));
  writeFileSync(join(stage, NOTICES), joinNotices(notices));
}
