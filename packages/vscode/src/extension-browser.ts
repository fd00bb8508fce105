import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { clientOptions, start } from './common.js';

/* The extension in a browser: the server is a worker, and is sent the files of the workspace. */

const MOST_FILES = 2_000;

let client: LanguageClient | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const worker = new Worker(
    vscode.Uri.joinPath(context.extensionUri, 'dist', 'quern-server.browser.js').toString(true),
  );
  client = new LanguageClient('quern', 'Quern', worker, clientOptions(context));
  await start(context, client);
  await sendFiles(context, client);
}

export async function deactivate(): Promise<void> {
  await client?.stop();
}

/** Sends every recipe of the workspace, and each again when it changes. */
async function sendFiles(context: vscode.ExtensionContext, to: LanguageClient): Promise<void> {
  const send = async (uris: readonly vscode.Uri[]): Promise<void> => {
    const files = await Promise.all(uris.map(async (uri) => ({ uri: uri.toString(), ...(await textOf(uri)) })));
    await to.sendNotification('quern/files', { files });
  };
  const watcher = vscode.workspace.createFileSystemWatcher('**/*.quern');
  context.subscriptions.push(
    watcher,
    watcher.onDidChange((uri) => void send([uri])),
    watcher.onDidCreate((uri) => void send([uri])),
    watcher.onDidDelete((uri) => void to.sendNotification('quern/files', { files: [{ uri: uri.toString() }] })),
  );
  await send(await vscode.workspace.findFiles('**/*.quern', '**/node_modules/**', MOST_FILES));
}

/** The text of a file; none when it is gone or no text. */
async function textOf(uri: vscode.Uri): Promise<{ readonly text?: string }> {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(await vscode.workspace.fs.readFile(uri)) };
  } catch {
    return {};
  }
}
