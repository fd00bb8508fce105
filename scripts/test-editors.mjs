// Drives real editors against what is shipped: `npm run test:editors` for Neovim, Emacs and Kate's highlighter, `npm run
// test:editors -- vscode` for Visual Studio Code in a browser, `-- web` for one that has nothing but the browser. docs/editors.md says what
// has to be installed.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { bundle } from './bundle.mjs';
import { importTs, root } from './run-ts.mjs';
import { vscode } from './test-vscode.mjs';
import { web } from './test-web.mjs';

const server = join(root, 'packages', 'server', 'dist', 'quern-server.cjs');
const script = (name) => join(root, 'tests', 'editor', name);

function needed(command, what, packages) {
  if (spawnSync(command, ['--version']).status === 0) return;
  console.error(`${what} is not installed. On Debian: apt-get install ${packages}. Then run this again.`);
  process.exit(1);
}

async function terminals(which) {
  if (which.includes('neovim')) needed('nvim', 'Neovim', 'neovim');
  if (which.includes('emacs')) needed('emacs', 'Emacs', 'emacs-nox elpa-eglot');
  if (which.includes('kate')) needed('kate-syntax-highlighter', 'Kate’s highlighter', 'libkf5syntaxhighlighting-tools');
  await bundle(['server']);
  const editors = await importTs('tests/editor/editors.ts');
  const mode = join(root, 'grammar', 'quern-mode.el');
  return [
    ...(which.includes('neovim') ? editors.neovim(server, script('neovim.lua')) : []),
    ...(which.includes('emacs') ? editors.emacs(server, mode, script('emacs.el')) : []),
    ...(which.includes('kate') ? editors.kate(join(root, 'grammar', 'quern.kate.xml')) : []),
  ];
}

const runs = {
  neovim: () => terminals(['neovim']),
  emacs: () => terminals(['emacs']),
  kate: () => terminals(['kate']),
  vscode,
  web,
};

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !(name in runs));
if (unknown.length > 0) {
  console.error(`There is no editor ${unknown.join(', ')} here: ${Object.keys(runs).join(', ')}.`);
  process.exit(1);
}
const outcomes = [];
if (wanted.length === 0) outcomes.push(...(await terminals(['neovim', 'emacs', 'kate'])));
for (const name of wanted) outcomes.push(...(await runs[name]()));
for (const { what, ok, told } of outcomes) console.log(`${ok ? 'passed' : 'FAILED'} ${what}${ok ? '' : `\n  ${told}`}`);
const failed = outcomes.filter(({ ok }) => !ok).length;
console.log(`${outcomes.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
