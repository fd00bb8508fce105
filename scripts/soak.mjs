// Random edits over the examples in the editor's state: `npm run soak -- [EDITS] [SEED]`; 100,000 edits unless given.
import { importTs } from './run-ts.mjs';

const [edits = 100_000, seed = 1] = process.argv.slice(2).map(Number);
if (!(Number.isInteger(edits) && edits > 0 && Number.isInteger(seed))) {
  console.error('Say how many edits, and with which whole number as seed: npm run soak -- 100000 1');
  process.exit(1);
}
const { soak } = await importTs('tests/editor/soak.ts');
const { failures, memory } = soak(edits, seed, (line) => console.log(line));
for (const failure of failures) console.error(failure);
const growth = (memory.at(-1) / memory[Math.floor(memory.length / 2)] - 1) * 100;
console.log(
  `${edits} edits, ${failures.length} failures; live memory ${growth < 0 ? 'shrank' : 'grew'} ${Math.abs(growth).toFixed(0)} % over the second half.`,
);
process.exitCode = failures.length === 0 && growth < 25 ? 0 : 1;
