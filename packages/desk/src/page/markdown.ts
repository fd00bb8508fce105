import { make } from './dom.js';

/*
 * The Markdown that the editor answers speak: paragraphs, strong words, code, lists, tables. Everything becomes text of
 * elements made here; there is no way from a recipe's words to markup.
 */

/** A text in that Markdown as elements. */
export function fromMarkdown(text: string): DocumentFragment {
  const made = document.createDocumentFragment();
  for (const block of text.split(/\n{2,}/)) {
    const lines = block.split('\n').filter((line) => line.trim() !== '');
    if (lines.length === 0) continue;
    if (lines.every((line) => line.startsWith('|'))) made.append(table(lines));
    else if (lines.every((line) => line.startsWith('- ')))
      made.append(make('ul', {}, ...lines.map((line) => make('li', {}, ...inline(line.slice(2))))));
    else made.append(make('p', {}, ...inline(lines.join(' '))));
  }
  return made;
}

/** A sentence of a message: what stands between backticks is code, everything else is text. */
export function withCode(text: string): (Node | string)[] {
  return text.split('`').map((part, index) => (index % 2 === 1 ? make('code', {}, part) : part));
}

function table(lines: readonly string[]): HTMLTableElement {
  const rows = lines.filter((line) => !/^[|:\s-]+$/.test(line)).map(cells);
  const [head = [], ...body] = rows;
  return make(
    'table',
    {},
    make('thead', {}, make('tr', {}, ...head.map((cell) => make('th', { scope: 'col' }, ...inline(cell))))),
    make('tbody', {}, ...body.map((row) => make('tr', {}, ...row.map((cell) => make('td', {}, ...inline(cell)))))),
  );
}

function cells(line: string): readonly string[] {
  const inside = line.replace(/^\|/, '').replace(/\|\s*$/, '');
  return inside.split(/(?<!\\)\|/).map((cell) => cell.trim());
}

const PART = /`([^`]+)`|\*\*((?:\\.|[^*\\])+)\*\*/g;

function inline(text: string): (Node | string)[] {
  const parts: (Node | string)[] = [];
  let at = 0;
  for (const found of text.matchAll(PART)) {
    const [whole, code, strong] = found;
    if (found.index > at) parts.push(plain(text.slice(at, found.index)));
    parts.push(code === undefined ? make('strong', {}, plain(strong ?? '')) : make('code', {}, code));
    at = found.index + whole.length;
  }
  if (at < text.length) parts.push(plain(text.slice(at)));
  return parts;
}

const plain = (text: string): string => text.replace(/\\([\\`*_[\]{}()#+\-.!|<>~])/g, '$1');
