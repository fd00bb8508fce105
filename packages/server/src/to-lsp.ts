import * as lsp from 'vscode-languageserver';
import type { Place, Span } from '@quern/text';
import type * as ide from '@quern/ide';

/* From the answers of the editor service to the protocol. Nothing here decides anything. */

type Snapshot = ide.Snapshot;

export function range(snapshot: Snapshot, span: Span): lsp.Range {
  return { start: snapshot.positionAt(span.start), end: snapshot.positionAt(span.end) };
}

/** Where other files are found: by their path, from a file of the same folder. */
export interface Elsewhere {
  uri(path: string): string;
  snapshot(path: string): Snapshot | undefined;
}

export function location(elsewhere: Elsewhere, place: Place): lsp.Location | undefined {
  const snapshot = elsewhere.snapshot(place.file);
  return snapshot && { uri: elsewhere.uri(place.file), range: range(snapshot, place) };
}

const SEVERITIES = {
  error: lsp.DiagnosticSeverity.Error,
  warning: lsp.DiagnosticSeverity.Warning,
  hint: lsp.DiagnosticSeverity.Hint,
} as const;

/** @param docs address of the folder with a page for each code, when it is known. */
export function diagnostic(
  snapshot: Snapshot,
  one: ide.EditorDiagnostic,
  elsewhere: Elsewhere,
  docs: string | undefined,
): lsp.Diagnostic {
  const related = one.related.flatMap(({ place, message }) => {
    const where = location(elsewhere, place);
    return where ? [{ location: where, message }] : [];
  });
  return {
    range: range(snapshot, one.span),
    severity: SEVERITIES[one.severity],
    code: one.code,
    source: 'quern',
    message: one.message,
    ...(docs === undefined ? {} : { codeDescription: { href: `${docs}/${one.code}.md` } }),
    ...(related.length > 0 ? { relatedInformation: related } : {}),
    ...(one.quiet ? { tags: [lsp.DiagnosticTag.Unnecessary] } : {}),
  };
}

const COMPLETION_KINDS: Readonly<Record<ide.CompletionKind, lsp.CompletionItemKind>> = {
  word: lsp.CompletionItemKind.Keyword,
  food: lsp.CompletionItemKind.Variable,
  product: lsp.CompletionItemKind.Function,
  culture: lsp.CompletionItemKind.Constant,
  recipe: lsp.CompletionItemKind.Class,
  unit: lsp.CompletionItemKind.Unit,
  value: lsp.CompletionItemKind.Value,
  note: lsp.CompletionItemKind.Text,
  file: lsp.CompletionItemKind.File,
  tag: lsp.CompletionItemKind.Text,
  allergen: lsp.CompletionItemKind.EnumMember,
  nutrient: lsp.CompletionItemKind.Property,
  thing: lsp.CompletionItemKind.Field,
};

export function completions(
  snapshot: Snapshot,
  list: ide.CompletionList,
  snippets: boolean,
  plain: (snippet: string) => string,
): lsp.CompletionList {
  return {
    isIncomplete: list.incomplete,
    items: list.items.map((item, index) => ({
      label: item.label,
      kind: COMPLETION_KINDS[item.kind],
      // The order is ours: what a workspace uses comes first.
      sortText: String(index).padStart(4, '0'),
      filterText: item.label,
      textEdit: {
        range: range(snapshot, item.span),
        newText: item.snippet && !snippets ? plain(item.insert) : item.insert,
      },
      ...(item.snippet && snippets ? { insertTextFormat: lsp.InsertTextFormat.Snippet } : {}),
      ...(item.detail === undefined ? {} : { detail: item.detail }),
      ...(item.documentation === undefined ? {} : { documentation: markdown(item.documentation) }),
    })),
  };
}

export const markdown = (value: string): lsp.MarkupContent => ({ kind: lsp.MarkupKind.Markdown, value });

const SYMBOL_KINDS: Readonly<Record<ide.SymbolKind, lsp.SymbolKind>> = {
  recipe: lsp.SymbolKind.Class,
  make: lsp.SymbolKind.Function,
  saved: lsp.SymbolKind.Variable,
  variant: lsp.SymbolKind.Interface,
  food: lsp.SymbolKind.Object,
  culture: lsp.SymbolKind.Constant,
  kitchen: lsp.SymbolKind.Namespace,
  menu: lsp.SymbolKind.Package,
  course: lsp.SymbolKind.Event,
};

export function documentSymbol(snapshot: Snapshot, symbol: ide.DocumentSymbol): lsp.DocumentSymbol {
  return {
    name: symbol.name,
    detail: symbol.detail,
    kind: SYMBOL_KINDS[symbol.kind],
    range: range(snapshot, symbol.span),
    selectionRange: range(snapshot, symbol.nameSpan),
    children: symbol.children.map((child) => documentSymbol(snapshot, child)),
  };
}

export function workspaceSymbol(symbol: ide.WorkspaceSymbol, elsewhere: Elsewhere): lsp.SymbolInformation | undefined {
  const where = location(elsewhere, { file: symbol.file, ...symbol.nameSpan });
  return (
    where && { name: symbol.name, kind: SYMBOL_KINDS[symbol.kind], location: where, containerName: symbol.container }
  );
}

