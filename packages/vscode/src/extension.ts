import * as vscode from 'vscode';
import { LanguageClient, TransportKind, type ServerOptions } from 'vscode-languageclient/node';
import { clientOptions, start } from './common.js';
import { QuernTasks } from './tasks.js';

/* The extension where there is a disk: the server is a process of its own. */

let client: LanguageClient | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const module = vscode.Uri.joinPath(context.extensionUri, 'dist', 'quern-server.cjs').fsPath;
  const run = { module, transport: TransportKind.stdio };
  const server: ServerOptions = { run, debug: run };
  client = new LanguageClient('quern', 'Quern', server, clientOptions(context));
  context.subscriptions.push(vscode.tasks.registerTaskProvider('quern', new QuernTasks()));
  await start(context, client);
}

export async function deactivate(): Promise<void> {
  await client?.stop();
}
