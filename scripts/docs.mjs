// Writes the pages of docs/ that are made from the code: those of the messages and that of the licences.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from './run-ts.mjs';

const { pages } = await importTs('scripts/docs-pages.ts');
const { licencesPage } = await importTs('scripts/licences-page.ts');
const folder = join(root, 'docs', 'diagnostics');
mkdirSync(folder, { recursive: true });
const wanted = pages();
for (const name of readdirSync(folder)) if (!wanted.has(name)) rmSync(join(folder, name));
for (const [name, text] of wanted) writeFileSync(join(folder, name), text);
writeFileSync(join(root, 'docs', 'licences.md'), licencesPage());
console.log(`${wanted.size} pages of messages and the page of licences written to docs/.`);
