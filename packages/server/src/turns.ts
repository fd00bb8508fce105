import { LSPErrorCodes, ResponseError, type CancellationToken } from 'vscode-languageserver';

/*
 * Work over many files, a file a turn. Between turns other messages are read: so a key is answered in time, and a request
 * that is taken back stops where it is.
 */

/** How long turns may follow each other before other messages are read, in milliseconds. */
const A_WHILE = 8;

/** Lets everything that waits come in: timers stand behind messages both in a process and in a worker. */
const othersFirst = (): Promise<void> => new Promise((give) => setTimeout(give, 0));

export interface Work {
  /** Whether what the work began with still stands; checked whenever others have had their turn. */
  readonly stands: () => boolean;
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
  readonly token: CancellationToken;
}

/**
 * Does all turns and gives what they gave, with the value at the end.
 * @throws ResponseError when the request was taken back, or its file has changed meanwhile.
 */
export async function inTurns<T, R>(
  turns: Generator<T, R>,
  work: Work,
): Promise<{ readonly given: T[]; readonly end: R }> {
  const given: T[] = [];
  let since = work.now();
  for (;;) {
    const turn = turns.next();
    if (turn.done === true) return { given, end: turn.value };
    given.push(turn.value);
    if (work.now() - since < A_WHILE) continue;
    await othersFirst();
    if (work.token.isCancellationRequested) throw new ResponseError(LSPErrorCodes.RequestCancelled, 'taken back');
    if (!work.stands()) throw new ResponseError(LSPErrorCodes.ContentModified, 'the file has changed');
    since = work.now();
  }
}
