// Bundles what runs outside the workspace, straight from the sources; nothing has to be built first.
// `node scripts/bundle.mjs [NAME…]`, or import `bundle`.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { root } from './run-ts.mjs';

const node = { platform: 'node', target: 'node20.19', format: 'cjs' };
const browser = { platform: 'browser', target: 'es2022', format: 'iife', minify: true };

/** Every bundle by a short name: from which source, to which file, both under packages/. */
const bundles = {
  cli: { from: 'cli/src/main.ts', to: 'cli/dist/quern.cjs', ...node, banner: { js: '#!/usr/bin/env node' } },
  server: { from: 'server/src/main-node.ts', to: 'server/dist/quern-server.cjs', ...node },
  'server-browser': { from: 'server/src/main-browser.ts', to: 'server/dist/quern-server.browser.js', ...browser },
  extension: { from: 'vscode/src/extension.ts', to: 'vscode/dist/extension.cjs', ...node, external: ['vscode'] },
  desk: { from: 'desk/src/main.ts', to: 'desk/dist/desk.js', ...browser },
};

/** Makes the bundles of these names; all of them when none is given. */
export async function bundle(names = Object.keys(bundles)) {
  for (const name of names) {
    const { from, to, ...options } = bundles[name];
    await build({
      entryPoints: [join(root, 'packages', from)],
      outfile: join(root, 'packages', to),
      bundle: true,
      conditions: ['@quern/source'],
      legalComments: 'none',
      logLevel: 'warning',
      ...options,
    });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const names = process.argv.slice(2);
  const unknown = names.filter((name) => !(name in bundles));
  if (unknown.length > 0) {
    console.error(`No bundle is called ${unknown.join(', ')}; there are ${Object.keys(bundles).join(', ')}.`);
    process.exit(1);
  }
  await bundle(names.length > 0 ? names : undefined);
}
