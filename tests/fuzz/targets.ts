/** What must hold of any text at all. Each target throws when it does not. */
import { compile, Session, type Compiled, type Formula } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import * as ide from '@quern/ide';
import {
  cardHtml,
  cardJsonLd,
  cardMarkdown,
  cardText,
  labelPage,
  labelText,
  recipeCard,
  sheetCsv,
  sheetHtml,
  sheetMarkdown,
  sheetText,
} from '@quern/publish';
import { parseDocument, tidy, type Line } from '@quern/syntax';
import { memoryHost } from '@quern/testkit';
import { label, sheet } from '@quern/views';
import remarkParse from 'remark-parse';
import remarkQuern from 'remark-quern';
import remarkRehype from 'remark-rehype';
import rehypeStringify from 'rehype-stringify';
import { unified } from 'unified';
import { renderingsOf } from '../publish/renderings.js';
import { jsonCorpus, readsJson } from './json.js';
import { serve } from './language-server.js';

export type Target = (text: string) => void | Promise<void>;

const foods = createFoodBook();
const path = 'main.quern';
const compiledOf = (text: string): Compiled => compile(path, text, memoryHost([{ path, text }], foods));

/** Every character of a text is in its lines, once and in order. */
function parse(text: string): void {
  const document = parseDocument(path, text);
  const mark = document.byteOrderMark ? '\uFEFF' : '';
  const whole = mark + document.lines.map((line: Line) => line.text + line.ending).join('');
  if (whole !== text) throw new Error('the lines are not the text');
  for (const line of document.lines) {
    if (text.slice(line.start, line.start + line.text.length) !== line.text) {
      throw new Error(`line ${line.number} is not where it says`);
    }
    for (const { place } of line.parsed.messages) inside(place, line.text.length);
  }
}

/** A text compiles to the same thing each time, and whatever is said of it has a place in it. */
function compiles(text: string): void {
  const first = compiledOf(text);
  for (const { place } of first.diagnostics) if (place.file === path) inside(place, text.length);
  const codes = ({ diagnostics }: Compiled) => diagnostics.map(({ code, place }) => `${code}@${place.start}`).join();
  if (codes(first) !== codes(compiledOf(text))) throw new Error('two compilations say different things');
}

/**
 * Files that use each other, forwards, backwards and in circles: each has the same text under a head that brings in the
 * others. Nothing is ever read by a path that could lead out of the workspace.
 */
function resolves(text: string): void {
  const names = ['lib/a.quern', 'lib/deep/b.quern', 'c.quern', path];
  const asked: string[] = [];
  const read = (name: string): string | undefined => {
    asked.push(name);
    const index = names.indexOf(name);
    const others = ['../c.quern', 'deep/b.quern', '../../main.quern', 'a.quern', 'nowhere.quern', '../../../out.quern'];
    // Each file uses some of the others, the last ones nothing that is there.
    const uses = others.slice(index + 1).map((other, number) => `use part ${number} from ${other} as part ${number}\n`);
    return index < 0 ? undefined : uses.join('') + text;
  };
  const session = new Session({ read, foods });
  for (const name of names) session.compile(name)?.formulas.forEach(({ makes }) => makes.length);
  const out = asked.find((name) => /^[/\\]|^[a-z][a-z0-9+.-]*:|\\|\0|(?:^|\/)\.{1,2}(?:\/|$)/i.test(name));
  if (out !== undefined) throw new Error(`a file was asked for by the path ${out}`);
}

/** Every view in every form, with no character in it that a terminal obeys. */
function renders(text: string): void {
  for (const { name, kind, text: made } of renderingsOf(text, foods)) {
    const plain = kind === 'csv' || kind === 'calendar' ? made.replaceAll('\r\n', '\n') : made;
    if (/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\p{Surrogate}]/u.test(plain))
      throw new Error(`a control in the ${name} as ${kind}`);
    if (kind === 'json') JSON.parse(made);
  }
}

/** Laid out twice is laid out once. */
function tidies(text: string): void {
  const once = tidy(text).text;
  if (tidy(once).text !== once) throw new Error('tidy twice is not tidy once');
}

