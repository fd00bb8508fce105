/**
 * What the editor is told at a place, as text: each file in `cases/` is a list of small files with a cursor `┆` or a range
 * `⟦…⟧` and what is expected of them. `UPDATE=1` rewrites the expectations; the difference is the review.
 */
import { applyEdits, LineTable, type Span } from '@quern/text';
import { Session } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import * as ide from '@quern/ide';
import { memoryHost, readMarkers, runCases, type SectionRenderer, type SourceText } from '@quern/testkit';
import { join } from 'node:path';

const foods = createFoodBook();

interface Opened {
  readonly snapshot: ide.Snapshot;
  readonly offset: number;
  readonly range: Span;
  readonly texts: ReadonlyMap<string, string>;
}

function open(files: readonly SourceText[]): Opened {
  const [main, ...others] = files;
  if (main === undefined) throw new Error('no file');
  const { text, cursor, ranges } = readMarkers(main.text);
  const all = [{ path: main.path, text }, ...others];
  const snapshot = ide.snapshotOf(
    new Session(memoryHost(all, foods)),
    main.path,
    all.map(({ path }) => path),
  );
  if (snapshot === undefined) throw new Error(`no text for ${main.path}`);
  const offset = cursor ?? ranges[0]?.start ?? 0;
  return {
    snapshot,
    offset,
    range: ranges[0] ?? { start: offset, end: offset },
    texts: new Map(all.map((file) => [file.path, file.text])),
  };
}

/** The words at a span, with their line number where it helps. */
const words = ({ text }: { readonly text: string }, span: Span): string =>
  text.slice(span.start, span.end).replace(/\n/g, '⏎');

function placed(texts: ReadonlyMap<string, string>, file: string, span: Span): string {
  const text = texts.get(file) ?? '';
  const { line, column } = new LineTable(text).at(span.start);
  return `${file}:${line + 1}:${column + 1} ${text.slice(span.start, span.end)}`;
}

/** The files after edits, each under its name. */
function edited(texts: ReadonlyMap<string, string>, edits: readonly ide.FileEdits[]): string {
  return edits.map(({ file, edits: changes }) => `${file}\n${applyEdits(texts.get(file) ?? '', changes)}`).join('\n');
}

