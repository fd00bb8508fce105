// Makes the desk as a static site: a page, its script, the worker, the food table and the examples. Nothing in it asks
// another machine for anything; it can be put on any web server, in any folder.
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { NOTICES, noticesOf } from '../../../scripts/notices.mjs';

const packageFolder = fileURLToPath(new URL('..', import.meta.url));
const root = join(packageFolder, '..', '..');
const source = (path) => join(packageFolder, 'src', path);

const browser = {
  bundle: true,
  platform: 'browser',
  target: 'es2022',
  format: 'iife',
  minify: true,
  charset: 'utf8',
  conditions: ['@quern/source'],
  legalComments: 'none',
  logLevel: 'warning',
};

/** Builds the site into a folder, which is emptied first. */
export async function buildSite(outdir) {
  rmSync(outdir, { recursive: true, force: true });
  mkdirSync(outdir, { recursive: true });
  const scripts = { desk: source('main.ts'), worker: source('worker.ts') };
  const { metafile } = await build({ ...browser, entryPoints: scripts, outdir, metafile: true });
  writeFileSync(join(outdir, NOTICES), noticesOf([metafile]));
  await build({ ...browser, stdin: foods, outfile: join(outdir, 'foods.js') });
  writeFileSync(join(outdir, 'examples.js'), `globalThis.quernExamples=${JSON.stringify(examples())};\n`);
  await build({ ...browser, entryPoints: [source('site/desk.css')], outfile: join(outdir, 'desk.css') });
  copyFileSync(source('site/index.html'), join(outdir, 'index.html'));
}

/** The food table as a script that puts it where the worker looks. */
const foods = {
  contents: "import { FOOD_TABLE } from './food-table.js'; globalThis.quernFoods = FOOD_TABLE;",
  resolveDir: join(root, 'packages', 'foods', 'src', 'generated'),
};

function examples() {
  const folder = join(root, 'examples');
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.quern'))
    .sort();
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}
