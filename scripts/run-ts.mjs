// Runs TypeScript of the workspace in plain Node 20: bundled from the sources each time, never from a stale build.
import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** In a bundle all files share one `import.meta`; this gives each source file its own folder back. */
const ownFolder = {
  name: 'own-folder',
  setup({ onLoad }) {
    onLoad({ filter: /\.ts$/ }, ({ path }) => ({
      loader: 'ts',
      contents: readFileSync(path, 'utf8').replaceAll('import.meta.dirname', JSON.stringify(dirname(path))),
    }));
  },
};

/** Bundles a TypeScript module, named by its path from the root, and gives the path of the result. */
export async function bundleTs(path) {
  const outfile = join(root, '.cache', 'scripts', `${basename(path, '.ts')}.mjs`);
  const require =
    "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);";
  await build({
    entryPoints: [join(root, path)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    conditions: ['@quern/source'],
    banner: { js: require },
    plugins: [ownFolder],
    // It looks for a file of its own beside itself.
    external: ['highs'],
    logLevel: 'warning',
  });
  return outfile;
}

/** The exports of a TypeScript module of the workspace. */
export async function importTs(path) {
  return import(pathToFileURL(await bundleTs(path)).href);
}
