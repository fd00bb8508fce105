import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll } from 'vitest';

/* Real repositories in temporary folders. */

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** No settings but the repository's own, and times that do not depend on the day. */
const ENVIRONMENT = {
  PATH: process.env['PATH'] ?? '',
  HOME: tmpdir(),
  GIT_CONFIG_NOSYSTEM: '1',
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_AUTHOR_NAME: 'Wenna Tolley',
  GIT_AUTHOR_EMAIL: 'wenna@example.invalid',
  GIT_COMMITTER_NAME: 'Wenna Tolley',
  GIT_COMMITTER_EMAIL: 'wenna@example.invalid',
  GIT_PAGER: 'cat',
  LC_ALL: 'C',
};

export class TestRepository {
  readonly folder = mkdtempSync(join(tmpdir(), 'quern-git-'));

  /** @param entry the command, as node starts it */
  constructor(readonly entry: () => string) {
    made.push(this.folder);
    this.git('init', '--quiet', '--initial-branch=main');
  }

  git(...args: readonly string[]): Ran {
    return this.#run('git', args, {});
  }

  /** @throws Error when git refuses. */
  must(...args: readonly string[]): string {
    const { code, out, err } = this.git(...args);
    if (code !== 0) throw new Error(`git ${args.join(' ')}: ${err}${out}`);
    return out;
  }

  /** Git with something to read. */
  feed(input: string, ...args: readonly string[]): void {
    const { code, err } = this.#run('git', args, { input });
    if (code !== 0) throw new Error(`git ${args.join(' ')}: ${err}`);
  }

  quern(...args: readonly string[]): Ran {
    return this.#run(process.execPath, [this.entry(), ...args], {});
  }

  answering(input: string, ...args: readonly string[]): Ran {
    return this.#run(process.execPath, [this.entry(), ...args], { input });
  }

  #run(command: string, args: readonly string[], options: { readonly input?: string }): Ran {
    const { status, stdout, stderr } = spawnSync(command, args, {
      cwd: this.folder,
      env: { ...ENVIRONMENT, GIT_AUTHOR_DATE: this.#now, GIT_COMMITTER_DATE: this.#now },
      encoding: 'utf8',
      input: options.input ?? '',
      maxBuffer: 64 * 1024 * 1024,
    });
    return { code: status, out: stdout, err: stderr };
  }

  #day = 1;
  get #now(): string {
    return `2041-02-${String(this.#day).padStart(2, '0')}T09:00:00+00:00`;
  }

  write(path: string, text: string): void {
    const full = join(this.folder, path);
    mkdirSync(dirname(full), { recursive: true });
    writeFileSync(full, text);
  }

  read(path: string): string {
    return readFileSync(join(this.folder, path), 'utf8');
  }

  has(path: string): boolean {
    return existsSync(join(this.folder, path));
  }

  /** Writes a file and commits everything, a day later than the last time. */
  commit(message: string, path?: string, text?: string): string {
    if (path !== undefined && text !== undefined) this.write(path, text);
    this.must('add', '--all');
    this.must('commit', '--quiet', '--allow-empty', '-m', message);
    this.#day++;
    return this.must('rev-parse', 'HEAD').trim();
  }
}
