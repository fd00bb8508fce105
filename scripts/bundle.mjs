// Bundles what runs outside the workspace, straight from the sources; nothing has to be built first.
// `node scripts/bundle.mjs [NAME…]`, or import `bundle`.
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { buildSite } from '../packages/desk/scripts/build-site.mjs';
import { NOTICES, noticesOf } from './notices.mjs';
import { root } from './run-ts.mjs';

const source = (path) => join(root, 'packages', path);
const node = { platform: 'node', target: 'node20.19' };
const browser = { platform: 'browser', target: 'es2022', format: 'iife', minify: true };
// What a module loaded by `import` may lack when the libraries in it were written for `require`.
const withRequire = {
  js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
};

/** Every bundle by a short name. The command is in parts, so that it loads only what the one asked for needs. */
const bundles = {
  cli: {
    ...node,
    format: 'esm',
    splitting: true,
    entryPoints: { quern: source('cli/src/main.ts') },
    outdir: source('cli/dist/bundle'),
    outExtension: { '.js': '.mjs' },
    chunkNames: 'parts/[name]-[hash]',
    minifySyntax: true,
    minifyWhitespace: true,
    banner: withRequire,
  },
  server: { ...node, format: 'cjs', ...one('server/src/main-node.ts', 'server/dist/quern-server.cjs') },
  'server-browser': { ...browser, ...one('server/src/main-browser.ts', 'server/dist/quern-server.browser.js') },
  extension: {
    ...node,
    format: 'cjs',
    external: ['vscode'],
    ...one('vscode/src/extension.ts', 'vscode/dist/extension.cjs'),
  },
  'extension-browser': {
    ...browser,
    format: 'cjs',
    external: ['vscode'],
    ...one('vscode/src/extension-browser.ts', 'vscode/dist/extension-browser.cjs'),
  },
};

function one(from, to) {
  return { entryPoints: [source(from)], outfile: source(to) };
}

/** Sites of several files by a short name; the one of the desk stands beside the command too, which serves it. */
const sites = { desk: source('desk/dist/site') };
const names = [...Object.keys(bundles), ...Object.keys(sites)];

/** Makes the bundles of these names; all of them when none is given. */
export async function bundle(wanted = names) {
  for (const name of wanted) {
    if (name in sites) {
      await buildSite(sites[name]);
      continue;
    }
    const { outdir } = bundles[name];
    if (outdir !== undefined) rmSync(outdir, { recursive: true, force: true });
    await make(bundles[name]);
    if (name === 'cli') await buildSite(join(outdir, 'desk'));
  }
}

/** Makes the command in another folder, as a test does that must not disturb the others, and gives the file to start. */
export async function bundleCommand(outdir) {
  await make({ ...bundles.cli, outdir });
  return join(outdir, 'quern.mjs');
}

/** Makes a bundle, and beside it the notices of what it holds of others. */
async function make(options) {
  const { metafile } = await build({
    bundle: true,
    conditions: ['@quern/source'],
    legalComments: 'none',
    logLevel: 'warning',
    metafile: true,
    ...options,
  });
  const { outdir, outfile = '' } = options;
  const beside = outdir === undefined ? `${outfile}.${NOTICES}` : join(outdir, NOTICES);
  writeFileSync(beside, noticesOf([metafile]));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const wanted = process.argv.slice(2);
  const unknown = wanted.filter((name) => !names.includes(name));
  if (unknown.length > 0) {
    console.error(`No bundle is called ${unknown.join(', ')}; there are ${names.join(', ')}.`);
    process.exit(1);
  }
  await bundle(wanted.length > 0 ? wanted : undefined);
}