/** Whatever can be compiled can be shown, in every form. */
function shows(text: string): void {
  const compiled = compiledOf(text);
  // A few recipes are enough: variants show the same parts again.
  for (const formula of compiled.formulas.slice(0, 3)) show(compiled, formula);
}

function show(compiled: Compiled, formula: Formula): void {
  const data = sheet(formula, { percentages: true });
  const { value: statement } = label(formula, { market: 'eu', kitchens: compiled.kitchens });
  const { value: card } = recipeCard(compiled, formula);
  const shown = [
    ...[sheetText(data), sheetHtml(data), sheetMarkdown(data), sheetCsv(data)],
    ...[labelText(statement), labelPage(statement)],
    ...[cardHtml(card), cardMarkdown(card), cardText(card), JSON.stringify(cardJsonLd(card))],
  ];
  const leak = shown.find(
    (one) => /\bundefined\b|\[object Object\]|\bNaN\b/.test(one) && !/undefined|NaN/.test(formula.title),
  );
  if (leak !== undefined && !/undefined|NaN/.test(compiled.document.text))
    throw new Error('a value that is none was printed');
}

/** Every question an editor may ask is answered at the beginning, in the middle and at the end. */
function answers(text: string): void {
  const session = new Session(memoryHost([{ path, text }], foods));
  const snapshot = ide.snapshotOf(session, path);
  if (snapshot === undefined) throw new Error('the file is not there');
  for (const offset of [0, Math.floor(text.length / 3), Math.floor((2 * text.length) / 3), text.length]) {
    const span = { start: offset, end: offset };
    ide.hover(snapshot, offset);
    ide.completion(snapshot, offset);
    ide.signatureHelp(snapshot, offset);
    ide.definition(snapshot, offset);
    ide.references(snapshot, offset);
    ide.highlights(snapshot, offset);
    ide.rename(snapshot, offset, 'another name');
    ide.selectionRanges(snapshot, offset);
    ide.codeActions(snapshot, span);
    ide.formatOnType(snapshot, offset);
  }
  for (const { span } of ide.semanticTokens(snapshot)) inside(span, text.length);
  ide.inlayHints(snapshot, 0, text.length, ide.ALL_HINTS);
  ide.documentSymbols(snapshot);
  ide.foldingRanges(snapshot);
  ide.documentLinks(snapshot);
  ide.codeLenses(snapshot);
  ide.fixAll(snapshot);
}

const markdown = unified().use(remarkParse).use(remarkQuern).use(remarkRehype).use(rehypeStringify);

/** The text in a fenced block of a Markdown file, and as a Markdown file of its own. */
function marksDown(text: string): void {
  markdown.processSync(`# A page\n\n\`\`\`quern\n${text}\n\`\`\`\n\nAnd on.\n`);
  markdown.processSync(text);
}

function inside(place: { readonly start: number; readonly end: number }, length: number): void {
  if (!(0 <= place.start && place.start <= place.end && place.end <= length)) {
    throw new Error(`a place outside the text: ${place.start}-${place.end} of ${length}`);
  }
}

export interface Fuzzed {
  readonly takes: Target;
  /** How many damaged texts it is given in CI. */
  readonly runs: number;
  /** Texts of its own kind, besides the recipes. */
  readonly also?: readonly string[];
}

/** Every target. */
export const targets: Readonly<Record<string, Fuzzed>> = {
  parse: { takes: parse, runs: 1000 },
  compile: { takes: compiles, runs: 400 },
  resolve: { takes: resolves, runs: 100 },
  tidy: { takes: tidies, runs: 1000 },
  show: { takes: shows, runs: 100 },
  render: { takes: renders, runs: 60 },
  answer: { takes: answers, runs: 100 },
  serve: { takes: serve, runs: 60 },
  json: { takes: readsJson, runs: 300, also: jsonCorpus },
  markdown: { takes: marksDown, runs: 100 },
};

/** Longest time a text of a few kilobytes may take, with room for a slow and busy machine. */
export const mostMilliseconds = 5000;
