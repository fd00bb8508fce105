// Prints how fast Quern is beside other readers and beside an empty process. `--gate` compares the ratios with those of
// bench/baseline.json and fails when one has become much worse; `--save` writes them there.
import { importTs } from './run-ts.mjs';

const { bench } = await importTs('bench/bench.ts');
const flags = new Set(process.argv.slice(2));
process.exitCode = await bench({ gate: flags.has('--gate'), save: flags.has('--save') });
