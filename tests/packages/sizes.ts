/** How large everything is that is given to people: as it lies on a disk, and as it travels (gzip, RFC 1952). */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync, gzipSync } from 'node:zlib';
import { cardScript, cardStyle } from '@quern/publish';
import { siteScript } from '../../packages/publish/src/generated/site-script.js';
import { NOTICES } from '../../scripts/notices.mjs';
import { root, type Packed } from './pack.js';

export interface Size {
  readonly what: string;
  readonly bytes: number;
  /** Bytes on the way to whoever gets it. */
  readonly packed: number;
}

/** By so much a thing may grow before the table has to be made anew: a share, and what hardly counts. */
export const ROOM = { share: 0.05, bytes: 1024 };

const ofBytes = (what: string, content: Buffer): Size => ({
  what,
  bytes: content.length,
  packed: gzipSync(content, { level: 9 }).length,
});

const packageFile = (...path: string[]): string => join(root, 'packages', ...path);

/** All files of a folder as one: what is loaded in parts is counted whole. Notices are for reading, not for loading. */
function ofFolder(what: string, folder: string, leaveOut: readonly string[] = []): Size {
  const sizes = readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => name !== NOTICES && !leaveOut.includes(name))
    .map((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? ofFolder(what, path) : ofBytes(what, readFileSync(path));
    });
  return { what, bytes: sum(sizes, 'bytes'), packed: sum(sizes, 'packed') };
}

const sum = (sizes: readonly Size[], of: 'bytes' | 'packed'): number =>
  sizes.reduce((total, size) => total + size[of], 0);

/** The extension as a zip file holds it, without the few bytes of its directory. */
function ofExtension(what: string, stage: string): Size {
  const names = readdirSync(stage, { recursive: true, encoding: 'utf8' }).filter((name) =>
    statSync(join(stage, name)).isFile(),
  );
  const contents = names.map((name) => readFileSync(join(stage, name)));
  return {
    what,
    bytes: contents.reduce((total, { length }) => total + length, 0),
    packed: contents.reduce((total, content) => total + deflateRawSync(content, { level: 9 }).length, 0),
  };
}

/** The unpacked and the packed size of a tarball. */
const ofTarball = ({ name, folder, tarball }: Packed): Size => ({
  what: `package ${name}`,
  bytes: readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => !path.startsWith('node_modules') && statSync(join(folder, path)).isFile())
    .reduce((total, path) => total + statSync(join(folder, path)).size, 0),
  packed: statSync(tarball).size,
});

/** @param stage folder of the staged extension */
export function measured(packed: readonly Packed[], stage: string): readonly Size[] {
  const bundle = packageFile('cli', 'dist', 'bundle');
  if (!existsSync(bundle)) throw new Error('the bundles are not built');
  return [
    ofFolder('the command', bundle, ['desk']),
    ofBytes('the language server', readFileSync(packageFile('server', 'dist', 'quern-server.cjs'))),
    ofBytes(
      'the language server as a web worker',
      readFileSync(packageFile('server', 'dist', 'quern-server.browser.js')),
    ),
    ofExtension('the editor extension (.vsix)', stage),
    ofFolder('the desk', packageFile('desk', 'dist', 'site')),
    ofBytes('the script of a card', Buffer.from(cardScript)),
    ofBytes('the style of a card', Buffer.from(cardStyle)),
    ofBytes('the script of a site’s index', Buffer.from(siteScript)),
    ...packed.map(ofTarball).sort((a, b) => (a.what < b.what ? -1 : 1)),
  ];
}

const HEAD = `<!-- Made by \`npm run sizes\`. Do not edit. -->

# Sizes

How large everything is that is given to people, in bytes: as it lies on a disk, and as it travels (a bundle by gzip, an extension as a zip file, a package as its tarball). The packages hold their sources too, and the bundles stand in the packages \`quern\`, \`@quern/server\` and \`@quern/desk\`. A test measures again and fails when something has grown by more than 5 % without this page being made anew.

| what | bytes | packed |
| --- | ---: | ---: |
`;

/** The page of sizes. */
export const pageOf = (sizes: readonly Size[]): string =>
  `${HEAD}${sizes.map(({ what, bytes, packed }) => `| ${what} | ${bytes} | ${packed} |\n`).join('')}`;

export function readPage(page: string): readonly Size[] {
  return [...page.matchAll(/^\| (.*?) +\| +(\d+) +\| +(\d+) +\|$/gm)].map(([, what = '', bytes, packed]) => ({
    what,
    bytes: Number(bytes),
    packed: Number(packed),
  }));
}

/** What is not as the page says, a sentence each; nothing when all is well. */
export function complaints(known: readonly Size[], now: readonly Size[]): readonly string[] {
  const names = (sizes: readonly Size[]): string[] => sizes.map(({ what }) => what);
  const renew = 'if that is meant, make docs/sizes.md anew: npm run sizes';
  return [
    ...names(now)
      .filter((what) => !names(known).includes(what))
      .map((what) => `${what} is not in docs/sizes.md; ${renew}`),
    ...names(known)
      .filter((what) => !names(now).includes(what))
      .map((what) => `${what} is in docs/sizes.md and is not made; ${renew}`),
    ...now.flatMap(({ what, ...is }) => {
      const was = known.find((size) => size.what === what);
      return (['bytes', 'packed'] as const).flatMap((of) => {
        const grown = was ? is[of] - was[of] : 0;
        if (!was || grown <= Math.max(ROOM.bytes, was[of] * ROOM.share)) return [];
        const share = ((grown * 100) / was[of]).toFixed(1);
        return [
          `${what} has ${is[of]} bytes${of === 'packed' ? ' packed' : ''}, ${share} % more than ${was[of]}; ${renew}`,
        ];
      });
    }),
  ];
}
