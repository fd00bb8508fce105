import { Worker } from 'node:worker_threads';
import type { FileReport, Target } from './check-file.js';
import type { Batch, BatchDone } from './worker.js';

/** Small enough that threads end at nearly the same time, large enough that messages cost little. */
const BATCH = 32;

/** Checks files in threads; the reports come in the order of the files. `entry` is the file the threads are started with. */
export async function checkInThreads(
  targets: readonly Target[],
  options: { readonly entry: string; readonly threads: number; readonly progress: (done: number) => void },
): Promise<readonly FileReport[]> {
  const batches: Batch[] = [];
  for (let at = 0; at < targets.length; at += BATCH)
    batches.push({ id: batches.length, targets: targets.slice(at, at + BATCH) });
  const reports: (readonly FileReport[])[] = [];
  let done = 0;
  const lanes = Array.from({ length: Math.min(options.threads, batches.length) }, () => {
    const worker = new Worker(options.entry, { stdout: false, stderr: false });
    return new Promise<void>((resolve, reject) => {
      const next = (): void => {
        const batch = batches.shift();
        if (batch) worker.postMessage(batch);
        else void worker.terminate().then(() => resolve());
      };
      worker.on('message', ({ id, reports: some }: BatchDone) => {
        reports[id] = some;
        done += some.length;
        options.progress(done);
        next();
      });
      worker.on('error', reject);
      next();
    });
  });
  await Promise.all(lanes);
  return reports.flat();
}
