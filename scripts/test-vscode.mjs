// Installs the packed extension into a real Visual Studio Code, served to a real browser, and drives it: `npm run
// test:editors -- vscode`. The editor is installed on first use into .cache/; screenshots go to out/vscode/.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { EditorTab, launch, run } from './editor-steps.mjs';
import { root } from './run-ts.mjs';

const folder = join(root, '.cache', 'code-server');
const editor = join(folder, 'node_modules', 'code-server', 'lib', 'vscode');
const main = join(editor, 'out', 'server-main.js');
const vsix = join(root, 'out', 'quern.vsix');
const shots = join(root, 'out', 'vscode');

const FILE = `recipe Loaf
gives 1 loaf of 850 g

make dough
  500 g strong wheat flour
  350 g water
  hnads 8 min: Mix the flour with the water.
`;

function install() {
  if (existsSync(main) && existsSync(join(editor, 'node_modules'))) return;
  console.log('Installing the editor into .cache/code-server (once, about 300 MB) …');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"private":true}\n');
  run('npm', ['i', '--ignore-scripts', '--loglevel=error', 'code-server@4.100.3'], folder);
  run('npm', ['i', '--omit=dev', '--ignore-scripts', '--loglevel=error'], editor);
}

const freePort = () =>
  new Promise((give) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => give(port));
    });
  });

/** What is seen, step by step. */
export async function vscode() {
  if (!existsSync(vsix)) run('npm', ['run', 'package'], root);
  install();
  mkdirSync(shots, { recursive: true });
  const home = mkdtempSync(join(tmpdir(), 'quern-vscode-'));
  const at = (...parts) => join(home, ...parts);
  mkdirSync(at('user', 'User'), { recursive: true });
  mkdirSync(at('recipes'));
  writeFileSync(at('recipes', 'loaf.quern'), FILE);
  const settings = {
    'security.workspace.trust.enabled': false,
    'workbench.startupEditor': 'none',
    'editor.inlayHints.enabled': 'on',
    'telemetry.telemetryLevel': 'off',
  };
  writeFileSync(at('user', 'User', 'settings.json'), JSON.stringify(settings));
  const common = [
    '--accept-server-license-terms',
    '--server-data-dir',
    at('server'),
    '--extensions-dir',
    at('extensions'),
  ];
  run(process.execPath, [main, '--install-extension', vsix, ...common]);
  const port = await freePort();
  const server = spawn(
    process.execPath,
    [
      main,
      '--host',
      '127.0.0.1',
      '--port',
      String(port),
      '--without-connection-token',
      '--telemetry-level',
      'off',
      '--user-data-dir',
      at('user'),
      ...common,
    ],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  let browser;
  let tab;
  try {
    await new Promise((ready) =>
      server.stdout.on('data', (part) => /available at|listening/i.test(String(part)) && ready()),
    );
    browser = await launch();
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    page.setDefaultTimeout(90_000);
    tab = new EditorTab(page, 'Visual Studio Code', shots);
    await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(at('recipes'))}`);
    await tab.opensRecipe('loaf.quern');
    await tab.see('a squiggle under the slip', () => page.locator('.squiggly-error').first().waitFor());
    await tab.see('hints and lenses beside the lines', async () => {
      await page.locator('.monaco-editor .view-lines', { hasText: '4 cups' }).first().waitFor();
      await page.locator('.codelens-decoration', { hasText: 'hydration' }).first().waitFor();
    });
    await tab.hovers('hnads');
    await tab.mends('hnads', 'hands');
    await tab.showsCard('Loaf');
  } finally {
    await browser?.close();
    server.kill();
    rmSync(home, { recursive: true, force: true });
  }
  return tab.outcomes;
}
