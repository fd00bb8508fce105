import { parentPort } from 'node:worker_threads';
import { checkFile, type FileReport, type Target } from './check-file.js';

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
  parentPort?.on('message', ({ id, targets }: Batch) => {
    const done: BatchDone = { id, reports: targets.map(checkFile) };
    parentPort?.postMessage(done);
  });
}
