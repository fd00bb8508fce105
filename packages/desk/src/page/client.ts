import type { Answer, Kind, Question, Questions } from '../protocol.js';

/** The service on the other side of a channel. */
export class Service {
  #last = 0;
  readonly #waiting = new Map<
    number,
    { readonly done: (answer: Questions[Kind]['answer']) => void; readonly failed: (error: Error) => void }
  >();

  constructor(readonly post: (question: Question) => void) {}

  ask<K extends Kind>(kind: K, body: Questions[K]['body']): Promise<Questions[K]['answer']> {
    const number = ++this.#last;
    return new Promise((done, failed) => {
      this.#waiting.set(number, { done: done as (answer: Questions[Kind]['answer']) => void, failed });
      this.post({ number, kind, body });
    });
  }

  /** An answer that came in. */
  take(answer: Answer): void {
    const waiting = this.#waiting.get(answer.number);
    this.#waiting.delete(answer.number);
    if (!waiting) return;
    if ('fault' in answer) waiting.failed(new Error(answer.fault));
    else waiting.done(answer.answer);
  }

  /** Nothing will be answered any more. */
  fail(error: Error): void {
    for (const { failed } of this.#waiting.values()) failed(error);
    this.#waiting.clear();
  }
}

export interface Started {
  readonly service: Service;
  /** Whether it runs in a worker; in the page itself a long computation stops the typing. */
  readonly apart: boolean;
}

/** Starts the service: as a worker, or in the page when that is refused, as it is for a page opened as a file. */
export async function startService(): Promise<Started> {
  const worker = await startWorker();
  return worker ? { service: worker, apart: true } : { service: await startHere(), apart: false };
}

/** A worker that has answered; undefined when none can be had. */
function startWorker(): Promise<Service | undefined> {
  return new Promise((resolve) => {
    let worker: Worker;
    try {
      worker = new Worker('worker.js');
    } catch {
      // The browser refuses scripts of a page without an address of its own.
      resolve(undefined);
      return;
    }
    const service = new Service((question) => worker.postMessage(question));
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => service.take(data));
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      service.fail(new Error(event.message || 'the worker could not be started'));
    });
    service.ask('put', { files: [], opened: false }).then(
      () => resolve(service),
      () => {
        worker.terminate();
        resolve(undefined);
      },
    );
  });
}

async function startHere(): Promise<Service> {
  await loadScript('foods.js');
  await loadScript('worker.js');
  const start = globalThis.quernService;
  if (!start) throw new Error('the scripts of the desk could not be loaded');
  const { port1, port2 } = new MessageChannel();
  const service = new Service((question) => port1.postMessage(question));
  port1.addEventListener('message', ({ data }: MessageEvent<Answer>) => service.take(data));
  port1.start();
  start(port2);
  return service;
}

function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = address;
    script.addEventListener('load', () => resolve());
    script.addEventListener('error', () => reject(new Error(`${address} could not be loaded`)));
    document.head.append(script);
  });
}
