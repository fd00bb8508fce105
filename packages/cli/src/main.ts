#!/usr/bin/env node
import { isMainThread } from 'node:worker_threads';
import { nodeSystem } from './system/node-system.js';
import { VERSION } from './version.js';

/* The entry of the command. The same file is started as the worker threads of `check`. */

async function main(): Promise<void> {
  if (!isMainThread) {
    const { serve } = await import('./check/worker.js');
    serve();
    return;
  }
  const { run } = await import('./run.js');
  process.exitCode = await run(process.argv.slice(2), nodeSystem(VERSION));
}

void main();
