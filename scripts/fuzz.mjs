// Looks for texts that break something: `npm run fuzz -- [SECONDS] [SEED]`. What it finds is written to out/fuzz/.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from './run-ts.mjs';

const [seconds = 300, seed = Date.now() % 2 ** 31] = process.argv.slice(2).map(Number);
if (!(seconds > 0 && Number.isInteger(seed))) {
  console.error('Say for how many seconds, and with which whole number as seed: npm run fuzz -- 300 1');
  process.exit(1);
}
console.log(`Fuzzing for ${seconds} s with seed ${seed}.`);
const { fuzz } = await importTs('tests/fuzz/long.ts');
const { texts, kept, blocks, failures } = await fuzz(seconds, seed, (line) => process.stdout.write(`\r${line}   `));
const folder = join(root, 'out', 'fuzz');
console.log(
  `\n${texts} texts, of which ${kept} reached new code; ${blocks} blocks of code run; ${failures.length} failures.`,
);
failures.forEach(({ target, message, text }, index) => {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${target}-${index + 1}.quern`);
  writeFileSync(path, text);
  console.log(`${target}: ${message}\n  ${path}`);
});
process.exitCode = failures.length === 0 ? 0 : 1;
