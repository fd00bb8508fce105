// Writes docs/diagnostics/ from the registry of messages. `--check` only compares.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from './run-ts.mjs';

const { pages } = await importTs('scripts/docs-pages.ts');
const folder = join(root, 'docs', 'diagnostics');
mkdirSync(folder, { recursive: true });
const wanted = pages();
for (const name of readdirSync(folder)) if (!wanted.has(name)) rmSync(join(folder, name));
for (const [name, text] of wanted) writeFileSync(join(folder, name), text);
console.log(`${wanted.size} pages written to docs/diagnostics/.`);
