/** A language server in this process and a client that asks it everything, at right places and at wrong ones. */
import { PassThrough } from 'node:stream';
import { createConnection } from 'vscode-languageserver/node';
import * as lsp from 'vscode-languageserver-protocol/node';
import { createFoodBook } from '@quern/foods';
import { SentFiles, startServer } from '@quern/server';

const FOLDER = 'file:///quay';
const uri = `${FOLDER}/main.quern`;

interface Talk {
  readonly client: lsp.ProtocolConnection;
  /** What the server wrote into its log: nothing, when all is well. */
  readonly log: string[];
  readonly files: SentFiles;
}

let talking: Promise<Talk> | undefined;

async function talk(): Promise<Talk> {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const server = createConnection(new lsp.StreamMessageReader(toServer), new lsp.StreamMessageWriter(toClient));
  const files = new SentFiles();
  startServer(server, { files, foods: createFoodBook, now: () => performance.now(), version: '0' });
  server.listen();
  const client = lsp.createProtocolConnection(
    new lsp.StreamMessageReader(toClient),
    new lsp.StreamMessageWriter(toServer),
  );
  const log: string[] = [];
  client.onNotification(lsp.LogMessageNotification.type, ({ type, message }) => {
    if (type === lsp.MessageType.Error) log.push(message);
  });
  client.onUnhandledNotification(() => undefined);
  client.listen();
  const workspaceFolders = [{ uri: FOLDER, name: 'quay' }];
  const capabilities = { textDocument: { diagnostic: {} } };
  await client.sendRequest(lsp.InitializeRequest.type, {
    processId: null,
    rootUri: FOLDER,
    capabilities,
    workspaceFolders,
  });
  await client.sendNotification(lsp.InitializedNotification.type, {});
  return { client, log, files };
}

/** Opens a text, edits it, asks every question there is, some with parameters that are none, and closes it. */
export async function serve(text: string): Promise<void> {
  const { client, log, files } = await (talking ??= talk());
  log.length = 0;
  files.set(`${FOLDER}/other.quern`, text);
  const document = { uri, languageId: 'quern', version: 1, text };
  await client.sendNotification(lsp.DidOpenTextDocumentNotification.type, { textDocument: document });
  await ask(client, text);
  const middle = Math.floor(text.length / 2);
  // The second half is taken away, some lines beyond the end are replaced, and the text put back before what is left.
  const contentChanges = [
    { range: { start: positionOf(text, middle), end: positionOf(text, text.length) }, text: '' },
    { range: { start: { line: 1e6, character: 3 }, end: { line: 2e6, character: 1e9 } }, text: '\n  100 g water\n' },
    { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, text: text.slice(middle) },
  ];
  const textDocument = { uri, version: 2 };
  await client.sendNotification(lsp.DidChangeTextDocumentNotification.type, { textDocument, contentChanges });
  await ask(client, text.slice(middle) + text.slice(0, middle));
  await askNonsense(client, text);
  await client.sendNotification(lsp.DidCloseTextDocumentNotification.type, { textDocument: { uri } });
  const open = await client.sendRequest('workspace/symbol', { query: '' });
  if (!Array.isArray(open)) throw new Error('the server lost its senses');
  if (log.length > 0) throw new Error(log[0]);
}

function positionOf(text: string, offset: number): lsp.Position {
  const before = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

const WHERE = ['hover', 'completion', 'signatureHelp', 'definition', 'documentHighlight', 'prepareRename'];
const WHOLE = ['documentSymbol', 'foldingRange', 'documentLink', 'codeLens', 'semanticTokens/full', 'diagnostic'];

async function ask(client: lsp.ProtocolConnection, text: string): Promise<void> {
  const textDocument = { uri };
  const whole = { start: { line: 0, character: 0 }, end: positionOf(text, text.length) };
  const options = { tabSize: 2, insertSpaces: true };
  const asked: [method: string, parameters: object][] = WHOLE.map((name) => [name, { textDocument }]);
  for (const offset of [0, Math.floor(text.length / 3), text.length]) {
    const position = positionOf(text, offset);
    asked.push(...WHERE.map((name): [string, object] => [name, { textDocument, position }]));
    asked.push(['references', { textDocument, position, context: { includeDeclaration: true } }]);
    asked.push(['rename', { textDocument, position, newName: 'another name' }]);
    asked.push(['onTypeFormatting', { textDocument, position, ch: '\n', options }]);
    asked.push(['selectionRange', { textDocument, positions: [position] }]);
  }
  asked.push(['inlayHint', { textDocument, range: whole }]);
  asked.push(['codeAction', { textDocument, range: whole, context: { diagnostics: [] } }]);
  asked.push(['formatting', { textDocument, options }]);
  for (const [method, parameters] of asked) await answered(client, `textDocument/${method}`, parameters);
  for (const page of ['card', 'sheet', 'label', 'clock']) await answered(client, `quern/${page}`, { uri });
  await answered(client, 'quern/compare', { uri, before: text.slice(0, Math.floor(text.length / 2)) });
}

/** An answer may be a refusal in words, never a fault of the server. */
async function answered(client: lsp.ProtocolConnection, method: string, parameters: object): Promise<void> {
  try {
    await client.sendRequest(method, parameters);
  } catch (error) {
    const isRefusal = error instanceof lsp.ResponseError && error.code !== lsp.ErrorCodes.InternalError;
    if (!isRefusal) throw new Error(`${method}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Places outside the text, files that are none, and settings made of whatever the text holds. */
async function askNonsense(client: lsp.ProtocolConnection, text: string): Promise<void> {
  const elsewhere = `${FOLDER}/${encodeURIComponent(text.slice(0, 40).replace(/\p{Surrogate}/gu, ''))}`;
  for (const position of [
    { line: 1e9, character: 0 },
    { line: 0, character: 2 ** 31 - 1 },
  ]) {
    for (const name of WHERE) await answered(client, `textDocument/${name}`, { textDocument: { uri }, position });
    await answered(client, 'textDocument/hover', { textDocument: { uri: elsewhere }, position });
  }
  await client.sendNotification(lsp.DidChangeConfigurationNotification.type, { settings: { quern: someJson(text) } });
}

/** What the text is as JSON, or a few values that look like settings and are none. */
function someJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return { hints: text.slice(0, 20), market: text.slice(0, 30), measures: [text.length], codeLens: { slow: null } };
  }
}
