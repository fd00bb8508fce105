// Prints how fast Quern is, beside other readers and beside an empty process. `--gate` measures less and compares the ratios
// with those of bench/baseline.json; it fails when one has become much worse. `--save` writes them there.
import { bundle } from './bundle.mjs';
import { importTs } from './run-ts.mjs';

await bundle(['cli', 'server']);
const { bench } = await importTs('bench/bench.ts');
const flags = new Set(process.argv.slice(2));
process.exitCode = await bench({ gate: flags.has('--gate'), save: flags.has('--save') });
