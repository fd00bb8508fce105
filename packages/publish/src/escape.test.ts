import { parse as parseCsv } from 'csv-parse/sync';
import fc from 'fast-check';
import { fromHtml } from 'hast-util-from-html';
import { toString as markdownToString } from 'mdast-util-to-string';
import { unified } from 'unified';
import remarkParse from 'remark-parse';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { HOSTILE } from '../../../tests/publish/cards.js';
import {
  asciiJson,
  csvCell,
  fileName,
  htmlAttribute,
  htmlText,
  isolateDirections,
  jsonInScript,
  markdownText,
  oneLine,
  pictureAddress,
  plainText,
  safeAddress,
  svgText,
  xmlAttribute,
  xmlText,
} from './escape.js';

/*
 * The law for every output: parsed by a parser that is not ours, a text comes back as that text and nothing else. What
 * no output may carry (controls, half a surrogate pair) comes back as U+FFFD, and directional controls in an isolate.
 */

const DIRECTIONAL = /[\u202A-\u202E\u2066-\u2069]/gu;
const FORBIDDEN =
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;
const readable = (text: string): string =>
  text.replace(/\r\n?/g, '\n').replace(FORBIDDEN, '\uFFFD').replace(DIRECTIONAL, '');
const undirected = (text: string): string => text.replace(DIRECTIONAL, '');

const anyText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.string({
    unit: fc.constantFrom(
      ...'<>&"\'`{}[]()!*_#+-=.|\\/:;%$@~^\n\r\t \u202E\u202C\u2066\u2069\u0000\uD800',
      'a',
      '1',
      'www.',
    ),
  }),
  fc.constantFrom(...HOSTILE),
);

function parsedXml(xml: string): { text: string; attribute: string } {
  const parser = new SaxesParser();
  let text = '';
  let attribute = '';
  let tags = 0;
  parser.on('text', (part) => (text += part));
  parser.on('opentag', (tag) => {
    tags++;
    attribute = String(tag.attributes['a'] ?? '');
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(xml).close();
  expect(tags).toBe(1);
  return { text, attribute };
}

describe('each output gives the text back', () => {
  test('HTML text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const [paragraph] = fromHtml(`<p>${htmlText(text)}</p>`, { fragment: true }).children;
        expect(paragraph).toMatchObject({ type: 'element', tagName: 'p' });
        const children = paragraph?.type === 'element' ? paragraph.children : [];
        expect(children.every((child) => child.type === 'text')).toBe(true);
        const value = children.map((child) => (child.type === 'text' ? child.value : '')).join('');
        expect(undirected(value)).toBe(readable(text));
      }),
    );
  });

  test('HTML attribute', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const [link] = fromHtml(`<a title="${htmlAttribute(text)}">x</a>`, { fragment: true }).children;
        if (link?.type !== 'element') throw new Error('the element was broken');
        expect(Object.keys(link.properties)).toEqual(['title']);
        expect(undirected(String(link.properties['title']))).toBe(readable(text));
      }),
    );
  });

  test('XML text and attribute', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const found = parsedXml(`<x a="${xmlAttribute(text)}">${xmlText(text)}</x>`);
        expect(undirected(found.text)).toBe(readable(text));
        expect(undirected(found.attribute)).toBe(readable(text));
      }),
    );
  });

  test('SVG text, for the XML parser and for the HTML parser', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const svg = `<text>${svgText(text)}</text>`;
        const wanted = oneLine(undirected(readable(text)));
        expect(oneLine(undirected(parsedXml(svg).text))).toBe(wanted);
        const [root] = fromHtml(`<svg>${svg}</svg>`, { fragment: true, space: 'html' }).children;
        const inner = root?.type === 'element' ? root.children[0] : undefined;
        expect(inner).toMatchObject({ type: 'element', tagName: 'text' });
        const only = inner?.type === 'element' ? inner.children : [];
        expect(only.every((child) => child.type === 'text')).toBe(true);
      }),
    );
  });

  test('JSON inside a script element', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const json = jsonInScript({ [text]: [text, { a: {} }] });
        expect(JSON.parse(json)).toEqual({ [text]: [text, { a: {} }] });
        expect(json).not.toMatch(/[<>&\u2028\u2029]|\{\{|\{%|\{#/);
        const html = `<script type="application/json">${json}</script><p>after</p>`;
        const nodes = fromHtml(html, { fragment: true }).children;
        expect(nodes.map((node) => (node.type === 'element' ? node.tagName : node.type))).toEqual(['script', 'p']);
      }),
    );
  });

  test('JSON in an attribute', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const json = asciiJson([text]);
        expect(json).toMatch(/^[ -~]*$/);
        expect(JSON.parse(json)).toEqual([text]);
      }),
    );
  });

  test('a cell of a comma-separated file', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const rows: string[][] = parseCsv(`${csvCell(text)},next\n`, {
          relax_column_count: true,
          skip_empty_lines: false,
        });
        expect(rows).toHaveLength(1);
        expect(rows[0]).toHaveLength(2);
        const cell = rows[0]?.[0] ?? '';
        expect([readable(text), `'${readable(text)}`]).toContain(undirected(cell));
        // What spreadsheets take for a formula (OWASP, 'CSV injection').
        expect(cell).not.toMatch(/^[=+\-@\t]/);
      }),
    );
  });

  test('Markdown', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const tree = unified().use(remarkParse).parse(markdownText(text));
        const wanted = oneLine(undirected(readable(text)));
        expect(oneLine(undirected(markdownToString(tree)))).toBe(wanted);
        const kinds = tree.children.flatMap((block) => [
          block.type,
          ...('children' in block ? block.children : []).map((child) => child.type),
        ]);
        expect(kinds.filter((kind) => kind !== 'paragraph' && kind !== 'text')).toEqual([]);
      }),
    );
  });

  test('plain text holds no control characters', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        // A tab at the end leaves the words as they are and keeps them from being taken as they stand.
        expect(plainText(`${undirected(text)}\t`)).toBe(plainText(undirected(text)));
        expect(plainText(text)).not.toMatch(/[\u0000-\u001F\u007F-\u009F]/);
        expect(undirected(plainText(text)).replace(/\s+/g, ' ').trim()).toBe(oneLine(undirected(readable(text))));
      }),
    );
  });
});

