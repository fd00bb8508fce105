// Compiles everything in examples/ into out/ with the commands a user has, and says what was made and where to look.
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { buildSite } from '../packages/desk/scripts/build-site.mjs';
import { importTs, root } from './run-ts.mjs';

const started = Date.now();
const { run, nodeSystem, registry } = await importTs('packages/cli/src/index.ts');
const examples = readdirSync(join(root, 'examples'))
  .filter((name) => name.endsWith('.quern'))
  .sort();
const out = join(root, 'out');

/** A Saturday, so that the plans of the demo are the same on every day it is run. */
const ready = '2041-02-16 18:00';

/** Runs one command as a user would; what it says is kept. */
async function quern(...args) {
  let said = '';
  const sink = { write: (text) => (said += text), isTerminal: false, columns: 100 };
  const system = { ...nodeSystem('demo'), out: sink, err: sink, folder: root, entry: undefined };
  const code = await run(args, system);
  if (code !== 0) throw new Error(`quern ${args.join(' ')}\n${said}`);
  return said;
}

/** What is made of a recipe: the file, and the arguments that make it. */
function outputs(path, isMenu) {
  const forRecipe = [
    ['sheet.html', 'sheet', path, '--percentages', '--format', 'html'],
    ['sheet-for-the-scale.csv', 'sheet', path, '--measures', 'metric', '--format', 'csv'],
    ['label.html', 'label', path, '--market', 'eu', '--format', 'html'],
  ];
  const forBoth = [
    ['shopping-list.md', 'basket', path, '--format', 'markdown'],
    ['clock.html', 'clock', path, '--ready', ready, '--zone', 'Europe/London', '--format', 'html'],
    ['clock.ics', 'clock', path, '--ready', ready, '--zone', 'Europe/London', '--format', 'ics'],
  ];
  return isMenu ? forBoth : [...forRecipe, ...forBoth];
}

console.log(await quern('check', 'examples'));
let files = 0;
for (const name of examples) {
  const path = join('examples', name);
  const folder = join(out, basename(name, '.quern'));
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const made = [];
  for (const [file, ...args] of outputs(path, /^menu /m.test(readFileSync(join(root, path), 'utf8')))) {
    await quern(...args, '-o', join(folder, file));
    made.push(file);
  }
  files += made.length;
  console.log(`${path}: ${made.join(', ')}`);
}
if (registry.some(({ name }) => name === 'card')) {
  await quern('card', 'examples', '--out', join(out, 'site'));
  console.log(`examples: a site of cards in ${relative(root, join(out, 'site'))}`);
}
await buildSite(join(out, 'desk'));
console.log(`the desk, to write in: ${relative(root, join(out, 'desk', 'index.html'))}`);
const seconds = ((Date.now() - started) / 1000).toFixed(1);
console.log(`\n${files} files from ${examples.length} examples in ${relative(root, out)}/, in ${seconds} s.`);
console.log(
  `Look at ${relative(root, join(out, 'site', 'index.html'))} in a browser first, then at a sheet or a clock beside it.`,
);