const renderers: Readonly<Record<string, SectionRenderer>> = {
  hover: (files) => {
    const { snapshot, offset } = open(files);
    const found = ide.hover(snapshot, offset);
    return found === undefined ? 'nothing' : `[${words(snapshot, found.span)}]\n${found.contents}`;
  },
  complete: (files, argument) => {
    const { snapshot, offset } = open(files);
    const { items, incomplete } = ide.completion(snapshot, offset);
    const shown = items.slice(0, argument === '' ? 8 : Number(argument)).map((item) => {
      const insert = item.insert === item.label ? '' : ` → ${item.insert.replace(/\n/g, '⏎')}`;
      return `${item.label} (${item.kind}${item.detail === undefined ? '' : `: ${item.detail}`})${insert} [${words(snapshot, item.span)}]`;
    });
    return [...shown, incomplete ? 'and more' : ''].join('\n');
  },
  completed: (files, label) => {
    const { snapshot, offset } = open(files);
    const item = ide.completion(snapshot, offset).items.find((one) => one.label === label);
    if (item === undefined) return `nothing called ${label}`;
    return applyEdits(snapshot.text, [
      { span: item.span, text: item.snippet ? ide.plainSnippet(item.insert) : item.insert },
    ]);
  },
  signature: (files) => {
    const { snapshot, offset } = open(files);
    const help = ide.signatureHelp(snapshot, offset);
    if (help === undefined) return 'nothing';
    const active = help.parameters[help.active];
    return active === undefined
      ? help.form
      : `${help.form.slice(0, active.start)}»${help.form.slice(active.start, active.end)}«${help.form.slice(active.end)}`;
  },
  hints: (files, argument) => {
    const { snapshot } = open(files);
    const only = argument === '' ? undefined : argument.split(' ');
    const options = { otherMeasure: true, bakersPercent: true, potWeight: true };
    if (only !== undefined)
      Object.assign(options, {
        otherMeasure: only.includes('measure'),
        bakersPercent: only.includes('percent'),
        potWeight: only.includes('pot'),
      });
    const hints = ide.inlayHints(snapshot, 0, Infinity, options);
    return applyEdits(
      snapshot.text,
      hints.map(({ offset, label }) => ({ span: { start: offset, end: offset }, text: `«${label}»` })),
    );
  },
  tokens: (files) => {
    const { snapshot } = open(files);
    return ide
      .semanticTokens(snapshot)
      .map(({ span, type, modifiers }) => `${words(snapshot, span)} ${[type, ...modifiers].join('.')}`)
      .join('\n');
  },
  symbols: (files) => {
    const { snapshot } = open(files);
    const draw = (symbols: readonly ide.DocumentSymbol[], depth: number): string[] =>
      symbols.flatMap(({ name, kind, nameSpan, children }) => [
        `${'  '.repeat(depth)}${kind} ${name} [${words(snapshot, nameSpan)}]`,
        ...draw(children, depth + 1),
      ]);
    return draw(ide.documentSymbols(snapshot), 0).join('\n');
  },
  everywhere: (files, query) => {
    const { snapshot, texts } = open(files);
    return ide
      .workspaceSymbols(snapshot, query)
      .map(
        ({ file, kind, nameSpan, container }) =>
          `${kind} ${placed(texts, file, nameSpan)}${container === '' ? '' : ` in ${container}`}`,
      )
      .join('\n');
  },
  folding: (files) => {
    const { snapshot } = open(files);
    return ide
      .foldingRanges(snapshot)
      .map(({ from, to, kind }) => `${from + 1}-${to + 1} ${kind}`)
      .join('\n');
  },
  selection: (files) => {
    const { snapshot, offset } = open(files);
    return ide
      .selectionRanges(snapshot, offset)
      .map((span) => words(snapshot, span))
      .join('\n---\n');
  },
  links: (files) => {
    const { snapshot } = open(files);
    return ide
      .documentLinks(snapshot)
      .map(({ span, target }) => `${words(snapshot, span)} → ${target.kind === 'file' ? target.path : target.address}`)
      .join('\n');
  },
  definition: (files) => {
    const { snapshot, offset, texts } = open(files);
    return ide
      .definition(snapshot, offset)
      .map(({ place }) => placed(texts, place.file, place))
      .join('\n');
  },
  references: (files) => {
    const { snapshot, offset, texts } = open(files);
    return ide
      .references(snapshot, offset)
      .map(({ place, role }) => `${role} ${placed(texts, place.file, place)}`)
      .join('\n');
  },
  rename: (files, name) => {
    const { snapshot, offset, texts } = open(files);
    const answer = ide.rename(snapshot, offset, name);
    return answer.kind === 'refused' ? answer.why : edited(texts, answer.edits);
  },
  actions: (files) => {
    const { snapshot, range } = open(files);
    return ide
      .codeActions(snapshot, range)
      .map(
        ({ kind, title, diagnostic, preferred }) =>
          `${kind}${diagnostic ? ` ${diagnostic.code}` : ''}${preferred ? ' *' : ''}: ${title}`,
      )
      .join('\n');
  },
  act: (files, title) => {
    const { snapshot, range, texts } = open(files);
    const action = ide.codeActions(snapshot, range).find((one) => one.title.startsWith(title));
    return action === undefined ? `no action “${title}”` : edited(texts, action.edits);
  },
  'fix-all': (files) => {
    const { snapshot, texts } = open(files);
    const action = ide.fixAll(snapshot);
    return action === undefined ? 'nothing' : `${action.title}\n${edited(texts, action.edits)}`;
  },
  format: (files) => {
    const { snapshot } = open(files);
    return applyEdits(snapshot.text, ide.formatDocument(snapshot));
  },
  'format-range': (files) => {
    const { snapshot, range } = open(files);
    return applyEdits(snapshot.text, ide.formatRange(snapshot, range));
  },
  'format-type': (files) => {
    const { snapshot, offset } = open(files);
    return applyEdits(snapshot.text, ide.formatOnType(snapshot, offset)).replace(/ +$/gm, (spaces) =>
      '·'.repeat(spaces.length),
    );
  },
  lenses: (files) => {
    const { snapshot } = open(files);
    return ide
      .codeLenses(snapshot)
      .map(
        (lens) =>
          `${words(snapshot, lens.span)}: ${ide.resolveLens(snapshot, lens).title}${lens.command === undefined ? '' : ` (${lens.command})`}`,
      )
      .join('\n');
  },
  calls: (files) => {
    const { snapshot, offset, texts } = open(files);
    const item = ide.prepareHierarchy(snapshot, offset);
    if (item === undefined) return 'nothing';
    const told = (calls: readonly ide.HierarchyCall[]): string[] =>
      calls.map(
        ({ item: other, at, file }) =>
          `  ${other.kind} ${other.name}, ${at.map((span) => placed(texts, file, span)).join('; ')}`,
      );
    return [
      `${item.kind} ${item.name}`,
      'drawn by',
      ...told(ide.incoming(snapshot, item)),
      'draws',
      ...told(ide.outgoing(snapshot, item)),
    ].join('\n');
  },
  diagnostics: (files) => {
    const { snapshot } = open(files);
    return ide
      .diagnostics(snapshot)
      .map(
        ({ code, severity, message, span, related, quiet }) =>
          `${severity} ${code}${quiet ? ' (quiet)' : ''} [${words(snapshot, span)}] ${message.replace(/\n/g, ' / ')}${related.map((one) => ` + ${one.message}`).join('')}`,
      )
      .join('\n');
  },
};

runCases(join(import.meta.dirname, 'cases'), renderers);
