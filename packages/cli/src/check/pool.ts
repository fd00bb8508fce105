import { Worker } from 'node:worker_threads';
import type { FileReport, Target } from './check-file.js';
import type { Batch, BatchDone } from './worker.js';

/** Small enough that threads end at nearly the same time, large enough that messages cost little. */
const BATCH = 32;

/**
 * With a bound the engine collects what it no longer needs sooner: the archive of the benchmark is checked in two thirds of
 * the memory. The largest file that is read needs less than half of it; what needs more has a thread without a bound.
 */
const MEGABYTES = 1024;

/** Checks files in threads; the reports come in the order of the files. `entry` is the file the threads are started with. */
export async function checkInThreads(
  targets: readonly Target[],
  options: {
    readonly entry: string;
    readonly threads: number;
    readonly megabytes?: number;
    readonly progress: (done: number) => void;
  },
): Promise<readonly FileReport[]> {
  const batches: Batch[] = [];
  for (let at = 0; at < targets.length; at += BATCH)
    batches.push({ id: batches.length, targets: targets.slice(at, at + BATCH) });
  const reports: (readonly FileReport[])[] = [];
  let done = 0;
  const lane = (megabytes: number | undefined, waiting?: Batch): Promise<void> =>
    new Promise<void>((resolve, reject) => {
      const worker = new Worker(options.entry, {
        stdout: false,
        stderr: false,
        ...(megabytes && { resourceLimits: { maxOldGenerationSizeMb: megabytes } }),
      });
      let inHand: Batch | undefined;
      const next = (): void => {
        inHand = batches.shift();
        if (inHand) worker.postMessage(inHand);
        else void worker.terminate().then(() => resolve());
      };
      worker.on('message', ({ id, reports: some }: BatchDone) => {
        reports[id] = some;
        done += some.length;
        options.progress(done);
        next();
      });
      worker.on('error', (error: NodeJS.ErrnoException) => {
        if (megabytes && error.code === 'ERR_WORKER_OUT_OF_MEMORY') lane(undefined, inHand).then(resolve, reject);
        else reject(error);
      });
      if (waiting) batches.unshift(waiting);
      next();
    });
  const lanes = Array.from({ length: Math.min(options.threads, batches.length) }, () =>
    lane(options.megabytes ?? MEGABYTES),
  );
  await Promise.all(lanes);
  return reports.flat();
}
