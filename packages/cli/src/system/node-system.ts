import { realpathSync, writeSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { fileProblem } from '../files/problems.js';
import type { Sink, System } from './system.js';

/** The reader of a pipe went away: nothing is wrong, and nothing more need be written. */
const PIPE_CLOSED = new Set(['EPIPE', 'EOF', 'ERR_STREAM_DESTROYED']);

/**
 * A sink that writes at once, so that nothing is lost when the process ends. When the reader of a pipe is gone
 * (`quern check | head`), the process ends quietly as other tools do.
 */
function sink(stream: NodeJS.WriteStream, file: number): Sink {
  return {
    write: (written) => writeAll(file, written),
    isTerminal: stream.isTTY === true,
    columns: stream.isTTY ? stream.columns : undefined,
  };
}

const MOST_WAITS = 2000;

function writeAll(file: number, written: string): void {
  let rest: Uint8Array = Buffer.from(written, 'utf8');
  for (let waits = 0; rest.length > 0;) {
    try {
      rest = rest.subarray(writeSync(file, rest));
      waits = 0;
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code !== undefined && PIPE_CLOSED.has(code)) process.exit(0);
      // A pipe that is full for now: wait a moment for its reader.
      if (code !== 'EAGAIN' || ++waits > MOST_WAITS) throw fileProblem('write', 'the output', error);
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}

/** The process as a system. `version` is that of the package. */
export function nodeSystem(version: string): System {
  const [, entry] = process.argv;
  return {
    out: sink(process.stdout, 1),
    err: sink(process.stderr, 2),
    folder: process.cwd(),
    environment: process.env,
    colour: false,
    version,
    entry: entry === undefined ? undefined : realpathSync(entry),
    readStdin: () => text(process.stdin),
  };
}
