/** Editor answers as pure functions of a snapshot: document in, plain data and UTF-16 offsets out. */
export { compiledAs, editorSession, Snapshot, snapshotOf } from './snapshot.js';
export type { FileEdits } from './edits.js';
export { diagnostics, editorDiagnostic, type EditorDiagnostic } from './diagnostics.js';
export { hover, type Hover } from './hover/hover.js';
export { completion } from './completion/completion.js';
export type { CompletionItem, CompletionKind, CompletionList } from './completion/item.js';
export { lineSnippets, plainSnippet } from './completion/line-snippets.js';
export { signatureHelp, type SignatureHelp } from './signature.js';
export { ALL_HINTS, inlayHints, type InlayHint, type InlayOptions } from './inlay-hints.js';
export {
  semanticTokens,
  TOKEN_MODIFIERS,
  TOKEN_TYPES,
  type Token,
  type TokenModifier,
  type TokenType,
} from './tokens.js';
export {
  documentSymbols,
  workspaceSymbols,
  workspaceSymbolsByFile,
  type DocumentSymbol,
  type SymbolKind,
  type WorkspaceSymbol,
} from './symbols.js';
export { foldingRanges, type FoldingRange } from './folding.js';
export { selectionRanges } from './selection.js';
export { documentLinks, type DocumentLink } from './links.js';
export { definition, highlights, references, referencesByFile, type Reference } from './references.js';
export { prepareRename, rename, renameByFile, type RenameAnswer } from './rename.js';
export { formatDocument, formatOnType, formatRange } from './format.js';
export { codeLenses, resolveLens, type CodeLens, type LensCommand } from './code-lens.js';
export {
  incoming,
  incomingByFile,
  outgoing,
  prepareHierarchy,
  type HierarchyCall,
  type HierarchyItem,
} from './call-hierarchy.js';
export { fixesAt, fixesFor, mendAll, safeEdits, type CodedFix } from './fixes/mend.js';
export { fixers, withoutFix } from './fixes/index.js';
export { codeActions, fixAll, type CodeAction } from './code-actions.js';
export { refactorings, type Refactoring, type RefactoringKind } from './refactor/refactor.js';
