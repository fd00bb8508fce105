// Bundles what runs in our pages, with the parts of the compiler that it uses, into src/generated.
// Run it after a change to the scripts, to quantity or to the amounts of the views; a test says when it is due.
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** The scripts: what each is called in the code, where it comes from, and what it is. */
export const pageScripts = [
  {
    name: 'cardScript',
    source: 'card-page.ts',
    module: 'card-script.ts',
    what: 'The script of the card, bundled with the parts of the compiler that it uses.',
  },
  {
    name: 'siteScript',
    source: 'site-index.ts',
    module: 'site-script.ts',
    what: 'The script of a site’s index: its search.',
  },
];

/** A script as one text, the same on every machine. */
export async function bundlePageScript({ source }) {
  const result = await build({
    entryPoints: [here(source)],
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

/** The module that holds a script and what a content security policy needs to know of it. */
export function pageScriptModule({ name, what }, script) {
  const hash = createHash('sha256').update(script).digest('base64');
  return `// Made by scripts/bundle-page-scripts.mjs. Not written by hand.

/** ${what} */
export const ${name} = ${JSON.stringify(script)};

/** Its hash, for a content security policy: \`script-src 'sha256-…'\`. */
export const ${name}Hash = ${JSON.stringify(`sha256-${hash}`)};
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const entry of pageScripts) {
    const script = await bundlePageScript(entry);
    writeFileSync(here(`../src/generated/${entry.module}`), pageScriptModule(entry, script));
    console.log(`${entry.name}: ${script.length} characters.`);
  }
}
