import { spawn, type ChildProcessWithoutNullStreams } from 'node:child_process';
import { decode } from '../files/read-text.js';
import type { Repository } from './git.js';

/** Texts out of a repository, many by one process: `git cat-file --batch` answers in the order it is asked. */
export class ObjectReader {
  readonly #process: ChildProcessWithoutNullStreams;
  readonly #waiting: ((text: string | undefined) => void)[] = [];
  readonly #texts = new Map<string, Promise<string | undefined>>();
  #chunks: Buffer[] = [];
  #length = 0;
  /** Bytes that the object being read has, with the line end behind it; undefined between objects. */
  #wanted: number | undefined;

  constructor(repository: Repository) {
    this.#process = spawn('git', ['cat-file', '--batch'], { cwd: repository.top, windowsHide: true });
    this.#process.stdout.on('data', (chunk: Buffer) => this.#take(chunk));
    this.#process.on('close', () => {
      for (const tell of this.#waiting.splice(0)) tell(undefined);
    });
    // What git has to say besides is told by the missing answer.
    this.#process.stderr.resume();
    this.#process.stdin.on('error', () => undefined);
  }

  /** The text of an object named `ID` or `COMMIT:PATH`; undefined when there is none, or it is no text. */
  text(name: string): Promise<string | undefined> {
    // A name with a line end in it would be two questions.
    if (/[\r\n]/.test(name)) return Promise.resolve(undefined);
    const known = this.#texts.get(name);
    if (known) return known;
    const asked = new Promise<string | undefined>((tell) => {
      this.#waiting.push(tell);
      this.#process.stdin.write(`${name}\n`);
    });
    this.#texts.set(name, asked);
    return asked;
  }

  close(): void {
    this.#process.stdin.end();
  }

  #take(chunk: Buffer): void {
    this.#chunks.push(chunk);
    this.#length += chunk.length;
    while (this.#answer());
  }

  /** Reads one answer from what has come so far; false when more has to come. */
  #answer(): boolean {
    if (this.#length === 0) return false;
    if (this.#wanted === undefined) {
      const all = this.#joined();
      const end = all.indexOf(10);
      if (end < 0) return false;
      const head = all.subarray(0, end).toString('utf8');
      this.#rest(all.subarray(end + 1));
      const found = /^[0-9a-f]+ (\w+) (\d+)$/.exec(head);
      if (found?.[1] !== 'blob' && found === null) {
        this.#waiting.shift()?.(undefined);
        return true;
      }
      this.#wanted = Number(found?.[2]) + 1;
    }
    if (this.#length < this.#wanted) return false;
    const all = this.#joined();
    const bytes = all.subarray(0, this.#wanted - 1);
    this.#rest(all.subarray(this.#wanted));
    this.#wanted = undefined;
    this.#waiting.shift()?.(decode(bytes));
    return true;
  }

  #joined(): Buffer {
    const [only] = this.#chunks;
    const all = this.#chunks.length === 1 && only ? only : Buffer.concat(this.#chunks);
    this.#chunks = [all];
    return all;
  }

  #rest(bytes: Buffer): void {
    this.#chunks = bytes.length > 0 ? [bytes] : [];
    this.#length = bytes.length;
  }
}
