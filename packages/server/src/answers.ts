import * as lsp from 'vscode-languageserver';
import * as ide from '@quern/ide';
import { offset, span } from './from-lsp.js';
import type { Context } from './server.js';
import * as to from './to-lsp.js';
import { inTurns, type Work } from './turns.js';

/* Every request about a place in a file: the question is turned into offsets, the answer back. */

/** Registers the answers. A file that cannot be read has none. */
export function registerAnswers(connection: lsp.Connection, context: Context): void {
  const { snapshot, elsewhere } = context;
  const at = ({ textDocument, position }: lsp.TextDocumentPositionParams): [ide.Snapshot, number] | undefined => {
    const here = snapshot(textDocument.uri);
    return here && [here, offset(here, position)];
  };

  connection.onHover((params) => {
    const [here, place] = at(params) ?? [];
    const found = here && place !== undefined ? ide.hover(here, place) : undefined;
    return here && found ? { contents: to.markdown(found.contents), range: to.range(here, found.span) } : null;
  });

  connection.onCompletion((params) => {
    const [here, place] = at(params) ?? [];
    if (here === undefined || place === undefined) return null;
    return to.completions(here, ide.completion(here, place), context.client().snippets, ide.plainSnippet);
  });

  connection.onSignatureHelp((params) => {
    const [here, place] = at(params) ?? [];
    const help = here && place !== undefined ? ide.signatureHelp(here, place) : undefined;
    if (help === undefined) return null;
    const documentation = to.markdown(`${help.says}.\n\nFor instance \`${help.example}\``);
    const parameters = help.parameters.map(({ start, end }) => ({ label: [start, end] as [number, number] }));
    return {
      signatures: [{ label: help.form, documentation, parameters }],
      activeSignature: 0,
      activeParameter: help.active,
    };
  });

  connection.onDefinition((params) => {
    const [here, place] = at(params) ?? [];
    if (here === undefined || place === undefined) return null;
    return ide
      .definition(here, place)
      .flatMap((found) => to.location(elsewhere(params.textDocument.uri), found.place) ?? []);
  });

  connection.onReferences(async (params, token) => {
    const [here, place] = at(params) ?? [];
    if (here === undefined || place === undefined) return null;
    const { includeDeclaration } = params.context;
    const { given } = await inTurns(ide.referencesByFile(here, place), workOn(context, params.textDocument.uri, token));
    return given
      .flat()
      .filter(({ role }) => includeDeclaration || role !== 'declared')
      .flatMap((found) => to.location(elsewhere(params.textDocument.uri), found.place) ?? []);
  });

  connection.onDocumentHighlight((params) => {
    const [here, place] = at(params) ?? [];
    return here && place !== undefined ? ide.highlights(here, place).map((one) => to.highlight(here, one)) : null;
  });

  connection.onDocumentSymbol(({ textDocument }) => {
    const here = snapshot(textDocument.uri);
    return here ? ide.documentSymbols(here).map((symbol) => to.documentSymbol(here, symbol)) : null;
  });

  connection.onWorkspaceSymbol(async ({ query }, token) => {
    const found: lsp.SymbolInformation[] = [];
    for (const root of context.world().folders()) {
      const turns = ide.workspaceSymbolsByFile({ session: root.session, files: root.paths() }, query);
      const { given } = await inTurns(turns, { now: context.now, stands: () => true, token });
      found.push(...given.flat().flatMap((symbol) => to.workspaceSymbol(symbol, elsewhere(`${root.uri}/.`)) ?? []));
    }
    return found;
  });

  connection.onPrepareRename((params) => {
    const [here, place] = at(params) ?? [];
    const found = here && place !== undefined ? ide.prepareRename(here, place) : undefined;
    return here && found ? { range: to.range(here, found.span), placeholder: found.name } : null;
  });

  connection.onRenameRequest(async (params, token) => {
    const [here, place] = at(params) ?? [];
    if (here === undefined || place === undefined) return null;
    const work = workOn(context, params.textDocument.uri, token);
    const { end: answer } = await inTurns(ide.renameByFile(here, place, params.newName), work);
    if (answer.kind === 'refused') return new lsp.ResponseError(lsp.LSPErrorCodes.RequestFailed, answer.why);
    return to.workspaceEdit(answer.edits, elsewhere(params.textDocument.uri), context.client().edits) ?? null;
  });

  connection.onFoldingRanges(({ textDocument }) => {
    const here = snapshot(textDocument.uri);
    return here ? ide.foldingRanges(here).map(to.foldingRange) : null;
  });

  connection.onSelectionRanges(({ textDocument, positions }) => {
    const here = snapshot(textDocument.uri);
    return here ? positions.map((one) => to.selectionRange(here, ide.selectionRanges(here, offset(here, one)))) : null;
  });

  connection.onDocumentLinks(({ textDocument: { uri } }) => {
    const here = snapshot(uri);
    if (here === undefined) return null;
    return ide.documentLinks(here).map(({ span: place, target }) => ({
      range: to.range(here, place),
      target: target.kind === 'file' ? elsewhere(uri).uri(target.path) : target.address,
    }));
  });

  registerEdits(connection, context);
  registerColours(connection, context);
  registerHierarchy(connection, context);
}

