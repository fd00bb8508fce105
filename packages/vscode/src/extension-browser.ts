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
  const { outputChannel } = client;
  // Commands need not wait for it.
  sendFiles(context, client).catch((error: unknown) =>
    outputChannel.appendLine(`Quern: sending files: ${String(error)}`),
  );
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
  await send(await recipes());
}

/** How long the editor may search for files before its folders are walked, in milliseconds. */
const PATIENCE = 3_000;

/** Every recipe of the workspace. In a kind of folder that has no search the editor would search for ever, so it is walked. */
async function recipes(): Promise<readonly vscode.Uri[]> {
  const stop = new vscode.CancellationTokenSource();
  const searched = vscode.workspace.findFiles('**/*.quern', '**/node_modules/**', MOST_FILES, stop.token);
  const late = new Promise<undefined>((give) => setTimeout(() => give(undefined), PATIENCE));
  const found = await Promise.race([searched, late]);
  stop.cancel();
  return found ?? (await walked((vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri)));
}

async function walked(folders: vscode.Uri[]): Promise<readonly vscode.Uri[]> {
  const found: vscode.Uri[] = [];
  for (let visited = 0; visited < MOST_FILES && found.length < MOST_FILES; visited++) {
    const folder = folders.shift();
    if (folder === undefined) break;
    for (const [name, type] of await entriesOf(folder)) {
      const uri = vscode.Uri.joinPath(folder, name);
      if (type === vscode.FileType.File && name.endsWith('.quern')) found.push(uri);
      else if (type === vscode.FileType.Directory && !name.startsWith('.') && name !== 'node_modules')
        folders.push(uri);
    }
  }
  return found;
}

async function entriesOf(folder: vscode.Uri): Promise<readonly [string, vscode.FileType][]> {
  try {
    return await vscode.workspace.fs.readDirectory(folder);
  } catch {
    // A folder that cannot be read holds nothing for us.
    return [];
  }
}

/** The text of a file; none when it is gone or no text. */
async function textOf(uri: vscode.Uri): Promise<{ readonly text?: string }> {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(await vscode.workspace.fs.readFile(uri)) };
  } catch {
    return {};
  }
}
