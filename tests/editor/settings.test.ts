/**
 * The settings that docs/editors.md gives for editors, held against the formats that the editors publish. Neovim and Emacs
 * are run for real by `npm run test:editors`; this looks at what can be looked at without them.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { emacsMode } from '../../packages/syntax/scripts/emacs-mode.js';
import { kateSyntax } from '../../packages/syntax/scripts/kate-syntax.js';
import type { LineList } from '../../packages/syntax/scripts/line-kinds.js';

const root = join(import.meta.dirname, '../..');
const file = (path: string): string => readFileSync(join(root, path), 'utf8');
const page = file('docs/editors.md');

/** The first block of a language below a heading of the page. */
function block(heading: string, language: string): string {
  const section = page.split(/^## /m).find((part) => part.startsWith(`${heading}\n`)) ?? '';
  const found = new RegExp(`^\`\`\`${language}\n([^]*?)^\`\`\``, 'm').exec(section)?.[1];
  if (found === undefined) throw new Error(`no ${language} below ${heading}`);
  return found;
}

/** What TOML gives of such a file: tables, arrays of tables, and values that JSON can read. */
function tables(text: string): { readonly table: string; readonly values: Record<string, unknown> }[] {
  const found: { table: string; values: Record<string, unknown> }[] = [];
  for (const line of text.split('\n').filter((one) => one.trim() !== '')) {
    const heading = /^\[{1,2}([\w.-]+)\]{1,2}$/.exec(line)?.[1];
    if (heading !== undefined) {
      found.push({ table: heading, values: {} });
      continue;
    }
    const [, key = '', value = ''] = /^([\w-]+) = (.+)$/.exec(line) ?? [];
    const json = value.replace(/\{ (.*) \}/, (_, inside: string) => `{${inside.replace(/([\w-]+) = /g, '"$1": ')}}`);
    const into = found.at(-1)?.values;
    if (key === '' || into === undefined) throw new Error(`not understood: ${line}`);
    into[key] = JSON.parse(json) as unknown;
  }
  return found;
}

// Helix, "Languages", docs.helix-editor.com/languages.html (25.07): the keys of its own example, and those of the servers in
// the languages.toml that comes with it.
const HELIX_LANGUAGE = new Set([
  ...['name', 'scope', 'injection-regex', 'file-types', 'comment-tokens', 'indent', 'formatter', 'language-servers'],
]);
const HELIX_SERVER = new Set(['command', 'args']);

test('Helix: only keys that its documentation lists, and the language names the server', () => {
  const [server, language, ...more] = tables(block('Helix', 'toml'));
  expect(more).toEqual([]);
  expect(server?.table).toBe('language-server.quern');
  expect(Object.keys(server?.values ?? {}).filter((key) => !HELIX_SERVER.has(key))).toEqual([]);
  expect(server?.values).toMatchObject({ command: 'node', args: ['/path/to/quern-server.cjs', '--stdio'] });
  expect(language?.table).toBe('language');
  expect(Object.keys(language?.values ?? {}).filter((key) => !HELIX_LANGUAGE.has(key))).toEqual([]);
  // `name` and `scope` are asked for; a language of one's own also needs its files and its server.
  expect(language?.values).toMatchObject({
    name: 'quern',
    scope: 'source.quern',
    'file-types': ['quern'],
    'language-servers': ['quern'],
    indent: { 'tab-width': 2, unit: '  ' },
  });
});

// Kate, "LSP Client Plugin", docs.kde.org: the keys of the servers in the settings that come with it.
const KATE_SERVER = new Set([
  ...['command', 'commandDebug', 'path', 'root', 'url', 'use', 'highlightingModeRegex', 'documentLanguageId'],
  ...['initializationOptions', 'rootIndicationFileNames'],
]);

test('Kate: a server of its own under servers, with the keys that its documentation names', () => {
  const settings = JSON.parse(block('Kate', 'json')) as { servers: Record<string, Record<string, unknown>> };
  expect(Object.keys(settings)).toEqual(['servers']);
  const { quern = {} } = settings.servers;
  expect(Object.keys(quern).filter((key) => !KATE_SERVER.has(key))).toEqual([]);
  expect(quern['command']).toEqual(['node', '/path/to/quern-server.cjs', '--stdio']);
  const name = /<language name="([^"]+)"/.exec(file('grammar/quern.kate.xml'))?.[1];
  expect(name).toMatch(new RegExp(String(quern['highlightingModeRegex'])));
});

test('Visual Studio Code: the settings of the page are JSON', () => {
  expect(JSON.parse(`{${block('Visual Studio Code', 'json')}}`)).toEqual({
    '[quern]': { 'editor.codeActionsOnSave': { 'source.fixAll.quern': 'explicit' } },
  });
});

describe('made from the list of words (node packages/syntax/scripts/generate.mjs)', () => {
  const list = JSON.parse(file('grammar/lines.json')) as LineList;

  test('the mode for Emacs, with every word', () => {
    const mode = file('grammar/quern-mode.el');
    expect(mode).toBe(emacsMode(list));
    expect(list.words.filter(({ word }) => !mode.includes(`"${word}"`))).toEqual([]);
  });

  test('the highlighting for Kate: XML, in which each word that opens a line has the style of its kind', () => {
    const xml = file('grammar/quern.kate.xml');
    expect(xml).toBe(kateSyntax(list));
    const rules: { attribute: string; pattern: RegExp }[] = [];
    const parser = new SaxesParser();
    parser.on('opentag', ({ name, attributes }) => {
      if (name === 'RegExpr')
        rules.push({ attribute: attributes.attribute ?? '', pattern: new RegExp(`^(?:${attributes.String})`, 'i') });
    });
    parser.on('error', (error) => {
      throw error;
    });
    parser.write(xml).close();
    const styles: Readonly<Record<string, string>> = { block: 'Block', step: 'Step', every: 'Step', fact: 'Fact' };
    const shown = list.words.map(({ word }) => [
      word,
      rules.find(({ pattern }) => pattern.test(`${word} `))?.attribute,
    ]);
    expect(shown).toEqual(list.words.map(({ word, kind }) => [word, styles[kind] ?? 'In and out']));
    expect(rules.find(({ pattern }) => pattern.test('// note'))?.attribute).toBe('Remark');
    expect(rules.find(({ pattern }) => pattern.test('250 g water'))?.attribute).toBe('Figure');
  });
});