/** Work that begins with a file as it is now. */
function workOn({ snapshot, now }: Context, uri: string, token: lsp.CancellationToken): Work {
  const text = snapshot(uri)?.text;
  return { now, token, stands: () => snapshot(uri)?.text === text };
}

const ACTION_KINDS: Readonly<Record<ide.CodeAction['kind'], lsp.CodeActionKind>> = {
  fix: lsp.CodeActionKind.QuickFix,
  'refactor-rewrite': lsp.CodeActionKind.RefactorRewrite,
  'refactor-extract': lsp.CodeActionKind.RefactorExtract,
  'refactor-move': 'refactor.move',
  'fix-all': 'source.fixAll.quern',
};

/** Whether a client that asked for certain kinds wants this one: `source.fixAll` holds `source.fixAll.quern`. */
function isWanted(kind: string, only: readonly string[] | undefined): boolean {
  return only === undefined || only.some((one) => one === kind || kind.startsWith(`${one}.`) || one === '');
}

function registerEdits(connection: lsp.Connection, { snapshot, elsewhere, client, slow }: Context): void {
  connection.onCodeAction(({ textDocument: { uri }, range, context: { only, diagnostics } }) => {
    const here = snapshot(uri);
    if (here === undefined) return null;
    const wants = (kind: ide.CodeAction['kind']): boolean => isWanted(ACTION_KINDS[kind], only);
    const all = only?.some((one) => one.startsWith('source')) === true ? ide.fixAll(here) : undefined;
    const actions = [...ide.codeActions(here, span(here, range), slow(uri, here.text)), ...(all ? [all] : [])].filter(
      ({ kind }) => wants(kind),
    );
    return actions.flatMap((action): lsp.CodeAction[] => {
      const edit = to.workspaceEdit(action.edits, elsewhere(uri), client().edits);
      if (edit === undefined) return [];
      const mended = action.diagnostic;
      const shown =
        mended &&
        diagnostics.filter(
          ({ code, range: place }) => code === mended.code && offset(here, place.start) === mended.place.start,
        );
      return [
        {
          title: action.title,
          kind: ACTION_KINDS[action.kind],
          edit,
          ...(shown && shown.length > 0 ? { diagnostics: shown } : {}),
          ...(action.preferred ? { isPreferred: true } : {}),
        },
      ];
    });
  });

  connection.onDocumentFormatting(({ textDocument }) => {
    const here = snapshot(textDocument.uri);
    return here ? ide.formatDocument(here).map((edit) => to.textEdit(here, edit)) : null;
  });
  connection.onDocumentRangeFormatting(({ textDocument, range }) => {
    const here = snapshot(textDocument.uri);
    return here ? ide.formatRange(here, span(here, range)).map((edit) => to.textEdit(here, edit)) : null;
  });
  connection.onDocumentOnTypeFormatting(({ textDocument, position }) => {
    const here = snapshot(textDocument.uri);
    return here ? ide.formatOnType(here, offset(here, position)).map((edit) => to.textEdit(here, edit)) : null;
  });
}

