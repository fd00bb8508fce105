import { parentPort, workerData } from 'node:worker_threads';
import { checkFile, type FileReport, type Target } from './check-file.js';

/** What a worker thread is started with. */
export interface WorkerStart {
  readonly folder: string;
}

/** Some files to check, and their reports in the same order. */
export interface Batch {
  readonly id: number;
  readonly targets: readonly Target[];
}

export interface BatchDone {
  readonly id: number;
  readonly reports: readonly FileReport[];
}

/** Answers batches until the thread is ended. */
export function serve(): void {
  const { folder } = workerData as WorkerStart;
  parentPort?.on('message', ({ id, targets }: Batch) => {
    const done: BatchDone = { id, reports: targets.map((target) => checkFile(target, folder)) };
    parentPort?.postMessage(done);
  });
}
