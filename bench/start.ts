/** What it costs to start the bundled command, beside an empty Node process. */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inTurns, type Measured } from './measure.js';

export async function coldStart(command: string, folder: string, rounds: number): Promise<Measured[]> {
  const empty = join(folder, 'empty.cjs');
  writeFileSync(empty, '');
  const start = (...args: string[]) => execFileSync(process.execPath, args, { stdio: 'ignore' });
  const times = await inTurns({ node: () => start(empty), quern: () => start(command, '--version') }, rounds);
  const limit = 2 * times.node + 60;
  return [
    {
      what: `start the command (an empty Node process: ${times.node.toFixed(0)} ms)`,
      value: `${times.quern.toFixed(0)} ms`,
      goal: `under twice an empty process plus 60 ms: ${limit.toFixed(0)} ms`,
      reached: times.quern < limit,
      ratio: { id: 'cold-start', value: times.quern / times.node, better: 'less' },
    },
  ];
}
