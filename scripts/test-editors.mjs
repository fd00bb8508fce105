// Drives real editors against what is shipped: `npm run test:editors` for Neovim, `npm run test:editors -- vscode` for
// Visual Studio Code in a browser. docs/editors.md says what has to be installed.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { bundle } from './bundle.mjs';
import { importTs, root } from './run-ts.mjs';
import { vscode } from './test-vscode.mjs';

async function neovim() {
  if (spawnSync('nvim', ['--version']).status !== 0) {
    console.error('Neovim is not installed. On Debian: apt-get install neovim. Then run this again.');
    process.exit(1);
  }
  await bundle(['server']);
  const editors = await importTs('tests/editor/editors.ts');
  const server = join(root, 'packages', 'server', 'dist', 'quern-server.cjs');
  return editors.neovim(server, join(root, 'tests', 'editor', 'neovim.lua'));
}

const outcomes = process.argv.includes('vscode') ? await vscode() : await neovim();
for (const { what, ok, told } of outcomes) console.log(`${ok ? 'passed' : 'FAILED'} ${what}${ok ? '' : `\n  ${told}`}`);
const failed = outcomes.filter(({ ok }) => !ok).length;
console.log(`${outcomes.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
