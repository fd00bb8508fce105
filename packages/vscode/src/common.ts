import * as vscode from 'vscode';
import { State, type BaseLanguageClient, type LanguageClientOptions } from 'vscode-languageclient';
import type { PageKind } from '@quern/server';
import { compareWithHead } from './compare.js';
import { Pages, type Target } from './pages.js';

const COMMANDS: Readonly<Record<PageKind, string>> = {
  card: 'quern.card',
  sheet: 'quern.sheet',
  label: 'quern.label',
  clock: 'quern.clock',
};

/** How the client presents itself to the server. */
export function clientOptions(context: vscode.ExtensionContext): LanguageClientOptions {
  return {
    documentSelector: [{ language: 'quern' }],
    synchronize: { configurationSection: 'quern' },
    initializationOptions: {
      commands: [...Object.values(COMMANDS), 'quern.compare'],
      docs: vscode.Uri.joinPath(context.extensionUri, 'dist', 'docs').toString(),
      // As plain data: what the editor gives has functions, which cannot be sent to a worker.
      settings: JSON.parse(JSON.stringify(vscode.workspace.getConfiguration('quern'))) as unknown,
    },
    markdown: { isTrusted: false, supportHtml: false },
  };
}

/** Starts the client and everything around it: commands, pages, and the item that says how the server is. */
export async function start(context: vscode.ExtensionContext, client: BaseLanguageClient): Promise<void> {
  const pages = new Pages(() => (client.state === State.Running ? client : undefined));
  context.subscriptions.push(pages, statusItem(client));
  for (const [kind, command] of Object.entries(COMMANDS) as [PageKind, string][]) {
    context.subscriptions.push(
      vscode.commands.registerCommand(command, (target?: Target) =>
        withTarget(target, (found) => pages.show(kind, found)),
      ),
    );
  }
  context.subscriptions.push(
    vscode.commands.registerCommand('quern.compare', (target?: Target) =>
      withTarget(target, ({ uri }) => compareWithHead(vscode.Uri.parse(uri), client, pages)),
    ),
    vscode.commands.registerCommand('quern.newRecipe', newRecipe),
    vscode.commands.registerCommand('quern.restart', async () => {
      await client.stop();
      await client.start();
    }),
    vscode.commands.registerCommand('quern.showLog', () => client.outputChannel.show()),
  );
  await client.start();
}

async function withTarget(target: Target | undefined, act: (target: Target) => Promise<void>): Promise<void> {
  const document = vscode.window.activeTextEditor?.document;
  const found =
    typeof target?.uri === 'string'
      ? target
      : document?.languageId === 'quern'
        ? { uri: document.uri.toString() }
        : undefined;
  if (found === undefined) void vscode.window.showInformationMessage('Quern: open a .quern file first.');
  else await act(found);
}

async function newRecipe(): Promise<void> {
  const document = await vscode.workspace.openTextDocument({ language: 'quern', content: '' });
  const editor = await vscode.window.showTextDocument(document);
  await editor.insertSnippet(
    new vscode.SnippetString(
      'recipe ${1:Name}\ngives ${2:2} ${3:loaves} of ${4:800} g\n\nmake ${5:dough}\n  ${6:500} g ${7:strong wheat flour}\n  ${8:350} g water\n  2 % fine salt on flour\n  hands ${9:8} min: ${10:Mix.}\n$0',
    ),
  );
}

/** Says in the corner of a recipe whether its server runs. */
function statusItem(client: BaseLanguageClient): vscode.Disposable {
  const item = vscode.languages.createLanguageStatusItem('quern.server', { language: 'quern' });
  item.name = 'Quern';
  item.command = { command: 'quern.showLog', title: 'Show log' };
  const show = (state: State): void => {
    item.busy = state === State.Starting;
    item.text =
      state === State.Running ? 'Quern' : state === State.Starting ? 'Quern is starting' : 'Quern does not run';
    item.severity =
      state === State.Stopped ? vscode.LanguageStatusSeverity.Error : vscode.LanguageStatusSeverity.Information;
    const version = client.initializeResult?.serverInfo?.version;
    if (version !== undefined) item.detail = `language server ${version}`;
  };
  show(State.Starting);
  const listening = client.onDidChangeState(({ newState }) => show(newState));
  return vscode.Disposable.from(item, listening);
}
