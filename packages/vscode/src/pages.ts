import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { PageAnswer, PageKind } from '@quern/server';
import { framed } from './frame.js';

/** A recipe that a command is about; of the file at hand unless a lens named another. */
export interface Target {
  readonly uri: string;
  readonly recipe?: string;
  readonly variant?: string;
}

const NAMES: Readonly<Record<PageKind, string>> = { card: 'Card', sheet: 'Sheet', label: 'Label', clock: 'Clock' };
/** How long nobody may have typed before the page is made again, in milliseconds. */
const QUIET = 250;

/** Pages beside the editor: one panel for each kind and file, made again as the file changes. */
export class Pages implements vscode.Disposable {
  readonly #panels = new Map<string, vscode.WebviewPanel>();
  readonly #waiting = new Map<string, ReturnType<typeof setTimeout>>();
  readonly #disposables: vscode.Disposable[] = [];

  constructor(private readonly client: () => BaseLanguageClient | undefined) {
    this.#disposables.push(
      vscode.workspace.onDidChangeTextDocument(({ document }) => {
        for (const key of this.#panels.keys()) if (key.includes(` ${document.uri.toString()} `)) this.#later(key);
      }),
    );
  }

  /** Shows a page, or brings the one that is there to the front. */
  async show(kind: PageKind, target: Target): Promise<void> {
    const key = [kind, target.uri, target.recipe ?? '', target.variant ?? ''].join(' ');
    const known = this.#panels.get(key);
    if (known !== undefined) {
      known.reveal(undefined, true);
      return;
    }
    await this.showAnswer(key, NAMES[kind], () => this.#ask(`quern/${kind}`, target));
  }

  /** A panel whose page is asked for by a function, again whenever the file changes. */
  async showAnswer(key: string, title: string, ask: () => Promise<PageAnswer>): Promise<void> {
    const known = this.#panels.get(key);
    const panel =
      known ??
      vscode.window.createWebviewPanel(
        'quern.page',
        title,
        { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
        { enableScripts: true, localResourceRoots: [] },
      );
    this.#panels.set(key, panel);
    this.#asks.set(key, ask);
    panel.onDidDispose(() => {
      this.#panels.delete(key);
      this.#asks.delete(key);
      clearTimeout(this.#waiting.get(key));
    });
    await this.#fill(key);
  }

  readonly #asks = new Map<string, () => Promise<PageAnswer>>();

  #later(key: string): void {
    clearTimeout(this.#waiting.get(key));
    this.#waiting.set(
      key,
      setTimeout(() => void this.#fill(key), QUIET),
    );
  }

  async #fill(key: string): Promise<void> {
    const answer = await this.#asks.get(key)?.();
    const panel = this.#panels.get(key);
    if (panel === undefined || answer === undefined) return;
    if (answer.kind === 'page') {
      panel.title = answer.title;
      panel.webview.html = framed(answer.html);
    } else panel.webview.html = framed(`<p>${answer.why.replace(/[<>&]/g, (mark) => `&#${mark.charCodeAt(0)};`)}</p>`);
  }

  async #ask(method: string, target: Target): Promise<PageAnswer> {
    const client = this.client();
    if (client === undefined) return { kind: 'none', why: 'The language server does not run.' };
    return client.sendRequest<PageAnswer>(method, target);
  }

  dispose(): void {
    for (const timer of this.#waiting.values()) clearTimeout(timer);
    for (const panel of this.#panels.values()) panel.dispose();
    for (const one of this.#disposables) one.dispose();
  }
}
