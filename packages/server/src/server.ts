import * as lsp from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Diagnostic } from '@quern/text';
import type { FoodBook } from '@quern/compiler';
import * as ide from '@quern/ide';
import { readClient, type Client } from './client.js';
import { Diagnoser } from './diagnose.js';
import { SentFiles, type Files } from './files.js';
import { registerAnswers } from './answers.js';
import type { CompareRequest, PageAnswer, PageKind, PageRequest } from './pages.js';
import { DEFAULT_SETTINGS, readSettings, type Settings } from './settings.js';
import { diagnostic as toDiagnostic, type Elsewhere } from './to-lsp.js';
import { World } from './world.js';

/*
 * The protocol's side: what comes in is handed to the editor service, what it answers is handed out. Open files, messages,
 * settings and the watching of files are kept here; every other request is in answers.ts.
 */

/** What the place where the server runs gives it. */
export interface Environment {
  readonly files: Files;
  readonly foods: () => FoodBook;
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
  readonly version: string;
  /** Address of the folder with a page for each message, where it is known. */
  readonly docs?: string | undefined;
}

/** What the answers to requests need of the server. */
export interface Context {
  readonly client: () => Client;
  readonly settings: () => Settings;
  snapshot(uri: string): ide.Snapshot | undefined;
  elsewhere(uri: string): Elsewhere & { version(path: string): number | null };
  readonly world: () => World;
  /** Messages of the slow checks for a text of a file, as far as they are there. */
  slow(uri: string, text: string): readonly Diagnostic[];
  /** Milliseconds of a clock that only goes forward. */
  readonly now: () => number;
}

