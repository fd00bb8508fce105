/** A stream that text is written to. */
export interface Sink {
  write(text: string): void;
  readonly isTerminal: boolean;
  /** Columns of the terminal; undefined when it is none. */
  readonly columns: number | undefined;
}

/** What a command may touch of the machine besides files: given, so that a test can stand in for it. */
export interface System {
  readonly out: Sink;
  readonly err: Sink;
  readonly folder: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Whether to colour what is written; `--color` and the environment decide. */
  readonly colour: boolean;
  readonly version: string;
  /** The file that was started, to start a worker thread with; undefined when there is none (in a test). */
  readonly entry: string | undefined;
  readStdin(): Promise<string>;
}
