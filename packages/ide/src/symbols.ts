import { outlineOf } from '@quern/compiler';
import { shift, type Span } from '@quern/text';
import type { Line, MakeBlock, Name, Outline, VariantBlock } from '@quern/syntax';
import type { Snapshot } from './snapshot.js';

export type SymbolKind = 'recipe' | 'make' | 'saved' | 'variant' | 'food' | 'culture' | 'kitchen' | 'menu' | 'course';

export interface DocumentSymbol {
  readonly name: string;
  readonly detail: string;
  readonly kind: SymbolKind;
  /** The whole block. */
  readonly span: Span;
  /** Its name. */
  readonly nameSpan: Span;
  readonly children: readonly DocumentSymbol[];
}

/** The blocks of a file as a tree: recipes with their makes, saved things and variants; foods; menus with their courses. */
export function documentSymbols(snapshot: Snapshot): readonly DocumentSymbol[] {
  return symbolsOf(snapshot.outline, snapshot.document.lines);
}

function symbolsOf(outline: Outline, lines: readonly Line[]): readonly DocumentSymbol[] {
  const ends = blockEnds(lines);
  const symbols: DocumentSymbol[] = [];
  for (const recipe of outline.recipes) {
    const makes = recipe.makes.flatMap((make) => makeSymbol(make, ends));
    const variants = recipe.variants.map((variant) => variantSymbol(variant, ends));
    symbols.push(heading('recipe', recipe.heading.line, recipe.heading.content.name, ends, [...makes, ...variants]));
  }
  for (const [kind, blocks] of [
    ['food', outline.foods],
    ['culture', outline.cultures],
    ['kitchen', outline.kitchens],
  ] as const) {
    for (const block of blocks) symbols.push(heading(kind, block.heading.line, block.heading.content.name, ends, []));
  }
  for (const menu of outline.menus) {
    const courses = menu.courses.map(({ heading: { line, content } }) => {
      const shown =
        content.name ??
        (content.clock && {
          span: content.clock.span,
          text: line.text.slice(content.clock.span.start, content.clock.span.end),
        });
      return heading('course', line, shown, ends, []);
    });
    symbols.push(heading('menu', menu.heading.line, menu.heading.content.name, ends, courses));
  }
  return symbols.sort((a, b) => a.span.start - b.span.start);
}

function makeSymbol(make: MakeBlock, ends: ReadonlyMap<number, number>): DocumentSymbol[] {
  const saved = make.items.flatMap((item) => {
    if (item.kind !== 'out' || item.main.content.verb !== 'save' || !item.main.content.as) return [];
    const { line, content } = item.main;
    return [lineSymbol('saved', line, content.as ?? { span: { start: 0, end: 0 }, text: '' })];
  });
  if (make.heading === undefined) return saved;
  return [heading('make', make.heading.line, make.heading.content.name, ends, saved)];
}

function variantSymbol(variant: VariantBlock, ends: ReadonlyMap<number, number>): DocumentSymbol {
  const makes = variant.makes.flatMap((make) => makeSymbol(make, ends));
  return heading('variant', variant.heading.line, variant.heading.content.name, ends, makes);
}

function heading(
  kind: SymbolKind,
  line: Line,
  name: Name | undefined,
  ends: ReadonlyMap<number, number>,
  children: readonly DocumentSymbol[],
): DocumentSymbol {
  const own = lineSymbol(
    kind,
    line,
    name ?? { span: { start: line.parsed.content.indent, end: line.text.trimEnd().length }, text: kind },
  );
  const end = children.reduce((far, child) => Math.max(far, child.span.end), ends.get(line.number) ?? own.span.end);
  return { ...own, span: { start: line.start, end }, children };
}

function lineSymbol(kind: SymbolKind, line: Line, name: Name): DocumentSymbol {
  const indent = line.parsed.content.indent;
  return {
    name: name.text,
    detail: kind,
    kind,
    span: { start: line.start + indent, end: line.start + line.text.trimEnd().length },
    nameSpan: shift(name.span, line.start),
    children: [],
  };
}

/** For each block line the end of its block: the last line before the next block line that is not empty. */
export function blockEnds(lines: readonly Line[]): ReadonlyMap<number, number> {
  const ends = new Map<number, number>();
  let open: Line | undefined;
  let last: Line | undefined;
  for (const line of lines) {
    const { content } = line.parsed;
    if (content.kind === 'block') {
      if (open && last) ends.set(open.number, last.start + last.text.length);
      open = line;
    }
    // Remarks right above a block line belong to it, so they do not lengthen the block before.
    if (content.kind !== 'blank' && content.kind !== 'comment') last = line;
  }
  if (open && last) ends.set(open.number, last.start + last.text.length);
  return ends;
}

export interface WorkspaceSymbol extends DocumentSymbol {
  readonly file: string;
  /** The block it stands in. */
  readonly container: string;
}

/** Symbols of every file whose name holds the letters of the query in their order, as editors search. */
export function workspaceSymbols(
  snapshot: Pick<Snapshot, 'session' | 'files'>,
  query: string,
  limit = 500,
): readonly WorkspaceSymbol[] {
  return [...workspaceSymbolsByFile(snapshot, query, limit)].flat();
}

/** The same, a file a turn, so that whoever asks may stop between files. */
export function* workspaceSymbolsByFile(
  { session, files }: Pick<Snapshot, 'session' | 'files'>,
  query: string,
  limit = 500,
): Generator<readonly WorkspaceSymbol[], undefined> {
  let left = limit;
  for (const file of files) {
    const document = session.document(file);
    if (document === undefined) continue;
    const symbols = flattened(symbolsOf(outlineOf(document), document.lines), '');
    const found = [...symbols].filter(({ name }) => holdsLetters(name, query)).slice(0, left);
    left -= found.length;
    yield found.map((symbol) => ({ ...symbol, file }));
    if (left === 0) return;
  }
}

function* flattened(
  symbols: readonly DocumentSymbol[],
  container: string,
): Iterable<DocumentSymbol & { readonly container: string }> {
  for (const symbol of symbols) {
    yield { ...symbol, container };
    yield* flattened(symbol.children, symbol.name);
  }
}

function holdsLetters(name: string, query: string): boolean {
  const letters = name.toLowerCase();
  let at = 0;
  for (const letter of query.toLowerCase().replace(/\s+/g, '')) {
    at = letters.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}
