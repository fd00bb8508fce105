// Installs the packed extension into a real Visual Studio Code, served to a real browser, and drives it: `npm run
// test:editors -- vscode`. The editor is installed on first use into .cache/; screenshots go to out/vscode/.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
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

function run(command, args, cwd) {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8', timeout: 600_000 });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}\n${stdout}${stderr}`);
}

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

/** What is seen, step by step. A step that does not come about fails with what stands there instead. */
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
  const outcomes = [];
  let browser;
  try {
    await new Promise((ready) =>
      server.stdout.on('data', (part) => /available at|listening/i.test(String(part)) && ready()),
    );
    browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-dev-shm-usage'],
    });
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    page.setDefaultTimeout(90_000);
    const see = async (what, act) => {
      try {
        await act();
        outcomes.push({ what: `Visual Studio Code: ${what}`, ok: true, told: '' });
      } catch (error) {
        outcomes.push({ what: `Visual Studio Code: ${what}`, ok: false, told: String(error).slice(0, 500) });
      }
      await page.screenshot({ path: join(shots, `${String(outcomes.length)}-${what.replace(/\W+/g, '-')}.png`) });
    };
    const lines = async () =>
      (await page.locator('.monaco-editor .view-lines .view-line').allInnerTexts())
        .join('\n')
        .replaceAll('\u00a0', ' ');
    await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(at('recipes'))}`);
    await see('the file opens as a recipe', async () => {
      await page.locator('.explorer-folders-view .monaco-list-row', { hasText: 'loaf.quern' }).dblclick();
      await page.locator('.monaco-editor .view-lines .view-line').first().waitFor();
      await page.getByText('Quern', { exact: true }).first().waitFor();
    });
    await see('a squiggle under the slip', () => page.locator('.squiggly-error').first().waitFor());
    await see('hints and lenses beside the lines', async () => {
      await page.locator('.monaco-editor .view-lines', { hasText: '4 cups' }).first().waitFor();
      await page.locator('.codelens-decoration', { hasText: 'hydration' }).first().waitFor();
    });
    await see('hover with the message', async () => {
      const box = await page.locator('.squiggly-error').first().boundingBox();
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await page.locator('.monaco-hover .hover-contents', { hasText: 'hnads' }).first().waitFor();
    });
    await see('a quick fix mends it', async () => {
      await page.keyboard.press('Escape');
      await page
        .locator('.view-line', { hasText: 'hnads' })
        .first()
        .click({ position: { x: 40, y: 8 } });
      await page.keyboard.press('Control+.');
      await page.locator('.action-widget', { hasText: 'Write “hands”' }).waitFor();
      await page.keyboard.press('Enter');
      await page.locator('.view-line', { hasText: 'hands' }).first().waitFor();
      await page.locator('.squiggly-error').first().waitFor({ state: 'detached' });
      if (!(await lines()).includes('hands 8 min')) throw new Error(await lines());
    });
    await see('the card stands beside the file', async () => {
      await page.keyboard.press('F1');
      await page.keyboard.type('Quern: Show the Card');
      await page.keyboard.press('Enter');
      const outer = page.frameLocator('iframe.webview.ready');
      await outer.frameLocator('iframe').getByRole('heading', { name: 'Loaf' }).first().waitFor();
    });
  } finally {
    await browser?.close();
    server.kill();
    rmSync(home, { recursive: true, force: true });
  }
  return outcomes;
}
