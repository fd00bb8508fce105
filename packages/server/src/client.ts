import type { ClientCapabilities, InitializeParams } from 'vscode-languageserver';
import type { EditAbilities } from './to-lsp.js';

/** What the editor can do, as far as the server asks. */
export interface Client {
  /** Comes for messages itself; then none are pushed. */
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly refreshesHints: boolean;
  readonly snippets: boolean;
  readonly edits: EditAbilities;
  readonly configuration: boolean;
  readonly watchesFiles: boolean;
  readonly folders: boolean;
  /** Commands of the extension that lenses may name. */
  readonly commands: ReadonlySet<string>;
  /** Address of the folder with a page for each message. */
  readonly docs: string | undefined;
}

export function readClient(params: InitializeParams): Client {
  const { textDocument, workspace }: ClientCapabilities = params.capabilities ?? {};
  const options = objectOf(params.initializationOptions);
  const commands = Array.isArray(options['commands'])
    ? options['commands'].filter((one): one is string => typeof one === 'string')
    : [];
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    snippets: textDocument?.completion?.completionItem?.snippetSupport === true,
    edits: {
      documentChanges: workspace?.workspaceEdit?.documentChanges === true,
      createFiles: workspace?.workspaceEdit?.resourceOperations?.includes('create') === true,
    },
    configuration: workspace?.configuration === true,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    folders: workspace?.workspaceFolders === true,
    commands: new Set(commands),
    docs: typeof options['docs'] === 'string' ? options['docs'].replace(/\/+$/, '') : undefined,
  };
}

export function objectOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}