/** Wires a server to a connection. `connection.listen()` is left to the caller. */
export function startServer(connection: lsp.Connection, environment: Environment): void {
  const documents = new lsp.TextDocuments(TextDocument);
  let world: World | undefined;
  let client: Client | undefined;
  let settings: Settings = DEFAULT_SETTINGS;
  let results = 0;
  let lastTold = new Map<string, { readonly id: string; readonly told: string }>();

  const theWorld = (): World => (world ??= new World(environment.files, environment.foods(), environment.now));
  const theClient = (): Client => (client ??= readClient({ capabilities: {}, processId: null, rootUri: null }));
  const docs = (): string | undefined => theClient().docs ?? environment.docs;
  const failed = (what: string, error: unknown): void => {
    connection.console.error(
      `Quern: ${what} failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
    );
  };

  const elsewhere = (uri: string): ReturnType<Context['elsewhere']> => ({
    uri: (path) => theWorld().uriBeside(uri, path),
    snapshot: (path) => theWorld().snapshot(theWorld().uriBeside(uri, path)),
    version: (path) => documents.get(theWorld().uriBeside(uri, path))?.version ?? null,
  });
  const context: Context = {
    client: theClient,
    settings: () => settings,
    snapshot: (uri) => theWorld().snapshot(uri),
    elsewhere,
    world: theWorld,
    now: environment.now,
    slow: (uri, text) => diagnoser.slow(uri, text),
  };

  const diagnoser = new Diagnoser({
    snapshot: context.snapshot,
    convert: (uri, snapshot, found) =>
      found.map((one) => toDiagnostic(snapshot, ide.editorDiagnostic(one), elsewhere(uri), docs())),
    publish: (uri, version) => {
      if (!theClient().pullsDiagnostics) {
        const diagnostics = [...diagnoser.messages(uri)];
        void connection.sendDiagnostics({ uri, diagnostics, ...(version === undefined ? {} : { version }) });
      } else if (theClient().refreshesDiagnostics) void connection.languages.diagnostics.refresh();
    },
    version: (uri) => documents.get(uri)?.version,
    slowChecks: () => settings.slowChecks,
    now: environment.now,
    failed,
  });

  connection.onInitialize((params): lsp.InitializeResult => {
    client = readClient(params);
    settings = readSettings(params.initializationOptions?.settings);
    const folders = params.workspaceFolders ?? (params.rootUri ? [{ uri: params.rootUri, name: '' }] : []);
    for (const { uri } of folders) theWorld().addFolder(uri);
    return { capabilities: capabilities(client), serverInfo: { name: 'quern', version: environment.version } };
  });

  connection.onInitialized(() => {
    if (theClient().watchesFiles) {
      const watchers = [{ globPattern: '**/*.quern' }];
      connection.client
        .register(lsp.DidChangeWatchedFilesNotification.type, { watchers })
        .catch((error: unknown) => failed('watching files', error));
    }
    if (theClient().folders) {
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        for (const { uri } of removed) theWorld().removeFolder(uri);
        for (const { uri } of added) theWorld().addFolder(uri);
        tellAll();
      });
    }
    fetchSettings();
    connection.console.info(`Quern language server ${environment.version} is ready.`);
  });

  function fetchSettings(): void {
    if (!theClient().configuration) return;
    connection.workspace
      .getConfiguration('quern')
      .then((sent: unknown) => {
        settings = readSettings(sent);
        tellAll();
        if (theClient().refreshesHints) void connection.languages.inlayHint.refresh();
      })
      .catch((error: unknown) => failed('reading settings', error));
  }

  connection.onDidChangeConfiguration(({ settings: sent }) => {
    if (theClient().configuration) fetchSettings();
    else {
      settings = readSettings((sent as { quern?: unknown } | undefined)?.quern);
      tellAll();
    }
  });

  /** Every open file may be touched by what another file has become. */
  function tellAll(): void {
    for (const { uri } of documents.all()) diagnoser.due(uri);
  }

  documents.onDidChangeContent(({ document }) => {
    theWorld().setOpen(document.uri, document.getText());
    diagnoser.due(document.uri);
    // Files that use this one see it as it is typed.
    for (const { uri } of documents.all()) if (uri !== document.uri && uses(uri, document.uri)) diagnoser.due(uri);
  });

  function uses(uri: string, other: string): boolean {
    const snapshot = theWorld().snapshot(uri);
    return (
      snapshot?.document.passages.some(({ passage }) => passage.namesFiles) === true &&
      theWorld().locate(uri).root === theWorld().locate(other).root
    );
  }

  documents.onDidClose(({ document }) => {
    diagnoser.forget(document.uri);
    lastTold.delete(document.uri);
    theWorld().close(document.uri);
    if (!theClient().pullsDiagnostics) void connection.sendDiagnostics({ uri: document.uri, diagnostics: [] });
  });

  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri } of changes) theWorld().changedOnDisk(uri);
    tellAll();
  });

  connection.languages.diagnostics.on(async ({ textDocument: { uri }, previousResultId }, token) => {
    if (!theClient().refreshesDiagnostics) await diagnoser.settle(uri, token);
    const items = [...diagnoser.messages(uri)];
    const told = JSON.stringify(items);
    const last = lastTold.get(uri);
    if (last !== undefined && last.told === told && last.id === previousResultId)
      return { kind: 'unchanged', resultId: last.id };
    const id = last?.told === told ? last.id : String(++results);
    lastTold.set(uri, { id, told });
    return { kind: 'full', resultId: id, items };
  });

  for (const kind of ['card', 'sheet', 'label', 'clock'] satisfies readonly PageKind[]) {
    connection.onRequest<PageAnswer, void>(`quern/${kind}`, async (asked: PageRequest) => {
      const snapshot = context.snapshot(asked?.uri ?? '');
      if (snapshot === undefined) return { kind: 'none', why: 'The file cannot be read.' };
      // Loaded when the first page is asked for, so that the server starts without it.
      const { page } = await import('./pages.js');
      return page(kind, snapshot.compiled, asked, settings);
    });
  }

  connection.onRequest<PageAnswer, void>('quern/compare', async (asked: CompareRequest) => {
    const snapshot = context.snapshot(asked?.uri ?? '');
    if (snapshot === undefined || typeof asked.before !== 'string')
      return { kind: 'none', why: 'The file cannot be read.' };
    const { comparePage } = await import('./pages.js');
    const before = ide.compiledAs(snapshot, asked.before);
    return comparePage(
      before,
      snapshot.compiled,
      { before: asked.beforeName ?? 'before', after: snapshot.path },
      settings,
    );
  });

  // For an editor without a disk: it sends the files of the workspace itself.
  connection.onNotification(
    'quern/files',
    ({ files }: { readonly files: readonly { readonly uri: string; readonly text?: string }[] }) => {
      if (!(environment.files instanceof SentFiles)) return;
      for (const { uri, text } of files) {
        environment.files.set(uri, text);
        theWorld().changedOnDisk(uri);
      }
      tellAll();
    },
  );

  registerAnswers(connection, context);
  connection.onShutdown(() => {
    diagnoser.stop();
    lastTold = new Map();
  });
  documents.listen(connection);
}

function capabilities(client: Client): lsp.ServerCapabilities {
  return {
    textDocumentSync: { openClose: true, change: lsp.TextDocumentSyncKind.Incremental, save: false },
    hoverProvider: true,
    completionProvider: { triggerCharacters: [' ', '=', ',', '%', '['] },
    signatureHelpProvider: { triggerCharacters: [' ', '=', ',', ':'], retriggerCharacters: [' '] },
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    documentSymbolProvider: true,
    workspaceSymbolProvider: true,
    codeActionProvider: {
      codeActionKinds: [
        lsp.CodeActionKind.QuickFix,
        lsp.CodeActionKind.RefactorRewrite,
        lsp.CodeActionKind.RefactorExtract,
        'refactor.move',
        'source.fixAll.quern',
      ],
    },
    codeLensProvider: { resolveProvider: true },
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
    renameProvider: { prepareProvider: true },
    foldingRangeProvider: true,
    selectionRangeProvider: true,
    documentLinkProvider: { resolveProvider: false },
    semanticTokensProvider: {
      legend: { tokenTypes: [...ide.TOKEN_TYPES], tokenModifiers: [...ide.TOKEN_MODIFIERS] },
      full: { delta: true },
      range: true,
    },
    inlayHintProvider: true,
    callHierarchyProvider: true,
    ...(client.pullsDiagnostics
      ? { diagnosticProvider: { identifier: 'quern', interFileDependencies: true, workspaceDiagnostics: false } }
      : {}),
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
}
