// Puts beside the bundled extension what it brings along: the servers, the grammar, the snippets and the pages of the
// messages. Everything is made from where it is kept; nothing of it is written twice.
import { copyFileSync, cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from '../../../scripts/run-ts.mjs';

const dist = join(root, 'packages', 'vscode', 'dist');
const servers = join(root, 'packages', 'server', 'dist');

/** A snippet for each line that has one: the same table that completion uses. */
async function snippets() {
  const { lineSnippets } = await importTs('packages/ide/src/completion/line-snippets.ts');
  const { lineWords } = await importTs('packages/syntax/src/classify.ts');
  const says = new Map(lineWords.map((entry) => [entry.word, entry.says]));
  return Object.fromEntries(
    Object.entries(lineSnippets).map(([word, body]) => [
      word,
      { prefix: word, body: body.split('\n'), description: says.get(word) ?? word },
    ]),
  );
}

export async function assemble() {
  mkdirSync(dist, { recursive: true });
  for (const name of ['quern-server.cjs', 'quern-server.browser.js'])
    copyFileSync(join(servers, name), join(dist, name));
  copyFileSync(join(root, 'grammar', 'quern.tmLanguage.json'), join(dist, 'quern.tmLanguage.json'));
  writeFileSync(join(dist, 'snippets.json'), `${JSON.stringify(await snippets(), null, 2)}\n`);
  rmSync(join(dist, 'docs'), { recursive: true, force: true });
  cpSync(join(root, 'docs', 'diagnostics'), join(dist, 'docs'), { recursive: true });
}
