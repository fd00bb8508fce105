// What other people wrote and a bundle holds: their licences ask that their text goes with every copy.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Name of the file that goes with a bundle. */
export const NOTICES = 'THIRD-PARTY-NOTICES.txt';

/** The folders of the packages from which a bundle took something, by what esbuild wrote down of it. */
export function packagesIn(metafiles) {
  const folders = new Set();
  for (const { outputs } of metafiles) {
    for (const { inputs } of Object.values(outputs)) {
      for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
        const found = /^(.*\bnode_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path.replaceAll('\\', '/'));
        if (found && bytesInOutput > 0) folders.add(resolve(found[1]));
      }
    }
  }
  return [...folders].sort();
}

/** A package by its folder: what it is called, under which licence it stands, and the words of that licence. */
function packageAt(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const files = readdirSync(folder).filter((file) =>
    /^(?:licen[cs]e|copying|notice|third-?party-?notices)/i.test(file),
  );
  const texts = files.sort().map((file) => readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim());
  return { name, version, license, texts };
}

/**
 * The notices of bundles as one text.
 * @throws Error when a package brings no text of its licence: then it must not go into a bundle.
 */
export function noticesOf(metafiles) {
  const packages = packagesIn(metafiles).map(packageAt);
  const silent = packages.filter(({ texts }) => texts.length === 0);
  if (silent.length > 0) throw new Error(`no licence text in ${silent.map(({ name }) => name).join(', ')}`);
  packages.sort((a, b) => (a.name < b.name ? -1 : 1));
  const parts = packages.map(
    ({ name, version, license, texts }) => `${name} ${version} (${license})\n\n${texts.join('\n\n')}\n`,
  );
  const quern = readFileSync(join(root, 'LICENSE'), 'utf8').trim();
  const rule = `\n${'='.repeat(80)}\n\n`;
  return `Quern\n\n${quern}\n${rule}It holds parts of the packages below, each under its own licence.\n${rule}${parts.join(rule)}`;
}

/** The notices of several bundles that stand in folders of their own, put together for what holds them all. */
export function joinNotices(files) {
  const rule = `\n${'='.repeat(80)}\n\n`;
  const parts = files.filter((file) => existsSync(file)).flatMap((file) => readFileSync(file, 'utf8').split(rule));
  return [...new Set(parts)].join(rule);
}
