import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { PageAnswer } from '@quern/server';
import type { Pages } from './pages.js';

/** What the Git extension of the editor offers, as far as it is used here. */
interface GitApi {
  getRepository(uri: vscode.Uri): { show(ref: string, path: string): Promise<string> } | null;
}

const gitApi = async (): Promise<GitApi | undefined> => {
  const extension = vscode.extensions.getExtension<{ getAPI(version: 1): GitApi }>('vscode.git');
  if (extension === undefined) return undefined;
  const { getAPI } = extension.isActive ? extension.exports : await extension.activate();
  return getAPI(1);
};

/** Shows what changed in a file since the last commit: by make, food and step, not by letters. */
export async function compareWithHead(uri: vscode.Uri, client: BaseLanguageClient, pages: Pages): Promise<void> {
  const before = await committed(uri);
  if (before === undefined) {
    void vscode.window.showInformationMessage(
      'Quern: this file is in no commit yet, so there is nothing to compare it with.',
    );
    return;
  }
  const request = { uri: uri.toString(), before, beforeName: 'last commit' };
  await pages.showAnswer(`compare ${uri.toString()} `, 'What changed', () =>
    client.sendRequest<PageAnswer>('quern/compare', request),
  );
}

/** The text of the last commit; undefined when there is no repository, or the file is new in it. */
async function committed(uri: vscode.Uri): Promise<string | undefined> {
  try {
    return await (await gitApi())?.getRepository(uri)?.show('HEAD', uri.fsPath);
  } catch {
    // Git says so by failing when the file is not in the commit.
    return undefined;
  }
}