describe('directional controls', () => {
  test('that are dropped join nothing that they parted', () => {
    expect(csvCell('a\r\u2069\nb')).toBe('"\u2068a\n\nb\u2069"');
    expect(plainText('\uD83C\u2069\uDF5E')).toBe('\u2068\uFFFD\uFFFD\u2069');
  });

  /** What stands open at the end of a text, and how often it closed what it had not opened (Unicode Annex 9, X1 to X8). */
  function depth(text: string): { end: number; underrun: number } {
    const open: string[] = [];
    let underrun = 0;
    for (const character of text) {
      if ('\u202A\u202B\u202D\u202E'.includes(character)) open.push('embedding');
      else if ('\u2066\u2067\u2068'.includes(character)) open.push('isolate');
      else if (character === '\u202C') {
        if (open.at(-1) === 'embedding') open.pop();
        else underrun++;
      } else if (character === '\u2069') {
        const at = open.lastIndexOf('isolate');
        if (at < 0) underrun++;
        else open.length = at;
      }
    }
    return { end: open.length, underrun };
  }

  test('every text closes what it opens and closes nothing that it did not open', () => {
    const controls = fc.string({
      unit: fc.constantFrom('a', 'א', ...'\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069'),
    });
    fc.assert(
      fc.property(controls, (text) => {
        expect(depth(isolateDirections(text))).toEqual({ end: 0, underrun: 0 });
        expect(undirected(isolateDirections(text))).toBe(undirected(text));
        expect(isolateDirections(isolateDirections(text))).toBe(isolateDirections(text));
      }),
    );
  });

  test('a text without them is left alone', () => {
    expect(isolateDirections('שיפון 100 %')).toBe('שיפון 100 %');
  });
});

describe('addresses', () => {
  test.each([
    'javascript:alert(1)',
    ' JaVaScRiPt:alert(1)',
    'java\nscript:alert(1)',
    'java\tscript:x',
    '\u0001javascript:x',
    'data:text/html,x',
    'vbscript:x',
    'file:///x',
    '//elsewhere.example/x',
    '\\\\elsewhere.example\\x',
    'x\u202Ey',
    '',
  ])('refuses %j', (address) => {
    expect(safeAddress(address)).toBeUndefined();
    // The WHATWG parser of the platform agrees that what is refused would leave the page's own place or run something.
    if (address !== '' && !address.includes('\u202E')) {
      expect(new URL(address, 'https://quay.example/recipes/').host).not.toBe('quay.example');
    }
  });
  test.each([
    'https://quay.example/a?b=c#d',
    'http://quay.example',
    'mailto:idony@quay.example',
    'cheeks.jpg',
    '../x/y.html',
    '#leaven',
    '/top',
  ])('takes %j', (address) => {
    expect(safeAddress(address)).toBe(address);
  });
  test('a picture is shown only from beside the page or from the address itself', () => {
    expect(pictureAddress('the black pot.jpg')).toBe('the%20black%20pot.jpg');
    expect(pictureAddress('data:image/png;base64,iVBORw0KGgo=')).toBe('data:image/png;base64,iVBORw0KGgo=');
    for (const no of [
      'https://elsewhere.example/x.jpg',
      'data:image/svg+xml;base64,AAAA',
      'data:image/png;base64,A"x',
      'javascript:x',
    ]) {
      expect(pictureAddress(no)).toBeUndefined();
    }
  });
});

describe('file names', () => {
  test.each([
    ['Pennymoss Black Tin Loaf', 'pennymoss-black-tin-loaf'],
    ['Crème fraîche & chives', 'crème-fraîche-chives'],
    ['לחם שיפון', 'לחם-שיפון'],
    ['../../etc/passwd', 'etc-passwd'],
    ['CON', 'recipe-con'],
    ['***', 'recipe'],
  ])('%j becomes %j', (title, wanted) => {
    expect(fileName(title)).toBe(wanted);
  });
  test('holds letters, digits and hyphens alone', () => {
    fc.assert(fc.property(anyText, (title) => void expect(fileName(title)).toMatch(/^[\p{L}\p{N}\p{M}-]+$/u)));
  });
});

test('a template language finds nothing of its own', () => {
  const text = '{{ x }} {% y %} {# z #} ${w}';
  for (const escaped of [htmlText(text), htmlAttribute(text), xmlText(text), markdownText(text), jsonInScript(text)]) {
    expect(escaped).not.toMatch(/\{\{|\{%|\{#/);
  }
});
