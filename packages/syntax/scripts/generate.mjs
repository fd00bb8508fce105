// Writes what is made from grammar/lines.json and from the parser. Run after a change of either:
// node packages/syntax/scripts/generate.mjs
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { importTs, root } from '../../../scripts/run-ts.mjs';

function write(path, text) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
  console.log(path);
}

const list = JSON.parse(readFileSync(join(root, 'grammar/lines.json'), 'utf8'));
// First the words, because everything else reads them through the parser.
const { lineKindsModule } = await importTs('packages/syntax/scripts/line-kinds.ts');
write('packages/syntax/src/generated/line-words.ts', lineKindsModule(list));

const { tmGrammar } = await importTs('packages/syntax/scripts/tm-grammar.ts');
write('grammar/quern.tmLanguage.json', `${JSON.stringify(tmGrammar(list), null, 2)}\n`);

const { emacsMode } = await importTs('packages/syntax/scripts/emacs-mode.ts');
write('grammar/quern-mode.el', emacsMode(list));

const { kateSyntax } = await importTs('packages/syntax/scripts/kate-syntax.ts');
write('grammar/quern.kate.xml', kateSyntax(list));

const { readEbnf } = await importTs('packages/syntax/scripts/ebnf.ts');
const { railroadPage } = await importTs('packages/syntax/scripts/railroad.ts');
write('grammar/railroad.html', railroadPage(readEbnf(readFileSync(join(root, 'grammar/quern.ebnf'), 'utf8'))));