const FOLDING_KINDS = {
  block: lsp.FoldingRangeKind.Region,
  remarks: lsp.FoldingRangeKind.Comment,
  uses: lsp.FoldingRangeKind.Imports,
} as const;

export const foldingRange = ({ from, to, kind }: ide.FoldingRange): lsp.FoldingRange => ({
  startLine: from,
  endLine: to,
  ...(kind === 'block' ? {} : { kind: FOLDING_KINDS[kind] }),
});

/** Spans from small to large as the protocol nests them. */
export function selectionRange(snapshot: Snapshot, spans: readonly Span[]): lsp.SelectionRange {
  let outer: lsp.SelectionRange | undefined;
  for (const span of spans.toReversed()) outer = { range: range(snapshot, span), ...(outer ? { parent: outer } : {}) };
  return outer ?? { range: range(snapshot, { start: 0, end: 0 }) };
}

export function textEdit(snapshot: Snapshot, edit: { readonly span: Span; readonly text: string }): lsp.TextEdit {
  return { range: range(snapshot, edit.span), newText: edit.text };
}

export const inlayHint = (snapshot: Snapshot, hint: ide.InlayHint): lsp.InlayHint => {
  const at = snapshot.positionAt(hint.offset);
  return {
    position: at,
    label: hint.label.trim(),
    kind: lsp.InlayHintKind.Type,
    tooltip: hint.tooltip,
    paddingLeft: true,
    ...(hint.insert === undefined ? {} : { textEdits: [{ range: { start: at, end: at }, newText: hint.insert }] }),
  };
};

const HIGHLIGHT_KINDS = {
  declared: lsp.DocumentHighlightKind.Write,
  used: lsp.DocumentHighlightKind.Read,
  spoken: lsp.DocumentHighlightKind.Text,
} as const;

export const highlight = (snapshot: Snapshot, one: ide.Reference): lsp.DocumentHighlight => ({
  range: range(snapshot, one.place),
  kind: HIGHLIGHT_KINDS[one.role],
});

/** Numbers of the protocol: five a token, each place told from the one before. Tokens come in the order of the text. */
export function semanticTokens(
  snapshot: Snapshot,
  tokens: readonly ide.Token[],
  types: readonly string[],
  modifiers: readonly string[],
  builder: lsp.SemanticTokensBuilder,
): void {
  for (const token of tokens) {
    const at = snapshot.positionAt(token.span.start);
    const bits = token.modifiers.reduce((sum, modifier) => sum | (1 << modifiers.indexOf(modifier)), 0);
    builder.push(at.line, at.character, token.span.end - token.span.start, types.indexOf(token.type), bits);
  }
}

const HIERARCHY_KINDS = {
  make: lsp.SymbolKind.Function,
  saved: lsp.SymbolKind.Variable,
  recipe: lsp.SymbolKind.Class,
} as const;

export function hierarchyItem(item: ide.HierarchyItem, elsewhere: Elsewhere): lsp.CallHierarchyItem | undefined {
  const where = location(elsewhere, item.place);
  return (
    where && {
      name: item.name,
      kind: HIERARCHY_KINDS[item.kind],
      uri: where.uri,
      range: where.range,
      selectionRange: where.range,
      data: item,
    }
  );
}

/** What a client can do with edits. */
export interface EditAbilities {
  readonly documentChanges: boolean;
  readonly createFiles: boolean;
}

/** Edits of several files. A client that cannot make a file is given none that needs one. */
export function workspaceEdit(
  edits: readonly ide.FileEdits[],
  elsewhere: Elsewhere & { version(path: string): number | null },
  abilities: EditAbilities,
): lsp.WorkspaceEdit | undefined {
  if (!abilities.documentChanges) {
    if (edits.some(({ create }) => create)) return undefined;
    const changes: Record<string, lsp.TextEdit[]> = {};
    for (const { file, edits: own } of edits) {
      const snapshot = elsewhere.snapshot(file);
      if (snapshot === undefined) return undefined;
      changes[elsewhere.uri(file)] = own.map((edit) => textEdit(snapshot, edit));
    }
    return { changes };
  }
  const documentChanges: (lsp.TextDocumentEdit | lsp.CreateFile)[] = [];
  for (const { file, edits: own, create } of edits) {
    const uri = elsewhere.uri(file);
    if (create) {
      if (!abilities.createFiles) return undefined;
      const start = { line: 0, character: 0 };
      const texts = own.map(({ text }) => ({ range: { start, end: start }, newText: text }));
      documentChanges.push({ kind: 'create', uri, options: { ignoreIfExists: true } });
      documentChanges.push({ textDocument: { uri, version: null }, edits: texts });
      continue;
    }
    const snapshot = elsewhere.snapshot(file);
    if (snapshot === undefined) return undefined;
    documentChanges.push({
      textDocument: { uri, version: elsewhere.version(file) },
      edits: own.map((edit) => textEdit(snapshot, edit)),
    });
  }
  return { documentChanges };
}
