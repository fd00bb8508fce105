// Drives real editors against the bundled server: `npm run test:editors`. docs/editors.md says what has to be installed.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { bundle } from './bundle.mjs';
import { importTs, root } from './run-ts.mjs';

if (spawnSync('nvim', ['--version']).status !== 0) {
  console.error('Neovim is not installed. On Debian: apt-get install neovim. Then run this again.');
  process.exit(1);
}
await bundle(['server']);
const { neovim } = await importTs('tests/editor/editors.ts');
const server = join(root, 'packages', 'server', 'dist', 'quern-server.cjs');
const outcomes = neovim(server, join(root, 'tests', 'editor', 'neovim.lua'));
for (const { what, ok, told } of outcomes) console.log(`${ok ? 'passed' : 'FAILED'} ${what}${ok ? '' : `\n  ${told}`}`);
const failed = outcomes.filter(({ ok }) => !ok).length;
console.log(`${outcomes.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