function registerColours(connection: lsp.Connection, context: Context): void {
  const { snapshot, client, settings } = context;
  const builders = new Map<string, lsp.SemanticTokensBuilder>();
  const push = (here: ide.Snapshot, tokens: readonly ide.Token[], builder: lsp.SemanticTokensBuilder): void =>
    to.semanticTokens(here, tokens, ide.TOKEN_TYPES, ide.TOKEN_MODIFIERS, builder);
  const builderOf = (uri: string): lsp.SemanticTokensBuilder => {
    const builder = builders.get(uri) ?? new lsp.SemanticTokensBuilder();
    builders.set(uri, builder);
    return builder;
  };

  connection.languages.semanticTokens.on(({ textDocument: { uri } }) => {
    const here = snapshot(uri);
    if (here === undefined) return { data: [] };
    const builder = new lsp.SemanticTokensBuilder();
    builders.set(uri, builder);
    push(here, ide.semanticTokens(here), builder);
    return builder.build();
  });
  connection.languages.semanticTokens.onDelta(({ textDocument: { uri }, previousResultId }) => {
    const here = snapshot(uri);
    if (here === undefined) return { data: [] };
    const builder = builderOf(uri);
    builder.previousResult(previousResultId);
    push(here, ide.semanticTokens(here), builder);
    return builder.buildEdits();
  });
  connection.languages.semanticTokens.onRange(({ textDocument: { uri }, range }) => {
    const here = snapshot(uri);
    if (here === undefined) return { data: [] };
    const builder = new lsp.SemanticTokensBuilder();
    push(here, ide.semanticTokens(here, { from: range.start.line, to: range.end.line + 1 }), builder);
    return builder.build();
  });

  connection.languages.inlayHint.on(({ textDocument: { uri }, range }) => {
    const here = snapshot(uri);
    if (here === undefined) return null;
    return ide
      .inlayHints(here, range.start.line, range.end.line + 1, settings().hints)
      .map((hint) => to.inlayHint(here, hint));
  });

  connection.onCodeLens(({ textDocument: { uri } }) => {
    const here = snapshot(uri);
    if (here === undefined || !settings().codeLens) return null;
    return ide
      .codeLenses(here)
      .filter(({ command }) => command === undefined || client().commands.has(`quern.${command}`))
      .map((lens) => ({ range: to.range(here, lens.span), data: { uri, lens } }));
  });
  connection.onCodeLensResolve((sent) => {
    const { uri, lens } = (sent.data ?? {}) as { readonly uri?: string; readonly lens?: ide.CodeLens };
    const here = uri === undefined ? undefined : snapshot(uri);
    if (here === undefined || lens === undefined || lens.span.start > here.text.length) return sent;
    const { title, command, recipe, variant } = ide.resolveLens(here, lens);
    // A lens without a command only informs; the protocol wants a command all the same, and an empty one does nothing.
    return {
      ...sent,
      command: {
        title,
        command: command === undefined ? '' : `quern.${command}`,
        arguments: [{ uri, recipe, variant }],
      },
    };
  });
}

function registerHierarchy(connection: lsp.Connection, context: Context): void {
  const { snapshot, elsewhere } = context;
  const itemOf = (sent: lsp.CallHierarchyItem): [ide.Snapshot, ide.HierarchyItem] | undefined => {
    const here = snapshot(sent.uri);
    const item = sent.data as ide.HierarchyItem | undefined;
    return here && typeof item?.key === 'string' ? [here, item] : undefined;
  };
  connection.languages.callHierarchy.onPrepare(({ textDocument: { uri }, position }) => {
    const here = snapshot(uri);
    const item = here && ide.prepareHierarchy(here, offset(here, position));
    const shown = item && to.hierarchyItem(item, elsewhere(uri));
    return shown ? [shown] : null;
  });
  connection.languages.callHierarchy.onIncomingCalls(async ({ item }, token) => {
    const [here, found] = itemOf(item) ?? [];
    if (here === undefined || found === undefined) return null;
    const { given } = await inTurns(ide.incomingByFile(here, found), workOn(context, item.uri, token));
    return given.flat().flatMap((call) => {
      const from = to.hierarchyItem(call.item, elsewhere(item.uri));
      const file = elsewhere(item.uri).snapshot(call.file);
      return from && file ? [{ from, fromRanges: call.at.map((one) => to.range(file, one)) }] : [];
    });
  });
  connection.languages.callHierarchy.onOutgoingCalls(({ item }) => {
    const [here, found] = itemOf(item) ?? [];
    if (here === undefined || found === undefined) return null;
    return ide.outgoing(here, found).flatMap((call) => {
      const target = to.hierarchyItem(call.item, elsewhere(item.uri));
      return target ? [{ to: target, fromRanges: call.at.map((one) => to.range(here, one)) }] : [];
    });
  });
}
