// Compares every published figure with what Quern computes, prints the table and writes docs/proof.md.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { importTs, root } from './run-ts.mjs';

const { page, sums } = await importTs('tests/published/page.ts');
const text = page();
writeFileSync(join(root, 'docs', 'proof.md'), text);
console.log(text);
const { passed, failed, doesNotApply } = sums();
console.log(`Written to docs/proof.md: ${passed} passed, ${failed} failed, ${doesNotApply} does not apply.`);
process.exitCode = failed === 0 ? 0 : 1;
