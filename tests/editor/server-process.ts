/**
 * A real server in a process of its own and a client that knows nothing but the protocol. The server is bundled from the
 * sources as it is shipped.
 */
import { spawn, type ChildProcessWithoutNullStreams } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import * as lsp from 'vscode-languageserver-protocol/node';

const root = resolve(import.meta.dirname, '..', '..');

/** Bundles the server into a folder that is removed with `clean`. */
export async function bundledServer(): Promise<{ readonly file: string; clean(): void }> {
  const folder = mkdtempSync(join(tmpdir(), 'quern-server-'));
  const file = join(folder, 'quern-server.cjs');
  await build({
    entryPoints: [join(root, 'packages', 'server', 'src', 'main-node.ts')],
    outfile: file,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20.19',
    conditions: ['@quern/source'],
    logLevel: 'warning',
  });
  return { file, clean: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A folder of recipes on the disk. */
export class Folder {
  readonly path = mkdtempSync(join(tmpdir(), 'quern-recipes-'));

  constructor(files: Readonly<Record<string, string>> = {}) {
    for (const [name, text] of Object.entries(files)) this.write(name, text);
  }

  get uri(): string {
    return pathToFileURL(this.path).href;
  }

  uriOf(name: string): string {
    return pathToFileURL(join(this.path, name)).href;
  }

  write(name: string, text: string): void {
    const file = join(this.path, name);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }

  remove(name: string): void {
    rmSync(join(this.path, name), { force: true });
  }

  clean(): void {
    rmSync(this.path, { recursive: true, force: true });
  }
}

/** What an able editor says of itself. */
export const ABLE: lsp.ClientCapabilities = {
  workspace: {
    workspaceFolders: true,
    workspaceEdit: { documentChanges: true, resourceOperations: ['create'] },
    didChangeWatchedFiles: { dynamicRegistration: true },
  },
  textDocument: {
    completion: { completionItem: { snippetSupport: true } },
    publishDiagnostics: { relatedInformation: true, versionSupport: true, codeDescriptionSupport: true },
  },
};

export class Client {
  readonly process: ChildProcessWithoutNullStreams;
  readonly connection: lsp.ProtocolConnection;
  /** What the server wrote into its log. */
  readonly log: string[] = [];
  readonly published = new Map<string, lsp.PublishDiagnosticsParams>();
  readonly registered: string[] = [];
  readonly exited: Promise<number | null>;
  #listeners: (() => void)[] = [];
  #versions = new Map<string, number>();
  #texts = new Map<string, string>();

  constructor(serverFile: string) {
    this.process = spawn(process.execPath, [serverFile, '--stdio']);
    this.process.stderr.on('data', (part: Buffer) => this.log.push(part.toString()));
    this.exited = new Promise((done) => this.process.on('exit', done));
    this.connection = lsp.createProtocolConnection(
      new lsp.StreamMessageReader(this.process.stdout),
      new lsp.StreamMessageWriter(this.process.stdin),
    );
    this.connection.onNotification(lsp.LogMessageNotification.type, ({ message }) => void this.log.push(message));
    this.connection.onNotification(lsp.PublishDiagnosticsNotification.type, (params) => {
      this.published.set(params.uri, params);
      for (const listener of this.#listeners) listener();
    });
    this.connection.onRequest(lsp.RegistrationRequest.type, ({ registrations }) => {
      this.registered.push(...registrations.map(({ method }) => method));
    });
    this.connection.onError(() => undefined);
    this.connection.listen();
  }

  async initialize(
    folder: Folder | undefined,
    capabilities: lsp.ClientCapabilities = ABLE,
    options?: unknown,
  ): Promise<lsp.InitializeResult> {
    const result = await this.connection.sendRequest(lsp.InitializeRequest.type, {
      processId: process.pid,
      rootUri: folder?.uri ?? null,
      capabilities,
      ...(folder ? { workspaceFolders: [{ uri: folder.uri, name: 'recipes' }] } : {}),
      ...(options === undefined ? {} : { initializationOptions: options }),
    });
    await this.connection.sendNotification(lsp.InitializedNotification.type, {});
    return result;
  }

  async open(uri: string, text: string): Promise<void> {
    this.#versions.set(uri, 1);
    this.#texts.set(uri, text);
    await this.connection.sendNotification(lsp.DidOpenTextDocumentNotification.type, {
      textDocument: { uri, languageId: 'quern', version: 1, text },
    });
  }

  text(uri: string): string {
    return this.#texts.get(uri) ?? '';
  }

  /** Changes a stretch of an open file, as an editor does while somebody types. */
  async change(uri: string, start: number, end: number, text: string): Promise<void> {
    const before = this.text(uri);
    const version = (this.#versions.get(uri) ?? 0) + 1;
    this.#versions.set(uri, version);
    this.#texts.set(uri, before.slice(0, start) + text + before.slice(end));
    await this.connection.sendNotification(lsp.DidChangeTextDocumentNotification.type, {
      textDocument: { uri, version },
      contentChanges: [{ range: { start: positionAt(before, start), end: positionAt(before, end) }, text }],
    });
  }

  version(uri: string): number {
    return this.#versions.get(uri) ?? 0;
  }

  /** The messages of a file once those that satisfy the condition have been pushed. */
  async diagnostics(
    uri: string,
    until: (found: lsp.PublishDiagnosticsParams) => boolean = ({ version }) => version === this.version(uri),
    patience = 20_000,
  ): Promise<readonly lsp.Diagnostic[]> {
    return new Promise((give, fail) => {
      const timer = setTimeout(
        () => fail(new Error(`no such messages came for ${uri}: ${JSON.stringify(this.published.get(uri))}`)),
        patience,
      );
      const look = (): void => {
        const found = this.published.get(uri);
        if (found === undefined || !until(found)) return;
        clearTimeout(timer);
        this.#listeners = this.#listeners.filter((one) => one !== look);
        give(found.diagnostics);
      };
      this.#listeners.push(look);
      look();
    });
  }

  async stop(): Promise<number | null> {
    await this.connection.sendRequest(lsp.ShutdownRequest.type);
    await this.connection.sendNotification(lsp.ExitNotification.type);
    const code = await this.exited;
    this.connection.dispose();
    return code;
  }

  kill(): void {
    this.process.kill('SIGKILL');
    this.connection.dispose();
  }
}

/** Line and column of an offset, counted by the test itself. */
export function positionAt(text: string, offset: number): lsp.Position {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

export function offsetAt(text: string, { line, character }: lsp.Position): number {
  let at = 0;
  for (let number = 0; number < line; number++) {
    const found = /\r\n|\n|\r/.exec(text.slice(at));
    if (found === null) return text.length;
    at += found.index + found[0].length;
  }
  return Math.min(at + character, text.length);
}

/** A text with the edits of the protocol made. */
export function withEdits(
  text: string,
  edits: readonly (lsp.TextEdit | lsp.AnnotatedTextEdit | lsp.SnippetTextEdit)[],
): string {
  const placed = edits.flatMap((edit) =>
    'newText' in edit
      ? [{ start: offsetAt(text, edit.range.start), end: offsetAt(text, edit.range.end), text: edit.newText }]
      : [],
  );
  placed.sort((a, b) => b.start - a.start);
  return placed.reduce((now, { start, end, text: put }) => now.slice(0, start) + put + now.slice(end), text);
}
