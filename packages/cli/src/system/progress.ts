import type { Sink } from './system.js';

const EVERY_MS = 100;
/** Nobody needs to be told of work that is over in a moment. */
const FROM_MS = 400;

/** Progress of long work on a terminal's error stream, on one line that is wiped when the work is done. */
export class Progress {
  readonly #started = Date.now();
  #last = 0;
  #shown = false;

  constructor(
    readonly sink: Sink,
    readonly what: string,
    readonly total: number,
  ) {}

  /** So many are done. */
  update(done: number): void {
    const now = Date.now();
    if (!this.sink.isTerminal || now - this.#started < FROM_MS || now - this.#last < EVERY_MS) return;
    this.#last = now;
    this.#shown = true;
    this.sink.write(`\r\u001b[K${this.what} ${done} of ${this.total}`);
  }

  end(): void {
    if (this.#shown) this.sink.write('\r\u001b[K');
    this.#shown = false;
  }
}
