import type * as lsp from 'vscode-languageserver';
import type { Diagnostic } from '@quern/text';
import type { Snapshot } from '@quern/ide';
import { inTurns } from './turns.js';

/*
 * When messages are worked out. What the compiler says is told at once, or after a moment when the last time took long;
 * what only the label and the clock can tell comes when nobody has typed for a while, recipe by recipe, and stops when
 * somebody types. Messages of an old version are never told.
 */

/** A compilation that takes longer than this is put off a little, so that typing stays smooth. In milliseconds. */
const LONG = 50;
const PUT_OFF = 120;
const QUIET = 400;

export interface Teller {
  snapshot(uri: string): Snapshot | undefined;
  convert(uri: string, snapshot: Snapshot, found: readonly Diagnostic[]): lsp.Diagnostic[];
  /** Tells the messages of a file, or asks the client to come for them. */
  publish(uri: string, version: number | undefined): void;
  version(uri: string): number | undefined;
  slowChecks(): boolean;
  now(): number;
  /** Says that something went wrong inside, so that it is in the log and nothing else stops. */
  failed(what: string, error: unknown): void;
}

interface Slow {
  readonly text: string;
  readonly found: readonly Diagnostic[];
}

export class Diagnoser {
  readonly #waiting = new Map<string, ReturnType<typeof setTimeout>>();
  readonly #slow = new Map<string, Slow>();
  readonly #took = new Map<string, number>();

  constructor(readonly teller: Teller) {}

  /** A file has changed: its messages are due. */
  due(uri: string): void {
    this.#after(uri, 'quick', (this.#took.get(uri) ?? 0) > LONG ? PUT_OFF : 0, () =>
      this.teller.publish(uri, this.teller.version(uri)),
    );
    if (this.teller.slowChecks()) this.#after(uri, 'slow', QUIET, () => this.#checkSlowly(uri));
  }

  /** The messages of a file as it is now, with those of the slow checks if they are of this text. */
  messages(uri: string): readonly lsp.Diagnostic[] {
    const snapshot = this.teller.snapshot(uri);
    if (snapshot === undefined) return [];
    const from = this.teller.now();
    const quick = snapshot.compiled.diagnostics;
    this.#took.set(uri, this.teller.now() - from);
    return this.teller.convert(uri, snapshot, [...quick, ...this.slow(uri, snapshot.text)]);
  }

  /** What the slow checks found in a text, as far as they have come to it. */
  slow(uri: string, text: string): readonly Diagnostic[] {
    const slow = this.#slow.get(uri);
    return slow?.text === text ? slow.found : [];
  }

  /**
   * Makes the slow checks now, for a client that comes for messages and cannot be told to come again.
   * @throws ResponseError when the request was taken back, or the file has changed meanwhile.
   */
  async settle(uri: string, token: lsp.CancellationToken): Promise<void> {
    const snapshot = this.teller.snapshot(uri);
    if (snapshot === undefined || !this.teller.slowChecks() || this.#slow.get(uri)?.text === snapshot.text) return;
    const { slowDiagnostics } = await import('@quern/ide/slow');
    const stands = (): boolean => this.teller.snapshot(uri)?.text === snapshot.text;
    const { given } = await inTurns(slowDiagnostics(snapshot), { token, stands, now: () => this.teller.now() });
    this.#slow.set(uri, { text: snapshot.text, found: given.flat() });
  }

  forget(uri: string): void {
    for (const kind of ['quick', 'slow']) {
      const key = `${kind} ${uri}`;
      clearTimeout(this.#waiting.get(key));
      this.#waiting.delete(key);
    }
    this.#slow.delete(uri);
    this.#took.delete(uri);
  }

  stop(): void {
    for (const timer of this.#waiting.values()) clearTimeout(timer);
    this.#waiting.clear();
  }

  #after(uri: string, kind: 'quick' | 'slow', milliseconds: number, act: () => void | Promise<void>): void {
    const key = `${kind} ${uri}`;
    clearTimeout(this.#waiting.get(key));
    const timer = setTimeout(() => {
      this.#waiting.delete(key);
      void (async () => act())().catch((error: unknown) => this.teller.failed(`the ${kind} checks of ${uri}`, error));
    }, milliseconds);
    this.#waiting.set(key, timer);
  }

  /**
   * One recipe a turn, so that requests come between. A change of the file begins anew. The views are loaded the first
   * time, so that the server starts without them.
   */
  async #checkSlowly(uri: string): Promise<void> {
    const { slowDiagnostics } = await import('@quern/ide/slow');
    const snapshot = this.teller.snapshot(uri);
    if (snapshot === undefined) return;
    const turns = slowDiagnostics(snapshot);
    const found: Diagnostic[] = [];
    const turn = (): void => {
      if (this.teller.snapshot(uri)?.text !== snapshot.text) return;
      const next = turns.next();
      if (next.done !== true) {
        found.push(...next.value);
        this.#after(uri, 'slow', 0, turn);
        return;
      }
      const before = this.#slow.get(uri);
      this.#slow.set(uri, { text: snapshot.text, found });
      if (found.length > 0 || (before?.found.length ?? 0) > 0) this.teller.publish(uri, this.teller.version(uri));
    };
    turn();
  }
}
