import type { SourceText } from './world.js';

/** What is expected of a case under a title ('diagnostics', 'fix L01'). */
interface Section {
  readonly title: string;
  readonly text: string;
}

/** One case: a heading, its files, and what is expected of them. */
interface Case {
  readonly heading: string;
  readonly files: readonly SourceText[];
  readonly expected: readonly Section[];
}

/** A case file: words for people, then cases. */
export interface CaseFile {
  readonly preface: string;
  readonly cases: readonly Case[];
}

/**
 * Reads a case file: `=== heading` begins a case, `--- title` a part of it, which is a file when the title has a dot. What
 * stands above the first title is `main.quern`. Blank lines at the end of a part are not part of it.
 * @throws Error when something in it would never be looked at: two cases with one heading, two parts with one title, a case
 * without a file or without an expectation, or a file without a case.
 */
export function parseCases(text: string): CaseFile {
  const [preface = '', ...parts] = split(text, /^=== (.+)$/);
  const cases = pairs(parts).map(([heading, body]) => parseCase(heading, body));
  if (cases.length === 0) throw new Error('a case file without a case');
  refuseTwice(
    cases.map((one) => one.heading),
    'cases',
  );
  return { preface, cases };
}

function parseCase(heading: string, body: string): Case {
  const [first = '', ...rest] = split(body, /^--- (.+)$/);
  const sections: [string, string][] = pairs(rest);
  if (first.trim() !== '') sections.unshift(['main.quern', first]);
  refuseTwice(
    sections.map(([title]) => title),
    `parts of “${heading}”`,
  );
  const isFile = ([title]: [string, string]) => title.includes('.');
  const files = sections.filter(isFile).map(([path, text]) => ({ path, text: withoutBlankEnd(text) }));
  const expected = sections
    .filter((section) => !isFile(section))
    .map(([title, text]) => ({ title, text: withoutBlankEnd(text) }));
  if (files.length === 0) throw new Error(`case “${heading}” has no file`);
  if (expected.length === 0) throw new Error(`case “${heading}” expects nothing`);
  return { heading, files, expected };
}

/** Writes a case file: what `parseCases` reads. */
export function formatCases({ preface, cases }: CaseFile): string {
  const blocks = cases.map(({ heading, files, expected }) => {
    const parts = [...files.map(({ path, text }) => ({ title: path, text })), ...expected];
    return `=== ${heading}\n${parts.map(({ title, text }) => `--- ${title}\n${withoutBlankEnd(text)}`).join('')}`;
  });
  return preface + blocks.join('\n');
}

function withoutBlankEnd(text: string): string {
  const trimmed = text.replace(/\s+$/, '');
  return trimmed === '' ? '' : `${trimmed}\n`;
}

function refuseTwice(titles: readonly string[], what: string): void {
  const twice = titles.find((title, index) => titles.indexOf(title) !== index);
  if (twice !== undefined) throw new Error(`two ${what} are called “${twice}”`);
}

/** The text before the first matching line, then, for each such line, what it names and the text below it. */
function split(text: string, line: RegExp): string[] {
  const parts = [''];
  for (const part of text.split(/(?<=\n)/)) {
    const found = line.exec(part.replace(/\r?\n$/, ''));
    if (found?.[1] === undefined) parts[parts.length - 1] += part;
    else parts.push(found[1], '');
  }
  return parts;
}

function pairs(parts: readonly string[]): [string, string][] {
  return Array.from({ length: parts.length / 2 }, (_, index) => [parts[2 * index] ?? '', parts[2 * index + 1] ?? '']);
}
