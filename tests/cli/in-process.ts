import { run } from '../../packages/cli/src/run.js';
import type { System } from '../../packages/cli/src/system/system.js';

export interface Told {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process, in a folder, with nothing on its standard input. */
export async function runIn(
  folder: string,
  args: readonly string[],
  environment: System['environment'] = {},
): Promise<Told> {
  const texts = { out: '', err: '' };
  const sink = (name: 'out' | 'err') => ({
    write: (text: string) => void (texts[name] += text),
    isTerminal: false,
    columns: 80,
  });
  const system: System = {
    out: sink('out'),
    err: sink('err'),
    folder,
    environment,
    colour: false,
    version: '0.0.0',
    entry: undefined,
    readStdin: () => Promise.resolve(''),
  };
  return { code: await run(args, system), ...texts };
}
