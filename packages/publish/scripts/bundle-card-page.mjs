// Bundles scripts/card-page.ts, with the parts of the compiler that it uses, into src/generated/card-script.ts.
// Run it after a change to the script, to quantity or to the amounts of the views; a test says when it is due.
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** The script as one text, the same on every machine. */
export async function bundleCardPage() {
  const result = await build({
    entryPoints: [here('card-page.ts')],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'ascii',
    legalComments: 'none',
    conditions: ['@quern/source'],
  });
  return result.outputFiles[0].text.trim();
}

/** The module that holds the script and what a content security policy needs to know of it. */
export function cardScriptModule(script) {
  const hash = createHash('sha256').update(script).digest('base64');
  return `// Made by scripts/bundle-card-page.mjs. Not written by hand.

/** The script of the card, bundled with the parts of the compiler that it uses. */
export const cardScript = ${JSON.stringify(script)};

/** Its hash, for a content security policy: \`script-src 'sha256-…'\`. */
export const cardScriptHash = ${JSON.stringify(`sha256-${hash}`)};
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const script = await bundleCardPage();
  writeFileSync(here('../src/generated/card-script.ts'), cardScriptModule(script));
  console.log(`The card's script: ${script.length} characters.`);
}
