/** The page of licences: every package that comes along when a published package of this project is installed. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

export interface Licensed {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** The packages of this project that bring it along. */
  readonly for: readonly string[];
}

const readJson = (path: string): unknown => JSON.parse(readFileSync(join(root, path), 'utf8'));

/** Every package that is installed beside ours, by name. */
export function dependencies(): Licensed[] {
  const { packages } = readJson('package-lock.json') as { packages: Readonly<Record<string, Locked>> };
  const found = new Map<string, Licensed & { readonly for: string[] }>();
  for (const folder of readdirSync(join(root, 'packages')).sort()) {
    const manifest = readJson(`packages/${folder}/package.json`) as Locked & { name: string; private?: boolean };
    const visit = (name: string, from: string): void => {
      const path = placeOf(packages, name, from);
      const locked = packages[path];
      if (locked?.version === undefined) return;
      const known = found.get(path) ?? {
        name,
        version: locked.version,
        licence: locked.license ?? 'none stated',
        for: [],
      };
      found.set(path, known);
      if (known.for.includes(manifest.name)) return;
      known.for.push(manifest.name);
      for (const next of Object.keys(locked.dependencies ?? {})) visit(next, path);
    };
    for (const name of Object.keys(manifest.dependencies ?? {})) visit(name, `packages/${folder}`);
  }
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Where npm has put a package that another one asks for: in its own folder, or in a folder above it. */
function placeOf(packages: Readonly<Record<string, Locked>>, name: string, from: string): string {
  for (let folder = from; folder !== ''; folder = folder.slice(0, Math.max(0, folder.lastIndexOf('/')))) {
    const path = `${folder}/node_modules/${name}`;
    if (packages[path] !== undefined) return path;
  }
  return `node_modules/${name}`;
}

/** The text of docs/licences.md. */
export function licencesPage(): string {
  const rows = dependencies().map(
    ({ name, version, licence, for: users }) => `| ${name} | ${version} | ${licence} | ${users.join(', ')} |`,
  );
  return `${[
    '<!-- Generated from package-lock.json by `npm run docs`. Do not edit. -->',
    '# Licences',
    'Quern is published under the [MIT licence](../LICENSE). These packages come along when one of its packages is installed; the core packages bring only what is listed beside their names.',
    `| package | version | licence | for |\n| --- | --- | --- | --- |\n${rows.join('\n')}`,
  ].join('\n\n')}\n`;
}
